//! What goes into the milk to sour it.

use super::souring::{acidified, cultured, near, with_lactone};
use vatsketch::design::{AcidBy, CultureBy, Design, MilkAcid, SouredBy};
use vatsketch::law::souring::{Acid, Sourable};
use vatsketch::process::{MilkError, MilkSouring, milk};

fn soured(design: &Design) -> MilkSouring {
    milk(&design.milk).unwrap().soured
}

/// By hand: 3·10⁶ cells/g for a packet dosed as labelled, 10⁷ for each per cent of bulk starter (common practice, the records of the chapter).
#[test]
fn packets_bulk_and_cells_give_the_cells_that_common_practice_has() {
    let mut design = cultured();
    design.milk.culture_cells_million_g = 12.0;
    assert_eq!(soured(&design).cells_per_g, 12e6);
    design.milk.culture_by = CultureBy::Packet;
    let litres = milk(&design.milk).unwrap().vat_milk_l;
    (design.milk.culture_packet_l, design.milk.culture_packets) = (2.0 * litres, 0.5);
    near(soured(&design).cells_per_g, 3e6, 1.0);
    (design.milk.culture_by, design.milk.culture_bulk_percent) = (CultureBy::Bulk, 1.5);
    let (milk, bulk) = (milk(&design.milk).unwrap(), soured(&design));
    near(bulk.cells_per_g, 1.5e7, 1.0);
    near(bulk.bulk_g, 15.0 * milk.vat_milk.total_kg(), 1e-9);
    assert!(bulk.is_soured() && !soured(&Design::default()).is_soured());
}

/// The amount for a pH is that of the law for this milk, and the milk with it has that pH.
#[test]
fn as_much_acid_goes_in_as_the_wanted_ph_takes() {
    for (kind, acid, g_mol) in [
        (MilkAcid::Vinegar, Acid::Acetic, 60.05),
        (MilkAcid::Citric, Acid::Citric, 192.12),
        (MilkAcid::Lactic, Acid::Lactic, 90.08),
    ] {
        let design = acidified(kind, 5.8);
        let milk = milk(&design.milk).unwrap();
        let kg = milk.vat_milk.total_kg();
        let sourable = Sourable::new(milk.vat_milk.protein_kg() / kg, milk.vat_milk.water_kg / kg, milk.milk_ph, 1.0);
        near(milk.soured.acid_g, g_mol * sourable.acid_for(5.8, acid) * kg, 0.001 * milk.soured.acid_g);
        // The water of vinegar and lactic acid thins the milk a little.
        near(milk.soured.cold_ph, 5.8, 0.01);
        near(1000.0 * milk.soured.acid.acids_kg(), milk.soured.acid_g, 1e-9);
    }
}

/// By hand: 1.2 g/L in vinegar of 6 g in 100 mL is 20 mL for each litre; a solution of 80 % holds it in 1.5 g; dry acid has no volume.
#[test]
fn what_is_measured_is_the_acid_with_its_water() {
    let amount = |acid: MilkAcid| {
        let mut design = acidified(acid, 6.0);
        (design.milk.acid_by, design.milk.milk_acid_g_l) = (AcidBy::Amount, 1.2);
        (design.milk.milk_vinegar_g_per_100ml, design.milk.lactic_acid_percent) = (6.0, 80.0);
        let milk = milk(&design.milk).unwrap();
        (milk.soured, milk.vat_milk_l)
    };
    let (vinegar, litres) = amount(MilkAcid::Vinegar);
    near(vinegar.acid_ml, 20.0 * litres, 1e-9);
    near(vinegar.acid_g, 1.2 * litres, 1e-12);
    // About 1.006 g/mL.
    near(vinegar.acid.total_kg(), 0.02 * litres * 1.006, 0.0002 * litres);
    let (lactic, litres) = amount(MilkAcid::Lactic);
    near(1000.0 * lactic.acid.total_kg(), 1.5 * litres, 1e-9);
    // 1 + 0.21 · 0.8 kg/L.
    near(lactic.acid_ml, 1.5 * litres / 1.168, 1e-9);
    let (citric, litres) = amount(MilkAcid::Citric);
    assert_eq!((citric.acid_ml, citric.acid.water_kg), (0.0, 0.0));
    near(citric.acid.other_acid_kg, 0.0012 * litres, 1e-12);
}

#[test]
fn a_lactone_waits_for_the_rennet() {
    let mut design = with_lactone();
    design.milk.lactone_g_l = 6.0;
    let milk = milk(&design.milk).unwrap();
    near(milk.soured.lactone.other_acid_kg, 0.006 * milk.vat_milk_l, 1e-12);
    assert_eq!((milk.soured.acid.total_kg(), milk.soured.cold_ph), (0.0, milk.milk_ph));
}

/// From memory: below pH 5.3 acid clots milk warmer than 15 °C where it falls; below 5.2 it is an acid clot at 35 °C whatever it was before.
#[test]
fn acid_that_clots_the_milk_is_refused_with_what_to_do() {
    let with = |ph: f64, cold_c: f64| {
        let mut design = acidified(MilkAcid::Lactic, ph);
        design.milk.fridge_temperature_c = cold_c;
        milk(&design.milk)
    };
    assert!(with(5.25, 5.0).is_ok() && with(5.25, 15.0).is_ok() && with(5.4, 20.0).is_ok());
    for (ph, cold_c) in [(5.25, 16.0), (5.1, 5.0)] {
        let refused = with(ph, cold_c).unwrap_err();
        let MilkError::AcidClots { ph: at, milk_c, least_ph, cool_c, rennet_ph } = refused else { panic!("{refused}") };
        near(at, ph, 0.01);
        assert_eq!((milk_c, least_ph, cool_c, rennet_ph), (cold_c, 5.3, 15.0, 5.2));
        assert!(refused.to_string().ends_with("use less acid, or choose a higher pH"), "{refused}");
    }
}

#[test]
fn what_sours_nothing_is_nothing() {
    let nothing = soured(&Design::default());
    assert_eq!(Design::default().milk.soured_by, SouredBy::Nothing);
    assert_eq!((nothing.acid_g, nothing.bulk_g, nothing.cells_per_g, nothing.ripening_h), (0.0, 0.0, 0.0, 0.0));
    assert!(!nothing.sourness.goes_on());
}
