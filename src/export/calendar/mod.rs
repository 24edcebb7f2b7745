//! The week as a calendar file, one event a task, for the calendar that the maker already keeps.

mod alarms;
mod event;
mod gone;
mod lines;
mod moments;
mod names;

use super::ExportError;
use crate::batch::Batch;
use crate::caution::{Caution, Severity, cautions};
use crate::design::DesignId;
use crate::plan::{KitchenWeek, Now};
use crate::units::Units;
use crate::words::{FROM_A_MODEL, caution_line};
use event::{Event, Vat, plain};
use gone::Gone;
use lines::Lines;
use moments::{Stamp, date_time};
use std::collections::BTreeSet;

/// Who wrote the file (RFC 5545, 3.7.3).
const PRODUCT: &str = concat!("-//Vatsketch//Vatsketch ", env!("CARGO_PKG_VERSION"), "//EN");

/// Returns a week as iCalendar, one event a task, and one to read first.
///
/// Times are those of the wall clock without a zone ("floating"), so a task is at 06:15 whatever the season, and the file needs no table of
/// zones; only a task that begins or ends in an hour that the clock repeats is in UTC, which comes once. A task without hands takes no time: it
/// has a start and no end, and does not show as busy. The last day of keeping is a whole day.
///
/// An event is called by what is done and the title of the design. Its text has the steps of the plan with their amounts, and where something
/// must be measured or tested first, a line that begins with "Hold:". It calls five minutes before hands are needed, a day before vinegar or a
/// calibrated pH meter must be at hand, and at 19:00 on the evening before the vat begins.
///
/// An event keeps its name (UID) as long as the id of the design and the key of the task stay the same: planned again from another start, or from
/// the task that was reached, it is the same event at another time, and the later plan has the higher revision (SEQUENCE). A design without an
/// id has its title instead: another title makes other events, and two designs of one title, spelled with capitals or not, share theirs. What is
/// no task any more is cancelled (STATUS), if it stands in the file that this one takes the place of and lies ahead.
///
/// # Arguments
/// * `week`: as [`crate::plan::kitchen_week()`] plans it
/// * `batch`: what was planned; its serious warnings are the calendar's description and an entry for the whole first day
/// * `id`: the design's
/// * `now`: when the plan was made
/// * `before`: the file whose place this one takes, or nothing
/// * `units`: of what is said
///
/// # Errors
/// [`ExportError::Calendar`] for years that have not four digits.
///
/// # Source
/// RFC 5545: 3.1 lines and folding, 3.3.5 form 1 floating times and form 2 UTC, 3.3.6 lengths of time, 3.3.11 text, 3.6.1 events without an end, 3.6.6
/// alarms, 3.8.2.7 what shows as busy, 3.8.6.3 when an alarm calls, 3.8.1.11 STATUS, 3.8.4.7 UID, 3.8.7.2 DTSTAMP, 3.8.7.4 SEQUENCE; RFC 9562, 5.5 names of version 5; RFC 7986, 5.1 NAME, 5.2 DESCRIPTION.
///
/// # Example
/// ```
/// use jiff::{civil::date, tz::TimeZone};
/// use vatsketch::{batch::batch, design::{Design, Wish}, export::calendar, plan::{Now, kitchen_week}, units::Units};
/// let now = Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC };
/// let mut design = Design::default();
/// design.week.wish = Wish::StartAt(date(2031, 5, 9).at(14, 30, 0, 0));
/// let batch = batch(&design)?;
/// let week = kitchen_week(&batch, &now)?.ok_or("no wish")?;
/// let text = String::from_utf8(calendar(&week, &batch, None, &now, &[], Units::METRIC)?)?;
/// assert!(text.contains("DTSTART:20310509T143000\r\n"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn calendar(
    week: &KitchenWeek,
    batch: &Batch,
    id: Option<DesignId>,
    now: &Now,
    before: &[u8],
    units: Units,
) -> Result<Vec<u8>, ExportError> {
    let stamp = Stamp::of(now)?;
    let vat = Vat::of(batch, week, id, now, units);
    let title = &vat.title;
    let notice = plain(&notice(&cautions(batch), units));
    let to_read = week.tasks.first().map(|task| Event::to_read(&notice, task.start.date(), &vat)).transpose()?;
    let tasks = week.tasks.iter().enumerate().map(|(place, task)| Event::of(task, place == 0, &vat));
    let events = tasks.chain(to_read.map(Ok)).collect::<Result<Vec<_>, _>>()?;
    let kept: BTreeSet<&str> = events.iter().map(|event| event.name.as_str()).collect();
    let gone = Gone::of(before, (title, id), &kept, (&date_time(now.at)?, &stamp.utc));
    let mut lines = Lines::default();
    lines.component("VCALENDAR", |lines| {
        lines.value("VERSION", "2.0");
        lines.value("PRODID", PRODUCT);
        lines.value("CALSCALE", "GREGORIAN");
        if !title.is_empty() {
            lines.text("NAME", title);
            // Read by calendars that do not know the newer word.
            lines.text("X-WR-CALNAME", title);
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

/// Returns what a plan is and is not, and the serious warnings, a line each.
fn notice(cautions: &[Caution], units: Units) -> String {
    let serious = cautions.iter().filter(|caution| caution.severity == Severity::Stop).map(|caution| caution_line(caution, units));
    std::iter::once(FROM_A_MODEL.to_owned()).chain(serious).collect::<Vec<_>>().join("\n")
}
