//! The rings of a disc against the geometry of a cylinder and of a hollow one.

use proptest::prelude::*;
use std::f64::consts::PI;
use vatsketch::numeric::{DiscGrid, Half};

/// Through a hollow cylinder the steady conductance is 2π/ln(r₂/r₁) per metre (any textbook of heat transfer); rings in series come to it with the
/// square of their width.
#[test]
fn rings_in_series_conduct_as_a_hollow_cylinder() {
    let miss = |intervals: usize| {
        let grid = DiscGrid::new(0.04, 0.02, intervals, 4, 1.0, Half::Whole);
        let half_way = intervals / 2;
        let resistance: f64 = grid.radial[half_way..].iter().map(|conductance| 1.0 / conductance).sum();
        let exact = (grid.radii_m[intervals] / grid.radii_m[half_way]).ln() / (2.0 * PI);
        (resistance / exact - 1.0).abs()
    };
    let (coarse, fine) = (miss(20), miss(40));
    assert!(fine < 1e-3 && ((coarse / fine).log2() - 2.0).abs() < 0.1, "{coarse} to {fine}");
}

#[test]
fn the_upper_half_is_half_and_its_middle_is_its_first_layer() {
    let whole = DiscGrid::new(0.03, 0.018, 8, 10, 5.0, Half::Whole);
    let upper = DiscGrid::new(0.03, 0.018, 8, 10, 5.0, Half::Upper);
    assert!((whole.volume_m3() / upper.volume_m3() - 2.0).abs() < 1e-12);
    assert!((whole.heights_m[whole.middle_layer()] - 0.009).abs() < 1e-12);
    assert_eq!(upper.heights_m[upper.middle_layer()], 0.0);
}

#[test]
fn a_disc_of_no_size_has_no_volume_and_not_a_number_stays_so() {
    assert_eq!(DiscGrid::new(0.0, 0.02, 4, 4, 2.0, Half::Whole).volume_m3(), 0.0);
    assert!(DiscGrid::new(f64::NAN, 0.02, 4, 4, 2.0, Half::Whole).volume_m3().is_nan());
}

/// The mean of r² over a disc is R²/2, that of the height is half of it (textbook); the rings come to them with the square of their width.
#[test]
fn the_mean_over_the_volume_is_that_of_the_integral() {
    let (radius_m, height_m) = (0.03, 0.018);
    let grid = DiscGrid::new(radius_m, height_m, 60, 60, 3.0, Half::Whole);
    let over = |of: fn(f64, f64) -> f64| -> Vec<f64> {
        grid.radii_m.iter().flat_map(|r| grid.heights_m.iter().map(move |z| of(*r, *z))).collect()
    };
    assert!((grid.mean(&over(|r, _| r * r)) / (0.5 * radius_m * radius_m) - 1.0).abs() < 1e-3);
    assert!((grid.mean(&over(|_, z| z)) / (0.5 * height_m) - 1.0).abs() < 1e-9);
}

proptest! {
    #[test]
    fn the_rings_and_layers_add_up_to_the_disc(
        radius in 0.005..0.2_f64, height in 0.002..0.1_f64, rings in 2_usize..40, layers in 2_usize..40, ratio in 1.0..30.0_f64,
    ) {
        let grid = DiscGrid::new(radius, height, rings, layers, ratio, Half::Whole);
        prop_assert!((grid.volume_m3() / (PI * radius * radius * height) - 1.0).abs() < 1e-11);
        prop_assert!((grid.rim_m - 2.0 * PI * radius).abs() < 1e-15);
        prop_assert!(grid.ring_area_m2.iter().chain(&grid.layer_m).chain(&grid.radial).chain(&grid.axial).all(|part| *part > 0.0));
        prop_assert_eq!((grid.ring_area_m2.len(), grid.radial.len()), (rings + 1, rings));
        prop_assert_eq!((grid.layer_m.len(), grid.axial.len()), (layers + 1, layers));
        let apart_m: f64 = grid.axial.iter().map(|conductance| 1.0 / conductance).sum();
        prop_assert!((apart_m - height).abs() < 1e-12);
    }
}
