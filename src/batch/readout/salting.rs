//! The figures of salting.

use super::Readout;
use crate::design::{Stage, Unit};
use crate::law::kitchen::salt_spoons;
use crate::process::SaltingOutcome;

const BALANCE: &str = "mass balance of the salt";

pub(super) fn readouts(salted: &SaltingOutcome) -> Vec<Readout> {
    let number = |key, label, value, unit, decimals, law| Readout::number(Stage::Salting, key, label, value, unit, decimals, law);
    vec![
        number("salt_g", "Salt in all", salted.salt_g, Unit::Gram, 1, BALANCE).in_kitchen(salt_spoons(salted.salt_g)).lead(),
        number("salt_each_g", "Salt for each cheese", salted.salt_each_g, Unit::Gram, 1, BALANCE),
        number("salt_each_turn_g", "Salt on one face", salted.salt_each_turn_g, Unit::Gram, 1, BALANCE)
            .in_kitchen(salt_spoons(salted.salt_each_turn_g))
            .lead(),
        number(
            "salt_kept_g",
            "Salt that stays",
            salted.salt_kept_g,
            Unit::Gram,
            1,
            "5 to 20 % runs off with the whey (from memory, weak)",
        ),
        number("salted_cheese_g", "Each after salting", salted.cheese_g, Unit::Gram, 0, BALANCE),
        number("cheese_salt_percent", "Salt in the cheese", salted.salt_percent, Unit::Percent, 1, BALANCE).lead(),
        number(
            "salt_in_moisture_percent",
            "Salt in the moisture",
            salted.salt_in_moisture_percent,
            Unit::Percent,
            1,
            "100 × salt/water",
        )
        .lead(),
        number(
            "salted_thickness_mm",
            "Thickness after salting",
            salted.thickness_mm,
            Unit::Millimetre,
            0,
            "additive volumes in the width of the mould",
        ),
        number(
            "salt_even_days",
            "Salt evens out in",
            salted.even_days,
            Unit::Day,
            1,
            "ln 20 · L²/(π² D), to a twentieth of the unevenness; L from a salted face to the middle",
        )
        .between((salted.even_days > 0.0).then_some(salted.likely_even_days)),
    ]
}
