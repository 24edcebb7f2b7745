//! The two amounts, one direction's implicit systems for both, and how the species follow the amounts.
#![allow(clippy::indexing_slicing, reason = "a numeric kernel: all indices run over the grid that the vectors were made for")]

use super::direction::{Bordered, Direction, Slopes};
use crate::law::buffering::LocalBalance;
use std::f64::consts::LN_10;

/// The two amounts, of all nodes and of the bath.
#[derive(Clone, Debug, Default)]
pub(super) struct Amounts {
    pub(super) acetate: Vec<f64>,
    pub(super) protons: Vec<f64>,
    pub(super) bath: [f64; 2],
}

impl Amounts {
    pub(super) fn zeros(nodes: usize) -> Self {
        Self { acetate: vec![0.0; nodes], protons: vec![0.0; nodes], bath: [0.0; 2] }
    }

    /// Sets this to Σ fᵢ xᵢ.
    pub(super) fn combine(&mut self, terms: &[(f64, &Self)]) {
        let sum = |part: &dyn Fn(&Self) -> f64| terms.iter().map(|(factor, amounts)| factor * part(amounts)).sum::<f64>();
        for at in 0..self.acetate.len() {
            self.acetate[at] = sum(&|x| x.acetate[at]);
            self.protons[at] = sum(&|x| x.protons[at]);
        }
        self.bath = [sum(&|x| x.bath[0]), sum(&|x| x.bath[1])];
    }
}

/// One direction with its implicit systems and the slopes in its own order.
#[derive(Clone, Debug)]
pub(super) struct Way {
    pub(super) direction: Direction,
    pub(super) acetate: Bordered,
    pub(super) protons: Bordered,
    pub(super) inside: Vec<f64>,
    pub(super) crossed: Vec<f64>,
    pub(super) own: Vec<f64>,
    crossed_bath: f64,
    pub(super) scratch: Vec<f64>,
    ones: Vec<f64>,
    pub(super) own_inside: Vec<f64>,
}

impl Way {
    pub(super) fn new(direction: Direction, nodes: usize) -> Self {
        let zeros = vec![0.0; nodes];
        Self {
            acetate: direction.bordered(),
            protons: direction.bordered(),
            direction,
            inside: zeros.clone(),
            crossed: zeros.clone(),
            own: zeros.clone(),
            own_inside: zeros.clone(),
            scratch: zeros,
            crossed_bath: 0.0,
            ones: vec![1.0; nodes],
        }
    }

    pub(super) fn assemble(&mut self, implicit_s: f64, acid_m2_s: f64, bath: (f64, f64)) {
        self.crossed_bath = bath.0;
        self.direction.assemble(&mut self.acetate, implicit_s, Slopes { inside: &self.inside, face: &self.ones, bath: 1.0 });
        for (inside, own) in self.own_inside.iter_mut().zip(&self.own) {
            *inside = acid_m2_s * own;
        }
        self.direction.assemble(&mut self.protons, implicit_s, Slopes { inside: &self.own_inside, face: &self.own, bath: bath.1 });
    }

    /// Solves I − γ·step·J for both amounts, the protons after the acetate that they follow.
    pub(super) fn solve(&mut self, x: &mut Amounts, implicit_s: f64, acid_m2_s: f64) {
        self.acetate.solve(&mut x.acetate, &mut x.bath[0]);
        for ((scratch, slope), acetate) in self.scratch.iter_mut().zip(&self.crossed).zip(&x.acetate) {
            *scratch = implicit_s * slope * acetate;
        }
        let bath = implicit_s * self.crossed_bath * x.bath[0];
        x.bath[1] += self.direction.add_rates(acid_m2_s, &self.scratch, &self.scratch, bath, &mut x.protons);
        self.protons.solve(&mut x.protons, &mut x.bath[1]);
    }
}

/// How the species at one place follow its two amounts.
pub(super) struct LocalSlopes {
    /// ∂[HA]/∂C at fixed P.
    pub(super) acid_with_acetate: f64,
    /// ∂([HA] + [H⁺])/∂C.
    pub(super) felt_with_acetate: f64,
    /// ∂([HA] + [H⁺])/∂P.
    pub(super) felt_with_protons: f64,
}

/// Returns the slopes at one place.
pub(super) fn slopes(acetate: f64, local: LocalBalance) -> LocalSlopes {
    let acid_with_ph = -LN_10 * acetate * local.split * (1.0 - local.split);
    let hydrogen_with_ph = -LN_10 * local.hydrogen_mol_m3;
    let all_with_ph = acid_with_ph + hydrogen_with_ph - local.buffer_slope;
    let ph_with_acetate = -(1.0 - local.split) / all_with_ph;
    let acid_with_acetate = 1.0 - local.split + acid_with_ph * ph_with_acetate;
    LocalSlopes {
        acid_with_acetate,
        felt_with_acetate: acid_with_acetate + hydrogen_with_ph * ph_with_acetate,
        felt_with_protons: (acid_with_ph + hydrogen_with_ph) / all_with_ph,
    }
}
