//! The figures of drying.

use super::figure::Figure;
use crate::design::{Design, DryingPlace, Stage, Unit};
use crate::law::yields::YIELD_SPREAD;
use crate::process::{DryingOutcome, DryingPoint, TrayRun};

const DISC: &str = "diffusion in a shrinking disc; the diffusivity is fitted, times may be half or twice";
const INWARDS: &str = "diffusion of salt in the water of the cheese along its axis; salt that moving water would carry is left out";
const ACTIVITY: &str = "brine (Pitzer) × solids (Oswin, from memory); estimated, not measured";

/// Returns the figures of drying: the cheese, then air and trays.
pub(super) fn figures(dried: &DryingOutcome, design: &Design) -> Vec<Figure> {
    let mut all = cheese(dried);
    all.extend(air_and_trays(dried, design.drying.drying_place));
    all
}

/// Returns the moisture of the fastest and of the slowest tray.
fn places(dried: &DryingOutcome) -> (f64, f64) {
    (dried.fastest.end_moisture_percent(), dried.slowest.end_moisture_percent())
}

fn cheese(dried: &DryingOutcome) -> Vec<Figure> {
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Drying, key, label, value, unit, decimals, law);
    let end = &dried.end;
    let salt = dried.salt.points.last().copied().unwrap_or_default();
    // The diffusivity is uncertain by a factor of two each way, which outweighs everything else.
    let likely = |figure: Figure, of: fn(&DryingPoint) -> f64, more: f64| {
        let last = |run: &TrayRun| run.points.last().map_or_else(|| of(end), of);
        let (one, other) = (last(&dried.if_slow), last(&dried.if_fast));
        let (least, most) = (one.min(other).min(of(end)) * (1.0 - more), one.max(other).max(of(end)) * (1.0 + more));
        // Cheeses that were not dried at all have no range to show.
        figure.between((most - least > 0.05).then_some((least, most)))
    };
    let moisture = number("dried_moisture_percent", "Moisture when dried", end.moisture_percent, Unit::Percent, 1, DISC).lead();
    let loss = number("drying_loss_percent", "Weight lost in drying", end.loss_percent, Unit::Percent, 1, DISC).lead();
    let each = number("dried_cheese_g", "Weight of a dried cheese", end.cheese_g, Unit::Gram, 0, DISC).lead();
    vec![
        likely(each, |point| point.cheese_g, YIELD_SPREAD.value),
        likely(loss, |point| point.loss_percent, 0.0),
        likely(moisture, |point| point.moisture_percent, 0.0),
        number("centre_moisture_percent", "Moisture at the centre when dried", end.centre_moisture_percent, Unit::Percent, 1, DISC)
            .lead(),
        number(
            "surface_moisture_percent",
            "Moisture at the top face when dried",
            end.surface_moisture_percent,
            Unit::Percent,
            1,
            DISC,
        ),
        number("dried_diameter_mm", "Width of a dried cheese", end.diameter_mm, Unit::Millimetre, 0, DISC),
        number("dried_thickness_mm", "Thickness of a dried cheese", end.thickness_mm, Unit::Millimetre, 0, DISC),
        number("water_activity", "Water activity when dried, mean", end.water_activity, Unit::One, 2, ACTIVITY).lead(),
        number("centre_water_activity", "Water activity when dried, centre", end.centre_water_activity, Unit::One, 2, ACTIVITY),
        number(
            "fat_free_moisture_percent",
            "Moisture on a fat-free basis when dried",
            end.fat_free_moisture_percent,
            Unit::Percent,
            0,
            "water over everything but fat",
        ),
        Figure::words(
            Stage::Drying,
            "firmness",
            "Firmness when dried",
            dried.firmness.join(" or "),
            "Codex standard 283, by moisture on fat-free basis",
        ),
        number(
            "dried_salt_in_moisture_percent",
            "Salt in moisture when dried",
            dried.cheese.salt_in_moisture_percent(),
            Unit::Percent,
            1,
            "100 × salt/water",
        ),
        number(
            "dried_surface_salt_percent",
            "Salt in moisture at the faces when dried",
            salt.surface_percent,
            Unit::Percent,
            1,
            INWARDS,
        ),
        number(
            "dried_centre_salt_percent",
            "Salt in moisture at the centre when dried",
            salt.centre_percent,
            Unit::Percent,
            1,
            INWARDS,
        ),
        number(
            "dried_fat_in_dry_matter_percent",
            "Fat in dry matter when dried",
            dried.cheese.fat_in_dry_matter_percent(),
            Unit::Percent,
            0,
            "fat over everything but water",
        ),
        number("dried_in_all_kg", "All cheeses when dried", dried.cheese.total_kg(), Unit::Kilogram, 2, DISC),
    ]
}

fn air_and_trays(dried: &DryingOutcome, place: DryingPlace) -> Vec<Figure> {
    let (air, air_law) = match place {
        DryingPlace::Cabinet => ("Humidity of the drying air", "same vapour, warmer air (Hyland and Wexler)"),
        DryingPlace::OpenAir => ("Humidity of the air by day", "as chosen"),
    };
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Drying, key, label, value, unit, decimals, law);
    let places = places(dried);
    vec![
        number(
            "fastest_moisture_percent",
            "Moisture on the fastest tray",
            places.0,
            Unit::Percent,
            1,
            "judged spread of the air between the first and the last tray",
        ),
        number(
            "slowest_moisture_percent",
            "Moisture on the slowest tray",
            places.1,
            Unit::Percent,
            1,
            "judged spread of the air between the first and the last tray",
        ),
        number(
            "spread_unswapped_percent",
            "Moisture gap between trays, not swapped",
            dried.spread_unswapped_percent,
            Unit::Percent,
            1,
            "judged spread of the air",
        ),
        number(
            "spread_swapped_percent",
            "Moisture gap between trays, swapped half way",
            dried.spread_swapped_percent,
            Unit::Percent,
            1,
            "judged spread of the air",
        ),
        number("air_humidity_percent", air, dried.air_humidity_percent, Unit::Percent, 0, air_law),
        number(
            "tray_holds",
            "Cheeses that fit on a tray",
            f64::from(dried.tray_holds),
            Unit::One,
            0,
            "straight or staggered rows, 10 mm apart",
        ),
        number("trays_wanted", "Trays needed", f64::from(dried.trays_wanted), Unit::One, 0, "cheeses over what a tray holds"),
        Figure::switch(
            Stage::Drying,
            "trays_fit",
            "The cheeses fit on the trays",
            dried.trays_fit,
            "in width and in height, with 15 mm of air above",
        ),
    ]
}
