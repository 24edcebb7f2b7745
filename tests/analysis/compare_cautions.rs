//! The cautions of two batches side by side.

use crate::design::any::any_design;
use proptest::prelude::*;
use vatsketch::analysis::{ComparedCaution, Whose, compare_cautions};
use vatsketch::batch::{Batch, batch};
use vatsketch::caution::{Caution, cautions};
use vatsketch::design::{Design, Value};
use vatsketch::units::Units;
use vatsketch::words::said_of_b;

fn worked_out(settings: &[(&str, Value)]) -> Batch {
    let mut design = Design::default();
    for (key, value) in settings {
        design.set(key, *value).unwrap();
    }
    batch(&design).unwrap()
}

fn of<'a>(all: &'a [ComparedCaution], key: &str) -> Vec<&'a ComparedCaution> {
    all.iter().filter(|compared| compared.caution.key == key).collect()
}

#[test]
fn a_batch_beside_itself_shares_every_caution_word_for_word() {
    let one = worked_out(&[]);
    let all = compare_cautions(&one, &one);
    assert_eq!(all.len(), cautions(&one).len());
    assert!(all.iter().all(|compared| compared.whose == Whose::Both && said_of_b(compared, Units::METRIC).is_none()));
}

#[test]
fn what_only_one_has_and_what_both_say_in_other_numbers_is_told_apart() {
    let (soured, bare) = (worked_out(&[]), worked_out(&[("pickled", Value::Switch(false))]));
    let (there, back) = (compare_cautions(&soured, &bare), compare_cautions(&bare, &soured));
    let only = |all: &[ComparedCaution], whose: Whose| {
        all.iter().filter(|compared| compared.whose == whose).map(|compared| compared.caution.key).collect::<Vec<_>>()
    };
    assert!(!only(&there, Whose::OnlyA).is_empty());
    assert_eq!(only(&there, Whose::OnlyA), only(&back, Whose::OnlyB));
    let longer = compare_cautions(&worked_out(&[]), &worked_out(&[("drying_h", Value::Number(60.0))]));
    assert!(longer.iter().any(|compared| said_of_b(compared, Units::METRIC).is_some()), "a longer time is said in another number");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    /// Nothing that either batch says is lost, nothing is said twice, and the loudest stands first.
    #[test]
    fn every_caution_of_both_stands_once(a in any_design(0.4), b in any_design(0.4)) {
        let (a, b) = (batch(&a).unwrap(), batch(&b).unwrap());
        let all = compare_cautions(&a, &b);
        let count = |whose: Whose| all.iter().filter(|compared| compared.whose == whose).count();
        prop_assert_eq!(count(Whose::Both) + count(Whose::OnlyA), cautions(&a).len());
        prop_assert_eq!(count(Whose::Both) + count(Whose::OnlyB), cautions(&b).len());
        for Caution { key, severity, .. } in cautions(&a).iter().chain(&cautions(&b)) {
            prop_assert!(of(&all, key).iter().any(|compared| compared.caution.severity >= *severity), "{}", key);
        }
        prop_assert!(all.windows(2).all(|pair| pair[0].caution.severity >= pair[1].caution.severity));
    }
}
