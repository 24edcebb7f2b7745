//! How many cheeses stand on a tray.

use proptest::prelude::*;
use vatsketch::design::DryingDesign;
use vatsketch::process::{tray_fit, tray_holds, tray_places};

/// Counted by an independent search over straight and staggered rows with gaps of 10 mm, tray of 300 × 300 mm; exact, they are counts.
#[test]
fn a_tray_of_three_hundred_millimetres_holds_the_counted_numbers() {
    for (diameter_mm, holds) in [(40.0, 39), (50.0, 25), (60.0, 16), (70.0, 12), (80.0, 9)] {
        assert_eq!(tray_holds(300.0, 300.0, diameter_mm), holds, "{diameter_mm} mm");
    }
}

#[test]
fn a_tray_smaller_than_a_cheese_holds_none_and_one_of_its_size_holds_one() {
    assert_eq!(tray_holds(59.9, 300.0, 60.0), 0);
    assert_eq!(tray_holds(60.0, 60.0, 60.0), 1);
    assert_eq!(tray_holds(130.0, 60.0, 60.0), 2);
    assert_eq!(tray_holds(300.0, 300.0, f64::NAN), 0);
    assert_eq!(tray_holds(300.0, 300.0, 0.0), 0);
}

#[test]
fn trays_fit_in_number_in_width_and_in_height() {
    let design = DryingDesign {
        tray_count: 2,
        tray_width_mm: 300.0,
        tray_depth_mm: 300.0,
        tray_clearance_mm: 45.0,
        ..DryingDesign::default()
    };
    let fit = tray_fit(&design, 32, 60.0, 30.0);
    assert!(fit.fits && fit.holds == 16 && fit.wanted == 2, "{fit:?}");
    assert!(!tray_fit(&design, 33, 60.0, 30.0).fits, "one cheese too many");
    assert!(!tray_fit(&design, 32, 60.0, 30.1).fits, "15 mm of air are wanted above");
    let none = tray_fit(&design, 3, 310.0, 20.0);
    assert!(!none.fits && none.holds == 0 && none.wanted == 0, "{none:?}");
}

proptest! {
    #[test]
    fn no_tray_holds_more_than_its_area_allows_and_a_turned_tray_holds_as_many(
        width_mm in 50.0..1500.0_f64, depth_mm in 50.0..1500.0_f64, diameter_mm in 20.0..250.0_f64,
    ) {
        let holds = tray_holds(width_mm, depth_mm, diameter_mm);
        prop_assert_eq!(holds, tray_holds(depth_mm, width_mm, diameter_mm));
        prop_assert_eq!(holds as usize, tray_places(width_mm, depth_mm, diameter_mm).len());
        // Each disc with half a gap around it lies in the tray with half a gap around that; discs cover at most π/√12 of a plane.
        let pitch_mm = diameter_mm + 10.0;
        let cell_mm2 = pitch_mm * pitch_mm * 0.75_f64.sqrt();
        // A strip of half a pitch along the edge belongs to cells that reach over it.
        let area_mm2 = (width_mm + pitch_mm) * (depth_mm + pitch_mm);
        prop_assert!(f64::from(holds) <= area_mm2 / cell_mm2, "{holds}");
    }
}
