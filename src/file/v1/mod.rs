//! Format 1, frozen: what was once saved opens for ever. The working design may change; these types may not.

mod choices;

use super::FileError;
use crate::design::{Design, DrainingDesign, DryingDesign, MilkDesign, SaltingDesign, VatDesign};
use choices::{CalciumForm, CreamBy, DryingPlace, Heating, MilkKind, MilkTreatment, PhKnown, PotRest, RennetLabel};
use serde::{Deserialize, Serialize};

/// Greatest length of a title and of a note, letters.
const MOST_TITLE: usize = 120;
const MOST_NOTE: usize = 20_000;

/// A design as it stands in a file. Members that are missing have the value of a new design, so that a short file can be written by hand.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Saved {
    format: u32,
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

/// Declares one stage as it stands in a file, with the way there and back.
macro_rules! saved_stage {
    ($name:ident, $design:ident { $($member:ident: $type:ty),+ $(,)? }) => {
        #[derive(Serialize, Deserialize)]
        #[serde(deny_unknown_fields, default)]
        #[allow(clippy::struct_field_names, reason = "a key is unique in the whole file, so it names its stage")]
        struct $name { $($member: $type),+ }

        impl Default for $name {
            fn default() -> Self {
                Self::from($design::default())
            }
        }

        impl From<$design> for $name {
            fn from(design: $design) -> Self {
                let $design { $($member),+ } = design;
                Self { $($member: $member.into()),+ }
            }
        }

        impl From<$name> for $design {
            fn from(saved: $name) -> Self {
                let $name { $($member),+ } = saved;
                Self { $($member: $member.into()),+ }
            }
        }
    };
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

saved_stage!(Salting, SaltingDesign { salt_percent: f64, salted_turns: u32, salt_run_off_percent: f64 });

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
    pub(super) fn into_design(self) -> Result<Design, FileError> {
        let design = Design {
            title: self.title,
            note: self.note,
            milk: self.milk.into(),
            vat: self.vat.into(),
            draining: self.draining.into(),
            salting: self.salting.into(),
            drying: self.drying.into(),
        };
        check_texts(&design)?;
        Ok(design)
    }
}

/// Checks that title and note are no longer than a file keeps.
///
/// # Errors
/// [`FileError::TextTooLong`] with the length and the cap.
///
/// # Example
/// ```
/// use vatsketch::{design::Design, file::check_texts};
/// assert!(check_texts(&Design { title: "x".repeat(120), ..Design::default() }).is_ok());
/// assert!(check_texts(&Design { title: "x".repeat(121), ..Design::default() }).is_err());
/// ```
pub fn check_texts(design: &Design) -> Result<(), FileError> {
    for (what, text, most) in [("title", &design.title, MOST_TITLE), ("note", &design.note, MOST_NOTE)] {
        let letters = text.chars().count();
        if letters > most {
            return Err(FileError::TextTooLong { what, letters, most });
        }
    }
    Ok(())
}

/// Returns a design as the text of a file, in the newest format.
///
/// Title and note are cut to what a file keeps, so that the text can always be read again; ask [`check_texts`] first where nothing may be lost.
#[must_use]
pub fn to_text(design: &Design) -> String {
    let saved = Saved {
        format: 1,
        title: design.title.chars().take(MOST_TITLE).collect(),
        note: design.note.chars().take(MOST_NOTE).collect(),
        milk: design.milk.into(),
        vat: design.vat.into(),
        draining: design.draining.into(),
        salting: design.salting.into(),
        drying: design.drying.into(),
    };
    let pretty = ron::ser::PrettyConfig::new().struct_names(false).separate_tuple_members(true);
    // Plain numbers, words and switches always have a RON form, so an error here cannot happen; an empty text would be refused when read.
    let body = ron::ser::to_string_pretty(&saved, pretty).unwrap_or_default();
    format!("// A Vatsketch design. Units stand in the names; unknown names are refused.\n{body}\n")
}
