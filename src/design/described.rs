//! A cheese described by itself, for one stage alone: bought curd, or a check from outside.

use super::Unit;
use super::field::{Field, Rows, stage_design};

stage_design! {
    /// One cheese of known size and composition, as it comes to a stage.
    DescribedCheese in Drying {
        number diameter_mm: "Diameter", Unit::Millimetre, 64.0, 10.0..=250.0, 1.0; "Diameter of the cheese.";
        number thickness_mm: "Thickness", Unit::Millimetre, 21.0, 3.0..=150.0, 1.0; "Height of the cheese.";
        number moisture_percent: "Moisture", Unit::Percent, 59.0, 5.0..=85.0, 0.5; "Water, by mass.";
        number fat_percent: "Fat", Unit::Percent, 20.0, 0.0..=60.0, 0.5; "Fat, by mass.";
        number protein_percent: "Protein", Unit::Percent, 16.0, 1.0..=60.0, 0.5; "Protein, by mass.";
        number carbohydrate_percent: "Carbohydrate", Unit::Percent, 1.6, 0.0..=20.0, 0.1; "Carbohydrate, by mass.";
        number ash_percent: "Ash without salt", Unit::Percent, 1.5, 0.0..=10.0, 0.1; "Ash, by mass, common salt not counted.";
        number salt_percent: "Salt", Unit::Percent, 1.9, 0.0..=12.0, 0.1; "Common salt, by mass.";
        number start_temperature_c: "Cheese starts at", Unit::Celsius, 18.0, 0.0..=45.0, 0.5; "Temperature of the cheese when it comes to the stage.";
        number top_open_percent: "Open top", Unit::Percent, 100.0, 0.0..=100.0, 5.0; "How much of the top the air reaches.";
        number side_open_percent: "Open side", Unit::Percent, 100.0, 0.0..=100.0, 5.0; "How much of the side the air reaches.";
        number coat_s_m: "Coat holds back vapour by", Unit::SecondPerMetre, 100.0, 0.0..=1000.0, 10.0; "How much a coat slows the vapour in drying; a thin one of pepper about 40, a bare cheese 0.";
    }
}

/// The description of each member of it.
pub const DESCRIBED_CHEESE_FIELDS: &[Field<DescribedCheese>] = DescribedCheese::FIELDS;
