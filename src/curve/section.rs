//! The cut through a cheese: a quantity at every place of it, at a chosen moment.

use super::mirror::{whole, whole_heights};
use super::section_growth::{SectionGrowth, growth, worst};
use crate::batch::Batch;
use crate::design::Stage;
use crate::numeric::Half;
use crate::process::{DiscField, DiscFrame, GermLine};

/// Which quantity.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SectionKey {
    /// Moisture in drying.
    Moisture,
    /// Salt in the moisture, from the first salt to the last air.
    Salt,
    /// pH in the vinegar.
    Ph,
    /// Moisture in the vinegar.
    SoakMoisture,
    /// Salt in the moisture in the vinegar.
    SoakSalt,
    /// Potential growth of the germ that could grow furthest, from unmoulding on.
    Germs,
}

impl SectionKey {
    /// Every quantity.
    pub const ALL: [Self; 6] = [Self::Moisture, Self::Salt, Self::Ph, Self::SoakMoisture, Self::SoakSalt, Self::Germs];

    /// Returns the quantities that can be chosen where this one is shown: moisture and salt are those of the same part of the way.
    #[must_use]
    pub const fn next_to(self) -> [Self; 4] {
        match self {
            Self::Moisture | Self::Salt | Self::Germs => [Self::Moisture, Self::Salt, Self::Ph, Self::Germs],
            Self::Ph | Self::SoakMoisture | Self::SoakSalt => [Self::SoakMoisture, Self::SoakSalt, Self::Ph, Self::Germs],
        }
    }

    /// Returns its name.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Moisture | Self::SoakMoisture => "Moisture",
            Self::Salt | Self::SoakSalt => "Salt",
            Self::Ph => "pH",
            Self::Germs => "Germs",
        }
    }

    /// Returns from when its hours are counted.
    #[must_use]
    pub const fn counted_from(self) -> &'static str {
        match self {
            Self::Moisture => "h of drying",
            Self::Salt => "h from ladling",
            Self::Ph | Self::SoakMoisture | Self::SoakSalt => "h in the vinegar",
            Self::Germs => "h from unmoulding",
        }
    }

    /// Returns the symbol of its unit.
    #[must_use]
    pub const fn unit(self) -> &'static str {
        match self {
            Self::Moisture | Self::SoakMoisture => "%",
            Self::Salt | Self::SoakSalt => "g/100 g water",
            Self::Ph => "",
            Self::Germs => "steps",
        }
    }

    /// Returns the ends of its scale, which hold still while time and choices move.
    #[must_use]
    pub const fn scale(self) -> (f64, f64) {
        match self {
            Self::Moisture | Self::SoakMoisture => (0.0, 70.0),
            Self::Salt | Self::SoakSalt => (0.0, 20.0),
            Self::Ph => (3.0, 7.0),
            Self::Germs => (0.0, 8.0),
        }
    }

    /// Returns the values whose lines are drawn.
    #[must_use]
    pub const fn lines(self) -> &'static [f64] {
        match self {
            Self::Moisture | Self::SoakMoisture => &[20.0, 40.0],
            Self::Salt | Self::SoakSalt => &[5.0, 10.0],
            Self::Ph => &[4.2, 4.6],
            Self::Germs => &[1.0, 3.0],
        }
    }

    /// Returns the fields in which the quantity is known.
    fn fields<'a>(self, batch: &'a Batch, germ: Option<GermLine>) -> Vec<Part<'a>> {
        let (salting, drying, pickling) = (batch.salting.done(), batch.drying.done(), batch.pickling.done());
        let unmoulded_h = batch.draining.done().map_or(0.0, |drained| drained.draining_h);
        let fields = match self {
            Self::Moisture => vec![(0.0, Stage::Drying, drying.map(|dried| &dried.moisture))],
            Self::Salt => vec![
                (0.0, Stage::Salting, salting.map(|salted| &salted.profile.field)),
                (unmoulded_h, Stage::Drying, drying.map(|dried| &dried.salt.field)),
            ],
            Self::Ph => vec![(0.0, Stage::Pickling, pickling.and_then(|pickled| pickled.field.as_ref()))],
            Self::SoakMoisture => vec![(0.0, Stage::Pickling, pickling.map(|pickled| &pickled.moisture.field))],
            Self::SoakSalt => vec![(0.0, Stage::Pickling, pickling.map(|pickled| &pickled.salt.field))],
            Self::Germs => {
                let maps = batch.germs.iter().filter_map(|germs| germs.of(germ?)).flat_map(|course| &course.maps);
                let begins_h = |stage| if stage == Stage::Pickling { batch.design.drying.drying_h } else { 0.0 };
                maps.map(|map| (begins_h(map.stage), map.stage, Some(&*map.field))).collect()
            }
        };
        let known = |(from_h, stage, field): (f64, Stage, Option<&'a DiscField>)| {
            Some(Part { from_h, stage, field: field.filter(|field| !field.frames.is_empty())? })
        };
        fields.into_iter().filter_map(known).collect()
    }
}

/// A field of one stage.
#[derive(Clone, Copy)]
pub(super) struct Part<'a> {
    /// The hour of the cut at which it begins.
    pub(super) from_h: f64,
    stage: Stage,
    pub(super) field: &'a DiscField,
}

/// Returns the fields of a cut in the order of time, and the germ whose growth they are of, if they are of one.
pub(super) fn parts(batch: &Batch, key: SectionKey, germ: Option<GermLine>) -> (Vec<Part<'_>>, Option<GermLine>) {
    let germ = germ.or_else(|| batch.germs.as_ref().and_then(worst)).filter(|_| key == SectionKey::Germs);
    (key.fields(batch, germ), germ)
}

fn last_hour(parts: &[Part<'_>]) -> Option<f64> {
    let last = parts.last()?;
    Some(last.from_h + last.field.frames.last()?.at_h)
}

/// Returns how many hours a cut knows; none where its stage was not calculated.
pub(super) fn hours_known(batch: &Batch, key: SectionKey) -> Option<f64> {
    last_hour(&parts(batch, key, None).0)
}

/// The half of a cut from the axis to the rim; the other half is its mirror image.
#[derive(Clone, Debug, PartialEq)]
pub struct Section {
    /// Which quantity.
    pub key: SectionKey,
    /// The moment.
    pub at_h: f64,
    /// The last moment there is.
    pub last_h: f64,
    /// Radii, from the axis to the rim, as shrunk at the moment.
    pub radii_mm: Vec<f64>,
    /// Heights, from the underside to the top, as shrunk.
    pub heights_mm: Vec<f64>,
    /// The quantity; that at radius i and height j is at i · heights + j.
    pub values: Vec<f64>,
    /// Size at the start, from rim to rim and from underside to top, so that the picture may keep its scale while the cheese shrinks.
    pub size_at_start_mm: (f64, f64),
    /// One sentence that says what the picture shows.
    pub in_words: String,
    /// Of a cut that shows germs: how fast they could grow at each place.
    pub growth: Option<SectionGrowth>,
}

/// Returns the cut through a cheese of the middle tray; none where its stage was not calculated.
///
/// # Arguments
/// * `share`: of the time that the quantity is known for, 0 to 1
/// * `germ`: whose growth a cut with germs shows; none is the germ that could grow furthest
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, curve::{section, SectionKey}};
/// let cut = section(&batch(&Design::default())?, SectionKey::Moisture, 1.0, None).unwrap();
/// assert_eq!(cut.values.len(), cut.radii_mm.len() * cut.heights_mm.len());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn section(batch: &Batch, key: SectionKey, share: f64, germ: Option<GermLine>) -> Option<Section> {
    let (parts, germ) = parts(batch, key, germ);
    let last_h = last_hour(&parts)?;
    let at_h = share.clamp(0.0, 1.0) * last_h;
    let part = parts.iter().rev().find(|part| part.from_h <= at_h).or_else(|| parts.first())?;
    let Part { from_h, stage, field } = *part;
    let (before, after, gone) = around(&field.frames, at_h - from_h)?;
    let between = |one: f64, other: f64| one + gone * (other - one);
    let shrunk = between(before.shrunk, after.shrunk);
    let half: Vec<f64> =
        before.values.iter().zip(&after.values).map(|(one, other)| between(f64::from(*one), f64::from(*other))).collect();
    let whole_mm = |mm: &[f64]| mm.last().copied().unwrap_or(0.0);
    let height_mm = if field.half == Half::Upper { 2.0 * whole_mm(&field.heights_mm) } else { whole_mm(&field.heights_mm) };
    let (heights_mm, values) = (whole_heights(field), whole(field, &half));
    let growth =
        batch.germs.as_ref().zip(germ).and_then(|(germs, line)| growth(germs, line, (stage, at_h - from_h), (field, &half)));
    let in_words = in_words(key, at_h, &values, growth.as_ref());
    Some(Section {
        key,
        at_h,
        last_h,
        radii_mm: field.radii_mm.iter().map(|mm| shrunk * mm).collect(),
        heights_mm: heights_mm.into_iter().map(|mm| shrunk * mm).collect(),
        values,
        size_at_start_mm: (2.0 * whole_mm(&field.radii_mm), height_mm),
        in_words,
        growth,
    })
}

/// Returns the moments around an hour, and how far it lies from the first to the second.
fn around(frames: &[DiscFrame], at_h: f64) -> Option<(&DiscFrame, &DiscFrame, f64)> {
    let after = frames.partition_point(|frame| frame.at_h < at_h).min(frames.len().checked_sub(1)?);
    let (before, after) = (frames.get(after.saturating_sub(1))?, frames.get(after)?);
    let gap_h = after.at_h - before.at_h;
    Some((before, after, if gap_h > 0.0 { ((at_h - before.at_h) / gap_h).clamp(0.0, 1.0) } else { 0.0 }))
}

fn in_words(key: SectionKey, at_h: f64, values: &[f64], growth: Option<&SectionGrowth>) -> String {
    let least = values.iter().copied().fold(f64::INFINITY, f64::min);
    let most = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let unit = if key.unit().is_empty() { String::new() } else { format!(" {}", key.unit()) };
    let decimals = usize::from(matches!(key, SectionKey::Ph | SectionKey::Germs));
    let range = format!("{least:.decimals$} to {most:.decimals$}{unit}");
    if let Some(growth) = growth {
        return format!(
            "Potential growth of {} in a cheese cut through the middle, after {at_h:.0} {}: {range}. {}",
            growth.line.name(),
            key.counted_from(),
            growth.lines().join(" ")
        );
    }
    format!("{} of a cheese cut through the middle, after {at_h:.0} {}: {range}.", key.title(), key.counted_from())
}
