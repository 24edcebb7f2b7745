//! How the milk sours in the vat, and what that does to the set.

use super::souring::{acidified, cultured, near, way, with_lactone};
use vatsketch::design::{Design, MilkAcid, VatDesign};
use vatsketch::law::rennet::{CLOTTING_LEAST, clotting_min};
use vatsketch::process::{
    MilkOutcome, StageError, UncertainParameters, VatError, VatOutcome, WarmingEvent, milk, ph_at, setting, vat,
};

fn vat_of(design: &Design) -> Result<VatOutcome, VatError> {
    vat(&design.vat, design.draining.drip_end_moisture_percent, &milk(&design.milk).unwrap())
}

#[test]
fn the_culture_goes_in_at_its_warmth_and_ripens_its_hours_before_the_rennet() {
    let mut design = cultured();
    (design.milk.ripening_temperature_c, design.milk.ripening_h) = (29.0, 1.5);
    let vat = vat_of(&design).unwrap();
    let culture = vat.events.iter().find(|mark| mark.event == WarmingEvent::Culture).unwrap();
    near(culture.milk_c, 29.0, 0.01);
    near(culture.at_min, vat.to_culture_min, 1e-6);
    assert!(vat.to_rennet_min >= vat.to_culture_min + 90.0);
    // Nothing sours before it is there, and it works from then on.
    let own_ph = vat.souring[0].ph;
    for point in &vat.souring {
        let before = point.at_h < vat.to_culture_min / 60.0;
        assert_eq!(before || point.ph == own_ph, point.ph == own_ph, "{point:?}");
    }
    assert!(vat.whey_ph < vat.rennet_ph && vat.rennet_ph < own_ph);
}

/// The pH at the rennet is that of the course at that minute.
#[test]
fn the_ph_at_the_rennet_and_of_the_whey_lie_on_the_course() {
    for design in [cultured(), acidified(MilkAcid::Citric, 6.1)] {
        let vat = vat_of(&design).unwrap();
        near(vat.rennet_ph, ph_at(&vat.souring, vat.to_rennet_min / 60.0).unwrap(), 0.002);
        near(vat.whey_ph, vat.souring.last().unwrap().ph, 1e-12);
        near(vat.souring.last().unwrap().at_h, vat.to_ladle_min / 60.0, 1e-9);
    }
}

#[test]
fn milk_that_is_too_sour_for_rennet_is_refused_with_what_to_do() {
    let mut design = cultured();
    (design.milk.culture_cells_million_g, design.milk.ripening_h) = (50.0, 10.0);
    let refused = vat_of(&design).unwrap_err();
    let VatError::TooSour { ph, least_ph } = refused else { panic!("{refused}") };
    assert!(ph < least_ph && least_ph == 5.2);
    assert!(refused.to_string().contains("ripen it for a shorter time"), "{refused}");
    assert!(matches!(way(&design), Err(StageError::Vat(VatError::TooSour { .. }))));
}

fn setting_min(milk: &MilkOutcome, ph: f64) -> f64 {
    setting(&VatDesign::default(), milk, (33.0, ph), &UncertainParameters::default()).unwrap().clotting_min
}

/// Chapter on rennet: 1.25 times as long for each 0.1 of pH more, on what is no constant part; not measured below pH 6.0 and held from there.
#[test]
fn clotting_quickens_down_to_ph_6_and_no_further() {
    let milk = milk(&Design::default().milk).unwrap();
    let beside = |ph: f64| setting_min(&milk, ph) - CLOTTING_LEAST.value;
    near(beside(6.5) / beside(6.2), 1.25_f64.powi(3), 1e-9);
    near(beside(6.1) / beside(6.0), 1.25, 1e-9);
    for ph in [5.9, 5.5, 5.2] {
        assert_eq!(setting_min(&milk, ph), setting_min(&milk, 6.0), "pH {ph}");
    }
    near(setting_min(&milk, 6.4), clotting_min(milk.rennet_imcu_kg, 33.0, 6.4, milk.calcium_percent), 1e-12);
}

#[test]
fn soured_milk_sets_sooner_and_a_lactone_sours_only_from_the_rennet_on() {
    let clotting = |design: &Design| vat_of(design).unwrap().clotting_min;
    let unsoured = clotting(&Design::default());
    assert!(clotting(&cultured()) < unsoured && clotting(&acidified(MilkAcid::Citric, 6.1)) < unsoured);
    let held = (clotting(&acidified(MilkAcid::Citric, 5.9)), clotting(&acidified(MilkAcid::Citric, 5.5)));
    near(held.0, held.1, 1e-6);
    let lactone = vat_of(&with_lactone()).unwrap();
    assert_eq!(lactone.rennet_ph, lactone.souring[0].ph);
    assert!(lactone.whey_ph < lactone.rennet_ph && lactone.clotting_min < unsoured);
}

/// What souring dissolves leaves with the whey: less calcium phosphate in the curd, and a little less curd.
#[test]
fn souring_takes_calcium_phosphate_out_of_the_curd() {
    let (unsoured, soured) = (vat_of(&Design::default()).unwrap(), vat_of(&acidified(MilkAcid::Lactic, 5.8)).unwrap());
    near(unsoured.phosphate_left, 1.0, 1e-12);
    assert!((0.5..0.9).contains(&soured.phosphate_left), "{}", soured.phosphate_left);
    let ash = |vat: &VatOutcome| vat.drained_curd.ash_kg / vat.drained_curd.casein_kg;
    assert!(ash(&soured) < ash(&unsoured) && soured.yield_percent < unsoured.yield_percent);
}
