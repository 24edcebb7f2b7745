//! The figures of souring by a culture, an acid or a lactone; a batch in which nothing sours has none of them.

use super::figure::Figure;
use crate::batch::{Batch, culture_check, is_soured};
use crate::design::{CultureBy, MilkAcid, SouredBy, Stage, Unit};
use crate::law::Matter;
use crate::law::bath::WARMING_SPREAD;
use crate::law::kitchen::{citric_spoons, spoons};
use crate::law::souring::{Taste, curd_calcium_share};
use crate::process::MilkOutcome;

const ACID: &str = "what brings this milk to that pH: balance of the acid against the milk’s own buffers, or as chosen";
const PER_LITRE: &str = "dose × milk";
const BULK: &str = "share × milk, by mass; taken to be made of the same milk and counted with it";
const CELLS_ASSUMED: &str = "cells assumed: a packet says how much milk it is for, not how many cells live in it";
const CELLS_ASSUMED_BULK: &str = "cells assumed: a good bulk starter, as it should be when it is fresh";
const CELLS_CHOSEN: &str = "as chosen";
const COLD: &str = "balance of the acid against the milk’s own buffers; these may hold 0.65 to 1.2 times as much";
const WARMING: &str = "time to its temperature on the warming curve; ±25 % until your own log calibrates it";
const COURSE: &str = "cells grow, lactose turns into lactic acid, buffers give the pH; a culture may be slow or fail: measure";
const CALCIUM: &str = "what dissolves from the casein before the whey leaves goes with the whey; shares from memory, ±0.08";
const CURVE: &str = "lactose turns into lactic acid and water; what whey is left carries both";
const TASTE: &str = "words for a pH, from memory; taste has more causes";

/// Returns what is added to sour the milk, and how sour it is cold.
pub(super) fn milk(batch: &Batch) -> Vec<Figure> {
    batch.milk.done().filter(|milk| milk.soured.is_soured()).map_or_else(Vec::new, |milk| added(milk, batch))
}

fn added(milk: &MilkOutcome, batch: &Batch) -> Vec<Figure> {
    let (soured, design) = (&milk.soured, &batch.design.milk);
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Milk, key, label, value, unit, decimals, law);
    let poured =
        |key, label| number(key, label, soured.acid_ml, Unit::Millilitre, 1, ACID).in_kitchen(spoons(soured.acid_ml)).lead();
    match design.soured_by {
        SouredBy::Nothing => Vec::new(),
        SouredBy::Culture => {
            let cells_law = match design.culture_by {
                CultureBy::Packet => CELLS_ASSUMED,
                CultureBy::Bulk => CELLS_ASSUMED_BULK,
                CultureBy::Cells => CELLS_CHOSEN,
            };
            let cells = 1e-6 * soured.cells_per_g;
            let label = "Living cells of the culture in the milk";
            let cells = number("cells_in_milk_million_g", label, cells, Unit::MillionPerGram, 1, cells_law);
            let bulk = number("bulk_starter_g", "Bulk starter to add", soured.bulk_g, Unit::Gram, 0, BULK).lead();
            if design.culture_by == CultureBy::Bulk { vec![bulk, cells] } else { vec![cells] }
        }
        SouredBy::Lactone => {
            let label = "GDL to add";
            vec![number("lactone_g", label, soured.acid_g, Unit::Gram, 1, PER_LITRE).lead()]
        }
        SouredBy::Acid => vec![
            match design.milk_acid {
                MilkAcid::Citric => number("citric_acid_g", "Citric acid to add", soured.acid_g, Unit::Gram, 1, ACID)
                    .in_kitchen(citric_spoons(soured.acid_g))
                    .lead(),
                MilkAcid::Vinegar => poured("milk_vinegar_ml", "Vinegar for the milk"),
                MilkAcid::Lactic => poured("lactic_acid_ml", "Lactic acid solution for the milk"),
            },
            number("pure_acid_g", "Pure acid in the milk", soured.acid_g, Unit::Gram, 1, ACID),
            number("cold_milk_ph", "pH of the cold milk with the acid", soured.cold_ph, Unit::One, 2, COLD).lead(),
        ],
    }
}

/// Returns how sour the milk becomes in the vat, and what that does to its calcium.
pub(super) fn vat(batch: &Batch) -> Vec<Figure> {
    let Some(vat) = batch.vat.done().filter(|_| batch.milk.done().is_some_and(|milk| milk.soured.is_soured())) else {
        return Vec::new();
    };
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Vat, key, label, value, unit, decimals, law);
    let mut all = Vec::new();
    if vat.sourness.culture.is_some() {
        let label = "Time until the culture goes in";
        all.push(number("to_culture_min", label, vat.to_culture_min, Unit::Minute, 0, WARMING).within(WARMING_SPREAD.value));
    }
    let (phosphate, calcium) = (100.0 * vat.phosphate_left, 100.0 * curd_calcium_share(vat.whey_ph));
    all.extend([
        number("rennet_ph", "pH when the rennet goes in", vat.rennet_ph, Unit::One, 2, COURSE).lead(),
        number("whey_ph", "pH of the whey at ladling", vat.whey_ph, Unit::One, 2, COURSE),
        number("phosphate_left_percent", "Calcium phosphate left in the casein", phosphate, Unit::Percent, 0, CALCIUM),
        number("curd_calcium_percent", "Calcium of the milk that stays with the curd", calcium, Unit::Percent, 0, CALCIUM),
    ]);
    all
}

/// Returns how the curd sours in the moulds.
pub(super) fn draining(batch: &Batch) -> Vec<Figure> {
    let Some(drained) = batch.draining.done().filter(|_| is_soured(batch)) else { return Vec::new() };
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Draining, key, label, value, unit, decimals, law);
    let first = drained.souring.first().copied().unwrap_or_default();
    let last = drained.souring.last().copied().unwrap_or_default();
    let mut all = vec![number("ladled_curd_ph", "pH of the curd when draining begins", first.ph, Unit::One, 2, COURSE).lead()];
    if let Some(check) = culture_check(batch) {
        all.push(number("culture_check_ph", "pH when the culture is checked", check.ph, Unit::One, 2, COURSE).lead());
    }
    all.extend([
        number("unmoulded_cheese_ph", "pH of a cheese at unmoulding", last.ph, Unit::One, 2, COURSE).lead(),
        number("unmoulded_lactose_percent", "Lactose left at unmoulding", last.lactose_percent, Unit::Percent, 1, CURVE),
        number("unmoulded_lactic_percent", "Lactic acid at unmoulding", lactic_percent(&drained.curd), Unit::Percent, 2, CURVE),
    ]);
    all
}

/// Returns how sour the dried cheese is.
pub(super) fn drying(batch: &Batch) -> Vec<Figure> {
    let Some(dried) = batch.drying.done().filter(|_| is_soured(batch)) else { return Vec::new() };
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Drying, key, label, value, unit, decimals, law);
    let ph = dried.souring.last().copied().unwrap_or_default().ph;
    let taste = Taste::at(ph).words().to_owned();
    vec![
        number("dried_cheese_ph", "pH of a dried cheese", ph, Unit::One, 2, COURSE).lead(),
        number("dried_lactic_percent", "Lactic acid in a dried cheese", lactic_percent(&dried.cheese), Unit::Percent, 2, CURVE),
        Figure::words(Stage::Drying, "dried_taste", "Taste and body when dried", taste, TASTE),
    ]
}

/// Returns lactic acid in % of the mass.
fn lactic_percent(matter: &Matter) -> f64 {
    matter.percent(matter.lactic_kg)
}
