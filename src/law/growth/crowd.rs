//! Growth beside a crowd: a starter that fills the place leaves the germs nothing to grow on.

use super::conditions::Conditions;
use super::history::{Moment, conditions_at};
use std::f64::consts::LN_10;

/// The length of a step, h.
const STEP_H: f64 = 0.02;
/// So little before the end is the end, h.
const END_H: f64 = 1e-12;

/// How many germs there are at the start, how many there can be, and how long they wait.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Start {
    /// Density at the start, log₁₀ per gram.
    pub start_log: f64,
    /// Greatest density, log₁₀ per gram.
    pub most_log: f64,
    /// Work of the lag; 0 for cells that grow already.
    pub h0: f64,
}

/// A starter that grows as a plain logistic curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LogisticCrowd {
    /// Cells at the start, log₁₀ per gram.
    pub start_log: f64,
    /// Rate, ln per hour.
    pub rate_per_h: f64,
    /// Greatest density, cells per gram.
    pub most_per_g: f64,
}

impl LogisticCrowd {
    /// Returns how full the place is of it after some hours, 0 to 1.
    #[must_use]
    pub fn share(&self, at_h: f64) -> f64 {
        let room = (self.most_per_g / 10.0_f64.powf(self.start_log) - 1.0).max(0.0);
        1.0 / (1.0 + room * (-self.rate_per_h * at_h).exp())
    }
}

/// Returns the potential increase beside a crowd, log₁₀: dN/dt = α μ N (1 − N/Nmax) (1 − S/Smax), by steps with the rate of their middle.
///
/// # Arguments
/// * `rate_per_h`: the law, such as that of [`super::GrowthLaw::rate_per_h`]
/// * `history`: times ascending from 0 h
/// * `crowd_share`: how full the place is of the crowd after some hours, 0 to 1
///
/// # Source
/// Jameson 1962 and Gimenez and Dalgaard 2004, in the code of [`crate::source::SourceId::QraLm`].
///
/// # Example
/// ```
/// use vatsketch::law::growth::{Conditions, Germ, GrowthLaw, LogisticCrowd, Moment, Start, beside_crowd};
/// let law = GrowthLaw::of(Germ::Staphylococcus);
/// let conditions = Conditions { temperature_c: 25.0, ph: 6.6, water_activity: 0.992, ..Conditions::default() };
/// let history = [0.0, 12.0].map(|at_h| Moment { at_h, conditions });
/// let starter = LogisticCrowd { start_log: 6.6, rate_per_h: 0.85, most_per_g: 1.5e9 };
/// let start = Start { start_log: 3.0, most_log: Germ::Staphylococcus.most_log(), h0: 2.3 };
/// let increase = beside_crowd(|place| law.rate_per_h(place), &history, |at_h| starter.share(at_h), &start);
/// assert!((increase - 1.2516).abs() < 0.003);
/// ```
#[must_use]
pub fn beside_crowd(
    rate_per_h: impl Fn(&Conditions) -> f64,
    history: &[Moment],
    crowd_share: impl Fn(f64) -> f64,
    start: &Start,
) -> f64 {
    let end_h = history.last().map_or(0.0, |last| last.at_h);
    let work = start.h0.max(0.0).exp_m1();
    // Natural logarithm of the density over the greatest one.
    let begin = (start.start_log - start.most_log) * LN_10;
    let (mut fullness, mut dose, mut at_h) = (begin, 0.0_f64, 0.0_f64);
    while at_h < end_h - END_H {
        let step_h = STEP_H.min(end_h - at_h);
        let middle_h = at_h + 0.5 * step_h;
        let Some(conditions) = conditions_at(history, middle_h) else { break };
        let growth = rate_per_h(&conditions) * step_h;
        let awake = 1.0 / (1.0 + work * (-(dose + 0.5 * growth)).exp());
        let room = (1.0 - fullness.exp()).max(0.0) * (1.0 - crowd_share(middle_h)).max(0.0);
        fullness = (fullness + awake * growth * room).min(begin.max(0.0));
        dose += growth;
        at_h += step_h;
    }
    (fullness - begin) / LN_10
}
