//! The inputs that are one of a few.

use super::Choice;
use serde::{Deserialize, Serialize};

/// Declares an input that is one of a few: the enum, the key and the words of each choice.
macro_rules! choices {
    ($( $(#[$doc:meta])* $name:ident { $( $(#[$variant_doc:meta])* $variant:ident = $key:literal, $label:literal; )+ } )+) => { $(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        pub enum $name { $( $(#[$variant_doc])* #[serde(rename = $key)] $variant, )+ }
        impl $name {
            /// Every one of them, in order.
            pub const ALL: &'static [Self] = &[ $( Self::$variant, )+ ];

            /// Every choice with its key and its words.
            pub const CHOICES: &'static [Choice] = &[ $( Choice { key: $key, label: $label }, )+ ];

            /// Returns the word on the command line and in the file.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $( Self::$variant => $key, )+ }
            }

            /// Returns the words in the window.
            #[must_use]
            pub const fn label(self) -> &'static str {
                match self { $( Self::$variant => $label, )+ }
            }

            /// Returns the choice with this key, if there is one.
            #[must_use]
            pub fn from_key(key: &str) -> Option<Self> {
                match key { $( $key => Some(Self::$variant), )+ _ => None }
            }
        }
    )+ };
}

choices! {
    /// The animal, or the figures on the maker's own carton.
    MilkKind {
        /// Cow's milk.
        Cow = "cow", "Cow";
        /// Sheep's milk.
        Sheep = "sheep", "Sheep";
        /// Goat's milk.
        Goat = "goat", "Goat";
        /// Buffalo's milk.
        Buffalo = "buffalo", "Buffalo";
        /// Fat and protein as the carton says, everything else as cow's milk.
        Label = "label", "As on my carton";
    }
    /// What was done to the milk before it was sold.
    MilkTreatment {
        /// Not heated.
        Raw = "raw", "Raw";
        /// Pasteurised, the cream still rises.
        Pasteurised = "pasteurised", "Pasteurised";
        /// Pasteurised and homogenised.
        Homogenised = "homogenised", "Pasteurised, homogenised";
        /// Heated so far that it keeps unopened without cold.
        UltraHeated = "ultra_heated", "Ultra-heated (UHT)";
    }
    /// What decides how much cream goes in.
    CreamBy {
        /// The fat that the milk of the vat shall have.
        FatTarget = "fat_target", "A fat target";
        /// The cream that is at hand.
        CreamAmount = "cream_amount", "The cream I have";
    }
    /// Which calcium chloride is in the house.
    CalciumForm {
        /// Without water of crystallisation.
        Anhydrous = "anhydrous", "Anhydrous";
        /// With two waters of crystallisation, the usual flakes.
        Dihydrate = "dihydrate", "Dihydrate flakes";
        /// Dissolved.
        Solution = "solution", "Solution";
    }
    /// How the label of the rennet states its strength.
    RennetLabel {
        /// International milk-clotting units.
        Imcu = "imcu", "IMCU per mL";
        /// One part clots so many parts of milk.
        Ratio = "ratio", "Ratio 1 : N";
    }
    /// Where the acidity of the milk comes from.
    PhKnown {
        /// The usual pH of this kind of milk.
        FromKind = "from_kind", "The usual pH of this milk";
        /// The maker's own meter.
        Measured = "measured", "Measured";
    }
    /// What sours the milk.
    SouredBy {
        /// Nothing.
        Nothing = "nothing", "Nothing";
        /// A culture of lactic acid bacteria.
        Culture = "culture", "A culture";
        /// An acid, stirred into the cold milk.
        Acid = "acid", "An acid stirred in";
        /// Glucono-delta-lactone, which splits into an acid by and by.
        Lactone = "lactone", "GDL (glucono-delta-lactone)";
    }
    /// The kind of culture, by the temperature that it likes.
    CultureKind {
        /// Likes about 30 °C.
        Mesophilic = "mesophilic", "Mesophilic (likes about 30 °C)";
        /// Species of both kinds.
        Mixed = "mixed", "Mixed (likes about 38 °C)";
        /// Likes about 42 °C.
        Thermophilic = "thermophilic", "Thermophilic (likes about 42 °C)";
    }
    /// How the culture is measured.
    CultureBy {
        /// Packets of dried culture.
        Packet = "packet", "Packets of dried culture";
        /// Soured milk or whey that holds the culture.
        Bulk = "bulk", "Bulk starter (soured milk)";
        /// The number of living cells.
        Cells = "cells", "Living cells";
    }
    /// Which acid is stirred into the milk.
    MilkAcid {
        /// Vinegar.
        Vinegar = "vinegar", "Vinegar";
        /// Citric acid, dry.
        Citric = "citric", "Citric acid";
        /// Lactic acid, a solution.
        Lactic = "lactic", "Lactic acid";
    }
    /// What decides how much acid goes in.
    AcidBy {
        /// The pH that the milk shall have.
        Ph = "ph", "The pH I want";
        /// The amount.
        Amount = "amount", "The amount";
    }
    /// Where a pH on the way comes from.
    PhFrom {
        /// What was calculated of milk and souring.
        Calculated = "calculated", "As calculated";
        /// The maker's own meter.
        Measured = "measured", "As I measured it";
    }
    /// How the milk is warmed.
    Heating {
        /// The pot is in a bath of warm water.
        Bath = "bath", "Water bath";
        /// The pot is over boiling water.
        DoubleBoiler = "double_boiler", "Double boiler";
        /// The pot is on the plate itself.
        Hob = "hob", "Straight on the hob";
    }
    /// How the pot is placed in the bath.
    PotRest {
        /// On an open rack, the water reaches its base.
        Rack = "rack", "On a rack";
        /// Flat on the floor of the bath.
        Floor = "floor", "Flat on the bottom of the bath";
    }
    /// Where the cheeses dry.
    DryingPlace {
        /// In a cabinet that warms and moves the air.
        Cabinet = "cabinet", "Warm cabinet";
        /// In the open air, by day and by night.
        OpenAir = "open_air", "Open air";
    }
    /// What decides how much vinegar goes on.
    VinegarBy {
        /// So much for each gram of cheese.
        PerGram = "per_gram", "By cheese weight";
        /// As much as covers the cheeses in their jar.
        Cover = "cover", "Just enough to cover";
    }
    /// How the cheeses lie in the jar.
    JarLay {
        /// Flat, one on the other, with something between them that lets the vinegar to every face.
        Flat = "flat", "Flat, mesh between";
        /// Flat, one on the other, face to face: they sour as one thick body.
        FlatTouching = "flat_touching", "Flat, stacked with nothing between";
        /// Standing on their edge in rows.
        OnEdge = "on_edge", "On edge, gaps between";
    }
    /// What the cheeses are kept in after the soak.
    KeptIn {
        /// The vinegar that soured them.
        Vinegar = "vinegar", "The vinegar of the soak";
        /// Oil, after most of the vinegar was poured off.
        Oil = "oil", "Oil";
        /// Nothing: they are taken out.
        Bare = "bare", "Nothing (taken out, bare)";
    }
    /// Why hands are not free on the same days of every week.
    Habitual {
        /// Asleep.
        Sleep = "sleep", "Sleep";
        /// At work.
        Work = "work", "Work";
    }
    /// What counts first in buying.
    BuyFor {
        /// Price, and a price on what is left over.
        LeastCost = "least_cost", "Least cost";
        /// What is left over, then price.
        LeastWaste = "least_waste", "Least waste";
    }
    /// Something to buy.
    Good {
        /// Milk.
        Milk = "milk", "Milk";
        /// Cream.
        Cream = "cream", "Cream";
        /// Skimmed milk.
        SkimmedMilk = "skimmed_milk", "Skimmed milk";
        /// Calcium chloride, as a solid or dissolved.
        Calcium = "calcium", "Calcium chloride";
        /// Rennet.
        Rennet = "rennet", "Rennet";
        /// Salt.
        Salt = "salt", "Salt";
        /// Pepper.
        Pepper = "pepper", "Pepper";
        /// Vinegar.
        Vinegar = "vinegar", "Vinegar";
        /// Oil.
        Oil = "oil", "Oil";
        /// Starter culture.
        Culture = "culture", "Starter culture";
        /// Acid that is stirred into the milk.
        MilkAcid = "acid_for_milk", "Acid for the milk";
        /// Glucono-delta-lactone.
        Lactone = "lactone", "Glucono-delta-lactone";
        /// Milk of sheep.
        SheepMilk = "sheep_milk", "Sheep's milk";
        /// Milk of goats.
        GoatMilk = "goat_milk", "Goat's milk";
        /// Milk of buffaloes.
        BuffaloMilk = "buffalo_milk", "Buffalo's milk";
    }
}
