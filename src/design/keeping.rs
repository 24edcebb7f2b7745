//! The choices about the jar and its keeping.

use super::field::stage_design;
use super::{KeptIn, Unit};

stage_design! {
    /// What the cheeses are kept in, where, and how long.
    KeepingDesign in Keeping {
        KeptIn kept_in: "What they are kept in", KeptIn::Vinegar; "What is in the jar after the soak.";
        number poured_off_percent: "Vinegar poured off", Unit::Percent, 75.0, 0.0..=100.0, 5.0; "Share of the vinegar in the jar that is poured away before the oil.", when |d| d.kept_in == KeptIn::Oil;
        number keeping_temperature_c: "Keeping temperature", Unit::Celsius, 4.0, 0.0..=35.0, 0.5; "Temperature of the jar after the soak.";
        number keeping_days: "Keeping time", Unit::Day, 14.0, 0.0..=365.0, 1.0; "Days from the end of the soak to the day when what is left is discarded.";
    }
}
