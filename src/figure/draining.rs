//! The figures of moulds and draining.

use super::figure::Figure;
use crate::design::{Stage, Unit};
use crate::law::yields::YIELD_SPREAD;
use crate::process::DrainingOutcome;

const DRIP: &str = "w = W (1 − e^(−t/τ)), first order; τ is our own judgement, weakest below 20 °C";
const COOLING: &str = "cools to the room, T = T_room + (T₀ − T_room) e^(−t/τ); how fast is our own judgement";
const SIZE: &str = "additive volumes of fat, protein, carbohydrate, ash and water in the width of the mould";

pub(super) fn figures(drained: &DrainingOutcome) -> Vec<Figure> {
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Draining, key, label, value, unit, decimals, law);
    let switch = |key, label, on, law| Figure::switch(Stage::Draining, key, label, on, law);
    vec![
        number("cheese_count", "Cheeses", f64::from(drained.cheese_count), Unit::One, 0, "one from each mould").lead(),
        number("drained_cheese_g", "Weight of a cheese at unmoulding", drained.cheese_g, Unit::Gram, 0, DRIP)
            .within(YIELD_SPREAD.value)
            .lead(),
        number("drained_thickness_mm", "Thickness of a cheese at unmoulding", drained.thickness_mm, Unit::Millimetre, 0, SIZE)
            .within(YIELD_SPREAD.value)
            .lead(),
        number("drained_diameter_mm", "Width of a cheese at unmoulding", drained.diameter_mm, Unit::Millimetre, 0, SIZE),
        number("drained_moisture_percent", "Moisture at unmoulding", drained.moisture_percent, Unit::Percent, 1, DRIP).lead(),
        number("unmoulded_cheese_c", "Temperature of a cheese at unmoulding", drained.temperature_c, Unit::Celsius, 1, COOLING),
        number("draining_h", "Time in the moulds", drained.draining_h, Unit::Hour, 0, "one gap more than there are turns"),
        number("drip_stops_h", "Drip stops after", drained.drip_stops_h, Unit::Hour, 0, DRIP),
        switch("drip_has_stopped", "Drip has stopped at unmoulding", drained.drip_has_stopped, DRIP),
        number("drip_kg", "Whey from the moulds", drained.whey.total_kg(), Unit::Kilogram, 2, DRIP),
        number("mould_ml", "Volume of a mould", drained.mould_ml, Unit::Millilitre, 0, "π/4 d² h"),
        number("ladled_ml", "Ladled curd for each mould", drained.ladled_ml, Unit::Millilitre, 0, SIZE),
        number("ladled_depth_mm", "Ladled depth", drained.ladled_depth_mm, Unit::Millimetre, 0, SIZE),
        switch("moulds_fit", "Fits in one filling", drained.fits, SIZE),
        number("moulds_wanted", "Moulds for one filling", f64::from(drained.moulds_wanted), Unit::One, 0, SIZE),
    ]
}
