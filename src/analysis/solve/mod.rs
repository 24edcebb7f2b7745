//! Which value of one choice brings a figure to what is asked for.

mod pairs;

pub use pairs::{offered, offered_pairs};

use super::moved::{FigureError, Moved, number};
use crate::batch::Batch;
use crate::design::{DesignError, Field, Kind, Value, field};
use crate::figure::Figure;
use crate::numeric::{Search, Sought, seek};
use crate::units::Units;

/// A figure and what it shall be.
#[derive(Clone, Debug, PartialEq)]
pub struct Goal {
    /// The key of the figure.
    pub figure: String,
    /// What it shall be, in its unit.
    pub wanted: f64,
}

/// A value of the choice, and the figure that it gives.
#[derive(Clone, Debug)]
pub struct Answer {
    /// The choice.
    pub choice: &'static Field,
    /// Its value, in its unit.
    pub value: f64,
    /// The figure with that value.
    pub figure: Figure,
}

/// How a goal came out.
#[derive(Clone, Debug)]
pub enum Solved {
    /// The figure comes to what is asked for, to the last digit that it is shown with.
    Reached(Answer),
    /// It does not, whatever the choice; here it comes nearest.
    NotReachable {
        /// The nearest.
        nearest: Answer,
    },
}

impl Solved {
    /// Returns the answer, met or nearest.
    #[must_use]
    pub const fn answer(&self) -> &Answer {
        match self {
            Self::Reached(answer) | Self::NotReachable { nearest: answer } => answer,
        }
    }

    /// Returns it in one sentence.
    #[must_use]
    pub fn in_words(&self, goal: &Goal, units: Units) -> String {
        let Answer { choice, value, figure } = self.answer();
        let chosen = format!("{} {}", choice.label, units.choice_text(choice, Value::Number(*value)));
        let (label, text) = (figure.label_in(units), figure.text_in(units));
        match self {
            Self::Reached(_) => format!("{chosen} gives: {label} {text}."),
            Self::NotReachable { .. } => format!(
                "{label} {} is not reachable with this choice alone; nearest is {text} with {chosen}.",
                figure.number_text(goal.wanted, units)
            ),
        }
    }
}

/// A goal that cannot be looked for.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum SolveError {
    /// There is no such figure, or it is not a number anywhere.
    #[error(transparent)]
    Figure(#[from] FigureError),
    /// There is no such choice.
    #[error(transparent)]
    Choice(#[from] DesignError),
    /// The choice is not a number.
    #[error("{label} (`{key}`) is not a number, so it cannot be changed to reach a target; choose one that is")]
    ChoiceNotANumber {
        /// Its label.
        label: &'static str,
        /// Its key.
        key: &'static str,
    },
    /// The choice does nothing in this design.
    #[error("{label} (`{key}`) has no effect in this design, so changing it reaches no target; choose one that is shown")]
    NotInUse {
        /// Its label.
        label: &'static str,
        /// Its key.
        key: &'static str,
    },
    /// What is asked for is not a number.
    #[error("the target for `{figure}` must be a number, but {wanted} was given")]
    WantedNotANumber {
        /// The figure.
        figure: String,
        /// What was given.
        wanted: f64,
    },
}

/// Returns the value of one choice that brings a figure to what is asked for, everything else as it is; of several the one nearest to the
/// present value. It is rounded as far as the figure, as it is shown, stays the same.
///
/// # Arguments
/// * `batch`: the batch as it is; `goal`: the figure and what is asked for of it; `choice`: the key of the choice that may move
///
/// # Errors
/// [`SolveError`]; a goal that is out of reach is none, but [`Solved::NotReachable`].
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::{solve, Goal, Solved}, design::Design};
/// let goal = Goal { figure: "drained_cheese_g".to_owned(), wanted: 120.0 };
/// let solved = solve(&batch(&Design::default())?, &goal, "milk_l").unwrap();
/// let Solved::Reached(answer) = solved else { unreachable!() };
/// assert_eq!(answer.figure.text(), "120 g");
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn solve(batch: &Batch, goal: &Goal, choice: &str) -> Result<Solved, SolveError> {
    if !goal.wanted.is_finite() {
        return Err(SolveError::WantedNotANumber { figure: goal.figure.clone(), wanted: goal.wanted });
    }
    let choice = field(choice)?;
    let (label, key) = (choice.label, choice.key);
    let (Kind::Number { least, most, step, whole }, Value::Number(start)) = (choice.kind, choice.get(&batch.design)) else {
        return Err(SolveError::ChoiceNotANumber { label, key });
    };
    if !(choice.used)(&batch.design) {
        return Err(SolveError::NotInUse { label, key });
    }
    let moved = Moved::of(batch, &goal.figure);
    // Counted in halves of the last digit shown: one of these off is met.
    let function = |value: f64| {
        let figure = moved.at(choice, value)?;
        Some((number(&figure)? - goal.wanted) / figure.rounding())
    };
    let search = Search { least, most, start, step, whole, tolerance: 1.0 };
    let (at, met) = match seek(&function, &search) {
        Sought::Met { at, .. } => (tidy(at, &search, &function), true),
        Sought::Nearest { at, .. } => (at, false),
        Sought::Nowhere => return Err(moved.never_a_number().into()),
    };
    let figure = moved.shown_at(choice, at).ok_or_else(|| moved.never_a_number())?;
    let answer = Answer { choice, value: at, figure };
    Ok(if met { Solved::Reached(answer) } else { Solved::NotReachable { nearest: answer } })
}

/// Returns the value with as few digits as still meet the goal: on the choice's own steps, on tenths or on hundredths of them.
fn tidy(at: f64, search: &Search, function: &dyn Fn(f64) -> Option<f64>) -> f64 {
    if search.whole || at.to_bits() == search.start.to_bits() {
        return at;
    }
    let rounded = [1.0, 0.1, 0.01].map(|part| {
        let step = search.step * part;
        // Nine decimals are beyond any step, and take away what binary multiples leave behind.
        (((at / step).round() * step) * 1e9).round() / 1e9
    });
    let good = |value: &f64| {
        let inside = search.least <= *value && *value <= search.most;
        inside && function(*value).is_some_and(|off| off.abs() <= search.tolerance)
    };
    rounded.into_iter().find(good).unwrap_or(at)
}
