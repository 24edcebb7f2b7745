//! The soaking disc: acetic acid diffuses through rings of finite volume, splits, and is held by the cheese.
//!
//! Two amounts are conserved, both in mol per m³ of the cheese's water, with acid and cheese in equilibrium at each place:
//! C = [HA] + [A⁻] and P = [HA] + [H⁺] + k B(pH);
//! ∂C/∂t = ∇·(D ∇[HA] + D′ ∇[A⁻]) and ∂P/∂t = ∇·(D ∇[HA] + D ∇[H⁺]).
//! At the faces a film leads to a stirred bath of finite volume, which has the same two amounts and no cheese. The charges are taken
//! to be evened out by the salt. Time is stepped as in drying, by a linearly implicit method of second order with the two directions
//! factored apart; in the implicit part P follows C, but not C follows P, which costs no order.
#![allow(
    clippy::indexing_slicing,
    clippy::inline_always,
    reason = "a numeric kernel: all indices run over the grid that the vectors were made for, and a loop goes several at a time only where no call is left in it"
)]

use super::direction::turn;
use super::error::PicklingError;
use super::soak::Soak;
use super::sweep::{Amounts, Answers, Sweep, slopes};
use crate::law::acid_table::{AcidPlace, AcidTable};
use crate::law::buffering::{LocalEquilibrium, local_equilibrium};
use crate::numeric::{GAMMA, LANES, Stepping, TooShort};
use std::f64::consts::LN_10;

/// First step, s: short against the souring of the skin.
const FIRST_STEP_S: f64 = 1.0;
/// Shortest step before the solver gives up, s.
const SHORTEST_STEP_S: f64 = 1e-4;
/// Amount, relative to the bath's at the start, below which errors are no longer relative.
const SMALL: f64 = 0.01;

/// The state of a soaking cheese.
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
    stepping: Stepping,
    table: AcidTable,
    /// pH of each node when it was last looked at, and the time before.
    guess: Vec<f64>,
    guess_before: Vec<f64>,
    bath_guess: f64,
    first: Amounts,
    second: Amounts,
    trial: Amounts,
    turned: Amounts,
    potential: Vec<f64>,
    felt: Vec<f64>,
    radial: Sweep,
    axial: Sweep,
    answers: Answers,
    turned_answers: Answers,
}

impl<'a> SoakRun<'a> {
    /// Returns the cheese as it comes into the vinegar.
    #[must_use]
    pub fn new(soak: &'a Soak) -> Self {
        let grid = &soak.grid;
        let nodes = grid.radii_m.len() * grid.heights_m.len();
        let (radial, axial) = soak.directions();
        let mut now = Amounts::zeros(nodes);
        now.protons.fill(10.0_f64.powf(3.0 - soak.buffer.start_ph));
        // Acid alone: each ion of acetate has left one of hydrogen, so P = C.
        now.bath = [soak.acid_mol_m3; 2];
        Self {
            soak,
            now,
            at_s: 0.0,
            stepping: Stepping::new(FIRST_STEP_S, SHORTEST_STEP_S),
            table: AcidTable::new(&soak.buffer, soak.cheese_per_water(), soak.pk),
            guess: vec![soak.buffer.start_ph; nodes],
            guess_before: vec![soak.buffer.start_ph; nodes],
            bath_guess: 3.0,
            first: Amounts::zeros(nodes),
            second: Amounts::zeros(nodes),
            trial: Amounts::zeros(nodes),
            turned: Amounts::zeros(nodes),
            potential: vec![0.0; nodes],
            felt: vec![0.0; nodes],
            radial: Sweep::new(radial, nodes),
            axial: Sweep::new(axial, nodes),
            answers: Answers::new(nodes),
            turned_answers: Answers::new(nodes),
        }
    }

    /// Returns the cheese as it is now in other surroundings, with the clock at zero.
    pub(super) fn moved_to<'b>(&self, soak: &'b Soak) -> SoakRun<'b> {
        let (now, guess) = (self.now.clone(), self.guess.clone());
        SoakRun { now, guess, bath_guess: self.bath_guess, ..SoakRun::new(soak) }
    }

    /// Returns the state of the cheese.
    #[must_use]
    pub fn state(&self) -> SoakState {
        let (acetate, protons) = (self.mean(&self.now.acetate), self.mean(&self.now.protons));
        SoakState {
            centre_ph: self.ph_at(0),
            slurry_ph: self.table.place(acetate, protons, 5.0).ph,
            surface_ph: self.ph_at(self.soak.grid.heights_m.len() - 1),
            bath_ph: self.bath_equilibrium(&self.now).ph,
            acetate_mol_m3: acetate,
            bath_mol_m3: self.now.bath[0],
        }
    }

    /// Returns how many steps were taken, and how many were refused.
    #[must_use]
    pub const fn steps(&self) -> (u32, u32) {
        self.stepping.counts()
    }

    /// Returns the pH of all rings.
    #[must_use]
    pub fn ph(&self) -> Vec<f64> {
        (0..self.now.acetate.len()).map(|node| self.ph_at(node)).collect()
    }

    /// Returns the acetate of all rings, mol/m³ of water.
    #[must_use]
    pub fn acetate(&self) -> &[f64] {
        &self.now.acetate
    }

    fn ph_at(&self, node: usize) -> f64 {
        self.table.place(self.now.acetate[node], self.now.protons[node], self.guess[node]).ph
    }

    fn bath_equilibrium(&self, at: &Amounts) -> LocalEquilibrium {
        local_equilibrium(at.bath[0], at.bath[1], None, self.soak.pk, self.bath_guess)
    }

    /// Returns the acetate of cheese and bath together, mol.
    #[must_use]
    pub fn acetate_mol(&self) -> f64 {
        let soak = self.soak;
        2.0 * soak.grid.volume_m3() * soak.water_share * self.mean(&self.now.acetate) + soak.bath_m3 * self.now.bath[0]
    }

    fn mean(&self, amount: &[f64]) -> f64 {
        self.soak.grid.mean(amount)
    }

    /// Soaks until `to_s`, calling `after_step` after each step.
    ///
    /// # Errors
    /// [`PicklingError::NoSolution`] if the step becomes too short.
    pub fn advance(&mut self, to_s: f64, after_step: &mut dyn FnMut(&Self)) -> Result<(), PicklingError> {
        while self.at_s < to_s {
            self.step(to_s)?;
            after_step(self);
        }
        Ok(())
    }

    /// Soaks one step further, but no further than `to_s`.
    ///
    /// # Errors
    /// As for [`SoakRun::advance`].
    pub fn step(&mut self, to_s: f64) -> Result<(), PicklingError> {
        let mut stepping = self.stepping;
        let step = stepping.step(self.at_s, to_s, |step_s| (self.try_step(step_s), ()));
        self.stepping = stepping;
        let step = step.map_err(|TooShort { at }| PicklingError::NoSolution { hours: at / 3600.0 })?;
        std::mem::swap(&mut self.now, &mut self.trial);
        self.at_s = step.at;
        Ok(())
    }

    /// Calculates one step into `trial`; returns its error in tolerances.
    #[inline(always)]
    fn try_step(&mut self, step_s: f64) -> f64 {
        let implicit_s = GAMMA * step_s;
        let (now, mut first) = (std::mem::take(&mut self.now), std::mem::take(&mut self.first));
        let (mut second, mut trial) = (std::mem::take(&mut self.second), std::mem::take(&mut self.trial));
        self.look(&now, &mut first, Some(implicit_s));
        self.solve(&mut first, implicit_s);
        trial.set(&now, &first, |now, first| now + step_s * first);
        self.look(&trial, &mut second, None);
        second.change(&first, |second, first| second - 2.0 * first);
        self.solve(&mut second, implicit_s);
        trial.set(&first, &second, |first, second| step_s * (first + second));
        let error = self.error(&now, &trial);
        // What the trial holds is the difference to the method of first order, twice the error of that.
        trial.change(&first, |both, first| 0.5 * both + step_s * first);
        trial.change(&now, |change, now| now + change);
        (self.now, self.first, self.second, self.trial) = (now, first, second, trial);
        error
    }

    /// Returns the error of a step in tolerances from twice the error of each amount: root of the mean square over the volume and the bath.
    #[inline(always)]
    fn error(&self, now: &Amounts, twice: &Amounts) -> f64 {
        let grid = &self.soak.grid;
        let (tolerance, small) = (2.0 * self.soak.tolerance, SMALL * self.soak.acid_mol_m3);
        let square = |now: f64, twice: f64| (twice / (tolerance * (small + now.abs()))).powi(2);
        let rings = |now: &[f64], twice: &[f64]| -> f64 {
            let layers = grid.layer_m.len();
            now.chunks_exact(layers)
                .zip(twice.chunks_exact(layers))
                .zip(&grid.ring_area_m2)
                .map(|((now, twice), area)| {
                    area * now
                        .iter()
                        .zip(twice)
                        .zip(&grid.layer_m)
                        .map(|((now, twice), layer)| layer * square(*now, *twice))
                        .sum::<f64>()
                })
                .sum()
        };
        let cheese = (rings(&now.acetate, &twice.acetate) + rings(&now.protons, &twice.protons)) / grid.volume_m3();
        // `max` would drop what is not a number; the sum keeps it.
        (cheese + square(now.bath[0], twice.bath[0]) + square(now.bath[1], twice.bath[1])).sqrt()
    }

    /// Calculates the rates at some amounts and, where a step is given, the implicit systems as well.
    #[inline(always)]
    fn look(&mut self, at: &Amounts, rate: &mut Amounts, implicit_s: Option<f64>) {
        let acid = self.soak.acid_m2_s;
        self.settle(at, implicit_s.is_some());
        let bath = self.bath_equilibrium(at);
        self.bath_guess = bath.ph;
        let felt_bath = at.bath[0] * (1.0 - bath.split) + bath.hydrogen_mol_m3;
        let (radial, axial) = (&self.radial.direction, &self.axial.direction);
        rate.acetate.fill(0.0);
        rate.protons.fill(0.0);
        rate.bath = [
            radial.add_rates(1.0, &self.potential, &at.acetate, at.bath[0], &mut rate.acetate)
                + axial.add_rates_along(1.0, &self.potential, &at.acetate, at.bath[0], &mut rate.acetate),
            radial.add_rates(acid, &self.felt, &self.felt, felt_bath, &mut rate.protons)
                + axial.add_rates_along(acid, &self.felt, &self.felt, felt_bath, &mut rate.protons),
        ];
        let Some(implicit_s) = implicit_s else { return };
        let of_bath = slopes(at.bath[0], in_bath(at.bath[0], bath));
        let (radii, heights) = self.shape();
        let (answers, turned) = (&mut self.answers, &mut self.turned_answers);
        answers.bath = (of_bath.felt_with_acetate, of_bath.felt_with_protons);
        turned.bath = answers.bath;
        turn(&answers.inside, &mut turned.inside, radii, heights);
        turn(&answers.crossed, &mut turned.crossed, radii, heights);
        turn(&answers.own, &mut turned.own, radii, heights);
        self.radial.assemble(implicit_s, acid, answers);
        self.axial.assemble(implicit_s, acid, turned);
    }

    /// Calculates what carries the amounts at each node and, where they are asked for, the slopes of that.
    #[inline(always)]
    fn settle(&mut self, at: &Amounts, with_slopes: bool) {
        let (acid, acetate_m2_s) = (self.soak.acid_m2_s, self.soak.acid_m2_s * self.soak.acetate_mobility);
        let nodes = at.acetate.len();
        let (protons, answers) = (&at.protons[..nodes], &mut self.answers);
        self.guess_before.copy_from_slice(&self.guess);
        let (guess, potential, felt) = (&mut self.guess[..nodes], &mut self.potential[..nodes], &mut self.felt[..nodes]);
        let mut settle = |node: usize, place: AcidPlace| {
            let amount = at.acetate[node];
            guess[node] = place.ph;
            potential[node] = amount * (acetate_m2_s + (acid - acetate_m2_s) * place.whole);
            felt[node] = amount * place.whole + place.hydrogen_mol_m3;
            if with_slopes {
                let slopes = slopes(amount, place);
                answers.inside[node] = acetate_m2_s + (acid - acetate_m2_s) * slopes.acid_with_acetate;
                answers.crossed[node] = slopes.felt_with_acetate;
                answers.own[node] = slopes.felt_with_protons;
            }
        };
        let last = self.guess_before.as_chunks::<LANES>().0.len() * LANES;
        let lanes = at.acetate.as_chunks::<LANES>().0.iter().zip(protons.as_chunks::<LANES>().0);
        for ((acetate, protons), (four, guess)) in lanes.zip(self.guess_before.as_chunks::<LANES>().0.iter().enumerate()) {
            let places = self.table.places(acetate, protons, guess);
            for lane in 0..LANES {
                settle(LANES * four + lane, places.place(lane));
            }
        }
        (last..nodes).for_each(|node| settle(node, self.table.place(at.acetate[node], protons[node], self.guess_before[node])));
    }

    /// Solves the implicit systems of one direction after the other, in place.
    #[inline(always)]
    fn solve(&mut self, x: &mut Amounts, implicit_s: f64) {
        let (radii, heights) = self.shape();
        let acid = self.soak.acid_m2_s;
        self.radial.solve(x, implicit_s, acid, &self.answers);
        turn(&x.acetate, &mut self.turned.acetate, radii, heights);
        turn(&x.protons, &mut self.turned.protons, radii, heights);
        self.turned.bath = x.bath;
        self.axial.solve(&mut self.turned, implicit_s, acid, &self.turned_answers);
        turn(&self.turned.acetate, &mut x.acetate, heights, radii);
        turn(&self.turned.protons, &mut x.protons, heights, radii);
        x.bath = self.turned.bath;
    }

    fn shape(&self) -> (usize, usize) {
        (self.soak.grid.radii_m.len(), self.soak.grid.heights_m.len())
    }
}

/// Returns the bath as a place of its own, without cheese.
fn in_bath(acetate_mol_m3: f64, bath: LocalEquilibrium) -> AcidPlace {
    let whole_slope = -LN_10 * bath.split * (1.0 - bath.split);
    AcidPlace {
        ph: bath.ph,
        whole: 1.0 - bath.split,
        whole_slope,
        hydrogen_mol_m3: bath.hydrogen_mol_m3,
        all_slope: acetate_mol_m3 * whole_slope - LN_10 * bath.hydrogen_mol_m3,
    }
}
