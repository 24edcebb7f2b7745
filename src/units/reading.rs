//! The words by which units are chosen, as on the command line: `us`, or `fahrenheit,pounds,12h`.

use super::{Clock, LongTimes, Masses, Temperatures, Units, Volumes};
use std::str::FromStr;

/// What a word changes.
type Change = fn(Units) -> Units;

/// Every word with what it stands for, the first of each line being the one to show.
const WORDS: [(&[&str], Change); 15] = [
    (&["metric"], |_| Units::default()),
    (&["us"], |_| Units::US),
    (&["imperial"], |_| Units::IMPERIAL),
    (&["celsius"], |units| Units { temperatures: Temperatures::Celsius, ..units }),
    (&["fahrenheit"], |units| Units { temperatures: Temperatures::Fahrenheit, ..units }),
    (&["litres", "liters"], |units| Units { volumes: Volumes::Litres, ..units }),
    (&["cups", "us-cups"], |units| Units { volumes: Volumes::UsCups, ..units }),
    (&["quarts", "us-quarts"], |units| Units { volumes: Volumes::UsQuarts, ..units }),
    (&["pints", "imperial-pints"], |units| Units { volumes: Volumes::ImperialPints, ..units }),
    (&["kilograms"], |units| Units { masses: Masses::Kilograms, ..units }),
    (&["pounds"], |units| Units { masses: Masses::Pounds, ..units }),
    (&["days"], |units| Units { long_times: LongTimes::Days, ..units }),
    (&["hours"], |units| Units { long_times: LongTimes::Hours, ..units }),
    (&["24h"], |units| Units { clock: Clock::Hours24, ..units }),
    (&["12h"], |units| Units { clock: Clock::Hours12, ..units }),
];

/// The words in a sentence, for help and for errors.
pub const UNIT_WORDS: &str = "metric, us or imperial, or some of these joined by commas: celsius/fahrenheit, litres/cups/quarts/pints, kilograms/pounds, days/hours, 24h/12h";

/// A word that stands for no units.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("there are no units called `{given}`; write {UNIT_WORDS}, as in fahrenheit,pounds,12h")]
pub struct UnknownUnits {
    /// What was written.
    pub given: String,
}

impl FromStr for Units {
    type Err = UnknownUnits;

    /// Reads words with commas between them, in capitals or not; a later word takes the place of an earlier one.
    ///
    /// # Errors
    /// [`UnknownUnits`], with every word.
    ///
    /// # Example
    /// ```
    /// use vatsketch::units::{Clock, Masses, Units};
    /// let units: Units = "pounds, 12h".parse()?;
    /// assert_eq!((units.masses, units.clock), (Masses::Pounds, Clock::Hours12));
    /// assert_eq!("us,metric".parse(), Ok(Units::default()));
    /// assert!("furlongs".parse::<Units>().is_err());
    /// # Ok::<(), vatsketch::units::UnknownUnits>(())
    /// ```
    fn from_str(text: &str) -> Result<Self, UnknownUnits> {
        text.split(',').try_fold(Self::default(), |units, word| {
            let given = word.trim();
            let known = WORDS.iter().find(|(words, _)| words.iter().any(|known| known.eq_ignore_ascii_case(given)));
            known.map(|(_, change)| change(units)).ok_or_else(|| UnknownUnits { given: given.to_owned() })
        })
    }
}
