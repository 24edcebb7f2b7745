//! The shape of a germ's law: which factor each condition has, and where it begins, is best and ends.

use super::best_rates::BOTULINUM_COLDEST;
use super::cardinal::{Cardinal, Power, line};
use super::cardinal_values as values;
use super::germ::Germ;

/// Pure water itself lies at the end of every cardinal model, where it would give no growth.
const WETTEST: f64 = 0.9999;

/// The factor of temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Warmth {
    /// Cardinal model of power 2.
    Cardinal(Cardinal),
    /// The same, with no growth below a temperature, °C.
    CutBelow(Cardinal, f64),
    /// Square with a level top.
    Squared(Cardinal),
}

impl Warmth {
    /// Returns where growth begins, is best and ends.
    pub(super) const fn values(&self) -> &Cardinal {
        match self {
            Self::Cardinal(values) | Self::CutBelow(values, _) | Self::Squared(values) => values,
        }
    }

    /// Returns the factor at a temperature, °C.
    pub(super) fn factor(&self, temperature_c: f64) -> f64 {
        match self {
            Self::CutBelow(_, coldest_c) if temperature_c < *coldest_c => 0.0,
            Self::Cardinal(values) | Self::CutBelow(values, _) => values.factor(temperature_c, Power::Two),
            Self::Squared(values) => values.squared(temperature_c),
        }
    }
}

/// The factor of water activity; calculated for every place and step, so it holds products only.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Moisture {
    /// Cardinal model.
    Cardinal(Cardinal, Power),
    /// Square with a level top.
    Squared(Cardinal),
    /// Straight line from this water activity to pure water.
    Line(f64),
}

impl Moisture {
    /// Returns the factor at a water activity.
    pub(super) fn factor(&self, water_activity: f64) -> f64 {
        let held = wettest(water_activity);
        match self {
            Self::Cardinal(values, power) => values.factor(held, *power),
            Self::Squared(values) => values.squared(held),
            Self::Line(least) => line(water_activity, *least),
        }
    }

    /// Multiplies each of many values by the factor of the water activity beside it; one kind of law at a time, so that it is quick.
    pub(super) fn hold_back(&self, values: &mut [f64], water_activities: &[f64]) {
        match *self {
            Self::Cardinal(law, Power::One) => multiply(values, water_activities, |x| law.factor(wettest(x), Power::One)),
            Self::Cardinal(law, Power::Two) => multiply(values, water_activities, |x| law.factor(wettest(x), Power::Two)),
            Self::Squared(law) => multiply(values, water_activities, |x| law.squared(wettest(x))),
            Self::Line(least) => multiply(values, water_activities, |x| line(x, least)),
        }
    }

    /// Returns Le Marc's distance from the best, which is not held below pure water.
    pub(super) fn distance(&self, water_activity: f64) -> f64 {
        match self {
            Self::Cardinal(values, _) | Self::Squared(values) => values.distance(water_activity),
            Self::Line(least) => Cardinal { least: *least, best: 1.0, most: 1.0 }.distance(water_activity),
        }
    }
}

/// Returns a water activity that is not wetter than the laws bear.
fn wettest(water_activity: f64) -> f64 {
    // A comparison instead of `min`, which would turn what is no number into pure water.
    if water_activity > WETTEST { WETTEST } else { water_activity }
}

fn multiply(values: &mut [f64], water_activities: &[f64], factor: impl Fn(f64) -> f64) {
    for (value, water_activity) in values.iter_mut().zip(water_activities) {
        *value *= factor(*water_activity);
    }
}

/// All factors of one germ but those of acids.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Shape {
    pub(super) warmth: Warmth,
    pub(super) ph: Cardinal,
    pub(super) moisture: Moisture,
    /// Whether conditions that are each bearable together stop it. Published with these values for Listeria only; leaving it out errs to
    /// the cautious side.
    pub(super) interacts: bool,
}

impl Shape {
    /// Returns the shape of a germ's law.
    pub(super) const fn of(germ: Germ) -> Self {
        match germ {
            Germ::Listeria => Self {
                warmth: Warmth::Cardinal(Cardinal::of(&values::LISTERIA_TEMPERATURE)),
                ph: Cardinal::of(&values::LISTERIA_PH),
                moisture: Moisture::Cardinal(Cardinal::of(&values::LISTERIA_WATER), Power::One),
                interacts: true,
            },
            Germ::Staphylococcus => Self {
                warmth: Warmth::Cardinal(Cardinal::of(&values::STAPHYLOCOCCUS_TEMPERATURE)),
                ph: Cardinal::of(&values::STAPHYLOCOCCUS_PH),
                moisture: Moisture::Cardinal(Cardinal::of(&values::STAPHYLOCOCCUS_WATER), Power::Two),
                interacts: false,
            },
            Germ::Salmonella => Self {
                warmth: Warmth::Cardinal(Cardinal::of(&values::SALMONELLA_TEMPERATURE)),
                ph: Cardinal::of(&values::SALMONELLA_PH),
                moisture: Moisture::Squared(Cardinal::of(&values::SALMONELLA_WATER)),
                interacts: false,
            },
            Germ::Coli => Self {
                warmth: Warmth::Cardinal(Cardinal::of(&values::COLI_TEMPERATURE)),
                ph: Cardinal::of(&values::COLI_PH),
                moisture: Moisture::Cardinal(Cardinal::of(&values::COLI_WATER), Power::Two),
                interacts: false,
            },
            Germ::Cereus => Self {
                warmth: Warmth::Squared(Cardinal::of(&values::CEREUS_TEMPERATURE)),
                ph: Cardinal::of(&values::CEREUS_PH),
                moisture: Moisture::Line(first(values::CEREUS_WATER.coefficients)),
                interacts: false,
            },
            Germ::ColdBotulinum => Self {
                warmth: Warmth::CutBelow(Cardinal::of(&values::BOTULINUM_TEMPERATURE), BOTULINUM_COLDEST.value),
                ph: Cardinal::of(&values::BOTULINUM_PH),
                moisture: Moisture::Line(first(values::BOTULINUM_WATER.coefficients)),
                interacts: false,
            },
        }
    }
}

const fn first([only]: [f64; 1]) -> f64 {
    only
}
