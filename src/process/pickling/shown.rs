//! The soak that is shown, followed: over the cross-section as it goes, and what comes after it.

use super::course::SoakCourse;
use super::error::PicklingError;
use super::flows::even_kg;
use super::inside::{Inside, Saltiness};
use super::leach::LeachRun;
use super::rest::{self, Rest};
use super::soak::Soak;
use super::solver::SoakRun;
use super::swell::{Swelling, SwollenPoint};
use crate::design::PicklingDesign;
use crate::law::soaking::salt_in_vinegar_m2_s;
use crate::numeric::monotone;
use crate::process::frames::FrameClock;
use crate::process::{DiscField, DiscFrame, DryingOutcome, Given, Runs};

/// What becomes of the salt, and what a rest evens out.
pub(super) struct Inner {
    pub(super) salt: Inside,
    pub(super) left_share: f64,
    pub(super) rest: Option<Rest>,
}

impl Inner {
    /// * `shut`: the soak with its faces shut; `lifted`: the cheese in it at the end of the soak
    pub(super) fn of(
        (design, dried, given): (&PicklingDesign, &DryingOutcome, &Given),
        (soak, shut): (&Soak, &Soak),
        (swelling, water, moisture): (&Swelling<'_>, &[SwollenPoint], &DiscField),
        lifted: Option<SoakRun<'_>>,
    ) -> Result<Self, PicklingError> {
        let even_kg = even_kg(&dried.cheese, design.vinegar_salt_g_per_100ml);
        let saltiness = Saltiness { dried: &dried.cheese, even_kg, water };
        let in_water_m2_s = salt_in_vinegar_m2_s(soak.water_share, design.pickling_temperature_c);
        let mut leaching = LeachRun::new(soak, given.parameters.salt_obstruction * in_water_m2_s);
        let salt = saltiness.follow(&mut leaching, soak, design.pickling_h)?;
        let rest = match (given.runs, lifted) {
            (Runs::WithLikely, Some(lifted)) => Some(Rest {
                ph: rest::ph(lifted)?,
                moisture_percent: rest::moisture(&swelling.after(water, moisture))?,
                salt_percent: rest::salt(&saltiness, leaching.moved_to(shut))?,
            }),
            _ => None,
        };
        Ok(Self { salt, left_share: leaching.left(), rest })
    }
}

/// Returns the soak that is shown, with pH and acetate over the cross-section as it goes, and the cheese at its end with its faces shut.
///
/// # Arguments
/// * `water`: how one takes up water, and grows by it
pub(super) fn followed<'a>(
    (soak, shut): (&'a Soak, &'a Soak),
    equilibrium_ph: f64,
    pickling_h: f64,
    water: &[SwollenPoint],
) -> Result<(SoakCourse, [DiscField; 2], Option<SoakRun<'a>>), PicklingError> {
    let size: Vec<(f64, f64)> = water.iter().map(|point| (point.at_h, point.size)).collect();
    let (mut field, mut acetate) = (DiscField::new(&soak.grid), DiscField::new(&soak.grid));
    let (mut clock, mut lifted) = (FrameClock::new(pickling_h, 2), None);
    let course = SoakCourse::follow(soak, equilibrium_ph, &[pickling_h], &mut |run| {
        let at_h = run.at_s / 3600.0;
        if at_h <= pickling_h && clock.due(at_h) {
            let shrunk = monotone(&size, at_h);
            field.frames.push(frame(at_h, shrunk, run.ph().into_iter()));
            acetate.frames.push(frame(at_h, shrunk, run.acetate().iter().copied()));
        }
        if run.at_s >= 3600.0 * pickling_h && lifted.is_none() {
            lifted = Some(run.moved_to(shut));
        }
    })?;
    Ok((course, [field, acetate], lifted))
}

fn frame(at_h: f64, shrunk: f64, values: impl Iterator<Item = f64>) -> DiscFrame {
    DiscFrame { at_h, shrunk, values: values.map(|value| value as f32).collect() }
}
