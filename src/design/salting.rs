//! The choices about salting.

use super::Unit;
use super::field::stage_design;

stage_design! {
    /// Salting between the turns.
    SaltingDesign in Salting (crate::design::Design, [salting]) {
        number salt_percent: "Salt", Unit::Percent, 1.9, 0.0..=6.0, 0.1; "Dry salt strewn in all, as a share of the drained curd by mass.";
        count salted_turns: "Salted turns", Unit::One, 2, 0..=24, 1; "At how many of the turns the upturned face is salted.";
        number salt_run_off_percent: "Salt lost with the drip", Unit::Percent, 12.0, 0.0..=60.0, 1.0; "Share of the salt that runs off with the whey; 5 to 20 % from memory, weak.";
    }
}
