//! What is filled, to scale: a mould with its curd, a jar with its cheeses and vinegar.

use crate::batch::Batch;
use crate::design::{JarLay, Stage};
use crate::process::{DrainingOutcome, DryingOutcome, PicklingOutcome};

/// Gap that mesh or space leaves between cheeses in a jar, as it is drawn, mm.
const GAP_MM: f64 = 4.0;
/// Cubic millimetres of a millilitre.
const MM3_PER_ML: f64 = 1000.0;

/// What lies in a vessel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Content {
    /// Curd as it is ladled.
    Curd,
    /// A cheese.
    Cheese,
    /// Vinegar.
    Vinegar,
}

/// One thing in a vessel, as a rectangle of its cross-section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Piece {
    /// What it is.
    pub content: Content,
    /// Left edge, from that of the vessel inside.
    pub left_mm: f64,
    /// Lower edge, above the bottom of the vessel.
    pub bottom_mm: f64,
    /// Width.
    pub width_mm: f64,
    /// Height.
    pub height_mm: f64,
}

/// A vessel in cross-section.
#[derive(Clone, Debug, PartialEq)]
pub struct Vessel {
    /// Width inside.
    pub width_mm: f64,
    /// Height inside, or up to the line to which it is filled.
    pub height_mm: f64,
    /// What lies in it, the hindmost first.
    pub pieces: Vec<Piece>,
    /// How many there are, and whether what is filled in has room.
    pub caption: String,
}

/// Returns the vessel that is filled at a station; none where none is, or its stage was not calculated.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, curve::vessel, design::{Design, Stage}};
/// let design = Design::default();
/// let jar = vessel(&batch(&design)?, Stage::Pickling).unwrap();
/// assert_eq!(jar.width_mm, design.pickling.jar_width_mm);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn vessel(batch: &Batch, stage: Stage) -> Option<Vessel> {
    match stage {
        Stage::Draining => Some(mould(batch, batch.draining.done()?)),
        Stage::Pickling | Stage::Keeping => jar(batch, batch.drying.done()?, batch.pickling.done()?),
        Stage::Milk | Stage::Vat | Stage::Salting | Stage::Drying => None,
    }
}

fn mould(batch: &Batch, drained: &DrainingOutcome) -> Vessel {
    let design = &batch.design.draining;
    let (width_mm, height_mm) = (design.mould_diameter_mm, design.mould_height_mm);
    let across = |content, height_mm| Piece { content, left_mm: 0.0, bottom_mm: 0.0, width_mm, height_mm };
    let (depth_mm, moulds) = (drained.ladled_depth_mm, drained.cheese_count);
    let room = if drained.fits {
        "the ladled curd has room"
    } else {
        "the curd stands over the rim, so top up as it sinks, or use more moulds"
    };
    Vessel {
        width_mm,
        height_mm,
        pieces: vec![across(Content::Curd, depth_mm), across(Content::Cheese, drained.thickness_mm)],
        caption: format!("Moulds: {moulds}; {room}. Darker: the drained cheese."),
    }
}

fn jar(batch: &Batch, dried: &DryingOutcome, pickled: &PicklingOutcome) -> Option<Vessel> {
    let design = &batch.design.pickling;
    if pickled.jars == 0 {
        return None;
    }
    let (width_mm, fill_mm) = (design.jar_width_mm, design.jar_height_mm);
    let fullest = dried.cheese_count.div_ceil(pickled.jars).min(pickled.cheeses_per_jar).max(1);
    let (diameter_mm, thickness_mm) = (dried.end.diameter_mm, dried.end.thickness_mm);
    let (wide_mm, high_mm) =
        if design.jar_lay == JarLay::OnEdge { (thickness_mm, diameter_mm) } else { (diameter_mm, thickness_mm) };
    let gap_mm = if design.jar_lay == JarLay::FlatTouching { 0.0 } else { GAP_MM };
    let in_row = ((width_mm + gap_mm) / (wide_mm + gap_mm)).floor().clamp(1.0, f64::from(fullest)) as u32;
    let row_mm = f64::from(in_row) * (wide_mm + gap_mm) - gap_mm;
    let cheeses = (0..fullest).map(|number| Piece {
        content: Content::Cheese,
        left_mm: 0.5 * (width_mm - row_mm) + f64::from(number % in_row) * (wide_mm + gap_mm),
        bottom_mm: f64::from(number / in_row) * (high_mm + gap_mm),
        width_mm: wide_mm,
        height_mm: high_mm,
    });
    let cheese_mm3 = 0.25 * std::f64::consts::PI * diameter_mm.powi(2) * thickness_mm;
    let filled_mm3 = f64::from(fullest) * (cheese_mm3 + MM3_PER_ML * pickled.vinegar_each_ml);
    let level_mm = (filled_mm3 / (0.25 * std::f64::consts::PI * width_mm.powi(2))).min(fill_mm);
    let vinegar = Piece { content: Content::Vinegar, left_mm: 0.0, bottom_mm: 0.0, width_mm, height_mm: level_mm };
    let with_vinegar = pickled.vinegar_each_ml > 0.0;
    let plural = |count: u32, one: &str, many: &str| format!("{count} {}", if count == 1 { one } else { many });
    Some(Vessel {
        width_mm,
        height_mm: fill_mm,
        pieces: with_vinegar.then_some(vinegar).into_iter().chain(cheeses).collect(),
        caption: format!("{}, at most {} in each", plural(pickled.jars, "jar", "jars"), plural(fullest, "cheese", "cheeses")),
    })
}
