//! The rings at the open faces: where water leaves the disc, and how its flux answers to water and warmth.
#![allow(
    clippy::indexing_slicing,
    clippy::inline_always,
    reason = "a numeric kernel: all indices run over the grid that the vectors were made for, and a loop goes several at a time only where no call is left in it"
)]

use super::air::AirNow;
use super::problem::{OpenFaces, Problem, Surface};
use super::shape::Shape;
use crate::law::moist_air::{GAS_CONSTANT, WATER_MOLAR_MASS, kelvin, saturation_pa};
use crate::numeric::{Half, LineSystem, in_lanes};

/// Least water content that laws are asked for, kg/kg.
pub(super) const LEAST_WATER: f64 = 1e-6;
/// Water content, kg/kg, below which the implicit part takes the slope of the activity that it has here.
///
/// The isotherms are level at zero: a face that a step leaves almost dry would have no damping, overshoot below zero and swing from
/// step to step. The method keeps its order whatever slope the implicit part has.
const DAMPED_BELOW: f64 = 0.01;

/// One ring at an open face; a ring at an edge is there once for each of its faces.
#[derive(Clone, Copy, Debug)]
struct SkinRing {
    /// Where it is among the rings, in lanes.
    at: usize,
    /// Whether its face is passed in the direction of the radius, and where it stands in the systems of that direction.
    radial: bool,
    in_system: usize,
    /// Open area, m², and that over the volume of the ring, 1/m.
    area_m2: f64,
    per_ring: f64,
}

/// All rings at the open faces.
#[derive(Clone, Debug)]
pub(super) struct Skin {
    rings: Vec<SkinRing>,
    water: Vec<f64>,
    activity: Vec<f64>,
    slope: Vec<f64>,
    /// What the implicit systems gain on their diagonals, 1/s.
    damping: Vec<f64>,
    /// ∂(dT/dt)/∂X of each ring, K/s, but for a factor that all share.
    cooling: Vec<f64>,
    cooling_factor: f64,
}

/// The vapour that leaves the disc, kg/s, and the slope of that with the disc's temperature, kg/(s K).
#[derive(Clone, Copy)]
pub(super) struct Vapour {
    pub(super) kg_s: f64,
    pub(super) kg_s_k: f64,
}

/// The flux at the faces, J = film (a p − p_air), and ∂p/∂T.
struct FaceLaw {
    film: f64,
    surface_pa: f64,
    air_pa: f64,
    pa_k: f64,
}

impl FaceLaw {
    fn of(problem: &Problem, temperature_c: f64, air: &AirNow, with_slopes: bool) -> Self {
        if let Surface::Film { transfer_m_s, equilibrium_water } = problem.surface {
            let film = problem.solids_kg_m3() * transfer_m_s;
            return Self { film, surface_pa: 1.0, air_pa: equilibrium_water, pa_k: 0.0 };
        }
        let film = 1.0 / (1.0 / air.vapour_m_s + problem.coat_s_m) * WATER_MOLAR_MASS.value
            / (GAS_CONSTANT.value * kelvin(0.5 * (temperature_c + air.temperature_c)));
        let pa_k =
            if with_slopes { (saturation_pa(temperature_c + 0.01) - saturation_pa(temperature_c - 0.01)) / 0.02 } else { 0.0 };
        Self { film, surface_pa: saturation_pa(temperature_c), air_pa: air.vapour_pa, pa_k }
    }
}

impl Skin {
    /// Returns the rings at the open faces of a problem.
    pub(super) fn new(problem: &Problem, shape: Shape) -> Self {
        let grid = &problem.grid;
        let Shape { radii, heights, rows, columns } = shape;
        let OpenFaces { top, side, underside } = problem.open;
        let underside = if grid.half == Half::Whole { underside } else { 0.0 };
        let last = radii - 1;
        let at_side = (0..heights).map(|j| SkinRing {
            at: last * columns + j,
            radial: true,
            in_system: last * columns + j,
            area_m2: side * grid.rim_m * grid.layer_m[j],
            per_ring: side * grid.rim_m / grid.ring_area_m2[last],
        });
        let level = |open: f64, j: usize| {
            (0..radii).map(move |i| SkinRing {
                at: i * columns + j,
                radial: false,
                in_system: j * rows + i,
                area_m2: open * grid.ring_area_m2[i],
                per_ring: open / grid.layer_m[j],
            })
        };
        let rings: Vec<_> =
            at_side.chain(level(top, heights - 1)).chain(level(underside, 0)).filter(|ring| ring.area_m2 > 0.0).collect();
        let ones = vec![1.0; in_lanes(rings.len())];
        Self {
            water: ones.clone(),
            activity: ones.clone(),
            slope: ones.clone(),
            damping: ones.clone(),
            cooling: ones,
            cooling_factor: 0.0,
            rings,
        }
    }

    /// Takes the vapour from the rates of the rings.
    ///
    /// # Arguments
    /// * `lambda2`: square of the shrinkage
    /// * `warmth`: where slopes are wanted, how each rate answers to warmth so far
    #[inline(always)]
    pub(super) fn evaporate(
        &mut self,
        problem: &Problem,
        water: &[f64],
        (temperature_c, air): (f64, &AirNow),
        lambda2: f64,
        rate: &mut [f64],
        warmth: Option<&mut [f64]>,
    ) -> Vapour {
        let law = FaceLaw::of(problem, temperature_c, air, warmth.is_some());
        for (own, ring) in self.water.iter_mut().zip(&self.rings) {
            *own = water[ring.at].max(LEAST_WATER);
        }
        if problem.surface == Surface::Evaporation {
            problem.sorption.fill(&self.water, &mut self.activity, &mut self.slope);
            if warmth.is_some() && self.water.iter().any(|water| *water < DAMPED_BELOW) {
                let (_, damped) = problem.sorption.activity_and_slope(DAMPED_BELOW);
                let dry = self.slope.iter_mut().zip(&self.water).filter(|(_, water)| **water < DAMPED_BELOW);
                dry.for_each(|(slope, _)| *slope = damped);
            }
        } else {
            for (activity, ring) in self.activity.iter_mut().zip(&self.rings) {
                *activity = water[ring.at];
            }
        }
        let per_solids = lambda2 / problem.solids_kg_m3();
        let mut vapour = Vapour { kg_s: 0.0, kg_s_k: 0.0 };
        for (ring, activity) in self.rings.iter().zip(&self.activity) {
            let flux = law.film * (activity * law.surface_pa - law.air_pa);
            rate[ring.at] -= per_solids * ring.per_ring * flux;
            vapour.kg_s += ring.area_m2 * flux;
        }
        if let Some(warmth) = warmth {
            for (k, ring) in self.rings.iter().enumerate() {
                let slope = law.film * self.slope[k] * law.surface_pa;
                let warm = law.film * self.activity[k] * law.pa_k;
                self.damping[k] = per_solids * ring.per_ring * slope;
                self.cooling[k] = ring.area_m2 * slope;
                warmth[ring.at] -= per_solids * ring.per_ring * warm;
                vapour.kg_s_k += ring.area_m2 * warm;
            }
        }
        Vapour { kg_s: lambda2 * vapour.kg_s, kg_s_k: lambda2 * vapour.kg_s_k }
    }

    /// Sets by how much the disc cools as vapour leaves, K/kg, for [`Skin::cooled_by`].
    pub(super) const fn set_cooling(&mut self, factor: f64) {
        self.cooling_factor = factor;
    }

    /// Returns how fast the disc warms as the water of the rings changes so.
    #[inline(always)]
    pub(super) fn cooled_by(&self, water: &[f64]) -> f64 {
        let all: f64 = self.rings.iter().zip(&self.cooling).map(|(ring, cooling)| cooling * water[ring.at]).sum();
        self.cooling_factor * all
    }

    /// Adds the damping of the faces to both implicit systems, before they are eliminated.
    #[inline(always)]
    pub(super) fn damp(&self, radial: &mut LineSystem, axial: &mut LineSystem, implicit_s: f64) {
        for (ring, damping) in self.rings.iter().zip(&self.damping) {
            let system = if ring.radial { &mut *radial } else { &mut *axial };
            system.diagonal[ring.in_system] += implicit_s * damping;
        }
    }
}
