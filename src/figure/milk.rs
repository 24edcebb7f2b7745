//! The figures of the milk.

use super::figure::Figure;
use crate::design::{CalciumForm, Design, MilkKind, Stage, Unit};
use crate::law::calcium::{DIHYDRATE_RATIO, FLAKES_BULK, solution_ml};
use crate::law::kitchen::{drop_words, spoons};
use crate::law::rennet::LIQUID_DENSITY;
use crate::process::MilkOutcome;

const BLEND: &str = "Pearson square by mass: x = m (T − A)/(B − T)";
const FIT: &str = "specific volumes of fat, solids and water add up; our fit to published densities, ±0.001 kg/L";
const FIT_SHEEP: &str =
    "specific volumes add up, but no more than 1.037 kg/L: for sheep's milk our fit comes out higher than the literature";
const FIT_CREAM: &str = "specific volumes of fat, solids and water add up; our fit to published densities, ±0.003 kg/L for cream";
const LABEL: &str = "as printed on the carton";
const USDA: &str = "USDA rows of milk; cream and skimmed milk have the serum of their milk";
const CALCIUM: &str = "dose × milk; dihydrate 1.3247 × anhydrous; density of solutions by the CRC Handbook";
const RENNET_WEIGHT: &str =
    "1.08 g to the mL of liquid rennet, from memory; a powder is labelled by the gram, so its millilitres are grams";
const DROPS: &str =
    "volume × drops in a millilitre by your own count, to a whole drop; only where that is within a tenth and no spoon measures it";
const RENNET: &str = "dose × milk / strength (powder: read g for mL); 69 Soxhlet units to the IMCU/mL, ±20 %, from memory";

/// Returns the figures of the milk: what is added first, then what it makes.
pub(super) fn figures(milk: &MilkOutcome, design: &Design) -> Vec<Figure> {
    let mut all = cream_and_calcium(milk, design);
    all.extend(rennet_and_vat(milk, design));
    all
}

fn cream_and_calcium(milk: &MilkOutcome, design: &Design) -> Vec<Figure> {
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Milk, key, label, value, unit, decimals, law);
    let solution = design.milk.calcium_form == CalciumForm::Solution;
    let mut all = Vec::new();
    if milk.skim_kg > 0.0 {
        all.push(number("skim_l", "Skimmed milk to add", milk.skim_l, Unit::Litre, 2, BLEND).lead());
        all.push(number("skim_kg", "Skimmed milk to add, by weight", milk.skim_kg, Unit::Kilogram, 2, BLEND));
    }
    let cream = number("cream_g", "Cream to add", milk.cream_g, Unit::Gram, 0, BLEND).in_kitchen(spoons(milk.cream_ml));
    all.push(if milk.skim_kg > 0.0 { cream } else { cream.lead() });
    all.push(number("cream_ml", "Cream to add, by volume", milk.cream_ml, Unit::Millilitre, 0, FIT_CREAM));
    // Spoons of loose flakes are rough; a solution is measured by its volume below.
    let flakes = if solution { None } else { spoons(milk.calcium_g / FLAKES_BULK.value) };
    let calcium = number("calcium_g", "Calcium chloride to add", milk.calcium_g, Unit::Gram, 2, CALCIUM).in_kitchen(flakes);
    all.push(if solution { calcium } else { calcium.lead() });
    if solution {
        all.push(
            number("calcium_ml", "Calcium chloride solution to add", milk.calcium_ml, Unit::Millilitre, 1, CALCIUM)
                .in_kitchen(spoons(milk.calcium_ml).or_else(|| counted(milk.calcium_drops, design.milk.calcium_drops_in_ml)))
                .lead(),
        );
        let drops = milk.calcium_drops.map(f64::from);
        all.extend(drops.map(|drops| number("calcium_drops", "Drops of calcium chloride solution", drops, Unit::One, 0, DROPS)));
    }
    all
}

fn rennet_and_vat(milk: &MilkOutcome, design: &Design) -> Vec<Figure> {
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Milk, key, label, value, unit, decimals, law);
    let vat = &milk.vat_milk;
    let fat = if design.milk.milk_kind == MilkKind::Label { LABEL } else { USDA };
    let fit = if design.milk.milk_kind == MilkKind::Sheep { FIT_SHEEP } else { FIT };
    let as_solution_ml = solution_ml(milk.calcium_anhydrous_g, design.milk.calcium_solution_percent);
    let rennet = number("rennet_ml", "Rennet", milk.rennet_ml, Unit::Millilitre, 2, RENNET);
    let in_kitchen = spoons(milk.rennet_ml).or_else(|| counted(milk.rennet_drops, design.milk.rennet_drops_in_ml));
    let drops = milk.rennet_drops.map(f64::from);
    let mut all = vec![rennet.in_kitchen(in_kitchen).lead()];
    all.extend(drops.map(|drops| number("rennet_drops", "Drops of rennet", drops, Unit::One, 0, DROPS)));
    all.extend([
        number("rennet_g", "Rennet by weight, if liquid", milk.rennet_ml * LIQUID_DENSITY.value, Unit::Gram, 2, RENNET_WEIGHT),
        number("rennet_water_ml", "Water to dilute the rennet", milk.rennet_water_ml, Unit::Millilitre, 0, "dilution × rennet")
            .in_kitchen(spoons(milk.rennet_water_ml)),
        number("vat_milk_l", "Milk in the vat", milk.vat_milk_l, Unit::Litre, 2, fit).lead(),
        number("vat_milk_kg", "Milk in the vat, by weight", milk.vat_milk_kg, Unit::Kilogram, 2, BLEND),
        number("bought_kg", "Milk as bought, by weight", milk.bought_kg, Unit::Kilogram, 2, fit),
        number("bought_density_kg_l", "Density of the milk as bought", milk.bought_density_kg_l, Unit::KilogramPerLitre, 3, fit),
        number(
            "vat_milk_density_kg_l",
            "Density of the milk in the vat",
            milk.vat_milk_density_kg_l,
            Unit::KilogramPerLitre,
            3,
            fit,
        ),
        number("bought_fat_percent", "Fat in the milk as bought", milk.bought.fat_percent(), Unit::Percent, 2, fat),
        number("fat_percent", "Fat in the milk in the vat", vat.fat_percent(), Unit::Percent, 2, BLEND),
        number("protein_percent", "Protein in the milk in the vat", vat.percent(vat.protein_kg()), Unit::Percent, 2, USDA),
        number(
            "casein_percent",
            "Casein in the milk in the vat",
            vat.percent(vat.casein_kg),
            Unit::Percent,
            2,
            "casein share of the protein: cow 0.77, sheep 0.755, goat 0.79, buffalo 0.80",
        ),
        number(
            "solids_not_fat_percent",
            "Solids-not-fat in the milk in the vat",
            vat.solids_not_fat_percent(),
            Unit::Percent,
            2,
            USDA,
        ),
        number("solids_percent", "Total solids in the milk in the vat", vat.percent(vat.solids_kg()), Unit::Percent, 2, USDA),
        number(
            "casein_to_fat",
            "Casein to fat in the milk in the vat",
            milk.casein_to_fat,
            Unit::One,
            2,
            "by mass; about 0.7 is usual for full-fat cheese",
        ),
        number("milk_ph", "pH of the milk", milk.milk_ph, Unit::One, 2, "usual for the kind of milk, ±0.1, or as measured"),
        number("least_fat_percent", "Lowest fat that can be reached", milk.reachable_fat_percent.0, Unit::Percent, 1, BLEND),
        number("most_fat_percent", "Highest fat that can be reached", milk.reachable_fat_percent.1, Unit::Percent, 1, BLEND),
        number("calcium_anhydrous_g", "Calcium chloride, as anhydrous", milk.calcium_anhydrous_g, Unit::Gram, 2, CALCIUM),
        number(
            "calcium_dihydrate_g",
            "Calcium chloride, as dihydrate",
            milk.calcium_anhydrous_g * DIHYDRATE_RATIO.value,
            Unit::Gram,
            2,
            CALCIUM,
        ),
        number("calcium_as_solution_ml", "Calcium chloride, as solution", as_solution_ml, Unit::Millilitre, 1, CALCIUM)
            .in_kitchen(spoons(as_solution_ml)),
        number(
            "calcium_percent",
            "Calcium chloride in the milk, as anhydrous",
            milk.calcium_percent,
            Unit::Percent,
            3,
            "limit 0.02 % in 21 CFR 133",
        ),
        number("rennet_strength_imcu_ml", "Rennet strength", milk.rennet_strength_imcu_ml, Unit::ImcuPerMillilitre, 0, RENNET),
        number("rennet_imcu_kg", "Rennet dose", milk.rennet_imcu_kg, Unit::ImcuPerKilogram, 0, RENNET),
    ]);
    all
}

/// Returns an amount in counted drops: "14 drops, 24 to the mL".
fn counted(drops: Option<u32>, drops_in_ml: f64) -> Option<String> {
    drops.map(|drops| format!("{}, {drops_in_ml} to the mL", drop_words(drops)))
}
