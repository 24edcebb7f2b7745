//! The sheets of the plan: to do, to record, to read.

use super::reader::{Read, read, squeezed};
use jiff::civil::date;
use jiff::tz::TimeZone;
use std::sync::LazyLock;
use vatsketch::batch::batch;
use vatsketch::caution::Caution;
use vatsketch::design::{Design, Wish};
use vatsketch::export::{Paper, pdf, text};
use vatsketch::plan::Now;
use vatsketch::plan::whole_day_words;
use vatsketch::report::{Cost, Plan, Purchase, agenda, plan, plan_at};
use vatsketch::session::EXAMPLES;
use vatsketch::units::{LongTimes, Units, Volumes};
use vatsketch::words::{FROM_A_MODEL, caution_words};

const RECORD: &str = "Whatreallyhappened";
const READING: &str = "Toreadbeforeyoubegin";

fn timed(mut design: Design) -> Plan {
    design.week.wish = Wish::SoonAfter(date(2031, 5, 9).at(8, 0, 0, 0));
    plan_at(&batch(&design).unwrap(), &Now { at: date(2031, 5, 5).at(7, 0, 0, 0), zone: TimeZone::UTC })
}

/// A plan with its name, and what a reader finds in its PDF on each paper.
struct Printed {
    name: String,
    plan: Plan,
    sheets: Vec<(Paper, Read)>,
}

/// The plans of all examples, with a week and without; set once, because that is what takes long here.
static PRINTED: LazyLock<Vec<Printed>> = LazyLock::new(|| {
    let examples = EXAMPLES.into_iter().map(|example| (example.name, example.design().unwrap()));
    let plans = examples.chain([("default", Design::default())]).flat_map(|(name, design)| {
        let counted = plan(&batch(&design).unwrap());
        [(format!("{name}, counted"), counted), (format!("{name}, timed"), timed(design))]
    });
    let print = |(name, plan): (String, Plan)| {
        let sheets = Paper::ALL.into_iter().map(|paper| (paper, read(&pdf(&plan, paper).unwrap()))).collect();
        Printed { name, plan, sheets }
    };
    plans.map(print).collect()
});

/// Returns how many pages there are to do, to record and to read.
fn parts(read: &Read) -> (usize, usize, usize) {
    let of = |heading: &str| read.sheets.iter().position(|sheet| sheet.starts_with(heading)).unwrap();
    let (record, reading) = (of(RECORD), of(READING));
    (record, reading - record, read.sheets.len() - reading)
}

#[test]
fn what_goes_without_vinegar_is_one_page_to_do_and_vinegar_takes_a_second_and_the_record_is_one_page() {
    for Printed { name, sheets, .. } in PRINTED.iter() {
        for (paper, read) in sheets {
            let (to_do, record, reading) = parts(read);
            let most = if name.starts_with("small-vat") { 1 } else { 2 };
            // What is read at the desk has three pages, and some lines of the sources on a fourth: the laws of germs alone have twenty sources.
            assert!(to_do <= most && record == 1 && reading <= 4, "{name}, {paper:?}: {to_do}, {record}, {reading}");
        }
    }
}

/// The choices of units whose words are longest, each volume with them.
fn wordy() -> Vec<Units> {
    let volumes = [Volumes::UsCups, Volumes::UsQuarts, Volumes::ImperialPints];
    let with = |long_times| volumes.map(|volumes| Units { volumes, long_times, ..Units::US });
    [LongTimes::Days, LongTimes::Hours].into_iter().flat_map(with).chain([Units::IMPERIAL]).collect()
}

#[test]
fn in_other_units_what_goes_without_vinegar_is_still_one_page_to_do() {
    let design = || crate::example("small-vat");
    // Clock times are wider than counted ones, and Letter is lower than A4: each is set once without the other.
    let (counted, timed) = (plan(&batch(&design()).unwrap()), timed(design()));
    for units in wordy() {
        for (plan, paper) in [(&counted, Paper::Letter), (&timed, Paper::A4), (&timed, Paper::Letter)] {
            let read = read(&pdf(&plan.clone().shown_in(units), paper).unwrap());
            let (to_do, record, _) = parts(&read);
            assert_eq!((to_do, record), (1, 1), "{units:?}, {paper:?}");
        }
    }
}

#[test]
fn paper_and_text_are_in_the_units_that_are_chosen() {
    let plan = timed(crate::example("warm-cabinet")).shown_in(Units::US);
    let read = read(&pdf(&plan, Paper::Letter).unwrap());
    let text = text(&plan);
    for words in ["95 °F", "6 qt 11 fl oz", "2.5 oz", "39 °F or colder"] {
        assert!(text.contains(words), "{words} is not in {text}");
        assert!(read.letters.contains(&squeezed(words)), "{words} is not on paper");
    }
    // What is left in degrees Celsius are titles of sources.
    let (own, _) = text.split_once("Where the numbers come from").unwrap();
    assert!(!own.contains("°C") && !own.contains(" kg"), "{own}");
}

#[test]
fn days_times_steps_and_short_cautions_are_on_the_pages_to_do() {
    for Printed { name, plan, sheets } in PRINTED.iter() {
        for (_, read) in sheets {
            let to_do: String = read.sheets[..parts(read).0].concat();
            let said = |words: &str| assert!(to_do.contains(&squeezed(words)), "{name}: `{words}` is not on the pages to do");
            said(FROM_A_MODEL);
            for day in agenda(&plan.steps) {
                day.date.iter().for_each(|date| said(&whole_day_words(*date)));
                for line in day.lines {
                    line.times.iter().filter(|_| !line.at_once).for_each(|time| said(&time.words()));
                    said(&format!("{} {}", line.step.verb, line.step.what));
                    // What germs could do in each stage is left to the page on which all are in full.
                    let left = |caution: &Caution| {
                        ["germs_could_grow", "toxin_could_form", "toxin_if_lactic_fails"].contains(&caution.key)
                    };
                    let kitchens = line.step.cautions.iter().filter(|caution| !left(caution));
                    kitchens.for_each(|caution| said(&caution_words(caution, Units::METRIC).short));
                }
            }
        }
    }
}

#[test]
fn every_time_has_its_row_in_the_log_and_all_else_is_behind() {
    for Printed { name, plan, sheets } in PRINTED.iter() {
        for (_, read) in sheets {
            let (to_do, record, _) = parts(read);
            let log = read.sheets[to_do..to_do + record].concat();
            for (step, time) in plan.steps.iter().flat_map(|step| step.times.iter().map(move |time| (step, time))) {
                let wanted = squeezed(&format!("{} {}", time.name, step.write_down));
                assert!(log.contains(&wanted), "{name}: `{wanted}` is not in the log");
            }
            for curve in plan.curves.iter().take(2) {
                assert!(log.contains(&squeezed(curve.title)), "{name}: {} cannot be plotted", curve.title);
            }
            assert!(log.contains("WhatIwouldchange"), "{name}");
            // What runs on overleaf has the foot of the page in its midst.
            let count = read.sheets.len();
            let foot = |page: usize| squeezed(&format!("{FROM_A_MODEL}{page}/{count}"));
            let behind = (1..=count).fold(read.sheets[to_do + record..].concat(), |behind, page| behind.replace(&foot(page), ""));
            let bought = plan.shopping.iter().filter_map(|row| row.buy.as_ref()).map(Purchase::words);
            let remedies = plan.cautions.iter().map(|caution| caution_words(caution, Units::METRIC).remedy);
            for words in bought.chain(plan.cost.iter().map(Cost::words)).chain(remedies) {
                assert!(behind.contains(&squeezed(&words)), "{name}: `{words}` is not behind");
            }
        }
    }
}

#[test]
fn the_rollings_of_many_months_are_all_printed() {
    let mut design = crate::example("ewes-milk");
    design.keeping.keeping_days = 300.0;
    design.pickling.pickling_h = 2000.0;
    let plan = timed(design);
    let rolled = plan.steps.iter().find(|step| step.by_date).unwrap();
    assert!(rolled.times.len() > 50, "{}", rolled.times.len());
    let letters = read(&pdf(&plan, Paper::A4).unwrap()).letters;
    for time in &rolled.times {
        assert!(letters.contains(&squeezed(&time.words_with_day())), "{time:?}");
    }
    let text = squeezed(&text(&plan));
    for time in &rolled.times {
        assert!(text.contains(&squeezed(&time.words_with_day())), "{time:?} is not in the text");
    }
}

#[test]
fn the_text_has_the_days_and_the_times_too() {
    for Printed { name, plan, .. } in PRINTED.iter() {
        let text = text(plan).replace('\u{a0}', " ").split_whitespace().collect::<Vec<_>>().join(" ");
        for day in agenda(&plan.steps) {
            assert!(
                day.date.is_none_or(|date| text.contains(&format!("=== {} ===", whole_day_words(date)))),
                "{name}: {:?}",
                day.date
            );
            for (line, time) in day.lines.iter().flat_map(|line| line.times.iter().map(move |time| (line, time))) {
                let words = if line.by_date { time.words_with_day() } else { time.words() };
                assert!(text.contains(&format!("[ ] {}", words.replace('\u{a0}', " "))), "{name}: {time:?}");
            }
        }
        if let Some(cost) = &plan.cost {
            assert!(text.contains(&cost.words().replace('\u{a0}', " ")), "{name}: {}", cost.words());
        }
    }
}
