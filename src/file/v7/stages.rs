//! The inputs of format 7, stage by stage, each with the value that a file means which leaves it out.

use super::choices::{
    AcidBy, CalciumForm, CreamBy, CultureBy, CultureKind, DryingPlace, Heating, JarLay, KeptIn, MilkAcid, MilkKind, MilkTreatment,
    PhFrom, PhKnown, PotRest, RennetLabel, SouredBy, VinegarBy,
};
use crate::design::{DrainingDesign, DryingDesign, KeepingDesign, MilkDesign, PicklingDesign, SaltingDesign, VatDesign};
use crate::file::frozen::frozen_stage;
use crate::file::v6 as before;

frozen_stage! {
    /// Milk, cream, calcium and rennet.
    Milk (after before::Milk; for MilkDesign;) {
        milk_l: f64 = 6.0;
        milk_kind: MilkKind = MilkKind::Cow;
        label_fat_percent: f64 = 3.6;
        label_protein_percent: f64 = 3.3;
        milk_treatment: MilkTreatment = MilkTreatment::Homogenised;
        cream_by: CreamBy = CreamBy::FatTarget;
        fat_target_percent: f64 = 4.2;
        cream_on_hand_ml: f64 = 200.0;
        cream_strength_percent: f64 = 30.0;
        fridge_temperature_c: f64 = 5.0;
        calcium_form: CalciumForm = CalciumForm::Dihydrate;
        calcium_solution_percent: f64 = 33.0;
        calcium_dose_percent: f64 = 0.014;
        rennet_label: RennetLabel = RennetLabel::Imcu;
        rennet_strength_imcu_ml: f64 = 180.0;
        rennet_ratio_parts: f64 = 12_000.0;
        rennet_dose_imcu_kg: f64 = 38.0;
        rennet_dilution_times: f64 = 15.0;
        ph_known: PhKnown = PhKnown::FromKind;
        milk_ph: f64 = 6.65;
        soured_by: SouredBy = SouredBy::Nothing;
        culture_kind: CultureKind = CultureKind::Mesophilic;
        culture_by: CultureBy = CultureBy::Packet;
        culture_packet_l: f64 = 10.0;
        culture_packets: f64 = 0.6;
        culture_bulk_percent: f64 = 1.0;
        culture_cells_million_g: f64 = 10.0;
        ripening_temperature_c: f64 = 30.0;
        ripening_h: f64 = 1.0;
        milk_acid: MilkAcid = MilkAcid::Citric;
        acid_by: AcidBy = AcidBy::Ph;
        soured_milk_ph: f64 = 6.2;
        milk_acid_g_l: f64 = 1.0;
        milk_vinegar_g_per_100ml: f64 = 5.0;
        lactic_acid_percent: f64 = 80.0;
        lactone_g_l: f64 = 5.0;
        pasteurised_in_vat: bool = false;
        pasteurising_temperature_c: f64 = 63.0;
        pasteurising_extra_min: f64 = 0.0;
        pasteurising_bath_temperature_c: f64 = 68.0;
        cooling_water_l: f64 = 20.0;
        cooling_water_temperature_c: f64 = 10.0;
        + calcium_drops_counted: bool = false, before false;
        + calcium_drops_in_ml: f64 = 20.0, before 20.0;
        + rennet_drops_counted: bool = false, before false;
        + rennet_drops_in_ml: f64 = 20.0, before 20.0;
    }
}

frozen_stage! {
    /// Warming, setting and cutting.
    Vat (after before::Vat; for VatDesign;) {
        heating: Heating = Heating::Bath;
        bath_l: f64 = 8.0;
        bath_start_temperature_c: f64 = 24.0;
        bath_set_temperature_c: f64 = 37.5;
        heater_power_w: f64 = 900.0;
        room_temperature_c: f64 = 20.0;
        pot_rest: PotRest = PotRest::Rack;
        pot_depth_percent: f64 = 100.0;
        bath_lid: bool = true;
        pot_lid: bool = true;
        calcium_temperature_c: f64 = 16.0;
        rennet_temperature_c: f64 = 35.0;
        heat_while_setting: bool = true;
        firmness_multiple: f64 = 3.0;
        first_test_min: f64 = 40.0;
        whey_rest_min: f64 = 20.0;
        + curd_piece_mm: f64 = 25.0, before 25.0;
    }
}

frozen_stage! {
    /// Moulds and draining.
    Draining (after before::Draining; for DrainingDesign;) {
        mould_count: u32 = 12;
        mould_diameter_mm: f64 = 68.0;
        mould_height_mm: f64 = 70.0;
        drip_end_moisture_percent: f64 = 61.0;
        turn_count: u32 = 5;
        turn_gap_h: f64 = 6.0;
        draining_temperature_c: f64 = 16.0;
        ladled_ph_from: PhFrom = PhFrom::Calculated;
        ladled_ph: f64 = 6.3;
    }
}

frozen_stage! {
    /// Salt and pepper.
    Salting (after before::Salting; for SaltingDesign;) {
        salt_percent: f64 = 1.9;
        salted_turns: u32 = 2;
        salt_run_off_percent: f64 = 12.0;
        pepper_g_dm2: f64 = 2.2;
        pepper_treated: bool = true;
    }
}

frozen_stage! {
    /// Drying.
    Drying (after before::Drying; for DryingDesign;) {
        drying_place: DryingPlace = DryingPlace::Cabinet;
        drying_h: f64 = 34.0;
        cabinet_temperature_c: f64 = 43.0;
        room_air_temperature_c: f64 = 20.0;
        room_humidity_percent: f64 = 50.0;
        day_temperature_c: f64 = 27.0;
        day_humidity_percent: f64 = 52.0;
        night_temperature_c: f64 = 18.0;
        night_humidity_percent: f64 = 78.0;
        day_h: f64 = 11.0;
        air_speed_m_s: f64 = 0.8;
        underside_open_percent: f64 = 60.0;
        tray_count: u32 = 3;
        tray_width_mm: f64 = 310.0;
        tray_depth_mm: f64 = 290.0;
        tray_clearance_mm: f64 = 45.0;
        tray_swap: bool = true;
        unmoulded_ph_from: PhFrom = PhFrom::Calculated;
        unmoulded_ph: f64 = 5.2;
    }
}

frozen_stage! {
    /// Souring in vinegar.
    Pickling (after before::Pickling; for PicklingDesign;) {
        pickled: bool = true;
        cheese_ph: f64 = 6.5;
        acid_g_per_100ml: f64 = 6.0;
        vinegar_by: VinegarBy = VinegarBy::PerGram;
        vinegar_ml_per_g: f64 = 3.2;
        pickling_temperature_c: f64 = 4.0;
        pickling_h: f64 = 504.0;
        jar_width_mm: f64 = 94.0;
        jar_height_mm: f64 = 132.0;
        jar_lay: JarLay = JarLay::Flat;
        cheese_ph_from: PhFrom = PhFrom::Calculated;
        vinegar_salt_g_per_100ml: f64 = 0.0;
    }
}

frozen_stage! {
    /// The jar and its keeping.
    Keeping (after before::Keeping; for KeepingDesign;) {
        kept_in: KeptIn = KeptIn::Vinegar;
        poured_off_percent: f64 = 75.0;
        keeping_temperature_c: f64 = 4.0;
        keeping_days: f64 = 14.0;
    }
}
