//! Draining in the moulds, with its turns.

use super::{StageBalance, Stream, VatOutcome};
use crate::design::DrainingDesign;
use crate::law::Matter;
use crate::law::food_density::cheese_volume_ml;
use crate::law::syneresis::Drip;

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
    /// Whether the ladled curd fits into the moulds at once; if not, they are topped up as it sinks.
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

/// Points of the drip curve, the first at ladling and the last at unmoulding.
const DRIP_POINTS: u32 = 121;

/// Returns the drained cheeses and how the whey left them.
///
/// The whey that the vat left in the curd drips in the first order, W (1 − e^(−t/τ)), at the temperature where the moulds stand. Curd that
/// does not go into the moulds at once is topped up as it sinks; it must go in when it has drained.
///
/// # Errors
/// [`DrainingError`].
///
/// # Example
/// ```
/// use vatsketch::{design::Design, process::{draining, milk, vat, StageError}};
/// let design = Design::default();
/// let vat = vat(&design.vat, design.draining.drip_end_moisture_percent, &milk(&design.milk)?)?;
/// let drained = draining(&design.draining, &vat)?;
/// assert!(drained.balance.residual().total_kg().abs() < 1e-12);
/// # Ok::<(), StageError>(())
/// ```
pub fn draining(design: &DrainingDesign, vat: &VatOutcome) -> Result<DrainingOutcome, DrainingError> {
    let moulds = f64::from(design.mould_count);
    let area_mm2 = std::f64::consts::PI / 4.0 * design.mould_diameter_mm.powi(2);
    let mould_ml = area_mm2 * design.mould_height_mm / 1000.0;
    let drained_ml = cheese_volume_ml(&vat.drained_curd);
    let goes_in = drained_ml <= moulds * mould_ml;
    if !goes_in {
        return Err(DrainingError::TooMuchCurd {
            mould_count: design.mould_count,
            wanted_ml: drained_ml / moulds,
            mould_ml,
            moulds_wanted: (drained_ml / mould_ml).ceil() as u32,
        });
    }
    let drip = Drip::in_moulds(design.draining_temperature_c);
    let draining_h = f64::from(design.turn_count + 1) * design.turn_gap_h;
    let still_to_come = vat.whey_in_all - vat.whey;
    let whey = still_to_come * drip.share_after(draining_h);
    let curd = vat.curd - whey;
    let still_g = 1000.0 * still_to_come.total_kg();
    let at = |point: u32| {
        let hours = draining_h * f64::from(point) / f64::from(DRIP_POINTS - 1);
        (hours, still_g * drip.share_after(hours), still_g * drip.share_an_hour(hours))
    };
    let ladled_ml = cheese_volume_ml(&vat.curd);
    Ok(DrainingOutcome {
        curd,
        whey,
        draining_h,
        moisture_percent: curd.moisture_percent(),
        drip_stops_h: drip.stops_h(),
        drip_has_stopped: draining_h >= drip.stops_h(),
        drip: (0..DRIP_POINTS).map(at).collect(),
        turns_h: (1..=design.turn_count).map(|turn| f64::from(turn) * design.turn_gap_h).collect(),
        cheese_count: design.mould_count,
        cheese_g: 1000.0 * curd.total_kg() / moulds,
        diameter_mm: design.mould_diameter_mm,
        thickness_mm: 1000.0 * cheese_volume_ml(&curd) / moulds / area_mm2,
        ladled_depth_mm: 1000.0 * ladled_ml / moulds / area_mm2,
        mould_ml,
        ladled_ml: ladled_ml / moulds,
        fits: ladled_ml <= moulds * mould_ml,
        moulds_wanted: (ladled_ml / mould_ml).ceil() as u32,
        balance: StageBalance {
            came: vat.curd,
            added: Vec::new(),
            left: vec![Stream { name: "whey", matter: whey }],
            goes_on: curd,
        },
    })
}
