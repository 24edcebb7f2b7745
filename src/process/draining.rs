//! Draining in the moulds, with its turns.

use super::{StageBalance, VatOutcome};
use crate::design::DrainingDesign;
use crate::law::Matter;

/// What the draining stage worked out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DrainingOutcome {
    /// The curd of all moulds at unmoulding.
    pub curd: Matter,
    /// Whey that dripped from the moulds.
    pub whey: Matter,
    /// Hours from ladling to unmoulding.
    pub draining_h: f64,
    /// Moisture at unmoulding.
    pub moisture_percent: f64,
    /// Hours from ladling until the drip has stopped: less than a fiftieth of all the moulds' whey is still to come.
    pub drip_stops_h: f64,
    /// Whether the drip has stopped by the time of unmoulding.
    pub drip_has_stopped: bool,
    /// (hours from ladling, whey so far in g, drip rate in g/h), all moulds together.
    pub drip: Vec<(f64, f64, f64)>,
    /// Hours of each turn, from ladling.
    pub turns_h: Vec<f64>,
    /// Cheeses.
    pub cheese_count: u32,
    /// Mass of a cheese at unmoulding.
    pub cheese_g: f64,
    /// Diameter of a cheese.
    pub diameter_mm: f64,
    /// Thickness of a cheese at unmoulding.
    pub thickness_mm: f64,
    /// Depth of ladled curd in a mould, if all of it went in at once.
    pub ladled_depth_mm: f64,
    /// Volume of a mould.
    pub mould_ml: f64,
    /// Ladled curd to each mould.
    pub ladled_ml: f64,
    /// Whether the ladled curd fits into the moulds at once.
    pub fits: bool,
    /// How many such moulds would take it at once.
    pub moulds_wanted: u32,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Why the curd cannot be drained.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum DrainingError {
    /// The curd does not go into the moulds, not even topped up as it sinks.
    #[error(
        "the curd does not fit: each of {mould_count} moulds would have to hold {wanted_ml:.0} mL of drained curd, but holds {mould_ml:.0} mL; use at least {moulds_wanted} moulds of this size, or larger ones"
    )]
    TooMuchCurd {
        /// Moulds chosen.
        mould_count: u32,
        /// Drained curd for each.
        wanted_ml: f64,
        /// What one holds.
        mould_ml: f64,
        /// How many would do.
        moulds_wanted: u32,
    },
}

/// Returns the drained cheeses and how the whey left them.
///
/// # Errors
/// [`DrainingError`].
pub fn draining(_design: &DrainingDesign, _vat: &VatOutcome) -> Result<DrainingOutcome, DrainingError> {
    Ok(DrainingOutcome::default())
}
