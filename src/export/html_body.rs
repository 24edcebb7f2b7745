//! What stands on the page for a phone: acts with their boxes, holds, blanks and timers.

use super::printable::printable;
use crate::caution::{Caution, Severity};
use crate::design::Unit;
use crate::report::{Hold, Line, Plan, Step, StepTime, TROUBLES, Target, Trouble, Weighing, duration};
use crate::units::Units;
use crate::words::{MUST_NOT_EAT, caution_words, severity_word};
use std::fmt::Write;

/// Returns words that HTML shows as they are.
pub(super) fn escaped(words: &str) -> String {
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
pub(super) struct Body {
    pub(super) html: String,
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

    pub(super) fn heading(&mut self, words: &str) {
        self.push(format_args!("<h2>{}</h2>", escaped(words)));
    }

    pub(super) fn note(&mut self, grave: bool, words: &str) {
        self.push(format_args!("<p class=\"caution{}\">{}</p>", if grave { " grave" } else { "" }, escaped(words)));
    }

    fn cautions(&mut self, cautions: &[Caution], units: Units) {
        for caution in cautions {
            let said = caution_words(caution, units);
            let grave = caution.severity == Severity::Stop;
            self.note(grave, &format!("{}: {} {}", severity_word(caution.severity), said.what, said.remedy));
        }
    }

    pub(super) fn head(&mut self, plan: &Plan) {
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

    pub(super) fn gather(&mut self, plan: &Plan) {
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

    pub(super) fn line(&mut self, line: &Line<'_>, units: Units) {
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
            let (main, rest) = step.decisive();
            if let Some(main) = main {
                self.push(format_args!(
                    "<p><span class=\"soft\">{}</span> <span class=\"main\">{}</span></p>",
                    escaped(&main.label),
                    escaped(&main.amount_words())
                ));
            }
            let rest: Vec<String> = rest
                .into_iter()
                .map(|target| format!("{} <b>{}</b>", escaped(&target.label), escaped(&target.amount_words())))
                .collect();
            if !rest.is_empty() {
                self.push(format_args!("<p class=\"soft\">{}</p>", rest.join(" · ")));
            }
            if !step.how.is_empty() {
                self.push(format_args!("<p>{}</p>", escaped(&step.how)));
            }
        }
        if let Some(seconds) = timed(step) {
            let id = self.next();
            self.push(format_args!(
                "<p><button id=\"{id}\" data-seconds=\"{seconds:.0}\">Start a timer of {}</button></p>",
                escaped(&duration(seconds / 60.0, units))
            ));
        }
        if step.hold.is_none() {
            self.blank(&step.write_down);
            if !again && !step.if_off.is_empty() {
                self.push(format_args!("<p class=\"soft\"><b>If it goes wrong:</b> {}</p>", escaped(&step.if_off)));
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
        self.push(format_args!(
            "<div class=\"hold\"><p><b>HOLD. {}</b>{decides}<b>?</b> {} <b>If not:</b> {}</p>",
            escaped(hold.ask),
            escaped(&hold.then),
            escaped(hold.if_not(&step.if_off))
        ));
        hold.blanks.iter().for_each(|blank| self.blank(blank));
        self.push(format_args!("</div>"));
    }

    pub(super) fn weighings(&mut self, weighings: &[Weighing], units: Units) {
        self.push(format_args!("<p><b>Weigh the marked cheese</b> on the scale with its salt and pepper.</p>"));
        for weighing in weighings {
            let (at, after) = (weighing.time.words_with_day(), weighing.after(units));
            self.blank(&format!("{at} ({after}): {}", weighing.weight.amount_words()));
        }
    }

    pub(super) fn troubles(&mut self) {
        self.heading("If something is wrong");
        for Trouble { sign, may_be, what_to_do, discard, .. } in TROUBLES {
            self.push(format_args!("<p><b>{sign}.</b> {may_be} {what_to_do} <b>Discard:</b> {discard}</p>"));
        }
    }

    pub(super) fn end(&mut self) {
        self.push(format_args!("<p><button id=\"afresh\">Begin afresh: take all ticks off</button></p>"));
    }
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
    step.lasts.as_ref().and_then(seconds).filter(|seconds| (1.0..=LONGEST_S).contains(seconds))
}
