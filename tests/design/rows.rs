//! The row beside each input.

use std::collections::BTreeSet;
use vatsketch::batch::batch;
use vatsketch::caution::cautions;
use vatsketch::design::{DESCRIBED_CHEESE_FIELDS, Design, Field, Heating, Kind, MilkDesign, MilkTreatment, VatDesign, fields};
use vatsketch::figure::figures;

fn sound<D: Default>(field: &Field<D>) {
    assert!(field.check(field.default()).is_ok(), "default of {}", field.key);
    assert!(!field.label.is_empty() && field.help.ends_with('.'), "words of {}", field.key);
    match field.kind {
        Kind::Number { least, most, step, whole } => {
            assert!(least < most && step > 0.0 && step < most - least, "range of {}", field.key);
            assert!(!whole || (least.fract() == 0.0 && most.fract() == 0.0 && step.fract() == 0.0), "count of {}", field.key);
        }
        Kind::Choice(choices) => {
            let keys: BTreeSet<&str> = choices.iter().map(|choice| choice.key).collect();
            assert!(choices.len() >= 2 && keys.len() == choices.len(), "choices of {}", field.key);
        }
        Kind::Switch => {}
    }
}

#[test]
fn every_default_is_in_its_range_and_every_input_is_explained() {
    fields().for_each(sound);
    DESCRIBED_CHEESE_FIELDS.iter().for_each(sound);
    assert!(Design::default().check().is_ok());
}

#[test]
fn no_two_inputs_have_the_same_key_and_the_stages_stand_in_order() {
    let keys: BTreeSet<&str> = fields().map(|field| field.key).collect();
    assert_eq!(keys.len(), fields().count());
    assert!(fields().map(|field| field.stage).is_sorted());
    let described: BTreeSet<&str> = DESCRIBED_CHEESE_FIELDS.iter().map(|field| field.key).collect();
    assert_eq!(described.len(), DESCRIBED_CHEESE_FIELDS.len());
}

/// The unit stands in the name, so that a reader of a file needs no manual.
#[test]
fn every_number_names_its_unit_in_its_key() {
    use vatsketch::design::Unit;
    for field in fields().filter(|field| matches!(field.kind, Kind::Number { .. })) {
        let ending = match field.unit {
            Unit::Litre => "_l",
            Unit::Millilitre => "_ml",
            Unit::Percent => "_percent",
            Unit::Celsius => "_c",
            Unit::Watt => "_w",
            Unit::Minute => "_min",
            Unit::Hour => "_h",
            Unit::Millimetre => "_mm",
            Unit::MetrePerSecond => "_m_s",
            Unit::ImcuPerMillilitre => "_imcu_ml",
            Unit::ImcuPerKilogram => "_imcu_kg",
            Unit::Parts => "_parts",
            _ => "",
        };
        assert!(field.key.ends_with(ending), "{} is kept in {:?}", field.key, field.unit);
    }
}

#[test]
fn an_input_hides_where_another_choice_makes_it_idle() {
    let used = |key: &str, design: &Design| (vatsketch::design::field(key).unwrap().used)(design);
    let bath = Design::default();
    let hob = Design { vat: VatDesign { heating: Heating::Hob, ..VatDesign::default() }, ..Design::default() };
    assert!(used("bath_l", &bath) && !used("bath_l", &hob));
    assert!(used("heater_power_w", &bath) && used("heater_power_w", &hob));
    // A hob has no thermostat to set for the heat step; what it is set to moves no figure and no caution.
    let raw = |heating| {
        let mut design = Design { vat: VatDesign { heating, ..VatDesign::default() }, ..Design::default() };
        (design.milk.milk_treatment, design.milk.pasteurised_in_vat) = (MilkTreatment::Raw, true);
        design
    };
    let (in_bath, on_hob) = (raw(Heating::Bath), raw(Heating::Hob));
    assert!(used("pasteurising_bath_temperature_c", &in_bath) && !used("pasteurising_bath_temperature_c", &on_hob));
    let mut hotter = on_hob.clone();
    hotter.milk.pasteurising_bath_temperature_c = 98.0;
    let (one, other) = (batch(&on_hob).unwrap(), batch(&hotter).unwrap());
    assert_eq!((figures(&one), cautions(&one)), (figures(&other), cautions(&other)));
    assert!(!used("label_fat_percent", &bath) && !used("night_temperature_c", &bath) && used("cabinet_temperature_c", &bath));
}

#[test]
fn a_design_with_a_number_that_is_none_is_refused_as_a_whole() {
    let design = Design { milk: MilkDesign { milk_l: f64::NAN, ..MilkDesign::default() }, ..Design::default() };
    assert!(design.check().unwrap_err().to_string().contains("milk_l"));
    assert!(vatsketch::batch::batch(&design).is_err());
}
