//! What is shown of the second design: calculated again only after a change.

use crate::analysis::{
    ComparedCaution, Difference, DifferingChoice, MilkComparison, Summary, compare_cautions, compare_milk, summary,
};
use crate::caution::{Severity, cautions, worst_by_stage};
use crate::curve::{Run, run};
use crate::design::{Stage, Value};
use crate::report::{BothCosts, both_costs, cost_note};
use crate::session::Session;
use crate::units::Units;

/// What is shown of the second design.
pub(in crate::ui) struct Beside {
    /// Titles of A and B.
    pub titles: [String; 2],
    /// The picture of B's run.
    pub run: Run,
    /// The stages of B of which a choice causes a caution, with the gravest.
    pub worst: Vec<(Stage, Severity)>,
    /// What the foot says of B.
    pub summary: Summary,
    /// Every figure of the two.
    pub figures: Vec<Difference>,
    /// The choices that differ.
    pub choices: Vec<DifferingChoice>,
    /// The cautions of the two.
    pub cautions: Vec<ComparedCaution>,
    /// What tells unlike milk apart.
    pub milk: Option<MilkComparison>,
    /// What the two buy, where they can be compared.
    pub costs: Option<BothCosts>,
    /// What is to be known of the costs.
    pub cost_note: Option<String>,
}

impl Beside {
    /// Returns that of a session; nothing where there is no second design.
    pub(in crate::ui) fn of(session: &Session) -> Option<Self> {
        let second = session.second()?;
        let named = |title: &str| if title.is_empty() { "Untitled design".to_owned() } else { title.to_owned() };
        Some(Self {
            titles: [named(&session.design().title), named(&second.design().title)],
            run: run(second.batch()),
            worst: worst_by_stage(&cautions(second.batch())),
            summary: summary(second.batch()),
            figures: session.differences(),
            choices: session.differing_choices(),
            cautions: compare_cautions(session.batch(), second.batch()),
            milk: compare_milk(session.batch(), second.batch()),
            costs: both_costs(session.batch(), second.batch()),
            cost_note: cost_note(session.batch(), second.batch()),
        })
    }
}

/// Returns a value of a choice that differs, with its unit as it is shown.
pub(in crate::ui) fn value_text(units: Units, choice: &DifferingChoice, value: Value) -> String {
    units.choice_text(choice.field, value)
}
