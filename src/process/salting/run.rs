//! The salt of one cheese on its way from the faces inwards: a column of layers through the thickness.
//!
//! With s the salt of a layer and X its water, both per kg of salt-free solids, and λ the stretch of the thickness,
//! ∂s/∂t = ∂/∂z (D X/λ² ∂c/∂z), c = min(s/X, the saturated brine). What a layer holds beyond saturation lies there undissolved: on a face
//! as the salt that was sprinkled on, in a dry crust as crystals. No salt leaves the column.
//!
//! Not in it: salt carried by moving water, water drawn out by the salt, the side, and that drier solids obstruct the salt more.
//!
//! Time is stepped by a diagonally implicit method of second order, L-stable (R. Alexander 1977, from memory). In each stage the layers are
//! sorted into saturated and unsaturated ones until both kinds agree with what comes out.
#![allow(clippy::indexing_slicing, reason = "a numeric kernel: all indices run over the heights that the vectors were made for")]

use super::column::{Face, SaltColumn};
use super::sorting::Layers;
use crate::law::salt::saturated_kg_kg;
use crate::numeric::{Stepping, TooShort};

/// γ of the method, 1 − 1/√2.
const STAGE: f64 = 1.0 - std::f64::consts::FRAC_1_SQRT_2;
/// First step after salt is sprinkled on, s.
const FIRST_STEP_S: f64 = 20.0;
/// Shortest step before the solver gives up, s.
const SHORTEST_STEP_S: f64 = 1e-3;
/// Tolerance of a step: error of the salt relative to the mean and a little more. The grid errs ten times as much as steps of this size.
const TOLERANCE: f64 = 4e-2;
/// Salt, kg/kg of solids, that counts as much as the mean in the tolerance.
const LITTLE_SALT: f64 = 1e-3;
/// Least water of a node, kg/kg: a layer without any would have no equation.
const LEAST_WATER: f64 = 1e-6;

/// Why the way of the salt cannot be calculated.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error(
    "the salt inside the cheese could not be calculated: the step became too small after {hours:.2} h; choose values closer to those of a kitchen"
)]
pub struct SaltStuck {
    /// How far it came.
    pub hours: f64,
}

/// The water of a column at a time, s: fills the kg per kg of salt-free solids of each node and returns D/λ², m²/s.
pub type WaterAt<'a> = &'a dyn Fn(f64, &mut [f64]) -> f64;

/// A column on its way.
///
/// # Example
/// ```
/// use vatsketch::process::{Face, SaltColumn, SaltRun};
/// let water_at = |_: f64, water: &mut [f64]| { water.fill(1.6); 2.4e-10 };
/// let mut run = SaltRun::new(SaltColumn::unsalted(24.0), 0.0, &water_at);
/// run.sprinkle(Face::Top, 0.03);
/// run.advance(3600.0 * 20.0, &mut |_| ())?;
/// assert_eq!(run.on_the_faces(), 0.0);
/// assert!((run.column.salt_in_all() - 0.03).abs() < 1e-15);
/// # Ok::<(), vatsketch::process::SaltStuck>(())
/// ```
pub struct SaltRun<'a> {
    /// Where the salt is.
    pub column: SaltColumn,
    /// Seconds on the clock of the water.
    pub at_s: f64,
    /// Tolerance of a step.
    pub tolerance: f64,
    /// Salt in saturated moisture, kg per kg of water.
    pub saturated: f64,
    water_at: WaterAt<'a>,
    stepping: Stepping,
    node_water: Vec<f64>,
    layers: Layers,
}

impl<'a> SaltRun<'a> {
    /// Returns a column at the start, at a time on the clock of its water.
    #[must_use]
    pub fn new(column: SaltColumn, at_s: f64, water_at: WaterAt<'a>) -> Self {
        let nodes = column.heights.len();
        let mut run = Self {
            column,
            at_s,
            tolerance: TOLERANCE,
            saturated: saturated_kg_kg(),
            water_at,
            stepping: Stepping::new(FIRST_STEP_S, SHORTEST_STEP_S),
            node_water: vec![0.0; nodes],
            layers: Layers::new(nodes),
        };
        run.look(at_s);
        run
    }

    /// Sprinkles salt on a face, kg per kg of salt-free solids; the steps begin short again.
    pub fn sprinkle(&mut self, face: Face, salt: f64) {
        self.column.sprinkle(face, salt);
        self.stepping.at_most(FIRST_STEP_S);
    }

    /// Returns how many steps were taken, and how many were refused.
    #[must_use]
    pub const fn steps(&self) -> (u32, u32) {
        self.stepping.counts()
    }

    /// Returns the salt in the moisture of a node, kg per kg of water.
    #[must_use]
    pub fn salt_in_water(&self, node: usize) -> f64 {
        (self.column.salt[node] / self.layers.water[node]).min(self.saturated)
    }

    /// Returns the salt in the moisture of the faces, the mean of both, kg per kg of water.
    #[must_use]
    pub fn on_average_at_the_faces(&self) -> f64 {
        0.5 * (self.salt_in_water(0) + self.salt_in_water(self.layers.water.len() - 1))
    }

    /// Returns the salt in the moisture at the centre, kg per kg of water.
    #[must_use]
    pub fn at_the_centre(&self) -> f64 {
        self.salt_in_water(self.layers.water.len() / 2)
    }

    /// Returns all the water of the column, kg per kg of salt-free solids.
    #[must_use]
    pub fn water_in_all(&self) -> f64 {
        self.layers.water.iter().sum()
    }

    /// Returns the salt that lies undissolved, kg per kg of salt-free solids: on the faces, and as crystals where a crust is too dry.
    #[must_use]
    pub fn undissolved(&self) -> f64 {
        (0..self.layers.water.len()).map(|node| self.undissolved_at(node)).sum()
    }

    /// Returns the salt that lies undissolved on the faces alone.
    #[must_use]
    pub fn on_the_faces(&self) -> f64 {
        self.undissolved_at(0) + self.undissolved_at(self.layers.water.len() - 1)
    }

    fn undissolved_at(&self, node: usize) -> f64 {
        (self.column.salt[node] - self.saturated * self.layers.water[node]).max(0.0)
    }

    /// Goes on until `to_s`, calling `after_step` after each step.
    ///
    /// # Errors
    /// [`SaltStuck`] if the step becomes too short, which no column of finite numbers does.
    pub fn advance(&mut self, to_s: f64, after_step: &mut dyn FnMut(&Self)) -> Result<(), SaltStuck> {
        if self.at_s < to_s && self.column.salt_in_all() <= 0.0 {
            // Without salt nothing moves but the water.
            self.at_s = to_s;
            self.look(to_s);
            after_step(self);
        }
        while self.at_s < to_s {
            let mut stepping = self.stepping;
            let step = stepping.step(self.at_s, to_s, |step_s| (self.try_step(step_s), ()));
            self.stepping = stepping;
            let step = step.map_err(|TooShort { at }| SaltStuck { hours: at / 3600.0 })?;
            for (salt, (first, second)) in self.column.salt.iter_mut().zip(self.layers.first.iter().zip(&self.layers.second)) {
                *salt += step.length * ((1.0 - STAGE) * first + STAGE * second);
            }
            self.at_s = step.at;
            after_step(self);
        }
        Ok(())
    }

    /// Looks at the water at a time: fills the water of the layers and what conducts between them.
    fn look(&mut self, at_s: f64) {
        let (column, node_water, layers) = (&self.column, &mut self.node_water, &mut self.layers);
        let spread_m2_s = (self.water_at)(at_s, node_water);
        let thickness_m = 0.001 * column.thickness_mm;
        let spread_per_s = spread_m2_s / (thickness_m * thickness_m);
        for ((water, node), share) in layers.water.iter_mut().zip(node_water.iter_mut()).zip(&column.layers) {
            *node = node.max(LEAST_WATER);
            *water = *node * share;
        }
        for (k, conductance) in layers.conductance.iter_mut().enumerate() {
            let gap = column.heights[k + 1] - column.heights[k];
            *conductance = spread_per_s * 0.5 * (node_water[k] + node_water[k + 1]) / gap;
        }
    }

    /// Calculates the rates of both stages of one step; returns its error in tolerances.
    fn try_step(&mut self, step_s: f64) -> f64 {
        let implicit_s = STAGE * step_s;
        self.layers.known.copy_from_slice(&self.column.salt);
        self.look(self.at_s + implicit_s);
        let first_done = self.layers.solve(implicit_s, self.saturated);
        std::mem::swap(&mut self.layers.first, &mut self.layers.second);
        self.look(self.at_s + step_s);
        let layers = &mut self.layers;
        for ((known, salt), first) in layers.known.iter_mut().zip(&self.column.salt).zip(&layers.first) {
            *known = salt + (1.0 - STAGE) * step_s * first;
        }
        let second_done = layers.solve(implicit_s, self.saturated);
        if !(first_done && second_done) {
            return f64::INFINITY;
        }
        let mut square = 0.0;
        for (k, (first, second)) in layers.first.iter().zip(&layers.second).enumerate() {
            let error = implicit_s * (second - first);
            // What lies undissolved has no density: its error counts once, not per share of the thickness.
            square += if layers.full[k] { error * error } else { error * error / self.column.layers[k] };
        }
        square.sqrt() / (self.tolerance * (LITTLE_SALT + self.column.salt_in_all()))
    }
}
