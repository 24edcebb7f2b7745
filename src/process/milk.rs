//! Milk, cream, calcium and rennet: what goes into the vat.

use super::milk_error::MilkError;
use super::milk_pasteurising::{Pasteurising, pasteurising};
use super::milk_souring::{MilkSouring, soured};
use super::{Given, StageBalance, Stream};
use crate::design::{CalciumForm, CreamBy, MilkDesign, MilkKind, MilkTreatment, PhKnown, RennetLabel};
use crate::law::blending::{addition_kg, blended};
use crate::law::composition::{self, Animal, SKIM_FAT};
use crate::law::yields::{CASEIN_KEPT, FAT_KEPT, FAT_KEPT_HOMOGENISED};
use crate::law::{Matter, calcium as calcium_law, density, kitchen, rennet as rennet_law};

/// What the milk stage calculates.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MilkOutcome {
    /// The milk as bought.
    pub bought: Matter,
    /// Mass of the milk as bought.
    pub bought_kg: f64,
    /// Temperature of the milk when it is warmed.
    pub start_c: f64,
    /// Density of the milk as bought, at the fridge's temperature.
    pub bought_density_kg_l: f64,
    /// Cream to add; 0 where skimmed milk goes in instead.
    pub cream_g: f64,
    /// Volume of that cream at the fridge's temperature.
    pub cream_ml: f64,
    /// Skimmed milk to add; 0 where cream goes in instead.
    pub skim_kg: f64,
    /// Volume of that skimmed milk at the fridge's temperature.
    pub skim_l: f64,
    /// The milk of the vat, with cream or skimmed milk, before calcium and rennet.
    pub vat_milk: Matter,
    /// Mass of the milk of the vat.
    pub vat_milk_kg: f64,
    /// Volume of the milk of the vat at the fridge's temperature.
    pub vat_milk_l: f64,
    /// Density of the milk of the vat at the fridge's temperature.
    pub vat_milk_density_kg_l: f64,
    /// Least and greatest fat target that this cream and skimmed milk reach.
    pub reachable_fat_percent: (f64, f64),
    /// Casein to fat, by mass.
    pub casein_to_fat: f64,
    /// pH of the milk.
    pub milk_ph: f64,
    /// How it is pasteurised in the vat, if it is.
    pub pasteurising: Option<Pasteurising>,
    /// What sours it.
    pub soured: MilkSouring,
    /// Calcium chloride of the chosen form to weigh (for a solution, its mass).
    pub calcium_g: f64,
    /// The same as anhydrous calcium chloride.
    pub calcium_anhydrous_g: f64,
    /// Volume of the solution; 0 for the solid forms.
    pub calcium_ml: f64,
    /// The same in drops of the bottle, where they were counted and no spoon measures it.
    pub calcium_drops: Option<u32>,
    /// The calcium chloride as matter (salt as ash, with its water).
    pub calcium: Matter,
    /// Anhydrous calcium chloride in the milk, per cent by mass.
    pub calcium_percent: f64,
    /// Rennet to measure.
    pub rennet_ml: f64,
    /// The same in drops of the bottle, where they were counted and no spoon measures it.
    pub rennet_drops: Option<u32>,
    /// Strength of the rennet, whatever its label says.
    pub rennet_strength_imcu_ml: f64,
    /// Milk-clotting units in each kilogram of milk.
    pub rennet_imcu_kg: f64,
    /// Water to dilute the rennet in.
    pub rennet_water_ml: f64,
    /// Rennet and its water, as matter.
    pub rennet: Matter,
    /// Share of the milk's fat that the curd will keep.
    pub fat_kept_share: f64,
    /// Share of the milk's casein that the curd will keep.
    pub casein_kept_share: f64,
    /// What crossed the edge of the stage: the milk bought comes, cream or skimmed milk is added, the vat's milk goes on.
    pub balance: StageBalance,
}

crate::constants! {
    /// How much is added at most.
    MOST_ADDED = { "Cream or skimmed milk added at most, per milk by mass", 4.0, "kg/kg", (1.0, 10.0), Ourselves, "beyond that it is another milk", Judged }
}

/// Returns the milk of the vat with its calcium and rennet.
///
/// Cream (or skimmed milk) is calculated by mass, from the target or from the cream at hand; cream and skimmed milk have the serum of their milk.
///
/// # Arguments
/// * `design`: the choices, each in its range
///
/// # Errors
/// [`MilkError`], with what can be reached or what is needed.
///
/// # Example
/// ```
/// use vatsketch::{design::MilkDesign, process::milk};
/// let milk = milk(&MilkDesign { milk_l: 5.0, fat_target_percent: 4.0, cream_strength_percent: 32.0, ..MilkDesign::default() })?;
/// assert!((milk.vat_milk.fat_percent() - 4.0).abs() < 1e-9);
/// # Ok::<(), vatsketch::process::MilkError>(())
/// ```
pub fn milk(design: &MilkDesign) -> Result<MilkOutcome, MilkError> {
    milk_given(design, &Given::default())
}

/// Returns the same as [`milk()`] under other parameters.
///
/// # Errors
/// As for [`milk()`].
pub fn milk_given(design: &MilkDesign, given: &Given) -> Result<MilkOutcome, MilkError> {
    let parameters = &given.parameters;
    let animal = animal(design.milk_kind);
    let kilogram = match design.milk_kind {
        MilkKind::Label => composition::labelled(design.label_fat_percent, design.label_protein_percent),
        MilkKind::Cow | MilkKind::Sheep | MilkKind::Goat | MilkKind::Buffalo => {
            with_protein(&animal.milk(), parameters.milk_protein)
        }
    };
    let density = |matter: &Matter| milk_density_kg_l(matter, animal, design.fridge_temperature_c);
    let bought_density_kg_l = density(&kilogram);
    let bought = kilogram * (design.milk_l * bought_density_kg_l);
    let cream = animal.cream(design.cream_strength_percent);
    let skim = animal.cream(parameters.skim_fat * SKIM_FAT.value);
    let reachable_fat_percent = reachable(&kilogram, &cream, &skim);
    let (cream_kg, skim_kg) = additions(design, &bought, &cream, &skim, density(&cream), reachable_fat_percent)?;
    let vat_milk = bought + cream * cream_kg + skim * skim_kg;
    let vat_milk_kg = vat_milk.total_kg();
    let vat_milk_density_kg_l = density(&vat_milk);
    let calcium = calcium(design, vat_milk_kg);
    let rennet_ml = design.rennet_dose_imcu_kg * vat_milk_kg / strength_imcu_ml(design);
    let rennet_water_ml = rennet_ml * design.rennet_dilution_times;
    let milk_ph = match design.ph_known {
        PhKnown::FromKind => animal.ph(),
        PhKnown::Measured => design.milk_ph,
    };
    let vat_milk_l = vat_milk_kg / vat_milk_density_kg_l;
    let added = [("cream", cream * cream_kg), ("skimmed milk", skim * skim_kg)];
    Ok(MilkOutcome {
        bought,
        bought_kg: bought.total_kg(),
        start_c: design.fridge_temperature_c,
        bought_density_kg_l,
        cream_g: 1000.0 * cream_kg,
        cream_ml: 1000.0 * cream_kg / density(&cream),
        skim_kg,
        skim_l: skim_kg / density(&skim),
        vat_milk,
        vat_milk_kg,
        vat_milk_l,
        vat_milk_density_kg_l,
        reachable_fat_percent,
        casein_to_fat: vat_milk.casein_kg / vat_milk.fat_kg,
        milk_ph,
        pasteurising: pasteurising(design, &vat_milk)?,
        soured: soured(design, &vat_milk, vat_milk_l, milk_ph, given)?,
        calcium_g: calcium.weighed_g,
        calcium_anhydrous_g: calcium.anhydrous_g,
        calcium_ml: calcium.volume_ml,
        calcium_drops: in_drops(calcium.volume_ml, design.calcium_drops_counted, design.calcium_drops_in_ml),
        calcium: calcium.matter,
        calcium_percent: design.calcium_dose_percent,
        rennet_ml,
        rennet_drops: in_drops(rennet_ml, design.rennet_drops_counted, design.rennet_drops_in_ml),
        rennet_strength_imcu_ml: strength_imcu_ml(design),
        rennet_imcu_kg: design.rennet_dose_imcu_kg,
        rennet_water_ml,
        rennet: Matter::water(0.001 * (rennet_ml + rennet_water_ml)),
        fat_kept_share: parameters.fat_kept * fat_kept(design.treatment_in_vat()),
        casein_kept_share: parameters.casein_kept * CASEIN_KEPT.value,
        balance: StageBalance {
            came: bought,
            added: added
                .into_iter()
                .filter(|(_, matter)| matter.total_kg() > 0.0)
                .map(|(name, matter)| Stream { name, matter })
                .collect(),
            left: Vec::new(),
            goes_on: vat_milk,
        },
    })
}

/// Returns the animal of a kind of milk; a carton without one is taken as cow's milk.
///
/// # Example
/// ```
/// use vatsketch::{design::MilkKind, law::composition::Animal, process::animal};
/// assert_eq!(animal(MilkKind::Label), Animal::Cow);
/// ```
#[must_use]
pub const fn animal(kind: MilkKind) -> Animal {
    match kind {
        MilkKind::Cow | MilkKind::Label => Animal::Cow,
        MilkKind::Sheep => Animal::Sheep,
        MilkKind::Goat => Animal::Goat,
        MilkKind::Buffalo => Animal::Buffalo,
    }
}

/// Returns milk with so many times its protein, and less water for it.
fn with_protein(milk: &Matter, times: f64) -> Matter {
    Matter {
        casein_kg: times * milk.casein_kg,
        whey_protein_kg: times * milk.whey_protein_kg,
        water_kg: milk.water_kg - (times - 1.0) * milk.protein_kg(),
        ..*milk
    }
}

/// Returns the density of milk or cream, kg/L; sheep's milk is held to what the literature has.
fn milk_density_kg_l(matter: &Matter, animal: Animal, temperature_c: f64) -> f64 {
    let fitted = density::milk_kg_l(matter.fat_percent(), matter.solids_not_fat_percent(), temperature_c);
    match animal {
        Animal::Sheep => fitted.min(density::SHEEP_LIMIT.value),
        Animal::Cow | Animal::Goat | Animal::Buffalo => fitted,
    }
}

/// Returns the least and the greatest fat that the milk reaches with a reasonable amount of skimmed milk or cream.
fn reachable(milk: &Matter, cream: &Matter, skim: &Matter) -> (f64, f64) {
    let with = |addition: &Matter| blended(1.0, milk.fat_percent(), MOST_ADDED.value, addition.fat_percent());
    (with(skim).min(milk.fat_percent()), with(cream).max(milk.fat_percent()))
}

/// Returns the cream and the skimmed milk to add, kg; at least one of them is zero.
fn additions(
    design: &MilkDesign,
    bought: &Matter,
    cream: &Matter,
    skim: &Matter,
    cream_kg_l: f64,
    reachable: (f64, f64),
) -> Result<(f64, f64), MilkError> {
    let (least_percent, most_percent) = reachable;
    let wanted_percent = match design.cream_by {
        CreamBy::CreamAmount => return Ok((0.001 * design.cream_on_hand_ml * cream_kg_l, 0.0)),
        CreamBy::FatTarget => design.fat_target_percent,
    };
    let out_of_reach = MilkError::FatOutOfReach { wanted_percent, least_percent, most_percent };
    let within = least_percent <= wanted_percent && wanted_percent <= most_percent;
    if !within {
        return Err(out_of_reach);
    }
    let fat_percent = bought.fat_percent();
    let amount = |addition: &Matter| {
        addition_kg(bought.total_kg(), fat_percent, addition.fat_percent(), wanted_percent).map_err(|_| out_of_reach.clone())
    };
    if wanted_percent >= fat_percent { Ok((amount(cream)?, 0.0)) } else { Ok((0.0, amount(skim)?)) }
}

/// Returns the share of fat that the curd keeps.
const fn fat_kept(treatment: MilkTreatment) -> f64 {
    match treatment {
        MilkTreatment::Raw | MilkTreatment::Pasteurised => FAT_KEPT.value,
        MilkTreatment::Homogenised | MilkTreatment::UltraHeated => FAT_KEPT_HOMOGENISED.value,
    }
}

/// The calcium chloride of one vat.
struct Calcium {
    weighed_g: f64,
    anhydrous_g: f64,
    volume_ml: f64,
    matter: Matter,
}

fn calcium(design: &MilkDesign, milk_kg: f64) -> Calcium {
    let anhydrous_g = calcium_law::anhydrous_g(milk_kg, design.calcium_dose_percent);
    let (weighed_g, volume_ml) = match design.calcium_form {
        CalciumForm::Anhydrous => (anhydrous_g, 0.0),
        CalciumForm::Dihydrate => (anhydrous_g * calcium_law::DIHYDRATE_RATIO.value, 0.0),
        CalciumForm::Solution => {
            let percent = design.calcium_solution_percent;
            (anhydrous_g / (0.01 * percent), calcium_law::solution_ml(anhydrous_g, percent))
        }
    };
    let matter = Matter { water_kg: 0.001 * (weighed_g - anhydrous_g), ash_kg: 0.001 * anhydrous_g, ..Matter::default() };
    Calcium { weighed_g, anhydrous_g, volume_ml, matter }
}

/// Returns a volume in whole drops, where they were counted and no spoon measures it.
fn in_drops(volume_ml: f64, counted: bool, drops_in_ml: f64) -> Option<u32> {
    if counted && kitchen::spoons(volume_ml).is_none() { kitchen::drops(volume_ml, drops_in_ml) } else { None }
}

/// Returns the strength of the rennet, whatever its label says.
fn strength_imcu_ml(design: &MilkDesign) -> f64 {
    match design.rennet_label {
        RennetLabel::Imcu => design.rennet_strength_imcu_ml,
        RennetLabel::Ratio => rennet_law::imcu_per_ml(design.rennet_ratio_parts),
    }
}
