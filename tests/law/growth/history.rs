//! The dose along a history, and the hours above limits.

use super::{plain, steady};
use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::growth::{
    AIRLESS_LIMITS, COLD_AIRLESS_LIMITS, Conditions, Germ, GrowthLaw, Moment, dose_along, hours_within, increase_log10,
};

fn moment(at_h: f64, conditions: Conditions) -> Moment {
    Moment { at_h, conditions }
}

/// ∫ T dt and ∫ T² dt of straight pieces, worked out by hand; Simpson's rule is exact up to cubes.
#[test]
fn the_dose_of_a_simple_law_is_its_integral() {
    let history = [moment(0.0, plain(0.0, 6.0, 0.98)), moment(3.0, plain(30.0, 6.0, 0.98)), moment(5.0, plain(30.0, 6.0, 0.98))];
    near(dose_along(|at| at.temperature_c, &history), 45.0 + 60.0, 1e-9);
    near(dose_along(|at| at.temperature_c.powi(2), &history), 900.0 + 1800.0, 1e-9);
    near(dose_along(|at| at.temperature_c, &history[..1]), 0.0, 0.0);
    near(dose_along(|at| at.temperature_c, &[]), 0.0, 0.0);
}

#[test]
fn two_rows_at_one_time_make_a_step() {
    let history = [
        moment(0.0, plain(4.0, 6.5, 0.985)),
        moment(10.0, plain(4.0, 6.5, 0.985)),
        moment(10.0, plain(21.0, 6.5, 0.985)),
        moment(20.0, plain(21.0, 6.5, 0.985)),
    ];
    let law = GrowthLaw::of(Germ::Listeria);
    // Rows G002 and G008 of the table: 0.0208731 and 0.300506 an hour.
    near(dose_along(|at| law.rate_per_h(at), &history), 10.0 * (0.020_873_1 + 0.300_506), 1e-4);
}

/// Section 0.1 of the chapter, free of lag: 1.5 h at 34 °C, then 36 h at 21 °C.
#[test]
fn the_unsoured_batch_is_a_growth_experiment() {
    let warm = plain(34.0, 6.6, 0.99);
    let cool = plain(21.0, 6.5, 0.988);
    let history = [moment(0.0, warm), moment(1.5, warm), moment(1.5, cool), moment(37.5, cool)];
    let table =
        [(Germ::Listeria, 5.3), (Germ::Staphylococcus, 7.6), (Germ::Salmonella, 6.2), (Germ::Coli, 6.5), (Germ::Cereus, 8.6)];
    for (germ, wanted) in table {
        let law = GrowthLaw::of(germ);
        let grown = increase_log10(dose_along(|at| law.rate_per_h(at), &history), 0.0);
        // The chapter does not give the water activity and the way of the temperature.
        assert!((grown - wanted).abs() < 0.25, "{germ:?}: {grown}, the chapter has {wanted}");
    }
}

/// The published limits as the chapter has them; each piece is straight, so the hours are worked out by hand.
#[test]
fn hours_count_where_everything_lies_above_its_limit() {
    assert_eq!(AIRLESS_LIMITS.coefficients, [10.0, 4.6, 0.935]);
    assert_eq!(COLD_AIRLESS_LIMITS.coefficients, [3.0, 5.0, 0.97]);
    let limits = &COLD_AIRLESS_LIMITS.coefficients;
    near(hours_within(limits, &steady(100.0, plain(4.0, 6.0, 0.98))), 100.0, 1e-9);
    for at in [plain(3.0, 6.0, 0.98), plain(4.0, 5.0, 0.98), plain(4.0, 6.0, 0.97)] {
        near(hours_within(limits, &steady(100.0, at)), 0.0, 0.0);
    }
    // Souring from 6 to 4 passes 5 after half of the time; drying from 0.99 to 0.95 passes 0.97 then as well, later not at all.
    let souring = [moment(0.0, plain(4.0, 6.0, 0.99)), moment(10.0, plain(4.0, 4.0, 0.95)), moment(20.0, plain(4.0, 6.0, 0.95))];
    near(hours_within(limits, &souring), 5.0, 1e-9);
    assert!(hours_within(limits, &steady(7.0, plain(f64::NAN, f64::NAN, f64::NAN))) > 6.9);
}

proptest! {
    #[test]
    fn a_dose_only_grows_and_does_not_mind_where_a_piece_is_cut(
        begin in 0.0..45.0_f64, end in 0.0..45.0_f64, from_ph in 4.0..7.0_f64, to_ph in 4.0..7.0_f64, cut in 0.1..0.9_f64,
    ) {
        let (from, to) = (plain(begin, from_ph, 0.985), plain(end, to_ph, 0.97));
        for germ in Germ::ALL {
            let law = GrowthLaw::of(germ);
            let dose = |history: &[Moment]| dose_along(|at| law.rate_per_h(at), history);
            let middle = moment(10.0 * cut, from.towards(&to, cut));
            let whole = dose(&[moment(0.0, from), moment(10.0, to)]);
            let part = dose(&[moment(0.0, from), middle]);
            let rest = dose(&[middle, moment(10.0, to)]);
            prop_assert!(part >= 0.0 && rest >= 0.0 && part <= whole + 1e-3);
            prop_assert!((part + rest - whole).abs() < 1e-3 * (1.0 + whole), "{:?}: {} {} {}", germ, part, rest, whole);
        }
    }

    #[test]
    fn hours_meet_a_count_by_small_steps(
        ends in prop::array::uniform6(0.0..1.0_f64), hours in 0.5..50.0_f64,
    ) {
        let [a, b, c, d, e, f] = ends;
        let (from, to) = (plain(40.0 * a, 4.0 + 2.0 * b, 0.93 + 0.07 * c), plain(40.0 * d, 4.0 + 2.0 * e, 0.93 + 0.07 * f));
        let limits = COLD_AIRLESS_LIMITS.coefficients;
        let above = |at: &Conditions| at.temperature_c > limits[0] && at.ph > limits[1] && at.water_activity > limits[2];
        let counted = (0..2000).filter(|step| above(&from.towards(&to, (f64::from(*step) + 0.5) / 2000.0))).count() as f64 / 2000.0;
        let exact = hours_within(&limits, &[moment(0.0, from), moment(hours, to)]) / hours;
        prop_assert!((exact - counted).abs() < 0.002, "{} {}", exact, counted);
    }
}
