//! When a week begins and ends, and what it costs its maker.

use super::when::to_five;
use crate::batch::Batch;
use crate::caution::plan_end;
use crate::design::upper_first;
use crate::plan::{KitchenWeek, WeekTask};
use crate::units::Units;
use crate::words::{alarm_words, end_words};
use jiff::civil::DateTime;

/// The week in short.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Timing {
    /// When the first task begins; where the vat was begun already, the task begun last.
    pub begins: Option<DateTime>,
    /// Whether that task is begun already, and the plan goes on from it.
    pub begun: bool,
    /// When the hands are off the last task before the keeping.
    pub finished: Option<DateTime>,
    /// What happens then, for the beginning of a line: "Finished", or that the cheeses are not sour.
    pub ends: String,
    /// The time zone that all its times are in.
    pub zone: String,
    /// What the week costs sleep and work, what would keep it out of impossible hours, what it makes longer or shorter, and what does not fit; a
    /// sentence each.
    pub remarks: Vec<String>,
}

impl Timing {
    pub(super) fn of(week: &KitchenWeek, batch: &Batch) -> Self {
        let sentence = |words: &str| if words.ends_with('.') { words.to_owned() } else { format!("{words}.") };
        let notes = week.tasks.iter().filter_map(|task: &WeekTask| task.note.as_deref());
        let end = plan_end(batch).map(|end| end_words(&end, Units::METRIC));
        let sour = end.as_ref().and_then(|end| end.sour.as_deref());
        let alarms = alarm_words(week, Units::METRIC);
        // The alarms are told together, with their times.
        let others = week.reasons.iter().filter(|reason| !reason.is_alarm).map(|reason| reason.words.as_str());
        let words = alarms.as_deref().into_iter().chain(others);
        let words = words.chain(week.impossible.iter().flat_map(|found| [found.words.as_str(), found.help.as_str()]));
        let words = words.chain(week.stretches.iter().map(|stretch| stretch.words.as_str())).chain(notes).chain(sour);
        Self {
            begins: week.tasks.first().map(|task| to_five(task.start)),
            begun: week.tasks.first().is_some_and(|task| task.begun),
            finished: week.finished.map(to_five),
            ends: upper_first(end.as_ref().map_or("ends", |end| end.by_clock)),
            zone: week.zone.clone(),
            remarks: words.map(|words| upper_first(&sentence(words))).collect(),
        }
    }
}
