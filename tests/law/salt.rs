//! How long salt takes to even out.

use proptest::prelude::*;
use vatsketch::law::salt::{SALT_DIFFUSIVITY, even_days, salt_diffusivity_m2_s, saturated_kg_kg};

/// 1 cm²/d, m²/s.
const CM2_PER_DAY: f64 = 1e-4 / 86_400.0;

/// By hand, ln 20 = 2.99573: 2.99573·1.25²/(π²·0.2) = 2.371 d and 2.99573·2²/(π²·0.2) = 6.071 d; rounded to 0.01 d.
#[test]
fn two_thicknesses_worked_by_hand_are_met() {
    for (depth_mm, days) in [(12.5, 2.37), (20.0, 6.07)] {
        assert!((even_days(depth_mm, 0.2 * CM2_PER_DAY) - days).abs() < 0.005, "{depth_mm} mm");
    }
}

/// Floury et al. 2010, table II, as quoted: dry-salted cheese of the brined kind 2.3e-10 m²/s, other cheeses 1 to 5e-10.
#[test]
fn the_diffusivity_is_the_published_one_in_its_range() {
    assert_eq!(SALT_DIFFUSIVITY.value, 2.3e-10);
    assert_eq!(SALT_DIFFUSIVITY.range, (1.0e-10, 5.0e-10));
}

/// Floury et al. 2010, table II, as quoted: white cheese 2.1, 3 and 4e-10 m²/s at 4, 12.5 and 20 °C. Stokes and Einstein's law from the
/// middle one meets the others within 15 %: two digits, and the structure of the cheese changes too.
#[test]
fn warmth_speeds_salt_as_it_does_in_white_cheese() {
    for (temperature_c, published) in [(4.0, 2.1), (20.0, 4.0)] {
        let ours = 3.0 * salt_diffusivity_m2_s(temperature_c) / salt_diffusivity_m2_s(12.5);
        assert!((ours / published - 1.0).abs() < 0.15, "{temperature_c} °C: {ours}");
    }
    assert!(salt_diffusivity_m2_s(f64::NAN).is_nan());
}

/// Water of 25 °C dissolves 35.9 to 36.0 g of salt in 100 g (handbooks, from memory).
#[test]
fn water_dissolves_thirty_six_parts_in_a_hundred() {
    assert!((35.85..36.05).contains(&(100.0 * saturated_kg_kg())), "{}", saturated_kg_kg());
}

/// The series of a slab with closed faces, all salt on them at first (Crank 1975, chapter 2, from memory): at the middle
/// C/C∞ = 1 + 2 Σ (−1)ⁿ e^(−n² π² D t/L²). When the slowest part is at a twentieth the middle has 90 % of its share, within 0.001.
#[test]
fn the_middle_then_has_nine_tenths_of_its_share() {
    let (depth_mm, diffusivity) = (10.0, 2.0e-10);
    let seconds = 86_400.0 * even_days(depth_mm, diffusivity);
    let decay = |n: f64| (-(n * std::f64::consts::PI / 0.01).powi(2) * diffusivity * seconds).exp();
    let middle = 1.0 + 2.0 * (1..20).map(|n| (-1.0_f64).powi(n) * decay(f64::from(n))).sum::<f64>();
    assert!((middle - 0.9).abs() < 0.001, "{middle}");
}

#[test]
fn no_depth_is_even_at_once_and_no_number_stays_none() {
    assert_eq!(even_days(0.0, 2e-10), 0.0);
    assert!(even_days(f64::NAN, 2e-10).is_nan() && even_days(10.0, f64::NAN).is_nan());
}

proptest! {
    #[test]
    fn twice_the_depth_takes_four_times_as_long(depth_mm in 1.0..60.0_f64, diffusivity in 1e-10..5e-10_f64) {
        let (one, two) = (even_days(depth_mm, diffusivity), even_days(2.0 * depth_mm, diffusivity));
        prop_assert!((two / one - 4.0).abs() < 1e-12);
        prop_assert!((even_days(depth_mm, 2.0 * diffusivity) / one - 0.5).abs() < 1e-12);
    }
}
