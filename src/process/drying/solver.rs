//! The drying disc: water diffuses through rings of finite volume, evaporates at the open faces, and the disc shrinks and warms.
//!
//! For each ring, with λ the linear shrinkage and F Kirchhoff's potential,
//! ρₛ V dX/dt = (D(T)/λ²) ρₛ Σ (A/d)(F' − F) − λ² A J, and J = kₘ M/(R T) (a(X) p(T) − p_air);
//! for the whole disc C dT/dt = λ² A (h + h_rad)(T_air − T) − Δh E.
//!
//! Time is stepped by a linearly implicit method of second order with the two directions factored apart (ROS2; W. Hundsdorfer and
//! J. G. Verwer 2003, Numerical Solution of Time-Dependent Advection-Diffusion-Reaction Equations, section IV.5, from memory). It
//! keeps its order whatever is left out of the implicit part, so shrinkage and temperature may be explicit.
#![allow(clippy::indexing_slicing, reason = "a numeric kernel: all indices run over the grid that the vectors were made for")]

use super::DryingError;
use super::air::AirNow;
use crate::law::food_density::CHEESE_WATER_DENSITY;
use crate::law::heat::LIQUID_WATER_HEAT;
use crate::law::moist_air::{GAS_CONSTANT, WATER_MOLAR_MASS, kelvin, latent_heat_j_kg, saturation_pa};
use crate::law::moisture_diffusion::MoistureDiffusion;
use crate::law::sorption::Sorption;
use crate::numeric::{DiscGrid, LineSystem};

/// What stays the same while one disc dries.
#[derive(Clone, Debug)]
pub struct Problem {
    /// The rings.
    pub grid: DiscGrid,
    /// Water at the start, kg per kg of dry solids.
    pub start_water: f64,
    /// Temperature at the start.
    pub start_c: f64,
    /// How water moves inside.
    pub diffusion: MoistureDiffusion,
    /// How the solids hold it.
    pub sorption: Sorption,
    /// Density of the dry solids, kg/m³.
    pub solids_density_kg_m3: f64,
    /// Specific heat of the dry solids, J/(kg K).
    pub solids_heat_j_kg_k: f64,
    /// Share of each face that the air reaches.
    pub open: OpenFaces,
    /// Heat transfer by radiation, W/(m² K).
    pub radiation_w_m2_k: f64,
    /// Resistance of the coat to vapour, s/m.
    pub coat_s_m: f64,
    /// Whether the disc shrinks by the volume of the water it loses.
    pub shrinks: bool,
    /// Whether the disc has a temperature of its own; otherwise it is as warm as the air.
    pub warms: bool,
    /// How water leaves the faces.
    pub surface: Surface,
    /// Tolerance of a step: error of the water content relative to what is there.
    pub tolerance: f64,
}

/// How water leaves the faces.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Surface {
    /// It evaporates: the flux follows the water activity of the face and the vapour in the air.
    Evaporation,
    /// The flux is proportional to the excess over a fixed water content, J = ρₛ k (X − Xₑ); for checks against exact series.
    Film {
        /// k, m/s.
        transfer_m_s: f64,
        /// Xₑ, kg/kg.
        balance_water: f64,
    },
}

/// Share of each face that the air reaches, 0 to 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OpenFaces {
    /// The top.
    pub top: f64,
    /// The side.
    pub side: f64,
    /// The underside; not looked at where only the upper half is cut up.
    pub underside: f64,
}

impl Problem {
    /// Returns the dry solids of the fresh disc, kg/m³.
    fn solids_kg_m3(&self) -> f64 {
        1.0 / (1.0 / self.solids_density_kg_m3 + self.start_water / CHEESE_WATER_DENSITY.value)
    }

    /// Returns the linear shrinkage at a mean water content: the cube root of the volume, relative to the start.
    #[must_use]
    pub fn shrinkage(&self, mean_water: f64) -> f64 {
        if self.shrinks {
            ((1.0 / self.solids_density_kg_m3 + mean_water / CHEESE_WATER_DENSITY.value) * self.solids_kg_m3()).cbrt()
        } else {
            1.0
        }
    }
}

/// γ = ½ + √3/6: stable for both factored directions, and measured to need fewer steps here than the other usual values.
const GAMMA: f64 = 0.788_675_134_594_812_9;
/// First step, s: short against the drying of the skin.
const FIRST_STEP_S: f64 = 5.0;
/// Shortest step before the solver gives up, s.
const SHORTEST_STEP_S: f64 = 1e-3;
/// Least water content that laws are asked for, kg/kg.
const LEAST_WATER: f64 = 1e-6;
/// Error of the temperature that counts as much as one tolerance of the water, K per unit of tolerance.
const KELVIN_PER_TOLERANCE: f64 = 40.0;

/// A disc on its way.
#[derive(Clone, Debug)]
pub struct DiscRun<'a> {
    problem: &'a Problem,
    /// Water of each ring, kg/kg; the ring at radius i and height j stands at i·heights + j.
    water: Vec<f64>,
    /// Temperature of the disc.
    pub temperature_c: f64,
    /// Seconds since the start.
    pub at_s: f64,
    /// Steps taken, and steps refused.
    pub steps: (u32, u32),
    step_s: f64,
    work: Work,
}

/// Vectors that every step uses again.
#[derive(Clone, Debug)]
struct Work {
    potential: Vec<f64>,
    rate: Vec<f64>,
    first: Vec<f64>,
    second: Vec<f64>,
    trial: Vec<f64>,
    turned: Vec<f64>,
    radial: LineSystem,
    axial: LineSystem,
    /// ∂(dX/dt)/∂T of each ring, 1/(s K).
    rate_with_warmth: Vec<f64>,
    /// The same through both implicit systems.
    answer_to_warmth: Vec<f64>,
    /// ∂(dT/dt)/∂X of each ring, K/s; only rings at the faces have any.
    warming_with_water: Vec<f64>,
    kept_cooling: Vec<f64>,
    /// dJ/dX on side (by height), top and underside (by radius).
    side_slope: Vec<f64>,
    top_slope: Vec<f64>,
    underside_slope: Vec<f64>,
}

/// What one look at the right-hand side gives beside the rates.
#[derive(Clone, Copy, Default)]
struct Look {
    warming_k_s: f64,
    warming_slope: f64,
    spread: f64,
}

impl<'a> DiscRun<'a> {
    /// Returns the disc at the start.
    #[must_use]
    pub fn new(problem: &'a Problem) -> Self {
        let (radii, heights) = (problem.grid.radii_m.len(), problem.grid.heights_m.len());
        let zeros = vec![0.0; radii * heights];
        Self {
            problem,
            water: vec![problem.start_water; radii * heights],
            temperature_c: problem.start_c,
            at_s: 0.0,
            steps: (0, 0),
            step_s: FIRST_STEP_S,
            work: Work {
                potential: zeros.clone(),
                rate: zeros.clone(),
                first: zeros.clone(),
                second: zeros.clone(),
                trial: zeros.clone(),
                rate_with_warmth: zeros.clone(),
                answer_to_warmth: zeros.clone(),
                warming_with_water: zeros.clone(),
                kept_cooling: zeros.clone(),
                turned: zeros,
                radial: LineSystem::new(heights, radii),
                axial: LineSystem::new(radii, heights),
                side_slope: vec![0.0; heights],
                top_slope: vec![0.0; radii],
                underside_slope: vec![0.0; radii],
            },
        }
    }

    /// Returns what stays the same.
    #[must_use]
    pub const fn problem(&self) -> &'a Problem {
        self.problem
    }

    /// Returns the mean water content, kg/kg.
    #[must_use]
    pub fn mean_water(&self) -> f64 {
        mean(&self.problem.grid, &self.water)
    }

    /// Returns the water content at the centre of the disc, kg/kg.
    #[must_use]
    pub fn centre_water(&self) -> f64 {
        self.water[self.problem.grid.middle_layer()]
    }

    /// Returns the water content of the middle of the top face, kg/kg.
    #[must_use]
    pub fn top_water(&self) -> f64 {
        self.water[self.problem.grid.heights_m.len() - 1]
    }

    /// Dries until `to_s`, calling `after_step` after each step.
    ///
    /// # Arguments
    /// * `air`: the air at a time in seconds; it should not jump inside one call
    ///
    /// # Errors
    /// [`DryingError::NoSolution`] if the step becomes too short.
    pub fn advance(
        &mut self,
        to_s: f64,
        air: &dyn Fn(f64) -> AirNow,
        after_step: &mut dyn FnMut(&Self),
    ) -> Result<(), DryingError> {
        if !self.problem.warms {
            self.temperature_c = air(self.at_s).temperature_c;
        }
        while self.at_s < to_s {
            let left_s = to_s - self.at_s;
            // Two equal steps to the end rather than one long and one tiny one.
            let planned_s = self.step_s;
            let step_s = if planned_s >= left_s {
                left_s
            } else if 2.0 * planned_s > left_s {
                0.5 * left_s
            } else {
                planned_s
            };
            let (error, warmed_k) = self.try_step(step_s, air);
            let factor = if error.is_finite() { (0.85 / error.max(1e-4).sqrt()).clamp(0.25, 2.5) } else { 0.25 };
            if error <= 1.0 {
                std::mem::swap(&mut self.water, &mut self.work.trial);
                self.temperature_c += warmed_k;
                self.at_s = if step_s.to_bits() == left_s.to_bits() { to_s } else { self.at_s + step_s };
                self.steps.0 += 1;
                // A step cut short to meet the end says little about the next one.
                self.step_s = if step_s < planned_s { planned_s.max(step_s * factor) } else { step_s * factor };
                after_step(self);
            } else {
                self.steps.1 += 1;
                self.step_s = step_s * factor;
                if self.step_s < SHORTEST_STEP_S {
                    return Err(DryingError::NoSolution { hours: self.at_s / 3600.0 });
                }
            }
        }
        Ok(())
    }

    /// Works out one step into `work.trial`; returns its error in tolerances and the warming of the disc.
    fn try_step(&mut self, step_s: f64, air: &dyn Fn(f64) -> AirNow) -> (f64, f64) {
        let (problem, temperature_c) = (self.problem, self.temperature_c);
        let work = &mut self.work;
        let look = work.look(problem, &self.water, temperature_c, &air(self.at_s));
        work.assemble(problem, &self.water, step_s, look);
        let implicit_s = GAMMA * step_s;
        work.first.copy_from_slice(&work.rate);
        let warm_first = work.solve_coupled(&problem.grid, Which::First, look.warming_k_s, look.warming_slope, implicit_s);
        for ((trial, water), first) in work.trial.iter_mut().zip(&self.water).zip(&work.first) {
            *trial = water + step_s * first;
        }
        let trial = std::mem::take(&mut work.trial);
        let later = work.look(problem, &trial, temperature_c + step_s * warm_first, &air(self.at_s + step_s));
        work.trial = trial;
        for ((second, rate), first) in work.second.iter_mut().zip(&work.rate).zip(&work.first) {
            *second = rate - 2.0 * first;
        }
        let warm_second =
            work.solve_coupled(&problem.grid, Which::Second, later.warming_k_s - 2.0 * warm_first, look.warming_slope, implicit_s);
        let heights = problem.grid.heights_m.len();
        let mut square = 0.0;
        for ((i, area), trials) in problem.grid.ring_area_m2.iter().enumerate().zip(work.trial.chunks_exact_mut(heights)) {
            for (j, trial) in trials.iter_mut().enumerate() {
                let at = i * heights + j;
                let (water, first, second) = (self.water[at], work.first[at], work.second[at]);
                let error = 0.5 * step_s * (first + second) / (problem.tolerance * (0.05 + water.abs()));
                square += area * problem.grid.layer_m[j] * error * error;
                *trial = water + step_s * (1.5 * first + 0.5 * second);
            }
        }
        let water_error = (square / problem.grid.volume_m3()).sqrt();
        let (warmed_k, warmth_error) = if problem.warms {
            (
                step_s * (1.5 * warm_first + 0.5 * warm_second),
                0.5 * step_s * (warm_first + warm_second) / (problem.tolerance * KELVIN_PER_TOLERANCE),
            )
        } else {
            (air(self.at_s + step_s).temperature_c - temperature_c, 0.0)
        };
        (water_error.max(warmth_error.abs()), warmed_k)
    }
}

/// Returns the mean over the volume.
fn mean(grid: &DiscGrid, water: &[f64]) -> f64 {
    let layers = |chunk: &[f64]| chunk.iter().zip(&grid.layer_m).map(|(x, layer)| x * layer).sum::<f64>();
    let sum: f64 = water.chunks_exact(grid.layer_m.len()).zip(&grid.ring_area_m2).map(|(chunk, area)| area * layers(chunk)).sum();
    sum / grid.volume_m3()
}

impl Work {
    /// Looks at the right-hand side: fills `rate` (dX/dt) and the slopes of the flux at the faces.
    fn look(&mut self, problem: &Problem, water: &[f64], temperature_c: f64, air: &AirNow) -> Look {
        let grid = &problem.grid;
        let (radii, heights) = (grid.radii_m.len(), grid.heights_m.len());
        let diffusion = problem.diffusion;
        for (potential, x) in self.potential.iter_mut().zip(water) {
            *potential = diffusion.potential(x.max(LEAST_WATER));
        }
        let mean_water = mean(grid, water);
        let lambda = problem.shrinkage(mean_water);
        let lambda2 = lambda * lambda;
        let spread = diffusion.at_m2_s(temperature_c) / lambda2;
        self.rate.fill(0.0);
        for i in 0..radii {
            let row = i * heights;
            for j in 0..heights - 1 {
                let flux = spread * grid.axial[j] * (self.potential[row + j + 1] - self.potential[row + j]);
                self.rate[row + j] += flux / grid.layer_m[j];
                self.rate[row + j + 1] -= flux / grid.layer_m[j + 1];
            }
        }
        for i in 0..radii - 1 {
            let (row, next) = (i * heights, (i + 1) * heights);
            let (inner, outer) =
                (spread * grid.radial[i] / grid.ring_area_m2[i], spread * grid.radial[i] / grid.ring_area_m2[i + 1]);
            for j in 0..heights {
                let drop = self.potential[next + j] - self.potential[row + j];
                self.rate[row + j] += inner * drop;
                self.rate[next + j] -= outer * drop;
            }
        }
        let log_slope = diffusion.log_slope_per_k(temperature_c);
        for (with_warmth, rate) in self.rate_with_warmth.iter_mut().zip(&self.rate) {
            *with_warmth = rate * log_slope;
        }
        self.warming_with_water.fill(0.0);
        let (vapour_kg_s, slope_kg_s_k) = self.evaporate(problem, water, temperature_c, air, lambda2);
        let solids_kg = grid.volume_m3() * problem.solids_kg_m3();
        let heat_j_k = solids_kg * (problem.solids_heat_j_kg_k + mean_water * LIQUID_WATER_HEAT.value);
        let gain_w_k = lambda2 * open_area_m2(problem) * (air.heat_w_m2_k + problem.radiation_w_m2_k);
        let latent = latent_heat_j_kg(temperature_c);
        let warms = f64::from(u8::from(problem.warms));
        let cooling = -warms * lambda2 * latent / heat_j_k;
        for slope in &mut self.warming_with_water {
            *slope *= cooling;
        }
        Look {
            warming_k_s: warms * (gain_w_k * (air.temperature_c - temperature_c) - latent * vapour_kg_s) / heat_j_k,
            warming_slope: -warms * (gain_w_k + latent * slope_kg_s_k) / heat_j_k,
            spread,
        }
    }

    /// Takes the vapour from the rings at the open faces; returns its rate and the slope of that with the disc's temperature.
    fn evaporate(&mut self, problem: &Problem, water: &[f64], temperature_c: f64, air: &AirNow, lambda2: f64) -> (f64, f64) {
        let grid = &problem.grid;
        let (radii, heights) = (grid.radii_m.len(), grid.heights_m.len());
        let per_solids = lambda2 / problem.solids_kg_m3();
        let film = 1.0 / (1.0 / air.vapour_m_s + problem.coat_s_m) * WATER_MOLAR_MASS.value
            / (GAS_CONSTANT.value * kelvin(0.5 * (temperature_c + air.temperature_c)));
        let surface_pa = saturation_pa(temperature_c);
        let surface_slope = (saturation_pa(temperature_c + 0.01) - saturation_pa(temperature_c - 0.01)) / 0.02;
        let flux = |x: f64| {
            if let Surface::Film { transfer_m_s, balance_water } = problem.surface {
                let per_water = problem.solids_kg_m3() * transfer_m_s;
                return (per_water * (x - balance_water), per_water, 0.0);
            }
            let (activity, slope) = problem.sorption.activity_and_slope(x.max(LEAST_WATER));
            (film * (activity * surface_pa - air.vapour_pa), film * slope * surface_pa, film * activity * surface_slope)
        };
        let mut vapour = 0.0;
        let mut vapour_slope = 0.0;
        let OpenFaces { top, side, underside } = problem.open;
        if side > 0.0 {
            let row = (radii - 1) * heights;
            let per_ring = side * grid.rim_m / grid.ring_area_m2[radii - 1];
            for j in 0..heights {
                let (j_flux, slope, warm) = flux(water[row + j]);
                self.rate[row + j] -= per_solids * per_ring * j_flux;
                self.side_slope[j] = per_solids * per_ring * slope;
                self.rate_with_warmth[row + j] -= per_solids * per_ring * warm;
                self.warming_with_water[row + j] += side * grid.rim_m * grid.layer_m[j] * slope;
                vapour += side * grid.rim_m * grid.layer_m[j] * j_flux;
                vapour_slope += side * grid.rim_m * grid.layer_m[j] * warm;
            }
        }
        for (open, j, slopes) in [
            (top, heights - 1, &mut self.top_slope),
            (if grid.half == crate::numeric::Half::Whole { underside } else { 0.0 }, 0, &mut self.underside_slope),
        ] {
            if open > 0.0 {
                let per_layer = open / grid.layer_m[j];
                for i in 0..radii {
                    let (j_flux, slope, warm) = flux(water[i * heights + j]);
                    self.rate[i * heights + j] -= per_solids * per_layer * j_flux;
                    slopes[i] = per_solids * per_layer * slope;
                    self.rate_with_warmth[i * heights + j] -= per_solids * per_layer * warm;
                    self.warming_with_water[i * heights + j] += open * grid.ring_area_m2[i] * slope;
                    vapour += open * grid.ring_area_m2[i] * j_flux;
                    vapour_slope += open * grid.ring_area_m2[i] * warm;
                }
            }
        }
        (lambda2 * vapour, lambda2 * vapour_slope)
    }

    /// Fills and eliminates both implicit systems, I − γ·step·(∂rate/∂X in one direction).
    fn assemble(&mut self, problem: &Problem, water: &[f64], step_s: f64, look: Look) {
        let grid = &problem.grid;
        let (radii, heights) = (grid.radii_m.len(), grid.heights_m.len());
        let implicit_s = GAMMA * step_s;
        let diffusion = problem.diffusion;
        for (turned, x) in self.turned.iter_mut().zip(water) {
            *turned = implicit_s * look.spread * diffusion.relative(x.max(LEAST_WATER));
        }
        let strength = &self.turned;
        for i in 0..radii {
            let area = grid.ring_area_m2[i];
            let inward = if i > 0 { grid.radial[i - 1] / area } else { 0.0 };
            let outward = if i + 1 < radii { grid.radial[i] / area } else { 0.0 };
            for j in 0..heights {
                let at = i * heights + j;
                self.radial.below[at] = if i > 0 { -inward * strength[at - heights] } else { 0.0 };
                self.radial.above[at] = if i + 1 < radii { -outward * strength[at + heights] } else { 0.0 };
                self.radial.diagonal[at] = 1.0 + (inward + outward) * strength[at];
            }
        }
        let rim = (radii - 1) * heights;
        for j in 0..heights {
            self.radial.diagonal[rim + j] += implicit_s * self.side_slope[j];
        }
        for j in 0..heights {
            let layer = grid.layer_m[j];
            let down = if j > 0 { grid.axial[j - 1] / layer } else { 0.0 };
            let up = if j + 1 < heights { grid.axial[j] / layer } else { 0.0 };
            for i in 0..radii {
                let (at, from) = (j * radii + i, i * heights + j);
                self.axial.below[at] = if j > 0 { -down * strength[from - 1] } else { 0.0 };
                self.axial.above[at] = if j + 1 < heights { -up * strength[from + 1] } else { 0.0 };
                self.axial.diagonal[at] = 1.0 + (down + up) * strength[from];
            }
        }
        for i in 0..radii {
            self.axial.diagonal[(heights - 1) * radii + i] += implicit_s * self.top_slope[i];
            self.axial.diagonal[i] += implicit_s * self.underside_slope[i];
        }
        self.radial.eliminate();
        self.axial.eliminate();
    }

    /// Solves the implicit system of all rings and the disc's temperature for one stage, in place; returns the stage's warming.
    ///
    /// Eliminated by blocks: x = M⁻¹ r + γh T M⁻¹ b and T (1 − γh s − (γh)² c·M⁻¹ b) = r_T + γh c·M⁻¹ r, with b how the rings answer to
    /// warmth and c how the disc cools as its faces are wet. Left explicit, this coupling would force steps of a minute.
    fn solve_coupled(&mut self, grid: &DiscGrid, which: Which, warming_k_s: f64, warming_slope: f64, implicit_s: f64) -> f64 {
        if which == Which::First {
            self.answer_to_warmth.copy_from_slice(&self.rate_with_warmth);
            solve_both(&self.radial, &self.axial, grid, &mut self.answer_to_warmth, &mut self.turned);
            // The second stage uses the first's coupling, although its own look has overwritten these.
            self.kept_cooling.copy_from_slice(&self.warming_with_water);
        }
        let stage = if which == Which::First { &mut self.first } else { &mut self.second };
        solve_both(&self.radial, &self.axial, grid, stage, &mut self.turned);
        let dot = |x: &[f64]| x.iter().zip(&self.kept_cooling).map(|(x, c)| x * c).sum::<f64>();
        let pivot = 1.0 - implicit_s * warming_slope - implicit_s * implicit_s * dot(&self.answer_to_warmth);
        let warmed = (warming_k_s + implicit_s * dot(stage)) / pivot;
        for (x, answer) in stage.iter_mut().zip(&self.answer_to_warmth) {
            *x += implicit_s * warmed * answer;
        }
        warmed
    }
}

/// Which stage of a step.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Which {
    First,
    Second,
}

/// Solves for one direction after the other, in place.
fn solve_both(radial: &LineSystem, axial: &LineSystem, grid: &DiscGrid, x: &mut [f64], turned: &mut [f64]) {
    let (radii, heights) = (grid.radii_m.len(), grid.heights_m.len());
    radial.solve(x);
    for i in 0..radii {
        for j in 0..heights {
            turned[j * radii + i] = x[i * heights + j];
        }
    }
    axial.solve(turned);
    for i in 0..radii {
        for j in 0..heights {
            x[i * heights + j] = turned[j * radii + i];
        }
    }
}

/// Returns the open area of the fresh part that is cut up, m².
fn open_area_m2(problem: &Problem) -> f64 {
    let grid = &problem.grid;
    let face: f64 = grid.ring_area_m2.iter().sum();
    let height: f64 = grid.layer_m.iter().sum();
    let underside = if grid.half == crate::numeric::Half::Whole { problem.open.underside } else { 0.0 };
    (problem.open.top + underside) * face + problem.open.side * grid.rim_m * height
}
