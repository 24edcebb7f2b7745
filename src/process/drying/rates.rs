//! The right-hand side: how fast each ring loses water and the disc warms, and the slopes that the implicit part needs.
#![allow(clippy::indexing_slicing, reason = "a numeric kernel: all indices run over the grid that the vectors were made for")]

use super::air::AirNow;
use super::problem::{OpenFaces, Problem, Surface};
use crate::law::heat::LIQUID_WATER_HEAT;
use crate::law::moist_air::{GAS_CONSTANT, WATER_MOLAR_MASS, kelvin, latent_heat_j_kg, saturation_pa};
use crate::numeric::{DiscGrid, Half, LineSystem};

/// Least water content that laws are asked for, kg/kg.
pub(super) const LEAST_WATER: f64 = 1e-6;
/// Water content, kg/kg, below which the implicit part takes the slope of the activity that it has here.
///
/// The isotherms are level at zero: a face that a step leaves almost dry would have no damping, overshoot below zero and swing from
/// step to step. The method keeps its order whatever slope the implicit part has.
const DAMPED_BELOW: f64 = 0.01;

/// Vectors that every step uses again.
#[derive(Clone, Debug)]
pub(super) struct Work {
    pub(super) potential: Vec<f64>,
    pub(super) rate: Vec<f64>,
    pub(super) first: Vec<f64>,
    pub(super) second: Vec<f64>,
    pub(super) trial: Vec<f64>,
    pub(super) turned: Vec<f64>,
    pub(super) radial: LineSystem,
    pub(super) axial: LineSystem,
    /// ∂(dX/dt)/∂T of each ring, 1/(s K).
    pub(super) rate_with_warmth: Vec<f64>,
    /// The same through both implicit systems.
    pub(super) answer_to_warmth: Vec<f64>,
    /// ∂(dT/dt)/∂X of each ring, K/s; only rings at the faces have any.
    pub(super) warming_with_water: Vec<f64>,
    pub(super) kept_cooling: Vec<f64>,
    /// dJ/dX on side (by height), top and underside (by radius).
    pub(super) side_slope: Vec<f64>,
    pub(super) top_slope: Vec<f64>,
    pub(super) underside_slope: Vec<f64>,
}

/// What one look at the right-hand side gives besides the rates of the rings.
#[derive(Clone, Copy, Default)]
pub(super) struct DiscRates {
    pub(super) warming_k_s: f64,
    pub(super) warming_slope: f64,
    /// Of water at the reference content, over the square of the shrinkage.
    pub(super) diffusivity_m2_s: f64,
}

impl Work {
    /// Returns vectors for a grid.
    pub(super) fn new(grid: &DiscGrid) -> Self {
        let (radii, heights) = (grid.radii_m.len(), grid.heights_m.len());
        let zeros = vec![0.0; radii * heights];
        Self {
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
        }
    }

    /// Looks at the right-hand side: fills `rate` (dX/dt) and the slopes of the flux at the faces.
    pub(super) fn look(&mut self, problem: &Problem, water: &[f64], temperature_c: f64, air: &AirNow) -> DiscRates {
        let grid = &problem.grid;
        let (radii, heights) = (grid.radii_m.len(), grid.heights_m.len());
        let diffusion = problem.diffusion;
        for (potential, x) in self.potential.iter_mut().zip(water) {
            *potential = diffusion.potential(x.max(LEAST_WATER));
        }
        let mean_water = grid.mean(water);
        let lambda = problem.shrinkage(mean_water);
        let lambda2 = lambda * lambda;
        let diffusivity_m2_s = diffusion.at_m2_s(temperature_c) / lambda2;
        self.rate.fill(0.0);
        for i in 0..radii {
            let row = i * heights;
            for j in 0..heights - 1 {
                let flux = diffusivity_m2_s * grid.axial[j] * (self.potential[row + j + 1] - self.potential[row + j]);
                self.rate[row + j] += flux / grid.layer_m[j];
                self.rate[row + j + 1] -= flux / grid.layer_m[j + 1];
            }
        }
        for i in 0..radii - 1 {
            let (row, next) = (i * heights, (i + 1) * heights);
            let (inner, outer) = (
                diffusivity_m2_s * grid.radial[i] / grid.ring_area_m2[i],
                diffusivity_m2_s * grid.radial[i] / grid.ring_area_m2[i + 1],
            );
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
        DiscRates {
            warming_k_s: warms * (gain_w_k * (air.temperature_c - temperature_c) - latent * vapour_kg_s) / heat_j_k,
            warming_slope: -warms * (gain_w_k + latent * slope_kg_s_k) / heat_j_k,
            diffusivity_m2_s,
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
            if let Surface::Film { transfer_m_s, equilibrium_water } = problem.surface {
                let per_water = problem.solids_kg_m3() * transfer_m_s;
                return (per_water * (x - equilibrium_water), per_water, 0.0);
            }
            let activity = problem.sorption.water_activity(x.max(LEAST_WATER));
            let (_, slope) = problem.sorption.activity_and_slope(x.max(DAMPED_BELOW));
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
            (if grid.half == Half::Whole { underside } else { 0.0 }, 0, &mut self.underside_slope),
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
}

/// Returns the open area of the fresh part that is cut up, m².
fn open_area_m2(problem: &Problem) -> f64 {
    let grid = &problem.grid;
    let face: f64 = grid.ring_area_m2.iter().sum();
    let height: f64 = grid.layer_m.iter().sum();
    let underside = if grid.half == Half::Whole { problem.open.underside } else { 0.0 };
    (problem.open.top + underside) * face + problem.open.side * grid.rim_m * height
}
