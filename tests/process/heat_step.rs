//! Raw milk that is pasteurised in the vat: its hold, its cooling, what follows, and what is refused.

use super::souring::near;
use vatsketch::batch::{Batch, batch};
use vatsketch::caution::{Severity, cautions};
use vatsketch::design::{Design, Heating, MilkKind, MilkTreatment, SouredBy, Stage};
use vatsketch::law::bath::{Course, End, Leg, Pot, bath_of};
use vatsketch::law::pasteurising::{QUICK_PASTEURISING, RICH_HOTTER, SLOW_PASTEURISING};
use vatsketch::process::{HeatStep, MilkError, StageError, VatError, VatOutcome, WarmingEvent};

/// Invented: six litres of raw cow's milk, pasteurised as the rules have it.
fn pasteurised() -> Design {
    let mut design = Design::default();
    (design.milk.milk_treatment, design.milk.pasteurised_in_vat) = (MilkTreatment::Raw, true);
    design
}

fn vat_of(batch: &Batch) -> (&VatOutcome, HeatStep) {
    let vat = batch.vat.done().unwrap_or_else(|| panic!("{:?}", batch.ending(Stage::Vat).why_not()));
    (vat, vat.heat_step.unwrap())
}

fn refused(design: &Design) -> StageError {
    let batch = batch(design).unwrap();
    batch.milk.failed().or_else(|| batch.vat.failed()).unwrap().clone()
}

fn ways_of_heating() -> [Design; 3] {
    [Heating::Bath, Heating::DoubleBoiler, Heating::Hob].map(|heating| {
        let mut design = pasteurised();
        design.vat.heating = heating;
        design
    })
}

#[test]
fn the_milk_is_heated_held_and_cooled_before_anything_goes_in() {
    use WarmingEvent::{Calcium, Cooled, HoldBegins, HoldEnds, Rennet, Start};
    for design in ways_of_heating() {
        let batch = batch(&design).unwrap();
        let (vat, step) = vat_of(&batch);
        // 21 CFR 1240.61 (b): 63 °C, 30 min.
        near(step.hold_ends_min - step.to_hold_min, 30.0, 1e-6);
        assert!(step.hold_coldest_c > 63.0 - 1e-6, "{step:?}");
        let held = vat.curve.iter().filter(|point| (step.to_hold_min..=step.hold_ends_min).contains(&point.at_min));
        assert!(held.clone().count() > 5 && held.clone().all(|point| point.milk_c > 63.0 - 1e-6));
        let events: Vec<_> = vat.events.iter().map(|mark| mark.event).collect();
        assert_eq!(events[..6], [Start, HoldBegins, HoldEnds, Cooled, Calcium, Rennet]);
        let cooled = vat.events.iter().find(|mark| mark.event == Cooled).unwrap();
        near(cooled.milk_c, design.vat.rennet_temperature_c, 1e-6);
        assert!(vat.to_calcium_min >= step.cooled_min && vat.to_rennet_min >= step.cooled_min);
        assert!(step.cooling_min() > 1.0 && step.cooling_min() < 120.0);
    }
}

/// The cooling is the two-node law in 20 L of water of 10 °C, whichever way the milk was heated; on a hob it begins at the hold itself.
#[test]
fn the_cooling_is_the_bath_law_in_cold_water() {
    let [_, _, hob] = ways_of_heating();
    let batch = batch(&hob).unwrap();
    let milk = batch.milk.done().unwrap();
    let mut course = Course::new(bath_of(&Pot::new(milk.vat_milk_l), 20.0, true, 20.0), 10.0, 63.0);
    assert!(course.follow(&Leg { heater: None, end: End::MilkAt { milk_c: 35.0, within_s: 7200.0 } }));
    near(vat_of(&batch).1.cooling_min(), course.now.at_s / 60.0, 1e-6);
}

/// Between the two published points our own line, √(1800 · 15) = 164.3 s half way, as a kitchen clock shows it: 3 min.
#[test]
fn the_hold_follows_the_temperature_and_may_only_be_longer() {
    for (hold_c, extra_min, minutes) in
        [(63.0, 0.0, 30.0), (67.5, 0.0, 3.0), (72.0, 0.0, 0.25), (75.0, 0.0, 0.25), (63.0, 10.0, 40.0)]
    {
        let mut design = pasteurised();
        (design.milk.pasteurising_temperature_c, design.milk.pasteurising_extra_min) = (hold_c, extra_min);
        design.milk.pasteurising_bath_temperature_c = 80.0;
        let batch = batch(&design).unwrap();
        let step = vat_of(&batch).1;
        near(step.hold_ends_min - step.to_hold_min, minutes, 1e-6);
    }
}

#[test]
fn rich_milk_is_refused_below_its_own_hold() {
    let mut design = pasteurised();
    (design.milk.milk_kind, design.milk.fat_target_percent) = (MilkKind::Sheep, 7.0);
    let error = refused(&design);
    assert!(matches!(error, StageError::Milk(MilkError::TooCoolToPasteurise { rich: true, .. })), "{error}");
    assert!(error.to_string().contains("pasteurise it at 66 °C or more"), "{error}");
    design.milk.pasteurising_temperature_c = 66.0;
    design.milk.pasteurising_bath_temperature_c = 71.0;
    assert!(batch(&design).unwrap().vat.done().is_some());
}

#[test]
fn what_cannot_be_held_or_cooled_is_refused_with_what_to_do() {
    let mut cool = pasteurised();
    (cool.milk.pasteurising_temperature_c, cool.milk.pasteurising_bath_temperature_c) = (66.0, 65.0);
    let mut weak = pasteurised();
    (weak.milk.pasteurising_bath_temperature_c, weak.vat.heater_power_w) = (64.0, 100.0);
    let mut hob = pasteurised();
    (hob.vat.heating, hob.vat.heater_power_w) = (Heating::Hob, 100.0);
    (hob.milk.milk_l, hob.milk.pasteurising_temperature_c) = (20.0, 75.0);
    let mut falls = pasteurised();
    (falls.vat.bath_start_temperature_c, falls.milk.pasteurising_bath_temperature_c) = (95.0, 63.5);
    (falls.vat.pot_lid, falls.vat.bath_lid, falls.vat.bath_l, falls.milk.pasteurising_extra_min) = (false, false, 18.0, 60.0);
    let mut warm = pasteurised();
    (warm.milk.cooling_water_l, warm.milk.cooling_water_temperature_c) = (2.0, 25.0);
    let mut acid = pasteurised();
    acid.milk.soured_by = SouredBy::Acid;
    for (design, does) in [
        (cool, "the bath of this step is set to 65.0 °C: set it hotter than 66.0 °C"),
        (weak, "set the bath of this step hotter, use more power"),
        (hob, "it stays raw; use more power and put the lid on"),
        (falls, "set it hotter"),
        (warm, "at which the rennet goes in: this cold water brings it to"),
        (acid, "does not cool to 10.0 °C, at which the acid goes in"),
    ] {
        let error = refused(&design);
        assert!(error.to_string().contains(does), "{error}");
        assert!(
            matches!(
                error,
                StageError::Vat(VatError::NeverAtHold { .. } | VatError::HoldNotKept { .. } | VatError::NeverCool { .. })
            ),
            "{error}"
        );
        // Milk whose heat step fails is raw milk.
        assert!(cautions(&batch(&design).unwrap()).iter().any(|caution| caution.key == "raw_milk"));
    }
}

#[test]
fn acid_and_culture_go_into_milk_that_has_cooled() {
    let mut acid = pasteurised();
    acid.milk.soured_by = SouredBy::Acid;
    assert!(matches!(refused(&acid), StageError::Vat(VatError::NeverCool { .. })), "this water is not cold enough for acid");
    (acid.milk.cooling_water_l, acid.milk.cooling_water_temperature_c) = (60.0, 1.0);
    let batched = batch(&acid).unwrap();
    let (vat, step) = vat_of(&batched);
    near(step.cooled_c, 10.0, 1e-9);
    let own_ph = vat.souring[0].ph;
    for point in &vat.souring {
        assert!(60.0 * point.at_h >= step.cooled_min - 1e-6 || point.ph == own_ph, "{point:?}");
    }
    near(vat.souring.last().unwrap().ph, acid.milk.soured_milk_ph, 0.05);
    let mut culture = pasteurised();
    culture.milk.soured_by = SouredBy::Culture;
    let batched = batch(&culture).unwrap();
    let (vat, step) = vat_of(&batched);
    near(step.cooled_c, culture.milk.ripening_temperature_c, 1e-9);
    assert!(vat.to_culture_min >= step.cooled_min && vat.to_culture_min < step.cooled_min + 5.0);
}

/// It counts as the pasteurised milk of a shop.
#[test]
fn curd_of_milk_pasteurised_in_the_vat_is_that_of_pasteurised_milk() {
    let heated = batch(&pasteurised()).unwrap();
    let mut design = pasteurised();
    design.milk.milk_treatment = MilkTreatment::Pasteurised;
    let bought = batch(&design).unwrap();
    assert!(bought.vat.done().unwrap().heat_step.is_none());
    let (heated, bought) = (heated.vat.done().unwrap(), bought.vat.done().unwrap());
    near(heated.yield_percent, bought.yield_percent, 1e-9);
    near(heated.drained_curd.fat_percent(), bought.drained_curd.fat_percent(), 1e-9);
    near(heated.clotting_min, bought.clotting_min, 0.5);
}

#[test]
fn germs_count_from_the_end_of_the_hold() {
    let heated = batch(&pasteurised()).unwrap();
    let step = vat_of(&heated).1;
    let germs = heated.germs.as_ref().unwrap();
    let notes = vatsketch::figure::germ_table(&heated).unwrap().notes(vatsketch::process::GermLine::name);
    assert!(notes.iter().any(|note| note.contains("end of the hold")), "{notes:?}");
    near(germs.spans[0].begins_h, step.hold_ends_min / 60.0, 1e-6);
    for course in &germs.courses {
        assert_eq!(course.points[0].worst, 0.0);
        near(course.points[0].at_h, step.hold_ends_min / 60.0, 1e-6);
    }
}

#[test]
fn the_raw_milk_caution_gives_way_to_one_about_the_heat_step() {
    let all = cautions(&batch(&pasteurised()).unwrap());
    assert!(all.iter().all(|caution| caution.key != "raw_milk"));
    let step = all.iter().find(|caution| caution.key == "pasteurised_in_vat").unwrap();
    assert_eq!((step.severity, step.caused_by), (Severity::Stop, Some("pasteurising_temperature_c")));
    let words = vatsketch::words::caution_words(step, vatsketch::units::Units::METRIC);
    for said in ["no licensed process", "63.0 °C or more", "30 min", "toxin", "careless handling", "end of the hold"] {
        assert!(words.what.contains(said), "{said}: {}", words.what);
    }
    assert!(words.remedy.contains("Local food rules and licensed practice come first"), "{}", words.remedy);
}

/// 21 CFR 1240.61 (b) has 63 °C for 30 min and 72 °C for 15 s; at 66 °C it has no time, unless the milk is held for the 30 min of 63 °C.
#[test]
fn a_time_that_no_rule_has_is_said_to_be_ours() {
    for (hold_c, extra_min, ours) in
        [(63.0, 0.0, false), (66.0, 0.0, true), (66.0, 30.0, false), (72.0, 0.0, false), (71.5, 0.0, true)]
    {
        let mut design = pasteurised();
        (design.milk.pasteurising_temperature_c, design.milk.pasteurising_extra_min) = (hold_c, extra_min);
        design.milk.pasteurising_bath_temperature_c = 80.0;
        let all = cautions(&batch(&design).unwrap());
        let caution = all.iter().find(|caution| caution.key == "pasteurised_in_vat").unwrap();
        let words = vatsketch::words::caution_words(caution, vatsketch::units::Units::METRIC);
        assert_eq!(words.what.contains("No rule has this time"), ours, "{hold_c} °C: {}", words.what);
    }
}

/// The bath of the heat step must stay hotter than the milk, so the advice about a hot wall must not be to cool it.
#[test]
fn the_hot_wall_of_the_heat_step_has_advice_of_its_own() {
    let all = cautions(&batch(&pasteurised()).unwrap());
    let wall = all.iter().find(|caution| caution.key == "hot_wall").unwrap();
    assert_eq!(wall.caused_by, Some("pasteurising_bath_temperature_c"));
    let words = vatsketch::words::caution_words(wall, vatsketch::units::Units::METRIC);
    assert!(words.remedy.contains("must stay hotter") && !words.remedy.contains("cooler"), "{}", words.remedy);
}

/// The numbers in the help of the choice are those of the records.
#[test]
fn the_help_of_the_temperature_names_the_points_of_the_rules() {
    let field = vatsketch::design::fields().find(|field| field.key == "pasteurising_temperature_c").unwrap();
    let (slow_c, quick_c, more_k) = (SLOW_PASTEURISING.value, QUICK_PASTEURISING.value, RICH_HOTTER.value);
    let points = format!("{slow_c} and {quick_c} °C (rich milk: {} and {} °C)", slow_c + more_k, quick_c + more_k);
    assert!(field.help.contains(&points), "{points}: {}", field.help);
}

#[test]
fn a_short_hold_is_told_in_seconds_and_kept_in_minutes() {
    let mut design = pasteurised();
    (design.milk.pasteurising_temperature_c, design.milk.pasteurising_bath_temperature_c) = (72.0, 80.0);
    let all = vatsketch::figure::figures(&batch(&design).unwrap());
    let held = all.iter().find(|figure| figure.key == "pasteurising_min").unwrap();
    assert_eq!((held.text().as_str(), &held.reading), ("15 s", &vatsketch::figure::Reading::Number(0.25)));
}

#[test]
fn the_warming_curve_shows_heating_hold_and_cooling() {
    let made = batch(&pasteurised()).unwrap();
    let step = vat_of(&made).1;
    let curve = vatsketch::curve::curve(&made, vatsketch::curve::CurveKey::Warming);
    let first: Vec<_> = curve.events.iter().take(3).map(|event| (event.name, event.at)).collect();
    assert_eq!(first, [("hold begins", step.to_hold_min), ("hold ends", step.hold_ends_min), ("cooled", step.cooled_min)]);
    assert!(curve.y.most > 68.0 && curve.in_words.contains("the raw milk is hot enough after"), "{}", curve.in_words);
}
