//! The salt of the middle cheese while it dries: it goes on inwards through moisture that is no longer even.

use super::section::AxisMoment;
use crate::law::salt::salt_diffusivity_m2_s;
use crate::numeric::Half;
use crate::process::{SaltProfile, SaltRun, SaltStuck, SaltingOutcome, UncertainParameters};

/// The water of the column at the axis between the moments that were kept, straight between them.
struct AxisWater<'a> {
    moments: &'a [AxisMoment],
    half: Half,
    /// Dry solids over salt-free solids.
    per_salt_free: f64,
    /// Diffusivity of salt over that of its record.
    times: f64,
}

impl AxisWater<'_> {
    /// Returns the moments before and after a time, and how far between them it lies.
    fn around(&self, at_s: f64) -> Option<(&AxisMoment, &AxisMoment, f64)> {
        let after = self.moments.partition_point(|moment| moment.at_s <= at_s).min(self.moments.len().saturating_sub(1));
        let (before, after) = (self.moments.get(after.saturating_sub(1))?, self.moments.get(after)?);
        let gap_s = after.at_s - before.at_s;
        Some((before, after, if gap_s > 0.0 { (at_s - before.at_s) / gap_s } else { 0.0 }))
    }

    /// Fills the water of the nodes from underside to top; returns D/λ².
    fn fill(&self, at_s: f64, nodes: &mut [f64]) -> f64 {
        let Some((before, after, share)) = self.around(at_s) else { return f64::NAN };
        let between = |of: fn(&AxisMoment) -> f64| of(before) + share * (of(after) - of(before));
        let heights = before.water.len();
        let column = before.water.iter().zip(&after.water).map(|(one, other)| self.per_salt_free * (one + share * (other - one)));
        match self.half {
            Half::Whole => nodes.iter_mut().zip(column).for_each(|(node, water)| *node = water),
            // Only the upper half was dried; the lower is its mirror image.
            Half::Upper => {
                let (lower, upper) = nodes.split_at_mut(heights.saturating_sub(1).min(nodes.len()));
                upper.iter_mut().zip(column).for_each(|(node, water)| *node = water);
                lower.iter_mut().rev().zip(upper.iter().skip(1)).for_each(|(node, mirrored)| *node = *mirrored);
            }
        }
        let shrinkage = between(|moment| moment.shrinkage);
        self.times * salt_diffusivity_m2_s(between(|moment| moment.temperature_c)) / (shrinkage * shrinkage)
    }
}

/// Returns the salt through the thickness while the middle cheese dries, at the axis, from where it was at unmoulding.
///
/// # Errors
/// [`SaltStuck`].
pub(super) fn profile(
    salted: &SaltingOutcome,
    moments: &[AxisMoment],
    half: Half,
    parameters: &UncertainParameters,
) -> Result<SaltProfile, SaltStuck> {
    let count = f64::from(salted.cheese_count.max(1));
    let salt_free_kg = salted.cheese.solids_kg() - salted.cheese.salt_kg;
    let (per_salt_free, times) = (salted.cheese.solids_kg() / salt_free_kg, parameters.salt_diffusivity);
    let water = AxisWater { moments, half, per_salt_free, times };
    let water_at = |at_s: f64, nodes: &mut [f64]| water.fill(at_s, nodes);
    let mut profile = SaltProfile::of(salted.diameter_mm, salted.thickness_mm, &salted.column.heights);
    let solids_g = 1000.0 * salt_free_kg / count;
    let mut run = SaltRun::new(salted.column.clone(), 0.0, &water_at);
    profile.note(&run, salted.unmoulded_h, solids_g);
    for moment in moments {
        // The water bends at each moment, so each is the end of a step.
        run.advance(moment.at_s, &mut |run| profile.note(run, salted.unmoulded_h + run.at_s / 3600.0, solids_g))?;
        profile.keep(&run, moment.at_s / 3600.0, moment.shrinkage);
    }
    Ok(profile)
}
