//! One figure: a number, words or a yes or no that the maker reads, with its key, unit, rounding and likely range.

use crate::design::{Stage, Unit};
use crate::units::Units;

/// How a figure is to be shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weight {
    /// One of the few that are always shown.
    Lead,
    /// Shown in the stage's list.
    Detail,
}

/// What a figure says.
#[derive(Clone, Debug, PartialEq)]
pub enum Reading {
    /// A number in the figure's unit.
    Number(f64),
    /// Words.
    Words(String),
    /// Yes or no.
    Switch(bool),
}

/// One figure.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// The stage it belongs to.
    pub stage: Stage,
    /// Its key, unit included, named as in the library.
    pub key: &'static str,
    /// Its name in words.
    pub label: &'static str,
    /// What it says.
    pub reading: Reading,
    /// Its unit.
    pub unit: Unit,
    /// Decimals that a kitchen can measure.
    pub decimals: usize,
    /// Least and greatest likely value, where the uncertainty is large and known.
    pub likely: Option<(f64, f64)>,
    /// Whether that range is a rule of thumb, which counts the cook too, and no run of the model.
    pub by_thumb: bool,
    /// The same in kitchen measures ("½ tsp"), where that helps.
    pub kitchen: Option<String>,
    /// How it is to be shown.
    pub weight: Weight,
    /// The law behind it, in one line.
    pub law: &'static str,
}

impl Figure {
    /// Returns a number of a stage's list.
    pub(super) fn number(
        stage: Stage,
        key: &'static str,
        label: &'static str,
        value: f64,
        unit: Unit,
        decimals: usize,
        law: &'static str,
    ) -> Self {
        Self {
            stage,
            key,
            label,
            reading: Reading::Number(value),
            unit,
            decimals,
            likely: None,
            by_thumb: false,
            kitchen: None,
            weight: Weight::Detail,
            law,
        }
    }

    /// Returns a yes-or-no of a stage's list.
    pub(super) fn switch(stage: Stage, key: &'static str, label: &'static str, on: bool, law: &'static str) -> Self {
        Self { reading: Reading::Switch(on), ..Self::number(stage, key, label, 0.0, Unit::One, 0, law) }
    }

    /// Returns words of a stage's list.
    pub(super) fn words(stage: Stage, key: &'static str, label: &'static str, words: String, law: &'static str) -> Self {
        Self { reading: Reading::Words(words), ..Self::number(stage, key, label, 0.0, Unit::One, 0, law) }
    }

    pub(super) fn lead(self) -> Self {
        Self { weight: Weight::Lead, ..self }
    }

    /// Adds a likely range by rule of thumb: the value less and plus a share of it.
    pub(super) fn within(self, share: f64) -> Self {
        match self.reading {
            Reading::Number(value) => Self { likely: Some((value * (1.0 - share), value * (1.0 + share))), by_thumb: true, ..self },
            Reading::Words(_) | Reading::Switch(_) => self,
        }
    }

    /// Adds a likely range that is not even about the value, or none.
    pub(super) fn between(self, likely: Option<(f64, f64)>) -> Self {
        Self { likely, ..self }
    }

    pub(super) fn in_kitchen(self, kitchen: Option<String>) -> Self {
        Self { kitchen, ..self }
    }

    /// Returns the reading as it is shown in metric units: a number to its decimals, with its unit.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{batch::batch, figure::figures, design::Design};
    /// let batch = batch(&Design::default())?;
    /// let cheese = figures(&batch).into_iter().find(|figure| figure.key == "vat_milk_l").unwrap();
    /// assert!(cheese.text().ends_with(" L"));
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn text(&self) -> String {
        self.text_in(Units::default())
    }

    /// Returns the reading as it is shown.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{batch::batch, figure::figures, design::Design, units::Units};
    /// let batch = batch(&Design::default())?;
    /// let milk = figures(&batch).into_iter().find(|figure| figure.key == "vat_milk_l").unwrap();
    /// assert!(milk.text_in(Units::US).contains(" qt"));
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn text_in(&self, units: Units) -> String {
        match &self.reading {
            Reading::Number(value) => self.number_text(*value, units),
            Reading::Words(words) => units.told(words),
            Reading::Switch(on) => if *on { "yes" } else { "no" }.to_owned(),
        }
    }

    /// Returns its name, with temperatures in it as they are shown.
    #[must_use]
    pub fn label_in(&self, units: Units) -> String {
        units.told(self.label)
    }

    /// Returns the kitchen measure, unless the number is shown in another such measure already.
    #[must_use]
    pub fn kitchen_in(&self, units: Units) -> Option<&str> {
        let number = if let Reading::Number(value) = self.reading { Some(value) } else { None };
        // A spoon says more of what is weighed, but not of what is poured from a jug with marks of its own.
        let poured = matches!(self.unit, Unit::Litre | Unit::Millilitre)
            && number.is_some_and(|value| !units.scale(self.unit, value).is_own());
        self.kitchen.as_deref().filter(|_| !poured)
    }

    /// Returns half of the last digit that is shown, in the figure's unit.
    #[must_use]
    pub fn rounding(&self) -> f64 {
        0.5 * 10.0_f64.powi(-i32::try_from(self.decimals).unwrap_or(0))
    }

    /// Returns the likely range as it is shown: "112–130 g"; none whose ends look alike.
    #[must_use]
    pub fn likely_text(&self, units: Units) -> Option<String> {
        let (low, high) = self.likely?;
        if self.number_text(low, units) == self.number_text(high, units) {
            return None;
        }
        let other = units.range(self.unit, (low, high), self.decimals);
        Some(other.unwrap_or_else(|| format!("{:.*}–{}", self.decimals, low, self.number_text(high, Units::default()))))
    }

    /// Returns the likely range in words: "likely 112–130 g", or "112–130 g by rule of thumb"; none whose ends look alike.
    #[must_use]
    pub fn likely_words(&self, units: Units) -> Option<String> {
        let range = self.likely_text(units)?;
        Some(if self.by_thumb { format!("{range} by rule of thumb") } else { format!("likely {range}") })
    }

    /// Puts the range that many draws give in the place of its own. A rule of thumb stays: it counts the cook, and draws do not.
    pub fn take_range(&mut self, least: f64, most: f64) {
        if let (Reading::Number(value), Some(_), false) = (&self.reading, self.likely, self.by_thumb) {
            self.likely = Some((least.min(*value), most.max(*value)));
        }
    }

    /// Returns a change of this figure as it is shown, with its sign: "+1.2 kg", "−3 min", "same"; a dash where there is none.
    #[must_use]
    pub fn change_text(&self, change: Option<f64>, units: Units) -> String {
        let Some(change) = change else { return "–".to_owned() };
        if change.abs() < self.rounding() {
            return "same".to_owned();
        }
        self.apart_text(change, units)
    }

    /// Returns a difference of two such figures as it is shown, with its sign: "+1.2 kg". A difference of temperatures has no zero point.
    #[must_use]
    pub fn apart_text(&self, change: f64, units: Units) -> String {
        let sign = if change < 0.0 { '−' } else { '+' };
        let size = change.abs();
        let words = if self.unit == Unit::Celsius {
            let scale = units.scale(self.unit, size);
            (!scale.is_own()).then(|| format!("{} {}", scale.apart_digits(size, self.decimals), scale.symbol))
        } else {
            units.text(self.unit, size, self.decimals)
        };
        format!("{sign}{}", words.unwrap_or_else(|| self.number_text(size, Units::default())))
    }

    /// Returns a number as this figure shows it: to its decimals, with its unit.
    #[must_use]
    pub fn number_text(&self, value: f64, units: Units) -> String {
        if let Some(words) = units.text(self.unit, value, self.decimals) {
            return words;
        }
        let plain = self.digits(value);
        if self.unit.symbol().is_empty() { plain } else { format!("{plain} {}", self.unit.symbol()) }
    }

    /// Returns a number to the decimals of this figure, without its unit.
    #[must_use]
    pub fn digits(&self, value: f64) -> String {
        let rounded = format!("{value:.*}", self.decimals);
        // A number that rounds to zero from below must not be shown as "-0".
        let plain = rounded.trim_start_matches('-');
        if plain.chars().all(|digit| digit == '0' || digit == '.') { plain.to_owned() } else { rounded }
    }
}
