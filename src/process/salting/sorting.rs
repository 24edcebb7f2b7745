//! One implicit stage: the layers are sorted into saturated and unsaturated ones until both kinds agree with what comes out.
#![allow(clippy::indexing_slicing, reason = "a numeric kernel: all indices run over the heights that the vectors were made for")]

use crate::numeric::LineSystem;

/// Sortings of the layers before a step is called too long.
const MOST_SORTINGS: u32 = 16;
/// Share of what a layer holds within which it counts as just saturated.
const HAIR: f64 = 1e-12;

/// The layers of a column within one step; the vectors are used again by every step.
pub(super) struct Layers {
    /// Water of each, kg per kg of salt-free solids of the whole column.
    pub(super) water: Vec<f64>,
    /// D X/(λ² h²) over the gap between neighbours, 1/s.
    pub(super) conductance: Vec<f64>,
    /// What a stage starts from.
    pub(super) known: Vec<f64>,
    /// Rates of the first and of the second stage, 1/s.
    pub(super) first: Vec<f64>,
    pub(super) second: Vec<f64>,
    /// Whether each is saturated.
    pub(super) full: Vec<bool>,
    salt_in_water: Vec<f64>,
    lines: LineSystem,
}

impl Layers {
    pub(super) fn new(nodes: usize) -> Self {
        let zeros = vec![0.0; nodes];
        Self {
            water: zeros.clone(),
            conductance: vec![0.0; nodes.saturating_sub(1)],
            known: zeros.clone(),
            first: zeros.clone(),
            second: zeros.clone(),
            full: vec![false; nodes],
            salt_in_water: zeros,
            lines: LineSystem::new(1, nodes),
        }
    }

    /// Solves salt = known + implicit_s · rate(salt), the rate into `second`; returns whether the layers could be sorted.
    pub(super) fn solve(&mut self, implicit_s: f64, saturated: f64) -> bool {
        (0..MOST_SORTINGS).any(|_| {
            self.fill_lines(implicit_s, saturated);
            self.lines.eliminate();
            self.lines.solve(&mut self.salt_in_water);
            self.second.fill(0.0);
            for (k, conductance) in self.conductance.iter().enumerate() {
                let flux = conductance * (self.salt_in_water[k + 1] - self.salt_in_water[k]);
                self.second[k] += flux;
                self.second[k + 1] -= flux;
            }
            self.sort(implicit_s, saturated)
        })
    }

    /// Fills the lines for the salt in the moisture of each layer: that of a saturated one is known.
    fn fill_lines(&mut self, implicit_s: f64, saturated: f64) {
        let mut down = 0.0;
        let above = self.conductance.iter().map(|conductance| implicit_s * conductance).chain([0.0]);
        for (k, (up, water)) in above.zip(&self.water).enumerate() {
            (self.lines.below[k], self.lines.diagonal[k], self.lines.above[k], self.salt_in_water[k]) =
                if self.full[k] { (0.0, 1.0, 0.0, saturated) } else { (-down, water + down + up, -up, self.known[k]) };
            down = up;
        }
    }

    /// Sorts the layers by what came out; returns whether they were sorted so before.
    fn sort(&mut self, implicit_s: f64, saturated: f64) -> bool {
        let mut sorted = true;
        let salts = self.known.iter().zip(&self.second).map(|(known, rate)| known + implicit_s * rate);
        for ((full, water), salt) in self.full.iter_mut().zip(&self.water).zip(salts) {
            let holds = water * saturated;
            // A hair's breadth beyond saturation is rounding, and sorting by it could go on for ever.
            let slack = HAIR * holds;
            let now_full = if *full { salt >= holds - slack } else { salt > holds + slack };
            sorted &= now_full == *full;
            *full = now_full;
        }
        sorted
    }
}
