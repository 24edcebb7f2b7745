//! The two amounts, one direction's implicit systems for both, and how the species follow the amounts.
#![allow(clippy::indexing_slicing, reason = "a numeric kernel: all indices run over the grid that the vectors were made for")]
#![allow(clippy::inline_always, reason = "a loop goes several at a time only where no call is left in it")]

use super::direction::{Bordered, Direction, Slopes};
use crate::law::acid_table::AcidPlace;
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

    /// Sets this to what `with` makes of two others, part by part.
    #[inline(always)]
    pub(super) fn set(&mut self, one: &Self, other: &Self, with: impl Fn(f64, f64) -> f64) {
        for ((to, one), other) in self.acetate.iter_mut().zip(&one.acetate).zip(&other.acetate) {
            *to = with(*one, *other);
        }
        for ((to, one), other) in self.protons.iter_mut().zip(&one.protons).zip(&other.protons) {
            *to = with(*one, *other);
        }
        self.bath = [0, 1].map(|which| with(one.bath[which], other.bath[which]));
    }

    /// Adds what `with` makes of two others, part by part.
    #[inline(always)]
    pub(super) fn change(&mut self, other: &Self, with: impl Fn(f64, f64) -> f64) {
        for (to, other) in self.acetate.iter_mut().zip(&other.acetate) {
            *to = with(*to, *other);
        }
        for (to, other) in self.protons.iter_mut().zip(&other.protons) {
            *to = with(*to, *other);
        }
        self.bath = [0, 1].map(|which| with(self.bath[which], other.bath[which]));
    }
}

/// How the species at all nodes follow the amounts there, in the order of one direction.
#[derive(Clone, Debug)]
pub(super) struct Answers {
    /// Slope of what carries acetate with the acetate, m²/s.
    pub(super) inside: Vec<f64>,
    /// ∂([HA] + [H⁺])/∂C.
    pub(super) crossed: Vec<f64>,
    /// ∂([HA] + [H⁺])/∂P.
    pub(super) own: Vec<f64>,
    /// The two latter in the bath.
    pub(super) bath: (f64, f64),
}

impl Answers {
    pub(super) fn new(nodes: usize) -> Self {
        let zeros = vec![0.0; nodes];
        Self { inside: zeros.clone(), crossed: zeros.clone(), own: zeros, bath: (0.0, 0.0) }
    }
}

/// One direction with its implicit systems.
#[derive(Clone, Debug)]
pub(super) struct Sweep {
    pub(super) direction: Direction,
    acetate: Bordered,
    protons: Bordered,
    scratch: Vec<f64>,
}

impl Sweep {
    pub(super) fn new(direction: Direction, nodes: usize) -> Self {
        Self { acetate: direction.bordered(), protons: direction.bordered(), direction, scratch: vec![0.0; nodes] }
    }

    #[inline(always)]
    pub(super) fn assemble(&mut self, implicit_s: f64, acid_m2_s: f64, answers: &Answers) {
        let acetate = Slopes { inside: &answers.inside, diffusivity: 1.0, face: None, bath: 1.0 };
        self.direction.assemble(&mut self.acetate, implicit_s, acetate);
        let protons = Slopes { inside: &answers.own, diffusivity: acid_m2_s, face: Some(&answers.own), bath: answers.bath.1 };
        self.direction.assemble(&mut self.protons, implicit_s, protons);
    }

    /// Solves I − γ·step·J for both amounts, the protons after the acetate that they follow.
    #[inline(always)]
    pub(super) fn solve(&mut self, x: &mut Amounts, implicit_s: f64, acid_m2_s: f64, answers: &Answers) {
        self.acetate.solve(&mut x.acetate, &mut x.bath[0]);
        for ((scratch, slope), acetate) in self.scratch.iter_mut().zip(&answers.crossed).zip(&x.acetate) {
            *scratch = implicit_s * slope * acetate;
        }
        let bath = implicit_s * answers.bath.0 * x.bath[0];
        x.bath[1] += self.direction.add_rates(acid_m2_s, &self.scratch, &self.scratch, bath, &mut x.protons);
        self.protons.solve(&mut x.protons, &mut x.bath[1]);
    }
}

/// How the species at one place follow its two amounts.
#[derive(Clone, Copy)]
pub(super) struct LocalSlopes {
    /// ∂[HA]/∂C at fixed P.
    pub(super) acid_with_acetate: f64,
    /// ∂([HA] + [H⁺])/∂C.
    pub(super) felt_with_acetate: f64,
    /// ∂([HA] + [H⁺])/∂P.
    pub(super) felt_with_protons: f64,
}

/// Returns the slopes at one place.
#[inline(always)]
pub(super) fn slopes(acetate: f64, place: AcidPlace) -> LocalSlopes {
    let acid_with_ph = acetate * place.whole_slope;
    let hydrogen_with_ph = -LN_10 * place.hydrogen_mol_m3;
    let ph_with_protons = 1.0 / place.all_slope;
    let ph_with_acetate = -place.whole * ph_with_protons;
    let acid_with_acetate = place.whole + acid_with_ph * ph_with_acetate;
    LocalSlopes {
        acid_with_acetate,
        felt_with_acetate: acid_with_acetate + hydrogen_with_ph * ph_with_acetate,
        felt_with_protons: (acid_with_ph + hydrogen_with_ph) * ph_with_protons,
    }
}
