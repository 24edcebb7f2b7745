//! Events of an earlier plan that are no task of the new one: they are cancelled in the file that takes the earlier one's place.

use super::lines::Lines;
use super::moments::Stamp;
use super::names::{TASK, name};
use crate::design::DesignId;
use ical::parser::ical::component::IcalEvent;
use std::collections::BTreeSet;

/// An event that is gone, as the earlier file has it.
pub(super) struct Gone {
    uid: String,
    key: String,
    /// The property with its parameter, and its value.
    start: (&'static str, String),
    summary: String,
}

impl Gone {
    /// Returns the events of a file that belong to this design, are not among the new ones, and lie ahead: what has been is no plan any more.
    ///
    /// An event belongs to the design if its UID is the one that the design gives its task. A file that cannot be read has none.
    ///
    /// # Arguments
    /// * `now`: the moment of the plan by the wall clock and in UTC, as RFC 5545, 3.3.5 writes them
    pub(super) fn of(before: &[u8], (title, id): (&str, Option<DesignId>), kept: &BTreeSet<&str>, now: (&str, &str)) -> Vec<Self> {
        let events = ical::IcalParser::new(before).flatten().flat_map(|calendar| calendar.events);
        events
            .filter_map(|event| Self::read(&event))
            .filter(|gone| gone.belongs(title, id) && !kept.contains(gone.uid.as_str()) && gone.lies_ahead(now))
            .collect()
    }

    fn read(event: &IcalEvent) -> Option<Self> {
        let value = |wanted: &str| event.properties.iter().find(|property| property.name == wanted)?.value.clone();
        let start = value("DTSTART")?;
        // A date alone has eight letters, and says so.
        let property = if start.len() == 8 { "DTSTART;VALUE=DATE" } else { "DTSTART" };
        Some(Self {
            uid: value("UID")?,
            key: value(TASK)?,
            start: (property, start),
            summary: value("SUMMARY").unwrap_or_default(),
        })
    }

    fn belongs(&self, title: &str, id: Option<DesignId>) -> bool {
        self.uid == name(title, id, &self.key)
    }

    /// Times of this form stand in the order of their letters; a day lies ahead until it is over.
    fn lies_ahead(&self, (by_the_wall, in_utc): (&str, &str)) -> bool {
        let now = if self.start.1.ends_with('Z') { in_utc } else { by_the_wall };
        let now = now.get(..self.start.1.len()).unwrap_or(now);
        self.start.1.as_str() >= now
    }

    pub(super) fn write(&self, stamp: &Stamp, lines: &mut Lines) {
        lines.component("VEVENT", |lines| {
            lines.value("UID", &self.uid);
            lines.value("DTSTAMP", &stamp.utc);
            lines.value("SEQUENCE", &stamp.revision.to_string());
            lines.value(self.start.0, &self.start.1);
            lines.value("STATUS", "CANCELLED");
            lines.value("TRANSP", "TRANSPARENT");
            // As the earlier file has it, escaped already.
            lines.value("SUMMARY", &self.summary);
            lines.value(TASK, &self.key);
        });
    }
}
