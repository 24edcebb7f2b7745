//! The vat: warming, setting and cutting.

mod curd;
mod setting;

use super::{MilkOutcome, StageBalance, Stream};
use crate::design::VatDesign;
use crate::law::Matter;
use crate::law::rennet::RennetError;
use curd::curd;
use setting::setting;

/// One point of the warming curve.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct WarmingPoint {
    /// Minutes from the start of warming.
    pub at_min: f64,
    /// Temperature of the bath (of the pot's base on a hob; of the steam in a double boiler).
    pub bath_c: f64,
    /// Temperature of the milk.
    pub milk_c: f64,
    /// Temperature of the wall on the milk's side, at its hottest.
    pub wall_c: f64,
}

/// Something that is done, or happens, on the way.
#[derive(Clone, Debug, PartialEq)]
pub struct WarmingEvent {
    /// What, in a word or two: "calcium", "rennet", "clotted", "clean break", "cut", "ladle".
    pub name: &'static str,
    /// Minutes from the start of warming.
    pub at_min: f64,
    /// Temperature of the milk at that moment.
    pub milk_c: f64,
}

/// What the vat stage worked out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct VatOutcome {
    /// The warming curve, from the start to the ladling.
    pub curve: Vec<WarmingPoint>,
    /// What happens on the way, in order.
    pub events: Vec<WarmingEvent>,
    /// Minutes from the start until the calcium goes in.
    pub to_calcium_min: f64,
    /// Minutes from the start until the rennet goes in.
    pub to_rennet_min: f64,
    /// Minutes from rennet to the first clotting.
    pub clotting_min: f64,
    /// Minutes from rennet to a clean break.
    pub clean_break_min: f64,
    /// Minutes from rennet to the test that finds it: the first test, or a quarter of an hour or more later.
    pub cut_min: f64,
    /// How many tests that takes.
    pub tests: u32,
    /// Mean temperature of the milk while it sets.
    pub setting_temperature_c: f64,
    /// Hottest wall on the milk's side.
    pub wall_most_c: f64,
    /// Hottest bath.
    pub bath_most_c: f64,
    /// Electricity until the rennet goes in.
    pub energy_kwh: f64,
    /// Minutes from the start to ladling.
    pub to_ladle_min: f64,
    /// All the whey that will ever leave, in vat and moulds.
    pub whey_in_all: Matter,
    /// Whey that left in the vat.
    pub whey: Matter,
    /// Curd as it is ladled.
    pub curd: Matter,
    /// The curd when the drip has stopped.
    pub drained_curd: Matter,
    /// Yield of drained, unsalted curd, kg per 100 kg of milk.
    pub yield_percent: f64,
    /// Yield by Van Slyke and Price at the same moisture, beside it.
    pub van_slyke_yield_percent: f64,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Why the vat cannot be made.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum VatError {
    /// The bath never brings the milk to the wanted temperature.
    #[error(
        "the milk does not reach {wanted_c:.1} °C: this bath brings it to at most {most_c:.1} °C within {hours:.0} h; hold the bath hotter, or use more power"
    )]
    NeverWarm {
        /// The wanted temperature.
        wanted_c: f64,
        /// The most that is reached.
        most_c: f64,
        /// The longest warming that is looked at.
        hours: f64,
    },
    /// The milk does not clot.
    #[error(transparent)]
    NoClot(#[from] RennetError),
    /// The drained curd would hold more of a component than there is.
    #[error(
        "the curd would hold {wanted_kg:.3} kg of {component}, but the vat holds only {present_kg:.3} kg: at {drip_end_moisture_percent:.1} % moisture nothing drips from so rich a milk; choose a lower moisture when the drip stops, or leaner milk"
    )]
    CurdWantsMore {
        /// The component.
        component: &'static str,
        /// What the curd would hold.
        wanted_kg: f64,
        /// What the vat holds.
        present_kg: f64,
        /// The chosen moisture of the drained curd.
        drip_end_moisture_percent: f64,
    },
}

/// Returns what happens in the vat: the warming curve, the set, the curd and its whey.
///
/// # Arguments
/// * `drip_end_moisture_percent`: moisture of the curd when the drip has stopped, % by mass
///
/// # Errors
/// [`VatError`].
pub fn vat(design: &VatDesign, drip_end_moisture_percent: f64, milk: &MilkOutcome) -> Result<VatOutcome, VatError> {
    let setting_temperature_c = design.rennet_temperature_c;
    let setting = setting(design, milk, setting_temperature_c)?;
    let curd = curd(design, drip_end_moisture_percent, milk, setting_temperature_c)?;
    Ok(VatOutcome {
        clotting_min: setting.clotting_min,
        clean_break_min: setting.clean_break_min,
        cut_min: setting.cut_min,
        tests: setting.tests,
        setting_temperature_c,
        whey_in_all: curd.whey_in_all,
        whey: curd.whey,
        curd: curd.curd,
        drained_curd: curd.drained_curd,
        yield_percent: curd.yield_percent,
        van_slyke_yield_percent: curd.van_slyke_yield_percent,
        balance: StageBalance {
            came: milk.vat_milk,
            added: vec![
                Stream { name: "calcium chloride", matter: milk.calcium },
                Stream { name: "rennet and its water", matter: milk.rennet },
            ],
            left: vec![Stream { name: "whey", matter: curd.whey }],
            goes_on: curd.curd,
        },
        ..VatOutcome::default()
    })
}
