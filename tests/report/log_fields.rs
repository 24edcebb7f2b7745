//! The log asks for what paper asks for, in the same order.

use std::collections::BTreeSet;
use vatsketch::batch::batch;
use vatsketch::design::{Design, KeptIn, SouredBy, Value};
use vatsketch::plan::Now;
use vatsketch::record::EntryKind;
use vatsketch::report::{Day, Plan, log_fields, plan, plan_at, two_pages};
use vatsketch::session::EXAMPLES;

/// Designs whose plans together have every blank: the examples, and what none of them does.
fn designs() -> Vec<Design> {
    let mut all: Vec<Design> = EXAMPLES.iter().map(|example| example.design().unwrap()).collect();
    let mut lactone = crate::example("first-vat");
    lactone.milk.soured_by = SouredBy::Lactone;
    let mut acid = lactone.clone();
    acid.milk.soured_by = SouredBy::Acid;
    let mut no_cream = Design::default();
    no_cream.set("fat_target_percent", Value::Number(2.0)).unwrap();
    let mut raw = crate::example("open-air");
    raw.set("milk_treatment", Value::Choice("raw")).unwrap();
    raw.set("pasteurised_in_vat", Value::Switch(true)).unwrap();
    let mut oil = crate::example("ewes-milk");
    oil.keeping.kept_in = KeptIn::Oil;
    all.extend([lactone, acid, no_cream, raw, oil, Design::default()]);
    all
}

/// Returns a plan without a week, and one by the clock, which has tasks that only a week knows.
fn plans(design: &Design) -> [Plan; 2] {
    let batch = batch(design).unwrap();
    let mut timed = design.clone();
    timed.week.wish = vatsketch::design::Wish::StartAt(jiff::civil::date(2031, 5, 9).at(7, 30, 0, 0));
    let now = Now { at: jiff::civil::date(2031, 5, 5).at(8, 0, 0, 0), zone: jiff::tz::TimeZone::UTC };
    [plan(&batch), plan_at(&vatsketch::batch::batch(&timed).unwrap(), &now)]
}

/// Returns what is printed for writing on the lines of some days, off the words on paper and not off the log.
fn printed(days: &[Day<'_>], plan: &Plan) -> Vec<String> {
    let mut blanks = Vec::new();
    for line in days.iter().flat_map(|day| &day.lines) {
        match line.hold() {
            Some(hold) => blanks.extend(hold.blanks.iter().map(|blank| (*blank).to_owned())),
            None => blanks.push(line.step.write_down.clone()),
        }
        if line.step.begins_drying() && !plan.weighings.is_empty() {
            blanks.push("one cheese, g".to_owned());
        }
    }
    blanks
}

#[test]
fn the_log_asks_for_every_blank_of_the_two_pages_in_their_order() {
    let mut blanks = 0;
    for design in designs() {
        for plan in plans(&design) {
            let pages = two_pages(&plan);
            let mut wanted = printed(&pages.make_day, &plan);
            for turns in &pages.turns {
                wanted.extend(Some(turns.step.write_down.clone()).filter(|blank| blank != "whey, g"));
                // The box of the strip.
                wanted.push("whey, g".to_owned());
            }
            wanted.extend(printed(&pages.after, &plan));
            let fields = log_fields(&plan);
            let on_paper: Vec<_> = fields.iter().filter(|field| !field.kind.is_off_paper()).collect();
            assert_eq!(on_paper.len(), wanted.len(), "{}", design.title);
            for (field, blank) in on_paper.iter().zip(&wanted) {
                let row = field.kind.row();
                assert!(row.blank == blank || row.held == blank, "{} stands where paper asks for {blank}", row.key);
            }
            blanks += wanted.len();
        }
    }
    assert!(blanks > 400, "only {blanks} blanks were seen");
}

/// So that no kind is written for a blank that no paper has, and none is forgotten off it.
#[test]
fn every_kind_is_asked_for_somewhere() {
    let asked: BTreeSet<EntryKind> =
        designs().iter().flat_map(plans).flat_map(|plan| log_fields(&plan)).map(|field| field.kind).collect();
    let never: Vec<_> = EntryKind::ALL.iter().filter(|kind| !asked.contains(kind)).map(|kind| kind.key()).collect();
    // A task that the program does not know by name, so that none is without a blank.
    assert_eq!(never, ["task_done"]);
}

#[test]
fn what_paper_has_no_room_for_comes_last_once_each() {
    let fields = log_fields(&plan(&batch(&Design::default()).unwrap()));
    let first = fields.iter().position(|field| field.kind.is_off_paper()).unwrap();
    let rest: Vec<_> = fields[first..].iter().map(|field| field.kind).collect();
    let wanted: Vec<_> = EntryKind::ALL.iter().copied().filter(|kind| kind.is_off_paper()).collect();
    assert_eq!(rest, wanted);
}
