//! Drying in a cabinet or in the open air.

use super::{SaltingOutcome, StageBalance};
use crate::design::DryingDesign;
use crate::law::Matter;

/// One cheese as it comes to the air.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Cheese {
    /// What it is made of.
    pub matter: Matter,
    /// Its diameter.
    pub diameter_mm: f64,
    /// Its thickness.
    pub thickness_mm: f64,
    /// Its temperature.
    pub temperature_c: f64,
    /// Share of the top that the air reaches, 0 to 1.
    pub top_open: f64,
    /// Share of the side that the air reaches, 0 to 1.
    pub side_open: f64,
}

/// One point of a drying curve, for one cheese.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct DryingPoint {
    /// Hours from the start of drying.
    pub at_h: f64,
    /// Mass of the cheese.
    pub cheese_g: f64,
    /// Loss of mass since the start.
    pub loss_percent: f64,
    /// Mean moisture.
    pub moisture_percent: f64,
    /// Moisture at the centre.
    pub centre_moisture_percent: f64,
    /// Moisture of the middle of the top face.
    pub surface_moisture_percent: f64,
    /// Water activity that the mean composition would have.
    pub water_activity: f64,
    /// Water activity at the centre.
    pub centre_water_activity: f64,
    /// Temperature of the cheese.
    pub temperature_c: f64,
    /// Diameter, shrunk.
    pub diameter_mm: f64,
    /// Thickness, shrunk.
    pub thickness_mm: f64,
    /// Moisture on a fat-free basis.
    pub fat_free_moisture_percent: f64,
}

/// How the cheeses of one place dry.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TrayRun {
    /// Which cheeses: "middle tray", "first tray", "first tray, swapped" ...
    pub name: &'static str,
    /// Their curve.
    pub points: Vec<DryingPoint>,
}

/// What the drying stage worked out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DryingOutcome {
    /// The cheese of the middle tray, in full: the curve that is shown.
    pub middle: TrayRun,
    /// The cheese that dries fastest as the trays are chosen to be (swapped or not).
    pub fastest: TrayRun,
    /// The cheese that dries slowest as the trays are chosen to be.
    pub slowest: TrayRun,
    /// Spread of the final moisture between fastest and slowest if the trays are not swapped.
    pub spread_unswapped_percent: f64,
    /// The same if they are swapped half way.
    pub spread_swapped_percent: f64,
    /// Hours at which the trays are swapped; none if they are not.
    pub swap_h: Option<f64>,
    /// The last point of the middle tray.
    pub end: DryingPoint,
    /// Codex firmness classes of that moisture on a fat-free basis (they overlap).
    pub firmness: Vec<&'static str>,
    /// All cheeses after drying.
    pub cheese: Matter,
    /// Cheeses.
    pub cheese_count: u32,
    /// Relative humidity of the warmed air (by day, in the open).
    pub air_humidity_percent: f64,
    /// Cheeses that a tray holds.
    pub tray_holds: u32,
    /// Trays that these cheeses need.
    pub trays_wanted: u32,
    /// Whether the chosen trays hold them, in width and in height.
    pub trays_fit: bool,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Why the cheeses cannot be dried.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum DryingError {
    /// The air reaches no face.
    #[error("the air reaches no face of the cheese; open at least one of top, side and underside")]
    NoOpenFace,
    /// There is nothing to dry.
    #[error("the cheese must have water and solids to dry, but it has {moisture_percent:.1} % moisture")]
    NothingToDry {
        /// Moisture given.
        moisture_percent: f64,
    },
    /// The solver gave up.
    #[error(
        "the drying of this cheese could not be worked out: the step became too small after {hours:.2} h; choose values nearer to a kitchen's"
    )]
    NoSolution {
        /// How far it came.
        hours: f64,
    },
}

/// Returns how the cheeses dry.
///
/// # Errors
/// [`DryingError`].
pub fn drying(
    _design: &DryingDesign,
    _salted: &SaltingOutcome,
    _draining_temperature_c: f64,
) -> Result<DryingOutcome, DryingError> {
    Ok(DryingOutcome::default())
}
