//! Names that may stand on the command line: one list each for reading, for what is said of a wrong one, and for completing.

use super::stage_alone::StageAlone;
use crate::analysis::Alike;
use crate::curve::CurveKey;
use crate::design::{MilkKind, did_you_mean, nearest};
use crate::export::{Format, Part};
use crate::record::{DateOrder, EntryKind};
use crate::session::{EXAMPLES, Example};
use clap::builder::{PossibleValue, TypedValueParser};
use clap::error::ErrorKind;
use clap::{Arg, Command, Error};
use std::ffi::OsStr;

/// Reads the name of a stage, or of a law that is calculated alone.
pub(super) fn stage() -> Named<StageAlone> {
    Named::of("stage", StageAlone::all().map(|stage| (stage.key(), stage.title(), stage)))
}

/// Reads the name of an example.
pub(super) fn example() -> Named<Example> {
    Named::of("example", EXAMPLES.map(|example| (example.name, example.shows, example)))
}

/// Reads the name of a curve.
pub(super) fn curve() -> Named<CurveKey> {
    Named::of("curve", CurveKey::ALL.map(|curve| (curve.key(), curve.title(), curve)))
}

/// Reads the kind of a milk.
pub(super) fn milk() -> Named<MilkKind> {
    let known = MilkKind::CHOICES.iter().filter_map(|choice| Some((choice.key, choice.label, MilkKind::from_key(choice.key)?)));
    Named::of("milk", known)
}

/// Reads in which respect the same vat from another milk is like.
pub(super) fn alike() -> Named<Alike> {
    Named::of("respect", Alike::ALL.map(|alike| (alike.key(), alike.label(), alike)))
}

/// Reads what is printed behind the two pages of a plan.
pub(super) fn part() -> Named<Part> {
    Named::of("part", Part::ALL.map(|part| (part.key(), part.help(), part)))
}

/// Reads a kind of file.
pub(super) fn format() -> Named<Format> {
    Named::of("kind of file", Format::ALL.map(|format| (format.ending(), format.title(), format)))
}

/// Reads what is written down in a log.
pub(super) fn entry_kind() -> Named<EntryKind> {
    Named::of("kind of entry", EntryKind::ALL.iter().map(|kind| (kind.key(), kind.row().label, *kind)))
}

/// Reads in which order day and month stand.
pub(super) fn date_order() -> Named<DateOrder> {
    Named::of("order of dates", DateOrder::ALL.map(|order| (order.key(), order.label(), order)))
}

/// Something of a kind by its name. The library's own guess at what was meant goes further than [`nearest`], so the guess is ours.
#[derive(Clone)]
pub(super) struct Named<T> {
    kind: &'static str,
    /// Name, explanation and what it is the name of.
    known: Vec<(&'static str, &'static str, T)>,
}

impl<T> Named<T> {
    fn of(kind: &'static str, known: impl IntoIterator<Item = (&'static str, &'static str, T)>) -> Self {
        Self { kind, known: known.into_iter().collect() }
    }

    fn refusal(&self, given: &str) -> String {
        let names: Vec<&str> = self.known.iter().map(|(name, ..)| *name).collect();
        let meant = did_you_mean(nearest(given, names.iter().copied()));
        format!("there is no {} called `{given}`; there are {}{meant}\n", self.kind, names.join(", "))
    }
}

impl<T: Clone + Send + Sync + 'static> TypedValueParser for Named<T> {
    type Value = T;

    fn parse_ref(&self, command: &Command, _: Option<&Arg>, value: &OsStr) -> Result<T, Error> {
        let given = value.to_string_lossy();
        let found = self.known.iter().find(|(name, ..)| *name == given).map(|(.., of)| of.clone());
        let refused = || Error::raw(ErrorKind::InvalidValue, crate::export::printable(&self.refusal(&given))).with_cmd(command);
        found.ok_or_else(refused)
    }

    fn possible_values(&self) -> Option<Box<dyn Iterator<Item = PossibleValue> + '_>> {
        Some(Box::new(self.known.iter().map(|(name, explained, _)| PossibleValue::new(*name).help(*explained))))
    }
}
