//! Every place of one cheese with the dose of each germ there, moment by moment.

use super::line::GermLine;
use super::met::{MetInStage, MetMoment};
use super::outcome::{GermCourse, GermMap, GermPoint};
use crate::design::Stage;
use crate::law::growth::{GrowthLaw, Sour};
use crate::process::{DiscField, DiscFrame, UncertainParameters};
use std::f64::consts::LN_10;
use std::sync::Arc;

/// What all places of a cheese have in common at a moment.
#[derive(Clone, Copy, Debug)]
pub(super) struct Moment {
    /// Hours from the start of warming.
    pub(super) at_h: f64,
    pub(super) temperature_c: f64,
    /// How crowded the culture is, 0 to 1; germs beside it grow so much slower.
    pub(super) crowd: f64,
    /// Whether there is air.
    pub(super) air: bool,
}

/// How sour the places are.
#[derive(Clone, Copy, Debug)]
pub(super) enum Sourness<'a> {
    /// All alike.
    Even(Sour),
    /// Each for itself.
    Each(&'a [Sour]),
}

/// The places, of which there is one as long as all are alike.
#[derive(Clone, Debug)]
pub(super) struct Places {
    laws: Vec<(GermLine, GrowthLaw)>,
    /// For each line the dose of each place.
    doses: Vec<Vec<f64>>,
    /// The same when the stage began.
    before: Vec<Vec<f64>>,
    /// Rates of each line and place now, and at the moment before.
    rates: Vec<Vec<f64>>,
    rates_before: Vec<Vec<f64>>,
    courses: Vec<GermCourse>,
    /// For each line the section of the stage that is gone through.
    maps: Vec<DiscField>,
    /// What the stages that are over met, and the one that is gone through.
    met: Vec<MetInStage>,
    met_now: Vec<MetMoment>,
    at_h: f64,
    centre: usize,
    rim: usize,
}

impl Places {
    /// Returns one place at the start, where nothing has grown.
    pub(super) fn start(parameters: &UncertainParameters) -> Self {
        let none = || vec![vec![0.0]; GermLine::ALL.len()];
        let course = |(line, law): &(GermLine, GrowthLaw)| GermCourse {
            line: *line,
            law: *law,
            h0: parameters.lag_work * line.germ().h0(),
            points: Vec::new(),
            by_stage: Vec::new(),
            maps: Vec::new(),
            mean_log10: 0.0,
        };
        let laws: Vec<_> = GermLine::ALL.into_iter().map(|line| (line, line.law(parameters))).collect();
        Self {
            doses: none(),
            before: none(),
            rates: none(),
            rates_before: none(),
            courses: laws.iter().map(course).collect(),
            laws,
            maps: Vec::new(),
            met: Vec::new(),
            met_now: Vec::new(),
            at_h: 0.0,
            centre: 0,
            rim: 0,
        }
    }

    /// Returns the hours from the start of warming.
    pub(super) const fn at_h(&self) -> f64 {
        self.at_h
    }

    /// Returns how many places there are.
    pub(super) fn count(&self) -> usize {
        self.doses.first().map_or(1, Vec::len)
    }

    /// Returns the index of the centre.
    pub(super) const fn centre(&self) -> usize {
        self.centre
    }

    /// Begins a stage at a moment: what grows from here on is the stage's.
    pub(super) fn begin(&mut self, moment: &Moment, sourness: Sourness<'_>, water_activities: &[f64]) {
        self.before.clone_from(&self.doses);
        self.met_now.clear();
        self.at_h = moment.at_h;
        self.look(moment, sourness, water_activities);
        self.note();
    }

    /// Goes on to a moment, by the mean of the rates before and after.
    pub(super) fn go_on(&mut self, moment: &Moment, sourness: Sourness<'_>, water_activities: &[f64]) {
        let half_h = 0.5 * (moment.at_h - self.at_h);
        std::mem::swap(&mut self.rates, &mut self.rates_before);
        self.look(moment, sourness, water_activities);
        for (doses, (before, now)) in self.doses.iter_mut().zip(self.rates_before.iter().zip(&self.rates)) {
            for (dose, (before, now)) in doses.iter_mut().zip(before.iter().zip(now)) {
                *dose += half_h * (before + now);
            }
        }
        self.at_h = moment.at_h;
        self.note();
    }

    /// Keeps the section at this moment, at hours since the stage began and with the linear shrinkage.
    pub(super) fn keep_map(&mut self, stage_h: f64, shrunk: f64) {
        for ((map, doses), course) in self.maps.iter_mut().zip(&self.doses).zip(&self.courses) {
            let most = course.line.germ().most_log();
            let values = doses.iter().map(|dose| (dose * (1.0 / LN_10)).min(most) as f32).collect();
            map.frames.push(DiscFrame { at_h: stage_h, shrunk, values });
        }
    }

    /// Ends a stage.
    pub(super) fn end(&mut self, stage: Stage) {
        self.met.push(MetInStage { stage, moments: std::mem::take(&mut self.met_now), centre: self.centre, rim: self.rim });
        for (course, field) in self.courses.iter_mut().zip(std::mem::take(&mut self.maps)) {
            course.maps.push(GermMap { stage, field: Arc::new(field) });
        }
        for (course, (doses, before)) in self.courses.iter_mut().zip(self.doses.iter().zip(&self.before)) {
            let grown = doses.iter().zip(before).map(|(dose, before)| dose - before).fold(0.0, f64::max);
            course.by_stage.push((stage, grown));
        }
    }

    /// Fills the rates of all places.
    fn look(&mut self, moment: &Moment, sourness: Sourness<'_>, water_activities: &[f64]) {
        self.met_now.push(MetMoment {
            at_h: moment.at_h,
            temperature_c: moment.temperature_c,
            crowd: moment.crowd,
            air: moment.air,
            sours: match sourness {
                Sourness::Even(sour) => vec![sour],
                Sourness::Each(sours) => sours.to_vec(),
            },
            water_activities: water_activities.iter().map(|activity| *activity as f32).collect(),
        });
        let alone = (1.0 - moment.crowd).clamp(0.0, 1.0);
        for ((line, law), rates) in self.laws.iter().zip(&mut self.rates) {
            rates.resize(water_activities.len(), 0.0);
            let warm = law.warmed(moment.temperature_c);
            if !warm.grows() || (line.wants_no_air() && moment.air) {
                rates.fill(0.0);
                continue;
            }
            match sourness {
                Sourness::Even(sour) => {
                    let place = warm.at(&sour);
                    if !place.grows() {
                        rates.fill(0.0);
                        continue;
                    }
                    place.fill_rates(rates, water_activities, alone);
                }
                Sourness::Each(sours) => {
                    for ((rate, water_activity), sour) in rates.iter_mut().zip(water_activities).zip(sours) {
                        *rate = alone * warm.at(sour).rate_per_h(*water_activity);
                    }
                }
            }
        }
    }

    fn note(&mut self) {
        for (course, doses) in self.courses.iter_mut().zip(&self.doses) {
            let of = |at: usize| doses.get(at).copied().unwrap_or_default();
            let worst = greatest(doses);
            course.points.push(GermPoint { at_h: self.at_h, worst, centre: of(self.centre), rim: of(self.rim) });
        }
    }

    /// Cuts the cheese up like a field: every place keeps the dose that it has, places between others one between theirs. Where the field shows
    /// half of a cheese that was whole, the worse of the two halves counts; where it shows a pile, every cheese of it has what the one had.
    pub(super) fn cut_up(&mut self, from: Option<&DiscField>, to: &DiscField, pile: u32) {
        for doses in &mut self.doses {
            *doses = if let Some(from) = from {
                super::section::carried(from, doses, to, pile)
            } else {
                let even = doses.first().copied().unwrap_or_default();
                vec![even; to.radii_mm.len() * to.heights_mm.len()]
            };
        }
        (self.centre, self.rim) = super::section::centre_and_rim(to);
        let empty =
            DiscField { frames: Vec::new(), radii_mm: to.radii_mm.clone(), heights_mm: to.heights_mm.clone(), half: to.half };
        self.maps = vec![empty; GermLine::ALL.len()];
    }

    /// Returns the courses, with the mean over the section, and what the places met.
    pub(super) fn into_courses(self, field: Option<&DiscField>) -> (Vec<GermCourse>, Vec<MetInStage>) {
        let weights = field.map_or_else(|| vec![1.0], super::section::weights);
        let whole: f64 = weights.iter().sum();
        let courses = self
            .courses
            .into_iter()
            .zip(&self.doses)
            .map(|(course, doses)| {
                // In powers of the greatest, so that nothing overflows.
                let most = doses.iter().copied().fold(0.0, f64::max);
                let mean: f64 = doses.iter().zip(&weights).map(|(dose, weight)| weight * (dose - most).exp()).sum::<f64>() / whole;
                let mean_log10 = ((most + mean.ln()) / LN_10).min(course.line.germ().most_log());
                GermCourse { mean_log10, ..course }
            })
            .collect();
        (courses, self.met)
    }
}

/// Returns the greatest of many doses, or 0: eight at a time, since it is asked for every germ at every moment.
fn greatest(doses: &[f64]) -> f64 {
    let mut lanes = [0.0_f64; 8];
    for eight in doses.chunks(lanes.len()) {
        for (most, dose) in lanes.iter_mut().zip(eight) {
            *most = if *dose > *most { *dose } else { *most };
        }
    }
    lanes.into_iter().fold(0.0, f64::max)
}
