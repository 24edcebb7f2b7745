//! The soaking disc: acetic acid diffuses through rings of finite volume, splits, and is held by the cheese.
//!
//! Two amounts are conserved, both in mol per m³ of the cheese's water, with acid and cheese at rest with each other at each place:
//! C = [HA] + [A⁻] and P = [HA] + [H⁺] + k B(pH);
//! ∂C/∂t = ∇·(D ∇[HA] + D′ ∇[A⁻]) and ∂P/∂t = ∇·(D ∇[HA] + D ∇[H⁺]).
//! At the faces a film leads to a stirred bath of finite volume, which has the same two amounts and no cheese. The charges are taken
//! to be evened out by the salt. Time is stepped as in drying, by a linearly implicit method of second order with the two directions
//! factored apart; in the implicit part P follows C, but not C follows P, which costs no order.
#![allow(clippy::indexing_slicing, reason = "a numeric kernel: all indices run over the grid that the vectors were made for")]

use super::PicklingError;
use super::direction::{Direction, turn};
use super::soak::Soak;
use super::way::{Amounts, Way, slopes};
use crate::law::buffering::local_balance;
use crate::numeric::{GAMMA, Stepping, Verdict};

/// First step, s: short against the souring of the skin.
const FIRST_STEP_S: f64 = 1.0;
/// Shortest step before the solver gives up, s.
const SHORTEST_STEP_S: f64 = 1e-4;
/// Amount, relative to the bath's at the start, below which errors are no longer relative.
const SMALL: f64 = 0.01;

/// Where a soaking cheese stands.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SoakState {
    /// pH at the centre.
    pub centre_ph: f64,
    /// pH of the cheese evened out.
    pub slurry_ph: f64,
    /// pH of the middle of the top face.
    pub surface_ph: f64,
    /// pH of the bath.
    pub bath_ph: f64,
    /// Mean acetate in the water of the cheese, mol/m³.
    pub acetate_mol_m3: f64,
    /// Acetate of the bath, mol/m³.
    pub bath_mol_m3: f64,
}

/// A cheese in vinegar on its way.
#[derive(Clone, Debug)]
pub struct SoakRun<'a> {
    soak: &'a Soak,
    now: Amounts,
    /// Seconds since the start.
    pub at_s: f64,
    /// Steps taken, and steps refused.
    pub steps: (u32, u32),
    stepping: Stepping,
    guess: Vec<f64>,
    first: Amounts,
    second: Amounts,
    trial: Amounts,
    turned: Amounts,
    potential: Vec<f64>,
    felt: Vec<f64>,
    radial: Way,
    axial: Way,
}

impl<'a> SoakRun<'a> {
    /// Returns the cheese as it comes into the vinegar.
    #[must_use]
    pub fn new(soak: &'a Soak) -> Self {
        let grid = &soak.grid;
        let nodes = grid.radii_m.len() * grid.heights_m.len();
        let (top, side) = soak.open;
        // Only the upper half is cut up, so half of the bath belongs to it.
        let (film, share, bath_m3) = (soak.film_m_s, soak.water_share, 0.5 * soak.bath_m3);
        let radial = Direction::new(&grid.radial, &grid.ring_area_m2, &grid.layer_m, side * grid.rim_m, film, share, bath_m3);
        let axial = Direction::new(&grid.axial, &grid.layer_m, &grid.ring_area_m2, top, film, share, bath_m3);
        let mut now = Amounts::zeros(nodes);
        now.protons.fill(10.0_f64.powf(3.0 - soak.buffer.start_ph));
        // Acid alone: each ion of acetate has left one of hydrogen, so P = C.
        now.bath = [soak.acid_mol_m3; 2];
        Self {
            soak,
            now,
            at_s: 0.0,
            steps: (0, 0),
            stepping: Stepping::new(FIRST_STEP_S, SHORTEST_STEP_S),
            guess: vec![soak.buffer.start_ph; nodes],
            first: Amounts::zeros(nodes),
            second: Amounts::zeros(nodes),
            trial: Amounts::zeros(nodes),
            turned: Amounts::zeros(nodes),
            potential: vec![0.0; nodes],
            felt: vec![0.0; nodes],
            radial: Way::new(radial, nodes),
            axial: Way::new(axial, nodes),
        }
    }

    /// Returns where the cheese stands.
    #[must_use]
    pub fn state(&self) -> SoakState {
        let soak = self.soak;
        let cheese = Some((&soak.buffer, soak.cheese_per_water()));
        let at = |node: usize| local_balance(self.now.acetate[node], self.now.protons[node], cheese, soak.pk, self.guess[node]).ph;
        let (acetate, protons) = (self.mean(&self.now.acetate), self.mean(&self.now.protons));
        SoakState {
            centre_ph: at(0),
            slurry_ph: local_balance(acetate, protons, cheese, soak.pk, 5.0).ph,
            surface_ph: at(soak.grid.heights_m.len() - 1),
            bath_ph: local_balance(self.now.bath[0], self.now.bath[1], None, soak.pk, 3.0).ph,
            acetate_mol_m3: acetate,
            bath_mol_m3: self.now.bath[0],
        }
    }

    /// Returns the acetate of cheese and bath together, mol.
    #[must_use]
    pub fn acetate_mol(&self) -> f64 {
        let soak = self.soak;
        2.0 * soak.grid.volume_m3() * soak.water_share * self.mean(&self.now.acetate) + soak.bath_m3 * self.now.bath[0]
    }

    fn mean(&self, amount: &[f64]) -> f64 {
        let grid = &self.soak.grid;
        let layers = |chunk: &[f64]| chunk.iter().zip(&grid.layer_m).map(|(x, layer)| x * layer).sum::<f64>();
        let sum: f64 =
            amount.chunks_exact(grid.layer_m.len()).zip(&grid.ring_area_m2).map(|(chunk, area)| area * layers(chunk)).sum();
        sum / grid.volume_m3()
    }

    /// Soaks until `to_s`, calling `after_step` after each step.
    ///
    /// # Errors
    /// [`PicklingError::NoSolution`] if the step becomes too short.
    pub fn advance(&mut self, to_s: f64, after_step: &mut dyn FnMut(&Self)) -> Result<(), PicklingError> {
        while self.at_s < to_s {
            let left_s = to_s - self.at_s;
            let step_s = self.stepping.next(left_s);
            let error = self.try_step(step_s);
            match self.stepping.judge(step_s, error) {
                Verdict::Taken => {
                    std::mem::swap(&mut self.now, &mut self.trial);
                    self.at_s = if step_s.to_bits() == left_s.to_bits() { to_s } else { self.at_s + step_s };
                    self.steps.0 += 1;
                    after_step(self);
                }
                Verdict::Refused => self.steps.1 += 1,
                Verdict::TooShort => return Err(PicklingError::NoSolution { hours: self.at_s / 3600.0 }),
            }
        }
        Ok(())
    }

    /// Works out one step into `trial`; returns its error in tolerances.
    fn try_step(&mut self, step_s: f64) -> f64 {
        let implicit_s = GAMMA * step_s;
        let (now, mut first) = (std::mem::take(&mut self.now), std::mem::take(&mut self.first));
        let (mut second, mut trial) = (std::mem::take(&mut self.second), std::mem::take(&mut self.trial));
        self.look(&now, &mut first, Some(implicit_s));
        self.solve(&mut first, implicit_s);
        trial.combine(&[(1.0, &now), (step_s, &first)]);
        self.look(&trial, &mut second, None);
        trial.combine(&[(1.0, &second), (-2.0, &first)]);
        std::mem::swap(&mut second, &mut trial);
        self.solve(&mut second, implicit_s);
        trial.combine(&[(1.0, &now), (1.5 * step_s, &first), (0.5 * step_s, &second)]);
        let error = self.error(step_s, &now, &first, &second);
        (self.now, self.first, self.second, self.trial) = (now, first, second, trial);
        error
    }

    /// Returns the error of a step in tolerances: root of the mean square over the volume, or the bath's where that is more.
    fn error(&self, step_s: f64, now: &Amounts, first: &Amounts, second: &Amounts) -> f64 {
        let soak = self.soak;
        let weighed = |now: f64, first: f64, second: f64| {
            0.5 * step_s * (first + second) / (soak.tolerance * (SMALL * soak.acid_mol_m3 + now.abs()))
        };
        let square = |now: &[f64], first: &[f64], second: &[f64]| {
            let squares: Vec<f64> =
                now.iter().zip(first).zip(second).map(|((now, first), second)| weighed(*now, *first, *second).powi(2)).collect();
            self.mean(&squares)
        };
        let acetate = square(&now.acetate, &first.acetate, &second.acetate);
        let protons = square(&now.protons, &first.protons, &second.protons);
        let baths = [0, 1].map(|which| weighed(now.bath[which], first.bath[which], second.bath[which]).powi(2));
        // `max` would drop what is not a number; the sum keeps it.
        (acetate + protons + baths[0] + baths[1]).sqrt()
    }

    /// Works out the rates at some amounts and, where a step is given, the implicit systems as well.
    fn look(&mut self, at: &Amounts, rate: &mut Amounts, implicit_s: Option<f64>) {
        let soak = self.soak;
        let grid = &soak.grid;
        let (radii, heights) = (grid.radii_m.len(), grid.heights_m.len());
        let (acid, acetate_m2_s) = (soak.acid_m2_s, soak.acid_m2_s * soak.acetate_mobility);
        let cheese = Some((&soak.buffer, soak.cheese_per_water()));
        for node in 0..at.acetate.len() {
            let amount = at.acetate[node];
            let local = local_balance(amount, at.protons[node], cheese, soak.pk, self.guess[node]);
            self.guess[node] = local.ph;
            let whole = amount * (1.0 - local.split);
            self.potential[node] = acid * whole + acetate_m2_s * amount * local.split;
            self.felt[node] = whole + local.hydrogen_mol_m3;
            if implicit_s.is_some() {
                let slopes = slopes(amount, local);
                self.radial.inside[node] = acid * slopes.acid_with_acetate + acetate_m2_s * (1.0 - slopes.acid_with_acetate);
                self.radial.crossed[node] = slopes.felt_with_acetate;
                self.radial.own[node] = slopes.felt_with_protons;
            }
        }
        let bath = local_balance(at.bath[0], at.bath[1], None, soak.pk, 3.0);
        let felt_bath = at.bath[0] * (1.0 - bath.split) + bath.hydrogen_mol_m3;
        let (radial, axial) = (&self.radial.direction, &self.axial.direction);
        let turned = &mut self.turned;
        // The axial direction first, in its own order, then turned back and the radial added.
        turned.acetate.fill(0.0);
        turned.protons.fill(0.0);
        // `own_inside` is filled anew whenever it is needed.
        let (scratch, ordered) = (&mut self.axial.scratch, &mut self.axial.own_inside);
        turn(&self.potential, scratch, radii, heights);
        turn(&at.acetate, ordered, radii, heights);
        rate.bath[0] = axial.add_rates(1.0, scratch, ordered, at.bath[0], &mut turned.acetate);
        turn(&self.felt, scratch, radii, heights);
        rate.bath[1] = axial.add_rates(acid, scratch, scratch, felt_bath, &mut turned.protons);
        turn(&turned.acetate, &mut rate.acetate, heights, radii);
        turn(&turned.protons, &mut rate.protons, heights, radii);
        rate.bath[0] += radial.add_rates(1.0, &self.potential, &at.acetate, at.bath[0], &mut rate.acetate);
        rate.bath[1] += radial.add_rates(acid, &self.felt, &self.felt, felt_bath, &mut rate.protons);
        if let Some(implicit_s) = implicit_s {
            turn(&self.radial.inside, &mut self.axial.inside, radii, heights);
            turn(&self.radial.crossed, &mut self.axial.crossed, radii, heights);
            turn(&self.radial.own, &mut self.axial.own, radii, heights);
            let slopes = slopes(at.bath[0], bath);
            let of_bath = (slopes.felt_with_acetate, slopes.felt_with_protons);
            self.radial.assemble(implicit_s, acid, of_bath);
            self.axial.assemble(implicit_s, acid, of_bath);
        }
    }

    /// Solves the implicit systems of one direction after the other, in place.
    fn solve(&mut self, x: &mut Amounts, implicit_s: f64) {
        let (radii, heights) = (self.soak.grid.radii_m.len(), self.soak.grid.heights_m.len());
        let acid = self.soak.acid_m2_s;
        self.radial.solve(x, implicit_s, acid);
        turn(&x.acetate, &mut self.turned.acetate, radii, heights);
        turn(&x.protons, &mut self.turned.protons, radii, heights);
        self.turned.bath = x.bath;
        self.axial.solve(&mut self.turned, implicit_s, acid);
        turn(&self.turned.acetate, &mut x.acetate, heights, radii);
        turn(&self.turned.protons, &mut x.protons, heights, radii);
        x.bath = self.turned.bath;
    }
}
