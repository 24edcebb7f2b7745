//! Why a design cannot be scaled as it is asked for.

use super::goal::{ScaleTo, digits};
use crate::design::{DesignError, Unit};
use crate::units::Units;

/// Why a design cannot be scaled; nothing was changed.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ScaleError {
    /// Nothing, less than nothing, or no number.
    #[error("{} must be more than 0, but {given} was given", to.label())]
    NotPositive {
        /// Of what.
        to: ScaleTo,
        /// What was given.
        given: f64,
    },
    /// A part of something that is counted.
    #[error("{} must be a whole number, but {given} was given", to.label())]
    NotWhole {
        /// Of what.
        to: ScaleTo,
        /// What was given.
        given: f64,
    },
    /// The design does not come as far as what is to be filled.
    #[error("this design cannot be scaled to this ({}): {why}", to.label())]
    NothingThere {
        /// Of what.
        to: ScaleTo,
        /// Why there is none.
        why: String,
    },
    /// A choice would leave its range.
    #[error(
        "{label} (at “{stage}”) would have to be {wanted}, and can be from {least} to {most} {unit}; {}",
        within(*.to, *.reach)
    )]
    OutOfRange {
        /// Label of the choice.
        label: &'static str,
        /// Heading of its stage.
        stage: &'static str,
        /// What it would have to be, with its unit.
        wanted: String,
        /// Least allowed.
        least: f64,
        /// Greatest allowed.
        most: f64,
        /// Symbol of the unit.
        unit: &'static str,
        /// What the design was to be scaled to.
        to: ScaleTo,
        /// Least and greatest amount to which every choice can follow.
        reach: (f64, f64),
    },
    /// The design holds a value out of its range.
    #[error(transparent)]
    Design(#[from] DesignError),
}

impl ScaleError {
    /// Returns it in words, with litres as they are shown.
    #[must_use]
    pub fn in_words(&self, units: Units) -> String {
        units.told_of(&self.to_string(), &[Unit::Litre, Unit::Millilitre])
    }
}

/// Returns to how much a design can be scaled, rounded to what is inside.
fn within(to: ScaleTo, (least, most): (f64, f64)) -> String {
    let steps = if to.is_counted() { 1.0 } else { 100.0 };
    let (least, most) = ((least * steps - ROUNDING).ceil() / steps, (most * steps + ROUNDING).floor() / steps);
    if least > most {
        return "no whole number of them is within reach, so choose an amount of milk instead".to_owned();
    }
    let symbol = to.unit().symbol();
    let most = if symbol.is_empty() { digits(most) } else { format!("{} {symbol}", digits(most)) };
    format!("choose {}", to.of(&format!("{} to {most}", digits(least))))
}

/// What rounding may add to a whole number.
const ROUNDING: f64 = 1e-6;
