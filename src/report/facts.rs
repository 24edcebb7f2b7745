//! What the figures of a batch know about a number: its likely range and its kitchen measure.

use super::{Amount, Target};
use crate::batch::Batch;
use crate::design::Unit;
use crate::figure::{Figure, Reading, Weight, figures};
use crate::law::kitchen::THERMOMETER_SPREAD;

/// Figures that stand in the shopping list or in a step.
const SAID_ELSEWHERE: [&str; 13] = [
    "skim_l",
    "cream_g",
    "citric_acid_g",
    "milk_vinegar_ml",
    "lactic_acid_ml",
    "lactone_g",
    "bulk_starter_g",
    "calcium_g",
    "calcium_ml",
    "rennet_ml",
    "salt_g",
    "salt_each_turn_g",
    "oil_ml",
];

/// The figures of one batch, asked by key, so that paper and window never round or hedge differently.
pub(super) struct Facts {
    figures: Vec<Figure>,
}

impl Facts {
    pub(super) fn of(batch: &Batch) -> Self {
        Self { figures: figures(batch) }
    }

    fn find(&self, key: &str) -> Option<&Figure> {
        self.figures.iter().find(|readout| readout.key == key)
    }

    /// Returns the kitchen measure of a figure, if it has one.
    pub(super) fn kitchen(&self, key: &str) -> Option<String> {
        self.find(key)?.kitchen.clone()
    }

    /// Returns a target with the decimals, likely range and kitchen measure of the figure with this key.
    pub(super) fn target(&self, key: &str, label: &'static str, amount: Amount) -> Target {
        let Some(readout) = self.find(key) else { return Target::exact(label, amount) };
        let same_unit = readout.unit == amount.unit;
        Target {
            label: label.to_owned(),
            amount: Amount { decimals: if same_unit { readout.decimals } else { amount.decimals }, ..amount },
            within: readout.likely.filter(|_| same_unit),
            kitchen: readout.kitchen.clone(),
        }
    }

    /// Returns the figures that matter most, those left out that shopping and steps already say.
    pub(super) fn lead(&self) -> Vec<Target> {
        let lead = |readout: &&Figure| readout.weight == Weight::Lead && !SAID_ELSEWHERE.contains(&readout.key);
        let numbers = self.figures.iter().filter(lead);
        numbers
            .filter_map(|readout| match readout.reading {
                Reading::Number(value) => {
                    Some(self.target(readout.key, readout.label, Amount::new(value, readout.unit, readout.decimals)))
                }
                Reading::Words(_) | Reading::Switch(_) => None,
            })
            .filter(|target| target.amount.value.is_finite())
            .collect()
    }

    /// Returns the temperature that the milk is to have, as near as a kitchen thermometer tells.
    pub(super) fn milk_at(temperature_c: f64) -> Target {
        Target::near("milk", Amount::new(temperature_c, Unit::Celsius, 1), THERMOMETER_SPREAD.value)
    }

    /// Returns a target read in a unit, without asking the figures.
    pub(super) fn plain(label: &'static str, value: f64, unit: Unit, decimals: usize) -> Target {
        Target::exact(label, Amount::new(value, unit, decimals))
    }
}
