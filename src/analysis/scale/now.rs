//! How much a design has now of what it is scaled to, and how far its choices can follow.

use super::choices::{POT_FILLED, Scaling, scaling_of};
use super::error::ScaleError;
use super::goal::ScaleTo;
use crate::batch::Batch;
use crate::design::{Design, Field, Kind, Stage, Value, fields};

/// Returns how much a batch has now of what it is to be scaled to: litres, or how many.
///
/// A design does not know its pot: the one it has now is taken to be as full as a pot may be ([`POT_FILLED`]). Jars are full ones.
///
/// # Errors
/// [`ScaleError::NothingThere`] if the batch does not come so far.
///
/// # Example
/// ```
/// use vatsketch::{analysis::{ScaleTo, amount_now}, batch::batch, design::Design};
/// let batch = batch(&Design::default())?;
/// assert_eq!((amount_now(&batch, ScaleTo::Milk)?, amount_now(&batch, ScaleTo::Moulds)?), (6.0, 12.0));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn amount_now(batch: &Batch, to: ScaleTo) -> Result<f64, ScaleError> {
    let none = |stage: Stage, otherwise: &str| {
        let why = batch.ending(stage).why_not().unwrap_or_else(|| otherwise.to_owned());
        ScaleError::NothingThere { to, why }
    };
    let moulds = f64::from(batch.design.draining.mould_count);
    match to {
        ScaleTo::Milk => Ok(batch.design.milk.milk_l),
        ScaleTo::Moulds => Ok(moulds),
        ScaleTo::Pot => {
            let milk = batch.milk.done().ok_or_else(|| none(Stage::Milk, ""))?;
            Ok(milk.vat_milk_l / POT_FILLED.value)
        }
        ScaleTo::Jars => {
            let per_jar = batch.pickling.done().map_or(0, |pickled| pickled.cheeses_per_jar);
            if per_jar == 0 {
                return Err(none(Stage::Pickling, "no cheese goes into the jar that is chosen"));
            }
            Ok(moulds / f64::from(per_jar))
        }
    }
}

/// Returns the choices that grow with the milk and have an effect in a design, with how they grow and what they are.
pub(super) fn growing(design: &Design) -> impl Iterator<Item = (&'static Field, Scaling, f64)> {
    fields().filter(|field| (field.used)(design)).filter_map(|field| {
        let scaling = scaling_of(field.key).filter(|scaling| !matches!(scaling, Scaling::Kept(_)))?;
        let Value::Number(now) = field.get(design) else { return None };
        Some((field, scaling, now))
    })
}

/// Returns the least and the greatest factor that every choice can follow within its range.
pub(super) fn reach(design: &Design) -> (f64, f64) {
    growing(design).fold((0.0, f64::INFINITY), |(low, high), (field, scaling, now)| {
        let Kind::Number { least, most, .. } = field.kind else { return (low, high) };
        if now <= 0.0 {
            return (low, high);
        }
        // What is rounded up never falls below one.
        let least = if scaling == Scaling::Count { 0.0 } else { least };
        (low.max(least / now), high.min(most / now))
    })
}
