//! What sensitivity: how far one step of each choice, and the whole range of each uncertain constant, moves a figure.

use super::moved::{FigureError, Moved, number, numeric_choices};
use crate::batch::Batch;
use crate::design::{Field, Kind, Value};
use crate::process::{UNCERTAIN_PARAMETERS, UncertainParameter};

/// What moves a figure.
#[derive(Clone, Copy, Debug)]
pub enum Cause {
    /// One step of a choice, down and up.
    Choice(&'static Field),
    /// An uncertain constant, to the least and to the greatest value of its record.
    Constant(&'static UncertainParameter),
}

impl Cause {
    /// Returns its name in data: the key of an input, or that of an uncertain constant.
    #[must_use]
    pub const fn key(&self) -> &'static str {
        match self {
            Self::Choice(field) => field.key,
            Self::Constant(parameter) => parameter.key,
        }
    }

    /// Returns its name in words.
    #[must_use]
    pub const fn label(&self) -> &'static str {
        match self {
            Self::Choice(field) => field.label,
            Self::Constant(parameter) => parameter.words,
        }
    }
}

/// How far something moves a figure, in the figure's unit.
#[derive(Clone, Copy, Debug)]
pub struct Effect {
    /// What moves it.
    pub cause: Cause,
    /// The change with one step down, or with the least value of the constant; nothing at the end of the range, or where the figure is not
    /// reached.
    pub down: Option<f64>,
    /// The change with one step up, or with the greatest value.
    pub up: Option<f64>,
}

impl Effect {
    /// Returns the greater of the two changes, without its sign.
    #[must_use]
    pub fn reach(&self) -> f64 {
        [self.down, self.up].into_iter().flatten().fold(0.0, |most, change| most.max(change.abs()))
    }
}

/// Returns what moves a figure, the strongest first; what does not move it is left out.
///
/// # Errors
/// [`FigureError`] if this batch has no such figure, or it is not a number.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::sensitivity, design::Design};
/// let effects = sensitivity(&batch(&Design::default())?, "cream_g").unwrap();
/// let first = effects.iter().take(3).map(|effect| effect.cause.label()).collect::<Vec<_>>();
/// assert!(first.contains(&"Fat target"));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn sensitivity(batch: &Batch, key: &str) -> Result<Vec<Effect>, FigureError> {
    let moved = Moved::of(batch, key);
    let from = moved.now().as_ref().and_then(number).ok_or_else(|| moved.never_a_number())?;
    let mut effects: Vec<Effect> = numeric_choices(&batch.design)
        .filter_map(|field| {
            let (Kind::Number { step, .. }, Value::Number(value)) = (field.kind, field.get(&batch.design)) else { return None };
            // Beyond the range the choice refuses the value, and there is no change to tell.
            let change = |to: f64| Some(moved.number_at(field, to)? - from);
            Some(Effect { cause: Cause::Choice(field), down: change(value - step), up: change(value + step) })
        })
        .chain(UNCERTAIN_PARAMETERS.iter().map(|parameter| {
            let (least, most) = parameter.ends(&batch.design);
            let change = |factor: f64| Some(moved.number_under(parameter, factor)? - from);
            Effect { cause: Cause::Constant(parameter), down: change(least), up: change(most) }
        }))
        .filter(|effect| effect.reach() > 0.0)
        .collect();
    effects.sort_by(|one, other| other.reach().total_cmp(&one.reach()));
    Ok(effects)
}
