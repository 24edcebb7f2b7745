//! What the template is given: words, and curves prepared for drawing.

use super::Sheets;
use super::aim::Aim;
use super::chart::Chart;
use super::kitchen::{Kitchen, Short};
use super::label::Label;
use crate::caution::{Caution, Severity};
use crate::figure::GermTable;
use crate::process::GermLine;
use crate::report::{LawRow, Plan, ShopPlace, ShoppingRow, TROUBLES, Timing, Trouble, UsedSource, short_moment, source_title};
use crate::source::{SourceId, ledger};
use crate::units::Units;
use crate::words::{CautionWords, GERMS_BY_STAGE, MUST_NOT_EAT, POTENTIAL_GROWTH, caution_word, caution_words};
use serde::Serialize;

/// The whole plan in words.
#[derive(Debug, Serialize)]
pub(super) struct Sheet {
    paper: &'static str,
    with: Vec<&'static str>,
    title: String,
    subtitle: &'static str,
    not_for: &'static str,
    note: String,
    timing: Option<Hours>,
    no_week: Option<String>,
    /// The two pages.
    before_all: Vec<Short>,
    gather: Vec<Bought>,
    prepare: Vec<String>,
    kitchen: Kitchen,
    weight: Option<Chart>,
    stopped: Vec<Halt>,
    /// What else is printed.
    shopping: Vec<Shelf>,
    cost: Option<String>,
    shopping_trouble: Option<String>,
    troubles: Vec<TroubleRow>,
    label: Option<Label>,
    cautions: Vec<Warning>,
    figures: Vec<Aim>,
    charts: Vec<Chart>,
    germs: Option<Germs>,
    laws: Vec<String>,
    sources: Vec<String>,
}

#[derive(Debug, Serialize)]
struct Hours {
    ends: Option<String>,
    zone: String,
    remarks: Vec<String>,
}

#[derive(Debug, Serialize)]
struct Bought {
    what: &'static str,
    amount: String,
    also: Option<String>,
    kitchen: Option<String>,
    look_for: String,
    buy: Option<String>,
    rest: String,
}

/// A caution in full.
#[derive(Debug, Serialize)]
struct Warning {
    /// Said in words, because a grey print shows no colour.
    word: &'static str,
    grave: bool,
    note: bool,
    what: String,
    remedy: String,
}

#[derive(Debug, Serialize)]
struct Halt {
    stage: &'static str,
    why: String,
}

impl Sheet {
    pub(super) fn of(plan: &Plan, sheets: &Sheets) -> Self {
        let units = plan.units;
        Self {
            paper: sheets.paper.sheet(),
            with: sheets.with.iter().map(|part| part.key()).collect(),
            title: plan.title.clone(),
            subtitle: plan.subtitle,
            not_for: MUST_NOT_EAT,
            note: plan.note.clone(),
            timing: plan.timing.as_ref().map(|timing| Hours::of(timing, units)),
            no_week: plan.no_week.clone(),
            before_all: Short::all(&plan.before_all, units),
            gather: plan.shopping.iter().map(Bought::of).collect(),
            prepare: plan.prepare.clone(),
            kitchen: Kitchen::of(plan),
            weight: plan.weight_curve.as_ref().map(Chart::of),
            stopped: plan.stopped.iter().map(|halt| Halt { stage: halt.stage.title(), why: halt.why.clone() }).collect(),
            shopping: Shelf::all(plan),
            cost: plan.cost.as_ref().map(crate::report::Cost::words),
            shopping_trouble: plan.shopping_trouble.clone(),
            troubles: TROUBLES.iter().map(TroubleRow::of).collect(),
            label: plan.label.as_ref().map(|label| Label::of(label, units)),
            cautions: plan.cautions.iter().map(|caution| Warning::of(caution, units)).collect(),
            figures: plan.figures.iter().map(Aim::of).collect(),
            charts: plan.curves.iter().map(Chart::of).collect(),
            germs: plan.germs.as_ref().map(|table| Germs::of(table, units)),
            laws: plan.laws.iter().map(|row| law(row, &plan.sources, units)).collect(),
            sources: plan
                .sources
                .iter()
                .zip(1..)
                .map(|(source, number)| format!("[{number}] {} (seen: {})", source.title, source.seen))
                .collect(),
        }
    }
}

/// One place in the shop, with what stands there.
#[derive(Debug, Serialize)]
struct Shelf {
    name: &'static str,
    rows: Vec<Bought>,
}

impl Shelf {
    fn all(plan: &Plan) -> Vec<Self> {
        let of = |place: ShopPlace| Self {
            name: place.title(),
            rows: plan.shopping.iter().filter(|row| row.place() == place).map(Bought::of).collect(),
        };
        ShopPlace::ALL.into_iter().map(of).filter(|shelf| !shelf.rows.is_empty()).collect()
    }
}

/// One trouble, with the title of its source.
#[derive(Debug, Serialize)]
struct TroubleRow {
    sign: &'static str,
    may_be: &'static str,
    what_to_do: &'static str,
    discard: &'static str,
    source: String,
}

impl TroubleRow {
    fn of(trouble: &Trouble) -> Self {
        let Trouble { sign, may_be, what_to_do, discard, source } = *trouble;
        let source = if source == SourceId::CommonPractice {
            "common practice, no source".to_owned()
        } else {
            source_title(ledger().unwrap_or_default(), source)
        };
        Self { sign, may_be, what_to_do, discard, source }
    }
}

/// How far germs could grow in each stage.
#[derive(Debug, Serialize)]
struct Germs {
    title: &'static str,
    said: &'static str,
    headings: Vec<String>,
    rows: Vec<Vec<String>>,
    notes: Vec<String>,
}

impl Germs {
    fn of(table: &GermTable, units: Units) -> Self {
        let others = table.others.iter().map(|figure| format!("{}: {}.", figure.label_in(units), figure.text_in(units)));
        Self {
            title: GERMS_BY_STAGE,
            said: POTENTIAL_GROWTH,
            headings: table.headings(),
            rows: table.cells(GermLine::short_name),
            notes: others.chain(table.notes(GermLine::short_name)).collect(),
        }
    }
}

impl Hours {
    fn of(timing: &Timing, units: Units) -> Self {
        Self {
            ends: timing.finished.map(|at| format!("{}: {}", timing.ends, short_moment(at, units))),
            zone: timing.zone.clone(),
            remarks: timing.remarks.clone(),
        }
    }
}

impl Bought {
    fn of(row: &ShoppingRow) -> Self {
        Self {
            what: row.what,
            amount: row.amount.to_string(),
            also: row.also.map(|also| also.to_string()),
            kitchen: row.kitchen.clone(),
            look_for: row.look_for.clone(),
            buy: row.buy.as_ref().map(crate::report::Purchase::words),
            rest: row.buy.as_ref().map(crate::report::Purchase::rest).unwrap_or_default(),
        }
    }
}

/// Returns a law with the figures that it gives and the number of its source in the list below.
fn law(row: &LawRow, sources: &[UsedSource], units: Units) -> String {
    let numbered = sources.iter().zip(1..).find_map(|(source, number)| {
        let place = row.source.strip_prefix(source.title.as_str())?.trim_start_matches("; ");
        Some(if place.is_empty() { format!("[{number}]") } else { format!("{place} [{number}]") })
    });
    let said = units.told(&format!("{}: {}", row.figures.join(", "), row.law));
    format!("{said} ({})", numbered.unwrap_or_else(|| row.source.clone()))
}

impl Warning {
    fn of(caution: &Caution, units: Units) -> Self {
        let CautionWords { what, remedy, .. } = caution_words(caution, units);
        Self {
            word: caution_word(caution),
            grave: caution.severity == Severity::Stop,
            note: caution.severity == Severity::Note,
            what,
            remedy,
        }
    }
}
