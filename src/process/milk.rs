//! Milk, cream, calcium and rennet: what goes into the vat.

use super::{StageBalance, Stream};
use crate::design::{CalciumForm, CreamBy, MilkDesign, MilkKind, MilkTreatment, PhKnown, RennetLabel};
use crate::law::Matter;
use crate::law::blending::addition_kg;
use crate::law::calcium::{Form, portion};
use crate::law::composition::{BUFFALO, COW, GOAT, Kind, SHEEP, SKIMMED_FAT, labelled};
use crate::law::density::{SHEEP_MOST_DENSITY, of_milk_kg_l, water_kg_l};
use crate::law::rennet::{dose_ml, imcu_from_soxhlet};
use crate::law::yields::{CASEIN_KEPT, FAT_KEPT, HOMOGENISED_FAT_KEPT};

/// What the milk stage worked out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct MilkOutcome {
    /// The milk as bought.
    pub bought: Matter,
    /// Mass of the milk as bought.
    pub bought_kg: f64,
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
    /// Whether a density was held to the greatest that sheep's milk has, because the fit for cow's milk comes out higher.
    pub density_limited: bool,
    /// Least and greatest fat target that this cream and skimmed milk reach.
    pub reachable_fat_percent: (f64, f64),
    /// Casein to fat, by mass.
    pub casein_to_fat: f64,
    /// pH of the milk.
    pub milk_ph: f64,
    /// Calcium chloride of the chosen form to weigh (for a solution, its mass).
    pub calcium_g: f64,
    /// The same as anhydrous calcium chloride.
    pub calcium_anhydrous_g: f64,
    /// Volume of the solution; 0 for the solid forms.
    pub calcium_ml: f64,
    /// The calcium chloride as matter (salt as ash, with its water).
    pub calcium: Matter,
    /// Anhydrous calcium chloride in the milk, per cent by mass.
    pub calcium_percent: f64,
    /// Rennet to measure.
    pub rennet_ml: f64,
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

/// Why the milk of the vat cannot be made.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum MilkError {
    /// No mixture of this milk with cream or skimmed milk has the wanted fat.
    #[error(
        "a fat target of {wanted_percent:.1} % cannot be reached: this milk with this cream or skimmed milk reaches from {least_percent:.1} % to {most_percent:.1} %; choose a target between them, or another cream"
    )]
    FatOutOfReach {
        /// The wanted fat.
        wanted_percent: f64,
        /// The least that can be reached.
        least_percent: f64,
        /// The most that can be reached.
        most_percent: f64,
    },
}

/// Returns the milk of the vat with its calcium and rennet.
///
/// Volumes become masses by the density at the fridge's temperature, and the blend is worked out by mass. Cream and skimmed milk are of
/// the same kind as the milk (of a labelled milk: of cow's milk). Rennet counts as water in the balance.
///
/// # Errors
/// [`MilkError`].
///
/// # Example
/// ```
/// use vatsketch::{design::MilkDesign, process::milk};
/// let outcome = milk(&MilkDesign::default())?;
/// assert!((outcome.vat_milk.fat_percent() - 4.2).abs() < 1e-9);
/// # Ok::<(), vatsketch::process::MilkError>(())
/// ```
pub fn milk(design: &MilkDesign) -> Result<MilkOutcome, MilkError> {
    let kind = kind(design.milk_kind);
    let cold_c = design.fridge_temperature_c;
    let sheep = design.milk_kind == MilkKind::Sheep;
    let unit = match design.milk_kind {
        MilkKind::Label => labelled(design.label_fat_percent, design.label_protein_percent),
        MilkKind::Cow | MilkKind::Sheep | MilkKind::Goat | MilkKind::Buffalo => kind.milk(),
    };
    let bought_density = Density::of(&unit, cold_c, sheep);
    let bought_kg = design.milk_l * bought_density.kg_l;
    let bought = unit * bought_kg;
    let cream = kind.cream(design.cream_strength_percent);
    let skimmed = kind.skimmed();
    let cream_density = of_milk_kg_l(&cream, cold_c);
    let skimmed_density = Density::of(&skimmed, cold_c, sheep);
    let (cream_kg, skim_kg) = match design.cream_by {
        CreamBy::CreamAmount => (design.cream_on_hand_ml / 1000.0 * cream_density, 0.0),
        CreamBy::FatTarget => additions(design, &bought)?,
    };
    let vat_milk = bought + cream * cream_kg + skimmed * skim_kg;
    let vat_milk_kg = vat_milk.total_kg();
    let vat_density = Density::of(&vat_milk, cold_c, sheep);
    let calcium_anhydrous_g = design.calcium_dose_percent / 100.0 * vat_milk_kg * 1000.0;
    let calcium = portion(calcium_anhydrous_g, form(design));
    let rennet_strength_imcu_ml = match design.rennet_label {
        RennetLabel::Imcu => design.rennet_strength_imcu_ml,
        RennetLabel::Ratio => imcu_from_soxhlet(design.rennet_ratio_parts),
    };
    let rennet_ml = dose_ml(vat_milk_kg, design.rennet_dose_imcu_kg, rennet_strength_imcu_ml);
    let rennet_water_ml = rennet_ml * design.rennet_dilution_times;
    let added = [("cream", cream * cream_kg), ("skimmed milk", skimmed * skim_kg)];
    Ok(MilkOutcome {
        bought,
        bought_kg,
        bought_density_kg_l: bought_density.kg_l,
        cream_g: 1000.0 * cream_kg,
        cream_ml: 1000.0 * cream_kg / cream_density,
        skim_kg,
        skim_l: skim_kg / skimmed_density.kg_l,
        vat_milk,
        vat_milk_kg,
        vat_milk_l: vat_milk_kg / vat_density.kg_l,
        vat_milk_density_kg_l: vat_density.kg_l,
        density_limited: bought_density.limited || vat_density.limited,
        reachable_fat_percent: reachable(design, &bought),
        casein_to_fat: vat_milk.casein_kg / vat_milk.fat_kg,
        milk_ph: match design.ph_known {
            PhKnown::FromKind => kind.ph.value,
            PhKnown::Measured => design.milk_ph,
        },
        calcium_g: calcium.weigh_g,
        calcium_anhydrous_g,
        calcium_ml: calcium.measure_ml,
        calcium: calcium.matter,
        calcium_percent: design.calcium_dose_percent,
        rennet_ml,
        rennet_strength_imcu_ml,
        rennet_imcu_kg: design.rennet_dose_imcu_kg,
        rennet_water_ml,
        rennet: Matter::water((rennet_ml + rennet_water_ml) / 1000.0 * water_kg_l(cold_c)),
        fat_kept_share: match design.milk_treatment {
            MilkTreatment::Raw | MilkTreatment::Pasteurised => FAT_KEPT.value,
            MilkTreatment::Homogenised | MilkTreatment::UltraHeated => HOMOGENISED_FAT_KEPT.value,
        },
        casein_kept_share: CASEIN_KEPT.value,
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

/// A density, and whether it was held to the greatest that sheep's milk has.
struct Density {
    kg_l: f64,
    limited: bool,
}

impl Density {
    fn of(milk: &Matter, temperature_c: f64, sheep: bool) -> Self {
        let kg_l = of_milk_kg_l(milk, temperature_c);
        let limited = sheep && kg_l > SHEEP_MOST_DENSITY.value;
        Self { kg_l: if limited { SHEEP_MOST_DENSITY.value } else { kg_l }, limited }
    }
}

/// Returns cream and skimmed milk, kg, for the fat target; one of them is 0.
fn additions(design: &MilkDesign, bought: &Matter) -> Result<(f64, f64), MilkError> {
    let (fat, target) = (bought.fat_percent(), design.fat_target_percent);
    let (least_percent, most_percent) = reachable(design, bought);
    let out_of_reach = |_| MilkError::FatOutOfReach { wanted_percent: target, least_percent, most_percent };
    let add = |strength| addition_kg(bought.total_kg(), fat, strength, target).map_err(out_of_reach);
    if target >= fat { Ok((add(design.cream_strength_percent)?, 0.0)) } else { Ok((0.0, add(SKIMMED_FAT.value)?)) }
}

/// Returns the least and greatest fat that this milk reaches with skimmed milk and with this cream.
fn reachable(design: &MilkDesign, bought: &Matter) -> (f64, f64) {
    let fat = bought.fat_percent();
    (fat.min(SKIMMED_FAT.value), fat.max(design.cream_strength_percent))
}

const fn kind(kind: MilkKind) -> Kind {
    match kind {
        MilkKind::Cow | MilkKind::Label => COW,
        MilkKind::Sheep => SHEEP,
        MilkKind::Goat => GOAT,
        MilkKind::Buffalo => BUFFALO,
    }
}

const fn form(design: &MilkDesign) -> Form {
    match design.calcium_form {
        CalciumForm::Anhydrous => Form::Anhydrous,
        CalciumForm::Dihydrate => Form::Dihydrate,
        CalciumForm::Solution => Form::Solution { strength_percent: design.calcium_solution_percent },
    }
}
