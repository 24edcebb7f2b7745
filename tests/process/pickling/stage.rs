//! The vinegar stage of a batch.

use proptest::prelude::*;
use std::sync::LazyLock;
use vatsketch::batch::batch;
use vatsketch::design::{Design, JarLay, PhFrom, PicklingDesign, VinegarBy};
use vatsketch::law::jar::{Disc, Jar, Lay, packing};
use vatsketch::process::{DryingOutcome, PicklingError, PicklingOutcome, pickling};

/// The dried cheeses of the usual design, which most tests put into vinegar.
static DRIED: LazyLock<DryingOutcome> = LazyLock::new(|| batch(&Design::default()).unwrap().drying.done().unwrap().clone());

fn soured(design: &PicklingDesign) -> PicklingOutcome {
    pickling(design, &DRIED).unwrap()
}

#[test]
fn what_goes_into_vinegar_comes_out_in_the_cheese_or_in_the_spent_vinegar() {
    let design = PicklingDesign::default();
    let out = soured(&design);
    let [vinegar] = out.balance.added.as_slice() else { panic!("{:?}", out.balance) };
    // 6 g in 100 mL, at the density of the published table (1.0064 g/mL at 5.96 %).
    assert!((vinegar.matter.acid_kg / (6e-5 * out.vinegar_ml) - 1.0).abs() < 1e-12);
    assert!((1000.0 * vinegar.matter.total_kg() / out.vinegar_ml - 1.0064).abs() < 3e-4);
    assert!((out.vinegar_ml_per_g - design.vinegar_ml_per_g).abs() < 1e-12);
    assert!((out.cheese.acid_kg / DRIED.cheese.total_kg() - 0.01 * out.end.acid_percent).abs() < 1e-12);
    assert!((out.cheese.salt_kg / DRIED.cheese.salt_kg - out.salt_left_share).abs() < 1e-12);
    assert!(out.cheese.water_kg > DRIED.cheese.water_kg && out.water_activity > DRIED.end.water_activity);
    let moisture = out.cheese.moisture_percent();
    assert!(out.likely_moisture_percent.0 < moisture && moisture < out.likely_moisture_percent.1);
    assert!(out.diameter_mm > DRIED.end.diameter_mm && out.thickness_mm > DRIED.end.thickness_mm);
}

#[test]
fn the_slow_and_strong_cheese_comes_last_and_the_fast_and_weak_one_first() {
    let out = soured(&PicklingDesign::default());
    for ((middle, slow), fast) in out.targets.iter().zip(&out.targets_if_slow).zip(&out.targets_if_fast) {
        for (fast, middle, slow) in
            [(fast.centre_h, middle.centre_h, slow.centre_h), (fast.slurry_h, middle.slurry_h, slow.slurry_h)]
        {
            assert!(fast.unwrap() < middle.unwrap() && middle.unwrap() < slow.unwrap());
        }
    }
    assert!(out.likely_equilibrium_ph.0 < out.equilibrium_ph && out.equilibrium_ph < out.likely_equilibrium_ph.1);
    for curve in [&out.curve, &out.if_slow, &out.if_fast] {
        assert_eq!((curve[0].at_h, curve[curve.len() - 1].at_h), (0.0, PicklingDesign::default().pickling_h));
        assert!(curve.windows(2).all(|pair| pair[0].at_h < pair[1].at_h));
    }
}

/// `tests/reference/equilibrium_ph.csv`, computed apart from this program: what only just covers (here in a jar that it fills badly, about 1 mL/g) may never sour a strong buffer.
#[test]
fn a_cheese_only_just_covered_never_sours_if_its_buffer_is_strong() {
    let design = PicklingDesign { vinegar_by: VinegarBy::Cover, acid_g_per_100ml: 3.0, ..PicklingDesign::default() };
    let out = soured(&design);
    assert!(out.vinegar_ml_per_g < 2.0 && (out.vinegar_ml_per_g - out.cover_ml_per_g).abs() < 1e-12);
    let jar = Jar { width_mm: design.jar_width_mm, height_mm: design.jar_height_mm };
    let disc = Disc { diameter_mm: DRIED.end.diameter_mm, thickness_mm: DRIED.end.thickness_mm };
    let packed = packing(&jar, &disc, Lay::Flat).unwrap();
    assert_eq!(out.cheeses_per_jar, packed.count);
    assert!((out.vinegar_ml - packed.covering_ml(out.cheese_count, packed.count)).abs() < 1e-6);
    assert!(out.targets_if_slow.iter().all(|target| target.centre_h.is_none() && target.slurry_h.is_none()));
}

#[test]
fn cheeses_that_stay_out_of_the_vinegar_go_on_as_they_came() {
    let out = soured(&PicklingDesign { pickled: false, ..PicklingDesign::default() });
    assert!(!out.pickled && out.curve.is_empty() && out.field.is_none());
    assert_eq!((out.cheese, out.balance.goes_on), (DRIED.cheese, DRIED.cheese));
    assert_eq!((out.end.centre_ph, out.equilibrium_ph, out.vinegar_ml), (6.5, 6.5, 0.0));
    assert!(out.jars > 0);
    // A jar that none goes into is no hindrance then.
    let tight = PicklingDesign { pickled: false, jar_width_mm: 30.0, ..PicklingDesign::default() };
    assert_eq!(soured(&tight).jars, 0);
}

#[test]
fn a_jar_too_small_is_refused_with_the_sizes() {
    let refused = |design: &PicklingDesign| pickling(design, &DRIED).unwrap_err();
    let narrow = PicklingDesign { jar_width_mm: 40.0, ..PicklingDesign::default() };
    let said = refused(&narrow).to_string();
    assert!(said.contains("40 mm inner width") && said.contains(&format!("{:.1} ×", DRIED.end.diameter_mm)), "{said}");
    let low = PicklingDesign { jar_height_mm: 40.0, jar_width_mm: 70.0, vinegar_ml_per_g: 6.0, ..PicklingDesign::default() };
    let error = refused(&low);
    assert!(matches!(error, PicklingError::NoRoom { .. }), "{error}");
    assert!(error.to_string().contains("a jar of 154 mL does not hold"), "{error}");
}

#[test]
fn the_picture_has_the_start_the_end_and_at_most_forty_moments() {
    let out = soured(&PicklingDesign::default());
    let field = out.field.unwrap();
    assert!((20..=40).contains(&field.frames.len()), "{}", field.frames.len());
    let (first, last) = (&field.frames[0], &field.frames[field.frames.len() - 1]);
    assert_eq!((first.at_h, last.at_h), (0.0, PicklingDesign::default().pickling_h));
    assert_eq!(first.values.len(), field.radii_mm.len() * field.heights_mm.len());
    assert!(first.values.iter().all(|ph| (ph - 6.5).abs() < 1e-5) && (first.shrunk - 1.0).abs() < 1e-9);
    assert!((f64::from(last.values[0]) - out.end.centre_ph).abs() < 1e-5);
    assert!((last.shrunk * DRIED.end.diameter_mm / out.diameter_mm - 1.0).abs() < 1e-9);
    // Sour from outside.
    assert!(last.values[0] > last.values[field.heights_mm.len() - 1]);
}

#[test]
fn no_time_in_vinegar_changes_nothing_but_says_how_long_it_would_take() {
    let out = soured(&PicklingDesign { pickling_h: 0.0, ..PicklingDesign::default() });
    assert!((out.cheese.total_kg() / DRIED.cheese.total_kg() - 1.0).abs() < 1e-6);
    assert!((out.end.centre_ph - 6.5).abs() < 1e-6 && out.targets[0].centre_h.is_some());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn balances_close_and_more_vinegar_never_leaves_less_acid(
        acid in 0.5..10.0_f64, ml_per_g in 0.2..5.0_f64, temperature in 0.0..40.0_f64, hours in 0.0..600.0_f64,
        ph in 4.5..7.0_f64, on_edge in any::<bool>(),
    ) {
        let design = PicklingDesign {
            acid_g_per_100ml: acid, vinegar_ml_per_g: ml_per_g, pickling_temperature_c: temperature, pickling_h: hours, cheese_ph_from: PhFrom::Measured, cheese_ph: ph,
            jar_lay: if on_edge { JarLay::OnEdge } else { JarLay::Flat }, jar_width_mm: 150.0, jar_height_mm: 200.0,
            ..PicklingDesign::default()
        };
        let out = soured(&design);
        let came = out.balance.came + out.balance.added[0].matter;
        for (residual, part) in out.balance.residual().parts_kg().into_iter().zip(came.parts_kg()) {
            prop_assert!(residual.abs() <= 1e-9 * part, "{residual} of {part}");
        }
        prop_assert!(out.balance.left[0].matter.parts_kg().iter().all(|part| *part >= 0.0));
        prop_assert!(out.jars * out.cheeses_per_jar >= out.cheese_count && out.vinegar_each_ml > 0.0);
        let least = out.equilibrium_ph.min(ph);
        for point in &out.curve {
            // The faces may come below the equilibrium pH while the vinegar is still strong, the whole cheese may not.
            for inside in [point.slurry_ph, point.centre_ph] {
                prop_assert!(least - 2e-3 <= inside && inside <= ph.max(out.equilibrium_ph) + 2e-3, "{point:?} of {}", out.equilibrium_ph);
            }
        }
        let more = soured(&PicklingDesign { vinegar_ml_per_g: 1.3 * ml_per_g, ..design });
        prop_assert!(more.equilibrium_ph < out.equilibrium_ph && more.end.slurry_ph <= out.end.slurry_ph + 1e-3);
        prop_assert!(more.end.centre_ph <= out.end.centre_ph + 2e-3);
    }
}
