//! One step.

use crate::caution::Caution;
use crate::design::Stage;
use crate::record::EntryKind;
use crate::report::{Hold, StepTime, Target};

/// One step.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// The stage it belongs to.
    pub stage: Stage,
    /// Minutes from the start of warming.
    pub at_min: f64,
    /// The first word: what is done.
    pub verb: &'static str,
    /// The rest of the sentence.
    pub what: String,
    /// How it is measured where that needs saying, in a sentence or two.
    pub how: String,
    /// What is to be reached.
    pub targets: Vec<Target>,
    /// How long it takes.
    pub lasts: Option<Target>,
    /// Whether it is nothing but waiting, so that its time is the number that decides.
    pub only_waits: bool,
    /// When it is done, once or more often.
    pub times: Vec<StepTime>,
    /// Whether each of its times has a day of its own, weeks apart, and is named with it.
    pub by_date: bool,
    /// What to do if it is off.
    pub if_off: String,
    /// What is checked after it, before the work goes on.
    pub hold: Option<Hold>,
    /// What is written into the blank, with its unit.
    pub write_down: String,
    /// What the blank is in the log.
    pub record: Option<EntryKind>,
    /// The inputs that govern it; a caution that one of them causes stands before it.
    pub governed_by: &'static [&'static str],
    /// The cautions that belong before it.
    pub cautions: Vec<Caution>,
}

impl Step {
    /// Returns the number that decides and the others: how long it lasts where it only waits, and else the first target.
    #[must_use]
    pub fn decisive(&self) -> (Option<&Target>, Vec<&Target>) {
        let (mut targets, mut lasts) = (self.targets.iter(), self.lasts.iter());
        let main = if self.only_waits { lasts.next() } else { targets.next() };
        (main, targets.chain(lasts).collect())
    }

    /// Returns whether the cheeses go to the air with it.
    #[must_use]
    pub fn begins_drying(&self) -> bool {
        self.stage == Stage::Drying && self.verb == "Lay"
    }

    /// Gives the step its blank: what it asks for is written down in the log as the same.
    pub(super) fn write_down(&mut self, kind: EntryKind) {
        kind.row().blank.clone_into(&mut self.write_down);
        self.record = Some(kind);
    }

    /// Returns a step that is done once, as a task of the week.
    ///
    /// # Arguments
    /// * `task`, `name`: the key of the task, and the step's name in the log
    pub(super) fn once((task, name): (&str, &str), stage: Stage, at_min: f64, verb: &'static str, what: impl Into<String>) -> Self {
        let time = StepTime::counted(task, name, at_min);
        Self {
            stage,
            at_min,
            verb,
            what: what.into(),
            how: String::new(),
            targets: Vec::new(),
            lasts: None,
            only_waits: false,
            times: vec![time],
            by_date: false,
            if_off: String::new(),
            hold: None,
            write_down: String::new(),
            record: None,
            governed_by: &[],
            cautions: Vec::new(),
        }
    }
}
