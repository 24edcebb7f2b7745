//! The plan as plain text, for a terminal, a message or the clipboard.

use super::text_page::Page;
use crate::plan::whole_day_words;
use crate::process::GermLine;
use crate::report::{Cost, Plan, Purchase, ShoppingRow, TROUBLES, Timing, Trouble, agenda, short_moment};
use crate::units::Units;
use crate::words::{GERMS_BY_STAGE, POTENTIAL_GROWTH, caution_line};

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
    let mut page = Page::new(plan.units);
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
    if !plan.prepare.is_empty() {
        page.heading("Before you start");
        plan.prepare.iter().for_each(|words| page.paragraph("[ ] ", "    ", words));
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
    if !plan.weighings.is_empty() {
        page.heading("Weigh the marked cheese");
        plan.weighings.iter().for_each(|weighing| page.weighing(weighing));
    }
    if !plan.stopped.is_empty() {
        page.heading("The plan stops here");
        plan.stopped.iter().for_each(|halt| page.paragraph("", "  ", &format!("{}: {}", halt.stage.title(), halt.why)));
    }
    if !plan.figures.is_empty() {
        page.heading("What to expect");
        plan.figures.iter().for_each(|target| page.paragraph("", "  ", &target.words()));
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
    if let Some(label) = &plan.label {
        page.heading("On the label of each jar");
        page.label(label);
    }
    page.heading("If something is wrong");
    for Trouble { sign, may_be, what_to_do, discard, .. } in TROUBLES {
        page.paragraph("- ", "  ", &format!("{sign}: {may_be} {what_to_do} Discard: {discard}"));
    }
    page.heading("Where the numbers come from");
    plan.sources.iter().for_each(|source| page.paragraph("", "  ", &format!("{} (seen: {})", source.title, source.seen)));
    page.finished()
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
