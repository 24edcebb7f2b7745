//! The sheets of the plan: two pages that hang in the kitchen, and what may be printed behind them.

use super::boxes::overlaps;
use super::reader::{Read, read, squeezed};
use jiff::civil::date;
use jiff::tz::TimeZone;
use std::sync::LazyLock;
use vatsketch::batch::batch;
use vatsketch::caution::Caution;
use vatsketch::design::{Design, Wish};
use vatsketch::export::{Paper, Part, Sheets, pdf, text};
use vatsketch::plan::Now;
use vatsketch::plan::whole_day_words;
use vatsketch::report::{Cost, NOT_MEASURED, Plan, Purchase, TROUBLES, agenda, plan, plan_at};
use vatsketch::session::EXAMPLES;
use vatsketch::units::{LongTimes, Units, Volumes};
use vatsketch::words::{FROM_A_MODEL, MUST_NOT_EAT, caution_words};

fn timed(mut design: Design) -> Plan {
    design.week.wish = Wish::SoonAfter(date(2031, 5, 9).at(8, 0, 0, 0));
    plan_at(&batch(&design).unwrap(), &Now { at: date(2031, 5, 5).at(7, 0, 0, 0), zone: TimeZone::UTC })
}

/// A plan with its name, and its PDF on each paper.
struct Printed {
    name: String,
    plan: Plan,
    sheets: Vec<(Paper, Vec<u8>)>,
}

/// The plans of all examples: without a week the two pages alone, with one all that can be printed; set once, because that is what takes long here.
static PRINTED: LazyLock<Vec<Printed>> = LazyLock::new(|| {
    let examples = EXAMPLES.into_iter().map(|example| (example.name, example.design().unwrap()));
    let plans = examples.chain([("default", Design::default())]).flat_map(|(name, design)| {
        let counted = plan(&batch(&design).unwrap());
        [(format!("{name}, counted"), counted), (format!("{name}, timed"), timed(design))]
    });
    let print = |(name, plan): (String, Plan)| {
        let sheets = |paper| if name.ends_with("timed") { Sheets::all(paper) } else { paper.into() };
        let sheets = Paper::ALL.into_iter().map(|paper| (paper, pdf(&plan, &sheets(paper)).unwrap())).collect();
        Printed { name, plan, sheets }
    };
    plans.map(print).collect()
});

/// The plans of which everything was printed.
fn whole() -> impl Iterator<Item = &'static Printed> {
    PRINTED.iter().filter(|printed| printed.name.ends_with("timed"))
}

/// The heading of the first page of each part, and the most pages that it may take.
const PARTS: [(Part, &str, usize); 5] = [
    (Part::Shopping, "Tobuyandtohaveathand", 1),
    (Part::Troubles, "Ifsomethingiswrong", 1),
    (Part::Labels, "Labelsforthejars", 1),
    (Part::Curves, "Whattoexpect", 2),
    (Part::Sources, "Cautionsinfull,andwherethenumberscomefrom", 2),
];

/// Returns the pages of one part.
fn pages_of(read: &Read, part: Part) -> Vec<String> {
    let starts = |heading: &str| read.sheets.iter().position(|sheet| sheet.starts_with(heading));
    let at = PARTS.iter().position(|(own, ..)| *own == part).unwrap();
    // A vat without jars has no labels.
    let Some(begin) = starts(PARTS[at].1) else { return Vec::new() };
    let end = PARTS[at + 1..].iter().find_map(|(_, heading, _)| starts(heading)).unwrap_or(read.sheets.len());
    read.sheets[begin..end].to_vec()
}

/// Returns the letters of one part; what runs on overleaf has the foot of the page in its midst.
fn letters_of(read: &Read, part: Part) -> String {
    let count = read.pages.len();
    let foot = |page: usize| squeezed(&format!("{FROM_A_MODEL}{page}/{count}"));
    (1..=count).fold(pages_of(read, part).concat(), |letters, page| letters.replace(&foot(page), ""))
}

#[test]
fn the_plan_of_every_example_is_two_pages_on_both_papers_and_no_letter_lies_over_another() {
    for Printed { name, sheets, .. } in PRINTED.iter() {
        for (paper, bytes) in sheets {
            let read = read(bytes);
            let kitchen = read.sheets.iter().position(|sheet| sheet.starts_with(PARTS[0].1)).unwrap_or(read.sheets.len());
            assert_eq!(kitchen, 2, "{name}, {paper:?}");
            for (page, over) in overlaps(bytes).iter().enumerate() {
                assert!(over.is_empty(), "{name}, {paper:?}, page {}: {:?}", page + 1, &over[..over.len().min(3)]);
            }
        }
    }
}

/// A few lines alone on a page are a page that nobody reads: a page behind holds at least this many letters.
const LONELY: usize = 150;

#[test]
fn what_is_printed_behind_has_its_pages_and_no_lonely_lines() {
    for Printed { name, plan, sheets } in whole() {
        for (paper, bytes) in sheets {
            let read = read(bytes);
            for (part, _, most) in PARTS {
                let pages = pages_of(&read, part);
                let least = usize::from(part != Part::Labels || plan.label.is_some());
                assert!((least..=most).contains(&pages.len()), "{name}, {paper:?}, {part:?}: {} pages", pages.len());
                assert!(pages.iter().all(|page| page.len() >= LONELY), "{name}, {paper:?}, {part:?}: lonely lines");
            }
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
fn in_other_units_it_is_two_pages_too() {
    let design = || crate::example("small-vat");
    // Clock times are wider than counted ones, and Letter is lower than A4: each is set once without the other.
    let (counted, timed) = (plan(&batch(&design()).unwrap()), timed(design()));
    for units in wordy() {
        for (plan, paper) in [(&counted, Paper::Letter), (&timed, Paper::A4), (&timed, Paper::Letter)] {
            let read = read(&pdf(&plan.clone().shown_in(units), &paper.into()).unwrap());
            assert_eq!(read.pages.len(), 2, "{units:?}, {paper:?}");
        }
    }
}

#[test]
fn paper_and_text_are_in_the_units_that_are_chosen() {
    let plan = timed(crate::example("warm-cabinet")).shown_in(Units::US);
    let read = read(&pdf(&plan, &Paper::Letter.into()).unwrap());
    let text = text(&plan);
    for words in ["95 °F", "6 qt 11 fl oz", "39 °F"] {
        assert!(text.contains(words), "{words} is not in {text}");
        assert!(read.letters.contains(&squeezed(words)), "{words} is not on paper");
    }
    // What is left in degrees Celsius are titles of sources.
    let (own, _) = text.split_once("Where the numbers come from").unwrap();
    assert!(!own.contains("°C") && !own.contains(" kg"), "{own}");
}

#[test]
fn days_times_steps_holds_and_short_cautions_are_on_the_two_pages() {
    for Printed { name, plan, sheets } in PRINTED.iter() {
        for (_, bytes) in sheets {
            let letters = read(bytes).letters;
            let said = |words: &str| assert!(letters.contains(&squeezed(words)), "{name}: `{words}` is not on the two pages");
            said(FROM_A_MODEL);
            said(MUST_NOT_EAT);
            for step in &plan.steps {
                said(&format!("{} {}", step.verb, step.what));
                let lines = agenda([step]);
                let shown = lines.iter().flat_map(|day| &day.lines).filter(|line| !line.at_once);
                // What follows at once on the step before has no time of its own.
                let alone = step.times.len() > 1 || shown.count() == 0;
                step.times.iter().filter(|_| alone && !step.by_date).for_each(|time| said(&time.words()));
                // What germs could do in each stage is left to the page on which all are in full.
                let left =
                    |caution: &Caution| ["germs_could_grow", "toxin_could_form", "toxin_if_lactic_fails"].contains(&caution.key);
                let kitchens = step.cautions.iter().filter(|caution| !left(caution));
                kitchens.for_each(|caution| said(&caution_words(caution, Units::METRIC).short));
                step.hold.iter().for_each(|hold| {
                    said(hold.ask);
                    said(&hold.then);
                    hold.decides().iter().for_each(|number| said(number));
                });
            }
            for row in &plan.shopping {
                said(&format!("{}{}", row.what, row.amount));
            }
            plan.prepare.iter().for_each(|words| said(words));
            for weighing in &plan.weighings {
                said(&weighing.weight.amount.to_string());
            }
        }
    }
}

/// What stops the work is a hold, and nothing else is called so: the thermometer before the rennet, the clean break, the acid before warm drying,
/// both readings before anything is poured off.
#[test]
fn the_holds_stand_where_the_work_must_not_go_on() {
    let verbs = |name: &str| -> Vec<String> {
        let plan = timed(crate::example(name));
        plan.steps.iter().filter_map(|step| Some(step.hold.as_ref()?.ask.to_owned())).collect()
    };
    let all = [
        "Is the milk at",
        "Does the cut open clean, with clear whey in it",
        "Do both read no more than pH",
        "Do both read less than pH",
    ];
    assert_eq!(verbs("first-vat"), all);
    assert_eq!(verbs("warm-cabinet"), [all[0], all[1], all[3]]);
    let letters = read(&PRINTED[0].sheets[0].1).letters;
    let holds = PRINTED[0].plan.steps.iter().filter(|step| step.hold.is_some()).count();
    assert_eq!(letters.matches("HOLD").count(), holds);
}

#[test]
fn each_part_holds_what_it_is_called() {
    for Printed { name, plan, sheets } in whole() {
        let read = read(&sheets[0].1);
        let on = |part, words: Vec<String>| {
            let letters = letters_of(&read, part);
            for words in words {
                assert!(letters.contains(&squeezed(&words)), "{name}: `{words}` is not in {part:?}");
            }
        };
        let bought = plan.shopping.iter().filter_map(|row| row.buy.as_ref()).map(Purchase::words);
        on(Part::Shopping, bought.chain(plan.cost.iter().map(Cost::words)).collect());
        on(Part::Troubles, TROUBLES.iter().flat_map(|trouble| [trouble.sign, trouble.discard]).map(str::to_owned).collect());
        let cautions = plan.cautions.iter().map(|caution| caution_words(caution, Units::METRIC));
        on(Part::Sources, cautions.flat_map(|said| [said.what, said.remedy]).collect());
        on(Part::Curves, plan.curves.iter().map(|curve| curve.title.to_owned()).collect());
        let Some(label) = &plan.label else { continue };
        let labels = letters_of(&read, Part::Labels);
        assert_eq!(labels.matches(&squeezed(NOT_MEASURED)).count(), label.jars as usize, "{name}: a label for each jar");
        on(Part::Labels, [&label.made, &label.in_vinegar, &label.discard_after].into_iter().flatten().cloned().collect());
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
    let letters = read(&pdf(&plan, &Paper::A4.into()).unwrap()).letters;
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
