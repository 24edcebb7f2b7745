//! One stage alone, against tables from outside.

use super::{run, stage};

#[derive(serde::Deserialize)]
struct Row {
    case: String,
    t_h: f64,
    w: f64,
    w_centre: f64,
    mass_g: f64,
    diam_mm: f64,
    aw_mean: f64,
}

/// The first case of the table (60 × 18 mm, 60 % moisture, air of 40 °C, common practice, no source, at 1 m/s warmed from 21 °C and 45 %), 0.5 % of each figure as the solver promises.
#[test]
fn drying_a_described_cheese_meets_the_reference_table() {
    let rows: Vec<Row> = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path(format!("{}/tests/reference/drying.csv", env!("CARGO_MANIFEST_DIR")))
        .unwrap()
        .deserialize()
        .map(Result::unwrap)
        .filter(|row: &Row| row.case == "D01_default")
        .collect();
    let hours = rows.iter().map(|row| row.t_h.to_string()).collect::<Vec<_>>().join(",");
    let run = stage(
        "drying",
        &[
            "diameter_mm=60",
            "thickness_mm=18",
            "moisture_percent=60",
            "fat_percent=19",
            "protein_percent=16",
            "carbohydrate_percent=1.5",
            "ash_percent=1.5",
            "salt_percent=2",
            "start_temperature_c=20",
            "underside_open_percent=100",
            "cabinet_temperature_c=40",
            "room_air_temperature_c=21",
            "room_humidity_percent=45",
            "air_speed_m_s=1",
            &format!("report_h={hours}"),
        ],
    );
    assert_eq!(run.code, 0, "{}", run.words);
    let json = run.json();
    let points = json["points"].as_array().unwrap();
    assert_eq!(points.len(), rows.len());
    for (row, point) in rows.iter().zip(points) {
        for (key, expected) in [
            ("at_h", row.t_h),
            ("moisture_percent", 100.0 * row.w),
            ("centre_moisture_percent", 100.0 * row.w_centre),
            ("cheese_g", row.mass_g),
            ("diameter_mm", row.diam_mm),
            ("water_activity", row.aw_mean),
        ] {
            let ours = point[key].as_f64().unwrap();
            assert!((ours / expected - 1.0).abs() < 0.005, "{key} at {} h: {ours}, expected {expected}", row.t_h);
        }
    }
}

/// Salt sprinkled on, less what runs off, over cheese and salt that stays: 2 %·0.9 of 1.018 of the curd, worked by hand; the curd itself is unsalted.
#[test]
fn salting_a_described_curd_is_a_mass_balance() {
    let salted = stage("salting", &["salt_percent=2", "salt_run_off_percent=10", "salted_turns=2", "moisture_percent=60"]);
    assert_eq!(salted.code, 0, "{}", salted.words);
    let percent = salted.json()["cheese_salt_percent"].as_f64().unwrap();
    assert!((percent - 100.0 * 0.018 / 1.018).abs() < 1e-9, "{percent}");
    let unsalted = stage("salting", &["salt_percent=0"]).json();
    assert_eq!(unsalted["cheese_salt_percent"].as_f64(), Some(0.0));
}

#[test]
fn milk_vat_and_draining_are_worked_out_from_the_milk_on() {
    let milk = stage("milk", &["milk_l=9.4", "milk_kind=sheep"]);
    assert_eq!(milk.code, 0, "{}", milk.words);
    assert!(milk.json()["vat_milk_l"].as_f64().unwrap() > 7.0);
    let vat = stage("vat", &["milk_l=9.4", "heating=hob", "heater_power_w=400"]);
    assert_eq!(vat.code, 0, "{}", vat.words);
    assert!(vat.json()["clotting_min"].as_f64().unwrap() > 1.0);
    let draining = stage("draining", &["milk_l=9.4", "mould_count=16"]);
    assert_eq!((draining.code, draining.json()["cheese_count"].as_f64()), (0, Some(16.0)), "{}", draining.words);
}

#[test]
fn a_stage_that_fails_alone_ends_with_one() {
    let vat = stage("vat", &["bath_set_temperature_c=30", "rennet_temperature_c=34.5"]);
    assert_eq!(vat.code, 1);
    assert!(vat.words.contains("does not reach 34.5 °C"), "{}", vat.words);
    let closed = stage("drying", &["top_open_percent=0", "side_open_percent=0", "underside_open_percent=0"]);
    assert_eq!(closed.code, 1);
    assert!(closed.words.contains("reaches no face"), "{}", closed.words);
    let salting = stage("salting", &["salt_percent=2", "salted_turns=0"]);
    assert_eq!(salting.code, 1, "{}", salting.words);
}

#[test]
fn a_drying_curve_is_printed_as_lines_of_one_width() {
    let run = run(&["stage", "drying", "--set", "report_h=6,12,24"]);
    assert_eq!(run.code, 0, "{}", run.words);
    let lines: Vec<&str> = run.data.lines().collect();
    assert_eq!(lines.len(), 4);
    assert!(
        lines[0].contains("weight, g") && lines[1].trim_start().starts_with("6.00") && lines[3].trim_start().starts_with("24.00")
    );
}

/// By hand: 85 + 60 + 16 + 1.6 + 1.5 + 1.9 = 166.0, the last four by default.
#[test]
fn a_cheese_whose_parts_do_not_add_up_is_refused_with_their_sum() {
    let refused = run(&["stage", "drying", "--set", "moisture_percent=85", "--set", "fat_percent=60"]);
    assert_eq!(refused.code, 2);
    assert!(refused.words.contains("add up to 166.0 %"), "{}", refused.words);
}

#[test]
fn nothing_lost_is_not_shown_as_less_than_nothing() {
    let run = run(&["stage", "drying", "--set", "report_h=0,6"]);
    assert!(!run.data.contains("-0.0"), "{}", run.data);
}

/// What may be said about keeping rests on every stage, so the stage that failed is named.
#[test]
fn keeping_says_which_stage_failed_before_it() {
    let run = run(&["stage", "keeping", "--set", "salted_turns=20"]);
    assert_eq!(run.code, 1, "{} {}", run.words, run.data);
    assert!(run.words.contains("turns"), "{}", run.words);
}

/// A bath of 20 °C warms no milk to the rennet's temperature; whatever stage is asked for after it cannot be calculated.
#[test]
fn a_stage_that_fails_ends_with_one_and_says_why_as_text_and_as_json() {
    for name in ["vat", "draining", "keeping"] {
        for form in [&[][..], &["--json"]] {
            let run = run(&[&["stage", name, "--set", "bath_set_temperature_c=20"][..], form].concat());
            assert_eq!(run.code, 1, "{name} {form:?}: {}", run.data);
            assert!(run.words.starts_with("vatsketch: ") && run.words.contains("20.0 °C"), "{name} {form:?}: {}", run.words);
        }
        assert_eq!(stage(name, &[]).code, 0, "{name}");
    }
}

/// Water and fat together are more than the whole cheese.
#[test]
fn a_described_cheese_that_cannot_be_is_refused_on_standard_error() {
    let run = stage("drying", &["moisture_percent=85", "fat_percent=60"]);
    assert!(run.code != 0 && run.data.is_empty() && run.words.starts_with("vatsketch: "), "{} {}", run.code, run.words);
}

/// 18 °C are 64.4 °F, 70.4 g are 2.48 oz and 168 h are 7 d by their legal definitions; read as a kitchen can.
#[test]
fn tables_of_one_stage_are_shown_in_the_chosen_units() {
    let drying = run(&["stage", "drying", "--units", "us", "--set", "start_temperature_c=18", "--set", "report_h=0,6"]);
    let lines: Vec<Vec<&str>> = drying.data.lines().map(|line| line.split_whitespace().collect()).collect();
    assert!(drying.data.contains("weight, oz") && drying.data.contains("cheese, °F"), "{}", drying.data);
    assert_eq!(lines.get(1).and_then(|row| row.get(1)).copied(), Some("2.5"), "{}", drying.data);
    assert_eq!(lines.get(1).and_then(|row| row.get(6)).copied(), Some("64"), "{}", drying.data);
    let soaking = run(&["stage", "pickling", "--units", "days", "--set", "report_h=24,168"]);
    let last = soaking.data.lines().nth(2).map(str::trim_start).unwrap_or_default();
    assert!(soaking.data.contains("time, d") && last.starts_with("7.0 "), "{}", soaking.data);
    assert_eq!(run(&["stage", "drying", "--json", "--units", "us"]).data, run(&["stage", "drying", "--json"]).data);
}
