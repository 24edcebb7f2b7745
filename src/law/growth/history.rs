//! The dose of growth along the history of a place: its conditions over time, straight between rows.

use super::conditions::Conditions;

/// The longest step of the integration, h.
const STEP_H: f64 = 0.05;
/// So little short of a whole number of steps is rounding.
const ALL_BUT_ONE_STEP: f64 = 0.999_999;

/// One row of a history.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Hours from the beginning; two rows at one time make a step.
    pub at_h: f64,
    /// What a germ meets then.
    pub conditions: Conditions,
}

/// The pieces of a history that last some time: each row with the one after it.
fn pieces(history: &[Moment]) -> impl Iterator<Item = (&Moment, &Moment)> {
    history.iter().zip(history.iter().skip(1)).filter(|(from, to)| to.at_h > from.at_h)
}

/// Returns the dose of growth along a history, ln: the rate over time, by Simpson's rule on each straight piece.
///
/// A place carries only this number for each germ; lag, start and greatest density may be changed afterwards. It only grows.
///
/// # Arguments
/// * `rate_per_h`: the law, such as that of [`super::GrowthLaw::rate_per_h`]
/// * `history`: times ascending
///
/// # Example
/// ```
/// use vatsketch::law::growth::{Conditions, Germ, GrowthLaw, Moment, dose_along, increase_log10};
/// let conditions = Conditions { temperature_c: 21.0, ph: 6.5, water_activity: 0.988, ..Conditions::default() };
/// let history = [0.0, 36.0].map(|at_h| Moment { at_h, conditions });
/// let law = GrowthLaw::of(Germ::Listeria);
/// let dose = dose_along(|place| law.rate_per_h(place), &history);
/// assert!((increase_log10(dose, 0.0) - 4.885).abs() < 0.003);
/// ```
#[must_use]
pub fn dose_along(rate_per_h: impl Fn(&Conditions) -> f64, history: &[Moment]) -> f64 {
    pieces(history).map(|(from, to)| piece_dose(&rate_per_h, from, to)).sum()
}

fn piece_dose(rate_per_h: &impl Fn(&Conditions) -> f64, from: &Moment, to: &Moment) -> f64 {
    let length_h = to.at_h - from.at_h;
    let halves = 2 * ((length_h / (2.0 * STEP_H) + ALL_BUT_ONE_STEP) as u32).max(1);
    let rate = |at: u32| rate_per_h(&from.conditions.towards(&to.conditions, f64::from(at) / f64::from(halves)));
    let weighed = (0..=halves).map(|at| match at {
        at if at == 0 || at == halves => rate(at),
        at if at % 2 == 1 => 4.0 * rate(at),
        at => 2.0 * rate(at),
    });
    weighed.sum::<f64>() * length_h / (3.0 * f64::from(halves))
}

/// Returns the conditions at a time; before the first row and after the last one those of the last, nothing for an empty history.
pub(super) fn conditions_at(history: &[Moment], at_h: f64) -> Option<Conditions> {
    let within = pieces(history).find(|(from, to)| (from.at_h..=to.at_h).contains(&at_h));
    let between = within.map(|(from, to)| from.conditions.towards(&to.conditions, (at_h - from.at_h) / (to.at_h - from.at_h)));
    between.or_else(|| history.last().map(|last| last.conditions))
}

/// Returns the hours during which temperature, pH and water activity all lie above some least values, exactly on each straight piece.
///
/// For the spore formers of food without air, whose hours are the first figure; whether the place is without air is for the caller.
///
/// # Arguments
/// * `limits`: least temperature °C, pH and water activity, such as [`super::COLD_AIRLESS_LIMITS`]
///
/// # Example
/// ```
/// use vatsketch::law::growth::{AIRLESS_LIMITS, Conditions, Moment, hours_within};
/// let warming = |at_h, temperature_c| Moment {
///     at_h,
///     conditions: Conditions { temperature_c, ph: 5.0, water_activity: 0.97, ..Conditions::default() },
/// };
/// let hours = hours_within(&AIRLESS_LIMITS.coefficients, &[warming(0.0, 5.0), warming(10.0, 15.0)]);
/// assert!((hours - 5.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn hours_within(limits: &[f64; 3], history: &[Moment]) -> f64 {
    pieces(history)
        .map(|(from, to)| {
            let of = |place: &Conditions| [place.temperature_c, place.ph, place.water_activity];
            let ends = of(&from.conditions).into_iter().zip(of(&to.conditions)).zip(limits);
            let (begins, ends) = ends.fold((0.0_f64, 1.0_f64), |(begins, ends), ((before, after), least)| {
                let (first, last) = share_above(before - least, after - least);
                (begins.max(first), ends.min(last))
            });
            (ends - begins).max(0.0) * (to.at_h - from.at_h)
        })
        .sum()
}

/// Returns from where to where along a piece a straight line lies above zero, as shares of it; what is no number lies above everywhere.
fn share_above(before: f64, after: f64) -> (f64, f64) {
    match (before <= 0.0, after <= 0.0) {
        (true, true) => (1.0, 0.0),
        (true, false) => (before / (before - after), 1.0),
        (false, true) => (0.0, before / (before - after)),
        (false, false) => (0.0, 1.0),
    }
}
