//! One event of the calendar: a task, or what is to be read first.

use super::super::target_words::lasting;
use super::super::{ExportError, printable};
use super::alarms::{Alarm, alarms};
use super::lines::Lines;
use super::moments::{Stamp, date, date_time, in_utc};
use super::names::{TASK, name};
use crate::batch::Batch;
use crate::design::DesignId;
use crate::plan::{KitchenWeek, Now, Pass, WeekTask};
use crate::report::{Step, hold_of, week_steps};
use crate::units::Units;
use crate::words::FROM_A_MODEL;
use jiff::civil::{Date, DateTime};

/// The key that the entry to read first is named by, as a task is by its own.
const READ_FIRST: &str = "read_first";

/// What all events of one calendar share.
pub(super) struct Vat<'a> {
    id: Option<DesignId>,
    /// The name of the vat, as a calendar can hold it.
    pub(super) title: String,
    steps: Vec<Step>,
    now: &'a Now,
    units: Units,
}

impl<'a> Vat<'a> {
    pub(super) fn of(batch: &'a Batch, week: &KitchenWeek, id: Option<DesignId>, now: &'a Now, units: Units) -> Self {
        Self { id, title: plain(&batch.design.title), steps: week_steps(batch, week, units), now, units }
    }

    /// Returns the steps of the plan that are done in a task.
    fn steps_of(&self, key: &str) -> Vec<&Step> {
        self.steps.iter().filter(|step| step.times.iter().any(|time| time.task == key)).collect()
    }

    /// Returns what an event is called: with the name of the vat, if it has one.
    fn named(&self, what: &str) -> String {
        if self.title.is_empty() { plain(what) } else { format!("{} – {}", plain(what), self.title) }
    }

    fn described(&self, task: &WeekTask, steps: &[&Step]) -> String {
        let mut lines = vec![self.title.clone(), self.units.told(&task.what)];
        lines.push(self.units.told(task.note.as_deref().unwrap_or_default()));
        for step in steps {
            // What the task says already is not said twice.
            let said = format!("{} {}", step.verb, step.what);
            let lasts = step.lasts.as_ref().map(lasting).unwrap_or_default();
            let sentence = if task.what.contains(&said) { lasts } else { format!("{said}{lasts}") };
            let targets = step.targets.iter().map(|target| format!("- {}", target.words()));
            // No line ends between a number and its unit here, so that a plain space parts them, which every calendar shows.
            lines.extend([sentence, step.how.clone()].into_iter().chain(targets).map(|line| line.replace('\u{a0}', " ")));
        }
        lines.extend(hold_of(&task.key, &self.steps).map(|line| line.replace('\u{a0}', " ")));
        lines.push(FROM_A_MODEL.to_owned());
        let lines = lines.iter().map(|line| plain(line)).filter(|line| !line.is_empty());
        lines.collect::<Vec<_>>().join("\n")
    }
}

/// One event as it is written.
pub(super) struct Event {
    pub(super) name: String,
    key: String,
    summary: String,
    description: String,
    /// The property with its parameter, and its value.
    start: (&'static str, String),
    /// When the hands are off, if any are needed.
    end: Option<String>,
    alarms: Vec<Alarm>,
}

impl Event {
    /// Returns the event of a task.
    ///
    /// # Arguments
    /// * `first`: whether the vat begins with it
    pub(super) fn of(task: &WeekTask, first: bool, vat: &Vat<'_>) -> Result<Self, ExportError> {
        // The wall clock alone cannot tell two passes of one hour apart, and an event would end before it begins.
        let twice = task.start_pass.name.is_some() || task.end_pass.name.is_some();
        let time = |at: DateTime, pass: &Pass| if twice { in_utc(at, pass) } else { date_time(at) };
        let start = if task.is_last_day() {
            ("DTSTART;VALUE=DATE", date(task.start.date())?)
        } else {
            ("DTSTART", time(task.start, &task.start_pass)?)
        };
        let end = if task.hands_min > 0 { Some(time(task.end, &task.end_pass)?) } else { None };
        let (steps, summary) = (vat.steps_of(&task.key), vat.named(&task.name));
        Ok(Self {
            name: name(&vat.title, vat.id, &task.key),
            key: task.key.clone(),
            alarms: alarms(task, (&summary, &vat.title), first, &steps, vat.now)?,
            description: vat.described(task, &steps),
            summary,
            start,
            end,
        })
    }

    /// Returns the entry of the whole first day: what the plan is and is not, and the serious warnings.
    pub(super) fn to_read(notice: &str, day: Date, vat: &Vat<'_>) -> Result<Self, ExportError> {
        let title = &vat.title;
        Ok(Self {
            name: name(title, vat.id, READ_FIRST),
            key: READ_FIRST.to_owned(),
            summary: vat.named("Read first: what this plan is, and its warnings"),
            description: if title.is_empty() { notice.to_owned() } else { format!("{title}\n{notice}") },
            start: ("DTSTART;VALUE=DATE", date(day)?),
            end: None,
            alarms: Vec::new(),
        })
    }

    pub(super) fn write(&self, stamp: &Stamp, lines: &mut Lines) {
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
            self.alarms.iter().for_each(|alarm| alarm.write(lines));
        });
    }
}

/// Returns words without what a calendar's text cannot hold: control characters, but for the ends of lines, which are one kind here.
pub(super) fn plain(words: &str) -> String {
    printable(&words.replace("\r\n", "\n").replace('\r', "\n").replace('\t', " ")).trim().to_owned()
}
