//! Water on its way into a dried cheese that lies in vinegar.

use super::error::PicklingError;
use crate::law::Matter;
use crate::law::soaking::{SWELLING_WATER, face_water};
use crate::numeric::{Fineness, Half};
use crate::process::frames::FrameClock;
use crate::process::{AirNow, Cheese, DiscField, DiscFrame, DiscRun, Factors, Given, OpenFaces, Problem, Runs, Surface, problem};

/// Transfer at the face, m/s: so quick that the face has the water it can hold at once.
const AT_ONCE_M_S: f64 = 1e-5;
/// Tolerance of a step, of the water that is judged and of the least and most that is likely.
const TOLERANCE: (f64, f64) = (3e-2, 8e-2);

/// A cheese that takes up water.
#[derive(Clone, Debug)]
pub struct Swelling<'a> {
    /// What it was made of before it dried.
    pub fresh: Matter,
    /// Its diameter then.
    pub fresh_diameter_mm: f64,
    /// Its thickness then.
    pub fresh_thickness_mm: f64,
    /// How its moisture lies now, in per cent; even where there is none, or where it belongs to another grid.
    pub moisture: Option<&'a DiscField>,
    /// Its mean water now, kg per kg of dry solids.
    pub water: f64,
    /// Protein in its dry solids, kg per kg.
    pub protein_share: f64,
    /// Salt in the water of the vinegar, mol/kg.
    pub salt_molality: f64,
    /// Temperature of the jar.
    pub temperature_c: f64,
    /// How much faster water moves in it than judged.
    pub diffusivity_scale: f64,
    /// How much more that changes with temperature than judged.
    pub energy_scale: f64,
    /// Share of the flat faces that the vinegar reaches, 0 to 1: in a pile of n that touch, 1/n of them on the mean.
    pub open_faces: f64,
}

/// One point of a swelling.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SwollenPoint {
    /// Hours in the vinegar.
    pub at_h: f64,
    /// Mean water, kg per kg of dry solids.
    pub water: f64,
    /// Water at the centre.
    pub centre: f64,
    /// Water of the middle of the top face.
    pub face: f64,
    /// Diameter and thickness relative to the dried cheese.
    pub size: f64,
}

impl Swelling<'_> {
    /// Returns how a cheese takes up water whose faces hold `face_water` kg per kg of dry solids: the diffusion of drying, turned round.
    ///
    /// ∂X/∂t = ∇·(D(X) ∇X) from the moisture that drying has left, over all open faces alike, while the disc grows, or shrinks, by the water.
    ///
    /// # Arguments
    /// * `face_water`: see [`face_water()`], > 0
    /// * `end_h`: ≥ 0
    ///
    /// # Errors
    /// [`PicklingError::Uptake`].
    pub fn follow(&self, face_water: f64, end_h: f64) -> Result<Vec<SwollenPoint>, PicklingError> {
        self.follow_within(Some(face_water), end_h, TOLERANCE.0, &mut |_, _| ())
    }

    /// Returns how the water evens out while nothing comes in or goes out.
    ///
    /// # Errors
    /// [`PicklingError::Uptake`].
    pub(super) fn rest(&self, end_h: f64) -> Result<Vec<SwollenPoint>, PicklingError> {
        self.follow_within(None, end_h, TOLERANCE.1, &mut |_, _| ())
    }

    /// * `face_water`: none where the faces are shut
    /// * `note`: called at the start and after each step
    fn follow_within(
        &self,
        face_water: Option<f64>,
        end_h: f64,
        tolerance: f64,
        note: &mut dyn FnMut(&Problem, &DiscRun<'_>),
    ) -> Result<Vec<SwollenPoint>, PicklingError> {
        let cheese = Cheese {
            matter: self.fresh,
            diameter_mm: self.fresh_diameter_mm,
            thickness_mm: self.fresh_thickness_mm,
            temperature_c: self.temperature_c,
            ..Cheese::default()
        };
        // The grid of the drying, whole or half.
        let whole = self.moisture.is_some_and(|field| field.half == Half::Whole);
        let mut problem = problem(&cheese, if whole { 0.0 } else { 1.0 }, Fineness::SHOWN)?;
        let (flat, side) = if face_water.is_some() { (self.open_faces, 1.0) } else { (0.0, 0.0) };
        problem.open = OpenFaces { top: flat, side, underside: flat };
        problem.warms = false;
        problem.diffusion.diffusivity_m2_s *= self.diffusivity_scale;
        problem.diffusion.energy_j_mol *= self.energy_scale;
        problem.surface = Surface::Film { transfer_m_s: AT_ONCE_M_S, equilibrium_water: face_water.unwrap_or(self.water) };
        problem.tolerance = tolerance;
        let rings = problem.grid.radii_m.len() * problem.grid.heights_m.len();
        let mut run = match self.dried_rings().and_then(|rings| DiscRun::with_water(&problem, rings)) {
            Some(run) => run,
            None => DiscRun::with_water(&problem, vec![self.water; rings]).unwrap_or_else(|| DiscRun::new(&problem)),
        };
        run.temperature_c = self.temperature_c;
        let start = problem.shrinkage(run.mean_water());
        let point = |run: &DiscRun<'_>| SwollenPoint {
            at_h: run.at_s / 3600.0,
            water: run.mean_water(),
            centre: run.centre_water(),
            face: run.top_water(),
            size: problem.shrinkage(run.mean_water()) / start,
        };
        let mut points = vec![point(&run)];
        note(&problem, &run);
        // Of the air only the temperature is looked at.
        let jar = AirNow { temperature_c: self.temperature_c, vapour_pa: 0.0, heat_w_m2_k: 0.0, vapour_m_s: 0.0 };
        run.advance(3600.0 * end_h, &|_| jar, &mut |run| {
            points.push(point(run));
            note(&problem, run);
        })?;
        Ok(points)
    }

    /// Returns the same where the faces hold as much as judged, as little as is likely, and as much: what protein and salt let them ([`face_water()`]).
    /// The salt is that of the vinegar as it is mixed; what it gives to the cheeses or takes from them changes it by little.
    ///
    /// # Errors
    /// [`PicklingError::Uptake`].
    pub fn judged(&self, end_h: f64, given: &Given) -> Result<[Vec<SwollenPoint>; 3], PicklingError> {
        Ok(self.judged_inside(end_h, given)?.0)
    }

    /// Returns the same with the moisture over the cross-section, %, of the first.
    pub(super) fn judged_inside(&self, end_h: f64, given: &Given) -> Result<([Vec<SwollenPoint>; 3], DiscField), PicklingError> {
        let Factors { least, most, .. } = Factors::known_or(given.known.swelling, &SWELLING_WATER);
        let face = |per_protein: f64| face_water(per_protein, self.protein_share, self.water, self.salt_molality);
        let (mut field, mut clock) = (DiscField::default(), FrameClock::new(end_h, 2));
        let mut keep = |problem: &Problem, run: &DiscRun<'_>| {
            let at_h = run.at_s / 3600.0;
            if field.frames.is_empty() {
                field = DiscField::new(&problem.grid);
            }
            if clock.due(at_h) || field.frames.is_empty() {
                let values = run.water().iter().map(|water| (100.0 * water / (1.0 + water)) as f32).collect();
                field.frames.push(DiscFrame { at_h, shrunk: problem.shrinkage(run.mean_water()), values });
            }
        };
        let middle = face(given.parameters.swelling * SWELLING_WATER.value);
        let judged = self.follow_within(Some(middle), end_h, TOLERANCE.0, &mut keep)?;
        let likely = |per_protein: f64| match given.runs {
            Runs::WithLikely => self.follow_within(Some(face(per_protein)), end_h, TOLERANCE.1, &mut |_, _| ()),
            Runs::MiddleOnly => Ok(judged.clone()),
        };
        let (least, most) = (likely(least * SWELLING_WATER.value)?, likely(most * SWELLING_WATER.value)?);
        Ok(([judged, least, most], field))
    }

    /// Returns the cheese as it comes out.
    ///
    /// * `moisture`: over the cross-section while it took up water
    pub(super) fn after<'b>(&self, points: &[SwollenPoint], moisture: &'b DiscField) -> Swelling<'b> {
        let water = points.last().map_or(self.water, |point| point.water);
        Swelling { moisture: Some(moisture), water, fresh: self.fresh, ..*self }
    }

    /// Returns the water of the rings when drying ended, kg per kg of dry solids.
    fn dried_rings(&self) -> Option<Vec<f64>> {
        let last = self.moisture?.frames.last()?;
        Some(last.values.iter().map(|percent| f64::from(*percent) / (100.0 - f64::from(*percent))).collect())
    }
}
