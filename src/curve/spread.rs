//! How far figures and curves may be wrong, made of many draws of which only little is kept.

use super::drying::BETWEEN_TRAYS;
use super::table::value_at;
use super::{Band, Curve, CurveKey, Role, curve};
use crate::analysis::{DrawnFigures, DrawnSoak, LikelyFigure, likely_figures, slow_soak};
use crate::batch::Batch;
use crate::design::Design;
use crate::numeric::quantile;
use crate::process::{LIKELY_SHARES, SlowSoak};

/// Points at which a band is drawn.
const BAND_POINTS: u32 = 60;
/// What a band of a spread means, in words.
pub const SPREAD_NAME: &str = "8 of 10 trial runs";

/// The band of one line.
#[derive(Clone, Debug, PartialEq)]
pub struct LineSpread {
    /// The curve.
    pub figure: CurveKey,
    /// The name of its line.
    pub line: &'static str,
    /// (x, least, greatest likely value); where half of the draws have none, there is no point.
    pub points: Vec<[f64; 3]>,
}

/// How far everything that is shown of a design may be wrong.
#[derive(Clone, Debug, PartialEq)]
pub struct Spread {
    /// The design that it belongs to.
    pub design: Design,
    /// Draws that it is made of.
    pub draws: usize,
    /// Every figure with its likely range.
    pub figures: Vec<LikelyFigure>,
    /// The bands of all lines of all curves.
    pub lines: Vec<LineSpread>,
    /// How a slow cheese sours; none without vinegar, or of few draws.
    pub slow_soak: Option<SlowSoak>,
}

impl Spread {
    /// Returns a figure.
    #[must_use]
    pub fn figure(&self, key: &str) -> Option<&LikelyFigure> {
        self.figures.iter().find(|likely| likely.figure.key == key)
    }

    /// Returns the bands of a curve.
    pub fn of_curve(&self, key: CurveKey) -> impl Iterator<Item = &LineSpread> {
        self.lines.iter().filter(move |line| line.figure == key)
    }
}

/// Returns a curve with the band of the spread around each of its main lines, in the place of the band that it has of its own; the band
/// between trays stays, for it is no uncertainty.
///
/// # Arguments
/// * `spread`: of the same design
///
/// # Example
/// ```
/// use vatsketch::curve::{curve, with_spread, CurveKey, SPREAD_NAME};
/// use vatsketch::{batch::batch, design::Design, session::{spread, Work}};
/// let design = Design::default();
/// let spread = spread(&design, &Work { draws: 10, threads: 1, goes_on: &|| true })?.unwrap();
/// let warming = with_spread(CurveKey::Warming, curve(&batch(&design)?, CurveKey::Warming), &spread);
/// assert_eq!(warming.bands[0].name, SPREAD_NAME);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn with_spread(key: CurveKey, mut drawn: Curve, spread: &Spread) -> Curve {
    let main: Vec<&str> = drawn.series.iter().filter(|series| series.role == Role::Main).map(|series| series.name).collect();
    let lines = spread.of_curve(key).filter(|line| main.contains(&line.line) && !line.points.is_empty());
    let own: Vec<Band> = lines.map(|line| Band { name: SPREAD_NAME, points: line.points.clone() }).collect();
    if !own.is_empty() {
        drawn.bands.retain(|band| band.name == BETWEEN_TRAYS);
        drawn.bands.splice(0..0, own);
    }
    drawn
}

/// What is kept of one draw.
#[derive(Clone, Debug)]
pub struct Kept {
    figures: DrawnFigures,
    /// Of each line its values at the places of the spread.
    lines: Vec<Vec<Option<f64>>>,
    soak: Option<DrawnSoak>,
}

/// A spread in the making: the places at which the lines of every draw are read.
#[derive(Clone, Debug)]
pub struct Spreading {
    shown: Batch,
    places: Vec<(CurveKey, &'static str, Vec<f64>)>,
}

impl Spreading {
    /// Returns the making of the spread around a batch: its lines are read over the length that they are shown.
    ///
    /// # Example
    /// ```
    /// use vatsketch::batch::batch;
    /// use vatsketch::analysis::{draws, drawn_batch};
    /// use vatsketch::{design::Design, curve::{CurveKey, Spreading}};
    /// let design = Design::default();
    /// let spreading = Spreading::of(batch(&design)?);
    /// let kept = draws(&design, 8).into_iter().map(|parameters| Ok(spreading.keep(&drawn_batch(&design, &parameters)?)));
    /// let spread = spreading.spread(&kept.collect::<Result<Vec<_>, vatsketch::design::DesignError>>()?);
    /// assert!(spread.of_curve(CurveKey::Moisture).any(|line| line.line == "centre"));
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn of(shown: Batch) -> Self {
        let places = CurveKey::ALL.into_iter().flat_map(|key| {
            let lines = curve(&shown, key).series.into_iter().filter(|series| series.role != Role::Limit);
            lines.filter_map(move |series| {
                let ([from, _], [to, _]) = (*series.points.first()?, *series.points.last()?);
                let place = |point: u32| from + (to - from) * f64::from(point) / f64::from(BAND_POINTS);
                (to > from).then(|| (key, series.name, (0..=BAND_POINTS).map(place).collect()))
            })
        });
        Self { places: places.collect(), shown }
    }

    /// Returns the design whose spread it is.
    #[must_use]
    pub const fn design(&self) -> &Design {
        &self.shown.design
    }

    /// Returns what is kept of the batch of one draw.
    #[must_use]
    pub fn keep(&self, drawn: &Batch) -> Kept {
        let figures = CurveKey::ALL.map(|key| (key, curve(drawn, key)));
        let read = |(key, name, places): &(CurveKey, &'static str, Vec<f64>)| {
            let own = figures.iter().find(|(own, _)| own == key);
            let line = own.and_then(|(_, figure)| figure.series.iter().find(|series| series.name == *name));
            let points = line.map_or(&[][..], |series| &series.points);
            places.iter().map(|x| value_at(points, *x)).collect()
        };
        Kept { figures: DrawnFigures::of(drawn), lines: self.places.iter().map(read).collect(), soak: DrawnSoak::of(drawn) }
    }

    /// Returns the spread that some draws make.
    #[must_use]
    pub fn spread(&self, kept: &[Kept]) -> Spread {
        let figures: Vec<DrawnFigures> = kept.iter().map(|kept| kept.figures.clone()).collect();
        let band = |(number, (figure, line, places)): (usize, &(CurveKey, &'static str, Vec<f64>))| {
            let drawn: Vec<&Vec<Option<f64>>> = kept.iter().filter_map(|kept| kept.lines.get(number)).collect();
            let points = places.iter().enumerate().filter_map(|(place, x)| {
                let mut values: Vec<f64> = drawn.iter().filter_map(|line| *line.get(place)?).collect();
                values.sort_by(f64::total_cmp);
                let enough = 2 * values.len() >= kept.len();
                let (least, most) = (quantile(&values, LIKELY_SHARES.0)?, quantile(&values, LIKELY_SHARES.1)?);
                enough.then_some([*x, least, most])
            });
            LineSpread { figure: *figure, line, points: points.collect() }
        };
        Spread {
            design: self.shown.design.clone(),
            draws: kept.len(),
            figures: likely_figures(&self.shown, &figures),
            lines: self.places.iter().enumerate().map(band).collect(),
            slow_soak: slow_soak(&kept.iter().filter_map(|kept| kept.soak).collect::<Vec<_>>()),
        }
    }
}
