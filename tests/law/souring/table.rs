//! Every row of the table of souring: our law against an independent program, and against outside values where a tolerance stands.

use super::super::outside::Outside;
use super::super::tables::{near, rows};
use super::{curd, milk};
use std::collections::BTreeMap;
use vatsketch::law::souring::{
    Acid, AcidAmounts, Culture, CultureLaw, CultureState, SOURING_STEP_H, Sourable, SouringPoint, clotting_factor,
    colloidal_calcium_left, gluconic_mol_kg, hours_to, lactone_split_share, sour,
};

#[derive(serde::Deserialize)]
struct Row {
    case: String,
    kind: String,
    input: String,
    result: f64,
    outside: String,
    quantity: String,
    outside_kind: String,
    outside_source: String,
    tolerance: Option<f64>,
}

/// What a row gives.
struct Given(BTreeMap<String, String>);

impl Given {
    fn number(&self, key: &str) -> f64 {
        self.0[key].parse().unwrap()
    }

    fn matter(&self) -> Sourable {
        match self.0["matter"].as_str() {
            "milk" => milk(),
            "rich" => Sourable::new(0.0395, 0.86, 6.50, 1.0),
            "curd" => curd(),
            "firm" => Sourable::new(0.24, 0.39, 6.65, 1.0),
            "none" => Sourable::new(0.0, 1.0, 7.0, 0.0),
            other => panic!("no matter {other}"),
        }
    }

    fn acids(&self) -> AcidAmounts {
        let amount = |key: &str| self.0.get(key).map_or(0.0, |text| text.parse().unwrap());
        AcidAmounts { lactic: amount("lactic"), acetic: amount("acetic"), citric: amount("citric"), gluconic: amount("gluconic") }
    }

    fn course(&self) -> Vec<SouringPoint> {
        let culture = match self.0["starter"].as_str() {
            "mesophilic" => Culture::Mesophilic,
            "thermophilic" => Culture::Thermophilic,
            other => panic!("no culture {other}"),
        };
        let lactose = self.0.get("lactose").map_or(0.046, |text| text.parse().unwrap());
        let start = CultureState::new(self.number("cells"), lactose, AcidAmounts::default());
        let temperature_c = self.number("T");
        sour(&CultureLaw::of(culture), &start, &self.matter(), &|_| temperature_c, self.number("h"), SOURING_STEP_H)
    }
}

fn found(row: &Row) -> f64 {
    let given = Given(row.input.split(';').map(|pair| pair.split_once('=').unwrap()).map(|(k, v)| (k.into(), v.into())).collect());
    match row.kind.as_str() {
        "ph" => given.matter().ph_of(&given.acids()),
        "acid" => {
            let (ph, matter) = (given.number("ph"), given.matter());
            let mol_kg = match given.0["acid"].as_str() {
                "lactic" => matter.acid_for(ph, Acid::Lactic),
                "acetic" => matter.acid_for(ph, Acid::Acetic),
                "citric" => matter.acid_for(ph, Acid::Citric),
                // A strong acid gives off all it has.
                "strong" => matter.hydrogen_for(ph),
                other => panic!("no acid {other}"),
            };
            1000.0 * mol_kg
        }
        "gdl" => {
            let mol_kg = gluconic_mol_kg(given.number("g_per_kg")) * lactone_split_share(given.number("T"), given.number("h"));
            given.matter().ph_of(&AcidAmounts::of(Acid::Gluconic, mol_kg))
        }
        "time" => hours_to(&given.course(), given.number("ph")).unwrap(),
        "steepest" => {
            let course = given.course();
            let falls = course.iter().zip(&course[1..]).map(|(before, after)| (before.ph - after.ph) / (after.at_h - before.at_h));
            // From pH for each hour to thousandths for each minute.
            1000.0 / 60.0 * falls.fold(0.0, f64::max)
        }
        "cells" => given.course().last().unwrap().cells_per_g,
        "calcium" => colloidal_calcium_left(given.number("ph")),
        "clotting" => clotting_factor(given.number("ph")),
        other => panic!("no kind {other}"),
    }
}

/// Returns what stands outside of each row; of a range that is published, the end that is nearer to ours.
pub fn souring_rows() -> Vec<Outside> {
    let with_outside = rows("souring").into_iter().filter(|row: &Row| !row.outside.is_empty());
    let row = |row: Row| {
        let ours = found(&row);
        let numbers: Vec<f64> = row.outside.split_whitespace().filter_map(|word| word.parse().ok()).collect();
        let nearest = ours.clamp(numbers[0], numbers[numbers.len() - 1]);
        Outside {
            law: "souring".to_owned(),
            case: format!("{}: {}, {}", row.case, row.input.replace(';', ", "), row.quantity),
            source: row.outside_source.clone(),
            expected: nearest,
            ours,
            tolerance: row.tolerance.map(|tolerance| tolerance * nearest),
            why: if numbers.len() > 1 { format!("{}, {}", row.outside_kind, row.outside) } else { row.outside_kind.clone() },
        }
    };
    with_outside.map(row).collect()
}

/// The tolerance is a thousandth of the value; of a pH, its third decimal.
#[test]
fn every_row_is_that_of_the_independent_program() {
    let rows: Vec<Row> = rows("souring");
    assert_eq!(rows.len(), 47);
    for row in rows {
        let got = found(&row);
        let tolerance = if ["ph", "gdl"].contains(&row.kind.as_str()) { 1e-3 } else { 1e-3 * row.result.abs() };
        assert!((got - row.result).abs() <= tolerance, "{}: {got} is not {}", row.case, row.result);
    }
}

/// The package pHcalc for acids in water, and the published rule of clotting and pH: the same law in other hands.
#[test]
fn rows_with_a_tolerance_meet_their_outside_value() {
    let rows: Vec<Row> = rows("souring");
    let mut compared = 0;
    for row in rows {
        if let Some(tolerance) = row.tolerance {
            let outside: f64 = row.outside.parse().unwrap();
            near(found(&row), outside, tolerance * outside);
            compared += 1;
        }
    }
    assert_eq!(compared, 6);
}
