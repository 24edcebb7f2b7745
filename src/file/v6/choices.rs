//! The words of format 6 for what is one of a few.

use crate::file::frozen::frozen_choices;
use crate::file::v5 as before;

frozen_choices! {
    MilkKind (after before::MilkKind;) { Cow = "cow", Sheep = "sheep", Goat = "goat", Buffalo = "buffalo", Label = "label" }
    MilkTreatment (after before::MilkTreatment;) { Raw = "raw", Pasteurised = "pasteurised", Homogenised = "homogenised", UltraHeated = "ultra_heated" }
    CreamBy (after before::CreamBy;) { FatTarget = "fat_target", CreamAmount = "cream_amount" }
    CalciumForm (after before::CalciumForm;) { Anhydrous = "anhydrous", Dihydrate = "dihydrate", Solution = "solution" }
    RennetLabel (after before::RennetLabel;) { Imcu = "imcu", Ratio = "ratio" }
    PhKnown (after before::PhKnown;) { FromKind = "from_kind", Measured = "measured" }
    SouredBy (after before::SouredBy;) { Nothing = "nothing", Culture = "culture", Acid = "acid", Lactone = "lactone" }
    CultureKind (after before::CultureKind;) { Mesophilic = "mesophilic", Mixed = "mixed", Thermophilic = "thermophilic" }
    CultureBy (after before::CultureBy;) { Packet = "packet", Bulk = "bulk", Cells = "cells" }
    MilkAcid (after before::MilkAcid;) { Vinegar = "vinegar", Citric = "citric", Lactic = "lactic" }
    AcidBy (after before::AcidBy;) { Ph = "ph", Amount = "amount" }
    PhFrom (after before::PhFrom;) { Calculated = "calculated", Measured = "measured" }
    Heating (after before::Heating;) { Bath = "bath", DoubleBoiler = "double_boiler", Hob = "hob" }
    PotRest (after before::PotRest;) { Rack = "rack", Floor = "floor" }
    DryingPlace (after before::DryingPlace;) { Cabinet = "cabinet", OpenAir = "open_air" }
    VinegarBy (after before::VinegarBy;) { PerGram = "per_gram", Cover = "cover" }
    JarLay (after before::JarLay;) { Flat = "flat", OnEdge = "on_edge", + FlatTouching = "flat_touching" }
    KeptIn (after before::KeptIn;) { Vinegar = "vinegar", Oil = "oil", Bare = "bare" }
    Habitual (after before::Habitual;) { Sleep = "sleep", Work = "work" }
    BuyFor (after before::BuyFor;) { LeastCost = "least_cost", LeastWaste = "least_waste" }
    Good (after before::Good;) { Milk = "milk", Cream = "cream", SkimmedMilk = "skimmed_milk", Calcium = "calcium", Rennet = "rennet", Salt = "salt", Pepper = "pepper", Vinegar = "vinegar", Oil = "oil", + Culture = "culture", + MilkAcid = "acid_for_milk", + Lactone = "lactone", + SheepMilk = "sheep_milk", + GoatMilk = "goat_milk", + BuffaloMilk = "buffalo_milk" }
}
