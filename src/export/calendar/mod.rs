//! The week as a calendar file, one event a task, for the calendar that the maker already keeps.

mod gone;
mod lines;
mod moments;
mod names;

use super::{ExportError, printable};
use crate::caution::{Caution, Severity};
use crate::design::DesignId;
use crate::plan::{KitchenWeek, Now, Pass, WeekTask};
use crate::units::Units;
use crate::words::{FROM_A_MODEL, caution_line};
use gone::Gone;
use jiff::civil::{Date, DateTime};
use lines::Lines;
use moments::{Stamp, date, date_time, in_utc};
use names::{TASK, name};
use std::collections::BTreeSet;

/// Who wrote the file (RFC 5545, 3.7.3).
const PRODUCT: &str = concat!("-//Vatsketch//Vatsketch ", env!("CARGO_PKG_VERSION"), "//EN");
/// When the calendar calls: five minutes before hands are needed, time to wash and to go there. Our own choice.
const CALLS: &str = "-PT5M";
/// The key that the entry to read first is named by, as a task is by its own.
const READ_FIRST: &str = "read_first";
/// Returns a week as iCalendar, one event a task, and one to read first.
///
/// Times are those of the wall clock without a zone ("floating"), so a task is at 06:15 whatever the season, and the file needs no table of
/// zones; only a task that begins or ends in an hour that the clock repeats is in UTC, which comes once. A task without hands takes no time: it has a start and no end. The last day of keeping is a whole day. Only what needs hands calls, five
/// minutes before it begins, and only that shows as busy.
///
/// An event keeps its name (UID) as long as the id of the design and the key of the task stay the same: planned again from another start, or from
/// the task that was reached, it is the same event at another time, and the later plan has the higher revision (SEQUENCE). A design without an
/// id has its title instead: another title makes other events, and two designs of one title, spelled with capitals or not, share theirs. What is
/// no task any more is cancelled (STATUS), if it stands in the file that this one takes the place of and lies ahead.
///
/// # Arguments
/// * `week`: as [`crate::plan::kitchen_week()`] plans it
/// * `title`, `id`: the design's
/// * `cautions`: of the batch; its serious warnings are the calendar's description and an entry for the whole first day
/// * `now`: when the plan was made
/// * `before`: the file whose place this one takes, or nothing
/// * `units`: of what is said
///
/// # Errors
/// [`ExportError::Calendar`] for years that have not four digits.
///
/// # Source
/// RFC 5545: 3.1 lines and folding, 3.3.5 form 1 floating times and form 2 UTC, 3.3.11 text, 3.6.1 events without an end, 3.6.6 alarms, 3.8.2.7 what shows as
/// busy, 3.8.1.11 STATUS, 3.8.4.7 UID, 3.8.7.2 DTSTAMP, 3.8.7.4 SEQUENCE; RFC 9562, 5.5 names of version 5; RFC 7986, 5.1 NAME, 5.2 DESCRIPTION.
///
/// # Example
/// ```
/// use jiff::{civil::date, tz::TimeZone};
/// use vatsketch::{batch::batch, caution::cautions, design::{Design, Wish}, export::calendar, plan::{Now, kitchen_week}, units::Units};
/// let now = Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC };
/// let mut design = Design::default();
/// design.week.wish = Wish::StartAt(date(2031, 5, 9).at(14, 30, 0, 0));
/// let batch = batch(&design)?;
/// let week = kitchen_week(&batch, &now)?.ok_or("no wish")?;
/// let text = String::from_utf8(calendar(&week, "Trial", None, &cautions(&batch), &now, &[], Units::METRIC)?)?;
/// assert!(text.contains("DTSTART:20310509T143000\r\n"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn calendar(
    week: &KitchenWeek,
    title: &str,
    id: Option<DesignId>,
    cautions: &[Caution],
    now: &Now,
    before: &[u8],
    units: Units,
) -> Result<Vec<u8>, ExportError> {
    let stamp = Stamp::of(now)?;
    let title = plain(title);
    let notice = plain(&notice(cautions, units));
    let to_read = week.tasks.first().map(|task| Event::to_read(&notice, &title, id, task.start.date())).transpose()?;
    let tasks = week.tasks.iter().map(|task| Event::of(task, &title, id, units));
    let events = tasks.chain(to_read.map(Ok)).collect::<Result<Vec<_>, _>>()?;
    let kept: BTreeSet<&str> = events.iter().map(|event| event.name.as_str()).collect();
    let gone = Gone::of(before, (&title, id), &kept, (&date_time(now.at)?, &stamp.utc));
    let mut lines = Lines::default();
    lines.component("VCALENDAR", |lines| {
        lines.value("VERSION", "2.0");
        lines.value("PRODID", PRODUCT);
        lines.value("CALSCALE", "GREGORIAN");
        if !title.is_empty() {
            lines.text("NAME", &title);
            // Read by calendars that do not know the newer word.
            lines.text("X-WR-CALNAME", &title);
        }
        lines.text("DESCRIPTION", &notice);
        lines.text("X-WR-CALDESC", &notice);
        for event in &events {
            event.write(&stamp, lines);
        }
        for event in &gone {
            event.write(&stamp, lines);
        }
    });
    Ok(lines.into_bytes())
}

/// One task as it is written.
struct Event {
    name: String,
    key: String,
    summary: String,
    description: String,
    /// The property with its parameter, and its value.
    start: (&'static str, String),
    /// When the hands are off, if any are needed.
    end: Option<String>,
}

impl Event {
    fn of(task: &WeekTask, title: &str, id: Option<DesignId>, units: Units) -> Result<Self, ExportError> {
        // The wall clock alone cannot tell two passes of one hour apart, and an event would end before it begins.
        let twice = task.start_pass.name.is_some() || task.end_pass.name.is_some();
        let time = |at: DateTime, pass: &Pass| if twice { in_utc(at, pass) } else { date_time(at) };
        let start = if task.is_last_day() {
            ("DTSTART;VALUE=DATE", date(task.start.date())?)
        } else {
            ("DTSTART", time(task.start, &task.start_pass)?)
        };
        let end = if task.hands_min > 0 { Some(time(task.end, &task.end_pass)?) } else { None };
        let (summary, description) = (plain(&task.name), described(task, title, units));
        Ok(Self { name: name(title, id, &task.key), key: task.key.clone(), summary, description, start, end })
    }

    /// Returns the entry of the whole first day: what the plan is and is not, and the serious warnings.
    fn to_read(notice: &str, title: &str, id: Option<DesignId>, day: Date) -> Result<Self, ExportError> {
        Ok(Self {
            name: name(title, id, READ_FIRST),
            key: READ_FIRST.to_owned(),
            summary: "Read first: what this plan is, and its warnings".to_owned(),
            description: if title.is_empty() { notice.to_owned() } else { format!("{title}\n{notice}") },
            start: ("DTSTART;VALUE=DATE", date(day)?),
            end: None,
        })
    }

    fn write(&self, stamp: &Stamp, lines: &mut Lines) {
        lines.component("VEVENT", |lines| {
            lines.value("UID", &self.name);
            lines.value("DTSTAMP", &stamp.utc);
            lines.value("SEQUENCE", &stamp.revision.to_string());
            lines.value(self.start.0, &self.start.1);
            match &self.end {
                Some(end) => lines.value("DTEND", end),
                None => lines.value("TRANSP", "TRANSPARENT"),
            }
            lines.text("SUMMARY", &self.summary);
            lines.text("DESCRIPTION", &self.description);
            lines.value(TASK, &self.key);
            if self.end.is_some() {
                lines.component("VALARM", |lines| {
                    lines.value("ACTION", "DISPLAY");
                    lines.value("TRIGGER", CALLS);
                    lines.text("DESCRIPTION", &self.summary);
                });
            }
        });
    }
}

/// Returns what a plan is and is not, and the serious warnings, a line each.
fn notice(cautions: &[Caution], units: Units) -> String {
    let serious = cautions.iter().filter(|caution| caution.severity == Severity::Stop).map(|caution| caution_line(caution, units));
    std::iter::once(FROM_A_MODEL.to_owned()).chain(serious).collect::<Vec<_>>().join("\n")
}

fn described(task: &WeekTask, title: &str, units: Units) -> String {
    let (what, note) = (units.told(&task.what), units.told(task.note.as_deref().unwrap_or_default()));
    let lines = [title, &what, &note, FROM_A_MODEL].map(plain);
    lines.into_iter().filter(|line| !line.is_empty()).collect::<Vec<_>>().join("\n")
}

/// Returns words without what a calendar's text cannot hold: control characters, but for the ends of lines, which are one kind here.
fn plain(words: &str) -> String {
    printable(&words.replace("\r\n", "\n").replace('\r', "\n").replace('\t', " ")).trim().to_owned()
}
