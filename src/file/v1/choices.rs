//! The words of format 1 for inputs that are one of a few, frozen like the rest of the format.
//!
//! The working choices may gain members or be called otherwise; the compiler then asks here what the file shall say.

use crate::design;
use serde::{Deserialize, Serialize};

/// Declares the words of one choice as they stand in a file, with the way there and back.
macro_rules! saved_choices {
    ($( $name:ident { $( $variant:ident = $word:literal ),+ $(,)? } )+) => { $(
        #[derive(Clone, Copy, Serialize, Deserialize)]
        pub(super) enum $name { $( #[serde(rename = $word)] $variant, )+ }

        impl From<design::$name> for $name {
            fn from(choice: design::$name) -> Self {
                match choice { $( design::$name::$variant => Self::$variant, )+ }
            }
        }

        impl From<$name> for design::$name {
            fn from(saved: $name) -> Self {
                match saved { $( $name::$variant => Self::$variant, )+ }
            }
        }
    )+ };
}

saved_choices! {
    MilkKind { Cow = "cow", Sheep = "sheep", Goat = "goat", Buffalo = "buffalo", Label = "label" }
    MilkTreatment { Raw = "raw", Pasteurised = "pasteurised", Homogenised = "homogenised", UltraHeated = "ultra_heated" }
    CreamBy { FatTarget = "fat_target", CreamAmount = "cream_amount" }
    CalciumForm { Anhydrous = "anhydrous", Dihydrate = "dihydrate", Solution = "solution" }
    RennetLabel { Imcu = "imcu", Ratio = "ratio" }
    PhKnown { FromKind = "from_kind", Measured = "measured" }
    Heating { Bath = "bath", DoubleBoiler = "double_boiler", Hob = "hob" }
    PotRest { Rack = "rack", Floor = "floor" }
    DryingPlace { Cabinet = "cabinet", OpenAir = "open_air" }
}
