//! What is known of the growth of germs in a batch.

use super::airless::AirlessHours;
use super::line::GermLine;
use super::met::{GermsNow, MetInStage};
use crate::design::Stage;
use crate::law::growth::{GrowthLaw, increase_log10};
use crate::process::{DiscField, Distribution, LIKELY_SHARES};
use std::f64::consts::LN_10;
use std::sync::Arc;

/// One moment of the growth of one germ.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct GermPoint {
    /// Hours from the start of warming.
    pub at_h: f64,
    /// Growth dose so far at the worst place, ln.
    pub worst: f64,
    /// The same at the centre.
    pub centre: f64,
    /// The same at the rim, half-way up.
    pub rim: f64,
}

/// The growth of one germ over the whole way.
#[derive(Clone, Debug, PartialEq)]
pub struct GermCourse {
    /// Whose.
    pub line: GermLine,
    /// Its law, as it was calculated with.
    pub law: GrowthLaw,
    /// Work of its lag, as it was calculated with.
    pub h0: f64,
    /// From the start of warming to the end of the keeping.
    pub points: Vec<GermPoint>,
    /// The dose of each stage at the place that is worst in it.
    pub by_stage: Vec<(Stage, f64)>,
    /// The increase over the section of the cheese, log₁₀: while it dries, and in the vinegar where it is soured there.
    pub maps: Vec<GermMap>,
    /// log₁₀ of the mean increase over the section at the end: what a sample of a whole cheese would find.
    pub mean_log10: f64,
}

/// Growth at every place of a cheese, at a few moments.
#[derive(Clone, Debug, PartialEq)]
pub struct GermMap {
    /// In which stage.
    pub stage: Stage,
    /// The increase since the cold milk, log₁₀, up to the greatest density; hours since the stage began. Shared, since a batch is copied often.
    pub field: Arc<DiscField>,
}

/// When a stage begins and ends, hours from the start of warming.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StageSpan {
    /// The stage; the salting is within the draining.
    pub stage: Stage,
    /// Its beginning.
    pub begins_h: f64,
    /// Its end.
    pub ends_h: f64,
}

/// How far germs could grow in the batch.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct GermsOutcome {
    /// One course for each of [`GermLine::ALL`], in that order.
    pub courses: Vec<GermCourse>,
    /// The stages that were counted, as far as the batch came.
    pub spans: Vec<StageSpan>,
    /// What every place met, stage by stage. Shared, since a batch is copied often.
    pub met: Arc<Vec<MetInStage>>,
    /// Hours in which spore formers without air lie within their published limits.
    pub airless: AirlessHours,
    /// Yeasts: potential increase in vinegar and jar, log₁₀, where their law holds; none where it does not.
    pub yeast_log10: Option<f64>,
    /// Radius of a colony of blue mould on the face in the air, mm.
    pub mould_mm: f64,
}

impl GermCourse {
    /// Returns the dose at the worst place at the end, ln.
    #[must_use]
    pub fn dose(&self) -> f64 {
        self.points.last().map_or(0.0, |point| point.worst)
    }

    /// Returns the potential increase at the worst place at the end, log₁₀, free of lag, up to the greatest density from a single germ in a
    /// gram.
    #[must_use]
    pub fn increase_log10(&self) -> f64 {
        self.capped(self.dose() / LN_10)
    }

    /// Returns the same with the lag of germs that come fresh into the milk.
    #[must_use]
    pub fn increase_with_lag_log10(&self) -> f64 {
        self.capped(increase_log10(self.dose(), self.h0))
    }

    /// Returns the potential increase of one stage at the place that is worst in it, log₁₀.
    #[must_use]
    pub fn in_stage_log10(&self, stage: Stage) -> f64 {
        self.capped(self.in_stage(stage) / LN_10)
    }

    /// Returns the least and the greatest likely increase, log₁₀: eight of ten draws of the germ's rate lie between them, to which the dose is
    /// proportional. The upper end is what is judged.
    #[must_use]
    pub fn likely_log10(&self) -> (f64, f64) {
        let (slow, fast) = self.likely_times();
        (self.capped(slow * self.dose() / LN_10), self.capped(fast * self.dose() / LN_10))
    }

    /// Returns the increase up to a moment that nine of ten draws of the rate do not exceed, log₁₀.
    #[must_use]
    pub fn cautious_log10(&self, point: &GermPoint) -> f64 {
        self.capped(self.likely_times().1 * point.worst / LN_10)
    }

    /// Returns the same of one stage at the place that is worst in it.
    #[must_use]
    pub fn cautious_in_stage_log10(&self, stage: Stage) -> f64 {
        self.capped(self.likely_times().1 * self.in_stage(stage) / LN_10)
    }

    fn likely_times(&self) -> (f64, f64) {
        let record = GrowthLaw::rate_record(self.line.germ());
        let (least, most) = (record.range.0 / record.value, record.range.1 / record.value);
        let at = |share: f64| Distribution::between(least, most).at_share(least, most, share);
        (at(LIKELY_SHARES.0), at(LIKELY_SHARES.1))
    }

    fn in_stage(&self, stage: Stage) -> f64 {
        self.by_stage.iter().find(|(at, _)| *at == stage).map_or(0.0, |(_, dose)| *dose)
    }

    /// Returns whether it could reach the greatest density that the germ has.
    #[must_use]
    pub fn reaches_most(&self) -> bool {
        self.dose() / LN_10 >= self.line.germ().most_log()
    }

    fn capped(&self, log10: f64) -> f64 {
        log10.min(self.line.germ().most_log())
    }
}

impl GermsOutcome {
    /// Returns the course of one line.
    #[must_use]
    pub fn of(&self, line: GermLine) -> Option<&GermCourse> {
        self.courses.iter().find(|course| course.line == line)
    }

    /// Returns what the places met in a stage.
    #[must_use]
    pub fn met_in(&self, stage: Stage) -> Option<&MetInStage> {
        self.met.iter().find(|met| met.stage == stage)
    }

    /// Returns how a germ could grow at a place at some hours after a stage began.
    ///
    /// # Arguments
    /// * `place`: index of the place, as in the map of the stage
    ///
    /// # Example
    /// ```
    /// use vatsketch::{batch::batch, design::{Design, Stage}, process::GermLine};
    /// let germs = batch(&Design::default())?.germs.unwrap();
    /// let drying = germs.met_in(Stage::Drying).unwrap();
    /// let now = germs.now(GermLine::Staphylococcus, Stage::Drying, 0.0, drying.centre).unwrap();
    /// assert!(now.tenfold_h().is_some_and(|hours| hours > 1.0));
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn now(&self, line: GermLine, stage: Stage, after_h: f64, place: usize) -> Option<GermsNow> {
        let begins_h = self.spans.iter().find(|span| span.stage == stage)?.begins_h;
        self.met_in(stage)?.now(line, &self.of(line)?.law, begins_h + after_h, place)
    }
}
