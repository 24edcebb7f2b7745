//! The short guide: a handful of steps through the window, from the shop to the sources.

use super::model::FROM_A_MODEL;

/// A place in the window that a step of the guide speaks of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GuidePlace {
    /// The choices that decide what is bought.
    BeforeBuying,
    /// The picture of the run.
    Run,
    /// The curve of a station, with the cut.
    Curve,
    /// Figures and warnings.
    Results,
    /// The menus, with undo and redo.
    Menus,
    /// The week, the shopping and the paper.
    Plan,
    /// What really happened.
    Log,
    /// Laws and constants.
    Sources,
}

/// One step of the guide.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct GuideStep {
    /// What it speaks of.
    pub place: GuidePlace,
    /// Its heading.
    pub title: &'static str,
    /// What it says.
    pub says: &'static str,
}

/// Every step, in the order of the way from milk to plan.
pub const GUIDE: &[GuideStep] = &[
    GuideStep {
        place: GuidePlace::BeforeBuying,
        title: "Before buying",
        says: "Say here how much milk you get, how much fat you want, how rich your cream is and how many moulds you have: drag a slider or type a number. Everything else follows, and the line next to the heading tells what to buy.",
    },
    GuideStep {
        place: GuidePlace::Run,
        title: "The run",
        says: "The band is your milk on its way to the jar, as thick as it weighs. Press a station to see its choices, its curve and its figures. A sign marks the gravest warning that one of its choices causes.",
    },
    GuideStep {
        place: GuidePlace::Curve,
        title: "One curve, and a cheese cut open",
        says: "The curve of the station is large; drag one of its round handles, and the choice behind it moves. The cut shows a cheese from inside at the hour that you choose: its moisture, its salt, its pH. Every curve is also there as a table.",
    },
    GuideStep {
        place: GuidePlace::Results,
        title: "Figures and warnings",
        says: "Press a figure: its card says why it is so, what changes it most and how to reach a target. Below are the warnings, the gravest first. “What would lift this?” looks for the smallest change that does.",
    },
    GuideStep {
        place: GuidePlace::Menus,
        title: "Trying costs nothing",
        says: "Every change is a step, and the two arrows take it back and do it again. The menu Compare puts a second vat next to the first. Nothing is in a file before you save it.",
    },
    GuideStep {
        place: GuidePlace::Plan,
        title: "Plan and print",
        says: "Week fits the tasks into your hours, Shopping finds the packages to buy, Paper shows two pages to hang in the kitchen: save them as PDF, print them, or take them along on a phone.",
    },
    GuideStep {
        place: GuidePlace::Log,
        title: "While you make it",
        says: "Begin a batch on the day. This page says what comes next and moves the plan when you are late; write down what you measure, and it shows what differed from the plan. An invented log can be looked at first.",
    },
    GuideStep {
        place: GuidePlace::Sources,
        title: "Where the numbers come from",
        says: "Every law and every constant is here with its source and how far to trust it. The words of the trade are explained in the menu Help.",
    },
];

/// Returns what a step says; the last one also what every output of the program says.
///
/// # Example
/// ```
/// use vatsketch::words::{FROM_A_MODEL, GUIDE, step_words};
/// assert!(step_words(GUIDE.last().unwrap()).ends_with(FROM_A_MODEL));
/// ```
#[must_use]
pub fn step_words(step: &GuideStep) -> String {
    if step.place == GuidePlace::Sources { format!("{} {FROM_A_MODEL}", step.says) } else { step.says.to_owned() }
}
