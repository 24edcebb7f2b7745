//! A design with every amount in it grown or shrunk alike.

use super::choices::{SCALED_DIGITS, Scaling};
use super::error::ScaleError;
use super::goal::{ScaleGoal, ScaleTo};
use super::now::{amount_now, growing, reach};
use crate::batch::Batch;
use crate::design::{Design, Field, Kind, Value};

/// A choice that follows when the whole design is scaled.
#[derive(Clone, Copy, Debug)]
pub struct ScaledChoice {
    /// The choice.
    pub field: &'static Field,
    /// What it was.
    pub from: f64,
    /// What it would be without rounding.
    pub exact: f64,
    /// What it becomes.
    pub to: f64,
}

impl ScaledChoice {
    /// Returns whether it is counted and was rounded up.
    #[must_use]
    pub fn is_rounded_up(&self) -> bool {
        matches!(self.field.kind, Kind::Number { whole: true, .. }) && self.to - self.exact > ROUNDING
    }
}

/// A scaled design, and what is different in it.
#[derive(Clone, Debug)]
pub struct Scaled {
    /// What it was scaled to.
    pub goal: ScaleGoal,
    /// How many times as much it is, before anything is rounded.
    pub factor: f64,
    /// The choices that follow, in the trade's order.
    pub choices: Vec<ScaledChoice>,
    /// The design with them.
    pub design: Design,
}

impl Scaled {
    /// Returns the choices that follow, as they are set in a design.
    #[must_use]
    pub fn inputs(&self) -> Vec<(&'static str, Value)> {
        self.choices.iter().map(|choice| (choice.field.key, Value::Number(choice.to))).collect()
    }
}

/// What rounding may add to a whole number before it is rounded up.
const ROUNDING: f64 = 1e-6;

/// Returns the whole design scaled: amounts grow with the milk, counts too and are rounded up; sizes, strengths, doses for each litre or gram,
/// temperatures and times stay, and so do the kitchen, the week and the supplies.
///
/// With the factor k = wanted / now an amount a becomes k a, to three digits (`SCALED_DIGITS`), and a count n becomes ⌈k n⌉. So rennet, salt,
/// vinegar and the number of jars follow by their doses, and a cheese weighs nearly what it did; where moulds were rounded up, a little less.
/// A choice that has no effect in the design stays as it is.
///
/// # Arguments
/// * `goal`: litres of milk to buy, litres of the pot ([`super::POT_FILLED`] of it is filled), moulds or full jars, > 0
///
/// # Errors
/// [`ScaleError`]: a goal that is no such number, a design that does not come so far, or a choice that would leave its range, with how far
/// it can be scaled.
///
/// # Source
/// Mass balance; that doses are given for each litre or gram is common practice, no source.
///
/// # Example
/// ```
/// use vatsketch::{analysis::{ScaleGoal, ScaleTo, scale}, batch::batch, design::Design};
/// let now = batch(&Design::default())?;
/// let more = scale(&now, ScaleGoal { to: ScaleTo::Milk, amount: 9.0 })?;
/// assert_eq!((more.design.milk.milk_l, more.design.vat.bath_l, more.design.draining.mould_count), (9.0, 12.0, 18));
/// assert_eq!(more.design.drying.tray_count, 5);
/// assert_eq!(more.design.vat.heater_power_w, now.design.vat.heater_power_w);
/// let flood = scale(&now, ScaleGoal { to: ScaleTo::Moulds, amount: 190.0 });
/// assert!(flood.unwrap_err().to_string().ends_with("choose 2 to 120 moulds"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn scale(batch: &Batch, goal: ScaleGoal) -> Result<Scaled, ScaleError> {
    let ScaleGoal { to, amount } = goal;
    let usable = amount > 0.0 && amount.is_finite();
    if !usable {
        return Err(ScaleError::NotPositive { to, given: amount });
    }
    if to.is_counted() && amount.fract() != 0.0 {
        return Err(ScaleError::NotWhole { to, given: amount });
    }
    let now = amount_now(batch, to)?;
    let factor = amount / now;
    let mut scaled = Scaled { goal, factor, choices: Vec::new(), design: batch.design.clone() };
    for (field, scaling, from) in growing(&batch.design) {
        let exact = from * factor;
        let becomes = rounded(field, scaling, goal, exact);
        if field.set(&mut scaled.design, Value::Number(becomes)).is_err() {
            let Kind::Number { least, most, .. } = field.kind else { continue };
            let (low, high) = reach(&batch.design);
            return Err(ScaleError::OutOfRange {
                label: field.label,
                stage: field.stage.title(),
                wanted: field.words_with_unit(Value::Number(becomes)),
                least,
                most,
                unit: field.unit.symbol(),
                to,
                reach: (low * now, high * now),
            });
        }
        if (becomes - from).abs() > 0.0 {
            scaled.choices.push(ScaledChoice { field, from, exact, to: becomes });
        }
    }
    scaled.design.check()?;
    Ok(scaled)
}

/// Returns what a choice becomes: counts are rounded up, amounts to what a jug can measure, and milk for a pot down, so that it goes in. The milk
/// that was asked for is left as it is.
fn rounded(field: &Field, scaling: Scaling, goal: ScaleGoal, exact: f64) -> f64 {
    match (scaling, field.key, goal.to) {
        (Scaling::Count, ..) => (exact - ROUNDING).ceil().max(1.0),
        (Scaling::Kept(_), ..) => exact,
        (Scaling::Amount, "milk_l", ScaleTo::Milk) => goal.amount,
        (Scaling::Amount, "milk_l", ScaleTo::Pot) => to_digits(exact, f64::floor),
        (Scaling::Amount, ..) => to_digits(exact, f64::round),
    }
}

/// Returns a number with so many digits as scaled amounts have, rounded one way or another.
fn to_digits(value: f64, way: fn(f64) -> f64) -> f64 {
    if value <= 0.0 {
        return 0.0;
    }
    let place = 10.0_f64.powf(SCALED_DIGITS.value - 1.0 - value.log10().floor());
    // What is a whole number but for the last bit is not rounded down.
    let shown = value * place;
    let whole = shown.round();
    (if (shown - whole).abs() < ROUNDING { whole } else { way(shown) }) / place
}
