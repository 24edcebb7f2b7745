//! One batch as it was made: the design of the day, and what was written down.

use super::{Anchor, Entry, EntryKind, EntryValue};
use crate::design::{Design, DesignId};
use jiff::civil::DateTime;
use jiff::tz::TimeZone;
use std::collections::BTreeSet;

/// The record of one batch.
#[derive(Clone, Debug, PartialEq)]
pub struct BatchRecord {
    /// Its number in the log.
    pub number: u32,
    /// What the maker calls it; may be empty.
    pub name: String,
    /// When the record was begun, by the clock on the wall of the kitchen.
    pub begun: DateTime,
    /// The time zone of that clock, by its name in the IANA list; empty where it was not written down, and then that of the design.
    pub zone: String,
    /// The id of the design, where its file has one.
    pub design_id: Option<DesignId>,
    /// The design as it was on the day: a copy, whatever becomes of its file.
    pub design: Design,
    /// What was written down, in the order in which it was; a correction is an entry too.
    pub entries: Vec<Entry>,
}

impl BatchRecord {
    /// Returns what it is called: `batch 3`, or `batch 3, Monday's vat`.
    #[must_use]
    pub fn title(&self) -> String {
        if self.name.is_empty() { format!("batch {}", self.number) } else { format!("batch {}, {}", self.number, self.name) }
    }

    /// Returns the entry that stands in the place of another.
    #[must_use]
    pub fn corrected_by(&self, number: u32) -> Option<&Entry> {
        self.entries.iter().find(|entry| entry.corrects == Some(number))
    }

    /// Returns what counts: no entry that was corrected or taken back; by time, and entries of one time as they were written.
    #[must_use]
    pub fn standing(&self) -> Vec<&Entry> {
        let corrected: BTreeSet<u32> = self.entries.iter().filter_map(|entry| entry.corrects).collect();
        let counts = |entry: &&Entry| entry.value != EntryValue::Withdrawn && !corrected.contains(&entry.number);
        let mut standing: Vec<&Entry> = self.entries.iter().filter(counts).collect();
        standing.sort_by_key(|entry| entry.at);
        standing
    }

    /// Returns what an entry took the place of, the newest first.
    #[must_use]
    pub fn earlier(&self, entry: &Entry) -> Vec<&Entry> {
        let before = |entry: &Entry| self.entries.iter().find(|other| Some(other.number) == entry.corrects);
        // Each is older than the one before, as a log has it, so this ends.
        std::iter::successors(before(entry), |entry| before(entry).filter(|other| other.number < entry.number)).collect()
    }

    /// Returns all entries of a kind that count, by time.
    #[must_use]
    pub fn of_kind(&self, kind: EntryKind) -> Vec<&Entry> {
        self.standing().into_iter().filter(|entry| entry.kind == kind).collect()
    }

    /// Returns the last entry of a kind that counts.
    #[must_use]
    pub fn latest(&self, kind: EntryKind) -> Option<&Entry> {
        self.of_kind(kind).last().copied()
    }

    /// Returns the moment from which hours count, as far as it was written down: by itself, or by what is done at the same time.
    #[must_use]
    pub fn anchored(&self, anchor: Anchor) -> Option<DateTime> {
        let kinds: &[EntryKind] = match anchor {
            Anchor::Start => &[EntryKind::WarmingBegan, EntryKind::CreamPoured, EntryKind::MilkPoured],
            Anchor::Rennet => &[EntryKind::RennetAdded],
            Anchor::Ladling => &[EntryKind::Ladled, EntryKind::MouldsFilled],
            Anchor::Air => &[EntryKind::AirBegan, EntryKind::AirTemperature],
            Anchor::Vinegar => &[EntryKind::VinegarPoured],
        };
        kinds.iter().find_map(|kind| self.of_kind(*kind).first().map(|entry| entry.at))
    }

    /// Returns the hours between a moment from which hours count and a time; none where the moment was not written down.
    #[must_use]
    pub fn hours_since(&self, anchor: Anchor, at: DateTime) -> Option<f64> {
        Some(self.hours_between(self.anchored(anchor)?, at))
    }

    /// Returns the hours that pass between two times of the clock on the wall, also across a night in which clocks are changed. Of a time that comes
    /// twice in such a night the first is meant. Where no zone is known, the clock is taken as one that is never changed.
    ///
    /// # Example
    /// ```
    /// use jiff::civil::date;
    /// use vatsketch::{design::Design, record::Log};
    /// let (mut log, evening) = (Log::default(), date(2031, 3, 29).at(20, 0, 0, 0));
    /// log.begin_in("Europe/Berlin", "", evening, Design::default(), None);
    /// assert_eq!(log.batch(1)?.hours_between(evening, date(2031, 3, 30).at(8, 0, 0, 0)), 11.0);
    /// # Ok::<(), vatsketch::record::RecordError>(())
    /// ```
    #[must_use]
    pub fn hours_between(&self, from: DateTime, to: DateTime) -> f64 {
        let name = if self.zone.is_empty() { &self.design.week.zone } else { &self.zone };
        let zone = TimeZone::get(name).ok();
        let moment = |zone: &TimeZone, at: DateTime| zone.to_timestamp(at).ok();
        let between = zone.and_then(|zone| Some(moment(&zone, from)?.duration_until(moment(&zone, to)?)));
        between.unwrap_or_else(|| from.duration_until(to)).as_secs_f64() / 3600.0
    }

    /// Returns a kind's numbers with the hours since a moment, by time.
    ///
    /// # Example
    /// ```
    /// use jiff::civil::date;
    /// use vatsketch::design::Design;
    /// use vatsketch::record::{Anchor, EntryKind, EntryValue, Log};
    /// let (mut log, day) = (Log::default(), date(2031, 5, 9));
    /// log.begin("", day.at(8, 0, 0, 0), Design::default(), None);
    /// log.enter(1, day.at(8, 5, 0, 0), EntryKind::AirBegan, EntryValue::Done)?;
    /// log.enter(1, day.at(20, 35, 0, 0), EntryKind::CheeseWeight, EntryValue::Number(95.0))?;
    /// assert_eq!(log.batch(1)?.series(EntryKind::CheeseWeight, Anchor::Air), [(12.5, 95.0)]);
    /// # Ok::<(), vatsketch::record::RecordError>(())
    /// ```
    #[must_use]
    pub fn series(&self, kind: EntryKind, anchor: Anchor) -> Vec<(f64, f64)> {
        let point = |entry: &Entry| Some((self.hours_since(anchor, entry.at)?, entry.amount()?));
        self.of_kind(kind).into_iter().filter_map(point).collect()
    }
}
