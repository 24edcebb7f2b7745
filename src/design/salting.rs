//! The choices about salt and pepper.

use super::Unit;
use super::field::stage_design;

stage_design! {
    /// Salting between the turns, and the pepper that the cheeses are rolled in.
    SaltingDesign in Salting {
        number salt_percent: "Salt", Unit::Percent, 1.9, 0.0..=6.0, 0.1; "Dry salt sprinkled on the cheeses, as a share of the drained curd by mass.";
        count salted_turns: "Turns with salt", Unit::One, 2, 0..=24, 1; "Number of turns at which the upper face is salted.";
        number salt_run_off_percent: "Salt lost with the drip", Unit::Percent, 12.0, 0.0..=60.0, 1.0; "Share of the salt that runs off with the whey; 5 to 20 % (from memory, uncertain).";
        number pepper_g_dm2: "Pepper", Unit::GramPerSquareDecimetre, 2.2, 0.0..=10.0, 0.1; "Ground pepper that clings to the cheeses when they are rolled in it; 1 dm² is 10 cm by 10 cm.";
        switch pepper_treated: "Pepper was treated", true; "Steamed or otherwise treated against germs, as the packet says, or heated through by you.", when |d| d.pepper_g_dm2 > 0.0;
    }
}
