//! What goes into the milk to sour it: how much of it, and how sour the cold milk then is.

use super::souring::{CultureNow, OtherAcid, Sourness};
use super::{Given, MilkError};
use crate::design::{AcidBy, CultureBy, CultureKind, MilkAcid, MilkDesign, SouredBy};
use crate::law::Matter;
use crate::law::acidity::{vinegar_density_g_ml, vinegar_mass_percent};
use crate::law::souring::{
    ACID_CLOT_C, ACID_CLOT_PH, Acid, BULK_STARTER_CELLS, Culture, CultureLaw, PACKET_CELLS, STIR_ACID_BELOW_C, WARM_ACID_CLOT_PH,
    clots_where_it_falls,
};

crate::constants! {
    /// How much the acid solution weighs.
    LACTIC_DENSITY = { "Density of lactic acid solution for each share of acid above water", 0.21, "kg/L", (0.18, 0.24), CrcHandbook, "1.19 kg/L at 88 %, from memory; straight from water", FromMemory }
}

/// What sours the milk.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct MilkSouring {
    /// How sour the cold milk is, and what will sour it on.
    pub sourness: Sourness,
    /// Temperature at which the culture goes in and the milk ripens.
    pub ripening_c: f64,
    /// Hours of ripening before the rennet; 0 without a culture.
    pub ripening_h: f64,
    /// Cells of the culture in the milk as it goes in, for each g; 0 without one.
    pub cells_per_g: f64,
    /// Bulk starter to weigh; it is taken to be made of the same milk and is counted with it.
    pub bulk_g: f64,
    /// Pure acid, or lactone, in all.
    pub acid_g: f64,
    /// What is measured of it: mL of vinegar or of lactic acid solution; 0 for what is weighed dry.
    pub acid_ml: f64,
    /// Acid with its water, stirred into the cold milk; nothing for a lactone.
    pub acid: Matter,
    /// Lactone, stirred in just before the rennet.
    pub lactone: Matter,
    /// pH of the cold milk with the acid.
    pub cold_ph: f64,
}

impl MilkSouring {
    /// Returns whether anything sours the milk on purpose.
    #[must_use]
    pub fn is_soured(&self) -> bool {
        self.sourness.other != OtherAcid::None || self.cells_per_g > 0.0 || self.acid.total_kg() > 0.0
    }
}

/// Returns what sours the milk of the vat.
///
/// # Arguments
/// * `vat_milk`, `vat_milk_l`: the milk of the vat before anything sours it
/// * `milk_ph`: its pH then
///
/// # Errors
/// [`MilkError::AcidClots`] where the acid would clot the milk.
pub(super) fn soured(
    design: &MilkDesign,
    vat_milk: &Matter,
    vat_milk_l: f64,
    milk_ph: f64,
    given: &Given,
) -> Result<MilkSouring, MilkError> {
    let milk_kg = vat_milk.total_kg();
    let own = Sourness { buffer_scale: given.parameters.souring_buffer, ..Sourness::unsoured(milk_ph) };
    let nothing = MilkSouring { sourness: own, cold_ph: milk_ph, ..MilkSouring::default() };
    match design.soured_by {
        SouredBy::Nothing => Ok(nothing),
        SouredBy::Culture => {
            let cells_per_g = given.parameters.culture_cells * cells_per_g(design, vat_milk_l);
            let law = CultureLaw::of(kind(design.culture_kind)).faster(given.parameters.culture_rate);
            let bulk_g = if design.culture_by == CultureBy::Bulk { 10.0 * design.culture_bulk_percent * milk_kg } else { 0.0 };
            let sourness = Sourness { culture: Some(CultureNow { law, cells_per_g, dose: 0.0 }), ..own };
            let (ripening_c, ripening_h) = (design.ripening_temperature_c, design.ripening_h);
            Ok(MilkSouring { sourness, ripening_c, ripening_h, cells_per_g, bulk_g, ..nothing })
        }
        SouredBy::Lactone => {
            let acid_g = design.lactone_g_l * vat_milk_l;
            let lactone = Matter { other_acid_kg: 0.001 * acid_g, ..Matter::default() };
            Ok(MilkSouring { sourness: Sourness { other: OtherAcid::Lactone, ..own }, acid_g, lactone, ..nothing })
        }
        SouredBy::Acid => {
            let acid_g = acid_g(design, &own, vat_milk, vat_milk_l);
            let (acid, acid_ml) = as_measured(design, acid_g);
            let other = if design.milk_acid == MilkAcid::Citric { OtherAcid::Citric } else { OtherAcid::None };
            let sourness = Sourness { other, ..own };
            let cold_ph = sourness.ph(&(*vat_milk + acid));
            // Pasteurised milk is cooled for the acid.
            let milk_c = if design.pasteurises() { STIR_ACID_BELOW_C.value } else { design.fridge_temperature_c };
            let clots = cold_ph < WARM_ACID_CLOT_PH.value || clots_where_it_falls(milk_c, cold_ph);
            if clots {
                return Err(MilkError::AcidClots {
                    ph: cold_ph,
                    milk_c,
                    least_ph: ACID_CLOT_PH.value,
                    cool_c: ACID_CLOT_C.value,
                    rennet_ph: WARM_ACID_CLOT_PH.value,
                });
            }
            Ok(MilkSouring { sourness, acid_g, acid_ml, acid, cold_ph, ..nothing })
        }
    }
}

const fn kind(kind: CultureKind) -> Culture {
    match kind {
        CultureKind::Mesophilic => Culture::Mesophilic,
        CultureKind::Mixed => Culture::Mixed,
        CultureKind::Thermophilic => Culture::Thermophilic,
    }
}

/// Returns the cells of the culture in the milk, for each g.
fn cells_per_g(design: &MilkDesign, vat_milk_l: f64) -> f64 {
    match design.culture_by {
        CultureBy::Packet => PACKET_CELLS.value * design.culture_packets * design.culture_packet_l / vat_milk_l,
        CultureBy::Bulk => BULK_STARTER_CELLS.value * design.culture_bulk_percent,
        CultureBy::Cells => 1e6 * design.culture_cells_million_g,
    }
}

const fn acid(acid: MilkAcid) -> Acid {
    match acid {
        MilkAcid::Vinegar => Acid::Acetic,
        MilkAcid::Citric => Acid::Citric,
        MilkAcid::Lactic => Acid::Lactic,
    }
}

/// Returns the pure acid to stir in, g: as given, or what the wanted pH takes.
fn acid_g(design: &MilkDesign, own: &Sourness, vat_milk: &Matter, vat_milk_l: f64) -> f64 {
    let acid = acid(design.milk_acid);
    match design.acid_by {
        AcidBy::Amount => design.milk_acid_g_l * vat_milk_l,
        AcidBy::Ph => own.sourable(vat_milk).acid_for(design.soured_milk_ph, acid) * acid.g_per_mol() * vat_milk.total_kg(),
    }
}

/// Returns the acid with the water that it is measured with, and the mL to measure.
fn as_measured(design: &MilkDesign, acid_g: f64) -> (Matter, f64) {
    let acid_kg = 0.001 * acid_g;
    match design.milk_acid {
        MilkAcid::Citric => (Matter { other_acid_kg: acid_kg, ..Matter::default() }, 0.0),
        MilkAcid::Vinegar => {
            let strength = design.milk_vinegar_g_per_100ml;
            let vinegar_ml = 100.0 * acid_g / strength;
            let vinegar_kg = 0.001 * vinegar_ml * vinegar_density_g_ml(vinegar_mass_percent(strength));
            (Matter { acid_kg, water_kg: vinegar_kg - acid_kg, ..Matter::default() }, vinegar_ml)
        }
        MilkAcid::Lactic => {
            let share = 0.01 * design.lactic_acid_percent;
            let solution_kg = acid_kg / share;
            let solution_ml = 1000.0 * solution_kg / (1.0 + LACTIC_DENSITY.value * share);
            (Matter { lactic_kg: acid_kg, water_kg: solution_kg - acid_kg, ..Matter::default() }, solution_ml)
        }
    }
}
