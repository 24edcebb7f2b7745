//! A point at which the cook stops and checks; only if it is as it should be does the work go on.

use super::{Step, StepTime, Target};
use crate::units::Units;

/// What is checked after a step, before the next one.
#[derive(Clone, Debug, PartialEq)]
pub struct Hold {
    /// What is looked at, for the beginning of a line.
    pub ask: &'static str,
    /// The number that decides; none where the eye decides.
    pub aim: Option<Target>,
    /// What may be done only then.
    pub then: String,
    /// What to do if it is not so; empty where its step says that.
    pub if_not: String,
    /// What is written down, a blank for each.
    pub blanks: Vec<&'static str>,
}

impl Hold {
    /// Returns the number that decides as a range where it has one, such as `34.5–35.5 °C`.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Unit, report::{Amount, Hold, Target}};
    /// let aim = Target::near("milk", Amount::new(35.0, Unit::Celsius, 1), 0.5);
    /// let hold = Hold { ask: "Milk at", aim: Some(aim), then: "Then the rennet.".to_owned(), if_not: String::new(), blanks: vec!["°C"] };
    /// assert_eq!(hold.decides().as_deref(), Some("34.5\u{a0}to 35.5\u{a0}°C"));
    /// ```
    #[must_use]
    pub fn decides(&self) -> Option<String> {
        let aim = self.aim.as_ref()?;
        let Some((least, most)) = aim.within else { return Some(aim.amount.to_string()) };
        let end = |value: f64| super::Amount { value, ..aim.amount }.to_string();
        let (least, most) = (end(least), end(most));
        // The unit is said once, behind the second number.
        let symbol = most.rsplit_once('\u{a0}').map_or("", |(_, symbol)| symbol);
        let least = least.strip_suffix(symbol).unwrap_or(&least).trim_end_matches('\u{a0}');
        Some(format!("{least}\u{a0}to {most}"))
    }

    /// Returns the whole in a line of plain text.
    #[must_use]
    pub fn words(&self, if_off: &str) -> String {
        let aim = self.decides().map(|aim| format!(" {aim}")).unwrap_or_default();
        let if_not = if self.if_not.is_empty() { if_off } else { &self.if_not };
        let if_not = if if_not.is_empty() { String::new() } else { format!(" If not: {if_not}") };
        format!("{}{aim}? {}{if_not}", self.ask, self.then)
    }

    pub(super) fn shown_in(self, units: Units) -> Self {
        let told = |words: &str| units.told(words);
        let degree = units.scale(crate::design::Unit::Celsius, 30.0).symbol;
        Self {
            aim: self.aim.map(|aim| aim.shown_in(units)),
            then: told(&self.then),
            if_not: told(&self.if_not),
            blanks: self.blanks.into_iter().map(|blank| if blank == "°C" { degree } else { blank }).collect(),
            ..self
        }
    }
}

/// Returns what must be checked in a task of the week before it goes on, as a line; nothing where nothing must.
///
/// A hold at the end of one task belongs to the task that waits for it, as the thermometer's to the rennet.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, report::{hold_of, plan}};
/// let steps = plan(&batch(&Design::default())?).steps;
/// assert!(hold_of("rennet", &steps).unwrap().starts_with("Hold: Is the milk at 34.5"));
/// assert!(hold_of("warm", &steps).is_none() && hold_of("ladle", &steps).is_none());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn hold_of(task: &str, steps: &[Step]) -> Option<String> {
    let within = |step: &Step| step.times.iter().any(|time| time.task == task);
    let same = |one: &Step, other: &Step| {
        let tasks = |time: &StepTime| other.times.iter().any(|also| also.task == time.task);
        one.times.iter().any(tasks)
    };
    steps.iter().enumerate().find_map(|(at, step)| {
        let hold = step.hold.as_ref()?;
        let waiting = steps.get(at + 1).filter(|next| !same(step, next)).unwrap_or(step);
        within(waiting).then(|| format!("Hold: {}", hold.words(&step.if_off)))
    })
}
