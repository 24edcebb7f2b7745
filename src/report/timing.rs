//! When a week begins and ends, and what it costs its maker.

use crate::plan::{KitchenWeek, WeekTask};
use jiff::civil::DateTime;

/// The week in short.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Timing {
    /// When the first task begins; where the vat was begun already, the task begun last.
    pub begins: Option<DateTime>,
    /// Whether that task is begun already, and the plan goes on from it.
    pub begun: bool,
    /// When the cheeses are finished.
    pub finished: Option<DateTime>,
    /// The time zone that all its times are in.
    pub zone: String,
    /// What the week costs sleep and work, what it makes longer or shorter, and what does not fit; a sentence each.
    pub remarks: Vec<String>,
}

impl Timing {
    pub(super) fn of(week: &KitchenWeek) -> Self {
        let sentence = |words: &str| if words.ends_with('.') { words.to_owned() } else { format!("{words}.") };
        let notes = week.tasks.iter().filter_map(|task: &WeekTask| task.note.as_deref());
        let words = week.reasons.iter().map(|reason| reason.words.as_str());
        let words = words.chain(week.stretches.iter().map(|stretch| stretch.words.as_str())).chain(notes);
        Self {
            begins: week.tasks.first().map(|task| task.start),
            begun: week.tasks.first().is_some_and(|task| task.begun),
            finished: week.finished,
            zone: week.zone.clone(),
            remarks: words.map(|words| upper_first(&sentence(words))).collect(),
        }
    }
}

/// Returns words for the beginning of a sentence.
fn upper_first(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}
