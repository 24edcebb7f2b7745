//! The plan as one page for a phone in the kitchen: acts, holds, boxes that stay ticked and timers that ring; no network.

use super::html_body::{Body, escaped};
use crate::plan::whole_day_words;
use crate::report::{Plan, agenda};

/// The page around the plan: style and script are in it, and nothing is loaded from elsewhere.
const PAGE: &str = include_str!("../../resources/kitchen.html");

/// Returns the plan as one HTML file that needs no network.
///
/// What is ticked and written stays in the browser of the device that shows it.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, export::html, report::plan};
/// let page = html(&plan(&batch(&Design::default())?));
/// assert!(page.contains("<input type=\"checkbox\"") && !page.contains("http://") && !page.contains("https://"));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn html(plan: &Plan) -> String {
    let mut page = Body::default();
    page.head(plan);
    page.gather(plan);
    for day in agenda(&plan.steps) {
        if let Some(date) = day.date {
            page.heading(&whole_day_words(date));
        } else {
            page.heading("Steps");
        }
        for line in &day.lines {
            page.line(line, plan.units);
            if line.step.begins_drying() && !plan.weighings.is_empty() {
                page.weighings(&plan.weighings, plan.units);
            }
        }
    }
    for halt in &plan.stopped {
        page.note(true, &format!("The plan stops here. {}: {}", halt.stage.title(), halt.why));
    }
    page.troubles();
    page.end();
    // Ticks belong to their boxes: of a plan that has changed they would stand at others.
    let key = stamp(&page.html);
    // The maker's words come last, so that nothing in them is taken for a place of the page.
    PAGE.replace("{{key}}", &key).replace("{{title}}", &escaped(&plan.title)).replace("{{body}}", &page.html)
}

/// Returns a short stamp of a text: FNV-1a, which tells plans on one device apart and hides nothing.
fn stamp(text: &str) -> String {
    let mixed =
        text.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |mixed, byte| (mixed ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3));
    format!("{mixed:016x}")
}
