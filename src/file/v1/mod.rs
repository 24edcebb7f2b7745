//! Format 1, frozen: what was once saved opens for ever. The working design may change; these types may not.

mod choices;

use super::frozen::saved_stage;
use crate::design::{
    Design, DrainingDesign, DryingDesign, KeepingDesign, KeptIn, MilkDesign, PicklingDesign, SaltingDesign, VatDesign,
};
use choices::{CalciumForm, CreamBy, DryingPlace, Heating, MilkKind, MilkTreatment, PhKnown, PotRest, RennetLabel};
use serde::Deserialize;

/// A design as it stands in a file. Members that are missing have the value of a new design, so that a short file can be written by hand.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Saved {
    #[serde(rename = "format")]
    _format: u32,
    #[serde(default)]
    title: String,
    #[serde(default)]
    note: String,
    #[serde(default)]
    milk: Milk,
    #[serde(default)]
    vat: Vat,
    #[serde(default)]
    draining: Draining,
    #[serde(default)]
    salting: Salting,
    #[serde(default)]
    drying: Drying,
}

saved_stage!(
    Milk,
    MilkDesign {
        milk_l: f64,
        milk_kind: MilkKind,
        label_fat_percent: f64,
        label_protein_percent: f64,
        milk_treatment: MilkTreatment,
        cream_by: CreamBy,
        fat_target_percent: f64,
        cream_on_hand_ml: f64,
        cream_strength_percent: f64,
        fridge_temperature_c: f64,
        calcium_form: CalciumForm,
        calcium_solution_percent: f64,
        calcium_dose_percent: f64,
        rennet_label: RennetLabel,
        rennet_strength_imcu_ml: f64,
        rennet_ratio_parts: f64,
        rennet_dose_imcu_kg: f64,
        rennet_dilution_times: f64,
        ph_known: PhKnown,
        milk_ph: f64,
    }
);

saved_stage!(
    Vat,
    VatDesign {
        heating: Heating,
        bath_l: f64,
        bath_start_temperature_c: f64,
        bath_set_temperature_c: f64,
        heater_power_w: f64,
        room_temperature_c: f64,
        pot_rest: PotRest,
        pot_depth_percent: f64,
        bath_lid: bool,
        pot_lid: bool,
        calcium_temperature_c: f64,
        rennet_temperature_c: f64,
        heat_while_setting: bool,
        firmness_multiple: f64,
        first_test_min: f64,
        whey_rest_min: f64,
    }
);

saved_stage!(
    Draining,
    DrainingDesign {
        mould_count: u32,
        mould_diameter_mm: f64,
        mould_height_mm: f64,
        drip_end_moisture_percent: f64,
        turn_count: u32,
        turn_gap_h: f64,
        draining_temperature_c: f64,
    }
);

/// Salting before there was any pepper.
#[derive(Deserialize)]
#[serde(deny_unknown_fields, default)]
#[allow(clippy::struct_field_names, reason = "a key is unique in the whole file, so it names its stage")]
struct Salting {
    salt_percent: f64,
    salted_turns: u32,
    salt_run_off_percent: f64,
}

impl Default for Salting {
    fn default() -> Self {
        let SaltingDesign { salt_percent, salted_turns, salt_run_off_percent, .. } = SaltingDesign::default();
        Self { salt_percent, salted_turns, salt_run_off_percent }
    }
}

saved_stage!(
    Drying,
    DryingDesign {
        drying_place: DryingPlace,
        drying_h: f64,
        cabinet_temperature_c: f64,
        room_air_temperature_c: f64,
        room_humidity_percent: f64,
        day_temperature_c: f64,
        day_humidity_percent: f64,
        night_temperature_c: f64,
        night_humidity_percent: f64,
        day_h: f64,
        air_speed_m_s: f64,
        underside_open_percent: f64,
        tray_count: u32,
        tray_width_mm: f64,
        tray_depth_mm: f64,
        tray_clearance_mm: f64,
        tray_swap: bool,
    }
);

impl Saved {
    /// Returns the working design.
    ///
    /// A plan of this format ended with drying, so it still does: no vinegar, no jar, and the pepper of a new design.
    pub(super) fn into_design(self) -> Design {
        let Salting { salt_percent, salted_turns, salt_run_off_percent } = self.salting;
        Design {
            title: self.title,
            note: self.note,
            milk: self.milk.into(),
            vat: self.vat.into(),
            draining: self.draining.into(),
            salting: SaltingDesign { salt_percent, salted_turns, salt_run_off_percent, ..SaltingDesign::default() },
            drying: self.drying.into(),
            pickling: PicklingDesign { pickled: false, ..PicklingDesign::default() },
            keeping: KeepingDesign { kept_in: KeptIn::Bare, ..KeepingDesign::default() },
            // It knew neither hours nor supplies.
            ..Design::default()
        }
    }
}
