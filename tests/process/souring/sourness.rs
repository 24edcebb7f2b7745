//! What sours a curd, and a pH that was measured.

use super::{acidified, cultured, near, soured_designs, way};
use vatsketch::batch::batch;
use vatsketch::design::{Design, MilkAcid, MilkKind, PhFrom, SouredBy};
use vatsketch::law::Matter;
use vatsketch::process::{SOURING_CONSTANTS, Sourness};

/// "Fall of pH from milk to its unsoured curd", 0.15.
fn fall() -> f64 {
    SOURING_CONSTANTS.iter().find(|record| record.name.contains("Fall of pH")).unwrap().value
}

#[test]
fn a_curd_that_nothing_sours_keeps_the_ph_of_its_milk_less_the_fall() {
    for kind in [MilkKind::Cow, MilkKind::Sheep, MilkKind::Goat, MilkKind::Buffalo] {
        let mut design = Design::default();
        (design.milk.milk_kind, design.milk.fat_target_percent) = (kind, 7.0);
        assert_eq!(design.milk.soured_by, SouredBy::Nothing);
        let way = way(&design).unwrap();
        let milk_ph = way.milk.milk_ph;
        assert!(
            way.vat.souring.iter().all(|point| point.ph == milk_ph) && way.vat.rennet_ph == milk_ph && way.vat.whey_ph == milk_ph
        );
        let later = way.draining.souring.iter().chain(&way.drying.souring);
        for point in later {
            near(point.ph, milk_ph - fall(), 1e-12);
        }
        near(batch(&design).unwrap().pickling.done().unwrap().start_ph, milk_ph - fall(), 1e-12);
    }
}

#[test]
fn a_ph_measured_in_the_moulds_stands_from_there_on_and_changes_nothing_before() {
    let calculated = way(&cultured()).unwrap();
    let mut design = cultured();
    (design.draining.ladled_ph_from, design.draining.ladled_ph) = (PhFrom::Measured, 6.0);
    let measured = way(&design).unwrap();
    assert_eq!(measured.vat, calculated.vat);
    near(measured.draining.souring[0].ph, 6.0, 1e-6);
    // It was sourer than calculated, so it stays so.
    assert!(calculated.draining.souring[0].ph > 6.0);
    let end = |way: &super::Way| way.draining.souring.last().unwrap().ph;
    assert!(end(&measured) < end(&calculated) && end(&measured) < 6.0);
}

#[test]
fn a_ph_measured_after_the_moulds_stands_from_there_on_and_changes_nothing_before() {
    let calculated = way(&cultured()).unwrap();
    let mut design = cultured();
    (design.drying.unmoulded_ph_from, design.drying.unmoulded_ph) = (PhFrom::Measured, 5.6);
    let measured = way(&design).unwrap();
    assert_eq!((&measured.vat, &measured.draining), (&calculated.vat, &calculated.draining));
    near(measured.drying.souring[0].ph, 5.6, 1e-6);
    design.drying.unmoulded_ph_from = PhFrom::Calculated;
    (design.pickling.cheese_ph_from, design.pickling.cheese_ph) = (PhFrom::Measured, 5.45);
    let soaked = batch(&design).unwrap();
    assert_eq!(soaked.pickling.done().unwrap().start_ph, 5.45);
    assert_eq!(soaked.drying.done().unwrap().souring, calculated.drying.souring);
}

/// Whatever was calculated before: lactic acid from the lactose that is left explains the pH, or the curd is taken to have had another of its own.
#[test]
fn any_measured_ph_is_met_without_a_negative_amount() {
    let mut curds: Vec<(Sourness, Matter)> =
        soured_designs().iter().map(|(_, design)| way(design).unwrap().vat).map(|vat| (vat.sourness, vat.curd)).collect();
    let unsoured = way(&Design::default()).unwrap().vat;
    curds.push((unsoured.sourness, unsoured.curd));
    for (sourness, curd) in curds {
        // An acid that was stirred in does not go away: a pH far above that which it gives is beyond any buffer.
        let stirred_in = curd.acid_kg + curd.other_acid_kg > 0.0;
        for ph in [4.2, 4.6, 5.2, 5.8, 6.4, 6.7, 7.0].into_iter().filter(|ph| !stirred_in || *ph < 6.0) {
            let (found, matter) = sourness.measured(&curd, ph);
            near(found.ph(&matter), ph, 1e-5);
            assert!(matter.parts_kg().iter().all(|part| *part >= 0.0), "pH {ph}: {matter:?}");
            near(matter.total_kg(), curd.total_kg(), 1e-12);
        }
    }
}

/// The same pH by another acid leaves as much of the milk's own lactose, whatever it weighs.
#[test]
fn acids_stirred_in_turn_no_lactose() {
    for acid in [MilkAcid::Vinegar, MilkAcid::Citric, MilkAcid::Lactic] {
        let way = way(&acidified(acid, 6.1)).unwrap();
        // The water of vinegar and lactic acid thins the milk a little.
        near(way.vat.rennet_ph, 6.1, 0.01);
        let first = way.vat.souring.first().unwrap();
        assert!(way.vat.souring.iter().all(|point| point.lactose_percent == first.lactose_percent), "{acid:?}");
    }
}
