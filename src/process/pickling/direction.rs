//! One direction of the disc, with the bath at its end: rates, and the implicit system with the bath as a border.
//!
//! Both directions look alike: a line of nodes from the axis (or the mid-plane) to the face, where a film leads to the bath. What
//! leaves the last node comes into the bath in the same line of the system, so no acid is lost whatever the step.
#![allow(clippy::indexing_slicing, reason = "a numeric kernel: all indices run over the grid that the vectors were made for")]

use crate::numeric::LineSystem;

/// The lines of one direction; unknown `k` of line `l` stands at `k * lines + l`.
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

/// Slopes of one amount.
#[derive(Clone, Copy)]
pub(super) struct Slopes<'a> {
    /// Slope of the potential that diffuses, at each node, m²/s.
    pub(super) inside: &'a [f64],
    /// Slope of what the film feels, at each node.
    pub(super) face: &'a [f64],
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
        Self {
            lines: across.len(),
            length,
            inward: (0..length).map(|k| if k > 0 { between[k - 1] / own[k] } else { 0.0 }).collect(),
            outward: (0..length).map(|k| if k + 1 < length { between[k] / own[k] } else { 0.0 }).collect(),
            film: film_m_s * face / (water_share * own[length - 1]),
            to_bath: across.iter().map(|across| film_m_s * face * across / bath_m3).collect(),
        }
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

    /// Adds what flows in this direction to the rates of the nodes; returns what flows into the bath.
    ///
    /// # Arguments
    /// * `diffusivity`: factor before `potential`; `face`: what the film feels at each node; `bath`: the same in the bath
    pub(super) fn add_rates(&self, diffusivity: f64, potential: &[f64], face: &[f64], bath: f64, rate: &mut [f64]) -> f64 {
        let lines = self.lines;
        for k in 0..self.length - 1 {
            let (here, next) = (k * lines, (k + 1) * lines);
            let (out, back) = (diffusivity * self.outward[k], diffusivity * self.inward[k + 1]);
            for l in 0..lines {
                let drop = potential[next + l] - potential[here + l];
                rate[here + l] += out * drop;
                rate[next + l] -= back * drop;
            }
        }
        let last = (self.length - 1) * lines;
        let mut into_bath = 0.0;
        for l in 0..lines {
            let excess = bath - face[last + l];
            rate[last + l] += self.film * excess;
            into_bath -= self.to_bath[l] * excess;
        }
        into_bath
    }

    /// Fills and eliminates the implicit system I − γ·step·J of one amount.
    pub(super) fn assemble(&self, bordered: &mut Bordered, implicit_s: f64, slopes: Slopes<'_>) {
        let (lines, last) = (self.lines, (self.length - 1) * self.lines);
        let system = &mut bordered.system;
        for k in 0..self.length {
            let (inward, outward) = (implicit_s * self.inward[k], implicit_s * self.outward[k]);
            for l in 0..lines {
                let at = k * lines + l;
                system.below[at] = if k > 0 { -inward * slopes.inside[at - lines] } else { 0.0 };
                system.above[at] = if k + 1 < self.length { -outward * slopes.inside[at + lines] } else { 0.0 };
                system.diagonal[at] = 1.0 + (inward + outward) * slopes.inside[at];
            }
        }
        for l in 0..lines {
            system.diagonal[last + l] += implicit_s * self.film * slopes.face[last + l];
            bordered.give[l] = implicit_s * self.to_bath[l] * slopes.face[last + l];
        }
        system.eliminate();
        bordered.column.fill(0.0);
        bordered.column[last..].fill(implicit_s * self.film * slopes.bath);
        system.solve(&mut bordered.column);
        let back: f64 = bordered.give.iter().zip(&bordered.column[last..]).map(|(give, column)| give * column).sum();
        bordered.pivot = 1.0 + implicit_s * slopes.bath * self.to_bath.iter().sum::<f64>() - back;
    }
}

impl Bordered {
    /// Solves in place; `bath` is the bath's row.
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
pub(super) fn turn(from: &[f64], to: &mut [f64], rows: usize, columns: usize) {
    for row in 0..rows {
        for column in 0..columns {
            to[column * rows + row] = from[row * columns + column];
        }
    }
}
