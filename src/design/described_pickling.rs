//! A cheese and its vinegar described by themselves, for the pickling alone.

use super::Unit;
use super::field::{Field, Rows, stage_design};

stage_design! {
    /// One cheese of known size and composition with its share of the vinegar.
    DescribedPickling in Pickling {
        number diameter_mm: "Diameter", Unit::Millimetre, 52.0, 10.0..=250.0, 1.0; "Diameter of the cheese.";
        number thickness_mm: "Thickness", Unit::Millimetre, 14.0, 3.0..=150.0, 1.0; "Height of the cheese.";
        number moisture_percent: "Moisture", Unit::Percent, 37.0, 5.0..=85.0, 0.5; "Water, by mass. What is neither water nor protein nor one of the three below counts as fat.";
        number protein_percent: "Protein", Unit::Percent, 25.0, 1.0..=60.0, 0.5; "Protein, by mass; most of the acid is taken up by it.";
        number carbohydrate_percent: "Carbohydrate", Unit::Percent, 2.4, 0.0..=20.0, 0.1; "Carbohydrate, by mass.";
        number ash_percent: "Ash without salt", Unit::Percent, 2.3, 0.0..=10.0, 0.1; "Ash, by mass, common salt not counted.";
        number salt_percent: "Salt", Unit::Percent, 2.8, 0.0..=12.0, 0.1; "Common salt, by mass.";
        number start_ph: "pH at the start", Unit::One, 6.4, 4.0..=7.5, 0.1; "pH of the cheese when it comes into the vinegar.";
        number buffer_scale: "Buffer", Unit::Times, 1.0, 0.0..=5.0, 0.1; "How much more acid the cheese takes up than its composition says; likely 0.7 to 1.8.";
        number diffusivity_scale: "Diffusivity", Unit::Times, 1.0, 0.05..=10.0, 0.1; "How much faster acid moves in the cheese than judged; likely 0.5 to 2.";
        number acid_g_per_100ml: "Strength of the vinegar", Unit::GramIn100Millilitre, 5.0, 0.5..=10.0, 0.5; "Acetic acid, g in 100 mL; the label's per cent.";
        number vinegar_ml: "Vinegar", Unit::Millilitre, 70.0, 0.1..=5000.0, 5.0; "Vinegar for each cheese.";
        number pickling_temperature_c: "Temperature", Unit::Celsius, 4.0, 0.0..=40.0, 1.0; "Temperature of the jar.";
    }
}

/// The description of each member of it.
pub const DESCRIBED_PICKLING_FIELDS: &[Field<DescribedPickling>] = DescribedPickling::FIELDS;
