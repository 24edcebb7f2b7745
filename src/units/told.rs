//! Quantities inside a sentence that was written in metric units: a caution, why a stage failed, what a change did.
//!
//! Our sentences are made in one way, a number, a space and a symbol, so that they can be read back. What a maker typed is never read.

use super::{Clock, Units};
use crate::design::Unit;
use jiff::civil::Time;

/// The units that are looked for in any sentence.
const ANYWHERE: [Unit; 4] = [Unit::Celsius, Unit::Kilogram, Unit::Millilitre, Unit::Hour];
/// What may stand between two numbers that share a unit.
const BETWEEN: [&str; 4] = [" and ", " to ", " → ", "–"];
/// Before a number of which other things are counted, as in “6 g in 100 mL”, which is a strength and no volume.
const OF_WHICH: &str = "in ";

impl Units {
    /// Returns a sentence with its temperatures, kilograms, millilitres, long times and times of the day as they are shown.
    ///
    /// Only numbers right before the symbol count, and a number before those with “and” or “to” between; `kg/L` is no mass, and “in 100 mL” no
    /// volume. Grams are left alone here, since many of them are parts of something.
    ///
    /// # Example
    /// ```
    /// use vatsketch::units::Units;
    /// assert_eq!(Units::US.told("35 h between 4 and 60 °C"), "35 h between 39 and 140 °F");
    /// assert_eq!(Units::US.told("milk of 1.030 kg/L, 6 g in 100 mL"), "milk of 1.030 kg/L, 6 g in 100 mL");
    /// assert_eq!(Units::US.told("Fri 9 May, 18:30"), "Fri 9 May, 6:30 pm");
    /// assert_eq!(Units::US.told("freeze at −20 °C, keep at 2–4 °C"), "freeze at −4 °F, keep at 36–39 °F");
    /// ```
    #[must_use]
    pub fn told(self, sentence: &str) -> String {
        self.told_of(sentence, &ANYWHERE)
    }

    /// Returns the same for a sentence of which it is known which units in it are whole quantities.
    #[must_use]
    pub fn told_of(self, sentence: &str, known: &[Unit]) -> String {
        if self.are_metric() {
            return sentence.to_owned();
        }
        let told = known.iter().fold(sentence.to_owned(), |sentence, unit| self.with_one_unit(&sentence, *unit));
        let told = if self.without_days() { in_hours(&told) } else { told };
        if self.clock == Clock::Hours12 { self.with_hours(&told) } else { told }
    }

    fn with_one_unit(self, sentence: &str, unit: Unit) -> String {
        let symbol = format!(" {}", unit.symbol());
        let (mut done, mut rest) = (String::new(), sentence);
        while let Some((before, after)) = rest.split_once(&symbol) {
            let whole_symbol = !after.starts_with(|letter: char| letter.is_alphanumeric() || letter == '/');
            let found = numbers_at_end(before).filter(|(words, _)| whole_symbol && !words.ends_with(OF_WHICH));
            let told = found.map(|(words, numbers)| format!("{words}{}", self.shown_together(numbers, unit)));
            done += &told.unwrap_or_else(|| format!("{before}{symbol}"));
            rest = after;
        }
        done + rest
    }

    /// Returns one number with its unit, or two with what stands between them, as they are shown.
    fn shown_together(self, numbers: &str, unit: Unit) -> String {
        let pair = BETWEEN.iter().find_map(|between| Some((numbers.split_once(between)?, between)));
        let shown = match pair {
            None => read(numbers).and_then(|(value, decimals)| self.text(unit, value, decimals)),
            Some(((first, second), between)) => read(first).zip(read(second)).and_then(|((first, _), (second, decimals))| {
                let scale = self.scale(unit, first.max(second));
                let digits = |value| scale.digits(value, decimals);
                (!scale.is_own()).then(|| format!("{}{between}{} {}", digits(first), digits(second), scale.symbol))
            }),
        };
        // Signs are written as the sentence writes them.
        let shown = shown.map(|shown| if numbers.contains('−') { shown.replace('-', "−") } else { shown });
        shown.unwrap_or_else(|| format!("{numbers} {}", unit.symbol()))
    }

    /// Returns a sentence with its times of the day as they are shown.
    fn with_hours(self, sentence: &str) -> String {
        let (mut done, mut rest) = (String::new(), sentence);
        while let Some((before, after)) = rest.split_once(':') {
            let hours = number_at_end(before);
            let minutes: String = after.chars().take_while(char::is_ascii_digit).collect();
            // A date with a time in one word is data, and three numbers are no time of the day.
            let alone = minutes.len() == 2 && !after.get(2..).is_some_and(|more| more.starts_with(':'));
            let alone = alone && hours.is_some_and(|(words, _)| !words.ends_with(['T', ':', '.']));
            let time = hours.filter(|_| alone).and_then(|(words, hours)| {
                let at = Time::new(hours.parse().ok()?, minutes.parse().ok()?, 0, 0).ok()?;
                Some((words, at))
            });
            if let Some((words, at)) = time {
                done.push_str(words);
                done.push_str(&self.hour(at));
                rest = after.get(2..).unwrap_or_default();
            } else {
                done.push_str(before);
                done.push(':');
                rest = after;
            }
        }
        done + rest
    }
}

/// Returns a sentence in which days with hours are hours: `1 day 16 h` as `40 h`. Days alone stay, for rules are written in them.
fn in_hours(sentence: &str) -> String {
    let (mut done, mut rest) = (String::new(), sentence);
    while let Some((before, after)) = rest.split_once(" day") {
        let following = after.strip_prefix('s').unwrap_or(after).strip_prefix(' ');
        let joined = following.and_then(|following| {
            let (hours, more) = following.split_once(" h")?;
            let (words, days) = number_at_end(before)?;
            let all: i64 = 24 * days.parse::<i64>().ok()? + hours.parse::<i64>().ok()?;
            Some((words, all, more))
        });
        if let Some((words, all, more)) = joined {
            done.extend([words, &all.to_string(), " h"]);
            rest = more;
        } else {
            done.push_str(before);
            done.push_str(" day");
            rest = after;
        }
    }
    done + rest
}

/// Returns a number and how many decimals it has.
fn read(number: &str) -> Option<(f64, usize)> {
    Some((number.replace('−', "-").parse().ok()?, number.split_once('.').map_or(0, |(_, decimals)| decimals.len())))
}

/// Parts a text into what stands before the number at its end, and that.
fn number_at_end(text: &str) -> Option<(&str, &str)> {
    let words = text.trim_end_matches(|letter: char| letter.is_ascii_digit() || letter == '.');
    let number = text.strip_prefix(words)?;
    // A full stop may end the sentence before.
    let bare = number.trim_start_matches('.');
    read(bare)?;
    let before = text.get(..text.len() - bare.len())?;
    // A sign belongs to the number, unless it is a hyphen behind a word.
    let signed = before.strip_suffix(['−', '-']).filter(|words| words.is_empty() || words.ends_with([' ', '(', '–']));
    let before = signed.unwrap_or(before);
    Some((before, text.get(before.len()..)?))
}

/// Parts a text into what stands before the number at its end, or before the two numbers there, and those.
fn numbers_at_end(text: &str) -> Option<(&str, &str)> {
    let (before, _) = number_at_end(text)?;
    let first = BETWEEN.iter().find_map(|between| number_at_end(before.strip_suffix(between)?));
    let words = first.map_or(before, |(words, _)| words);
    Some((words, text.get(words.len()..)?))
}
