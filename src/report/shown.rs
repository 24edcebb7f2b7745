//! A plan as it is shown, in metric units or others: nothing is calculated again.

use super::{Amount, Cost, Plan, Purchase, ShoppingRow, Step, Target, printed_size};
use crate::design::Unit;
use crate::units::Units;

/// Units of what is written down, with a size that decides where a step has no amount of its own.
const WRITTEN: [(Unit, f64); 5] =
    [(Unit::Celsius, 0.0), (Unit::Kilogram, 1.0), (Unit::Gram, 100.0), (Unit::Millilitre, 100.0), (Unit::Litre, 10.0)];

impl Plan {
    /// Returns the plan as it is shown: its amounts, times, sentences and curves.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{batch::batch, design::Design, export::text, report::plan, units::Units};
    /// let plan = plan(&batch(&Design::default())?);
    /// assert!(text(&plan.clone().shown_in(Units::US)).contains("milk: 95 °F ± 1"));
    /// assert_eq!(plan.clone().shown_in(Units::METRIC), plan);
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn shown_in(self, units: Units) -> Self {
        if units.are_metric() {
            return self;
        }
        let told = |words: String| units.told(&words);
        Self {
            units,
            figures: self.figures.into_iter().map(|target| target.shown_in(units)).collect(),
            shopping: self.shopping.into_iter().map(|row| row.shown_in(units)).collect(),
            cost: self.cost.map(|cost| Cost { units, ..cost }),
            shopping_trouble: self.shopping_trouble.map(told),
            timing: self.timing.map(|mut timing| {
                timing.remarks = timing.remarks.into_iter().map(told).collect();
                timing
            }),
            no_week: self.no_week.map(told),
            prepare: super::prepare::shown_in(self.prepare, units),
            weighings: self.weighings.into_iter().map(|weighing| weighing.shown_in(units)).collect(),
            weight_curve: self.weight_curve.map(|curve| curve.shown_in(units)),
            steps: self.steps.into_iter().map(|step| step.shown_in(units)).collect(),
            stopped: self
                .stopped
                .into_iter()
                .map(|mut stopped| {
                    stopped.why = units.told(&stopped.why);
                    stopped
                })
                .collect(),
            curves: self.curves.into_iter().map(|curve| curve.shown_in(units)).collect(),
            sources: super::sources::used(&self.laws, &self.cautions, units, self.soured),
            ..self
        }
    }
}

impl Target {
    pub(super) fn shown_in(self, units: Units) -> Self {
        let kitchen = self.kitchen.filter(|_| !poured(self.amount, units));
        Self { label: units.told(&self.label), amount: self.amount.shown_in(units), kitchen, ..self }
    }
}

/// Returns whether an amount is shown in the marks of a jug, and needs no spoons.
fn poured(amount: Amount, units: Units) -> bool {
    matches!(amount.unit, Unit::Litre | Unit::Millilitre) && !units.scale(amount.unit, amount.value).is_own()
}

impl ShoppingRow {
    pub(super) fn shown_in(self, units: Units) -> Self {
        let shown = |amount: Amount| amount.shown_in(units);
        let kitchen = self.kitchen.filter(|_| !poured(self.amount, units));
        Self {
            amount: shown(self.amount),
            also: self.also.map(shown),
            kitchen,
            buy: self.buy.map(|buy| buy.shown_in(units)),
            ..self
        }
    }
}

impl Purchase {
    fn shown_in(self, units: Units) -> Self {
        let shown = |amount: Amount| amount.shown_in(units);
        let size_of = |size: Amount| match size.unit {
            Unit::Litre => printed_size(1000.0 * size.value, Unit::Millilitre, units),
            Unit::Kilogram => printed_size(1000.0 * size.value, Unit::Gram, units),
            unit => printed_size(size.value, unit, units),
        };
        Self {
            packages: self.packages.into_iter().map(|(count, size)| (count, size_of(size))).collect(),
            at_home: self.at_home.map(shown),
            left_over: self.left_over.map(shown),
            short: self.short.map(shown),
            ..self
        }
    }
}

impl Step {
    /// Returns the step as it is shown.
    pub(super) fn shown_in(self, units: Units) -> Self {
        let write_down = written(&self, units);
        let mut times = self.times;
        for time in &mut times {
            time.units = units;
        }
        Self {
            targets: self.targets.into_iter().map(|target| target.shown_in(units)).collect(),
            lasts: self.lasts.map(|lasts| lasts.shown_in(units)),
            what: units.told(&self.what),
            // Syringes and scales of whole grams are metric.
            how: self.how,
            if_off: units.told(&self.if_off),
            hold: self.hold.map(|hold| hold.shown_in(units)),
            write_down,
            times,
            ..self
        }
    }
}

/// Returns what is written into the blank, in the unit in which the amounts of its step are shown.
fn written(step: &Step, units: Units) -> String {
    let known = step.write_down.rsplit_once(", ").and_then(|(what, symbol)| {
        let (unit, usual) = WRITTEN.into_iter().find(|(unit, _)| unit.symbol() == symbol)?;
        let own = step.targets.iter().map(|target| target.amount).filter(|amount| amount.unit == unit);
        let size = own.map(|amount| amount.value).reduce(f64::max).unwrap_or(usual);
        Some(format!("{what}, {}", units.scale(unit, size).symbol))
    });
    known.unwrap_or_else(|| step.write_down.clone())
}
