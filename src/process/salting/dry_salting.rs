//! Salt sprinkled at the turns, and how far it has come by the time of unmoulding.

use super::column::{Face, SaltColumn};
use super::profile::SaltProfile;
use super::run::{SaltRun, SaltStuck};
use crate::law::density::WHEY_DENSITY;
use crate::law::food_density::cheese_volume_ml;
use crate::law::salt::{SALT_DIFFUSIVITY, salt_diffusivity_m2_s};
use crate::law::syneresis::left_share;
use crate::process::frames::FrameClock;
use crate::process::{DrainingOutcome, Factors, Given, Runs};

/// What is sprinkled, and on what.
pub(super) struct DrySalting<'a> {
    pub(super) drained: &'a DrainingOutcome,
    pub(super) draining_temperature_c: f64,
    /// Thickness of the salted cheese.
    pub(super) thickness_mm: f64,
    /// Salt that stays of what is sprinkled on one face at one turn, all cheeses, kg.
    pub(super) kept_each_turn_kg: f64,
    pub(super) salted_turns: u32,
    pub(super) given: &'a Given,
}

/// Where the salt is at unmoulding, and how it got there.
pub(super) struct Salted {
    pub(super) profile: SaltProfile,
    pub(super) column: SaltColumn,
    pub(super) lies_on_the_faces: bool,
    /// Least and greatest likely salt in the moisture of the faces and at the centre at unmoulding, g per 100 g.
    pub(super) likely_surface_percent: (f64, f64),
    pub(super) likely_centre_percent: (f64, f64),
}

/// Share of the salt in the cheese that may still lie on the faces and pass for dissolved.
const HARDLY_ANY: f64 = 1e-3;

/// Tolerance of a step for likely ranges, which are wide themselves.
const COARSE_TOLERANCE: f64 = 0.15;
/// Pieces of the draining that no step of the run that is shown goes beyond, so that its curves and pictures have no gaps.
const PIECES: f64 = 24.0;

/// The water of the cheeses while they drain, per kg of their salt-free solids at unmoulding: even through the thickness.
struct MouldWater {
    at_the_end: f64,
    still_to_leave: f64,
    /// Thickness that the whey still to leave takes, relative to that at the end.
    swollen: f64,
    time_h: f64,
    left_at_the_end: f64,
    diffusivity_m2_s: f64,
}

impl MouldWater {
    fn of(salting: &DrySalting<'_>) -> Self {
        let (drained, temperature_c) = (salting.drained, salting.draining_temperature_c);
        let parameters = &salting.given.parameters;
        let (solids_kg, time_h) = (salting.solids_kg(), parameters.drip().in_moulds_h(temperature_c));
        Self {
            at_the_end: drained.curd.water_kg / solids_kg,
            still_to_leave: drained.whey.water_kg / solids_kg,
            swollen: 1000.0 * drained.whey.total_kg() / WHEY_DENSITY.value / cheese_volume_ml(&drained.curd),
            time_h,
            left_at_the_end: left_share(drained.draining_h, time_h),
            diffusivity_m2_s: parameters.salt_diffusivity * salt_diffusivity_m2_s(temperature_c),
        }
    }

    /// Returns the share of the whey that is still to leave.
    fn to_come(&self, at_s: f64) -> f64 {
        1.0 - left_share(at_s / 3600.0, self.time_h) / self.left_at_the_end
    }

    /// Fills the water of the nodes; returns D/λ².
    fn fill(&self, at_s: f64, water: &mut [f64]) -> f64 {
        let to_come = self.to_come(at_s);
        water.fill(self.at_the_end + self.still_to_leave * to_come);
        self.diffusivity_m2_s / (1.0 + self.swollen * to_come).powi(2)
    }
}

/// Sprinkles the salt on at the first turns, on the face that each turn brings up, and lets it go inwards until unmoulding.
///
/// The whey leaves as the draining says, and the cheese sinks with it; the mould keeps its width. The share that runs off is lost as it is
/// sprinkled on.
pub(super) fn dry_salt(salting: &DrySalting<'_>) -> Result<Salted, SaltStuck> {
    let drained = salting.drained;
    let moulds = MouldWater::of(salting);
    let column = SaltColumn::unsalted(salting.thickness_mm);
    let mut profile = SaltProfile::of(drained.diameter_mm, salting.thickness_mm, &column.heights);
    let solids_g = 1000.0 * salting.solids_kg() / f64::from(drained.cheese_count.max(1));
    let mut clock = FrameClock::new(drained.draining_h, 1);
    let mut note = |run: &SaltRun<'_>| {
        let at_h = run.at_s / 3600.0;
        profile.note(run, at_h, solids_g);
        if clock.due(at_h) {
            profile.keep(run, at_h, 1.0);
        }
    };
    let water_at = |at_s: f64, water: &mut [f64]| moulds.fill(at_s, water);
    let run = salting.follow(SaltRun::new(column, 0.0, &water_at), PIECES, &mut note)?;
    let lies_on_the_faces = run.on_the_faces() > HARDLY_ANY * run.column.salt_in_all();
    let end = [run.on_average_at_the_faces(), run.at_the_centre()];
    let with = |diffusivity_m2_s: f64| -> Result<[f64; 2], SaltStuck> {
        if salting.given.runs == Runs::MiddleOnly {
            return Ok(end);
        }
        let times = diffusivity_m2_s / (salting.given.parameters.salt_diffusivity * SALT_DIFFUSIVITY.value);
        let water_at = |at_s: f64, water: &mut [f64]| times * moulds.fill(at_s, water);
        let mut run = SaltRun::new(SaltColumn::coarse(salting.thickness_mm), 0.0, &water_at);
        run.tolerance = COARSE_TOLERANCE;
        let run = salting.follow(run, 1.0, &mut |_| ())?;
        Ok([run.on_average_at_the_faces(), run.at_the_centre()])
    };
    let Factors { least, most, .. } = Factors::known_or(salting.given.known.salt_diffusivity, &SALT_DIFFUSIVITY);
    let (slow, fast) = (with(least * SALT_DIFFUSIVITY.value)?, with(most * SALT_DIFFUSIVITY.value)?);
    // Slower salt leaves more on the faces and less at the centre, but not so where it came on the last turn.
    let likely = |value: f64, slow: f64, fast: f64| (100.0 * value.min(slow).min(fast), 100.0 * value.max(slow).max(fast));
    let ([surface, centre], [slow_surface, slow_centre], [fast_surface, fast_centre]) = (end, slow, fast);
    // As many turns, as often the cheese lies the other way up.
    let column = if drained.turns_h.len() % 2 == 1 { run.column.turned() } else { run.column };
    Ok(Salted {
        likely_surface_percent: likely(surface, slow_surface, fast_surface),
        likely_centre_percent: likely(centre, slow_centre, fast_centre),
        profile,
        column,
        lies_on_the_faces,
    })
}

impl DrySalting<'_> {
    /// Returns the solids of all cheeses without salt.
    fn solids_kg(&self) -> f64 {
        self.drained.curd.solids_kg() - self.drained.curd.salt_kg
    }

    /// Follows a run without salt from ladling to unmoulding, salted at the turns; no step is longer than a piece of the draining.
    fn follow<'a>(&self, mut run: SaltRun<'a>, pieces: f64, note: &mut dyn FnMut(&SaltRun<'_>)) -> Result<SaltRun<'a>, SaltStuck> {
        let solids_kg = self.solids_kg();
        let piece_s = 3600.0 * self.drained.draining_h / pieces;
        run.column.spread_evenly(self.drained.curd.salt_kg / solids_kg);
        note(&run);
        for (turn, turn_h) in (0..self.salted_turns).zip(&self.drained.turns_h) {
            in_pieces(&mut run, 3600.0 * turn_h, piece_s, note)?;
            // The first turn brings up what lay below.
            let face = if turn % 2 == 0 { Face::Underside } else { Face::Top };
            run.sprinkle(face, self.kept_each_turn_kg / solids_kg);
            note(&run);
        }
        in_pieces(&mut run, 3600.0 * self.drained.draining_h, piece_s, note)?;
        Ok(run)
    }
}

fn in_pieces(run: &mut SaltRun<'_>, to_s: f64, piece_s: f64, note: &mut dyn FnMut(&SaltRun<'_>)) -> Result<(), SaltStuck> {
    while run.at_s < to_s {
        run.advance(to_s.min(run.at_s + piece_s), note)?;
    }
    Ok(())
}
