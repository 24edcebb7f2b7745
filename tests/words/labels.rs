//! Numbers in the names of figures, choices and lines are those of the records.

use vatsketch::batch::batch;
use vatsketch::curve::{CurveKey, curve};
use vatsketch::design::fields;
use vatsketch::figure::figures;
use vatsketch::law::growth::{ACIDIFIED_PH, COLD_DRAINING, COLD_ENOUGH, COOL_ABOVE, HOT_ENOUGH, SERVICE_WARM, TABLE_B_PH};
use vatsketch::session::EXAMPLES;
use vatsketch::source::Constant;

/// Returns the numbers that a text gives right after "pH", and those right before "°C" or before " and" or "to" ahead of one.
fn numbers(label: &str) -> (Vec<f64>, Vec<f64>) {
    let words: Vec<&str> = label.split([' ', '\u{a0}', ',', ';', ':', '(', ')']).filter(|word| !word.is_empty()).collect();
    let number = |at: usize| words.get(at).and_then(|word| word.parse::<f64>().ok());
    let ph = (1..words.len()).filter(|at| words[at - 1] == "pH").filter_map(number).collect();
    let mut celsius = Vec::new();
    for at in (1..words.len()).filter(|at| words[*at] == "°C") {
        celsius.extend(number(at - 1));
        let joined = at >= 3 && ["and", "to"].contains(&words[at - 2]);
        celsius.extend(if joined { number(at - 3) } else { None });
    }
    (ph, celsius)
}

#[test]
fn the_reader_of_labels_sees_both_ends() {
    assert_eq!(numbers("Hours between 4 and 60 °C, pH 4.2"), (vec![4.2], vec![60.0, 4.0]));
}

#[test]
fn every_number_in_a_label_is_that_of_a_record() {
    let mut labels: Vec<String> = fields().map(|field| field.label.to_owned()).collect();
    for example in EXAMPLES {
        let batch = batch(&example.design().unwrap()).unwrap();
        labels.extend(figures(&batch).iter().map(|figure| figure.label.to_owned()));
        for curve in CurveKey::ALL.map(|key| curve(&batch, key)) {
            labels.extend(curve.series.iter().map(|series| series.name.to_owned()));
            labels.extend(curve.events.iter().map(|event| event.name.to_owned()));
        }
    }
    let is = |number: f64, records: &[&Constant]| records.iter().any(|record| (record.value - number).abs() < 1e-9);
    let mut seen = 0;
    for label in &labels {
        let (ph, celsius) = numbers(label);
        seen += ph.len() + celsius.len();
        assert!(ph.iter().all(|ph| is(*ph, &[&ACIDIFIED_PH, &TABLE_B_PH])), "{label}");
        let known = [&COLD_ENOUGH, &HOT_ENOUGH, &SERVICE_WARM, &COLD_DRAINING, &COOL_ABOVE];
        assert!(celsius.iter().all(|celsius| is(*celsius, &known)), "{label}");
    }
    assert!(seen > 20, "only {seen} numbers were found");
}
