//! The words of the refusals: what is wrong, by how much, and what to do.

use vatsketch::design::{Design, DrainingDesign, SaltingDesign};
use vatsketch::process::{draining, milk, salting, vat};

/// Asserts that an error's words hold all of these.
#[track_caller]
fn says(error: &impl std::error::Error, wanted: &[&str]) {
    let words = error.to_string();
    for part in wanted {
        assert!(words.contains(part), "`{part}` is not in: {words}");
    }
    let (first, last) = (words.chars().next().unwrap(), words.chars().last().unwrap());
    assert!(!first.is_uppercase() && last != '.', "a sentence that goes on after a colon: {words}");
}

/// By hand: cow's milk of 3.25 % with four times its mass of 10.2 % cream has (3.25 + 4·10.2)/5 = 8.81 %, with as much skimmed milk of 0.08 %
/// 0.71 %; the printed composition adds up to 100.00.
#[test]
fn a_fat_target_out_of_reach_says_the_reach_and_another_way() {
    let mut design = Design::default().milk;
    design.cream_strength_percent = 10.2;
    design.fat_target_percent = 11.5;
    says(&milk(&design).unwrap_err(), &["fat target of 11.5 %", "from 0.7 % to 8.8 %", "choose a target between them"]);
    design.fat_target_percent = f64::NAN;
    assert!(milk(&design).is_err());
}

#[test]
fn too_moist_a_curd_says_its_weight_and_which_choice_to_change() {
    let mut design = Design::default();
    design.milk.milk_l = 0.5;
    design.milk.cream_by = vatsketch::design::CreamBy::CreamAmount;
    design.milk.cream_strength_percent = 48.0;
    design.milk.cream_on_hand_ml = 2000.0;
    let milk = milk(&design.milk).unwrap();
    says(&vat(&design.vat, 75.0, &milk).unwrap_err(), &["75.0 % moisture", "kg of this milk", "choose a lower moisture"]);
    assert!(vat(&design.vat, f64::NAN, &milk).is_err());
}

#[test]
fn too_few_moulds_says_how_many_do() {
    let design = Design::default();
    let milk = milk(&design.milk).unwrap();
    let vat = vat(&design.vat, design.draining.drip_end_moisture_percent, &milk).unwrap();
    let one = DrainingDesign { mould_count: 1, ..design.draining };
    says(&draining(&one, &vat).unwrap_err(), &["each of 1 moulds", "mL of drained curd", "use at least", "or larger ones"]);
}

#[test]
fn salt_without_turns_says_both_ways_out() {
    let design = Design::default();
    let milk = milk(&design.milk).unwrap();
    let vat = vat(&design.vat, design.draining.drip_end_moisture_percent, &milk).unwrap();
    let drained = draining(&design.draining, &vat).unwrap();
    let none = SaltingDesign { salt_percent: 1.9, salted_turns: 0, ..design.salting };
    says(&salting(&none, &drained, 16.0).unwrap_err(), &["1.9 % of salt", "salt at one turn at least", "set the salt to 0 %"]);
    let many = SaltingDesign { salted_turns: 6, ..none };
    says(&salting(&many, &drained, 16.0).unwrap_err(), &["6 turns", "only 5", "turn more often, or salt at fewer turns"]);
}
