//! The figures of salting.

use super::figure::Figure;
use crate::design::{Stage, Unit};
use crate::law::kitchen::{pepper_spoons, salt_spoons};
use crate::process::SaltingOutcome;

const BALANCE: &str = "mass balance of the salt";
const INWARDS: &str =
    "∂s/∂t = ∂/∂z (D X ∂(s/X)/∂z) from saturated brine under the salt; D is published for cheese, 1 to 5 × 10⁻¹⁰ m²/s";
const COAT: &str = "both faces and the side times the pepper on a dm²; it lies on the cheese and is not in its weight";

pub(super) fn figures(salted: &SaltingOutcome) -> Vec<Figure> {
    let mut all = salt(salted);
    all.extend(inwards(salted));
    all.extend(pepper(salted));
    all
}

fn number(key: &'static str, label: &'static str, value: f64, unit: Unit, decimals: usize, law: &'static str) -> Figure {
    Figure::number(Stage::Salting, key, label, value, unit, decimals, law)
}

fn salt(salted: &SaltingOutcome) -> Vec<Figure> {
    vec![
        number("salt_g", "Salt for all cheeses", salted.salt_g, Unit::Gram, 1, BALANCE)
            .in_kitchen(salt_spoons(salted.salt_g))
            .lead(),
        number("salt_each_g", "Salt for each cheese", salted.salt_each_g, Unit::Gram, 1, BALANCE)
            .in_kitchen(salt_spoons(salted.salt_each_g)),
        number("salt_turn_g", "Salt for all cheeses at one turn", salted.salt_turn_g, Unit::Gram, 1, BALANCE)
            .in_kitchen(salt_spoons(salted.salt_turn_g)),
        number("salt_each_turn_g", "Salt on one face", salted.salt_each_turn_g, Unit::Gram, 1, BALANCE)
            .in_kitchen(salt_spoons(salted.salt_each_turn_g))
            .lead(),
        number(
            "salt_kept_g",
            "Salt that stays in the cheeses",
            salted.salt_kept_g,
            Unit::Gram,
            1,
            "5 to 20 % runs off with the whey (from memory, weak)",
        ),
        number("salted_cheese_g", "Weight of a cheese after salting", salted.cheese_g, Unit::Gram, 0, BALANCE),
        number("cheese_salt_percent", "Salt in the cheese", salted.salt_percent, Unit::Percent, 1, BALANCE).lead(),
        number(
            "salt_in_moisture_percent",
            "Salt in moisture when salted",
            salted.salt_in_moisture_percent,
            Unit::Percent,
            1,
            "100 × salt/water",
        )
        .lead(),
        number(
            "salted_thickness_mm",
            "Thickness of a cheese after salting",
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

fn inwards(salted: &SaltingOutcome) -> Vec<Figure> {
    let end = &salted.unmoulded;
    let within = |figure: Figure, (least, most): (f64, f64)| figure.between((most - least > 0.05).then_some((least, most)));
    let surface = "surface_salt_in_moisture_percent";
    let centre = "centre_salt_in_moisture_percent";
    vec![
        within(
            number(surface, "Salt in moisture at the faces when salted", end.surface_percent, Unit::Percent, 1, INWARDS),
            salted.likely_surface_percent,
        ),
        within(
            number(centre, "Salt in moisture at the centre when salted", end.centre_percent, Unit::Percent, 1, INWARDS),
            salted.likely_centre_percent,
        ),
        Figure::switch(Stage::Salting, "salt_lies_on_faces", "Dry salt left on the faces", salted.salt_lies_on_faces, INWARDS),
    ]
}

fn pepper(salted: &SaltingOutcome) -> Vec<Figure> {
    vec![
        number("pepper_g", "Pepper for all cheeses", salted.pepper_g, Unit::Gram, 1, COAT)
            .in_kitchen(pepper_spoons(salted.pepper_g))
            .lead(),
        number("pepper_each_g", "Pepper for each cheese", salted.pepper_each_g, Unit::Gram, 1, COAT)
            .in_kitchen(pepper_spoons(salted.pepper_each_g)),
        number(
            "coat_mm",
            "Thickness of the pepper",
            salted.coat_mm,
            Unit::Millimetre,
            1,
            "pepper on a dm² over its bulk density, 2.3 g a teaspoon",
        ),
        number(
            "coat_s_m",
            "Resistance of the pepper to vapour",
            salted.coat_s_m,
            Unit::SecondPerMetre,
            0,
            "δ/(ε^1.5 D) of air between grains; porosity judged, power from memory",
        ),
    ]
}
