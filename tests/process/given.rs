//! The uncertain parameters, and how they are drawn.

use proptest::prelude::*;
use std::collections::BTreeSet;
use vatsketch::analysis::constants;
use vatsketch::batch::batch_given;
use vatsketch::design::{CultureBy, CultureKind, Design, MilkTreatment, SouredBy, Stage};
use vatsketch::law::rennet::CLOTTING_LEAST;
use vatsketch::law::souring::{BULK_STARTER_CELLS, MESOPHILIC_RATE, MIXED_RATE, PACKET_CELLS, THERMOPHILIC_RATE};
use vatsketch::law::syneresis::mould_time_h;
use vatsketch::law::yields::{FAT_KEPT, FAT_KEPT_HOMOGENISED};
use vatsketch::process::{Distribution, Given, Runs, SourPoint, UNCERTAIN_PARAMETERS, UncertainParameter, UncertainParameters};

fn parameter(key: &str) -> &'static UncertainParameter {
    UNCERTAIN_PARAMETERS.iter().find(|parameter| parameter.key == key).unwrap()
}

/// A culture by the packet, as the records of its cells and its rate have it.
fn cultured() -> Design {
    let mut design = Design::default();
    design.milk.soured_by = SouredBy::Culture;
    design
}

fn raw() -> Design {
    let mut design = Design::default();
    design.milk.milk_treatment = MilkTreatment::Raw;
    design
}

#[test]
fn each_quantity_is_told_apart_and_rests_on_a_record_that_is_listed() {
    let listed: BTreeSet<&str> = constants().iter().map(|record| record.name).collect();
    let keys: BTreeSet<&str> = UNCERTAIN_PARAMETERS.iter().map(|parameter| parameter.key).collect();
    let words: BTreeSet<&str> = UNCERTAIN_PARAMETERS.iter().map(|parameter| parameter.words).collect();
    let records: BTreeSet<&str> = UNCERTAIN_PARAMETERS.iter().map(|parameter| parameter.record(&Design::default()).name).collect();
    assert_eq!(
        (keys.len(), words.len(), records.len()),
        (UNCERTAIN_PARAMETERS.len(), UNCERTAIN_PARAMETERS.len(), UNCERTAIN_PARAMETERS.len())
    );
    assert!(records.is_subset(&listed));
    assert!(UNCERTAIN_PARAMETERS.iter().all(|parameter| !parameter.stages.is_empty()));
}

#[test]
fn the_ends_of_a_draw_are_those_of_the_record_and_its_middle_is_the_value() {
    for (design, parameter) in [Design::default(), raw(), cultured()]
        .iter()
        .flat_map(|design| UNCERTAIN_PARAMETERS.iter().map(move |parameter| (design, parameter)))
    {
        let (least, most) = parameter.ends(design);
        // A lag may be none at all.
        assert!((0.0..1.0).contains(&least) && 1.0 < most, "{}: {least} {most}", parameter.key);
        let record = parameter.record(design);
        for (share, want) in [(0.0, record.range.0), (0.5, record.value), (1.0, record.range.1)] {
            let got = record.value * parameter.at_share(design, share);
            // The logarithm and back, of numbers near one.
            assert!((got - want).abs() <= 1e-14 * want, "{} at {share}: {got}", parameter.key);
        }
    }
}

#[test]
fn another_treatment_of_the_milk_rests_on_another_record() {
    assert_eq!(parameter("fat_kept").record(&Design::default()), FAT_KEPT_HOMOGENISED);
    assert_eq!(parameter("fat_kept").record(&raw()), FAT_KEPT);
}

#[test]
fn another_culture_rests_on_another_record() {
    let mut design = cultured();
    let name = |key: &str, design: &Design| parameter(key).record(design);
    assert_eq!((name("culture_cells", &design), name("culture_rate", &design)), (PACKET_CELLS, MESOPHILIC_RATE));
    (design.milk.culture_by, design.milk.culture_kind) = (CultureBy::Bulk, CultureKind::Thermophilic);
    assert_eq!((name("culture_cells", &design), name("culture_rate", &design)), (BULK_STARTER_CELLS, THERMOPHILIC_RATE));
    design.milk.culture_kind = CultureKind::Mixed;
    assert_eq!(name("culture_rate", &design), MIXED_RATE);
}

/// Returns the pH of the cheeses when they leave the moulds.
fn unmoulded_ph(design: &Design, set: &dyn Fn(&mut UncertainParameters)) -> f64 {
    let mut parameters = UncertainParameters::default();
    set(&mut parameters);
    let batch = batch_given(design, &Given { parameters, runs: Runs::MiddleOnly, ..Given::default() }).unwrap();
    batch.draining.done().unwrap().souring.last().unwrap().ph
}

/// What is uncertain about souring moves nothing where nothing sours, and the pH where something does, in the way that its words say.
#[test]
fn the_constants_of_souring_move_soured_designs_alone() {
    type Setting<'a> = (&'a str, &'a dyn Fn(&mut UncertainParameters));
    let settings: [Setting<'_>; 3] = [
        ("culture_cells", &|parameters| parameters.culture_cells = 0.5),
        ("culture_rate", &|parameters| parameters.culture_rate = 0.8),
        ("souring_buffer", &|parameters| parameters.souring_buffer = 1.2),
    ];
    let mut lactone = Design::default();
    lactone.milk.soured_by = SouredBy::Lactone;
    for (key, set) in settings {
        let usual = |design: &Design| unmoulded_ph(design, &|_| ());
        assert_eq!(unmoulded_ph(&Design::default(), set), usual(&Design::default()), "{key}");
        // Fewer cells, slower cells, more buffer: all leave it less sour.
        assert!(unmoulded_ph(&cultured(), set) > usual(&cultured()) + 0.01, "{key}");
        let moves_a_lactone = key == "souring_buffer";
        assert_eq!(unmoulded_ph(&lactone, set) > usual(&lactone) + 0.01, moves_a_lactone, "{key}");
    }
}

/// Twice the packets at half the cells in each are the same milk.
#[test]
fn cells_are_cells_whether_the_packet_or_the_maker_brings_them() {
    let mut twice = cultured();
    twice.milk.culture_packets *= 2.0;
    let half = unmoulded_ph(&twice, &|parameters| parameters.culture_cells = 0.5);
    assert!((half - unmoulded_ph(&cultured(), &|_| ())).abs() < 1e-9);
}

/// Of a triangular distribution an eighth lies below the middle between its least and its most likely value, where both sides are alike
/// (textbook; its distribution function is (x − a)²/((b − a)(c − a)) below the mode). The diffusivity's range is alike in its logarithm.
#[test]
fn a_range_that_is_alike_to_both_sides_is_triangular() {
    let design = Design::default();
    let water = parameter("moisture_diffusivity");
    assert_eq!(water.drawn(&design), Distribution::InLogarithm);
    assert!((water.at_share(&design, 0.125) - 0.5_f64.sqrt()).abs() < 1e-14);
    assert!((water.at_share(&design, 0.875) - 2.0_f64.sqrt()).abs() < 1e-14);
    let clotting = parameter("clotting");
    assert_eq!(clotting.drawn(&design), Distribution::Straight);
    assert!((clotting.at_share(&design, 0.125) - 0.85).abs() < 1e-14, "half way from 0.7 to 1");
}

proptest! {
    #[test]
    fn a_greater_share_gives_a_greater_factor_within_the_range(number in 0..UNCERTAIN_PARAMETERS.len(), one in 0.0..=1.0_f64, other in 0.0..=1.0_f64) {
        let (design, parameter) = (Design::default(), &UNCERTAIN_PARAMETERS[number]);
        let (least, most) = parameter.ends(&design);
        let (low, high) = (parameter.at_share(&design, one.min(other)), parameter.at_share(&design, one.max(other)));
        prop_assert!(least - 1e-12 <= low && low <= high && high <= most + 1e-12);
    }
}

#[test]
fn only_the_stages_that_look_at_a_quantity_differ_by_it() {
    let usual = Given::default();
    for parameter in UNCERTAIN_PARAMETERS {
        let other = Given { parameters: parameter.set(UncertainParameters::default(), 0.9), ..usual };
        for stage in Stage::ALL {
            assert_eq!(usual.same_for(stage, &other), !parameter.stages.contains(&stage), "{} {stage:?}", parameter.key);
        }
    }
    let middle = Given { runs: Runs::MiddleOnly, ..usual };
    assert!(!usual.same_for(Stage::Drying, &middle));
}

/// Returns the soaking hours until the centre has each of the two pH, and the share of salt that is left.
fn soaked(set: &dyn Fn(&mut UncertainParameters), hours: f64) -> ([Option<f64>; 2], f64) {
    let mut design = Design::default();
    design.pickling.pickled = true;
    design.pickling.pickling_h = hours;
    let mut parameters = UncertainParameters::default();
    set(&mut parameters);
    let batch = batch_given(&design, &Given { parameters, runs: Runs::MiddleOnly, ..Given::default() }).unwrap();
    let soaked = batch.pickling.done().unwrap();
    (soaked.targets.map(|target| target.centre_h), soaked.salt_left_share)
}

/// Diffusion knows time only as D t/L² (Crank 1975, The Mathematics of Diffusion, chapter 2): twice the diffusivity, half the hours. The
/// film at the face does not change with it: at a tenth of its transfer the hours are 3 % more, so at half of it 0.3 %; and the steps may
/// err by 2 % in the hours to a pH.
#[test]
fn acid_that_moves_twice_as_fast_comes_in_half_the_time() {
    let (judged, _) = soaked(&|_| (), 240.0);
    let (fast, _) = soaked(&|parameters| parameters.acid_obstruction = 2.0, 240.0);
    for (judged, fast) in judged.iter().zip(&fast) {
        let (judged, fast) = (judged.unwrap(), fast.unwrap());
        assert!((judged / fast - 2.0).abs() < 0.05, "{judged} h and {fast} h");
    }
}

/// The same of the salt on its way out: as much is left after half the hours. No film to speak of; steps err by a hundredth.
#[test]
fn salt_that_moves_twice_as_fast_is_as_far_out_in_half_the_time() {
    let (_, judged) = soaked(&|_| (), 24.0);
    let (_, fast) = soaked(&|parameters| parameters.salt_obstruction = 2.0, 12.0);
    assert!(judged > 0.1 && judged < 0.9, "{judged} would say little");
    assert!((judged - fast).abs() < 0.01, "{judged} and {fast}");
}

/// Holter's law (t = a + k/E, the form that the record was set in): the part of the time that is no constant goes with the product. The
/// milk cools a little more in the longer time, which slows it by less than a hundredth.
#[test]
fn milk_that_clots_slower_by_a_fifth_does_so_beside_the_constant_part() {
    let minutes = |clotting: f64| {
        let given = Given {
            parameters: UncertainParameters { clotting, ..UncertainParameters::default() },
            runs: Runs::MiddleOnly,
            ..Given::default()
        };
        batch_given(&Design::default(), &given).unwrap().vat.done().unwrap().clotting_min - CLOTTING_LEAST.value
    };
    assert!((minutes(1.2) / minutes(1.0) - 1.2).abs() < 0.012);
}

/// First-order drip, w = W (1 − e^(−∫dt/τ)): it counts as stopped after ln 50 time constants, wherever the curd cools meanwhile. In the cold, at
/// one temperature, that is ln 50 τ whatever τ, exactly. In the moulds the curd comes warm and cools by itself, so a drip that is slower by a
/// quarter stops later by more than a quarter, as it has less of the warm hours: the sum of dt/τ along its own temperature is the same.
#[test]
fn a_slower_drip_stops_later_by_the_same_number_of_time_constants() {
    let drained = |mould_time: f64| {
        let given = Given {
            parameters: UncertainParameters { mould_time, ..UncertainParameters::default() },
            runs: Runs::MiddleOnly,
            ..Given::default()
        };
        let batch = batch_given(&Design::default(), &given).unwrap();
        (batch.draining.done().unwrap().clone(), batch.keeping.done().unwrap().cold.drip_stops_at_4_h)
    };
    let ((usual, cold), (slow, slow_cold)) = (drained(1.0), drained(1.25));
    assert!((slow_cold / cold - 1.25).abs() < 1e-12);
    assert!(slow.drip_stops_h > 1.25 * usual.drip_stops_h);
    for (drained, mould_time) in [(&usual, 1.0), (&slow, 1.25)] {
        let constants = constants_until(&drained.souring, drained.drip_stops_h) / mould_time;
        // The stage takes steps of a quarter of an hour, in which 1/τ falls by a third at first: the midpoint rule errs by less than a hundredth.
        assert!((constants / 50.0_f64.ln() - 1.0).abs() < 1e-2, "{constants} time constants");
    }
}

/// Returns the drip's time constants along the temperature of unsoured curd until some hours, in steps of a few seconds; between two points what
/// it is warmer than the room falls as a power of e.
fn constants_until(points: &[SourPoint], end_h: f64) -> f64 {
    let room_c = Design::default().draining.draining_temperature_c;
    let mut sum = 0.0;
    for pair in points.windows(2) {
        let (from_k, to_k) = (pair[0].temperature_c - room_c, pair[1].temperature_c - room_c);
        let length_h = pair[1].at_h - pair[0].at_h;
        for step in 0..200 {
            let share = (f64::from(step) + 0.5) / 200.0;
            let above_k = if to_k > 0.0 { from_k * (to_k / from_k).powf(share) } else { 0.0 };
            if pair[0].at_h + share * length_h < end_h {
                sum += length_h / 200.0 / mould_time_h(room_c + above_k);
            }
        }
    }
    sum
}

/// A place that is 2 K warmer than chosen gives the batch of a design that chose 2 K more; the design itself stays as it was.
#[test]
fn a_warmer_place_is_a_batch_that_chose_it_warmer() {
    let mut design = Design::default();
    let warm = UncertainParameters { warmth_of_moulds: 295.15 / 293.15, ..UncertainParameters::default() };
    let met = batch_given(&design, &Given { parameters: warm, ..Given::default() }).unwrap();
    assert_eq!(met.design, design);
    design.draining.draining_temperature_c += 2.0;
    let chosen = batch_given(&design, &Given::default()).unwrap();
    let drip_stops_h = |batch: &vatsketch::batch::Batch| batch.draining.done().unwrap().drip_stops_h;
    // The factor is rounded to sixteen digits.
    assert!((drip_stops_h(&met) / drip_stops_h(&chosen) - 1.0).abs() < 1e-9);
}

/// ln(e^M + e^h0 − 1) − h0 of chapter 4 with no lag is M: newly come germs then grow like those that grow already.
#[test]
fn without_a_lag_newly_come_germs_grow_like_those_that_grow_already() {
    let design = Design::default();
    let none = UncertainParameters { lag_work: 0.0, ..UncertainParameters::default() };
    let germs = |parameters| batch_given(&design, &Given { parameters, ..Given::default() }).unwrap().germs.unwrap();
    for (without, usual) in germs(none).courses.iter().zip(&germs(UncertainParameters::default()).courses) {
        assert!((without.increase_with_lag_log10() - without.increase_log10()).abs() < 1e-9);
        assert!(usual.increase_with_lag_log10() <= without.increase_with_lag_log10());
    }
}
