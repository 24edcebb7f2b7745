//! The plan as one page for a phone in the kitchen: acts, holds, boxes that stay ticked and timers that ring; no network.

use super::printable::printable;
use crate::design::Unit;
use crate::plan::whole_day_words;
use crate::report::{Hold, Line, Plan, Step, StepTime, TROUBLES, Target, Trouble, Weighing, agenda};
use crate::units::Units;
use crate::words::{MUST_NOT_EAT, caution_words, severity_word};
use std::fmt::Write;

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
            if line.step.verb == "Lay" && !plan.weighings.is_empty() {
                page.weighings(&plan.weighings, plan.units);
            }
        }
    }
    for halt in &plan.stopped {
        page.note(true, &format!("The plan stops here. {}: {}", halt.stage.title(), halt.why));
    }
    page.troubles();
    page.end();
    let key = stamp(&format!("{}{:?}", plan.title, plan.timing.as_ref().map(|timing| timing.begins)));
    // The maker's words come last, so that nothing in them is taken for a place of the page.
    PAGE.replace("{{key}}", &key).replace("{{title}}", &escaped(&plan.title)).replace("{{body}}", &page.html)
}

/// Returns a short stamp of a text: FNV-1a, which tells plans on one device apart and hides nothing.
fn stamp(text: &str) -> String {
    let mixed =
        text.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |mixed, byte| (mixed ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3));
    format!("{mixed:016x}")
}

/// Returns words that HTML shows as they are.
fn escaped(words: &str) -> String {
    let plain = printable(words);
    plain.chars().fold(String::with_capacity(plain.len()), |mut html, letter| {
        match letter {
            '&' => html.push_str("&amp;"),
            '<' => html.push_str("&lt;"),
            '>' => html.push_str("&gt;"),
            '"' => html.push_str("&quot;"),
            '{' => html.push_str("&#123;"),
            letter => html.push(letter),
        }
        html
    })
}

/// What stands on the page so far, and how many boxes, blanks and timers there are.
#[derive(Default)]
struct Body {
    html: String,
    fields: usize,
}

impl Body {
    /// Adds one line of HTML; a string takes all that is written to it.
    fn push(&mut self, html: std::fmt::Arguments<'_>) {
        let _ = writeln!(self.html, "{html}");
    }

    /// Returns the name of the next field.
    fn next(&mut self) -> String {
        self.fields += 1;
        format!("f{}", self.fields)
    }

    fn heading(&mut self, words: &str) {
        self.push(format_args!("<h2>{}</h2>", escaped(words)));
    }

    fn note(&mut self, grave: bool, words: &str) {
        self.push(format_args!("<p class=\"caution{}\">{}</p>", if grave { " grave" } else { "" }, escaped(words)));
    }

    fn cautions(&mut self, cautions: &[crate::caution::Caution], units: Units) {
        for caution in cautions {
            let said = caution_words(caution, units);
            let grave = caution.severity == crate::caution::Severity::Stop;
            self.note(grave, &format!("{}: {} {}", severity_word(caution.severity), said.what, said.remedy));
        }
    }

    fn head(&mut self, plan: &Plan) {
        self.push(format_args!("<h1>{}</h1>", escaped(&plan.title)));
        self.push(format_args!("<p><b>{}</b> {}</p>", escaped(plan.subtitle), escaped(MUST_NOT_EAT)));
        if let Some(why) = &plan.no_week {
            self.note(true, &format!("No clock times: {why}."));
        }
        if !plan.note.is_empty() {
            self.push(format_args!("<p class=\"soft\">{}</p>", escaped(&plan.note)));
        }
        self.push(format_args!(
            "<p class=\"soft\">Ticks, numbers and timers stay on this device. <span id=\"not-kept\" hidden><b>This browser keeps none of them.</b></span> A timer rings while this page is open.</p>"
        ));
        self.cautions(&plan.before_all, plan.units);
    }

    fn gather(&mut self, plan: &Plan) {
        self.heading("Gather");
        for row in &plan.shopping {
            let kitchen = row.kitchen.as_ref().map(|kitchen| format!(" ({kitchen})")).unwrap_or_default();
            self.row(&format!("{}: ", row.what), &format!("{}{kitchen}", row.amount));
        }
        self.heading("Before you start");
        plan.prepare.iter().for_each(|words| self.row(words, ""));
    }

    /// Adds a box with words beside it.
    fn row(&mut self, words: &str, bold: &str) {
        let id = self.next();
        self.push(format_args!(
            "<div class=\"row\"><input type=\"checkbox\" id=\"{id}\"><label for=\"{id}\">{}<b>{}</b></label></div>",
            escaped(words),
            escaped(bold)
        ));
    }

    fn line(&mut self, line: &Line<'_>, units: Units) {
        let step = line.step;
        if !line.again {
            self.cautions(&step.cautions, units);
        }
        for (number, time) in line.times.iter().enumerate() {
            let words = if line.by_date { time.words_with_day() } else { time.words() };
            self.step(line, time, &if line.at_once { "then".to_owned() } else { words }, number > 0 || line.again, units);
        }
        if let Some(hold) = line.hold() {
            self.hold(hold, step);
        }
    }

    /// Adds a step at one of its times.
    fn step(&mut self, line: &Line<'_>, time: &StepTime, at: &str, again: bool, units: Units) {
        let (step, id) = (line.step, self.next());
        self.push(format_args!(
            "<div class=\"step\"><input type=\"checkbox\" id=\"{id}\" aria-label=\"{}\"><div>",
            escaped(&time.name)
        ));
        self.push(format_args!(
            "<label for=\"{id}\"><span class=\"at\">{}</span> <b>{}</b> {}</label>",
            escaped(at),
            step.verb,
            escaped(&step.what)
        ));
        if !again {
            let mut targets = step.targets.iter().chain(&step.lasts);
            if let Some(main) = targets.next() {
                self.push(format_args!(
                    "<p><span class=\"soft\">{}</span> <span class=\"main\">{}</span></p>",
                    escaped(&main.label),
                    escaped(&amount(main))
                ));
            }
            let rest: Vec<String> =
                targets.map(|target| format!("{} <b>{}</b>", escaped(&target.label), escaped(&amount(target)))).collect();
            if !rest.is_empty() {
                self.push(format_args!("<p class=\"soft\">{}</p>", rest.join(" · ")));
            }
            for words in [&step.how].into_iter().filter(|words| !words.is_empty()) {
                self.push(format_args!("<p>{}</p>", escaped(words)));
            }
        }
        if let Some(seconds) = timed(step) {
            let id = self.next();
            self.push(format_args!(
                "<p><button id=\"{id}\" data-seconds=\"{seconds:.0}\">Start a timer of {}</button></p>",
                escaped(&crate::report::duration(seconds / 60.0, units))
            ));
        }
        if step.hold.is_none() {
            self.blank(&step.write_down);
            if !again && !step.if_off.is_empty() {
                self.push(format_args!("<p class=\"soft\"><b>If not:</b> {}</p>", escaped(&step.if_off)));
            }
        }
        self.push(format_args!("</div></div>"));
    }

    /// Adds a place to write a number.
    fn blank(&mut self, what: &str) {
        let id = self.next();
        self.push(format_args!(
            "<p><label for=\"{id}\">{}</label> <input type=\"text\" id=\"{id}\" autocomplete=\"off\"></p>",
            escaped(what)
        ));
    }

    fn hold(&mut self, hold: &Hold, step: &Step) {
        let decides = hold.decides().map(|number| format!(" <b class=\"big\">{}</b>", escaped(&number))).unwrap_or_default();
        let if_not = if hold.if_not.is_empty() { &step.if_off } else { &hold.if_not };
        self.push(format_args!(
            "<div class=\"hold\"><p><b>HOLD. {}</b>{decides}<b>?</b> {} <b>If not:</b> {}</p>",
            escaped(hold.ask),
            escaped(&hold.then),
            escaped(if_not)
        ));
        hold.blanks.iter().for_each(|blank| self.blank(blank));
        self.push(format_args!("</div>"));
    }

    fn weighings(&mut self, weighings: &[Weighing], units: Units) {
        self.push(format_args!("<p><b>Weigh the marked cheese</b> on the scale with its salt and pepper.</p>"));
        for weighing in weighings {
            let (at, after) = (weighing.time.words_with_day(), weighing.after(units));
            self.blank(&format!("{at} ({after}): {}", amount(&weighing.weight)));
        }
    }

    fn troubles(&mut self) {
        self.heading("If something is wrong");
        for Trouble { sign, may_be, what_to_do, discard, .. } in TROUBLES {
            self.push(format_args!("<p><b>{sign}.</b> {may_be} {what_to_do} <b>Discard:</b> {discard}</p>"));
        }
    }

    fn end(&mut self) {
        self.push(format_args!("<p><button id=\"afresh\">Begin afresh: take all ticks off</button></p>"));
    }
}

/// Returns an amount with its tolerance and its kitchen measure.
fn amount(target: &Target) -> String {
    let around =
        target.tolerance().map(|around| if around.starts_with('±') { format!(" {around}") } else { format!(" ({around})") });
    let kitchen = target.kitchen.as_ref().map(|kitchen| format!(" = {kitchen}")).unwrap_or_default();
    format!("{}{}{kitchen}", target.amount, around.unwrap_or_default())
}

/// Longest time that a timer is offered for, s: longer ones are days, which the plan's clock tells better.
const LONGEST_S: f64 = 4.0 * 3600.0;

/// Returns the seconds that a step lasts, where a timer helps.
fn timed(step: &Step) -> Option<f64> {
    let seconds = |target: &Target| match target.amount.unit {
        Unit::Second => Some(target.amount.value),
        Unit::Minute => Some(60.0 * target.amount.value),
        Unit::Hour => Some(3600.0 * target.amount.value),
        _ => None,
    };
    // Of a step that waits, what it waits for stands first.
    let waits = step.targets.first().filter(|_| matches!(step.verb, "Rest" | "Test"));
    step.lasts.iter().chain(waits).find_map(seconds).filter(|seconds| (1.0..=LONGEST_S).contains(seconds))
}
