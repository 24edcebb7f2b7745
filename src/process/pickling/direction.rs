//! One direction of the disc, with the bath at its end: rates, and the implicit system with the bath as a border.
//!
//! Both directions look alike: a line of nodes from the axis (or the mid-plane) to the face, where a film leads to the bath. What
//! leaves the last node comes into the bath in the same line of the system, so no acid is lost whatever the step.
#![allow(
    clippy::indexing_slicing,
    clippy::inline_always,
    reason = "a numeric kernel: all indices run over the grid that the vectors were made for, and a loop goes several at a time only where no call is left in it"
)]

use crate::numeric::LineSystem;

/// The lines of one direction. In its own order, unknown `k` of line `l` is at `k * lines + l`; along it, at `l * length + k`.
#[derive(Clone, Debug)]
pub(super) struct Direction {
    lines: usize,
    length: usize,
    /// Conductance to the node before, over the own volume, 1/m².
    inward: Vec<f64>,
    /// The same to the node after.
    outward: Vec<f64>,
    /// Film of the last node over its water, 1/s.
    film: f64,
    /// Film of each line over the bath, 1/s.
    to_bath: Vec<f64>,
    to_bath_all: f64,
}

/// The implicit system of one amount in one direction.
#[derive(Clone, Debug)]
pub(super) struct Bordered {
    system: LineSystem,
    /// How the nodes answer to the bath.
    column: Vec<f64>,
    /// What the bath takes from the last node of each line.
    give: Vec<f64>,
    pivot: f64,
}

/// Slopes of one amount, each times γ·step.
#[derive(Clone, Copy)]
pub(super) struct Slopes<'a> {
    /// Slope of what diffuses, at each node.
    pub(super) inside: &'a [f64],
    /// Factor before it, m²/s or 1.
    pub(super) diffusivity: f64,
    /// Slope of what the film feels, at each node; none where it is 1.
    pub(super) face: Option<&'a [f64]>,
    /// The same in the bath.
    pub(super) bath: f64,
}

impl Direction {
    /// Returns a direction.
    ///
    /// # Arguments
    /// * `between`: conductances between neighbours; `own`: what each node owns in this direction; `across`: what each line owns across it
    /// * `face`: area of the face over what the line owns across; 0 if closed
    /// * `film_m_s`: transfer through the film; `water_share`: of the cheese; `bath_m3`: volume of the bath
    pub(super) fn new(
        between: &[f64],
        own: &[f64],
        across: &[f64],
        face: f64,
        film_m_s: f64,
        water_share: f64,
        bath_m3: f64,
    ) -> Self {
        let length = own.len();
        let to_bath: Vec<f64> = across.iter().map(|across| film_m_s * face * across / bath_m3).collect();
        Self {
            lines: across.len(),
            length,
            inward: (0..length).map(|k| if k > 0 { between[k - 1] / own[k] } else { 0.0 }).collect(),
            outward: (0..length).map(|k| if k + 1 < length { between[k] / own[k] } else { 0.0 }).collect(),
            film: film_m_s * face / (water_share * own[length - 1]),
            to_bath_all: to_bath.iter().sum(),
            to_bath,
        }
    }

    /// Returns what leaves a last node, by the film and by diffusion, over what is in it, 1/s: none is quicker.
    pub(super) fn quickest_per_s(&self, diffusivity: f64) -> f64 {
        self.film + diffusivity * self.inward[self.length - 1]
    }

    /// Returns an empty implicit system.
    pub(super) fn bordered(&self) -> Bordered {
        Bordered {
            system: LineSystem::new(self.lines, self.length),
            column: vec![0.0; self.lines * self.length],
            give: vec![0.0; self.lines],
            pivot: 1.0,
        }
    }

    /// Adds what flows in this direction to the rates of the nodes; returns what flows into the bath. All in this direction's order.
    ///
    /// # Arguments
    /// * `diffusivity`: factor before `potential`; `face`: what the film feels at each node; `bath`: the same in the bath
    #[inline(always)]
    pub(super) fn add_rates(&self, diffusivity: f64, potential: &[f64], face: &[f64], bath: f64, rate: &mut [f64]) -> f64 {
        let lines = self.lines;
        for k in 0..self.length - 1 {
            let (out, back) = (diffusivity * self.outward[k], diffusivity * self.inward[k + 1]);
            let (here, next) = potential[k * lines..(k + 2) * lines].split_at(lines);
            let (rate_here, rate_next) = rate[k * lines..(k + 2) * lines].split_at_mut(lines);
            for (((here, next), rate_here), rate_next) in here.iter().zip(next).zip(rate_here).zip(rate_next) {
                let drop = next - here;
                *rate_here += out * drop;
                *rate_next -= back * drop;
            }
        }
        let last = (self.length - 1) * lines;
        self.exchange(&face[last..], bath, rate[last..].iter_mut())
    }

    /// Does as [`Direction::add_rates`] where the nodes stand along this direction.
    #[inline(always)]
    pub(super) fn add_rates_along(&self, diffusivity: f64, potential: &[f64], face: &[f64], bath: f64, rate: &mut [f64]) -> f64 {
        let length = self.length;
        for (potential, rate) in potential.chunks_exact(length).zip(rate.chunks_exact_mut(length)) {
            // Each neighbour's flow is calculated twice, once from either side: nothing waits for the node before.
            rate[0] += diffusivity * self.outward[0] * (potential[1] - potential[0]);
            rate[length - 1] += diffusivity * self.inward[length - 1] * (potential[length - 2] - potential[length - 1]);
            let (inward, outward) = (&self.inward[1..length - 1], &self.outward[1..length - 1]);
            for (((three, inward), outward), rate) in potential.windows(3).zip(inward).zip(outward).zip(&mut rate[1..length - 1]) {
                *rate += diffusivity * (inward * (three[0] - three[1]) + outward * (three[2] - three[1]));
            }
        }
        let last = length - 1;
        let mut into_bath = 0.0;
        for (l, to_bath) in self.to_bath.iter().enumerate() {
            let excess = bath - face[l * length + last];
            rate[l * length + last] += self.film * excess;
            into_bath -= to_bath * excess;
        }
        into_bath
    }

    /// Lets the last nodes and the bath exchange through the film; returns what flows into the bath.
    #[inline(always)]
    fn exchange<'a>(&self, face: &[f64], bath: f64, rate: impl Iterator<Item = &'a mut f64>) -> f64 {
        let mut into_bath = 0.0;
        for ((face, rate), to_bath) in face.iter().zip(rate).zip(&self.to_bath) {
            let excess = bath - face;
            *rate += self.film * excess;
            into_bath -= to_bath * excess;
        }
        into_bath
    }

    /// Fills and eliminates the implicit system I − γ·step·J of one amount.
    #[inline(always)]
    pub(super) fn assemble(&self, bordered: &mut Bordered, implicit_s: f64, slopes: Slopes<'_>) {
        let (lines, last) = (self.lines, (self.length - 1) * self.lines);
        let system = &mut bordered.system;
        let diffuses = implicit_s * slopes.diffusivity;
        system.fill_diffusion(&self.inward, &self.outward, slopes.inside, diffuses);
        for l in 0..lines {
            let face = slopes.face.map_or(1.0, |face| face[last + l]);
            system.diagonal[last + l] += implicit_s * self.film * face;
            bordered.give[l] = implicit_s * self.to_bath[l] * face;
        }
        system.eliminate();
        bordered.column.fill(0.0);
        // Only the last nodes touch the bath.
        let touch = implicit_s * self.film * slopes.bath;
        for (column, pivot) in bordered.column[last..].iter_mut().zip(&system.diagonal[last..]) {
            *column = touch * pivot;
        }
        system.solve_back([&mut bordered.column]);
        let back: f64 = bordered.give.iter().zip(&bordered.column[last..]).map(|(give, column)| give * column).sum();
        bordered.pivot = 1.0 + implicit_s * slopes.bath * self.to_bath_all - back;
    }
}

impl Bordered {
    /// Solves in place; `bath` is the bath's row.
    #[inline(always)]
    pub(super) fn solve(&self, x: &mut [f64], bath: &mut f64) {
        self.system.solve(x);
        let last = x.len() - self.give.len();
        let given: f64 = self.give.iter().zip(&x[last..]).map(|(give, x)| give * x).sum();
        *bath = (*bath + given) / self.pivot;
        for (x, column) in x.iter_mut().zip(&self.column) {
            *x += *bath * column;
        }
    }
}

/// Turns a grid of `rows` × `columns` on its side.
#[inline(always)]
pub(super) fn turn(from: &[f64], to: &mut [f64], rows: usize, columns: usize) {
    for (row, from) in from.chunks_exact(columns).enumerate() {
        for (to, from) in to[row..].iter_mut().step_by(rows).zip(from) {
            *to = *from;
        }
    }
}
