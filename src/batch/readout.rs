//! The figures of a batch, each with its key, unit, rounding and spread; window, paper and command line read the same list.

use super::Batch;
use crate::design::{Stage, Unit};

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
pub struct Readout {
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
    /// The same in kitchen measures ("½ tsp"), where that helps.
    pub kitchen: Option<String>,
    /// How it is to be shown.
    pub weight: Weight,
    /// The law behind it, in one line.
    pub law: &'static str,
}

/// Returns every figure of a batch, in the order of the stages; stages that were not worked out have none.
#[must_use]
pub fn readouts(_batch: &Batch) -> Vec<Readout> {
    Vec::new()
}
