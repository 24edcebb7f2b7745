//! The choices about drying.

use super::field::stage_design;
use super::{DryingPlace, PhFrom, Unit};

stage_design! {
    /// Drying in a cabinet or in the open air.
    DryingDesign in Drying {
        DryingPlace drying_place: "Where they dry", DryingPlace::Cabinet; "In a warm cabinet, or in the open air by day and by night.";
        number drying_h: "Drying time", Unit::Hour, 34.0, 0.0..=720.0, 1.0; "Hours spent drying.";
        PhFrom unmoulded_ph_from: "pH at unmoulding", PhFrom::Calculated; "Take the pH of the cheese at unmoulding as it is calculated, or as your meter said; from there on the rest follows.";
        number unmoulded_ph: "Measured pH at unmoulding", Unit::One, 5.2, 4.2..=7.0, 0.05; "pH of a cheese by your own meter at unmoulding.", when |d| d.unmoulded_ph_from == PhFrom::Measured;
        number cabinet_temperature_c: "Cabinet temperature", Unit::Celsius, 43.0, 20.0..=60.0, 0.5; "Temperature of the moving air.", when |d| d.drying_place == DryingPlace::Cabinet;
        number room_air_temperature_c: "Room temperature", Unit::Celsius, 20.0, 2.0..=40.0, 0.5; "Temperature of the air that the cabinet draws in.", when |d| d.drying_place == DryingPlace::Cabinet;
        number room_humidity_percent: "Room humidity", Unit::Percent, 50.0, 5.0..=98.0, 1.0; "Relative humidity of the air that the cabinet draws in.", when |d| d.drying_place == DryingPlace::Cabinet;
        number day_temperature_c: "Temperature by day", Unit::Celsius, 27.0, 2.0..=45.0, 0.5; "Air temperature by day.", when |d| d.drying_place == DryingPlace::OpenAir;
        number day_humidity_percent: "Humidity by day", Unit::Percent, 52.0, 5.0..=98.0, 1.0; "Relative humidity by day.", when |d| d.drying_place == DryingPlace::OpenAir;
        number night_temperature_c: "Temperature by night", Unit::Celsius, 18.0, 2.0..=45.0, 0.5; "Air temperature by night.", when |d| d.drying_place == DryingPlace::OpenAir;
        number night_humidity_percent: "Humidity by night", Unit::Percent, 78.0, 5.0..=98.0, 1.0; "Relative humidity by night.", when |d| d.drying_place == DryingPlace::OpenAir;
        number day_h: "Hours of day", Unit::Hour, 11.0, 1.0..=23.0, 0.5; "Length of the day; drying starts with a day.", when |d| d.drying_place == DryingPlace::OpenAir;
        number air_speed_m_s: "Air speed", Unit::MetrePerSecond, 0.8, 0.05..=3.0, 0.05; "Air speed over the cheeses; still air in a room is about 0.1.";
        number underside_open_percent: "Open share of the underside", Unit::Percent, 60.0, 0.0..=100.0, 5.0; "How much of the underside the air reaches: 100 on wire, about 50 on mesh, 0 on a board.";
        count tray_count: "Number of trays", Unit::One, 3, 1..=30, 1; "Trays that you use, one above the other or one behind the other in the air.";
        number tray_width_mm: "Tray width", Unit::Millimetre, 310.0, 50.0..=1500.0, 5.0; "Inner width of a tray.";
        number tray_depth_mm: "Tray depth", Unit::Millimetre, 290.0, 50.0..=1500.0, 5.0; "Inner depth of a tray, front to back.";
        number tray_clearance_mm: "Height between trays", Unit::Millimetre, 45.0, 10.0..=300.0, 1.0; "Free height above a tray, for the cheese and the air over it.";
        switch tray_swap: "Swap trays half way", true; "Half way through, move the trays that dry fastest to where drying is slowest.";
    }
}
