//! What hangs in the kitchen: holds, weighings, the two pages, the label of a jar.

use jiff::civil::date;
use jiff::tz::TimeZone;
use vatsketch::batch::batch;
use vatsketch::design::{Design, SouredBy, Value, Wish};
use vatsketch::plan::Now;
use vatsketch::report::{Plan, agenda, plan, plan_at, two_pages};
use vatsketch::session::EXAMPLES;
use vatsketch::units::Units;

fn timed(mut design: Design) -> Plan {
    design.week.wish = Wish::StartAt(date(2031, 5, 9).at(14, 30, 0, 0));
    plan_at(&batch(&design).unwrap(), &Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC })
}

/// A kitchen thermometer is read to half a degree (a record of ours); degrees Fahrenheit by NIST Handbook 44, appendix C: 35 ± 0.5 °C is 94 to 96 °F.
#[test]
fn the_hold_before_the_rennet_is_the_temperature_with_what_a_thermometer_can_tell() {
    let plan = plan(&batch(&Design::default()).unwrap());
    let decides = |plan: &Plan| plan.steps.iter().find_map(|step| step.hold.as_ref()).unwrap().decides().unwrap();
    assert_eq!(decides(&plan), "34.5\u{a0}to 35.5\u{a0}°C");
    assert_eq!(decides(&plan.shown_in(Units::US)), "94\u{a0}to 96\u{a0}°F");
}

/// The scale shows cheese, salt and pepper: the first weighing is what the pepper left, the last what the step of weighing says, and nothing gets
/// heavier in a dry cabinet.
#[test]
fn the_weighings_run_from_the_peppered_cheese_to_the_last_step() {
    for example in EXAMPLES {
        for plan in [plan(&batch(&example.design().unwrap()).unwrap()), timed(example.design().unwrap())] {
            let weights: Vec<f64> = plan.weighings.iter().map(|weighing| weighing.weight.amount.value).collect();
            assert_eq!(weights.len(), 5, "{}", example.name);
            let of = |verb: &str, label: &str| {
                let step = plan.steps.iter().find(|step| step.verb == verb).unwrap();
                step.targets.iter().find(|target| target.label.starts_with(label)).unwrap().amount.value
            };
            let before = if plan.steps.iter().any(|step| step.verb == "Roll") { "Roll" } else { "Unmould" };
            assert!((weights[0] - of(before, "one cheese")).abs() < 0.5, "{}: {weights:?}", example.name);
            assert!((weights[4] - of("Weigh", "one cheese")).abs() < 1e-9, "{}: {weights:?}", example.name);
            // By night the air of the open may be so damp that a cheese takes up a little water.
            assert!(weights.windows(2).all(|pair| pair[1] < pair[0] + 0.5), "{}: {weights:?}", example.name);
            for weighing in &plan.weighings {
                let around =
                    weighing.weight.within.is_none_or(|(least, most)| (least..=most).contains(&weighing.weight.amount.value));
                assert!(around, "{}: {weighing:?}", example.name);
            }
            let hours: Vec<f64> = plan.weighings.iter().map(|weighing| weighing.after_h).collect();
            assert!(hours[0].abs() < 1e-9 && hours.windows(2).all(|pair| pair[0] < pair[1]), "{hours:?}");
        }
    }
}

#[test]
fn every_step_stands_on_one_of_the_two_pages_once() {
    for example in EXAMPLES {
        let plan = timed(example.design().unwrap());
        let pages = two_pages(&plan);
        let times = |days: &[vatsketch::report::Day<'_>]| {
            days.iter().flat_map(|day| &day.lines).map(|line| line.times.len()).sum::<usize>()
        };
        let turned: usize = pages.turns.iter().map(|turns| turns.times.len()).sum();
        let all: usize = agenda(&plan.steps).iter().flat_map(|day| &day.lines).map(|line| line.times.len()).sum();
        assert_eq!(times(&pages.make_day) + turned + times(&pages.after), all, "{}", example.name);
        assert_eq!(turned, example.design().unwrap().draining.turn_count as usize, "{}", example.name);
    }
}

#[test]
fn without_turns_and_without_drying_nothing_is_said_of_them() {
    let mut design = Design::default();
    for (key, value) in [("turn_count", 0.0), ("salted_turns", 0.0), ("salt_percent", 0.0), ("drying_h", 0.0)] {
        design.set(key, Value::Number(value)).unwrap();
    }
    let plan = plan(&batch(&design).unwrap());
    assert!(two_pages(&plan).turns.is_empty() && plan.weighings.is_empty() && plan.weight_curve.is_none());
    assert!(plan.cautions.iter().all(|caution| !caution.key.contains("tray") && caution.key != "model_uncertainty"));
    let said = plan.steps.iter().flat_map(|step| [&step.what, &step.how, &step.if_off]).chain(&plan.prepare);
    for words in said {
        assert!(!words.contains("trays") && !words.contains("dry"), "{words}");
    }
    assert!(plan.steps.iter().all(|step| !["Lay", "Swap", "Weigh"].contains(&step.verb)));
}

/// Regulation (EU) No 1169/2011, annex II, from memory: milk is named among what many people must not eat.
#[test]
fn a_label_names_the_jars_the_days_and_what_went_in() {
    let mut design = Design { title: "Nine for the cellar".to_owned(), ..Design::default() };
    design.milk.soured_by = SouredBy::Culture;
    let plan = timed(design.clone());
    let label = plan.label.as_ref().unwrap();
    assert_eq!(label.title, "Nine for the cellar");
    assert_eq!(label.jars, batch(&design).unwrap().pickling.done().unwrap().jars);
    assert_eq!(label.made.as_deref(), Some("Fri\u{a0}9\u{a0}May"));
    assert!(label.in_vinegar.is_some() && label.discard_after.is_some());
    for good in ["milk", "rennet", "starter culture", "vinegar", "salt"] {
        assert!(label.ingredients.iter().any(|known| known == good), "{good} is not in {:?}", label.ingredients);
    }
    assert!(!label.ingredients.iter().any(|known| known == "jars"));
    assert!(label.no_warmer_than_c <= 4.0, "the upper edge of cold keeping in the Food Code");
    design.pickling.pickled = false;
    assert!(timed(design).label.is_none());
}

/// Common practice, no source: columns of about 25 mm for small moulds; what is to drain in the vat is cut smaller, and in its depth too.
#[test]
fn curd_is_cut_to_the_size_that_was_chosen() {
    let cut = |piece_mm: f64| {
        let mut design = Design::default();
        design.set("curd_piece_mm", Value::Number(piece_mm)).unwrap();
        let plan = plan(&batch(&design).unwrap());
        plan.steps.into_iter().find(|step| step.verb == "Cut").unwrap()
    };
    let columns = cut(25.0);
    assert_eq!((columns.targets[0].label.as_str(), columns.targets[0].within), ("columns across", Some((20.0, 30.0))));
    assert!(!columns.what.contains("at a slant"));
    let pieces = cut(10.0);
    assert_eq!((pieces.targets[0].label.as_str(), pieces.targets[0].within), ("pieces across", Some((8.0, 12.0))));
    assert!(pieces.what.contains("at a slant"));
}

/// A rennet of 260 IMCU/mL comes to 0.9 mL, between an eighth and a quarter of a teaspoon.
#[test]
fn counted_drops_take_the_place_of_the_syringe_where_no_spoon_will_do() {
    let plan = |counted: bool, imcu_ml: f64| {
        let mut design = Design::default();
        for (key, value) in [
            ("rennet_drops_counted", Value::Switch(counted)),
            ("rennet_drops_in_ml", Value::Number(24.0)),
            ("rennet_strength_imcu_ml", Value::Number(imcu_ml)),
            ("calcium_form", Value::Choice("solution")),
            ("calcium_drops_counted", Value::Switch(counted)),
        ] {
            design.set(key, value).unwrap();
        }
        plan(&batch(&design).unwrap())
    };
    let step = |plan: &Plan, what: &str| plan.steps.iter().find(|step| step.what.contains(what)).unwrap().clone();
    let uncounted = step(&plan(false, 260.0), "in the rennet");
    assert!(uncounted.how.contains("small syringe") && uncounted.targets[0].kitchen.is_none(), "{}", uncounted.how);
    let counted = plan(true, 260.0);
    let rennet = step(&counted, "in the rennet");
    let drops = (24.0 * rennet.targets[0].amount.value).round();
    assert!(
        rennet.how.starts_with(&format!("Count {drops} drops of the rennet (by your count 24 of this bottle")),
        "{}",
        rennet.how
    );
    assert_eq!(rennet.targets[0].kitchen, Some(format!("{drops} drops, 24 to the mL")));
    assert!(counted.shopping.iter().any(|row| row.kitchen == rennet.targets[0].kitchen), "the shopping list says the same");
    let calcium = step(&counted, "in the calcium chloride");
    assert!(calcium.how.starts_with("Count ") && !calcium.how.contains("syringe"), "{}", calcium.how);
    // Whatever an amount is shown in, a drop stays a drop.
    let told = step(&plan(true, 260.0).shown_in(Units::US), "in the rennet");
    assert_eq!(told.how.split_once(" If yours is a powder").unwrap().0, rennet.how.split_once(" If yours is a powder").unwrap().0);
    // 1.3 mL is a quarter of a teaspoon: a spoon is quicker.
    let spoons = [false, true].map(|counted| step(&plan(counted, 180.0), "in the rennet"));
    assert_eq!(spoons[0], spoons[1]);
}
