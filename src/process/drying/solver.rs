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

use super::air::AirNow;
use super::error::DryingError;
use super::problem::Problem;
use super::rates::{At, Work};
use super::step::LITTLE_WATER;
use crate::numeric::{Stepping, TooShort};

/// First step, s: short against the drying of the skin.
const FIRST_STEP_S: f64 = 5.0;
/// Shortest step before the solver gives up, s.
const SHORTEST_STEP_S: f64 = 1e-3;

/// A disc on its way.
#[derive(Clone, Debug)]
pub struct DiscRun<'a> {
    problem: &'a Problem,
    /// Water of each ring, kg/kg; the ring at radius i and height j is at i·heights + j.
    water: Vec<f64>,
    /// Temperature of the disc.
    pub temperature_c: f64,
    /// Seconds since the start.
    pub at_s: f64,
    stepping: Stepping,
    /// The air that it met last.
    met: Option<AirNow>,
    /// Length of the first step after the air has changed, s, and whether that is the next.
    after_change_s: f64,
    just_changed: bool,
    work: Work,
}

impl<'a> DiscRun<'a> {
    /// Water of a ring, kg per kg of dry solids, that counts as much as what is there in the tolerance of a step.
    ///
    /// A skin that is nearly dry need not be right to the same share of its water. A dried cheese has ten times as much on the mean, so its
    /// moisture hardly feels it.
    pub const LITTLE_WATER: f64 = LITTLE_WATER;

    /// Returns the disc at the start.
    #[must_use]
    pub fn new(problem: &'a Problem) -> Self {
        let rings = problem.grid.radii_m.len() * problem.grid.heights_m.len();
        Self {
            problem,
            water: vec![problem.start_water; rings],
            temperature_c: problem.start_c,
            at_s: 0.0,
            stepping: Stepping::new(FIRST_STEP_S, SHORTEST_STEP_S),
            met: None,
            after_change_s: FIRST_STEP_S,
            just_changed: false,
            work: Work::new(problem),
        }
    }

    /// Returns a disc that starts with this water in its rings, kg/kg, instead of the same in all; none where it has another number of rings.
    #[must_use]
    pub fn with_water(problem: &'a Problem, water: Vec<f64>) -> Option<Self> {
        let even = Self::new(problem);
        let Self { mut work, .. } = even;
        if water.len() != even.water.len() {
            return None;
        }
        work.shape.lay_out(&water, &mut work.now);
        Some(Self { water, work, ..even })
    }

    /// Comes into this air: where it is other than the last, the steps begin short again, for the skin answers within seconds. The first time they
    /// begin at five seconds, afterwards as long as the change before bore: days and nights come again, and a step that errs is tried shorter.
    pub fn meet(&mut self, air: AirNow) {
        if self.met.replace(air) != Some(air) {
            self.stepping.at_most(self.after_change_s);
            self.just_changed = true;
        }
    }

    /// Returns what stays the same.
    #[must_use]
    pub const fn problem(&self) -> &'a Problem {
        self.problem
    }

    /// Returns how many steps were taken, and how many were refused.
    #[must_use]
    pub const fn steps(&self) -> (u32, u32) {
        self.stepping.counts()
    }

    /// Returns the mean water content, kg/kg.
    #[must_use]
    pub fn mean_water(&self) -> f64 {
        self.problem.grid.mean(&self.water)
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

    /// Returns the water of each ring, kg/kg; the ring at radius i and height j is at i·heights + j.
    #[must_use]
    pub fn water(&self) -> &[f64] {
        &self.water
    }

    /// Returns the state: the water of each ring, then the temperature, °C. For other solvers and for checks.
    #[must_use]
    pub fn state(&self) -> Vec<f64> {
        self.water.iter().copied().chain([self.temperature_c]).collect()
    }

    /// Calculates how fast a state changes: the water of each ring in 1/s, then the temperature in K/s. For other solvers and for checks.
    ///
    /// The run itself stays where it is; only its scratch vectors are used.
    ///
    /// # Arguments
    /// * `state`: as [`DiscRun::state`] gives it
    /// * `rates`: as long as `state`; where one of them has another length, the rates are not numbers
    ///
    /// # Example
    /// ```
    /// use vatsketch::{law::Matter, process::{problem, AirNow, Cheese, DiscRun, Fineness}};
    /// let matter = Matter { water_kg: 0.030, fat_kg: 0.010, casein_kg: 0.008, ash_kg: 0.001, ..Matter::default() };
    /// let cheese = Cheese { matter, diameter_mm: 60.0, thickness_mm: 17.0, ..Cheese::default() };
    /// let problem = problem(&cheese, 1.0, Fineness::SHOWN)?;
    /// let mut run = DiscRun::new(&problem);
    /// let state = run.state();
    /// let mut rates = vec![0.0; state.len()];
    /// run.rates(&state, &AirNow::new(38.0, 0.2, 0.8, 0.06), &mut rates);
    /// assert!(rates.iter().sum::<f64>() < 0.0);
    /// # Ok::<(), vatsketch::process::DryingError>(())
    /// ```
    pub fn rates(&mut self, state: &[f64], air: &AirNow, rates: &mut [f64]) {
        if let (Some((temperature_c, water)), Some((warming, drying))) = (state.split_last(), rates.split_last_mut())
            && water.len() == self.water.len()
            && drying.len() == water.len()
        {
            let (work, problem) = (&mut self.work, self.problem);
            work.shape.lay_out(water, &mut work.trial);
            *warming = work.look(problem, At::Trial, *temperature_c, air).warming_k_s;
            work.shape.gather(&work.rate, drying);
        } else {
            rates.fill(f64::NAN);
        }
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
            let mut stepping = self.stepping;
            let step = stepping.step(self.at_s, to_s, |step_s| self.try_step(step_s, air));
            self.stepping = stepping;
            if std::mem::take(&mut self.just_changed) {
                self.after_change_s = stepping.planned().max(FIRST_STEP_S);
            }
            let step = step.map_err(|TooShort { at }| DryingError::NoSolution { hours: at / 3600.0 })?;
            std::mem::swap(&mut self.work.now, &mut self.work.trial);
            self.work.shape.gather(&self.work.now, &mut self.water);
            self.temperature_c += step.outcome;
            self.at_s = step.at;
            after_step(self);
        }
        Ok(())
    }

    /// Calculates one step into `work.trial`; returns its error in tolerances and the warming of the disc.
    fn try_step(&mut self, step_s: f64, air: &dyn Fn(f64) -> AirNow) -> (f64, f64) {
        let airs = (air(self.at_s), air(self.at_s + step_s));
        let (work, problem, temperature_c) = (&mut self.work, self.problem, self.temperature_c);
        work.try_step(problem, temperature_c, airs, step_s)
    }
}
