//! The vat stage of a batch: warming, setting and cutting.

use super::course::{WarmingEvent, WarmingMark, WarmingPoint};
use super::curd::curd;
use super::error::VatError;
use super::setting::setting;
use super::warming::Warming;
use crate::design::VatDesign;
use crate::law::Matter;
use crate::process::{Given, MilkOutcome, StageBalance, Stream};

/// Joules in a kilowatt hour.
const JOULES_PER_KWH: f64 = 3.6e6;

/// What the vat stage calculates.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct VatOutcome {
    /// The warming curve, from the start to the ladling.
    pub curve: Vec<WarmingPoint>,
    /// What happens on the way, in order.
    pub events: Vec<WarmingMark>,
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
    /// Yield by Van Slyke and Price at the same moisture, for comparison.
    pub van_slyke_yield_percent: f64,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Returns what happens in the vat: the warming curve, the set, the curd and its whey.
///
/// # Arguments
/// * `drip_end_moisture_percent`: moisture of the curd when the drip has stopped, % by mass
/// * `milk`: the milk of the vat with its calcium and rennet
///
/// # Errors
/// [`VatError`].
///
/// # Example
/// ```
/// use vatsketch::{design::{MilkDesign, VatDesign}, process::{milk, vat}};
/// let milk = milk(&MilkDesign::default())?;
/// let vat = vat(&VatDesign::default(), 61.0, &milk)?;
/// assert!(vat.to_rennet_min > vat.to_calcium_min && vat.cut_min >= vat.clean_break_min);
/// # Ok::<(), vatsketch::process::StageError>(())
/// ```
pub fn vat(design: &VatDesign, drip_end_moisture_percent: f64, milk: &MilkOutcome) -> Result<VatOutcome, VatError> {
    vat_given(design, drip_end_moisture_percent, milk, &Given::default())
}

/// Returns the same as [`vat()`] under other parameters.
///
/// # Errors
/// As for [`vat()`].
pub fn vat_given(
    design: &VatDesign,
    drip_end_moisture_percent: f64,
    milk: &MilkOutcome,
    given: &Given,
) -> Result<VatOutcome, VatError> {
    let parameters = &given.parameters;
    let mut warming = Warming::start(design, milk, parameters);
    warming.warm_to(design, WarmingEvent::Calcium, design.calcium_temperature_c)?;
    warming.add(&milk.calcium, design.room_temperature_c);
    warming.warm_to(design, WarmingEvent::Rennet, design.rennet_temperature_c)?;
    warming.add(&milk.rennet, design.room_temperature_c);
    let energy_kwh = warming.energy_j() / JOULES_PER_KWH;
    let rennet_at_min = warming.now_min();
    // Clotting time and the temperature over it depend on each other; the milk hardly cools, so three rounds settle it.
    let mut temperature_c = warming.now_milk_c();
    let mut set = setting(design, milk, temperature_c, parameters)?;
    for _ in 0..3 {
        temperature_c = warming.mean_while_setting_c(design, set.clotting_min);
        set = setting(design, milk, temperature_c, parameters)?;
    }
    warming.hold(design, set.cut_min);
    warming.note_between(rennet_at_min + set.clotting_min, WarmingEvent::Clotted);
    warming.note_between(rennet_at_min + set.clean_break_min, WarmingEvent::CleanBreak);
    warming.note(WarmingEvent::Cut);
    warming.hold(design, design.whey_rest_min);
    warming.note(WarmingEvent::Ladle);
    let curd = curd(design, drip_end_moisture_percent, milk, warming.now_milk_c(), parameters)?;
    let drawn = warming.drawn();
    Ok(VatOutcome {
        to_calcium_min: drawn.at(WarmingEvent::Calcium),
        to_rennet_min: rennet_at_min,
        clotting_min: set.clotting_min,
        clean_break_min: set.clean_break_min,
        cut_min: set.cut_min,
        tests: set.tests,
        setting_temperature_c: temperature_c,
        wall_most_c: drawn.wall_most_c,
        bath_most_c: drawn.bath_most_c,
        energy_kwh,
        to_ladle_min: rennet_at_min + set.cut_min + design.whey_rest_min,
        curve: drawn.curve,
        events: drawn.events,
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
    })
}
