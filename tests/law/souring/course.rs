//! A culture at work: balances, and what more of anything does.

use super::{curd, milk};
use crate::law::tables::near;
use proptest::prelude::*;
use vatsketch::law::souring::{
    Acid, AcidAmounts, Beyond, Culture, CultureLaw, CultureState, SOURING_STEP_H, SouringPoint, gluconic_mol_kg, hours_to,
    lactone_split_share, lactose_percent, sour, sour_beside_lactone, souring_at,
};

const LACTOSE: f64 = 0.046;

fn course(culture: Culture, cells: f64, temperature_c: f64, hours: f64) -> Vec<SouringPoint> {
    let start = CultureState::new(cells, LACTOSE, AcidAmounts::default());
    sour(&CultureLaw::of(culture), &start, &milk(), &|_| temperature_c, hours, SOURING_STEP_H)
}

/// One lactose gives four lactic acids, or two where the galactose is left; also where all of it is used up.
#[test]
fn lactose_and_lactic_acid_balance() {
    for (per, lactose) in [(4.0, LACTOSE), (2.0, LACTOSE), (4.0, 0.001), (2.0, 0.0)] {
        let law = CultureLaw { lactic_per_lactose: per, ..CultureLaw::of(Culture::Thermophilic) };
        let start = CultureState::new(1e7, lactose, AcidAmounts::of(Acid::Lactic, 0.002));
        let points = sour(&law, &start, &milk(), &|_| 42.0, 20.0, SOURING_STEP_H);
        for point in points {
            let whole = point.lactic_mol_kg + per * point.lactose_mol_kg;
            near(whole, 0.002 + per * start.lactose_mol_kg, 1e-12);
            assert!(point.lactose_mol_kg >= 0.0);
        }
    }
}

/// 0.1 % of lactose gives 0.105 % of lactic acid and no more: 342.3 g become 360.3 g.
#[test]
fn souring_ends_with_the_lactose() {
    let start = CultureState::new(1e7, 0.001, AcidAmounts::default());
    let points = sour(&CultureLaw::of(Culture::Mesophilic), &start, &milk(), &|_| 30.0, 24.0, SOURING_STEP_H);
    let end = points.last().unwrap();
    assert_eq!(end.lactose_mol_kg, 0.0);
    near(100.0 * 0.001 * Acid::Lactic.g_per_mol() * end.lactic_mol_kg, 0.1 * 360.3 / 342.3, 1e-4);
    near(lactose_percent(start.lactose_mol_kg), 0.1, 1e-12);
}

/// Cells in log growth without lag, far from sour and from crowded: X = X₀ e^(μt), within what a first-order step of 0.02 h errs.
#[test]
fn a_few_cells_grow_exponentially() {
    let law = CultureLaw { h0: 0.0, ..CultureLaw::of(Culture::Mesophilic) };
    let start = CultureState::new(10.0, LACTOSE, AcidAmounts::default());
    let end = *sour(&law, &start, &milk(), &|_| 33.0, 5.0, SOURING_STEP_H).last().unwrap();
    let rate = law.growth_per_h(33.0, 6.65);
    near((end.cells_per_g / 10.0).ln(), 5.0 * rate, 0.02 * 5.0 * rate);
}

/// Baranyi and Roberts: after long, lag has cost h0 of the dose: ln(1 + e^M/(e^h0 − 1)) − ln(1 + 1/(e^h0 − 1)).
#[test]
fn lag_costs_what_the_closed_form_says() {
    let law = CultureLaw { h0: 2.0, ..CultureLaw::of(Culture::Mesophilic) };
    let mut state = CultureState::new(10.0, LACTOSE, AcidAmounts::default());
    for _ in 0..6000 {
        let _ = law.step(&mut state, 33.0, 6.3, 0.001);
    }
    let work = 2.0_f64.exp_m1();
    let closed = (state.dose.exp() / work).ln_1p() - (1.0 / work).ln_1p();
    near((state.cells_per_g / 10.0).ln(), closed, 0.005);
    near(state.dose, 6.0 * 1.15, 1e-9);
}

/// Halving the step moves the time to pH 5.2 by less than a hundredth.
#[test]
fn the_step_is_short_enough() {
    let law = CultureLaw::of(Culture::Mesophilic);
    let start = CultureState::new(6.5e7, 0.03, AcidAmounts::default());
    let hours = |step_h: f64| hours_to(&sour(&law, &start, &curd(), &|_| 21.0, 20.0, step_h), 5.2).unwrap();
    let fine = hours(0.5 * SOURING_STEP_H);
    near(hours(SOURING_STEP_H), fine, 0.01 * fine);
}

#[test]
fn the_course_begins_and_ends_where_it_is_asked_to() {
    let points = course(Culture::Mesophilic, 1e7, 21.0, 1.005);
    assert_eq!([points[0].at_h, points.last().unwrap().at_h], [0.0, 1.005]);
    assert_eq!(points[0].ph, 6.65);
    assert_eq!(course(Culture::Mesophilic, 1e7, 21.0, 0.0).len(), 1);
    assert_eq!(course(Culture::Mesophilic, 1e7, 21.0, f64::NAN).len(), 1);
}

#[test]
fn hours_to_a_ph_lie_between_points_or_are_none() {
    let points = course(Culture::Mesophilic, 1e7, 21.0, 10.0);
    assert_eq!(hours_to(&points, 6.7), Some(0.0));
    assert_eq!(hours_to(&points, 4.0), None);
    assert_eq!(hours_to(&[], 5.0), None);
    let hours = hours_to(&points, 6.0).unwrap();
    let around = points.iter().position(|point| point.at_h > hours).unwrap();
    assert!(points[around - 1].ph >= 6.0 && 6.0 >= points[around].ph);
}

#[test]
fn a_culture_that_is_cooked_or_frozen_makes_nothing_and_a_point_says_where_the_law_ends() {
    for temperature_c in [0.0, 4.9, 60.0] {
        let end = *course(Culture::Mesophilic, 1e7, temperature_c, 24.0).last().unwrap();
        assert_eq!((end.lactic_mol_kg, end.cells_per_g, end.ph), (0.0, 1e7, 6.65));
    }
    assert_eq!(course(Culture::Thermophilic, 1e7, 47.0, 1.0)[0].beyond, Some(Beyond::TooHot));
    let sour = course(Culture::Thermophilic, 1e8, 42.0, 48.0);
    assert_eq!((sour[0].beyond, sour.last().unwrap().beyond), (None, Some(Beyond::TooSour)));
}

/// A lactone alone splits as its own law says, whatever the steps; the fifth case of the table by way of the course.
#[test]
fn lactone_splits_beside_a_culture_or_alone() {
    let (law, none) = (CultureLaw::of(Culture::Mesophilic), CultureState::new(0.0, LACTOSE, AcidAmounts::default()));
    let lactone = gluconic_mol_kg(13.0);
    let alone = sour_beside_lactone(&law, &none, lactone, &milk(), &|_| 30.0, 2.0, 0.1);
    let gluconic = AcidAmounts::of(Acid::Gluconic, lactone * lactone_split_share(30.0, 2.0));
    near(alone.last().unwrap().ph, milk().ph_of(&gluconic), 1e-7);
    assert_eq!(alone.last().unwrap().cells_per_g, 0.0);
    let some = CultureState { cells_per_g: 1e7, ..none };
    assert!(sour_beside_lactone(&law, &some, lactone, &milk(), &|_| 30.0, 2.0, 0.1).last().unwrap().ph < alone.last().unwrap().ph);
}

#[test]
fn an_hour_between_points_lies_between_them() {
    let points = course(Culture::Mesophilic, 1e7, 21.0, 10.0);
    let at = souring_at(&points, 5.01).unwrap();
    near(at.ph, 0.5 * (points[250].ph + points[251].ph), 1e-9);
    assert_eq!(souring_at(&points, 5.0).unwrap().at_h, 5.0);
    assert_eq!(souring_at(&points, -1.0), points.first().copied());
    assert_eq!(souring_at(&points, 11.0).unwrap().ph, points.last().unwrap().ph);
    assert_eq!(souring_at(&[], 1.0), None);
}

proptest! {
    #[test]
    fn nothing_turns_back_and_everything_is_a_number(
        kind in 0..3_usize, log_cells in 3.0..9.5_f64, t in 0.0..60.0_f64, lactose in 0.0..0.06_f64, acetic in 0.0..0.05_f64,
    ) {
        let start = CultureState::new(10.0_f64.powf(log_cells), lactose, AcidAmounts::of(Acid::Acetic, acetic));
        let points = sour(&CultureLaw::of(Culture::ALL[kind]), &start, &milk(), &|at| t + at.sin(), 12.0, 0.05);
        for (before, after) in points.iter().zip(&points[1..]) {
            prop_assert!(after.ph <= before.ph + 1e-9 && after.ph > 1.0);
            prop_assert!(after.lactic_mol_kg >= before.lactic_mol_kg && after.lactose_mol_kg <= before.lactose_mol_kg);
            prop_assert!(after.cells_per_g >= before.cells_per_g && after.cells_per_g.is_finite());
        }
    }

    #[test]
    fn more_cells_sour_sooner(log_cells in 5.0..8.0_f64, more in 1.2..10.0_f64, t in 15.0..35.0_f64) {
        let cells = 10.0_f64.powf(log_cells);
        let ph = |cells: f64| course(Culture::Mesophilic, cells, t, 8.0).last().unwrap().ph;
        prop_assert!(ph(more * cells) < ph(cells));
    }
}
