//! The words of format 7 for what is one of a few.

use crate::design;
use crate::file::frozen::frozen_choices;
use crate::file::v6 as before;

frozen_choices! {
    MilkKind (after before::MilkKind; for design::MilkKind;) { Cow = "cow", Sheep = "sheep", Goat = "goat", Buffalo = "buffalo", Label = "label" }
    MilkTreatment (after before::MilkTreatment; for design::MilkTreatment;) { Raw = "raw", Pasteurised = "pasteurised", Homogenised = "homogenised", UltraHeated = "ultra_heated" }
    CreamBy (after before::CreamBy; for design::CreamBy;) { FatTarget = "fat_target", CreamAmount = "cream_amount" }
    CalciumForm (after before::CalciumForm; for design::CalciumForm;) { Anhydrous = "anhydrous", Dihydrate = "dihydrate", Solution = "solution" }
    RennetLabel (after before::RennetLabel; for design::RennetLabel;) { Imcu = "imcu", Ratio = "ratio" }
    PhKnown (after before::PhKnown; for design::PhKnown;) { FromKind = "from_kind", Measured = "measured" }
    SouredBy (after before::SouredBy; for design::SouredBy;) { Nothing = "nothing", Culture = "culture", Acid = "acid", Lactone = "lactone" }
    CultureKind (after before::CultureKind; for design::CultureKind;) { Mesophilic = "mesophilic", Mixed = "mixed", Thermophilic = "thermophilic" }
    CultureBy (after before::CultureBy; for design::CultureBy;) { Packet = "packet", Bulk = "bulk", Cells = "cells" }
    MilkAcid (after before::MilkAcid; for design::MilkAcid;) { Vinegar = "vinegar", Citric = "citric", Lactic = "lactic" }
    AcidBy (after before::AcidBy; for design::AcidBy;) { Ph = "ph", Amount = "amount" }
    PhFrom (after before::PhFrom; for design::PhFrom;) { Calculated = "calculated", Measured = "measured" }
    Heating (after before::Heating; for design::Heating;) { Bath = "bath", DoubleBoiler = "double_boiler", Hob = "hob" }
    PotRest (after before::PotRest; for design::PotRest;) { Rack = "rack", Floor = "floor" }
    DryingPlace (after before::DryingPlace; for design::DryingPlace;) { Cabinet = "cabinet", OpenAir = "open_air" }
    VinegarBy (after before::VinegarBy; for design::VinegarBy;) { PerGram = "per_gram", Cover = "cover" }
    JarLay (after before::JarLay; for design::JarLay;) { Flat = "flat", OnEdge = "on_edge", FlatTouching = "flat_touching" }
    KeptIn (after before::KeptIn; for design::KeptIn;) { Vinegar = "vinegar", Oil = "oil", Bare = "bare" }
    Habitual (after before::Habitual; for design::Habitual;) { Sleep = "sleep", Work = "work" }
    BuyFor (after before::BuyFor; for design::BuyFor;) { LeastCost = "least_cost", LeastWaste = "least_waste" }
    Good (after before::Good; for design::Good;) { Milk = "milk", Cream = "cream", SkimmedMilk = "skimmed_milk", Calcium = "calcium", Rennet = "rennet", Salt = "salt", Pepper = "pepper", Vinegar = "vinegar", Oil = "oil", Culture = "culture", MilkAcid = "acid_for_milk", Lactone = "lactone", SheepMilk = "sheep_milk", GoatMilk = "goat_milk", BuffaloMilk = "buffalo_milk" }
}
