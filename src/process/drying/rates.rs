//! The right-hand side: how fast each ring loses water and the disc warms, and the slopes that the implicit part needs.
#![allow(
    clippy::indexing_slicing,
    clippy::inline_always,
    clippy::needless_range_loop,
    reason = "a numeric kernel: all indices run over the grid that the vectors were made for, and a loop goes several at a time only where no call is left in it"
)]

use super::air::AirNow;
use super::problem::Problem;
use super::shape::{Conductances, Shape};
use super::skin::{LEAST_WATER, Skin};
use crate::law::heat::LIQUID_WATER_HEAT;
use crate::law::moist_air::latent_heat_j_kg;
use crate::numeric::{Half, LANES, LineSystem, dot_in_lanes};

/// Vectors that every step uses again, all laid out as [`Shape`] says.
#[derive(Clone, Debug)]
pub(super) struct Work {
    pub(super) shape: Shape,
    /// Area of each ring and height of each layer; none beyond them.
    pub(super) area_m2: Vec<f64>,
    pub(super) layer_m: Vec<f64>,
    pub(super) volume_m3: f64,
    solids_kg: f64,
    open_area_m2: f64,
    pub(super) along_radius: Conductances,
    pub(super) along_height: Conductances,
    /// Water now, and where the step leads.
    pub(super) now: Vec<f64>,
    pub(super) trial: Vec<f64>,
    /// Kirchhoff's potential, with a lane before it and a lane after it, so that every ring has a neighbour.
    potential: Vec<f64>,
    /// Diffusivity relative to the reference, and the same on its side.
    pub(super) strength: Vec<f64>,
    pub(super) rate: Vec<f64>,
    pub(super) first: Vec<f64>,
    pub(super) second: Vec<f64>,
    /// ∂(dX/dt)/∂T of each ring, 1/(s K); then the same through both implicit systems.
    pub(super) answer_to_warmth: Vec<f64>,
    /// What is solved along the height, on its side.
    pub(super) turned: Vec<f64>,
    pub(super) turned_answer: Vec<f64>,
    pub(super) radial: LineSystem,
    pub(super) axial: LineSystem,
    pub(super) skin: Skin,
}

/// What one look at the right-hand side gives besides the rates of the rings.
#[derive(Clone, Copy, Default)]
pub(super) struct DiscRates {
    pub(super) warming_k_s: f64,
    /// Only where slopes were asked for.
    pub(super) warming_slope: f64,
    /// Of water at the reference content, over the square of the shrinkage.
    pub(super) diffusivity_m2_s: f64,
}

/// At which water the right-hand side is looked at.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum At {
    /// Where the step begins, with slopes.
    Now,
    /// Where the first stage leads, without.
    Trial,
}

impl Work {
    /// Returns vectors for a problem.
    pub(super) fn new(problem: &Problem) -> Self {
        let (grid, shape) = (&problem.grid, Shape::of(&problem.grid));
        let zeros = vec![0.0; shape.size()];
        let padded = |values: &[f64], length: usize| {
            let mut values = values.to_vec();
            values.resize(length, 0.0);
            values
        };
        let open = problem.open;
        let underside = if grid.half == Half::Whole { open.underside } else { 0.0 };
        let (face_m2, height_m): (f64, f64) = (grid.ring_area_m2.iter().sum(), grid.layer_m.iter().sum());
        Self {
            area_m2: padded(&grid.ring_area_m2, shape.rows),
            layer_m: padded(&grid.layer_m, shape.columns),
            volume_m3: grid.volume_m3(),
            solids_kg: grid.volume_m3() * problem.solids_kg_m3(),
            open_area_m2: (open.top + underside) * face_m2 + open.side * grid.rim_m * height_m,
            along_radius: Conductances::of(&grid.radial, &grid.ring_area_m2, shape.rows),
            along_height: Conductances::of(&grid.axial, &grid.layer_m, shape.columns),
            // What lies beyond the rings holds water too, so that no law is asked for what is not there.
            now: vec![problem.start_water; shape.size()],
            trial: vec![problem.start_water; shape.size()],
            potential: vec![0.0; shape.size() + 2 * LANES],
            strength: zeros.clone(),
            rate: zeros.clone(),
            first: zeros.clone(),
            second: zeros.clone(),
            answer_to_warmth: zeros.clone(),
            turned: zeros.clone(),
            turned_answer: zeros,
            radial: LineSystem::new(shape.columns, shape.radii),
            axial: LineSystem::new(shape.rows, shape.heights),
            skin: Skin::new(problem, shape),
            shape,
        }
    }

    /// Looks at the right-hand side: fills `rate` (dX/dt) and, where the step begins, how everything answers to water and warmth.
    #[inline(always)]
    pub(super) fn look(&mut self, problem: &Problem, at: At, temperature_c: f64, air: &AirNow) -> DiscRates {
        let diffusion = problem.diffusion;
        let water = if at == At::Now { &self.now } else { &self.trial };
        let with_slopes = at == At::Now;
        let potential = &mut self.potential[LANES..][..water.len()];
        if with_slopes {
            diffusion.fill(water, LEAST_WATER, potential, &mut self.strength);
        } else {
            // The strength is that of the beginning; here the turned vector takes what nobody reads.
            diffusion.fill(water, LEAST_WATER, potential, &mut self.turned);
        }
        let mean_water = sum_over_volume(water, &self.area_m2, &self.layer_m, self.shape.columns) / self.volume_m3;
        let lambda = problem.shrinkage(mean_water);
        let lambda2 = lambda * lambda;
        let diffusivity_m2_s = diffusion.at_m2_s(temperature_c) / lambda2;
        self.diffuse(diffusivity_m2_s);
        let warms = f64::from(u8::from(problem.warms));
        let water = if with_slopes { &self.now } else { &self.trial };
        let warmth = if with_slopes {
            let log_slope = diffusion.log_slope_per_k(temperature_c);
            for (answer, rate) in self.answer_to_warmth.iter_mut().zip(&self.rate) {
                *answer = rate * log_slope;
            }
            Some(self.answer_to_warmth.as_mut_slice())
        } else {
            None
        };
        let vapour = self.skin.evaporate(problem, water, (temperature_c, air), lambda2, &mut self.rate, warmth);
        let heat_j_k = self.solids_kg * (problem.solids_heat_j_kg_k + mean_water * LIQUID_WATER_HEAT.value);
        let gain_w_k = lambda2 * self.open_area_m2 * (air.heat_w_m2_k + problem.radiation_w_m2_k);
        let latent = latent_heat_j_kg(temperature_c);
        if with_slopes {
            self.skin.set_cooling(-warms * lambda2 * latent / heat_j_k);
        }
        DiscRates {
            warming_k_s: warms * (gain_w_k * (air.temperature_c - temperature_c) - latent * vapour.kg_s) / heat_j_k,
            warming_slope: -warms * (gain_w_k + latent * vapour.kg_s_k) / heat_j_k,
            diffusivity_m2_s,
        }
    }

    /// Fills in what flows between neighbours; each flow is calculated from either side, so that nothing waits for another ring.
    #[inline(always)]
    fn diffuse(&mut self, diffusivity_m2_s: f64) {
        let Shape { radii, columns, .. } = self.shape;
        let (inward, _) = self.along_height.inward.as_chunks::<LANES>();
        let (outward, _) = self.along_height.outward.as_chunks::<LANES>();
        for i in 0..radii {
            let row = |at: usize| self.potential[at..at + columns].as_chunks::<LANES>().0;
            let here = LANES + i * columns;
            // At the axis and at the rim nothing flows, whatever stands beyond.
            let inner = if i > 0 { here - columns } else { here };
            let outer = if i + 1 < radii { here + columns } else { here };
            let (radial_in, radial_out) = (self.along_radius.inward[i], self.along_radius.outward[i]);
            let rates = self.rate[i * columns..(i + 1) * columns].as_chunks_mut::<LANES>().0;
            let along = row(here - 1).iter().zip(row(here + 1)).zip(inward.iter().zip(outward));
            let across = row(here).iter().zip(row(inner)).zip(row(outer));
            for ((rate, ((below, above), (inward, outward))), ((own, inner), outer)) in rates.iter_mut().zip(along).zip(across) {
                for l in 0..LANES {
                    let axial = inward[l] * (below[l] - own[l]) + outward[l] * (above[l] - own[l]);
                    let radial = radial_in * (inner[l] - own[l]) + radial_out * (outer[l] - own[l]);
                    rate[l] = diffusivity_m2_s * (axial + radial);
                }
            }
        }
    }
}

/// Returns the sum of a quantity over the volume.
#[inline(always)]
fn sum_over_volume(values: &[f64], area_m2: &[f64], layer_m: &[f64], columns: usize) -> f64 {
    let rings = values.chunks_exact(columns).zip(area_m2);
    rings.map(|(row, area)| area * dot_in_lanes(row, layer_m)).sum()
}
