//! `shop`: what the library buys, in words and as JSON. Sizes and prices are invented.

use super::{example, run, run_with};
use vatsketch::batch::batch;
use vatsketch::design::Value;
use vatsketch::plan::shop;
use vatsketch::session::EXAMPLES;

/// Returns whether a printed number is this one; the reader of JSON in these tests may miss the last digit.
fn alike(printed: &serde_json::Value, number: f64) -> bool {
    printed.as_f64().is_some_and(|printed| (printed - number).abs() <= 1e-14 * number.abs())
}

#[test]
fn the_json_is_what_the_library_buys() {
    for one in EXAMPLES {
        let run = run(&["shop", &example(one.name), "--json"]);
        assert_eq!((run.code, run.words.as_str()), (0, ""), "{}", one.name);
        let (json, design) = (run.json(), one.design().unwrap());
        let shopping = shop(&batch(&design).unwrap()).unwrap();
        let goods = json["goods"].as_array().unwrap();
        assert_eq!(goods.len(), shopping.bought.len());
        for (printed, bought) in goods.iter().zip(&shopping.bought) {
            assert_eq!((&printed["good"], &printed["unit"]), (&bought.need.good.key().into(), &bought.need.unit.symbol().into()));
            for (key, number) in [
                ("need", bought.need.amount),
                ("at_home", bought.at_home),
                ("bought", bought.amount),
                ("left_over", bought.left_over),
                ("short", bought.short),
                ("price", bought.price),
                ("used_price", bought.used_price),
            ] {
                assert!(alike(&printed[key], number), "{} {key}: {} for {number}", one.name, printed[key]);
            }
            let counts: Vec<i64> =
                printed["packages"].as_array().unwrap().iter().map(|package| package["count"].as_i64().unwrap()).collect();
            assert_eq!(counts, bought.counts);
        }
        assert_eq!(json["without_supply"].as_array().unwrap().len(), shopping.without_supply.len());
        assert!(alike(&json["price"], shopping.price) && alike(&json["used_price"], shopping.used_price), "{}", one.name);
        assert!(alike(&json["each_price"], shopping.each_price.unwrap()), "{}", one.name);
        assert!(alike(&json["kilogram_price"], shopping.kilogram_price.unwrap()), "{}", one.name);
    }
}

/// 6000 mL from 1250 (1.72) and 750 (1.15): 3 + 3 hold just that for 8.61; the next, 5 of the larger, would leave 250 mL over and costs 8.60,
/// with 0.10 for what is over 8.70. Worked out by hand over all counts.
#[test]
fn the_words_say_packages_prices_and_what_is_over_for_each_thing_and_in_all() {
    let run = run(&["shop", &example("warm-cabinet")]);
    assert_eq!(run.code, 0, "{}", run.words);
    for part in [
        "needs 6 L; buy 3 × 1.25 L at 1.72 coins and 3 × 750 mL at 1.15 coins, together 8.61 coins",
        "at home 350 g; buy none",
        "left over",
        "To pay: ",
        " a cheese, ",
        " a kilogram of dried cheese",
        "Serious warning: ",
        "not a measurement",
    ] {
        assert!(run.data.contains(part), "{part} is not in {}", run.data);
    }
    assert!(!run.data.contains("--set milk_l"), "the cartons hold just what the vat takes");
}

#[test]
fn milk_that_is_left_over_can_go_into_the_vat() {
    let six = run(&["shop", &example("warm-cabinet"), "--set", "milk_l=5.8"]);
    assert!(six.data.contains("You will have 6 L of milk, and the vat takes 5.8 L: `--set milk_l=6`"), "{}", six.data);
    let mut design = crate::example("warm-cabinet");
    design.set("milk_l", Value::Number(5.8)).unwrap();
    assert!((shop(&batch(&design).unwrap()).unwrap().milk_at_hand_l().unwrap() - 6.0).abs() < 1e-9);
}

#[test]
fn what_has_no_supply_is_listed_and_costs_nothing() {
    let text = run(&["example", "warm-cabinet"]).data.replace("(good: rennet, packages: [(size: 40.0, price: 6.3)]),", "");
    let run = run_with(&["shop", "-"], &text);
    assert_eq!(run.code, 0, "{}", run.words);
    let (_, after) = run.data.split_once("no supply entered").unwrap();
    assert!(after.contains("Rennet"), "{after}");
}

#[test]
fn a_package_of_no_size_and_one_that_cannot_do_are_refused_by_name() {
    let text = run(&["example", "warm-cabinet"]).data;
    let zero = run_with(&["shop", "-"], &text.replace("(size: 180.0,", "(size: 0.0,"));
    assert_eq!((zero.code, zero.data.as_str()), (3, ""), "the file is refused as it is read");
    assert!(zero.words.contains("cream, the size of package 1: cannot be 0; give a number above 0"), "{}", zero.words);
    // A size that rounds to nothing is seen only when it is bought.
    let tiny = run_with(&["shop", "-"], &text.replace("(size: 180.0,", "(size: 0.3,"));
    assert_eq!((tiny.code, tiny.data.as_str()), (1, ""));
    assert!(tiny.words.contains("cream: package 1 holds 0 units; give a size above 0"), "{}", tiny.words);
    let none = run_with(&["shop", "-"], &text.replace("(size: 40.0, price: 6.3)", ""));
    assert_eq!((none.code, none.data.as_str()), (1, ""));
    assert!(none.words.contains("rennet: "), "{}", none.words);
}

#[test]
fn a_stage_that_fails_ends_with_one_and_the_needs_before_it_are_bought() {
    let run = run(&["shop", &example("warm-cabinet"), "--set", "mould_count=1"]);
    assert_eq!(run.code, 1);
    assert!(run.words.starts_with("vatsketch: draining: the curd does not fit"), "{}", run.words);
    assert!(run.data.contains("Milk") && !run.data.contains("Vinegar") && !run.data.contains(" a cheese"), "{}", run.data);
}
