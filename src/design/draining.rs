//! The choices about moulds and draining.

use super::field::stage_design;
use super::{PhFrom, Unit};

stage_design! {
    /// Moulds and draining.
    DrainingDesign in Draining {
        count mould_count: "Number of moulds", Unit::One, 12, 1..=200, 1; "How many basket moulds you fill; each makes one cheese.";
        number mould_diameter_mm: "Mould width inside", Unit::Millimetre, 68.0, 20.0..=250.0, 1.0; "Inner diameter of a mould, half way up.";
        number mould_height_mm: "Mould depth inside", Unit::Millimetre, 70.0, 10.0..=300.0, 1.0; "Inner depth of a mould, to the rim.";
        number drip_end_moisture_percent: "Moisture when the drip stops", Unit::Percent, 61.0, 50.0..=75.0, 0.5; "Water in the curd when no more whey leaves it; weigh a cheese to learn your own.";
        count turn_count: "Number of turns", Unit::One, 5, 0..=24, 1; "How many times the cheeses are turned in the moulds.";
        number turn_gap_h: "Hours between turns", Unit::Hour, 6.0, 0.5..=24.0, 0.5; "Time from one turn to the next, and from the last to unmoulding.";
        number draining_temperature_c: "Draining temperature", Unit::Celsius, 16.0, 2.0..=35.0, 1.0; "Temperature around the moulds. Cold slows the drip, and it slows germs and souring.";
        PhFrom ladled_ph_from: "pH when draining begins", PhFrom::Calculated; "Take the pH of the curd in the moulds as it is calculated, or as your meter said; from there on the rest follows.";
        number ladled_ph: "Measured pH when draining begins", Unit::One, 6.3, 4.2..=7.0, 0.05; "pH of the whey or of the curd by your own meter when the curd is in the moulds.", when |d| d.ladled_ph_from == PhFrom::Measured;
    }
}
