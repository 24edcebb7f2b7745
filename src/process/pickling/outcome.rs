//! What the vinegar stage calculates.

use super::inside::Inside;
use super::point::{PicklePoint, TargetHours};
use super::rest::Rest;
use crate::law::Matter;
use crate::process::{DiscField, StageBalance};

/// What the vinegar stage calculates.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PicklingOutcome {
    /// Whether the cheeses went into vinegar at all; if not, they go on as they came, and what is said of pH is their own.
    pub pickled: bool,
    /// pH of the dried cheeses as they come to the vinegar: calculated, or measured.
    pub start_ph: f64,
    /// How one cheese sours, from the first hour to the end of the soak.
    pub curve: Vec<PicklePoint>,
    /// The same in a slow cheese: the pH at its centre is what nine of ten draws stay below.
    pub if_slow: Vec<PicklePoint>,
    /// The same in a fast cheese: the pH at its centre is what nine of ten draws stay above.
    pub if_fast: Vec<PicklePoint>,
    /// The end of the soak.
    pub end: PicklePoint,
    /// When centre and blended cheese come down to each of [`super::PH_TARGETS`], soaking on if need be.
    pub targets: [TargetHours; 2],
    /// The same for the slow cheese.
    pub targets_if_slow: [TargetHours; 2],
    /// The same for the fast one.
    pub targets_if_fast: [TargetHours; 2],
    /// Equilibrium pH of cheese and vinegar.
    pub equilibrium_ph: f64,
    /// The same for a cheese that takes up little acid and for one that takes up much.
    pub likely_equilibrium_ph: (f64, f64),
    /// Moisture of a cheese after the soak if its faces take up as little water as is likely, and as much.
    pub likely_moisture_percent: (f64, f64),
    /// Share of what a cheese brought dissolved in its water that plain vinegar leaves in it, 0 to 1: of its salt, and of its lactic acid.
    pub left_share: f64,
    /// Salt in the cheeses after the soak relative to what they brought; above 1 where a salty vinegar brings some in.
    pub salt_left_share: f64,
    /// Salt stirred into the vinegar, in all.
    pub vinegar_salt_g: f64,
    /// Salt in the vinegar that would leave the salt of the cheeses as it is, g in 100 mL.
    pub even_salt_g_per_100ml: f64,
    /// Cheeses that sour as one body, because they touch; 1 where the vinegar reaches every face.
    pub pile: u32,
    /// All cheeses after the soak.
    pub cheese: Matter,
    /// Cheeses.
    pub cheese_count: u32,
    /// Mass of a cheese after the soak.
    pub cheese_g: f64,
    /// Its diameter, swollen.
    pub diameter_mm: f64,
    /// Its thickness, swollen.
    pub thickness_mm: f64,
    /// Its water activity, of the mean composition; what the acid itself takes from it is not counted.
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
    /// Acetic acid, split or not, over the cross-section at the same moments, mmol for each kg of water.
    pub acetate: Option<DiscField>,
    /// Moisture inside a cheese, %.
    pub moisture: Inside,
    /// Salt in the moisture inside a cheese, g in 100 g of water.
    pub salt: Inside,
    /// What a rest after the soak evens out; none where it was not asked for.
    pub rest: Option<Rest>,
    /// Water for each kg of protein before the soak, kg.
    pub water_per_protein_before: f64,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}
