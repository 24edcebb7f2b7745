//! The choices about milk, cream, calcium and rennet.

use super::field::stage_design;
use super::{
    AcidBy, CalciumForm, CreamBy, CultureBy, CultureKind, MilkAcid, MilkKind, MilkTreatment, PhKnown, RennetLabel, SouredBy, Unit,
};

stage_design! {
    /// Milk, cream, calcium and rennet.
    MilkDesign in Milk {
        number milk_l: "Milk", Unit::Litre, 6.0, 0.5..=60.0, 0.1; "How much milk you buy, before cream or skimmed milk is added.";
        MilkKind milk_kind: "Kind of milk", MilkKind::Cow; "The animal, or the fat and protein printed on your carton.";
        number label_fat_percent: "Fat on the carton", Unit::Percent, 3.6, 0.05..=12.0, 0.1; "Fat as printed, g per 100 g (g per 100 mL is about 3 % more).", when |d| d.milk_kind == MilkKind::Label;
        number label_protein_percent: "Protein on the carton", Unit::Percent, 3.3, 2.0..=8.0, 0.1; "Protein as printed, g per 100 g (g per 100 mL is about 3 % more).", when |d| d.milk_kind == MilkKind::Label;
        MilkTreatment milk_treatment: "Treatment of the milk", MilkTreatment::Homogenised; "What was done to the milk before it was sold; it changes how the curd sets and how much fat it keeps.";
        switch pasteurised_in_vat: "Pasteurise the raw milk in the vat", false; "Heat the raw milk with its cream, hold it hot and cool it quickly, before acid, culture, calcium or rennet goes in.", when |d| d.milk_treatment == MilkTreatment::Raw;
        number pasteurising_temperature_c: "Pasteurise at", Unit::Celsius, 63.0, 63.0..=75.0, 0.5; "Every drop is held at this or hotter. Rules give the time for 63 and 72 °C (rich milk: 66 and 75 °C); between them it is our own line.", when |d| d.pasteurises();
        number pasteurising_extra_min: "Extra time held hot", Unit::Minute, 0.0, 0.0..=60.0, 1.0; "Minutes on top of the time that the temperature asks for.", when |d| d.pasteurises();
        number pasteurising_bath_temperature_c: "Bath held at while pasteurising", Unit::Celsius, 68.0, 63.5..=98.0, 0.5; "Where the thermostat of a water bath is set for this step, hotter than the milk is to become.", when |d| d.pasteurises(), only in_bath;
        number cooling_water_l: "Cold water to cool the milk", Unit::Litre, 20.0, 1.0..=400.0, 1.0; "Water in the sink or tub that the hot pot is put into.", when |d| d.pasteurises();
        number cooling_water_temperature_c: "Temperature of the cold water", Unit::Celsius, 10.0, 0.5..=30.0, 0.5; "Temperature of that water when the pot goes in; with ice it is near 1 °C.", when |d| d.pasteurises();
        CreamBy cream_by: "Set cream from", CreamBy::FatTarget; "Aim for a fat target, or start from the cream that you have.";
        number fat_target_percent: "Fat target", Unit::Percent, 4.2, 0.5..=12.0, 0.1; "Fat of the milk in the vat, by mass.", when |d| d.cream_by == CreamBy::FatTarget;
        number cream_on_hand_ml: "Cream at hand", Unit::Millilitre, 200.0, 0.0..=5000.0, 10.0; "How much cream you have and mean to add.", when |d| d.cream_by == CreamBy::CreamAmount;
        number cream_strength_percent: "Cream fat", Unit::Percent, 30.0, 10.0..=48.0, 1.0; "Fat of the cream, by mass, as printed on its carton.";
        number fridge_temperature_c: "Temperature of the milk as poured", Unit::Celsius, 5.0, 1.0..=25.0, 0.5; "Temperature of milk and cream when you measure them out and start to warm them.";
        CalciumForm calcium_form: "Form of calcium chloride", CalciumForm::Dihydrate; "Which calcium chloride you have. The dose changes by about a third between the forms, so read the label.";
        number calcium_solution_percent: "Strength of the calcium solution", Unit::Percent, 33.0, 5.0..=40.0, 1.0; "Anhydrous calcium chloride in the solution, by mass.", when |d| d.calcium_form == CalciumForm::Solution;
        switch calcium_drops_counted: "I have counted the drops of my calcium chloride solution", false; "How many drops of this bottle make 1 mL. Amounts too small for a spoon are then given in drops.", when |d| d.calcium_form == CalciumForm::Solution;
        number calcium_drops_in_ml: "Drops in 1 mL of the solution", Unit::One, 20.0, 10.0..=40.0, 0.5; "Fill a level 5 mL spoon drop by drop, count, and divide by 5. Do it again with every new bottle.", when |d| d.calcium_form == CalciumForm::Solution && d.calcium_drops_counted;
        number calcium_dose_percent: "Calcium chloride dose", Unit::Percent, 0.014, 0.0..=0.04, 0.001; "Anhydrous calcium chloride in the milk, by mass; several food laws allow 0.02 %.";
        RennetLabel rennet_label: "Rennet label says", RennetLabel::Imcu; "How the strength is printed on your rennet.";
        number rennet_strength_imcu_ml: "Rennet strength", Unit::ImcuPerMillilitre, 180.0, 20.0..=2500.0, 5.0; "International milk-clotting units in a millilitre (for powder: in a gram).", when |d| d.rennet_label == RennetLabel::Imcu;
        number rennet_ratio_parts: "Rennet ratio, 1 part to", Unit::Parts, 12_000.0, 1000.0..=200_000.0, 500.0; "Parts of milk that one part of rennet clots in 40 minutes at 35 °C.", when |d| d.rennet_label == RennetLabel::Ratio;
        number rennet_dose_imcu_kg: "Rennet dose", Unit::ImcuPerKilogram, 38.0, 10.0..=120.0, 1.0; "Milk-clotting units in each kilogram of milk.";
        number rennet_dilution_times: "Dilution of the rennet", Unit::Times, 15.0, 1.0..=40.0, 1.0; "Cool, unchlorinated water for the rennet, as a multiple of its volume.";
        switch rennet_drops_counted: "I have counted the drops of my liquid rennet", false; "How many drops of this bottle make 1 mL. Amounts too small for a spoon are then given in drops.";
        number rennet_drops_in_ml: "Drops in 1 mL of the rennet", Unit::One, 20.0, 10.0..=40.0, 0.5; "Fill a level 5 mL spoon drop by drop, count, and divide by 5. Do it again with every new bottle.", when |d| d.rennet_drops_counted;
        PhKnown ph_known: "Acidity of the milk", PhKnown::FromKind; "Use the usual pH of this milk, or the one you measured.";
        number milk_ph: "Measured pH of the milk", Unit::One, 6.65, 5.8..=7.0, 0.01; "pH of the milk by your own meter.", when |d| d.ph_known == PhKnown::Measured;
        SouredBy soured_by: "What sours the milk", SouredBy::Nothing; "A culture or an acid sours milk and curd early, which slows germs but does not undo what has grown; without either a fresh cheese stays near pH 6.5.";
        CultureKind culture_kind: "Kind of culture", CultureKind::Mesophilic; "The temperatures that it likes; the packet names the kind.", when |d| d.soured_by == SouredBy::Culture;
        CultureBy culture_by: "Culture measured in", CultureBy::Packet; "Packets as bought; living cells only if a laboratory counted them.", when |d| d.soured_by == SouredBy::Culture;
        number culture_packet_l: "Milk that one packet is for", Unit::Litre, 10.0, 0.5..=1000.0, 0.5; "Litres of milk that one packet sours, as printed on it.", when |d| d.soured_by == SouredBy::Culture && d.culture_by == CultureBy::Packet;
        number culture_packets: "Packets used", Unit::One, 0.6, 0.01..=20.0, 0.05; "How many packets go into the milk; a part of one is a decimal, 0.5 for half.", when |d| d.soured_by == SouredBy::Culture && d.culture_by == CultureBy::Packet;
        number culture_bulk_percent: "Bulk starter", Unit::Percent, 1.0, 0.05..=10.0, 0.1; "Soured milk with a living culture, as a share of the milk by mass.", when |d| d.soured_by == SouredBy::Culture && d.culture_by == CultureBy::Bulk;
        number culture_cells_million_g: "Living cells in the milk", Unit::MillionPerGram, 10.0, 0.01..=500.0, 1.0; "Living cells of the culture in each gram of milk, in millions.", when |d| d.soured_by == SouredBy::Culture && d.culture_by == CultureBy::Cells;
        number ripening_temperature_c: "Add the culture at", Unit::Celsius, 30.0, 10.0..=45.0, 0.5; "Milk temperature at which the culture is stirred in, and at which the milk is kept while it ripens.", when |d| d.soured_by == SouredBy::Culture;
        number ripening_h: "Hours of ripening", Unit::Hour, 1.0, 0.0..=24.0, 0.25; "How long the milk is kept at that temperature with the culture, before it is warmed on to the rennet.", when |d| d.soured_by == SouredBy::Culture;
        MilkAcid milk_acid: "Acid for the milk", MilkAcid::Citric; "Which acid you stir into the cold milk.", when |d| d.soured_by == SouredBy::Acid;
        AcidBy acid_by: "Set the acid from", AcidBy::Ph; "Aim for a pH of the cold milk, or give the amount of acid.", when |d| d.soured_by == SouredBy::Acid;
        number soured_milk_ph: "pH wanted in the cold milk", Unit::One, 6.2, 5.2..=6.7, 0.05; "pH that the acid is to bring the cold milk to; lower, warm milk clots before the rennet.", when |d| d.soured_by == SouredBy::Acid && d.acid_by == AcidBy::Ph;
        number milk_acid_g_l: "Acid for each litre of milk", Unit::GramPerLitre, 1.0, 0.0..=12.0, 0.1; "Pure acid for each litre of milk; vinegar of 5 g in 100 mL has 0.5 g in each 10 mL.", when |d| d.soured_by == SouredBy::Acid && d.acid_by == AcidBy::Amount;
        number milk_vinegar_g_per_100ml: "Strength of the vinegar for the milk", Unit::GramIn100Millilitre, 5.0, 1.0..=25.0, 0.5; "Acetic acid, g in 100 mL; the label's per cent.", when |d| d.soured_by == SouredBy::Acid && d.milk_acid == MilkAcid::Vinegar;
        number lactic_acid_percent: "Strength of the lactic acid", Unit::Percent, 80.0, 5.0..=95.0, 1.0; "Lactic acid in the solution, by mass, as printed on its bottle.", when |d| d.soured_by == SouredBy::Acid && d.milk_acid == MilkAcid::Lactic;
        number lactone_g_l: "GDL for each litre", Unit::GramPerLitre, 5.0, 0.5..=25.0, 0.5; "Grams for each litre of milk, stirred in just before the rennet.", when |d| d.soured_by == SouredBy::Lactone;
    }
}

impl MilkDesign {
    /// Returns whether raw milk is pasteurised in the vat.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::{MilkDesign, MilkTreatment};
    /// let bought = MilkDesign { pasteurised_in_vat: true, ..MilkDesign::default() };
    /// assert!(!bought.pasteurises() && MilkDesign { milk_treatment: MilkTreatment::Raw, ..bought }.pasteurises());
    /// ```
    #[must_use]
    pub const fn pasteurises(&self) -> bool {
        matches!(self.milk_treatment, MilkTreatment::Raw) && self.pasteurised_in_vat
    }

    /// Returns what has been done to the milk when the culture or the rennet goes in: raw milk may be pasteurised in the vat.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::{MilkDesign, MilkTreatment};
    /// let raw = MilkDesign { milk_treatment: MilkTreatment::Raw, pasteurised_in_vat: true, ..MilkDesign::default() };
    /// assert_eq!(raw.treatment_in_vat(), MilkTreatment::Pasteurised);
    /// ```
    #[must_use]
    pub const fn treatment_in_vat(&self) -> MilkTreatment {
        if self.pasteurises() { MilkTreatment::Pasteurised } else { self.milk_treatment }
    }
}
