//! A point at which the cook stops and checks; only if it is as it should be does the work go on.

use super::Target;
use crate::record::EntryKind;
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
    /// What the blanks are in the log, in the same order.
    pub records: Vec<EntryKind>,
}

/// Returns the blanks of a hold for what the log calls so.
pub(super) fn blanks_for(kinds: &[EntryKind]) -> Vec<&'static str> {
    kinds.iter().map(|kind| kind.row().held).collect()
}

impl Hold {
    /// Returns the number that decides as a range where it has one, such as `34.5–35.5 °C`.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Unit, report::{Amount, Hold, Target}};
    /// let aim = Target::near("milk", Amount::new(35.0, Unit::Celsius, 1), 0.5);
    /// let hold = Hold { ask: "Milk at", aim: Some(aim), then: "Then the rennet.".to_owned(), if_not: String::new(), blanks: vec!["°C"], records: Vec::new() };
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

    /// Returns what to do if it is not so: its own words, or else those of its step.
    ///
    /// # Arguments
    /// * `if_off`: what its step says
    #[must_use]
    pub fn if_not<'a>(&'a self, if_off: &'a str) -> &'a str {
        if self.if_not.is_empty() { if_off } else { &self.if_not }
    }

    /// Returns the whole in a line of plain text.
    #[must_use]
    pub fn words(&self, if_off: &str) -> String {
        let aim = self.decides().map(|aim| format!(" {aim}")).unwrap_or_default();
        let if_not = self.if_not(if_off);
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
