//! The vat stage of a batch: warming, setting and cutting.

use super::course::{WarmingEvent, WarmingMark, WarmingPoint};
use super::curd::{SetMilk, curd};
use super::error::VatError;
use super::heat_step::{HeatStep, heat_step};
use super::setting::setting;
use super::souring::MilkOnItsWay;
use super::warming::Warming;
use crate::design::VatDesign;
use crate::law::Matter;
use crate::law::souring::WARM_ACID_CLOT_PH;
use crate::process::souring::{CELLS_KEPT, CURD_PH_FALL, CultureNow};
use crate::process::{Given, MilkOutcome, SourPoint, Sourness, StageBalance, Stream, turned};

/// Joules in a kilowatt hour.
const JOULES_PER_KWH: f64 = 3.6e6;

/// What the vat stage calculates.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct VatOutcome {
    /// The warming curve, from the start to the ladling.
    pub curve: Vec<WarmingPoint>,
    /// What happens on the way, in order.
    pub events: Vec<WarmingMark>,
    /// How raw milk was pasteurised before anything was stirred in, if it was.
    pub heat_step: Option<HeatStep>,
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
    /// The same by a little and by a much hotter hot spot of a hob; none where the wall is known well.
    pub likely_wall_most_c: Option<(f64, f64)>,
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
    /// How the milk sours, hours from the start of warming.
    pub souring: Vec<SourPoint>,
    /// Minutes from the start until the culture goes in; 0 without one.
    pub to_culture_min: f64,
    /// pH of the milk when the rennet goes in.
    pub rennet_ph: f64,
    /// pH of the whey when the curd is ladled.
    pub whey_ph: f64,
    /// Temperature of the curd when it is ladled.
    pub ladle_temperature_c: f64,
    /// How sour the ladled curd is, and what sours it on.
    pub sourness: Sourness,
    /// Share of the calcium phosphate in the casein that souring has left there.
    pub phosphate_left: f64,
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
    let mut souring = MilkOnItsWay::start(milk);
    let heat_step = heat_step(&mut warming, design, milk)?;
    if heat_step.is_some() {
        souring.follow(&warming, warming.now_min());
        souring.add_acid(milk, warming.now_milk_c());
    }
    let to_culture_min = calcium_and_culture(&mut warming, &mut souring, design, milk)?;
    warming.warm_to(design, WarmingEvent::Rennet, design.rennet_temperature_c)?;
    souring.follow(&warming, warming.now_min());
    let rennet_ph = souring.ph();
    if rennet_ph < WARM_ACID_CLOT_PH.value {
        return Err(VatError::TooSour { ph: rennet_ph, least_ph: WARM_ACID_CLOT_PH.value });
    }
    souring.add_lactone(milk);
    warming.add(&milk.rennet, design.room_temperature_c);
    let energy_kwh = warming.energy_j() / JOULES_PER_KWH;
    let rennet_at_min = warming.now_min();
    // Clotting time and what the milk goes through over it depend on each other; the milk hardly cools, so three rounds settle it.
    let mut temperature_c = warming.now_milk_c();
    let mut set = setting(design, milk, (temperature_c, rennet_ph), parameters)?;
    for _ in 0..3 {
        temperature_c = warming.mean_while_setting_c(design, set.clotting_min);
        let ph = mean_ph_while_setting(&warming, &souring, design, set.clotting_min);
        set = setting(design, milk, (temperature_c, ph), parameters)?;
    }
    warming.hold(design, set.cut_min);
    warming.note_between(rennet_at_min + set.clotting_min, WarmingEvent::Clotted);
    warming.note_between(rennet_at_min + set.clean_break_min, WarmingEvent::CleanBreak);
    warming.note(WarmingEvent::Cut);
    warming.hold(design, design.whey_rest_min);
    warming.note(WarmingEvent::Ladle);
    souring.follow(&warming, warming.now_min());
    let (soured_milk, sourness, turned_kg) = souring.now();
    let (whey_ph, ladle_temperature_c) = (souring.ph(), warming.now_milk_c());
    let set_milk = SetMilk { milk: soured_milk, rennet_ph, whey_ph, temperature_c: ladle_temperature_c };
    let curd = curd(design, drip_end_moisture_percent, milk, &set_milk, parameters)?;
    let crowding = CELLS_KEPT.value * soured_milk.total_kg() / curd.curd.total_kg();
    let in_curd = |culture: CultureNow| CultureNow { cells_per_g: crowding * culture.cells_per_g, ..culture };
    let sourness = Sourness { own_ph: milk.milk_ph - CURD_PH_FALL.value, culture: sourness.culture.map(in_curd), ..sourness };
    let drawn = warming.drawn();
    Ok(VatOutcome {
        heat_step,
        to_calcium_min: drawn.at(WarmingEvent::Calcium),
        to_rennet_min: rennet_at_min,
        clotting_min: set.clotting_min,
        clean_break_min: set.clean_break_min,
        cut_min: set.cut_min,
        tests: set.tests,
        setting_temperature_c: temperature_c,
        wall_most_c: drawn.wall_most_c,
        likely_wall_most_c: drawn.likely_wall_most_c,
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
        souring: souring.into_points(),
        to_culture_min,
        rennet_ph,
        whey_ph,
        ladle_temperature_c,
        sourness,
        phosphate_left: curd.phosphate_left,
        balance: StageBalance {
            came: milk.vat_milk,
            added: added(milk, &turned(turned_kg)),
            left: vec![Stream { name: "whey", matter: curd.whey }],
            goes_on: curd.curd,
        },
    })
}

/// Adds calcium and culture, whichever goes in colder first; returns the minute at which the culture went in, 0 without one.
fn calcium_and_culture(
    warming: &mut Warming,
    souring: &mut MilkOnItsWay,
    design: &VatDesign,
    milk: &MilkOutcome,
) -> Result<f64, VatError> {
    if milk.soured.sourness.culture.is_none() {
        add_calcium(warming, design, milk)?;
        return Ok(0.0);
    }
    let calcium_first = milk.soured.ripening_c >= design.calcium_temperature_c;
    if calcium_first {
        add_calcium(warming, design, milk)?;
    }
    let culture_min = ripen(warming, souring, design, milk)?;
    if !calcium_first {
        add_calcium(warming, design, milk)?;
    }
    Ok(culture_min)
}

/// Returns the mean pH of the milk over the next minutes of setting.
fn mean_ph_while_setting(warming: &Warming, souring: &MilkOnItsWay, design: &VatDesign, minutes: f64) -> f64 {
    let mut ahead = warming.clone();
    ahead.hold(design, minutes);
    souring.mean_ph(&ahead, minutes)
}

fn add_calcium(warming: &mut Warming, design: &VatDesign, milk: &MilkOutcome) -> Result<(), VatError> {
    warming.warm_to(design, WarmingEvent::Calcium, design.calcium_temperature_c)?;
    warming.add(&milk.calcium, design.room_temperature_c);
    Ok(())
}

/// Stirs the culture in and lets the milk ripen; returns the minute at which the culture went in.
fn ripen(warming: &mut Warming, souring: &mut MilkOnItsWay, design: &VatDesign, milk: &MilkOutcome) -> Result<f64, VatError> {
    let (ripening_c, ripening_h) = (milk.soured.ripening_c, milk.soured.ripening_h);
    warming.ripen(design, ripening_c, ripening_h)?;
    let culture_min = warming.now_min() - 60.0 * ripening_h;
    souring.follow(warming, culture_min);
    souring.add_culture(milk);
    souring.follow(warming, warming.now_min());
    Ok(culture_min)
}

/// Returns what is stirred into the milk, and what its lactose turns into.
fn added(milk: &MilkOutcome, turned: &Matter) -> Vec<Stream> {
    let mut all = vec![
        Stream { name: "calcium chloride", matter: milk.calcium },
        Stream { name: "rennet and its water", matter: milk.rennet },
    ];
    let soured = [
        ("acid", milk.soured.acid),
        ("glucono-delta-lactone", milk.soured.lactone),
        ("lactic acid, made of lactose and water", *turned),
    ];
    let there = |matter: &Matter| matter.parts_kg().iter().any(|part| *part != 0.0);
    all.extend(soured.into_iter().filter(|(_, matter)| there(matter)).map(|(name, matter)| Stream { name, matter }));
    all
}
