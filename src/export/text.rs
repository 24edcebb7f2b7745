//! The plan as plain text, for a terminal, a message or the clipboard.

use crate::plan::whole_day_words;
use crate::process::GermLine;
use crate::report::{Cost, Line, Plan, Purchase, ShoppingRow, StepTime, Target, Timing, agenda, short_moment};
use crate::units::Units;
use crate::words::{GERMS_BY_STAGE, POTENTIAL_GROWTH, caution_line};

/// Columns of a terminal that everybody has.
const COLUMNS: usize = 80;
/// Width of the box and the time before a step.
const MARGIN: usize = 17;

/// Returns a text that came from a file without what is no letter: control characters, which could give orders to the terminal it is printed
/// on, and marks that turn the direction of writing around, which could make it read as something else.
///
/// # Source
/// Unicode Standard Annex 9, 2.1 to 2.4: the explicit directional embeddings, overrides and isolates.
///
/// # Example
/// ```
/// use vatsketch::export::printable;
/// assert_eq!(printable("a\u{1b}[2Jb"), "a\u{fffd}[2Jb");
/// assert_eq!(printable("a\u{202e}b"), "a\u{fffd}b");
/// ```
#[must_use]
pub fn printable(text: &str) -> String {
    text.chars().map(|letter| if is_printable(letter) { letter } else { '\u{fffd}' }).collect()
}

/// Returns whether a letter may be printed as it is; the end of a line may.
pub(super) fn is_printable(letter: char) -> bool {
    let turns_around = matches!(letter, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
    let breaks = matches!(letter, '\u{2028}' | '\u{2029}');
    letter == '\n' || !(letter.is_control() || turns_around || breaks)
}

/// Returns the plan as plain text of 80 columns, cautions before the steps that they belong to.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, export::text, report::plan};
/// let text = text(&plan(&batch(&Design::default())?));
/// assert!(text.contains("not a measurement") && text.lines().all(|line| line.chars().count() <= 80));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn text(plan: &Plan) -> String {
    let mut page = Page(String::new(), plan.units);
    page.paragraph("", "", &plan.title);
    page.paragraph("", "", plan.subtitle);
    if !plan.note.is_empty() {
        page.gap();
        plan.note.lines().for_each(|line| page.paragraph("", "", line));
    }
    if let Some(timing) = &plan.timing {
        page.gap();
        page.paragraph("", "", &when(timing, plan.units));
        timing.remarks.iter().for_each(|remark| page.paragraph("- ", "  ", remark));
    }
    if !plan.before_all.is_empty() {
        page.heading("Before you begin");
        plan.before_all.iter().for_each(|caution| page.paragraph("! ", "  ", &caution_line(caution, plan.units)));
    }
    if !plan.shopping.is_empty() {
        page.heading("To buy and to have at hand");
        plan.shopping.iter().for_each(|row| page.paragraph("[ ] ", "    ", &bought(row)));
        let costs = plan.cost.iter().map(Cost::words);
        costs.chain(plan.shopping_trouble.iter().map(|why| no_packages(why))).for_each(|words| page.paragraph("", "", &words));
    }
    page.heading("Steps");
    if let Some(why) = &plan.no_week {
        page.paragraph("! ", "  ", &format!("No clock times: {why}."));
    }
    if !plan.steps.is_empty() && plan.timing.is_none() {
        page.paragraph("", "", "Times count from the start of warming.");
    }
    for day in agenda(&plan.steps) {
        if let Some(date) = day.date {
            page.day(&whole_day_words(date));
        }
        day.lines.iter().for_each(|line| page.step(line));
    }
    if !plan.stopped.is_empty() {
        page.heading("The plan stops here");
        plan.stopped.iter().for_each(|halt| page.paragraph("", "  ", &format!("{}: {}", halt.stage.title(), halt.why)));
    }
    if !plan.figures.is_empty() {
        page.heading("What to expect");
        plan.figures.iter().for_each(|target| page.paragraph("", "  ", &aim(target)));
    }
    if !plan.curves.is_empty() {
        page.heading("Curves in words");
        plan.curves.iter().for_each(|curve| page.paragraph("", "  ", &curve.in_words));
    }
    if let Some(table) = &plan.germs {
        page.heading(GERMS_BY_STAGE);
        page.paragraph("", "", POTENTIAL_GROWTH);
        page.rows(&table.headings(), &table.cells(GermLine::short_name));
        for figure in &table.others {
            page.paragraph("", "  ", &format!("{}: {}", figure.label_in(plan.units), figure.text_in(plan.units)));
        }
        table.notes(GermLine::short_name).iter().for_each(|note| page.paragraph("", "  ", note));
    }
    page.heading("Where the numbers come from");
    plan.sources.iter().for_each(|source| page.paragraph("", "  ", &format!("{} (seen: {})", source.title, source.seen)));
    page.0
}

/// The text so far, and the units that it is in.
struct Page(String, Units);

impl Page {
    fn gap(&mut self) {
        self.0.push('\n');
    }

    fn heading(&mut self, words: &str) {
        self.gap();
        self.paragraph("", "", words);
        self.0.push_str(&"-".repeat(words.chars().count()));
        self.gap();
    }

    /// Adds words that break between words only, `first` before the first line and `rest` before the others.
    fn paragraph(&mut self, first: &str, rest: &str, words: &str) {
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
    fn rows(&mut self, headings: &[String], rows: &[Vec<String>]) {
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
    fn day(&mut self, words: &str) {
        self.gap();
        self.paragraph("", "", &format!("=== {words} {}", "=".repeat(COLUMNS.saturating_sub(words.chars().count() + 5))));
    }

    fn step(&mut self, line: &Line<'_>) {
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
            self.paragraph(&indent, &format!("{indent}  "), &aim(target));
        }
        if line.times.len() > 1 {
            self.paragraph(&indent, &indent, &boxes(line.times.iter().map(times)));
        }
        if !step.if_off.is_empty() {
            self.paragraph(&indent, &format!("{indent}  "), &format!("If not: {}", step.if_off));
        }
        if !step.write_down.is_empty() {
            self.paragraph(&indent, &indent, &format!("Found ({}):\u{a0}________", step.write_down));
        }
    }
}

/// Returns a box to tick before each time.
fn boxes(times: impl Iterator<Item = String>) -> String {
    times.map(|time| format!("[\u{a0}]\u{a0}{time}")).collect::<Vec<_>>().join("   ")
}

fn when(timing: &Timing, units: Units) -> String {
    let word = if timing.begun { "Begun" } else { "Begins" };
    let begins = timing.begins.map(|begins| format!("{word} {}.", short_moment(begins, units))).unwrap_or_default();
    let ends = timing.finished.map(|at| format!(" {}: {}.", timing.ends, short_moment(at, units))).unwrap_or_default();
    format!("{begins}{ends} Time zone {}.", timing.zone)
}

fn no_packages(why: &str) -> String {
    format!("No packages could be chosen: {why}.")
}

fn bought(row: &ShoppingRow) -> String {
    let also = row.also.map(|also| format!(" = {also}")).unwrap_or_default();
    let kitchen = row.kitchen.as_ref().map(|kitchen| format!(" ({kitchen})")).unwrap_or_default();
    let rest = row.buy.as_ref().map(Purchase::rest).filter(|rest| !rest.is_empty()).map(|rest| format!(" ({rest})"));
    let buy = row.buy.as_ref().map(|buy| format!("; {}{}", buy.words(), rest.unwrap_or_default())).unwrap_or_default();
    format!("{}: {}{also}{kitchen}{buy}; {}", row.what, row.amount, row.look_for)
}

/// Returns how long a step takes as a sentence of its own behind it: that it is the least of a time must not be lost.
fn lasting(lasts: &Target) -> String {
    let mut label = lasts.label.chars();
    let first = label.next().map(|letter| letter.to_uppercase().to_string()).unwrap_or_default();
    format!(" {first}{} {}.", label.as_str(), amount(lasts))
}

fn aim(target: &Target) -> String {
    format!("{}: {}", target.label, amount(target))
}

fn amount(target: &Target) -> String {
    let tolerance = match target.tolerance() {
        Some(around) if around.starts_with('±') => format!(" {around}"),
        Some(range) => format!(" ({range})"),
        None => String::new(),
    };
    let kitchen = target.kitchen.as_ref().map(|kitchen| format!(" ({kitchen})")).unwrap_or_default();
    format!("{}{tolerance}{kitchen}", target.amount)
}
