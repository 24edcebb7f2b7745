//! The figures of the vinegar.

use super::figure::Figure;
use crate::design::{Design, Stage, Unit};
use crate::law::kitchen::{salt_spoons, spoons};
use crate::law::soaking::SOFTNESS_FELT;
use crate::process::{EvenedOut, LONGEST_SOAK_H, PicklePoint, PicklingOutcome};

const ACID: &str = "acid diffuses into finite rings and is held by the cheese's buffers; of four trials with eggs it meets three and is late in one";
const BALANCE: &str = "balance of acid, split acid and the cheese's buffers; these may hold 0.7 to 1.8 times as much";
const SLOW: &str =
    "acid moves so much more slowly, and the cheese takes up so much more of it, that nine of ten trial runs end below this pH";
const LEACHING: &str = "salt diffuses into the vinegar of one cheese";
const UPTAKE: &str = "water diffuses towards what a wetted face holds: a judged amount for its protein, less for salt";
const JAR: &str = "known packings of circles in a circle, flat; rows, on edge; whole layers";

const RESTING: &str = "acid, water and salt spread on inside";

/// When a slow cheese is sour.
pub(super) const IF_SLOW: &str = "centre_to_4_2_if_slow_h";
/// How sour a slow cheese gets.
pub(super) const SLOW_PH: &str = "slow_centre_ph";

pub(super) fn figures(soured: &PicklingOutcome, design: &Design) -> Vec<Figure> {
    let whether = Figure::switch(Stage::Pickling, "soured", "Soured in vinegar", soured.pickled, "as chosen");
    if !soured.pickled {
        return vec![whether.lead()];
    }
    let mut all = vec![whether];
    all.extend(acid(soured, design.pickling.pickling_h));
    all.extend(vinegar(soured));
    all.extend(cheese(soured));
    all.extend(soured.rest.as_ref().map(|_| softness(soured)));
    all.extend(rest(soured));
    all
}

fn number(key: &'static str, label: &'static str, value: f64, unit: Unit, decimals: usize, law: &'static str) -> Figure {
    Figure::number(Stage::Pickling, key, label, value, unit, decimals, law)
}

/// Returns hours, or that they never come and why.
fn hours_or_never(key: &'static str, label: &'static str, hours: Option<f64>, target_ph: f64, equilibrium_ph: f64) -> Figure {
    let comes_there = equilibrium_ph < target_ph;
    match hours {
        Some(hours) => number(key, label, hours, Unit::Hour, 0, ACID),
        None if comes_there => Figure::words(
            Stage::Pickling,
            key,
            label,
            format!("not within {LONGEST_SOAK_H:.0} h, it settles at pH {equilibrium_ph:.2}"),
            ACID,
        ),
        None => Figure::words(Stage::Pickling, key, label, format!("never, it settles at pH {equilibrium_ph:.2}"), BALANCE),
    }
}

/// Returns the two, with a likely range if both are hours; a slow cheese that never comes there has its own figure.
fn likely_hours(figure: Figure, fast_h: Option<f64>, hours: Option<f64>, slow_h: Option<f64>) -> Figure {
    let range = match (fast_h, hours, slow_h) {
        (Some(fast), Some(hours), Some(slow)) => Some((fast.min(hours), slow.max(hours))),
        _ => None,
    };
    figure.between(range)
}

fn acid(soured: &PicklingOutcome, pickling_h: f64) -> Vec<Figure> {
    let end = &soured.end;
    let likely = |figure: Figure, value: f64, of: fn(&PicklePoint) -> f64| {
        let last = |curve: &[PicklePoint]| curve.last().map_or(value, of);
        let (slow, fast) = (last(&soured.if_slow), last(&soured.if_fast));
        figure.between(Some((slow.min(fast).min(value), slow.max(fast).max(value))))
    };
    let [acidified, sour] = soured.targets;
    let [acidified_if_slow, sour_if_slow] = soured.targets_if_slow;
    let [acidified_if_fast, sour_if_fast] = soured.targets_if_fast;
    let (rest, (_, strong_rest)) = (soured.equilibrium_ph, soured.likely_equilibrium_ph);
    let centre = number("centre_ph", "pH at the centre after the soak", end.centre_ph, Unit::One, 2, ACID).lead();
    let slurry = number("slurry_ph", "pH of a blended sample after the soak", end.slurry_ph, Unit::One, 2, ACID).lead();
    let centre_sour = hours_or_never("centre_to_4_2_h", "Centre below pH 4.2 after", sour.centre_h, sour.ph, rest).lead();
    let slurry_sour = hours_or_never("slurry_to_4_2_h", "Blended sample below pH 4.2 after", sour.slurry_h, sour.ph, rest);
    let centre_acid = hours_or_never("centre_to_4_6_h", "Centre at pH 4.6 after", acidified.centre_h, acidified.ph, rest);
    let slurry_acid = hours_or_never("slurry_to_4_6_h", "Blended sample at pH 4.6 after", acidified.slurry_h, acidified.ph, rest);
    let slow_label = "Slow cheese: centre below pH 4.2 after";
    let slow = hours_or_never(IF_SLOW, slow_label, sour_if_slow.centre_h, sour.ph, strong_rest);
    let (least, most) = soured.likely_equilibrium_ph;
    let slow_ph = soured.if_slow.last().map_or(end.centre_ph, |slow| slow.centre_ph.max(end.centre_ph));
    vec![
        likely(centre, end.centre_ph, |point| point.centre_ph),
        likely(slurry, end.slurry_ph, |point| point.slurry_ph),
        number(SLOW_PH, "Slow cheese: pH at the centre after the soak", slow_ph, Unit::One, 2, SLOW),
        number("surface_ph", "pH of the top face after the soak", end.surface_ph, Unit::One, 2, ACID),
        number("vinegar_ph", "pH of the vinegar after the soak", end.bath_ph, Unit::One, 2, ACID),
        number("soak_h", "Time in the vinegar", pickling_h, Unit::Hour, 0, "as chosen"),
        likely_hours(centre_sour, sour_if_fast.centre_h, sour.centre_h, sour_if_slow.centre_h),
        slow,
        likely_hours(slurry_sour, sour_if_fast.slurry_h, sour.slurry_h, sour_if_slow.slurry_h),
        likely_hours(centre_acid, acidified_if_fast.centre_h, acidified.centre_h, acidified_if_slow.centre_h),
        likely_hours(slurry_acid, acidified_if_fast.slurry_h, acidified.slurry_h, acidified_if_slow.slurry_h),
        number("equilibrium_ph", "Equilibrium pH", rest, Unit::One, 2, BALANCE).between(Some((least.min(rest), most.max(rest)))),
        number("cheese_acid_percent", "Acetic acid in the cheese", end.acid_percent, Unit::Percent, 2, ACID),
    ]
}

fn vinegar(soured: &PicklingOutcome) -> Vec<Figure> {
    vec![
        number("vinegar_ml", "Vinegar for all cheeses", soured.vinegar_ml, Unit::Millilitre, 0, "as chosen, or as the jar asks")
            .in_kitchen(spoons(soured.vinegar_ml))
            .lead(),
        number("vinegar_each_ml", "Vinegar for each cheese", soured.vinegar_each_ml, Unit::Millilitre, 0, "vinegar over cheeses"),
        number(
            "vinegar_for_each_g_ml",
            "Vinegar for each gram of cheese",
            soured.vinegar_ml_per_g,
            Unit::MillilitrePerGram,
            1,
            "vinegar over dried cheese",
        ),
        number(
            "covering_ml_per_g",
            "Vinegar that just covers, for each gram",
            soured.cover_ml_per_g,
            Unit::MillilitrePerGram,
            1,
            JAR,
        ),
        number("jars", "Jars", f64::from(soured.jars), Unit::One, 0, JAR).lead(),
        number("cheeses_per_jar", "Cheeses in a jar", f64::from(soured.cheeses_per_jar), Unit::One, 0, JAR),
        number("pile", "Cheeses stacked with nothing between", f64::from(soured.pile), Unit::One, 0, "layers in the fullest jar"),
        number("vinegar_salt_g", "Salt for the vinegar", soured.vinegar_salt_g, Unit::Gram, 0, "as chosen, for all the vinegar")
            .in_kitchen(salt_spoons(soured.vinegar_salt_g)),
        number(
            "even_vinegar_salt_g_per_100ml",
            "Salt in the vinegar that keeps the cheese as salty as before",
            soured.even_salt_g_per_100ml,
            Unit::GramIn100Millilitre,
            1,
            "as much in each litre as in the water of the cheese",
        ),
    ]
}

fn cheese(soured: &PicklingOutcome) -> Vec<Figure> {
    let matter = &soured.cheese;
    let moisture_percent = matter.moisture_percent();
    let (least, most) = soured.likely_moisture_percent;
    let likely = Some((least.min(moisture_percent), most.max(moisture_percent)));
    let fat_free_percent = matter.moisture_on_fat_free_basis_percent();
    vec![
        number("soured_cheese_g", "Weight of a soured cheese", soured.cheese_g, Unit::Gram, 0, UPTAKE),
        number("soured_moisture_percent", "Moisture after the soak", moisture_percent, Unit::Percent, 1, UPTAKE).between(likely),
        number(
            "soured_fat_free_moisture_percent",
            "Moisture on a fat-free basis after the soak",
            fat_free_percent,
            Unit::Percent,
            0,
            "water over everything but fat",
        ),
        Figure::words(
            Stage::Pickling,
            "soured_firmness",
            "Firmness after the soak",
            soured.firmness.join(" or "),
            "Codex standard 283, by moisture on fat-free basis",
        ),
        number(
            "salt_left_percent",
            "Salt left in the cheese after the soak, of what went in",
            100.0 * soured.salt_left_share,
            Unit::Percent,
            0,
            LEACHING,
        ),
        number(
            "soured_salt_in_moisture_percent",
            "Salt in moisture after the soak",
            matter.salt_in_moisture_percent(),
            Unit::Percent,
            1,
            "100 × salt/water",
        ),
        number(
            "soured_water_activity",
            "Water activity after the soak, mean",
            soured.water_activity,
            Unit::One,
            2,
            "brine (Pitzer) times Oswin's isotherm of the solids",
        ),
    ]
}

/// Returns in words whether the soak softens the cheese: by the water for each part of protein, with what is likely, so that it is said only where
/// the runs beside are calculated, as the rest is.
fn softness(soured: &PicklingOutcome) -> Figure {
    let before = soured.water_per_protein_before;
    let matter = &soured.cheese;
    let protein_percent = 100.0 * matter.protein_kg() / (matter.total_kg() - matter.water_kg);
    let per_protein = |moisture_percent: f64| 100.0 * moisture_percent / ((100.0 - moisture_percent) * protein_percent);
    let now = per_protein(matter.moisture_percent());
    let (least, most) = soured.likely_moisture_percent;
    let (least, most) = (per_protein(least).min(now), per_protein(most).max(now));
    let verdict = match () {
        () if least > SOFTNESS_FELT.value * before => "softer",
        () if most * SOFTNESS_FELT.value < before => "firmer",
        () if now > SOFTNESS_FELT.value * before => "probably softer",
        () if now * SOFTNESS_FELT.value < before => "probably firmer",
        () => "about as before",
    };
    let likely = if most - least > 0.05 { format!(" (likely {least:.1} to {most:.1})") } else { String::new() };
    let words = format!("{verdict}: {now:.1} parts of water to one of protein{likely}, {before:.1} before");
    Figure::words(Stage::Pickling, "soak_softens", "Softness after the soak", words, UPTAKE)
}

/// Returns in words what a rest evens out; nothing where that was not calculated.
fn rest(soured: &PicklingOutcome) -> Vec<Figure> {
    let Some(rest) = &soured.rest else { return Vec::new() };
    let said = |key, label, evened: &EvenedOut, places: usize, unit: &str| {
        let EvenedOut { centre, face } = evened;
        let words = format!(
            "centre {:.places$}{unit}, face {:.places$}{unit}; before, {:.places$}{unit} and {:.places$}{unit}",
            centre.1, face.1, centre.0, face.0
        );
        Figure::words(Stage::Pickling, key, label, words, RESTING)
    };
    vec![
        said("rest_ph", "pH after a day of rest out of the vinegar", &rest.ph, 2, ""),
        said("rest_moisture", "Moisture after a day of rest out of the vinegar", &rest.moisture_percent, 0, " %"),
        said("rest_salt", "Salt in moisture after a day of rest out of the vinegar", &rest.salt_percent, 1, " %"),
    ]
}
