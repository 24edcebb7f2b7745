//! The uncertain quantities, one row each.
//!
//! Each is a factor on the value of one record; its range is the record's. Not here: what the maker chooses or can measure (the pH of the
//! milk, the moisture at which the drip ends), which a step of each choice moves already, and constants that move no figure by as much as
//! two per cent over their whole range (radiation, the second term of the sorption, the pepper's porosity). A few of those can be set, though not
//! drawn, so that a check from outside can follow them.

use super::believed::Factors;
use super::distribution::Distribution;
use super::place_temperature::{AIR_WARMTH, JAR_WARMTH, MOULDS_WARMTH};
use crate::design::{CultureBy, CultureKind, Design, MilkTreatment, Stage};
use crate::law::acidity::{ACETATE_MOBILITY, ACID_OBSTRUCTION, CONDITIONAL_PK, FILM_TRANSFER};
use crate::law::air_transfer::{PLATE_SCALE, RADIATION};
use crate::law::bath::{BATH_SIDE, MILK_SIDE, POWER_REACHES};
use crate::law::buffering::BUFFER_SCALE;
use crate::law::composition::{PROTEIN_SCALE, SKIM_FAT};
use crate::law::growth::{Germ, GrowthLaw, LISTERIA_ACETIC, STAPHYLOCOCCUS_LACTIC, USUAL_LAG_WORK};
use crate::law::moisture_diffusion::{DIFFUSION_ENERGY, MOISTURE_DIFFUSIVITY};
use crate::law::rennet::CLOTTING_PRODUCT;
use crate::law::salt::SALT_DIFFUSIVITY;
use crate::law::soaking::{SALT_OBSTRUCTION, SWELLING_WATER};
use crate::law::sorption::OSWIN_A;
use crate::law::souring::{BULK_STARTER_CELLS, MESOPHILIC_RATE, MIXED_RATE, PACKET_CELLS, SOURING_BUFFER_SCALE, THERMOPHILIC_RATE};
use crate::law::syneresis::{Drip, MOULD_TIME, SYNERESIS_ENERGY, VAT_TIME};
use crate::law::yields::{CASEIN_KEPT, FAT_KEPT, FAT_KEPT_HOMOGENISED};
use crate::process::TRAY_COOLING;
use crate::source::Constant;

/// One uncertain quantity.
#[derive(Clone, Copy, Debug)]
pub struct UncertainParameter {
    /// Its name in data, as the member of [`UncertainParameters`].
    pub key: &'static str,
    /// What it is, in a maker's words.
    pub words: &'static str,
    /// The stages that look at it.
    pub stages: &'static [Stage],
    record: fn(&Design) -> Constant,
    get: fn(&UncertainParameters) -> f64,
    set: fn(&mut UncertainParameters, f64),
    get_known: fn(&KnownConstants) -> Option<Factors>,
    set_known: fn(&mut KnownConstants, Factors),
}

impl UncertainParameter {
    /// Returns the record of which it is a factor, with value, range and source; which of two it is may depend on the design.
    #[must_use]
    pub fn record(&self, design: &Design) -> Constant {
        (self.record)(design)
    }

    /// Returns the factor that some parameters hold of it.
    #[must_use]
    pub fn of(&self, parameters: &UncertainParameters) -> f64 {
        (self.get)(parameters)
    }

    /// Returns some parameters with another factor of it.
    #[must_use]
    pub fn set(&self, parameters: UncertainParameters, factor: f64) -> UncertainParameters {
        let mut changed = parameters;
        (self.set)(&mut changed, factor);
        changed
    }

    /// Returns the parameter of this name, drawn or not.
    #[must_use]
    pub fn named(key: &str) -> Option<&'static Self> {
        Self::all().find(|parameter| parameter.key == key)
    }

    /// Returns every parameter: those that are drawn, then the others.
    pub fn all() -> impl Iterator<Item = &'static Self> {
        UNCERTAIN_PARAMETERS.iter().chain(SET_ONLY_PARAMETERS)
    }

    /// Returns what the kitchen of a design is known to have; none where it is not known, or was learned of another record.
    #[must_use]
    pub fn known(&self, design: &Design) -> Option<Factors> {
        let estimate = design.kitchen.as_ref()?.of(self.key)?;
        Factors::of_estimate(estimate, &self.record(design))
    }

    /// Returns what some known constants hold of it.
    #[must_use]
    pub fn known_of(&self, known: &KnownConstants) -> Option<Factors> {
        (self.get_known)(known)
    }

    /// Returns some known constants with this one.
    #[must_use]
    pub fn set_known(&self, known: KnownConstants, factors: Factors) -> KnownConstants {
        let mut changed = known;
        (self.set_known)(&mut changed, factors);
        changed
    }

    /// Returns what is believed of it in the kitchen of a design: what is known, or what its record says of any kitchen.
    #[must_use]
    pub fn believed(&self, design: &Design) -> Factors {
        Factors::known_or(self.known(design), &self.record(design))
    }

    /// Returns the factors at the least and the greatest value that it has in the kitchen of a design, or by its record.
    #[must_use]
    pub fn ends(&self, design: &Design) -> (f64, f64) {
        let Factors { least, most, .. } = self.believed(design);
        (least, most)
    }

    /// Returns how it is drawn.
    #[must_use]
    pub fn drawn(&self, design: &Design) -> Distribution {
        let Factors { least, most, .. } = Factors::of_record(&self.record(design));
        Distribution::between(least, most)
    }

    /// Returns the factor below which a share of all draws is, as [`Distribution::at_share`] has it.
    ///
    /// # Arguments
    /// * `share`: u, 0 to 1; 0 gives the least value, 0.5 the most likely, 1 the greatest
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Design, process::UNCERTAIN_PARAMETERS};
    /// let design = Design::default();
    /// for parameter in UNCERTAIN_PARAMETERS {
    ///     assert_eq!(parameter.at_share(&design, 0.5), 1.0);
    /// }
    /// ```
    #[must_use]
    pub fn at_share(&self, design: &Design, share: f64) -> f64 {
        self.believed(design).at_share(&self.record(design), share)
    }
}

/// Declares [`UncertainParameters`] and its rows together, so that none can be left out.
macro_rules! parameters {
    (@rows $list:ident, $list_doc:literal, $( $member:ident = { $record:expr, [$($stage:ident),+], $words:expr } )*) => {
        #[doc = $list_doc]
        pub const $list: &[UncertainParameter] = &[ $( UncertainParameter {
            key: stringify!($member),
            words: $words,
            stages: &[ $( Stage::$stage ),+ ],
            record: $record,
            get: |parameters| parameters.$member,
            set: |parameters, factor| parameters.$member = factor,
            get_known: |known| known.$member,
            set_known: |known, factors| known.$member = Some(factors),
        } ),* ];
    };
    (
        drawn { $( $(#[$doc:meta])* $member:ident = $row:tt )* }
        set_only { $( $(#[$other_doc:meta])* $other:ident = $other_row:tt )* }
    ) => {
        /// A factor on the value of each uncertain constant's record, 1 where the record is taken as it is.
        #[derive(Clone, Copy, Debug, PartialEq)]
        pub struct UncertainParameters { $( $(#[$doc])* pub $member: f64, )* $( $(#[$other_doc])* pub $other: f64, )* }

        impl Default for UncertainParameters {
            fn default() -> Self {
                Self { $( $member: 1.0, )* $( $other: 1.0, )* }
            }
        }

        /// What is known of each uncertain constant in a kitchen; none where nothing but its record is.
        #[derive(Clone, Copy, Debug, Default, PartialEq)]
        pub struct KnownConstants { $( $(#[$doc])* pub $member: Option<Factors>, )* $( $(#[$other_doc])* pub $other: Option<Factors>, )* }

        parameters! { @rows UNCERTAIN_PARAMETERS, "Every uncertain quantity that is drawn, in the order of the stages that first look at it.", $( $member = $row )* }
        parameters! { @rows SET_ONLY_PARAMETERS, "Quantities that move too little to be drawn, and that can be set for checks from outside.", $( $other = $other_row )* }
    };
}

parameters! {
    drawn {
        /// Protein of the milk over that of its table row; what a carton says is not touched.
        milk_protein = { |_| PROTEIN_SCALE, [Milk], "protein in this milk" }
        /// Share of the fat that the curd keeps; where it is not homogenised another record than where it is.
        fat_kept = { fat_kept, [Milk], "share of the fat that the curd keeps" }
        /// Share of the casein that the curd keeps.
        casein_kept = { |_| CASEIN_KEPT, [Milk], "share of the casein that the curd keeps" }
        /// Cells of the culture over those that its packet, its bulk or the maker says.
        culture_cells = { culture_cells, [Milk, Vat, Draining, Salting, Drying, Pickling, Keeping], "living cells in the culture" }
        /// Growth and work of the culture.
        culture_rate = { culture_rate, [Milk, Vat, Draining, Salting, Drying, Pickling, Keeping], "speed of the culture" }
        /// Acid that milk and curd take up.
        souring_buffer = { |_| SOURING_BUFFER_SCALE, [Milk, Vat, Draining, Salting, Drying, Pickling, Keeping], "acid that milk and curd take up (buffer)" }
        /// Heat transfer from the wall of the pot to the milk.
        milk_side = { |_| MILK_SIDE, [Vat], "heat transfer from the pot to the milk" }
        /// Heat transfer from the bath to the wall of the pot.
        bath_side = { |_| BATH_SIDE, [Vat], "heat transfer from the bath to the pot" }
        /// Heat that comes to a pot on a hob or over steam.
        power_reaches = { |_| POWER_REACHES, [Vat], "share of the hob's power that reaches the pot" }
        /// Clotting time at a dose.
        clotting = { |_| CLOTTING_PRODUCT, [Vat], "clotting time of this milk" }
        /// Time constant of the whey in the vat.
        vat_time = { |_| VAT_TIME, [Vat], "time that whey takes to leave the cut curd" }
        /// Activation energy of that, and of the drip in the moulds.
        drip_energy = { |_| SYNERESIS_ENERGY, [Vat, Draining, Salting, Keeping], "slowing of the drip by cold" }
        /// Time constant of the drip in the moulds, at any temperature.
        mould_time = { |_| MOULD_TIME, [Draining, Salting, Keeping], "time that the drip from the moulds takes" }
        /// Absolute temperature around the moulds over what is chosen.
        warmth_of_moulds = { |_| MOULDS_WARMTH, [Draining, Salting, Drying, Keeping], "temperature around the moulds" }
        /// Diffusivity of salt in the moisture of a fresh cheese.
        salt_diffusivity = { |_| SALT_DIFFUSIVITY, [Salting, Drying], "speed of salt into the cheese" }
        /// Absolute temperature of the drying air over what is chosen.
        warmth_of_air = { |_| AIR_WARMTH, [Drying, Keeping], "temperature of the drying air" }
        /// Diffusivity of water in cheese.
        moisture_diffusivity = { |_| MOISTURE_DIFFUSIVITY, [Drying, Pickling], "speed of water inside the cheese" }
        /// Activation energy of that.
        diffusion_energy = { |_| DIFFUSION_ENERGY, [Drying, Pickling], "slowing of water by a cool cheese" }
        /// Heat and vapour transfer between air and cheese.
        air_transfer = { |_| PLATE_SCALE, [Drying], "drying power of the air at a wet face" }
        /// How much cooler the last tray is than the first.
        tray_cooling = { |_| TRAY_COOLING, [Drying], "difference in air from tray to tray" }
        /// Water that the solids hold at each water activity.
        solids_hold = { |_| OSWIN_A, [Drying, Pickling], "water held by the solids" }
        /// Absolute temperature around the jar over what is chosen.
        warmth_of_jar = { |_| JAR_WARMTH, [Pickling, Keeping], "temperature around the jar" }
        /// Diffusivity of acid in the cheese.
        acid_obstruction = { |_| ACID_OBSTRUCTION, [Pickling], "speed of acid inside the cheese" }
        /// Diffusivity of acetate over that of the acid.
        acetate_mobility = { |_| ACETATE_MOBILITY, [Pickling], "speed of acetate inside the cheese" }
        /// pK of the acid.
        acid_pk = { |_| CONDITIONAL_PK, [Pickling], "strength of the acid among the salts (pK)" }
        /// Acid that the cheese takes up.
        buffer = { |_| BUFFER_SCALE, [Pickling], "acid that the cheese takes up (buffer)" }
        /// Diffusivity of salt in a cheese that lies in vinegar.
        salt_obstruction = { |_| SALT_OBSTRUCTION, [Pickling], "speed of salt out into the vinegar" }
        /// Growth rate of Listeria.
        listeria_rate = { |_| GrowthLaw::rate_record(Germ::Listeria), [Keeping], "growth of Listeria" }
        /// Growth rate of S. aureus.
        staphylococcus_rate = { |_| GrowthLaw::rate_record(Germ::Staphylococcus), [Keeping], "growth of Staphylococcus aureus" }
        /// Growth rate of Salmonella.
        salmonella_rate = { |_| GrowthLaw::rate_record(Germ::Salmonella), [Keeping], "growth of Salmonella" }
        /// Growth rate of E. coli.
        coli_rate = { |_| GrowthLaw::rate_record(Germ::Coli), [Keeping], "growth of Escherichia coli" }
        /// Growth rate of B. cereus.
        cereus_rate = { |_| GrowthLaw::rate_record(Germ::Cereus), [Keeping], "growth of Bacillus cereus" }
        /// Work of the lag of every germ, over its record.
        lag_work = { |_| USUAL_LAG_WORK, [Keeping], "time that newly arrived germs need before they grow" }
        /// Lactic acid that stops germs, over the records.
        lactic_inhibits = { |_| STAPHYLOCOCCUS_LACTIC, [Keeping], "lactic acid that stops germs" }
        /// Acetic acid that stops germs, over the records.
        acetic_inhibits = { |_| LISTERIA_ACETIC, [Keeping], "acetic acid that stops germs" }
        /// Water at the face of a cheese in vinegar.
        swelling = { |_| SWELLING_WATER, [Pickling], "water that the cheese takes up in the vinegar" }
    }
    set_only {
        /// Fat of the skimmed milk that brings milk down to its target.
        skim_fat = { |_| SKIM_FAT, [Milk], "fat left in skimmed milk" }
        /// Heat that comes to a cheese by radiation.
        radiation = { |_| RADIATION, [Drying], "heat by radiation in the drying air" }
        /// Transfer through the still film around a cheese in vinegar.
        acid_film = { |_| FILM_TRANSFER, [Pickling], "acid through the still film at the cheese" }
    }
}

impl UncertainParameters {
    /// Returns the drip under these parameters.
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
    match design.milk.treatment_in_vat() {
        MilkTreatment::Raw | MilkTreatment::Pasteurised => FAT_KEPT,
        MilkTreatment::Homogenised | MilkTreatment::UltraHeated => FAT_KEPT_HOMOGENISED,
    }
}

const fn culture_cells(design: &Design) -> Constant {
    match design.milk.culture_by {
        CultureBy::Packet => PACKET_CELLS,
        CultureBy::Bulk | CultureBy::Cells => BULK_STARTER_CELLS,
    }
}

const fn culture_rate(design: &Design) -> Constant {
    match design.milk.culture_kind {
        CultureKind::Mesophilic => MESOPHILIC_RATE,
        CultureKind::Mixed => MIXED_RATE,
        CultureKind::Thermophilic => THERMOPHILIC_RATE,
    }
}
