//! Salt on its way out of the cheese into the vinegar.
//!
//! Plain diffusion from even salt into the same stirred bath of finite volume through the same film, on the rings of the acid,
//! ∂s/∂t = ∇·(D ∇s) with s in the water of the cheese; stepped as the acid is. The acid does not hinder it.

use super::direction::{Bordered, Direction, Slopes, turn};
use super::error::PicklingError;
use super::soak::Soak;
use crate::numeric::{GAMMA, Stepping, TooShort};

/// Longest first step, s: short against the leaching of the skin.
const FIRST_STEP_S: f64 = 10.0;
/// Shortest step before the solver gives up, s.
const SHORTEST_STEP_S: f64 = 1e-3;

/// Salt in one cheese and its vinegar, relative to that in the water of the cheese at the start.
#[derive(Clone, Debug)]
struct Leaching {
    cheese: Vec<f64>,
    bath: f64,
}

/// Salt on its way out of a cheese.
#[derive(Clone, Debug)]
pub struct LeachRun<'a> {
    solver: Solver<'a>,
    now: Leaching,
    stepping: Stepping,
    /// Seconds since the start.
    pub at_s: f64,
}

impl<'a> LeachRun<'a> {
    /// Returns a cheese with even salt as it comes into plain vinegar.
    ///
    /// # Arguments
    /// * `diffusivity_m2_s`: of salt in the water of the cheese
    #[must_use]
    pub fn new(soak: &'a Soak, diffusivity_m2_s: f64) -> Self {
        let nodes = soak.grid.radii_m.len() * soak.grid.heights_m.len();
        let solver = Solver::new(soak, diffusivity_m2_s);
        // In a longer step the method takes more from the skin than it has.
        let first_s = FIRST_STEP_S.min(solver.skin_answers_s());
        Self {
            solver,
            now: Leaching { cheese: vec![1.0; nodes], bath: 0.0 },
            stepping: Stepping::new(first_s, SHORTEST_STEP_S),
            at_s: 0.0,
        }
    }

    /// Returns the salt in the water of all rings, relative to that at the start.
    #[must_use]
    pub fn rings(&self) -> &[f64] {
        &self.now.cheese
    }

    /// Returns the share of the salt that is left in the cheese.
    #[must_use]
    pub fn left(&self) -> f64 {
        self.solver.soak.grid.mean(&self.now.cheese)
    }

    /// Returns the salt in the water of the centre and of the middle of the top face, relative to that at the start; never less than none,
    /// though the first steps may leave the outermost ring up to a fiftieth below.
    pub(super) fn centre_and_face(&self) -> (f64, f64) {
        let at = |ring: usize| self.now.cheese.get(ring).copied().unwrap_or(1.0).max(0.0);
        (at(0), at(self.solver.soak.grid.heights_m.len().saturating_sub(1)))
    }

    /// Returns the cheese as it is now in other surroundings, with the clock at zero.
    pub(super) fn moved_to<'b>(&self, soak: &'b Soak) -> LeachRun<'b> {
        LeachRun { now: self.now.clone(), ..LeachRun::new(soak, self.solver.diffusivity_m2_s) }
    }

    /// Returns the salt in the water of the vinegar, relative to that in the cheese at the start.
    #[must_use]
    pub const fn bath(&self) -> f64 {
        self.now.bath
    }

    /// Goes on until `to_s`, calling `after_step` after each step.
    ///
    /// # Errors
    /// [`PicklingError::NoSolution`] if the step becomes too short.
    pub fn advance(&mut self, to_s: f64, after_step: &mut dyn FnMut(&Self)) -> Result<(), PicklingError> {
        while self.at_s < to_s {
            let Self { solver, now, stepping, at_s } = self;
            let step = stepping.step(*at_s, to_s, |step_s| solver.try_step(now, step_s));
            let step = step.map_err(|TooShort { at }| PicklingError::NoSolution { hours: at / 3600.0 })?;
            (self.now, self.at_s) = (step.outcome, step.at);
            after_step(self);
        }
        Ok(())
    }
}

/// Returns the share of the salt that is left in the cheese at the hours asked for.
///
/// # Arguments
/// * `diffusivity_m2_s`: of salt in the water of the cheese
/// * `report_h`: ascending, ≥ 0
///
/// # Errors
/// As for [`LeachRun::advance`].
pub fn salt_left(soak: &Soak, diffusivity_m2_s: f64, report_h: &[f64]) -> Result<Vec<f64>, PicklingError> {
    let mut run = LeachRun::new(soak, diffusivity_m2_s);
    let mut left = Vec::new();
    for hour in report_h {
        run.advance(3600.0 * hour, &mut |_| ())?;
        left.push(run.left());
    }
    Ok(left)
}

/// The two directions and their implicit systems.
#[derive(Clone, Debug)]
struct Solver<'a> {
    soak: &'a Soak,
    diffusivity_m2_s: f64,
    radial: (Direction, Bordered),
    axial: (Direction, Bordered),
    turned: Vec<f64>,
    ones: Vec<f64>,
    assembled_for_s: f64,
}

impl<'a> Solver<'a> {
    fn new(soak: &'a Soak, diffusivity_m2_s: f64) -> Self {
        let (radial, axial) = soak.directions();
        let ones = vec![1.0; soak.grid.radii_m.len() * soak.grid.heights_m.len()];
        Self {
            soak,
            diffusivity_m2_s,
            radial: (radial.clone(), radial.bordered()),
            axial: (axial.clone(), axial.bordered()),
            turned: ones.clone(),
            ones,
            assembled_for_s: 0.0,
        }
    }

    /// Returns how long the quickest ring, at the edge, takes to answer to what is around it, s.
    fn skin_answers_s(&self) -> f64 {
        1.0 / (self.radial.0.quickest_per_s(self.diffusivity_m2_s) + self.axial.0.quickest_per_s(self.diffusivity_m2_s))
    }

    /// Returns the error of a step in tolerances, and where it leads.
    fn try_step(&mut self, now: &Leaching, step_s: f64) -> (f64, Leaching) {
        if step_s.to_bits() != self.assembled_for_s.to_bits() {
            self.assemble(GAMMA * step_s);
            self.assembled_for_s = step_s;
        }
        let mut first = self.rate(now);
        self.solve(&mut first);
        let mut second = self.rate(&now.with(step_s, &first));
        second = second.with(-2.0, &first);
        self.solve(&mut second);
        let twice = first.with(1.0, &second);
        let squares: Vec<f64> = twice.cheese.iter().map(|x| x * x).collect();
        let error = 0.5 * step_s * (self.soak.grid.mean(&squares) + twice.bath * twice.bath).sqrt() / self.soak.tolerance;
        (error, now.with(step_s, &first).with(0.5 * step_s, &twice))
    }

    fn assemble(&mut self, implicit_s: f64) {
        let slopes = Slopes { inside: &self.ones, diffusivity: self.diffusivity_m2_s, face: None, bath: 1.0 };
        for (direction, system) in [&mut self.radial, &mut self.axial] {
            direction.assemble(system, implicit_s, slopes);
        }
    }

    fn rate(&self, at: &Leaching) -> Leaching {
        let mut cheese = vec![0.0; at.cheese.len()];
        let bath = self.radial.0.add_rates(self.diffusivity_m2_s, &at.cheese, &at.cheese, at.bath, &mut cheese)
            + self.axial.0.add_rates_along(self.diffusivity_m2_s, &at.cheese, &at.cheese, at.bath, &mut cheese);
        Leaching { cheese, bath }
    }

    fn solve(&mut self, x: &mut Leaching) {
        let (radii, heights) = (self.soak.grid.radii_m.len(), self.soak.grid.heights_m.len());
        self.radial.1.solve(&mut x.cheese, &mut x.bath);
        turn(&x.cheese, &mut self.turned, radii, heights);
        self.axial.1.solve(&mut self.turned, &mut x.bath);
        turn(&self.turned, &mut x.cheese, heights, radii);
    }
}

impl Leaching {
    /// Returns this and `factor` times another.
    fn with(&self, factor: f64, other: &Self) -> Self {
        let cheese = self.cheese.iter().zip(&other.cheese).map(|(x, y)| x + factor * y).collect();
        Self { cheese, bath: self.bath + factor * other.bath }
    }
}
