//! The vinegar stage of a batch.

use super::{PH_TARGETS, PicklePoint, PicklingError, TargetHours};
use crate::design::PicklingDesign;
use crate::law::Matter;
use crate::process::{DiscField, DryingOutcome, StageBalance};

/// What the vinegar stage worked out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PicklingOutcome {
    /// Whether the cheeses went into vinegar at all; if not, they go on as they came, and what is said of pH is their own.
    pub pickled: bool,
    /// How one cheese sours, from the first hour to the end of the soak.
    pub curve: Vec<PicklePoint>,
    /// The same if acid moved as slowly and the cheese took up as much of it as is likely.
    pub if_slow: Vec<PicklePoint>,
    /// The same if acid moved as fast and the cheese took up as little of it as is likely.
    pub if_fast: Vec<PicklePoint>,
    /// The end of the soak.
    pub end: PicklePoint,
    /// When centre and blended cheese come down to each of [`PH_TARGETS`], soaking on if need be.
    pub targets: [TargetHours; 2],
    /// The same for the slow cheese.
    pub targets_if_slow: [TargetHours; 2],
    /// The same for the fast one.
    pub targets_if_fast: [TargetHours; 2],
    /// pH at which cheese and vinegar come to rest.
    pub balance_ph: f64,
    /// The same for a cheese that takes up little acid and for one that takes up much.
    pub likely_balance_ph: (f64, f64),
    /// Share of the salt that is left in the cheeses at the end of the soak, 0 to 1.
    pub salt_left_share: f64,
    /// All cheeses after the soak.
    pub cheese: Matter,
    /// Cheeses.
    pub cheese_count: u32,
    /// Mass of a cheese after the soak.
    pub cheese_g: f64,
    /// Its water activity, of the mean composition.
    pub water_activity: f64,
    /// Its Codex firmness classes (they overlap).
    pub firmness: Vec<&'static str>,
    /// Vinegar for each cheese.
    pub vinegar_each_ml: f64,
    /// Vinegar in all.
    pub vinegar_ml: f64,
    /// Vinegar for each gram of dried cheese.
    pub vinegar_ml_per_g: f64,
    /// What would just cover the cheeses in their jars, for each gram of dried cheese.
    pub cover_ml_per_g: f64,
    /// Cheeses in a jar, at most.
    pub cheeses_per_jar: u32,
    /// Jars.
    pub jars: u32,
    /// pH over the cross-section.
    pub field: Option<DiscField>,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Returns the cheeses as they come out of the vinegar.
///
/// # Errors
/// [`PicklingError`].
pub fn pickling(design: &PicklingDesign, dried: &DryingOutcome) -> Result<PicklingOutcome, PicklingError> {
    let cheese = dried.cheese;
    let ph = design.cheese_ph;
    let target = |target: f64| {
        let at_once = (ph <= target).then_some(0.0);
        TargetHours { ph: target, centre_h: at_once, slurry_h: at_once }
    };
    let targets = PH_TARGETS.map(target);
    Ok(PicklingOutcome {
        end: PicklePoint { centre_ph: ph, slurry_ph: ph, surface_ph: ph, ..PicklePoint::default() },
        targets,
        targets_if_slow: targets,
        targets_if_fast: targets,
        balance_ph: ph,
        likely_balance_ph: (ph, ph),
        salt_left_share: 1.0,
        cheese,
        cheese_count: dried.cheese_count,
        cheese_g: dried.end.cheese_g,
        water_activity: dried.end.water_activity,
        firmness: dried.firmness.clone(),
        balance: StageBalance { came: cheese, goes_on: cheese, ..StageBalance::default() },
        ..PicklingOutcome::default()
    })
}
