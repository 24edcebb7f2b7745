//! The one table of what can be written down, in the order of the trade: command line, paper and window read it.

use super::Anchor::{Rennet, Start};
use super::reading::{HYGROMETER_SPREAD, METER_SPREAD, SCALE_SPREAD};
use super::{Beside, Holds, Line};
use crate::design::{Stage, Unit, did_you_mean, nearest};
use crate::law::kitchen::THERMOMETER_SPREAD;

/// One kind of entry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KindRow {
    /// Its key on the command line and in files, its unit included; it never changes.
    pub key: &'static str,
    /// What it is, in a maker's words.
    pub label: &'static str,
    /// What stands under its blank on paper, with its unit; empty where paper has a box to tick or no room.
    pub blank: &'static str,
    /// The same in the short form of a hold; empty where no hold asks for it.
    pub held: &'static str,
    /// What is written down.
    pub holds: Holds,
    /// The stage that it belongs to.
    pub stage: Stage,
    /// What of the plan it is laid beside.
    pub beside: Beside,
}

/// Declares [`EntryKind`] and its rows together, so that none can be left out.
macro_rules! kinds {
    ($( $(#[$doc:meta])* $kind:ident = {
        $key:literal, $label:literal, $blank:literal, $held:literal, $holds:expr, $stage:ident, $beside:expr
    } )*) => {
        /// What can be written down.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum EntryKind { $( $(#[$doc])* $kind, )* }

        impl EntryKind {
            /// Every kind, in the order of the trade.
            pub const ALL: &[Self] = &[ $( Self::$kind ),* ];

            /// Returns its row.
            #[must_use]
            pub const fn row(self) -> KindRow {
                match self { $( Self::$kind => KindRow {
                    key: $key, label: $label, blank: $blank, held: $held, holds: $holds, stage: Stage::$stage, beside: $beside,
                }, )* }
            }
        }
    };
}

/// Returns a temperature, read to what a kitchen thermometer can.
const fn celsius(least: f64, most: f64) -> Holds {
    Holds::Number { unit: Unit::Celsius, least, most, decimals: 1, reads_to: THERMOMETER_SPREAD.value }
}

/// Returns a pH, read to what a meter can.
const fn ph() -> Holds {
    Holds::Number { unit: Unit::One, least: 2.0, most: 8.0, decimals: 2, reads_to: METER_SPREAD.value }
}

/// Returns an amount that is weighed or poured.
const fn amount(unit: Unit, most: f64, decimals: usize, reads_to: f64) -> Holds {
    Holds::Number { unit, least: 0.0, most, decimals, reads_to }
}

/// Returns a weight in grams.
const fn grams(most: f64, decimals: usize) -> Holds {
    amount(Unit::Gram, most, decimals, SCALE_SPREAD.value)
}

kinds! {
    /// Words on the milk's label.
    MilkLabel = { "milk_label", "What the label of the milk says", "", "", Holds::Words, Milk, Beside::Nothing }
    /// Its date and its code.
    MilkDateCode = { "milk_date_code", "Date and code on the milk", "", "", Holds::Words, Milk, Beside::Nothing }
    /// What pot, tools and moulds were sanitised with.
    SanitisedWith = { "sanitised_with", "Tools sanitised with", "how", "", Holds::Words, Milk, Beside::Nothing }
    /// Milk into the pot.
    MilkPoured = { "milk_l", "Milk into the pot", "milk, L", "", amount(Unit::Litre, 200.0, 2, 0.05), Milk, Beside::Choice("milk_l") }
    /// Cream into the pot.
    CreamPoured = { "cream_g", "Cream into the pot", "cream, g", "", amount(Unit::Gram, 50_000.0, 0, 5.0), Milk, Beside::Figure("cream_g") }
    /// Warming begins.
    WarmingBegan = { "warming_began", "Warming began", "", "", Holds::Done, Vat, Beside::Nothing }
    /// The coldest place of raw milk while it is heated.
    HeatedMilk = { "heated_milk_c", "Raw milk, coldest place while heated", "coldest milk, °C", "", celsius(0.0, 100.0), Vat, Beside::Line(Line::Milk) }
    /// The coldest place of raw milk while it is kept hot.
    HeldMilk = { "held_milk_c", "Raw milk, coldest place while held hot", "coldest, °C, from when to when", "", celsius(0.0, 100.0), Vat, Beside::Line(Line::Milk) }
    /// pH of the cold milk.
    ColdMilkPh = { "cold_milk_ph", "pH of the cold milk", "pH of the milk", "", ph(), Milk, Beside::Figure("cold_milk_ph") }
    /// The culture goes in.
    CultureAdded = { "culture_added", "Culture stirred in", "clock time", "", Holds::Done, Vat, Beside::Minutes(Start, "to_culture_min") }
    /// Temperature of the milk.
    MilkTemperature = { "milk_c", "Temperature of the milk", "milk, °C", "°C", celsius(0.0, 100.0), Vat, Beside::Line(Line::Milk) }
    /// Temperature of the bath.
    BathTemperature = { "bath_c", "Temperature of the bath, or of the hot spot", "", "", celsius(0.0, 110.0), Vat, Beside::Line(Line::Bath) }
    /// Calcium chloride.
    CalciumAdded = { "calcium_g", "Amount of calcium chloride", "calcium, g", "", amount(Unit::Gram, 500.0, 2, 0.1), Vat, Beside::Figure("calcium_g") }
    /// GDL.
    LactoneAdded = { "lactone_g", "Amount of GDL", "GDL, g", "", amount(Unit::Gram, 2_000.0, 1, 0.5), Vat, Beside::Figure("lactone_g") }
    /// The rennet goes in.
    RennetAdded = { "rennet_added", "Rennet stirred in", "clock time", "", Holds::Done, Vat, Beside::Minutes(Start, "to_rennet_min") }
    /// How much rennet.
    RennetPoured = { "rennet_ml", "Amount of rennet", "", "", amount(Unit::Millilitre, 500.0, 2, 0.05), Vat, Beside::Figure("rennet_ml") }
    /// The curd breaks clean.
    CleanBreak = { "clean_break", "Clean break", "clean break, clock time", "at", Holds::Done, Vat, Beside::Minutes(Rennet, "clean_break_min") }
    /// The curd is cut.
    CurdCut = { "curd_cut", "Curd cut", "clock time", "", Holds::Done, Vat, Beside::Minutes(Rennet, "cut_min") }
    /// Whey in the vat after the rest.
    VatWhey = { "vat_whey_kg", "Whey in the vat", "whey, kg", "", amount(Unit::Kilogram, 200.0, 2, 0.05), Vat, Beside::Nothing }
    /// The curd goes into the moulds.
    Ladled = { "ladled", "Curd ladled", "", "", Holds::Done, Draining, Beside::Minutes(Start, "to_ladle_min") }
    /// Moulds that were filled.
    MouldsFilled = { "moulds_filled", "Moulds filled", "moulds filled", "", amount(Unit::One, 500.0, 0, 0.5), Draining, Beside::Choice("mould_count") }
    /// Salt of one turn.
    TurnSalt = { "turn_salt_g", "Salt at a turn", "salt, g", "", amount(Unit::Gram, 5_000.0, 1, 0.5), Salting, Beside::Figure("salt_turn_g") }
    /// Whey that is poured off at a turn.
    TurnWhey = { "turn_whey_g", "Whey poured off at a turn", "whey, g", "", amount(Unit::Gram, 50_000.0, 0, 10.0), Draining, Beside::Line(Line::Whey) }
    /// pH of the curd on the way.
    CurdPh = { "curd_ph", "pH of the curd", "pH", "", ph(), Draining, Beside::Line(Line::CurdPh) }
    /// Weight of the marked cheese.
    CheeseWeight = { "cheese_g", "Weight of the marked cheese", "one cheese, g", "", grams(20_000.0, 0), Drying, Beside::Line(Line::CheeseWeight) }
    /// pH of a cheese at unmoulding.
    UnmouldedPh = { "unmoulded_ph", "pH at unmoulding, first cheese", "pH", "first", ph(), Draining, Beside::Line(Line::CurdPh) }
    /// pH of a second one.
    UnmouldedSecondPh = { "unmoulded_second_ph", "pH at unmoulding, second cheese", "pH, second cheese", "second", ph(), Draining, Beside::Line(Line::CurdPh) }
    /// Pepper that is left over.
    PepperLeft = { "pepper_left_g", "Pepper left over", "pepper left, g", "", grams(5_000.0, 0), Salting, Beside::Nothing }
    /// The cheeses go to the air.
    AirBegan = { "air_began", "Cheeses laid out to dry", "", "", Holds::Done, Drying, Beside::Nothing }
    /// Temperature of the drying air.
    AirTemperature = { "air_c", "Temperature of the drying air", "air, °C", "", celsius(-20.0, 60.0), Drying, Beside::Choice("cabinet_temperature_c") }
    /// Humidity of the drying air.
    AirHumidity = { "air_humidity_percent", "Humidity of the drying air", "", "", amount(Unit::Percent, 100.0, 0, HYGROMETER_SPREAD.value), Drying, Beside::Figure("air_humidity_percent") }
    /// Vinegar.
    VinegarPoured = { "vinegar_ml", "Vinegar poured", "vinegar, mL", "", amount(Unit::Millilitre, 200_000.0, 0, 20.0), Pickling, Beside::Figure("vinegar_ml") }
    /// pH at the centre of a cheese.
    CentrePh = { "centre_ph", "pH in the centre of a cheese from the vinegar", "pH, centre", "centre", ph(), Pickling, Beside::Line(Line::CentrePh) }
    /// pH of a blended sample.
    BlendedPh = { "blended_ph", "pH of a whole mashed cheese from the vinegar", "pH, blended", "blended", ph(), Pickling, Beside::Line(Line::BlendedPh) }
    /// Who measured.
    Initials = { "initials", "Initials of whoever measured", "initials", "initials", Holds::Words, Pickling, Beside::Nothing }
    /// Temperature of the fridge.
    FridgeTemperature = { "fridge_c", "Temperature of the fridge", "fridge, °C", "", celsius(-30.0, 30.0), Keeping, Beside::Choice("keeping_temperature_c") }
    /// Cheeses that are left.
    CheesesLeft = { "cheeses_left", "Cheeses still there", "cheeses left", "", amount(Unit::One, 500.0, 0, 0.5), Keeping, Beside::Nothing }
    /// A task of the plan, by its key.
    TaskBegun = { "task_begun", "Task of the plan begun", "", "", Holds::Task, Keeping, Beside::Nothing }
    /// Any other task.
    OtherTask = { "task_done", "Another task done (say which in a note)", "clock time", "", Holds::Done, Keeping, Beside::Nothing }
    /// Taste.
    Taste = { "taste", "Taste", "", "", Holds::Words, Keeping, Beside::Nothing }
    /// Texture.
    Texture = { "texture", "Texture", "", "", Holds::Words, Keeping, Beside::Nothing }
    /// Anything else, and what the maker would change.
    Note = { "note", "Note, and what I would change", "", "", Holds::Words, Keeping, Beside::Nothing }
    /// A picture.
    Photo = { "photo", "Photo, name of its file", "", "", Holds::Photo, Keeping, Beside::Nothing }
}

impl EntryKind {
    /// Returns its key.
    #[must_use]
    pub const fn key(self) -> &'static str {
        self.row().key
    }

    /// Returns the kind with this key.
    ///
    /// # Example
    /// ```
    /// use vatsketch::record::EntryKind;
    /// assert_eq!(EntryKind::from_key("cheese_g"), Some(EntryKind::CheeseWeight));
    /// ```
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.key() == key)
    }

    /// Returns whether the plan's number is the least that has to be reached: nearness of the instrument is no leeway below it.
    #[must_use]
    pub const fn has_to_be_reached(self) -> bool {
        matches!(self, Self::HeldMilk)
    }

    /// Returns what is said of it once it was done: a clean break is seen, nobody does it.
    #[must_use]
    pub const fn done_word(self) -> &'static str {
        if matches!(self, Self::CleanBreak) { "seen" } else { "done" }
    }

    /// Returns whether paper has no blank for it: a box to tick says the same, or there is no room.
    #[must_use]
    pub const fn is_off_paper(self) -> bool {
        let row = self.row();
        row.blank.is_empty() && row.held.is_empty()
    }

    /// Returns the known key that is spelled most like a wrong one, as the end of a sentence; empty where none is near.
    #[must_use]
    pub fn meant(key: &str) -> String {
        did_you_mean(nearest(key, Self::ALL.iter().map(|kind| kind.key())))
    }
}
