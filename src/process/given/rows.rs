//! The uncertain quantities, one row each.
//!
//! Each is a factor on the value of one record; its range is the record's. Not here: what the maker chooses or can measure (the pH of the
//! milk, the moisture at which the drip ends), which a step of each choice moves already, and constants that move no figure by as much as
//! two per cent over their whole range (radiation, the second term of the sorption, the pepper's porosity).

use super::UncertainParameter;
use crate::design::{Design, MilkTreatment, Stage};
use crate::law::acidity::{ACETATE_MOBILITY, ACID_OBSTRUCTION, CONDITIONAL_PK};
use crate::law::air_transfer::PLATE_SCALE;
use crate::law::bath::{BATH_SIDE, MILK_SIDE, POWER_REACHES};
use crate::law::buffering::BUFFER_SCALE;
use crate::law::composition::PROTEIN_SCALE;
use crate::law::moisture_diffusion::{DIFFUSION_ENERGY, MOISTURE_DIFFUSIVITY};
use crate::law::rennet::CLOTTING_PRODUCT;
use crate::law::salt::SALT_DIFFUSIVITY;
use crate::law::soaking::{SALT_OBSTRUCTION, SWELLING_WATER};
use crate::law::sorption::OSWIN_A;
use crate::law::syneresis::{Drip, MOULD_TIME, SYNERESIS_ENERGY, VAT_TIME};
use crate::law::yields::{CASEIN_KEPT, FAT_KEPT, FAT_KEPT_HOMOGENISED};
use crate::process::TRAY_COOLING;
use crate::source::Constant;

/// Declares [`UncertainParameters`] and its rows together, so that none can be left out.
macro_rules! parameters {
    ($( $(#[$doc:meta])* $member:ident = { $record:expr, [$($stage:ident),+], $words:expr } )*) => {
        /// What is believed of each uncertain constant: a factor on the value of its record, 1 where it is taken as it stands.
        #[derive(Clone, Copy, Debug, PartialEq)]
        pub struct UncertainParameters { $( $(#[$doc])* pub $member: f64, )* }

        impl Default for UncertainParameters {
            fn default() -> Self {
                Self { $( $member: 1.0, )* }
            }
        }

        /// Every uncertain quantity, in the order of the stages that first look at it.
        pub const UNCERTAIN_PARAMETERS: &[UncertainParameter] = &[ $( UncertainParameter {
            key: stringify!($member),
            words: $words,
            stages: &[ $( Stage::$stage ),+ ],
            record: $record,
            get: |parameters| parameters.$member,
            set: |parameters, factor| parameters.$member = factor,
        } ),* ];
    };
}

parameters! {
    /// Protein of the milk over that of its table row; what a carton says is not touched.
    milk_protein = { |_| PROTEIN_SCALE, [Milk], "how much protein this milk has" }
    /// Share of the fat that the curd keeps; where it is not homogenised another record than where it is.
    fat_kept = { fat_kept, [Milk], "how much of the fat the curd keeps" }
    /// Share of the casein that the curd keeps.
    casein_kept = { |_| CASEIN_KEPT, [Milk], "how much of the casein the curd keeps" }
    /// Heat transfer from the wall of the pot to the milk.
    milk_side = { |_| MILK_SIDE, [Vat], "how readily the wall of the pot warms the milk" }
    /// Heat transfer from the bath to the wall of the pot.
    bath_side = { |_| BATH_SIDE, [Vat], "how readily the bath warms the pot" }
    /// Heat that comes to a pot on a hob or over steam.
    power_reaches = { |_| POWER_REACHES, [Vat], "how much of the hob's power comes to the pot" }
    /// Clotting time at a dose.
    clotting = { |_| CLOTTING_PRODUCT, [Vat], "how slowly this milk clots" }
    /// Time constant of the whey in the vat.
    vat_time = { |_| VAT_TIME, [Vat], "how slowly whey leaves the cut curd in the vat" }
    /// Activation energy of that, and of the drip in the moulds.
    drip_energy = { |_| SYNERESIS_ENERGY, [Vat, Draining, Salting, Keeping], "how much slower whey drips in the cold" }
    /// Time constant of the drip in the moulds, at any temperature.
    mould_time = { |_| MOULD_TIME, [Draining, Salting, Keeping], "how slowly whey drips from the moulds" }
    /// Diffusivity of salt in the moisture of a fresh cheese.
    salt_diffusivity = { |_| SALT_DIFFUSIVITY, [Salting, Drying], "how quickly salt moves into the cheese" }
    /// Diffusivity of water in cheese.
    moisture_diffusivity = { |_| MOISTURE_DIFFUSIVITY, [Drying, Pickling], "how quickly water moves inside the cheese" }
    /// Activation energy of that.
    diffusion_energy = { |_| DIFFUSION_ENERGY, [Drying, Pickling], "how much slower water moves in a cool cheese" }
    /// Heat and vapour transfer between air and cheese.
    air_transfer = { |_| PLATE_SCALE, [Drying], "how readily the air takes up water from a wet face" }
    /// How much cooler the last tray is than the first.
    tray_cooling = { |_| TRAY_COOLING, [Drying], "how unlike the air of the trays is" }
    /// Water that the solids hold at each water activity.
    solids_hold = { |_| OSWIN_A, [Drying, Pickling], "how firmly the solids hold their water" }
    /// Diffusivity of acid in the cheese.
    acid_obstruction = { |_| ACID_OBSTRUCTION, [Pickling], "how quickly acid moves in the cheese" }
    /// Diffusivity of acetate over that of the acid.
    acetate_mobility = { |_| ACETATE_MOBILITY, [Pickling], "how readily acid that has split follows" }
    /// pK of the acid.
    acid_pk = { |_| CONDITIONAL_PK, [Pickling], "how little of the acid splits among the salts" }
    /// Acid that the cheese takes up.
    buffer = { |_| BUFFER_SCALE, [Pickling], "how much acid the cheese takes up" }
    /// Diffusivity of salt in a cheese that lies in vinegar.
    salt_obstruction = { |_| SALT_OBSTRUCTION, [Pickling], "how quickly salt moves out into the vinegar" }
    /// Water at the face of a cheese in vinegar.
    swelling = { |_| SWELLING_WATER, [Pickling], "how much water the cheese takes up in the vinegar" }
}

impl UncertainParameters {
    /// Returns the drip that is believed.
    pub(in crate::process) fn drip(&self) -> Drip {
        let Drip { mould_time_h, vat_time_h, energy_j_mol } = Drip::default();
        Drip {
            mould_time_h: self.mould_time * mould_time_h,
            vat_time_h: self.vat_time * vat_time_h,
            energy_j_mol: self.drip_energy * energy_j_mol,
        }
    }
}

const fn fat_kept(design: &Design) -> Constant {
    match design.milk.milk_treatment {
        MilkTreatment::Raw | MilkTreatment::Pasteurised => FAT_KEPT,
        MilkTreatment::Homogenised | MilkTreatment::UltraHeated => FAT_KEPT_HOMOGENISED,
    }
}
