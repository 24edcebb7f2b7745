//! How slowly the cheeses of many draws sour: once they are there, they take the place of the one run that stood in for them.

use crate::batch::Batch;
use crate::process::{PH_TARGETS, PicklingOutcome, SlowSoak, TargetHours};

/// Fewer draws than this judge nothing: their ninth decile would say more of chance than of the cheese.
pub const LEAST_DRAWS: usize = 100;
/// Share of the draws that sour sooner than the slow cheese.
const SLOW_SHARE: f64 = 0.9;

/// The soak of one draw, as far as it is judged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrawnSoak {
    centre_ph: f64,
    slurry_ph: f64,
    equilibrium_ph: f64,
    targets: [TargetHours; 2],
}

impl DrawnSoak {
    /// Returns what is kept of the batch of one draw; nothing where the cheeses do not go into vinegar or it failed before.
    #[must_use]
    pub fn of(batch: &Batch) -> Option<Self> {
        let PicklingOutcome { end, equilibrium_ph, targets, .. } = batch.pickling.done().filter(|soured| soured.pickled)?;
        Some(Self { centre_ph: end.centre_ph, slurry_ph: end.slurry_ph, equilibrium_ph: *equilibrium_ph, targets: *targets })
    }
}

/// Returns what nine of ten draws stay on the better side of; none of fewer than [`LEAST_DRAWS`].
///
/// # Example
/// ```
/// use vatsketch::analysis::{DrawnSoak, drawn_batch, draws, slow_soak};
/// use vatsketch::design::Design;
/// let design = Design::default();
/// let few: Vec<DrawnSoak> = draws(&design, 4).iter().filter_map(|one| DrawnSoak::of(&drawn_batch(&design, one).ok()?)).collect();
/// assert!(few.len() == 4 && slow_soak(&few).is_none());
/// ```
#[must_use]
pub fn slow_soak(drawn: &[DrawnSoak]) -> Option<SlowSoak> {
    if drawn.len() < LEAST_DRAWS {
        return None;
    }
    let ninth = |of: &dyn Fn(&DrawnSoak) -> f64| {
        let mut values: Vec<f64> = drawn.iter().map(of).collect();
        values.sort_by(f64::total_cmp);
        values.get((SLOW_SHARE * (values.len() - 1) as f64).ceil() as usize).copied()
    };
    // What never comes so far comes last.
    let hours =
        |of: &dyn Fn(&DrawnSoak) -> Option<f64>| ninth(&|soak| of(soak).unwrap_or(f64::INFINITY)).filter(|hours| hours.is_finite());
    let target = |number: usize| {
        let of = |soak: &DrawnSoak| soak.targets.get(number).copied().unwrap_or_default();
        TargetHours {
            ph: PH_TARGETS.get(number).copied().unwrap_or_default(),
            centre_h: hours(&|soak| of(soak).centre_h),
            slurry_h: hours(&|soak| of(soak).slurry_h),
        }
    };
    Some(SlowSoak {
        centre_ph: ninth(&|soak| soak.centre_ph)?,
        slurry_ph: ninth(&|soak| soak.slurry_ph)?,
        equilibrium_ph: ninth(&|soak| soak.equilibrium_ph)?,
        targets: [target(0), target(1)],
    })
}
