//! The words of format 1 for what is one of a few.

use crate::file::frozen::frozen_choices;

frozen_choices! {
    MilkKind () { Cow = "cow", Sheep = "sheep", Goat = "goat", Buffalo = "buffalo", Label = "label" }
    MilkTreatment () { Raw = "raw", Pasteurised = "pasteurised", Homogenised = "homogenised", UltraHeated = "ultra_heated" }
    CreamBy () { FatTarget = "fat_target", CreamAmount = "cream_amount" }
    CalciumForm () { Anhydrous = "anhydrous", Dihydrate = "dihydrate", Solution = "solution" }
    RennetLabel () { Imcu = "imcu", Ratio = "ratio" }
    PhKnown () { FromKind = "from_kind", Measured = "measured" }
    Heating () { Bath = "bath", DoubleBoiler = "double_boiler", Hob = "hob" }
    PotRest () { Rack = "rack", Floor = "floor" }
    DryingPlace () { Cabinet = "cabinet", OpenAir = "open_air" }
}
