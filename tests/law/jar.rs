//! Discs in a jar against an independent computation, closed forms and counting by hand.

use super::rows;
use proptest::prelude::*;
use serde::Deserialize;
use std::f64::consts::PI;
use vatsketch::law::jar::{Disc, Jar, JarError, LAYER_RATIOS, Lay, packing};

#[derive(Deserialize)]
struct Row {
    #[serde(rename = "jar_ID_mm")]
    width_mm: f64,
    fill_height_mm: f64,
    #[serde(rename = "volume_mL")]
    volume_ml: f64,
    disc_d: f64,
    disc_t: f64,
    n_flat: u32,
    phi_flat: f64,
    #[serde(rename = "liquid_per_disc_flat_mL")]
    liquid_flat_ml: Option<f64>,
    n_edge: u32,
    phi_edge: f64,
    #[serde(rename = "liquid_per_disc_edge_mL")]
    liquid_edge_ml: Option<f64>,
}

/// The table is rounded to 0.1 mL and 0.001 of the jar; numbers of discs must be its own.
#[test]
fn every_row_of_the_independent_computation_is_met() {
    let table: Vec<Row> = rows("geometry.csv");
    assert_eq!(table.len(), 25);
    for row in table {
        let jar = Jar { width_mm: row.width_mm, height_mm: row.fill_height_mm };
        let disc = Disc { diameter_mm: row.disc_d, thickness_mm: row.disc_t };
        assert!((jar.volume_ml() - row.volume_ml).abs() < 0.051);
        let ways = [
            (Lay::Flat, row.n_flat, row.phi_flat, row.liquid_flat_ml),
            (Lay::OnEdge, row.n_edge, row.phi_edge, row.liquid_edge_ml),
        ];
        for (lay, count, share, liquid_ml) in ways {
            let which = format!("{lay:?}: {disc:?} in {jar:?}");
            let Ok(ours) = packing(&jar, &disc, lay) else {
                assert_eq!((count, liquid_ml), (0, None), "{which}");
                continue;
            };
            assert_eq!(ours.count, count, "{which}");
            assert!((ours.filled_share - share).abs() < 5.1e-4, "{which}: {}", ours.filled_share);
            assert!((ours.liquid_each_ml - liquid_ml.unwrap()).abs() < 0.051, "{which}: {}", ours.liquid_each_ml);
        }
    }
}

/// Closed forms of the packings that have one (geometry, calculated here); the record has four decimals.
#[test]
fn the_ratios_are_those_of_the_closed_forms() {
    let root = f64::sqrt;
    let closed = [
        (2, 2.0),
        (3, 1.0 + 2.0 / root(3.0)),
        (4, 1.0 + root(2.0)),
        (5, 1.0 + 1.0 / (PI / 5.0).sin()),
        (6, 3.0),
        (7, 3.0),
        (8, 1.0 + 1.0 / (PI / 7.0).sin()),
        (9, 1.0 + 1.0 / (PI / 8.0).sin()),
        (11, 1.0 + 1.0 / (PI / 9.0).sin()),
        (13, 2.0 + root(5.0)),
        (18, 1.0 + root(2.0) + root(6.0)),
        (19, 1.0 + root(2.0) + root(6.0)),
    ];
    for (discs, ratio) in closed {
        assert!((LAYER_RATIOS.coefficients[discs - 1] - ratio).abs() < 5.1e-5, "{discs} discs: {ratio}");
    }
    assert!(LAYER_RATIOS.coefficients.is_sorted());
}

/// Worked by hand for 12 discs of 50 × 15 mm in a jar of 80 mm: one in a layer, six layers in 100 mm, 5.0265 mL a millimetre and 29.452 mL a disc.
#[test]
fn the_liquid_that_just_covers_is_worked_by_hand() {
    let flat =
        packing(&Jar { width_mm: 80.0, height_mm: 100.0 }, &Disc { diameter_mm: 50.0, thickness_mm: 15.0 }, Lay::Flat).unwrap();
    assert_eq!((flat.in_layer, flat.layers, flat.jars(12, 6), flat.jars(13, 6)), (1, 6, 2, 3));
    for (discs, ml) in [(1, 75.398 - 29.452), (6, 452.389 - 176.715), (9, 452.389 - 176.715)] {
        assert!((flat.submerging_ml(discs) - ml).abs() < 0.002, "{discs}: {}", flat.submerging_ml(discs));
    }
    assert!((flat.covering_ml(12, 6) - 2.0 * (452.389 - 176.715)).abs() < 0.004);
    // Two in a layer on edge, standing 50 mm high: the third begins a second layer.
    let edge =
        packing(&Jar { width_mm: 60.0, height_mm: 100.0 }, &Disc { diameter_mm: 50.0, thickness_mm: 15.0 }, Lay::OnEdge).unwrap();
    assert_eq!((edge.in_layer, edge.layers), (2, 2));
    let layer_ml = 0.25 * PI * 60.0 * 60.0 * 50.0 / 1000.0;
    assert!((edge.submerging_ml(2) - (layer_ml - 2.0 * 29.4524)).abs() < 0.001);
    assert!((edge.submerging_ml(3) - (2.0 * layer_ml - 3.0 * 29.4524)).abs() < 0.001);
}

#[test]
fn what_does_not_go_in_is_refused_with_its_sizes() {
    let disc = Disc { diameter_mm: 67.0, thickness_mm: 30.0 };
    let small = packing(&Jar { width_mm: 60.0, height_mm: 75.0 }, &disc, Lay::Flat).unwrap_err().to_string();
    for size in ["67.0", "30.0", "60", "75"] {
        assert!(small.contains(size), "{small}");
    }
    // √(67² + 30²) = 73.41: on edge 73 mm are too little and 74 mm take one.
    let edge = |width_mm| packing(&Jar { width_mm, height_mm: 67.0 }, &disc, Lay::OnEdge);
    assert!(matches!(edge(73.0), Err(JarError::TooLarge { least_width_mm: 74.0, least_height_mm: 67.0, .. })));
    assert_eq!(edge(74.0).unwrap().count, 1);
    for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let of = |jar: Jar, disc: Disc| matches!(packing(&jar, &disc, Lay::Flat), Err(JarError::NoSize { .. }));
        let jar = Jar { width_mm: 80.0, height_mm: 100.0 };
        assert!(of(Jar { width_mm: bad, ..jar }, disc) && of(Jar { height_mm: bad, ..jar }, disc));
        assert!(of(jar, Disc { diameter_mm: bad, ..disc }) && of(jar, Disc { thickness_mm: bad, ..disc }));
    }
}

/// A jar exactly as high as its discs takes them all, whatever the rounding, and rings of a honeycomb go on beyond the table.
#[test]
fn a_full_jar_is_full_and_many_small_discs_go_in() {
    for layers in 1..40_u32 {
        let jar = Jar { width_mm: 30.0, height_mm: 0.1 * f64::from(layers) };
        let packed = packing(&jar, &Disc { diameter_mm: 30.0, thickness_mm: 0.1 }, Lay::Flat).unwrap();
        assert_eq!(packed.count, layers);
        assert!(packed.liquid_ml.abs() < 1e-6 && (packed.filled_share - 1.0).abs() < 1e-9);
    }
    for (ratio, discs) in [(1.0, 1), (1.99, 1), (5.2, 20), (7.0, 37), (9.0, 61)] {
        let packed =
            packing(&Jar { width_mm: 10.0 * ratio, height_mm: 10.0 }, &Disc { diameter_mm: 10.0, thickness_mm: 10.0 }, Lay::Flat);
        assert_eq!(packed.unwrap().count, discs, "{ratio}");
    }
}

proptest! {
    #[test]
    fn discs_and_liquid_fill_the_jar_and_a_wider_jar_takes_no_fewer(
        width_mm in 40.0..200.0_f64, height_mm in 40.0..250.0_f64, diameter_mm in 15.0..90.0_f64, thickness_mm in 5.0..40.0_f64,
        edge: bool, more in 0.0..50.0_f64, each_ml in 0.0..200.0_f64, batch in 1..60_u32,
    ) {
        let lay = if edge { Lay::OnEdge } else { Lay::Flat };
        let (jar, disc) = (Jar { width_mm, height_mm }, Disc { diameter_mm, thickness_mm });
        if let Ok(packed) = packing(&jar, &disc, lay) {
            let sum_ml = packed.liquid_ml + f64::from(packed.count) * disc.volume_ml();
            prop_assert!((sum_ml / jar.volume_ml() - 1.0).abs() < 1e-12);
            prop_assert!(packed.filled_share <= 1.0 + 1e-9);
            let wider = packing(&Jar { width_mm: width_mm + more, height_mm: height_mm + more }, &disc, lay).unwrap();
            prop_assert!(wider.count >= packed.count);
            let with = packed.count_with(each_ml);
            prop_assert!(f64::from(with) * (disc.volume_ml() + each_ml) <= jar.volume_ml() * (1.0 + 1e-6));
            let per_jar = with.max(1);
            prop_assert!(packed.jars(batch, per_jar) * per_jar >= batch);
            let covering = packed.covering_ml(batch, per_jar);
            prop_assert!(covering > -1e-9 && covering <= f64::from(packed.jars(batch, per_jar)) * jar.volume_ml());
        }
    }
}
