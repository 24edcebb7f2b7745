//! Aiming at a figure: one choice moves until the figure is what is asked for, as one step to undo. Pinned choices stay.

use super::{Command, Session, SessionError};
use crate::analysis::{Goal, SolveError, Solved, inputs_of, numeric_choices, offered, solve};
use crate::design::{DesignError, Field, Value, field};
use std::collections::BTreeSet;

/// A choice that may bring a figure to what is asked for.
#[derive(Clone, Copy, Debug)]
pub struct TargetChoice {
    /// The choice.
    pub field: &'static Field,
    /// Whether a maker moves it for this figure; the others only happen to have an effect.
    pub usual: bool,
    /// Whether it is pinned, so that it may not move.
    pub pinned: bool,
}

/// Why a figure cannot be aimed at; nothing was changed.
#[derive(Debug, thiserror::Error)]
pub enum AimError {
    /// The choice is pinned.
    #[error("{label} is pinned; unpin it, or change another choice")]
    Pinned {
        /// Its label.
        label: &'static str,
    },
    /// The goal cannot be looked for.
    #[error(transparent)]
    Solve(#[from] SolveError),
    /// The answer was refused.
    #[error(transparent)]
    Session(#[from] SessionError),
}

impl Session {
    /// Returns the choices that an aim may not move.
    #[must_use]
    pub const fn pins(&self) -> &BTreeSet<&'static str> {
        &self.pins
    }

    /// Pins a choice, or takes its pin out; the design stays as it is.
    ///
    /// # Errors
    /// [`DesignError`] if there is no such choice.
    pub fn turn_pin(&mut self, key: &str) -> Result<(), DesignError> {
        let key = field(key)?.key;
        if !self.pins.remove(key) {
            self.pins.insert(key);
        }
        Ok(())
    }

    /// Returns the choices that can bring a figure to what is asked for: those that makers move for it first, each group in the trade's order.
    #[must_use]
    pub fn ways_to(&self, figure: &str) -> Vec<TargetChoice> {
        let usual: BTreeSet<&str> =
            offered(self.batch()).iter().filter(|(_, readout)| readout.key == figure).map(|(field, _)| field.key).collect();
        let entering = inputs_of(figure);
        let way =
            |field: &'static Field| TargetChoice { field, usual: usual.contains(field.key), pinned: self.pins.contains(field.key) };
        let mut ways: Vec<TargetChoice> = numeric_choices(self.design())
            .filter(|field| entering.contains(field.key) || usual.contains(field.key))
            .map(way)
            .collect();
        ways.sort_by_key(|way| !way.usual);
        ways
    }

    /// Moves one choice so that a figure comes to what is asked for: one step to undo. What is out of reach changes nothing.
    ///
    /// # Errors
    /// [`AimError`]; nothing was changed.
    pub fn aim(&mut self, goal: &Goal, choice: &str) -> Result<Solved, AimError> {
        if let Some(key) = self.pins.get(choice) {
            return Err(AimError::Pinned { label: field(key).map_or("this choice", |field| field.label) });
        }
        self.end_drag();
        let solved = solve(self.batch(), goal, choice)?;
        if let Solved::Reached(answer) = &solved {
            self.apply(Command::SetInput { key: answer.choice.key, value: Value::Number(answer.value) })?;
        }
        Ok(solved)
    }
}
