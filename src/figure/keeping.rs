//! The figures of jar and keeping, and what a cheese feeds.

use super::figure::Figure;
use crate::design::{Design, KeptIn, Stage, Unit};
use crate::law::kitchen::spoons;
use crate::law::nutrition::Nutrients;
use crate::process::{ColdKeeping, KeepingOutcome, LONGEST_SOAK_H};

const ZONE: &str = "hours of the food itself between 4 and 60 °C, as food-service rules count them, until its centre has pH 4.2";
const WARM: &str = "hours of the food itself above 21 °C, where guidance allows 2 to 4 h";
const COOL: &str = "hours of the food itself between 7 and 21 °C, until its centre has pH 4.2";
const COLD: &str = "the same batch with draining, vinegar and jar at 4 °C: what is left is vat and drying";
const DRIP: &str = "τ at that temperature by its activation energy, which no source backs below 20 °C";
const LABEL: &str = "energy by Regulation (EU) 1169/2011, annex XIV: fat 37, protein and carbohydrate 17, organic acid 13 kJ/g";
const SALT: &str = "Regulation (EU) 1169/2011, annex I: sodium × 2.5; the milk's own sodium is not in it";

pub(super) fn figures(kept: &KeepingOutcome, design: &Design) -> Vec<Figure> {
    let mut all = hours(kept);
    all.extend(cold(&kept.cold, design.pickling.pickled));
    all.extend(classes(kept));
    all.extend(jar(kept, design.keeping.kept_in));
    all.extend(each(&kept.each));
    all.extend(in_100_g(&kept.each.in_100_g()));
    all
}

fn number(key: &'static str, label: &'static str, value: f64, unit: Unit, decimals: usize, law: &'static str) -> Figure {
    Figure::number(Stage::Keeping, key, label, value, unit, decimals, law)
}

fn words(key: &'static str, label: &'static str, said: String, law: &'static str) -> Figure {
    Figure::words(Stage::Keeping, key, label, said, law)
}

fn hours(kept: &KeepingOutcome) -> Vec<Figure> {
    let mut all = vec![number("zone_h", "Hours between 4 and 60 °C", kept.zone_h, Unit::Hour, 0, ZONE).lead()];
    all.extend(kept.hours.iter().filter_map(|stage| {
        let (key, label) = match stage.stage {
            Stage::Vat => ("vat_zone_h", "Hours between 4 and 60 °C in the vat"),
            Stage::Draining => ("draining_zone_h", "Hours between 4 and 60 °C while draining"),
            Stage::Drying => ("drying_zone_h", "Hours between 4 and 60 °C while drying"),
            Stage::Pickling => ("pickling_zone_h", "Hours between 4 and 60 °C in vinegar, not yet sour"),
            Stage::Keeping => ("keeping_zone_h", "Hours between 4 and 60 °C while kept, not sour"),
            // Milk in the fridge is cold, and salting takes place between the turns of draining.
            Stage::Milk | Stage::Salting => return None,
        };
        Some(number(key, label, stage.zone_h, Unit::Hour, 1, ZONE))
    }));
    all.push(number("warm_h", "Hours above 21 °C", kept.warm_h, Unit::Hour, 0, WARM));
    all.push(number("cool_h", "Hours between 7 and 21 °C", kept.cool_h, Unit::Hour, 0, COOL));
    all
}

fn cold(cold: &ColdKeeping, pickled: bool) -> Vec<Figure> {
    let mut all = vec![
        number("cold_zone_h", "Hours between 4 and 60 °C if drained and soured at 4 °C", cold.zone_h, Unit::Hour, 0, COLD),
        number("cold_warm_h", "Hours above 21 °C if drained and soured at 4 °C", cold.warm_h, Unit::Hour, 0, COLD),
        number("cold_drip_10_h", "Time until the drip stops at 10 °C", cold.drip_stops_at_10_h, Unit::Hour, 0, DRIP),
        number("cold_drip_4_h", "Time until the drip stops at 4 °C", cold.drip_stops_at_4_h, Unit::Hour, 0, DRIP),
    ];
    let slower = "hours of the chosen temperature times D/D(4 °C), D ∝ T/μ";
    match cold.centre_sour_h {
        Some(hours) => {
            all.push(number("cold_centre_to_4_2_h", "Centre below pH 4.2 if soured at 4 °C, after", hours, Unit::Hour, 0, slower));
        }
        None if pickled => {
            all.push(words(
                "cold_centre_to_4_2_h",
                "Centre below pH 4.2 if soured at 4 °C, after",
                format!("never, or not within {LONGEST_SOAK_H:.0} h"),
                slower,
            ));
        }
        None => {}
    }
    all
}

fn classes(kept: &KeepingOutcome) -> Vec<Figure> {
    let growers = if kept.growers.is_empty() {
        "none of the eight that the model looks at; others may grow, and germs may survive without growing".to_owned()
    } else {
        kept.growers.join("; ")
    };
    vec![
        words(
            "table_b",
            "Control of time and temperature by table B of the US Food Code",
            kept.table_b.words().to_owned(),
            "by the modelled pH of the centre and the higher water activity; a class of a table is no proof",
        ),
        words(
            "acid_class",
            "Acidity class by US rules (title 21, part 114)",
            kept.acid_class.words().to_owned(),
            "by the modelled pH of a blended cheese; the part is for food kept without cold, and a modelled pH is no proof",
        ),
        words(
            "growers",
            "Germs that may grow in the jar",
            growers,
            "no published minimum of temperature, pH or water activity holds them back, one at a time",
        ),
        number(
            "highest_water_activity",
            "Highest water activity",
            kept.water_activity,
            Unit::One,
            2,
            "the higher of the centre's before the vinegar and the mean after it; estimated, not measured",
        ),
    ]
}

fn jar(kept: &KeepingOutcome, kept_in: KeptIn) -> Vec<Figure> {
    let vinegar = number(
        "vinegar_left_ml",
        "Vinegar left in the jars",
        kept.vinegar_left_ml,
        Unit::Millilitre,
        0,
        "vinegar less what the cheeses took up and what is poured off",
    );
    let oil = number(
        "oil_ml",
        "Oil to cover the cheeses",
        kept.oil_ml,
        Unit::Millilitre,
        0,
        "jars to the top of the last layer, less dried cheeses and the vinegar left",
    );
    match kept_in {
        KeptIn::Vinegar => vec![vinegar],
        KeptIn::Oil => vec![vinegar, oil.in_kitchen(spoons(kept.oil_ml)).lead()],
        KeptIn::Bare => Vec::new(),
    }
}

fn each(each: &Nutrients) -> Vec<Figure> {
    let kilocalories = Some(format!("{:.0} kcal", each.energy_kcal));
    vec![
        number("each_energy_kj", "Energy in a cheese", each.energy_kj, Unit::Kilojoule, 0, LABEL).in_kitchen(kilocalories).lead(),
        number("each_fat_g", "Fat in a cheese", each.fat_g, Unit::Gram, 1, "mass balance").lead(),
        number("each_protein_g", "Protein in a cheese", each.protein_g, Unit::Gram, 1, "mass balance").lead(),
        number("each_carbohydrate_g", "Carbohydrate in a cheese", each.carbohydrate_g, Unit::Gram, 1, "mass balance"),
        number("each_salt_g", "Salt in a cheese", each.salt_g, Unit::Gram, 1, SALT).lead(),
    ]
}

fn in_100_g(hundred: &Nutrients) -> Vec<Figure> {
    let kilocalories = Some(format!("{:.0} kcal", hundred.energy_kcal));
    vec![
        number("energy_kj_in_100_g", "Energy in 100 g of cheese", hundred.energy_kj, Unit::Kilojoule, 0, LABEL)
            .in_kitchen(kilocalories),
        number("fat_g_in_100_g", "Fat in 100 g of cheese", hundred.fat_g, Unit::Gram, 1, "mass balance"),
        number("protein_g_in_100_g", "Protein in 100 g of cheese", hundred.protein_g, Unit::Gram, 1, "mass balance"),
        number("carbohydrate_g_in_100_g", "Carbohydrate in 100 g of cheese", hundred.carbohydrate_g, Unit::Gram, 1, "mass balance"),
        number("salt_g_in_100_g", "Salt in 100 g of cheese", hundred.salt_g, Unit::Gram, 2, SALT),
    ]
}
