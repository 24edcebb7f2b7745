//! One figure of a batch while one choice moves.

use crate::batch::{Batch, batch_until};
use crate::design::{Design, Field, Kind, Stage, Value, did_you_mean, fields, nearest};
use crate::figure::{Figure, Reading, current_key, figures, rests_on_runs_beside};
use crate::process::{Given, Runs, UncertainParameter};

/// Why a figure cannot be followed.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum FigureError {
    /// This design has no figure of that key.
    #[error("this design has no figure called `{key}` (`vatsketch figures FILE --json` lists them all){}", did_you_mean(*nearest))]
    Unknown {
        /// What was asked for.
        key: String,
        /// The figure that was perhaps meant.
        nearest: Option<&'static str>,
    },
    /// The figure is words, or yes or no.
    #[error("{label} (`{key}`) is not a number, so it can be neither a target nor ranked")]
    NotANumber {
        /// Its name.
        label: &'static str,
        /// Its key.
        key: &'static str,
    },
}

/// One figure, calculated for one value or another of a choice; only the stages that lead to it are.
pub(super) struct Moved<'a> {
    batch: &'a Batch,
    key: &'a str,
    /// The stage of the figure, so that no later one is calculated; the last one if the figure is not there now.
    last: Stage,
    /// The same batch with the runs that are shown alone, where the figure rests on no others: they move every figure alike in half the time.
    middle: Option<Batch>,
}

impl<'a> Moved<'a> {
    /// Returns a figure of a batch, to be followed, by its present key or an old one.
    pub(super) fn of(batch: &'a Batch, key: &'a str) -> Self {
        let key = current_key(key);
        let last = figures(batch).iter().find(|figure| figure.key == key).map_or(Stage::Keeping, |figure| figure.stage);
        let given = Given { runs: Runs::MiddleOnly, ..batch.given };
        let middle = if rests_on_runs_beside(key) { None } else { batch_until(&batch.design, &given, None, last).ok() };
        Self { batch, key, last, middle: middle.map(|(middle, _)| middle) }
    }

    /// Returns the figure as it is now.
    pub(super) fn now(&self) -> Option<Figure> {
        figures(self.batch).into_iter().find(|figure| figure.key == self.key)
    }

    /// Returns the figure with a choice at a value, with its likely range; nothing where it cannot be calculated.
    pub(super) fn shown_at(&self, choice: &Field, value: f64) -> Option<Figure> {
        self.with(&self.design_at(choice, value)?, &self.batch.given, self.batch)
    }

    /// Returns the same, but with or without its likely range.
    pub(super) fn at(&self, choice: &Field, value: f64) -> Option<Figure> {
        let from = self.from();
        self.with(&self.design_at(choice, value)?, &from.given, from)
    }

    /// Returns the number of the figure with a choice at a value.
    pub(super) fn number_at(&self, choice: &Field, value: f64) -> Option<f64> {
        number(&self.at(choice, value)?)
    }

    /// Returns the number of the figure with an uncertain constant at another factor of its record's value.
    pub(super) fn number_under(&self, parameter: &UncertainParameter, factor: f64) -> Option<f64> {
        let from = self.from();
        let given = Given { parameters: parameter.set(from.given.parameters, factor), ..from.given };
        number(&self.with(&from.design, &given, from)?)
    }

    /// Returns the batch from which stages are taken over.
    const fn from(&self) -> &Batch {
        match &self.middle {
            Some(middle) => middle,
            None => self.batch,
        }
    }

    fn design_at(&self, choice: &Field, value: f64) -> Option<Design> {
        let mut design = self.batch.design.clone();
        choice.set(&mut design, Value::Number(value)).ok()?;
        Some(design)
    }

    fn with(&self, design: &Design, given: &Given, from: &Batch) -> Option<Figure> {
        let (batch, _) = batch_until(design, given, Some(from), self.last).ok()?;
        figures(&batch).into_iter().find(|figure| figure.key == self.key)
    }

    /// Returns the error of a figure that was never a number: there it is words, or it is not there at all.
    pub(super) fn never_a_number(&self) -> FigureError {
        if let Some(words) = self.now() {
            return FigureError::NotANumber { label: words.label, key: words.key };
        }
        let known = figures(self.batch);
        let nearest = nearest(self.key, known.iter().map(|figure| figure.key));
        FigureError::Unknown { key: self.key.to_owned(), nearest }
    }
}

/// Returns the number of a figure that is one.
pub(super) fn number(figure: &Figure) -> Option<f64> {
    match figure.reading {
        Reading::Number(number) => Some(number),
        Reading::Words(_) | Reading::Switch(_) => None,
    }
}

/// Returns the inputs of a design that are numbers and have an effect in it.
pub fn numeric_choices(design: &Design) -> impl Iterator<Item = &'static Field> {
    fields().filter(move |field| matches!(field.kind, Kind::Number { .. }) && (field.used)(design))
}
