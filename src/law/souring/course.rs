//! A culture at work: cells, lactose and lactic acid from step to step, and the pH that follows.

use super::acids::{Acid, AcidAmounts};
use super::culture::{Beyond, CultureLaw};
use super::lactone::lactone_split_share;
use super::records::LACTOSE_MOLAR_MASS;
use super::sourable::Sourable;

/// The step with which the law was set on its measurements, h.
pub const SOURING_STEP_H: f64 = 0.02;
/// The shortest step that is taken, h.
const SHORTEST_STEP_H: f64 = 1e-4;

/// What a culture has come to, for each kg of milk or curd.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct CultureState {
    /// Cells of the culture for each g.
    pub cells_per_g: f64,
    /// Its growth dose M so far: the sum of rate × time.
    pub dose: f64,
    /// Lactose that is left, mol/kg.
    pub lactose_mol_kg: f64,
    /// All acids, those that were stirred in too.
    pub acids: AcidAmounts,
}

impl CultureState {
    /// Returns a culture that has just come into milk or curd.
    ///
    /// # Arguments
    /// * `cells_per_g`: ≥ 0
    /// * `lactose_share`: of the mass, 0 to 1
    /// * `acids`: that are there already
    #[must_use]
    pub fn new(cells_per_g: f64, lactose_share: f64, acids: AcidAmounts) -> Self {
        Self { cells_per_g, dose: 0.0, lactose_mol_kg: lactose_share / LACTOSE_MOLAR_MASS.value, acids }
    }

    /// Returns the lactose that is left, % of the mass.
    #[must_use]
    pub fn lactose_percent(&self) -> f64 {
        lactose_percent(self.lactose_mol_kg)
    }
}

/// Returns lactose in % of the mass from mol/kg.
#[must_use]
pub fn lactose_percent(mol_kg: f64) -> f64 {
    100.0 * LACTOSE_MOLAR_MASS.value * mol_kg
}

impl CultureLaw {
    /// Takes one explicit step, and returns the lactic acid made in it, mol/kg.
    ///
    /// dX/dt = α μ X (1 − X/X_max); dL/dt = (Y α μ (1 − X/X_max) + m γ_T f) X while lactose lasts; α = 1/(1 + (e^h0 − 1) e^−M).
    ///
    /// # Arguments
    /// * `state`: of the culture, which is changed
    /// * `temperature_c`, `ph`: at the beginning of the step; the pH is [`Sourable::ph_of`] its acids
    /// * `step_h`: [`SOURING_STEP_H`] or not much more
    pub fn step(&self, state: &mut CultureState, temperature_c: f64, ph: f64, step_h: f64) -> f64 {
        let rate = self.growth_per_h(temperature_c, ph);
        let alpha = if self.h0 > 0.0 { 1.0 / (1.0 + self.h0.exp_m1() * (-state.dose).exp()) } else { 1.0 };
        let grown = alpha * rate * state.cells_per_g * (1.0 - state.cells_per_g / self.most_per_g).max(0.0);
        let upkeep = self.upkeep_mol_h * self.warmth_factor(temperature_c) * self.going(ph) * state.cells_per_g;
        // From each g to each kg.
        let wanted = 1000.0 * step_h * (self.yield_mol * grown + upkeep);
        let possible = self.lactic_per_lactose * state.lactose_mol_kg;
        let made = if wanted < possible { wanted } else { possible };
        // Exactly none where it is used up, so that no rounding is left over.
        state.lactose_mol_kg = if wanted < possible { state.lactose_mol_kg - made / self.lactic_per_lactose } else { 0.0 };
        state.acids.lactic += made;
        state.cells_per_g += step_h * grown;
        state.dose += step_h * rate;
        made
    }
}

/// One moment of souring.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SouringPoint {
    /// Hours from the start.
    pub at_h: f64,
    /// The pH.
    pub ph: f64,
    /// Lactic acid, mol/kg.
    pub lactic_mol_kg: f64,
    /// Cells of the culture for each g.
    pub cells_per_g: f64,
    /// Lactose that is left, mol/kg.
    pub lactose_mol_kg: f64,
    /// Where this lies beyond the law, if it does.
    pub beyond: Option<Beyond>,
}

/// Returns the course of souring, a point for each step; the last at the end.
///
/// # Arguments
/// * `law`: of the culture
/// * `start`: cells, lactose and acids at the start
/// * `sourable`: the milk or curd
/// * `temperature_c`: at hours from the start
/// * `hours`: ≥ 0; `step_h`: [`SOURING_STEP_H`] or not much more
///
/// # Example
/// ```
/// use vatsketch::law::souring::{AcidAmounts, Culture, CultureLaw, CultureState, SOURING_STEP_H, Sourable, hours_to, sour};
/// let milk = Sourable::new(0.0325, 0.880, 6.65, 1.0);
/// let start = CultureState::new(1e7, 0.046, AcidAmounts::default());
/// let points = sour(&CultureLaw::of(Culture::Mesophilic), &start, &milk, &|_| 21.0, 30.0, SOURING_STEP_H);
/// assert!((hours_to(&points, 5.2).unwrap() - 9.36).abs() < 0.01);
/// ```
#[must_use]
pub fn sour(
    law: &CultureLaw,
    start: &CultureState,
    sourable: &Sourable,
    temperature_c: &dyn Fn(f64) -> f64,
    hours: f64,
    step_h: f64,
) -> Vec<SouringPoint> {
    sour_beside_lactone(law, start, 0.0, sourable, temperature_c, hours, step_h)
}

/// Returns the course of souring as [`sour`] does, with glucono-delta-lactone that splits meanwhile.
///
/// # Arguments
/// * `start`: without cells there is no culture
/// * `lactone_mol_kg`: not yet split at the start; each molecule becomes one of gluconic acid
/// * the others as for [`sour`]
#[must_use]
pub fn sour_beside_lactone(
    law: &CultureLaw,
    start: &CultureState,
    lactone_mol_kg: f64,
    sourable: &Sourable,
    temperature_c: &dyn Fn(f64) -> f64,
    hours: f64,
    step_h: f64,
) -> Vec<SouringPoint> {
    let hours = if hours.is_finite() { hours.max(0.0) } else { 0.0 };
    let step_h = if step_h.is_finite() { step_h.max(SHORTEST_STEP_H) } else { SOURING_STEP_H };
    let steps = (hours / step_h - 1e-9).ceil().max(0.0) as usize;
    let (mut state, mut lactone_left) = (*start, lactone_mol_kg);
    let mut ph = sourable.ph_of(&state.acids);
    let mut points = Vec::with_capacity(steps + 1);
    for step in 0..=steps {
        let at_h = (step as f64 * step_h).min(hours);
        let now_c = temperature_c(at_h);
        points.push(SouringPoint {
            at_h,
            ph,
            lactic_mol_kg: state.acids.amount(Acid::Lactic),
            cells_per_g: state.cells_per_g,
            lactose_mol_kg: state.lactose_mol_kg,
            beyond: Beyond::at(now_c, ph),
        });
        let taken_h = ((step + 1) as f64 * step_h).min(hours) - at_h;
        law.step(&mut state, now_c, ph, taken_h);
        let split = lactone_left * lactone_split_share(now_c, taken_h);
        lactone_left -= split;
        state.acids.gluconic += split;
        ph = sourable.ph_near(&state.acids, ph);
    }
    points
}

/// Returns the souring at an hour, straight between points; at their ends before and after them; none without points.
#[must_use]
pub fn souring_at(points: &[SouringPoint], at_h: f64) -> Option<SouringPoint> {
    let after = points.partition_point(|point| point.at_h < at_h);
    let later = points.get(after).or(points.last())?;
    let Some(before) = after.checked_sub(1).and_then(|at| points.get(at)).filter(|before| before.at_h < later.at_h) else {
        return Some(*later);
    };
    let share = (at_h - before.at_h) / (later.at_h - before.at_h);
    let between = |from: f64, to: f64| from + share * (to - from);
    Some(SouringPoint {
        at_h,
        ph: between(before.ph, later.ph),
        lactic_mol_kg: between(before.lactic_mol_kg, later.lactic_mol_kg),
        cells_per_g: between(before.cells_per_g, later.cells_per_g),
        lactose_mol_kg: between(before.lactose_mol_kg, later.lactose_mol_kg),
        beyond: later.beyond,
    })
}

/// Returns the first hours at or below a pH, straight between points; none if it never comes there.
#[must_use]
pub fn hours_to(points: &[SouringPoint], ph: f64) -> Option<f64> {
    let first = points.first()?;
    if first.ph <= ph {
        return Some(first.at_h);
    }
    points
        .iter()
        .zip(points.iter().skip(1))
        .find(|(_, after)| after.ph <= ph)
        .map(|(before, after)| before.at_h + (before.ph - ph) / (before.ph - after.ph) * (after.at_h - before.at_h))
}
