//! The vinegar stage of a batch.

use super::cheese::{PickledCheese, VinegarBath};
use super::error::PicklingError;
use super::fill::Fill;
use super::flows::{Exchange, Flows, even_salt_g_per_100ml, salt_molality};
use super::inside;
use super::likely::{LikelySoak, Middle, Pace};
use super::outcome::PicklingOutcome;
use super::point::{PH_TARGETS, PicklePoint, TargetHours};
use super::rest;
use super::shown::{Inner, followed};
use super::soak::Soak;
use super::swell::{Swelling, SwollenPoint};
use crate::design::{PhFrom, PicklingDesign};
use crate::law::sorption::Sorption;
use crate::law::{Matter, firmness};
use crate::numeric::Fineness;
use crate::process::{DryingOutcome, DryingPoint, Given, Runs, StageBalance, UncertainParameters};

/// Returns the cheeses as they come out of the vinegar.
///
/// Acid, salt and water each move by themselves: the acid through a cheese that neither swells nor leaches ([`super::pickle`]), the salt
/// by plain diffusion between cheese and vinegar ([`super::LeachRun`]), the water from the moisture that drying has left ([`Swelling`]), held back at the
/// faces by the salt of the vinegar. Nothing else that one does to the others is in it: where the water of each place decides how fast acid and salt
/// move, what was published on salt in cheese and on eggs in vinegar is met no better, which is kept as tests. Of four published trials with eggs this
/// model meets three and is late in one. All cheeses are taken to be as the mean of the middle tray, each with its share of the vinegar. Those that touch sour as one thick body: its centre is the middle of the pile.
///
/// # Errors
/// [`PicklingError`]: a cheese does not go into the jar, or a figure lies out of range.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design};
/// let batch = batch(&Design::default())?;
/// let pickled = batch.pickling.done().unwrap();
/// assert!(pickled.end.slurry_ph < 6.0 && pickled.salt_left_share < 1.0);
/// assert!(pickled.cheese.water_kg > batch.drying.done().unwrap().cheese.water_kg);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn pickling(design: &PicklingDesign, dried: &DryingOutcome) -> Result<PicklingOutcome, PicklingError> {
    pickling_given(design, dried, &Given::default())
}

/// Returns the same as [`pickling()`] under other parameters.
///
/// # Errors
/// As for [`pickling()`].
pub fn pickling_given(design: &PicklingDesign, dried: &DryingOutcome, given: &Given) -> Result<PicklingOutcome, PicklingError> {
    let parameters = &given.parameters;
    if !design.pickled {
        return Ok(left_as_it_is(design, dried));
    }
    let fill = Fill::of(design, dried)?;
    let count = f64::from(dried.cheese_count.max(1));
    let start_ph = start_ph(design, dried);
    let one = one_cheese(dried, count, start_ph, parameters);
    let pile = fill.pile(design.jar_lay, &one);
    // What touches sours as one body, in the vinegar of all of it.
    let cheese = one.piled(pile);
    let (acid_g_per_100ml, volume_ml) = (design.acid_g_per_100ml, f64::from(pile) * fill.vinegar_each_ml);
    let bath = VinegarBath { acid_g_per_100ml, volume_ml, temperature_c: design.pickling_temperature_c };
    let swelling = swelling(dried, count, pile, design, parameters);
    let ([water, least_water, most_water], moisture_field) = swelling.judged_inside(design.pickling_h, given)?;
    let soak = Soak::with(&cheese, &bath, Fineness::SOAK_SHOWN)?.under(parameters);
    let equilibrium_ph = soak.equilibrium_ph()?;
    let shut = rest::shut(&soak);
    let (shown, [field, acetate], lifted) = followed((&soak, &shut), equilibrium_ph, design.pickling_h, &water)?;
    let own_ph = (design.cheese_ph_from == PhFrom::Calculated).then_some(dried.sourness.own_ph);
    let middle = Middle::of(&shown.soak, own_ph);
    let likely = |pace: Pace| match given.runs {
        Runs::WithLikely => LikelySoak::of(&cheese, &bath, design.pickling_h, (pace, middle), given),
        Runs::MiddleOnly => Ok(LikelySoak { soak: shown.soak.clone(), targets: shown.targets, equilibrium_ph }),
    };
    let (slow, fast) = (likely(Pace::Slow)?, likely(Pace::Fast)?);
    let Inner { salt, left_share, rest } =
        Inner::of((design, dried, given), (&soak, &shut), (&swelling, &water, &moisture_field), lifted)?;
    let end = shown.reported.first().copied().unwrap_or_default();
    let exchange = Exchange {
        vinegar_ml: fill.vinegar_each_ml * count,
        acid_g_per_100ml,
        acid_percent: end.acid_percent,
        salt_g_per_100ml: design.vinegar_salt_g_per_100ml,
        left_share,
        water_gain: gain(&water),
    };
    let with_gain = |points: &[SwollenPoint]| Flows::of(&dried.cheese, &Exchange { water_gain: gain(points), ..exchange });
    let moisture_percent = |points: &[SwollenPoint]| with_gain(points).cheese.moisture_percent();
    let flows = with_gain(&water);
    let after = flows.cheese;
    let swollen = water.last().map_or(1.0, |point| point.size);
    Ok(PicklingOutcome {
        pickled: true,
        start_ph,
        if_slow: slow.soak,
        if_fast: fast.soak,
        end,
        targets: shown.targets,
        targets_if_slow: slow.targets,
        targets_if_fast: fast.targets,
        curve: shown.soak,
        equilibrium_ph,
        likely_equilibrium_ph: (fast.equilibrium_ph, slow.equilibrium_ph),
        likely_moisture_percent: (moisture_percent(&least_water), moisture_percent(&most_water)),
        left_share,
        salt_left_share: if dried.cheese.salt_kg > 0.0 { after.salt_kg / dried.cheese.salt_kg } else { 1.0 },
        vinegar_salt_g: exchange.salt_g(),
        even_salt_g_per_100ml: even_salt_g_per_100ml(&dried.cheese),
        pile,
        cheese: after,
        cheese_count: dried.cheese_count,
        cheese_g: 1000.0 * after.total_kg() / count,
        diameter_mm: swollen * one.diameter_mm,
        thickness_mm: swollen * one.thickness_mm,
        water_activity: Sorption::of(&after).holding(parameters.solids_hold).water_activity(after.water_kg / after.solids_kg()),
        firmness: firmness::classes(after.moisture_on_fat_free_basis_percent()),
        vinegar_each_ml: fill.vinegar_each_ml,
        vinegar_ml: exchange.vinegar_ml,
        vinegar_ml_per_g: 0.001 * exchange.vinegar_ml / dried.cheese.total_kg(),
        cover_ml_per_g: fill.cover_ml_per_g,
        cheeses_per_jar: fill.per_jar,
        jars: fill.jars,
        field: Some(field),
        acetate: Some(acetate),
        moisture: inside::moisture(&water, moisture_field),
        salt,
        rest,
        water_per_protein_before: dried.cheese.water_kg / dried.cheese.protein_kg(),
        balance: flows.balance(&dried.cheese),
    })
}

/// Returns cheeses that do not go into vinegar.
fn left_as_it_is(design: &PicklingDesign, dried: &DryingOutcome) -> PicklingOutcome {
    let (cheese, ph) = (dried.cheese, start_ph(design, dried));
    let targets = PH_TARGETS.map(|target| {
        let at_once = (ph <= target).then_some(0.0);
        TargetHours { ph: target, centre_h: at_once, slurry_h: at_once }
    });
    let fill = Fill::without_vinegar(design, dried);
    let DryingPoint { moisture_percent, .. } = dried.end;
    PicklingOutcome {
        start_ph: ph,
        end: PicklePoint { centre_ph: ph, slurry_ph: ph, surface_ph: ph, ..PicklePoint::default() },
        targets,
        targets_if_slow: targets,
        targets_if_fast: targets,
        equilibrium_ph: ph,
        likely_equilibrium_ph: (ph, ph),
        likely_moisture_percent: (moisture_percent, moisture_percent),
        water_per_protein_before: cheese.water_kg / cheese.protein_kg(),
        left_share: 1.0,
        salt_left_share: 1.0,
        even_salt_g_per_100ml: even_salt_g_per_100ml(&cheese),
        pile: 1,
        cheese,
        cheese_count: dried.cheese_count,
        cheese_g: dried.end.cheese_g,
        diameter_mm: dried.end.diameter_mm,
        thickness_mm: dried.end.thickness_mm,
        water_activity: dried.end.water_activity,
        firmness: dried.firmness.clone(),
        cover_ml_per_g: fill.cover_ml_per_g,
        cheeses_per_jar: fill.per_jar,
        jars: fill.jars,
        balance: StageBalance { came: cheese, goes_on: cheese, ..StageBalance::default() },
        ..PicklingOutcome::default()
    }
}

/// Returns the pH of the dried cheeses: what is known of milk, souring and meter.
fn start_ph(design: &PicklingDesign, dried: &DryingOutcome) -> f64 {
    match design.cheese_ph_from {
        PhFrom::Calculated => dried.sourness.ph(&dried.cheese),
        PhFrom::Measured => design.cheese_ph,
    }
}

/// Returns one dried cheese as it comes into the vinegar.
fn one_cheese(dried: &DryingOutcome, count: f64, start_ph: f64, parameters: &UncertainParameters) -> PickledCheese {
    PickledCheese {
        matter: dried.cheese * (1.0 / count),
        diameter_mm: dried.end.diameter_mm,
        thickness_mm: dried.end.thickness_mm,
        start_ph,
        acids: dried.sourness.acids(&dried.cheese),
        buffer_scale: parameters.buffer,
        diffusivity_scale: parameters.acid_obstruction,
    }
}

/// Returns one dried cheese as it takes up water: in the frame of the fresh cheese that it was, from the moisture that it has now.
fn swelling<'a>(
    dried: &'a DryingOutcome,
    count: f64,
    pile: u32,
    design: &PicklingDesign,
    parameters: &UncertainParameters,
) -> Swelling<'a> {
    let one = dried.cheese * (1.0 / count);
    let fresh = dried.middle.points.first().copied().unwrap_or(dried.end);
    let fresh_water = fresh.moisture_percent / (100.0 - fresh.moisture_percent);
    Swelling {
        fresh: Matter { water_kg: fresh_water * one.solids_kg(), ..one },
        fresh_diameter_mm: fresh.diameter_mm,
        fresh_thickness_mm: fresh.thickness_mm,
        moisture: Some(&dried.moisture),
        water: one.water_kg / one.solids_kg(),
        protein_share: one.protein_kg() / one.solids_kg(),
        salt_molality: salt_molality(design.vinegar_salt_g_per_100ml, design.acid_g_per_100ml),
        temperature_c: design.pickling_temperature_c,
        diffusivity_scale: parameters.moisture_diffusivity,
        energy_scale: parameters.diffusion_energy,
        open_faces: 1.0 / f64::from(pile.max(1)),
    }
}

/// Returns the water taken up, kg per kg of dry solids.
fn gain(points: &[SwollenPoint]) -> f64 {
    let water = |point: Option<&SwollenPoint>| point.map_or(0.0, |point| point.water);
    water(points.last()) - water(points.first())
}
