//! `vatsketch stage germs`, against rows of the table and with everything that may be wrong.

use super::{run, stage};
use crate::law::tables::rows;

#[derive(serde::Deserialize)]
struct Row {
    case: String,
    kind: String,
    organism: String,
    #[serde(rename = "T_C")]
    temperature_c: String,
    #[serde(rename = "pH")]
    ph: String,
    aw: String,
    #[serde(rename = "lactic_mM")]
    lactic_mm: String,
    #[serde(rename = "acetic_mM")]
    acetic_mm: String,
    h0: String,
    start_log: String,
    starter: String,
    history: String,
    result: f64,
    result_with_lag: Option<f64>,
}

impl Row {
    /// Returns the settings of the row, those left out that it leaves empty.
    fn settings(&self) -> Vec<String> {
        let all = [
            ("organism", &self.organism),
            ("temperature_c", &self.temperature_c),
            ("ph", &self.ph),
            ("water_activity", &self.aw),
            ("lactic_mm", &self.lactic_mm),
            ("acetic_mm", &self.acetic_mm),
            ("h0", &self.h0),
            ("start_log", &self.start_log),
            ("starter", &self.starter),
            ("history", &self.history),
        ];
        all.iter().filter(|(_, text)| !text.is_empty()).map(|(key, text)| format!("{key}={text}")).collect()
    }
}

fn near(row: &Row, got: &serde_json::Value, want: f64, tolerance: f64) {
    let got = got.as_f64().unwrap_or(f64::NAN);
    assert!((got - want).abs() <= tolerance * want.abs(), "{}: {got} against {want}", row.case);
}

/// The first row of each organism and kind, as the table writes it; the law itself is held to every row elsewhere.
#[test]
fn the_first_row_of_each_kind_is_met_as_it_is_written() {
    let mut seen = std::collections::BTreeSet::new();
    let all: Vec<Row> = rows("germs");
    let first: Vec<&Row> = all.iter().filter(|row| seen.insert((row.kind.clone(), row.organism.clone()))).collect();
    assert_eq!(first.len(), 11 + 6 + 2);
    for row in first {
        let settings = row.settings();
        let run = stage("germs", &settings.iter().map(String::as_str).collect::<Vec<_>>());
        assert_eq!((run.code, run.words.as_str()), (0, ""), "{}", row.case);
        let json = run.json();
        assert!(json["notice"].as_str().unwrap().contains("no proof"));
        match (row.kind.as_str(), row.organism.as_str()) {
            ("rate", "mould") => near(row, &json["radius_mm_per_day"], row.result, 1e-4),
            ("rate", _) => near(row, &json["rate_per_h"], row.result, 1e-4),
            _ => {
                near(row, &json["increase_log10"], row.result, 0.003);
                near(row, &json["increase_with_lag_log10"], row.result_with_lag.unwrap(), 0.003);
            }
        }
    }
}

const STEADY: &str = "history=0:21:6.5:0.988|36:21:6.5:0.988";

/// What the records and the help state: no acids, the lag of the germ, two log at the start beside a starter.
#[test]
fn what_is_left_out_has_its_stated_default() {
    let at = ["organism=listeria", "temperature_c=4", "ph=6,5", "water_activity=0.985"];
    let with_acids = [&at[..], &["lactic_mm=0", "acetic_mm=0"]].concat();
    assert_eq!(stage("germs", &at).data, stage("germs", &with_acids).data);
    let along = stage("germs", &["organism=staphylococcus", STEADY]).json();
    assert_eq!((along["h0"].as_f64(), &along["start_log"]), (Some(2.3), &serde_json::Value::Null));
    let beside = stage("germs", &["organism=staphylococcus", STEADY, "starter=6.6;0.85;1.5e9"]).json();
    assert_eq!((beside["start_log"].as_f64(), beside["most_log"].as_f64()), (Some(2.0), Some(8.5)));
    let listed = run(&["inputs"]).data;
    assert!(listed.contains("2 beside a starter"), "{listed}");
}

/// From 3 log to the greatest density of 8.5 there is room for 5.5, however long it takes.
#[test]
fn a_start_brings_the_greatest_density_in() {
    let long = "history=0:37:6.5:0.988|400:37:6.5:0.988";
    let json = stage("germs", &["organism=salmonella", long, "start_log=3"]).json();
    for member in ["increase_log10", "increase_with_lag_log10"] {
        assert!((json[member].as_f64().unwrap() - 5.5).abs() < 1e-9, "{member}");
    }
}

#[test]
fn the_words_say_what_it_is_and_what_holds_growth_back() {
    let at = ["--set", "organism=listeria", "--set", "temperature_c=4", "--set", "ph=6.5", "--set", "water_activity=0.985"];
    let place = run(&[&["stage", "germs"][..], &at].concat());
    assert_eq!(place.code, 0, "{}", place.words);
    for part in ["4.0 °C", "0.0209 per hour", "110.3 h", "Held back most by", "temperature", "is no proof"] {
        assert!(place.data.contains(part), "{part} in {}", place.data);
    }
    let fahrenheit = run(&[&["stage", "germs", "--units", "fahrenheit"][..], &at].concat());
    assert!(fahrenheit.data.contains("39 °F") && !fahrenheit.data.contains("°C"), "{}", fahrenheit.data);
    let stopped = run(&[&["stage", "germs"][..], &at, &["--set", "organism=coli"]].concat());
    assert!(stopped.data.contains("no growth foreseen by this model"), "{}", stopped.data);
    let along = run(&["stage", "germs", "--set", "organism=listeria", "--set", STEADY, "--set", "h0=2"]);
    for part in ["history of 36.0 h", "4.89 log₁₀", "4.02 log₁₀", "is no proof"] {
        assert!(along.data.contains(part), "{part} in {}", along.data);
    }
}

#[test]
fn a_wrong_or_missing_setting_is_told_with_what_to_do() {
    let whole = ["organism=listeria", "temperature_c=4", "ph=6.5", "water_activity=0.985"];
    for (set, parts) in [
        (&[][..], &["the organism is missing", "--set organism=listeria"][..]),
        (&["organism=listera"], &["`listera`", "did you mean `listeria`?"]),
        (&["organism=teapot"], &["must be one of listeria, staphylococcus", "`teapot`"]),
        (&["temprature_c=4"], &["`temprature_c`", "did you mean `temperature_c`?"]),
        (&["temperature_c"], &["must be written KEY=VALUE"]),
        (&["organism=listeria", "temperature_c=4"], &["pH is missing", "--set ph=NUMBER"]),
        (&["organism=mould", "water_activity=0.95"], &["Temperature is missing"]),
        (&["ph=sour"], &["pH (`ph`) must be a number from 2 to 10", "`sour`"]),
        (&["water_activity=1.2"], &["Water activity (`water_activity`) must be from 0.5 to 1", "1.2"]),
        (&["temperature_c=nan"], &["`nan` is not a number"]),
        (&["lactic_mm=-1"], &["Lactic acid", "from 0 to 2000"]),
        (&[&whole[..], &["citric_mm=5"]].concat(), &["citric acid", "md_listeria and md_lab"]),
        (&[&whole[..], &["h0=2"]].concat(), &["`h0` counts only along a history"]),
        (&[&whole[..], &["starter=6.6;0.85;1.5e9"]].concat(), &["`starter` counts only along a history"]),
        (&["organism=listeria", STEADY, "ph=6"], &["`ph` is given by the history"]),
        (&["organism=mould", STEADY], &["a mould has a radius"]),
        (&["organism=yeast", STEADY], &["row 1 of `history`", "2 to 20 °C", "0.95 to 0.994"]),
        (&["organism=yeast", "temperature_c=30", "ph=5", "water_activity=0.97"], &["the law of dairy yeasts holds from 2"]),
        (&["organism=md_lab", "history=0:8:6:0.98|9:8:6:0.98", "start_log=3"], &["no greatest density is known for md_lab"]),
        (&["history=0:21:6.5"], &["row 1 of `history`", "has 3 parts", "hours:temperature"]),
        (&["history=0:21:6.5:0.988|36:21:sour:0.988"], &["row 2 of `history`: pH", "`sour`"]),
        (&["history=0:21:6.5:0.988|36:99:6.5:0.988"], &["row 2 of `history`: Temperature", "-10 to 60 °C"]),
        (&["history=1:21:6.5:0.988|36:21:6.5:0.988"], &["must begin at 0"]),
        (&["history=0:21:6.5:0.988|9:21:6.5:0.988|8:21:6.5:0.988"], &["never go back"]),
        (&["history=0:21:6.5:0.988"], &["end later than they begin"]),
        (&["starter=6.6;0.85"], &["has 2 parts", "as in 6.6;0.85;1.5e9"]),
        (&["starter=6.6;fast;1.5e9"], &["Rate of the starter", "`fast`"]),
        (&["starter=9.6;0.85;1.5e9"], &["starts with more than its greatest number"]),
    ] {
        let refused = stage("germs", set);
        assert_eq!((refused.code, refused.data.as_str()), (2, ""), "{set:?}: {}", refused.words);
        for part in parts {
            assert!(refused.words.contains(part), "{set:?}: `{part}` in {}", refused.words);
        }
    }
}

#[test]
fn the_name_of_what_is_calculated_alone_is_known_everywhere() {
    assert!(run(&["stage", "--help"]).data.contains("germs"));
    assert!(run(&["completions", "bash"]).data.contains("germs"));
    let slip = run(&["stage", "gersm"]);
    assert!(slip.code == 2 && slip.words.contains("did you mean `germs`?"), "{}", slip.words);
    let json = run(&["inputs", "--json"]).json();
    let keys: Vec<&str> = json["germs"].as_array().unwrap().iter().map(|row| row["key"].as_str().unwrap()).collect();
    for key in ["organism", "history", "starter", "temperature_c", "citric_mm", "h0", "start_log"] {
        assert!(keys.contains(&key), "{keys:?}");
    }
}
