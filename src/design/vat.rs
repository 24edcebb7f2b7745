//! The choices about warming, setting and cutting.

use super::field::stage_design;
use super::{Heating, PotRest, Unit};

stage_design! {
    /// Warming, setting and cutting.
    VatDesign in Vat {
        Heating heating: "Warmed by", Heating::Bath; "How the milk is warmed.";
        number bath_l: "Water in the bath", Unit::Litre, 8.0, 1.0..=80.0, 0.5; "Water around the pot.", when |d| d.heating == Heating::Bath;
        number bath_start_temperature_c: "Bath starts at", Unit::Celsius, 24.0, 2.0..=95.0, 1.0; "Temperature of the bath water when the pot goes in.", when |d| d.heating == Heating::Bath;
        number bath_set_temperature_c: "Bath held at", Unit::Celsius, 37.5, 20.0..=95.0, 0.5; "Where the bath's thermostat is set.", when |d| d.heating == Heating::Bath;
        number heater_power_w: "Heating power", Unit::Watt, 900.0, 100.0..=4000.0, 50.0; "Power that reaches the water or the pot.";
        number room_temperature_c: "Kitchen temperature", Unit::Celsius, 20.0, 5.0..=40.0, 0.5; "Temperature of the kitchen.";
        PotRest pot_rest: "How the pot sits in the bath", PotRest::Rack; "Whether the bath water reaches the base of the pot.", when |d| d.heating == Heating::Bath;
        number pot_depth_percent: "Milk below the waterline", Unit::Percent, 100.0, 20.0..=100.0, 5.0; "Share of the milk's depth that is below the level of the bath water.", when |d| d.heating == Heating::Bath;
        switch bath_lid: "Lid on the bath", true; "An open bath loses about five times as much heat from its surface.", when |d| d.heating == Heating::Bath;
        switch pot_lid: "Lid on the pot", true; "An open pot loses about five times as much heat from its surface.";
        number calcium_temperature_c: "Add calcium chloride at", Unit::Celsius, 16.0, 2.0..=40.0, 0.5; "Milk temperature at which the calcium chloride is stirred in.";
        number rennet_temperature_c: "Add rennet at", Unit::Celsius, 35.0, 20.0..=45.0, 0.5; "Milk temperature at which the rennet is stirred in.";
        switch heat_while_setting: "Keep heating while it sets", true; "Leave the heat on between the rennet and cutting.";
        number firmness_multiple: "Firmness at cutting", Unit::Times, 3.0, 2.0..=8.0, 0.1; "Time from rennet to cutting as a multiple of the clotting time: a higher number gives firmer curd.";
        number first_test_min: "First test for a clean break", Unit::Minute, 40.0, 5.0..=240.0, 5.0; "Minutes after the rennet at which you first test for a clean break.";
        number curd_piece_mm: "Size of the curd pieces", Unit::Millimetre, 25.0, 8.0..=60.0, 1.0; "Distance between the cuts. Smaller pieces lose more whey while they rest in the vat; how much more is our own judgement.";
        number whey_rest_min: "Rest of the cut curd in its whey", Unit::Minute, 20.0, 0.0..=240.0, 5.0; "Minutes that the cut curd rests in its whey before you ladle it.";
    }
}
