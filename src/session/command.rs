//! What can be done to the open design.

use crate::analysis::{ScaleGoal, Scaled};
use crate::design::{
    BuyFor, Design, DesignError, Good, KnownKitchen, Stage, SuppliesDesign, Value, WeekDesign, Wish, field, fields, lower_first,
};
use crate::plan::time_words;
use crate::units::Units;
use crate::words::scale_name;

/// Something that is done to the open design; each is one step to undo.
#[derive(Clone, Debug, PartialEq)]
pub enum Command {
    /// Set one input.
    SetInput {
        /// Which.
        key: &'static str,
        /// To what.
        value: Value,
    },
    /// Set several inputs, in this order.
    SetInputs(Vec<(&'static str, Value)>),
    /// Scale the whole design: set the inputs that follow, in this order.
    Scale {
        /// To what.
        goal: ScaleGoal,
        /// The inputs that follow.
        inputs: Vec<(&'static str, Value)>,
    },
    /// Set every input of one stage back to its default.
    ResetStage(Stage),
    /// Give the design a title.
    SetTitle(String),
    /// Write a note.
    SetNote(String),
    /// Set the maker's week: the wish, the hours, where the maker is in the plan.
    SetWeek(Box<WeekDesign>),
    /// Set where everything comes from.
    SetSupplies(Box<SuppliesDesign>),
    /// Use a kitchen that a log tells of, or again what is believed of all kitchens.
    UseKitchen(Option<Box<KnownKitchen>>),
}

impl Command {
    /// Returns the command that makes the open design the scaled one; the choices that follow are set and no other.
    ///
    /// # Example
    /// ```
    /// use vatsketch::analysis::{ScaleGoal, ScaleTo, scale};
    /// use vatsketch::{design::Design, session::{Command, Session}};
    /// let mut session = Session::open(Design::default(), None)?;
    /// let scaled = scale(session.batch(), ScaleGoal { to: ScaleTo::Milk, amount: 3.0 })?;
    /// session.apply(Command::scaling(&scaled))?;
    /// assert_eq!(session.history().undo_name(), Some("Scale to 3 L of milk"));
    /// assert_eq!(session.design().draining.mould_count, 6);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn scaling(scaled: &Scaled) -> Self {
        Self::Scale { goal: scaled.goal, inputs: scaled.inputs() }
    }

    /// Does it to a design.
    ///
    /// # Errors
    /// [`DesignError`]; the first inputs of several may be set then.
    pub fn apply(&self, design: &mut Design) -> Result<(), DesignError> {
        match self {
            Self::SetInput { key, value } => design.set(key, *value)?,
            Self::SetInputs(inputs) | Self::Scale { inputs, .. } => {
                inputs.iter().try_for_each(|(key, value)| design.set(key, *value))?;
            }
            Self::ResetStage(stage) => {
                for field in fields().filter(|field| field.stage == *stage) {
                    field.set(design, field.default())?;
                }
            }
            Self::SetTitle(title) => design.title.clone_from(title),
            Self::SetNote(note) => design.note.clone_from(note),
            Self::SetWeek(week) => {
                week.check()?;
                design.week.clone_from(week);
            }
            Self::SetSupplies(supplies) => {
                supplies.check()?;
                design.supplies.clone_from(supplies);
            }
            Self::UseKitchen(Some(kitchen)) => design.use_kitchen((**kitchen).clone())?,
            Self::UseKitchen(None) => design.leave_kitchen(),
        }
        Ok(())
    }

    /// Returns whether it sets the same thing as another command.
    #[must_use]
    pub fn is_about_the_same(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::SetInput { key, .. }, Self::SetInput { key: other, .. }) => key == other,
            (Self::SetWeek(_), Self::SetWeek(_)) | (Self::SetSupplies(_), Self::SetSupplies(_)) => true,
            _ => false,
        }
    }

    /// Returns what the undo menu says of it: "Fat target 3.9 → 4.3 %".
    #[must_use]
    pub fn name(&self, before: &Design) -> String {
        match self {
            Self::SetInput { key, value } => input_name(before, key, *value),
            Self::SetInputs(inputs) => {
                let first = inputs.first().map_or_else(String::new, |(key, value)| input_name(before, key, *value));
                match inputs.len() {
                    0 | 1 => first,
                    more => format!("{first}, and {} more", more - 1),
                }
            }
            Self::Scale { goal, .. } => scale_name(*goal, Units::METRIC),
            Self::ResetStage(stage) => format!("{} back to defaults", stage.title()),
            Self::SetTitle(title) => format!("Title “{title}”"),
            Self::SetNote(_) => "Note".to_owned(),
            Self::SetWeek(week) => week_name(&before.week, week),
            Self::SetSupplies(supplies) => supplies_name(&before.supplies, supplies),
            Self::UseKitchen(Some(kitchen)) if kitchen.name.is_empty() => "Calculate for your kitchen".to_owned(),
            Self::UseKitchen(Some(kitchen)) => format!("Calculate for the kitchen “{}”", kitchen.name),
            Self::UseKitchen(None) => "Stop using your kitchen".to_owned(),
        }
    }
}

/// Returns what becomes of an input, in words.
fn input_name(before: &Design, key: &str, value: Value) -> String {
    field(key).map_or_else(
        |_| key.to_owned(),
        |field| format!("{} {} → {}", field.label, field.words(field.get(before)), field.words_with_unit(value)),
    )
}

/// Returns what changes in a week, in words.
fn week_name(before: &WeekDesign, after: &WeekDesign) -> String {
    if before.wish != after.wish {
        return match after.wish {
            Wish::Open => "No date yet".to_owned(),
            Wish::StartAt(at) => format!("Begin on {}", time_words(at)),
            Wish::SoonAfter(at) => format!("Begin soon after {}", time_words(at)),
            Wish::FinishedBy(by) => format!("Finished by {}", time_words(by)),
        };
    }
    if before.reached != after.reached {
        return match &after.reached {
            Some(here) => format!("Begun “{}” on {}", here.task, time_words(here.began)),
            None => "Plan from the beginning".to_owned(),
        };
    }
    let named = [
        (before.zone != after.zone, "Time zone"),
        (before.taken != after.taken, "Hours of sleep and work"),
        (before.busy != after.busy, "Busy times"),
    ];
    named.into_iter().find(|(changed, _)| *changed).map_or("Week", |(_, name)| name).to_owned()
}

/// Returns what changes among the supplies, in words.
fn supplies_name(before: &SuppliesDesign, after: &SuppliesDesign) -> String {
    let changed = Good::ALL.iter().find(|good| before.goods.get(*good) != after.goods.get(*good));
    if let Some(good) = changed {
        return format!("Supply of {}", lower_first(good.label()));
    }
    match after.buy_for {
        _ if before.buy_for == after.buy_for => "Prices of supplies".to_owned(),
        BuyFor::LeastCost => "Buy for least cost".to_owned(),
        BuyFor::LeastWaste => "Buy for least waste".to_owned(),
    }
}
