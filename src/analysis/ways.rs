//! Every way to a target, side by side, before anything moves.

use super::lift::{Cost, cost};
use super::solve::{Answer, Goal, SolveError, Solved, solve};
use crate::batch::{Batch, batch_after};
use crate::design::{Design, Field, Kind, Value};

/// One way to a target: a choice, what it becomes, and what follows.
#[derive(Clone, Debug)]
pub struct Way {
    /// What the choice is in the design.
    pub from: f64,
    /// What it becomes, and the figure with it.
    pub answer: Answer,
    /// Whether the figure comes to what is asked for; else this is the nearest.
    pub reached: bool,
    /// The batch that follows.
    pub batch: Batch,
    /// What it costs.
    pub cost: Cost,
}

impl Way {
    /// Returns how far the choice is moved, as a share of its range.
    #[must_use]
    pub fn moved(&self) -> f64 {
        let Kind::Number { least, most, .. } = self.answer.choice.kind else { return 0.0 };
        (self.answer.value - self.from).abs() / (most - least)
    }
}

/// Returns what each of some choices would do for a target, each moved alone: first those that reach it, of these first those that bring the
/// fewest serious warnings, of these the one that moves least.
///
/// A choice with which nothing can be calculated is left out.
///
/// # Arguments
/// * `batch`: the batch as it is; `goal`: the figure and what is asked for of it
/// * `choices`: the choices that may move
/// * `goes_on`: asked between two choices; once it says no, nothing is returned
///
/// # Errors
/// [`SolveError`] of the goal itself: there is no such figure, or what is asked for is no number.
///
/// # Example
/// ```
/// use vatsketch::{analysis::{ways, Goal}, batch::batch, design::{field, Design}};
/// let goal = Goal { figure: "drained_cheese_g".to_owned(), wanted: 120.0 };
/// let choices = [field("milk_l")?, field("mould_count")?];
/// let ways = ways(&batch(&Design::default())?, &goal, &choices, &|| true).unwrap().unwrap();
/// assert!(ways[0].reached && ways[0].answer.figure.text() == "120 g");
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn ways(
    batch: &Batch,
    goal: &Goal,
    choices: &[&'static Field],
    goes_on: &dyn Fn() -> bool,
) -> Result<Option<Vec<Way>>, SolveError> {
    let mut found = Vec::new();
    for choice in choices {
        if !goes_on() {
            return Ok(None);
        }
        match solve(batch, goal, choice.key) {
            Ok(solved) => found.extend(way(batch, choice, &solved)),
            Err(error @ (SolveError::Figure(_) | SolveError::WantedNotANumber { .. })) => return Err(error),
            // This choice says nothing of the goal.
            Err(SolveError::Choice(_) | SolveError::ChoiceNotANumber { .. } | SolveError::NotInUse { .. }) => (),
        }
    }
    found.sort_by(|one, other| {
        let first = |way: &Way| (!way.reached, way.cost.serious_brought());
        first(one).cmp(&first(other)).then(one.moved().total_cmp(&other.moved()))
    });
    Ok(Some(found))
}

fn way(before: &Batch, choice: &Field, solved: &Solved) -> Option<Way> {
    let answer = solved.answer().clone();
    let Value::Number(from) = choice.get(&before.design) else { return None };
    let mut design: Design = before.design.clone();
    design.set(choice.key, Value::Number(answer.value)).ok()?;
    let (batch, _) = batch_after(&design, Some(before)).ok()?;
    let cost = cost(before, &batch);
    Some(Way { from, answer, reached: matches!(solved, Solved::Reached(_)), batch, cost })
}
