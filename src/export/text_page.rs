//! Lines of plain text: paragraphs that break between words, tables, days and steps.

use super::printable::printable;
use super::target_words::lasting;
use crate::design::Unit;
use crate::report::{ALLERGEN, Amount, JarLabel, Line, NOT_FOR, NOT_MEASURED, StepTime, Weighing};
use crate::units::Units;
use crate::words::caution_line;

/// Columns of a terminal that everybody has.
const COLUMNS: usize = 80;
/// Width of the box and the time before a step.
const MARGIN: usize = 17;

/// The text so far, and the units that it is in.
pub(super) struct Page(String, Units);

impl Page {
    /// Returns a page with nothing on it yet.
    pub(super) const fn new(units: Units) -> Self {
        Self(String::new(), units)
    }

    /// Returns what stands on it.
    pub(super) fn finished(self) -> String {
        self.0
    }

    pub(super) fn gap(&mut self) {
        self.0.push('\n');
    }

    pub(super) fn heading(&mut self, words: &str) {
        self.gap();
        self.paragraph("", "", words);
        self.0.push_str(&"-".repeat(words.chars().count()));
        self.gap();
    }

    /// Adds words that break between words only, `first` before the first line and `rest` before the others.
    pub(super) fn paragraph(&mut self, first: &str, rest: &str, words: &str) {
        let mut line = first.to_owned();
        let mut begun = false;
        // A no-break space holds number and unit together, and is printed as a plain one.
        for word in printable(words).split([' ', '\n']).filter(|word| !word.is_empty()) {
            if begun && line.chars().count() + 1 + word.chars().count() > COLUMNS {
                self.line(&line);
                rest.clone_into(&mut line);
                begun = false;
            }
            if begun {
                line.push(' ');
            }
            line.push_str(word);
            begun = true;
        }
        self.line(&line);
    }

    fn line(&mut self, line: &str) {
        self.0.push_str(line.replace('\u{a0}', " ").trim_end());
        self.0.push('\n');
    }

    /// Adds a table: the first column to the left, the others to the right.
    pub(super) fn rows(&mut self, headings: &[String], rows: &[Vec<String>]) {
        let lines = || std::iter::once(headings).chain(rows.iter().map(Vec::as_slice));
        let width = |column: usize| lines().filter_map(|line| line.get(column)).map(|cell| cell.chars().count()).max().unwrap_or(0);
        let widths: Vec<usize> = (0..headings.len()).map(width).collect();
        for line in lines() {
            let cells = line.iter().zip(&widths).enumerate().map(|(column, (cell, &width))| match column {
                0 => format!("{cell:<width$}"),
                _ => format!("{cell:>width$}"),
            });
            self.line(&cells.collect::<Vec<_>>().join("  "));
        }
    }

    /// Adds the rule at a change of day.
    pub(super) fn day(&mut self, words: &str) {
        self.gap();
        self.paragraph("", "", &format!("=== {words} {}", "=".repeat(COLUMNS.saturating_sub(words.chars().count() + 5))));
    }

    pub(super) fn step(&mut self, line: &Line<'_>) {
        let (step, indent) = (line.step, " ".repeat(MARGIN));
        self.gap();
        let times = |time: &StepTime| if line.by_date { time.words_with_day() } else { time.words() };
        if line.again {
            let boxes = boxes(line.times.iter().map(times));
            self.paragraph("", "", &format!("{boxes}   {} {} As before.", step.verb, step.what));
            return;
        }
        for caution in &step.cautions {
            self.paragraph("  ! ", "    ", &caution_line(caution, self.1));
        }
        let lasts = step.lasts.as_ref().map(lasting).unwrap_or_default();
        let first = line.times.first().filter(|_| !line.by_date).map(StepTime::words).unwrap_or_default();
        let at = format!("[ ] {first:<width$}", width = MARGIN - 4);
        self.paragraph(&at, &indent, &format!("{} {}{lasts}", step.verb, step.what));
        if !step.how.is_empty() {
            self.paragraph(&indent, &indent, &step.how);
        }
        for target in &step.targets {
            self.paragraph(&indent, &format!("{indent}  "), &target.words());
        }
        if line.times.len() > 1 {
            self.paragraph(&indent, &indent, &boxes(line.times.iter().map(times)));
        }
        let hold = line.hold();
        if !step.if_off.is_empty() && hold.is_none_or(|hold| !hold.if_not.is_empty()) {
            self.paragraph(&indent, &format!("{indent}  "), &format!("If it goes wrong: {}", step.if_off));
        }
        if let Some(hold) = hold {
            self.paragraph("  HOLD           ", &indent, &hold.words(&step.if_off));
            let blanks = hold.blanks.iter().map(|blank| format!("{blank}:\u{a0}________"));
            self.paragraph(&indent, &indent, &blanks.collect::<Vec<_>>().join("   "));
        } else if !step.write_down.is_empty() {
            self.paragraph(&indent, &indent, &format!("Found ({}):\u{a0}________", step.write_down));
        }
    }

    /// Adds one weighing, with a blank.
    pub(super) fn weighing(&mut self, weighing: &Weighing) {
        let (at, after) = (weighing.time.words_with_day(), weighing.after(self.1));
        let tolerance = weighing.weight.tolerance().map(|range| format!(" ({range})")).unwrap_or_default();
        self.line(&format!("[ ] {at:<24}{after:<12}{:<22}________", format!("{}{tolerance}", weighing.weight.amount)));
    }

    /// Adds what stands on the label of a jar.
    pub(super) fn label(&mut self, label: &JarLabel) {
        let known = |day: &Option<String>| day.clone().unwrap_or_else(|| "________".to_owned());
        let cold = Amount::new(label.no_warmer_than_c, Unit::Celsius, 0).shown_in(self.1);
        self.paragraph("", "  ", &format!("{}; batch ________; {} jars; net ________", label.title, label.jars));
        self.paragraph("", "  ", &format!("Made {}; in vinegar from {}.", known(&label.made), known(&label.in_vinegar)));
        self.paragraph("", "  ", &format!("pH ________ on ________; {NOT_MEASURED}."));
        self.paragraph("", "  ", &format!("Discard after {}. Keep at {cold} or colder, covered.", known(&label.discard_after)));
        self.paragraph("", "  ", &format!("{}. Allergen: {ALLERGEN}.", label.ingredients.join(", ")));
        self.paragraph("", "  ", NOT_FOR);
    }
}

/// Returns a box to tick before each time.
fn boxes(times: impl Iterator<Item = String>) -> String {
    times.map(|time| format!("[\u{a0}]\u{a0}{time}")).collect::<Vec<_>>().join("   ")
}
