//! The vat: warming against the independent runs of the bath, setting, refusals and properties. Curd, whey and balances are with the wet stages.

use proptest::prelude::*;
use vatsketch::design::{Heating, MilkDesign, VatDesign};
use vatsketch::law::Matter;
use vatsketch::law::bath::{MILK_HEAT, Pot};
use vatsketch::law::rennet::clotting_min;
use vatsketch::process::{MilkOutcome, UncertainParameters, VatError, VatOutcome, WarmingEvent, milk, setting, vat};

const MOISTURE_PERCENT: f64 = 61.0;

#[track_caller]
fn near(got: f64, want: f64, tolerance: f64) {
    let within = (got - want).abs() <= tolerance;
    assert!(within, "got {got}, wanted {want} ± {tolerance}");
}

/// Returns milk of so many litres with the additions of the reference runs, as water.
fn reference_milk(litres: f64, start_c: f64, calcium_kg: f64, rennet_kg: f64) -> MilkOutcome {
    MilkOutcome {
        vat_milk_l: litres,
        start_c,
        calcium: Matter::water(calcium_kg),
        rennet: Matter::water(rennet_kg),
        ..milk(&MilkDesign::default()).unwrap()
    }
}

/// Every reference run with the pot as it usually is and additions as warm as the kitchen: the stage goes the way of the runs from the first
/// minute to the end of the rest, heater off after the rennet. 1e-3 s, 1e-6 K, 1e-9 kWh.
#[test]
fn warming_setting_and_rest_are_those_of_the_reference_runs() {
    let table = std::fs::read_to_string("tests/reference/warming_bath.json").unwrap();
    let table: serde_json::Value = serde_json::from_str(&table).unwrap();
    let mut runs = 0;
    for case in table["cases"].as_array().unwrap() {
        let given = |key: &str| case["inputs"][key].as_f64().unwrap();
        let wanted = |key: &str| case["out"][key].as_f64().unwrap();
        let lid = |key: &str| case["inputs"][key].as_bool().unwrap_or(true);
        let unusual = ["h_i", "h_o", "f_base"].iter().any(|key| !case["inputs"][*key].is_null());
        if unusual || given("add_T") != given("Tr") {
            continue;
        }
        runs += 1;
        let design = VatDesign {
            heating: Heating::Bath,
            bath_l: given("Vb"),
            bath_start_temperature_c: given("Tb0"),
            bath_set_temperature_c: given("Tset"),
            heater_power_w: given("P"),
            room_temperature_c: given("Tr"),
            bath_lid: lid("bath_lid"),
            pot_lid: lid("pot_lid"),
            calcium_temperature_c: given("target1"),
            rennet_temperature_c: given("target2"),
            heat_while_setting: false,
            firmness_multiple: 2.0,
            first_test_min: given("set_s") / 60.0,
            whey_rest_min: given("rest_s") / 60.0,
            ..VatDesign::default()
        };
        let milk = reference_milk(given("V"), given("Tm0"), given("add1_kg"), given("add2_kg"));
        let vat = vat(&design, MOISTURE_PERCENT, &milk).unwrap();
        near(60.0 * vat.to_calcium_min, wanted("t_calcium"), 1e-3);
        near(60.0 * vat.to_rennet_min, wanted("t_rennet"), 1e-3);
        near(vat.energy_kwh, wanted("E_calcium") + wanted("E_rennet"), 1e-9);
        assert_eq!((vat.cut_min, vat.tests), (given("set_s") / 60.0, 1), "the break is clean at the first test");
        let event = |event: WarmingEvent| vat.events.iter().find(|mark| mark.event == event).unwrap();
        near(event(WarmingEvent::Cut).milk_c, wanted("set_Tm"), 1e-6);
        near(event(WarmingEvent::Ladle).milk_c, wanted("shr_Tm"), 1e-6);
        near(vat.to_ladle_min, vat.to_rennet_min + (given("set_s") + given("rest_s")) / 60.0, 1e-9);
    }
    assert_eq!(runs, 13);
}

fn default_milk() -> MilkOutcome {
    milk(&MilkDesign::default()).unwrap()
}

fn worked_out(design: &VatDesign) -> VatOutcome {
    vat(design, MOISTURE_PERCENT, &default_milk()).unwrap()
}

/// First law, by hand: the electricity is what the milk and its pot took up and a little for losses, less than a twentieth in so short a time.
#[test]
fn double_boiler_and_hob_take_the_heat_that_the_milk_holds() {
    let milk = default_milk();
    let pot_j_k = Pot::new(milk.vat_milk_l).steel_j_k();
    for heating in [Heating::DoubleBoiler, Heating::Hob] {
        let design = VatDesign { heating, ..VatDesign::default() };
        let vat = worked_out(&design);
        let warmed_k = design.rennet_temperature_c - milk.start_c;
        let held_kwh = (milk.vat_milk_kg * MILK_HEAT.value + pot_j_k) * warmed_k / 3.6e6;
        assert!(held_kwh < vat.energy_kwh && vat.energy_kwh < 1.05 * held_kwh, "{held_kwh} {}", vat.energy_kwh);
        near(vat.energy_kwh, design.heater_power_w * vat.to_rennet_min / 60_000.0, 1e-9);
    }
}

#[test]
fn a_hob_heats_the_wall_more_than_a_bath() {
    let hottest = |heating| worked_out(&VatDesign { heating, heater_power_w: 3000.0, ..VatDesign::default() }).wall_most_c;
    let (bath_c, boiler_c, hob_c) = (hottest(Heating::Bath), hottest(Heating::DoubleBoiler), hottest(Heating::Hob));
    assert!(bath_c < 37.5, "no wall is hotter than its bath of 37.5 °C: {bath_c}");
    assert!(bath_c < boiler_c && boiler_c < 100.0, "{boiler_c}");
    assert!(bath_c < hob_c, "{hob_c}");
}

/// On the hob the heat that is kept on holds the milk where it is; off, it cools with the time constant C/G towards the kitchen, by the textbook's
/// exponential: by hand C from milk and pot, G from 7 W/(m² K) of a lid and 8 of the side.
#[test]
fn off_the_heat_the_milk_cools_as_a_single_body_and_on_it_stays() {
    let milk = reference_milk(6.0, 5.0, 0.0, 0.0);
    let milk = MilkOutcome { vat_milk_kg: 6.2, ..milk };
    let pot = Pot::new(6.0);
    let time_s = (6.2 * MILK_HEAT.value + pot.steel_j_k()) / (7.0 * pot.base_m2() + 8.0 * pot.side_m2());
    for heating in [Heating::Hob, Heating::DoubleBoiler] {
        let design = |heat_while_setting| VatDesign { heating, heat_while_setting, ..VatDesign::default() };
        let worked_out = |design: &VatDesign| vat(design, MOISTURE_PERCENT, &milk).unwrap();
        let on = worked_out(&design(true));
        near(on.events[6].milk_c, 35.0, 1e-9);
        let off = worked_out(&design(false));
        let stood_s = 60.0 * (off.to_ladle_min - off.to_rennet_min);
        near(off.events[6].milk_c, 20.0 + 15.0 * (-stood_s / time_s).exp(), 1e-9);
    }
}

#[test]
fn everything_happens_in_the_order_of_the_trade() {
    for heating in [Heating::Bath, Heating::DoubleBoiler, Heating::Hob] {
        for heat_while_setting in [true, false] {
            let vat = worked_out(&VatDesign { heating, heat_while_setting, ..VatDesign::default() });
            let names: Vec<&str> = vat.events.iter().map(|mark| mark.event.words()).collect();
            assert_eq!(names, ["start", "calcium", "rennet", "clotted", "clean break", "cut", "ladle"]);
            assert!(vat.events.windows(2).all(|pair| pair[0].at_min <= pair[1].at_min));
            assert!(vat.curve.windows(2).all(|pair| pair[0].at_min < pair[1].at_min));
            let (first, last) = (vat.curve[0], vat.curve[vat.curve.len() - 1]);
            assert_eq!((first.at_min, first.milk_c), (0.0, 5.0));
            near(last.at_min, vat.to_ladle_min, 1e-9);
        }
    }
}

#[test]
fn a_bath_colder_than_the_rennet_temperature_is_refused_with_the_warmest_it_reaches() {
    let design = VatDesign { bath_set_temperature_c: 31.0, rennet_temperature_c: 34.0, ..VatDesign::default() };
    let refused = vat(&design, MOISTURE_PERCENT, &default_milk()).unwrap_err();
    let VatError::NeverWarm { wanted_c, most_c, hours } = refused else { panic!("{refused}") };
    assert_eq!((wanted_c, hours), (34.0, 6.0));
    assert!(most_c > 25.0 && most_c < 31.0, "{most_c}");
    let words = refused.to_string();
    assert!(words.contains("does not reach 34.0 °C") && words.contains("heat hotter"), "{words}");
}

#[test]
fn too_little_power_is_refused_by_every_way_of_heating() {
    let cold = MilkOutcome { vat_milk_l: 60.0, vat_milk_kg: 62.0, ..default_milk() };
    for heating in [Heating::Bath, Heating::DoubleBoiler, Heating::Hob] {
        let design = VatDesign { heating, heater_power_w: 100.0, bath_l: 80.0, room_temperature_c: 5.0, ..VatDesign::default() };
        let refused = vat(&design, MOISTURE_PERCENT, &cold);
        assert!(matches!(refused, Err(VatError::NeverWarm { most_c, .. }) if most_c < 35.0), "{:?}", refused.map(|vat| vat.events));
    }
}

/// University of Guelph notes (second-hand): no clot below 18 °C, and the enzyme dies above about 55 °C.
#[test]
fn milk_sets_between_18_and_55_degrees_and_nowhere_else() {
    let (design, milk) = (VatDesign::default(), default_milk());
    for temperature_c in [18.0, 35.0, 55.0] {
        assert!(setting(&design, &milk, (temperature_c, milk.milk_ph), &UncertainParameters::default()).is_ok());
    }
    for temperature_c in [17.9, 55.1, f64::NAN] {
        let refused = setting(&design, &milk, (temperature_c, milk.milk_ph), &UncertainParameters::default()).unwrap_err();
        let words = refused.to_string();
        assert!(words.contains("between 18 and 55 °C") && words.contains("choose another"), "{words}");
    }
}

#[test]
fn milk_that_cools_too_far_before_it_clots_is_refused() {
    let milk = MilkOutcome { rennet_imcu_kg: 10.0, calcium_percent: 0.0, ..reference_milk(0.5, 5.0, 0.0, 0.0) };
    let design = VatDesign {
        heating: Heating::Hob,
        heat_while_setting: false,
        pot_lid: false,
        room_temperature_c: 5.0,
        calcium_temperature_c: 10.0,
        rennet_temperature_c: 20.0,
        ..VatDesign::default()
    };
    let refused = vat(&design, MOISTURE_PERCENT, &milk);
    assert!(
        matches!(refused, Err(VatError::DoesNotSet { temperature_c, .. }) if temperature_c < 18.0),
        "{:?}",
        refused.map(|vat| vat.events)
    );
}

/// Milk that comes warm takes its calcium at once, and is not cooled for it.
#[test]
fn warm_milk_is_not_cooled_for_the_calcium() {
    let milk = MilkOutcome { start_c: 25.0, ..default_milk() };
    for heating in [Heating::Bath, Heating::DoubleBoiler, Heating::Hob] {
        let design = VatDesign { heating, bath_start_temperature_c: 37.0, calcium_temperature_c: 16.0, ..VatDesign::default() };
        let vat = vat(&design, MOISTURE_PERCENT, &milk).unwrap();
        assert_eq!(vat.to_calcium_min, 0.0);
        assert!(vat.to_rennet_min > 0.0);
    }
}

/// Returns the mean temperature of the milk between two minutes of the curve, by trapezia.
fn mean_milk_c(vat: &VatOutcome, from_min: f64, to_min: f64) -> f64 {
    let inside: Vec<_> = vat.curve.iter().filter(|point| point.at_min > from_min - 1e-6 && point.at_min < to_min + 1e-6).collect();
    let area: f64 = inside.windows(2).map(|pair| 0.5 * (pair[0].milk_c + pair[1].milk_c) * (pair[1].at_min - pair[0].at_min)).sum();
    area / (inside[inside.len() - 1].at_min - inside[0].at_min)
}

fn any_heating() -> impl Strategy<Value = Heating> {
    prop_oneof![Just(Heating::Bath), Just(Heating::DoubleBoiler), Just(Heating::Hob)]
}

proptest! {
    /// The clotting time is that of the mean temperature until it clots, and that mean is the curve's, but for the moment of the addition and
    /// the width of the curve's steps: 0.3 K.
    #[test]
    fn clotting_time_and_the_temperature_over_it_belong_together(
        heating in any_heating(), on in any::<bool>(), rennet_c in 28.0..36.0_f64, room_c in 10.0..28.0_f64, power_w in 600.0..2000.0_f64,
    ) {
        let design = VatDesign {
            heating,
            heat_while_setting: on,
            rennet_temperature_c: rennet_c,
            room_temperature_c: room_c,
            heater_power_w: power_w,
            ..VatDesign::default()
        };
        let milk = default_milk();
        let vat = vat(&design, MOISTURE_PERCENT, &milk).unwrap();
        let again_min = clotting_min(milk.rennet_imcu_kg, vat.setting_temperature_c, milk.milk_ph, milk.calcium_percent);
        prop_assert!((vat.clotting_min - again_min).abs() < 1e-9);
        let mean_c = mean_milk_c(&vat, vat.to_rennet_min, vat.to_rennet_min + vat.clotting_min);
        prop_assert!((mean_c - vat.setting_temperature_c).abs() < 0.3, "{} {}", mean_c, vat.setting_temperature_c);
    }

    /// More power is never later, and no milk of a bath is warmer than the warmest thing around it.
    #[test]
    fn more_power_is_sooner_and_nothing_is_warmer_than_its_cause(
        heating in any_heating(), power_w in 400.0..2000.0_f64, more in 1.1..2.0_f64, start_c in 10.0..60.0_f64,
    ) {
        let design = |heater_power_w| VatDesign { heating, heater_power_w, bath_start_temperature_c: start_c, ..VatDesign::default() };
        let (slow, quick) = (worked_out(&design(power_w)), worked_out(&design(more * power_w)));
        prop_assert!(quick.to_rennet_min <= slow.to_rennet_min + 1e-9);
        if heating == Heating::Bath {
            for point in &quick.curve {
                prop_assert!(point.milk_c <= quick.bath_most_c + 1e-9);
                prop_assert!(point.wall_c >= point.milk_c.min(point.bath_c) - 1e-9 && point.wall_c <= point.milk_c.max(point.bath_c) + 1e-9);
            }
            prop_assert!(quick.bath_most_c <= start_c.max(37.5) + 1e-6);
        }
    }
}
