//! Milk, cream, calcium and rennet: what goes into the vat.

use super::StageBalance;
use crate::design::MilkDesign;
use crate::law::Matter;

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
/// # Errors
/// [`MilkError`].
pub fn milk(_design: &MilkDesign) -> Result<MilkOutcome, MilkError> {
    Ok(MilkOutcome::default())
}
