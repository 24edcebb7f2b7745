//! `log` keeps what really happened, and lays it beside the plan.

use super::{example, run};

/// A folder with a log of one batch.
struct Kitchen {
    folder: tempfile::TempDir,
}

impl Kitchen {
    fn begun() -> Self {
        let kitchen = Self { folder: tempfile::tempdir().unwrap() };
        let ran = kitchen.log(&["begin", &example("first-vat"), "--name", "Monday", "--at", "2031-05-05T09:00"]);
        assert!(ran.code == 0 && ran.words.contains("began batch 1, Monday in "), "{}", ran.words);
        kitchen
    }

    fn path(&self, name: &str) -> String {
        self.folder.path().join(name).to_str().unwrap().to_owned()
    }

    fn log(&self, more: &[&str]) -> super::Run {
        run(&[&["log", &self.path("my.log.ron")], more].concat())
    }

    fn add(&self, kind: &str, value: &str, at: &str) {
        let ran = self.log(&["add", kind, value, "--at", at]);
        assert_eq!((ran.code, ran.data.as_str()), (0, ""), "{}", ran.words);
    }
}

#[test]
fn what_is_written_down_is_listed_and_a_correction_shows_what_was_there() {
    let kitchen = Kitchen::begun();
    kitchen.add("milk_c", "34,5", "2031-05-05T10:20");
    kitchen.add("air_c", "-2", "2031-05-07T10:20");
    kitchen.add("note", "a little soft", "2031-05-05T14:00");
    let corrected = kitchen.log(&["correct", "1", "35"]);
    assert!(corrected.words.contains("35.0 °C  (before: 34.5 °C) (entry 4)"), "{}", corrected.words);
    let text = kitchen.log(&["list", "--batch", "1"]).data;
    assert!(text.contains("a little soft") && text.contains("(before: 34.5 °C)") && text.contains("-2.0 °C"), "{text}");
    let json = kitchen.log(&["list", "--batch", "1", "--json"]).json();
    assert_eq!((&json["name"], &json["entries_that_count"]), (&"Monday".into(), &3.into()));
    let entry = &json["entries"][3];
    assert_eq!((&entry["kind"], &entry["value"], &entry["corrects"]), (&"milk_c".into(), &35.0.into(), &1.into()));
    assert_eq!((&entry["at"], &entry["unit"]), (&"2031-05-05T10:20:00".into(), &"°C".into()));
    let all = kitchen.log(&[]);
    assert!(all.code == 0 && all.data.contains("batch 1, Monday") && all.data.contains("Sour first, then dry"), "{}", all.data);
    let withdrawn = kitchen.log(&["correct", "3", "--take-back", "--json"]).json();
    assert_eq!((&withdrawn["entry"], &withdrawn["batch"], &withdrawn["taken_back"]), (&5.into(), &1.into(), &true.into()));
    assert!(!kitchen.log(&["list", "--batch", "1"]).data.contains("a little soft"));
}

#[test]
fn the_fields_are_those_of_the_plan() {
    let json = Kitchen::begun().log(&["fields", "--json"]).json();
    let kinds: Vec<&str> = json["fields"].as_array().unwrap().iter().map(|field| field["kind"].as_str().unwrap()).collect();
    assert_eq!(&kinds[..3], ["cream_g", "milk_c", "calcium_g"]);
    assert!(kinds.contains(&"unmoulded_second_ph") && kinds.last() == Some(&"photo"), "{kinds:?}");
}

#[test]
fn a_table_is_shown_first_and_then_taken_over_with_what_is_wrong_by_line() {
    let kitchen = Kitchen::begun();
    let table = kitchen.path("probe.csv");
    std::fs::write(&table, "Time;Milk\n05.05.2031 09:10;12,5\n05.05.2031 09:20;off\n05.05.2031 09:30;20\n").unwrap();
    let before = std::fs::read(kitchen.path("my.log.ron")).unwrap();
    let preview = kitchen.log(&["import", "milk_c", &table, "--preview"]);
    assert_eq!(preview.code, 3, "a line cannot be read");
    assert!(preview.data.contains("2031-05-05 09:10  12.5 °C"), "{}", preview.data);
    assert!(
        preview.words.contains("line 3: “off” is no number") && preview.words.contains("2 lines would be read"),
        "{}",
        preview.words
    );
    assert_eq!(std::fs::read(kitchen.path("my.log.ron")).unwrap(), before);
    let json = kitchen.log(&["import", "milk_c", &table, "--json"]).json();
    assert_eq!((json["read"].as_array().unwrap().len(), &json["refused"][0]["line"]), (2, &3.into()));
    let again = kitchen.log(&["import", "milk_c", &table]);
    assert!(again.words.contains("0 lines read into batch 1, 2 were there already"), "{}", again.words);
    assert_eq!(kitchen.log(&["list", "--json"]).json()["batches"][0]["entries_that_count"], 2);
}

#[test]
fn a_batch_is_laid_beside_its_plan_and_beside_another() {
    let kitchen = Kitchen::begun();
    kitchen.add("warming_began", "", "2031-05-05T09:00");
    kitchen.add("milk_c", "10", "2031-05-05T09:20");
    let against = kitchen.log(&["against"]);
    assert_eq!(against.code, 0, "{}", against.words);
    let off = against.data.split_once("What differed from the plan\n").unwrap().1;
    assert!(off.starts_with("  Mon 5 May, 09:20: Temperature of the milk 10.0 °C; plan "), "{off}");
    assert!(against.data.contains("A plan from a model, not a measurement."));
    let json = kitchen.log(&["against", "--json"]).json();
    assert_eq!((&json["rows"][0]["kind"], &json["rows"][0]["off"]), (&"milk_c".into(), &true.into()));
    assert!(json["rows"][0]["likely"].is_array(), "the trial runs have a band there");
    assert!(kitchen.log(&["changed"]).words.contains("fewer than two batches"));
    let second = ["begin", &example("first-vat"), "--set", "drying_h=60", "--at", "2031-05-12T09:00"];
    assert_eq!(kitchen.log(&second).code, 0);
    let changed = kitchen.log(&["changed"]).data;
    assert!(changed.contains("84") && changed.contains("60"), "{changed}");
    let json = kitchen.log(&["changed", "1", "2", "--json"]).json();
    assert_eq!((&json["choices"][0]["key"], &json["choices"][0]["b"]), (&"drying_h".into(), &60.0.into()));
    assert_eq!(json["entries"].as_array().unwrap().len(), 2);
}

#[test]
fn a_broken_log_is_read_as_far_as_it_goes_and_kept() {
    let kitchen = Kitchen::begun();
    kitchen.add("milk_c", "30", "2031-05-05T10:20");
    let path = kitchen.path("my.log.ron");
    let mut broken = std::fs::read(&path).unwrap();
    broken.extend(b"entry(number:2,bat");
    std::fs::write(&path, &broken).unwrap();
    let listed = kitchen.log(&["list"]);
    assert!(listed.code == 3 && listed.data.contains("batch 1, Monday"), "{}", listed.data);
    assert!(listed.words.contains("was cut short") && listed.words.contains("entry(number:2,bat"), "{}", listed.words);
    assert_eq!(std::fs::read(&path).unwrap(), broken, "reading changes nothing");
    let added = kitchen.log(&["add", "milk_c", "31", "--at", "2031-05-05T10:30"]);
    assert!(added.code == 0 && added.words.contains("the broken log is kept as"), "{}", added.words);
    assert_eq!(std::fs::read(kitchen.path("my.log.ron.broken")).unwrap(), broken);
    assert_eq!(kitchen.log(&["list"]).code, 0);
}

#[test]
fn what_is_wrong_is_refused_with_what_to_do() {
    let kitchen = Kitchen::begun();
    let design = example("first-vat");
    for (more, code, said) in [
        (&["add", "milk_k", "3"][..], 2, "did you mean `milk_l`"),
        (&["add", "milk_c", "300"], 2, "between 0 and 100 °C"),
        (&["add", "milk_c", "warm"], 2, "holds a number"),
        (&["add", "milk_c", "30", "--batch", "7"], 2, "there is no batch 7"),
        (&["add", "milk_c", "30", "--at", "later"], 2, "is no day with a time"),
        (&["add", "task_begun", "turm_2"], 2, "did you mean `turn_2`?"),
        (&["add", "task_begun", "Turn"], 2, "such as turn_3"),
        (&["correct", "9", "30"], 2, "there is no entry 9"),
        (&["list", "--batch", "3"], 2, "it has one"),
        (&["import", "note", "missing.csv"], 3, "cannot read missing.csv"),
        (&["import", "note", &design], 3, "only numbers are imported"),
    ] {
        let ran = kitchen.log(more);
        assert_eq!((ran.code, ran.data.as_str()), (code, ""), "{more:?}: {}", ran.words);
        assert!(ran.words.contains(said), "{more:?}: {}", ran.words);
    }
    assert!(run(&["log", &design]).words.contains("no log of Vatsketch"));
    let ran = run(&["log", &kitchen.path("new.vat.ron"), "begin", &design]);
    assert!(ran.code == 2 && ran.words.contains("must end in .log.ron"), "{}", ran.words);
    assert_eq!(run(&["log", &kitchen.path("missing.log.ron")]).code, 3);
}

#[test]
fn what_comes_next_follows_from_what_was_written_down() {
    let kitchen = Kitchen::begun();
    let next = |now: &str| kitchen.log(&["next", "--as-of", now, "--json"]).json();
    assert!(next("2031-05-05T09:00")["begun"].is_null());
    assert_eq!(kitchen.log(&["add", "rennet_added", "--at", "2031-05-05T10:50"]).code, 0);
    let json = next("2031-05-05T10:55");
    assert_eq!((json["begun"]["task"].as_str(), json["begun"]["at"].as_str()), (Some("rennet"), Some("2031-05-05T10:50:00")));
    assert_eq!(json["next"][0]["task"], "cut", "its first test is also its cut");
    let text = kitchen.log(&["next", "--as-of", "2031-05-05T10:55"]);
    assert!(text.data.contains("under way since") && text.data.contains("Next: Mon 5 May, 11:30, in 35 min"), "{}", text.data);
}

#[test]
fn all_batches_stand_beside_each_other_and_go_into_a_spreadsheet() {
    let log = format!("{}/resources/examples/three-batches.log.ron", env!("CARGO_MANIFEST_DIR"));
    let text = run(&["log", &log, "across", "--search", "rennet"]);
    assert!(text.code == 0 && text.data.contains("batch 3") && !text.data.contains("batch 2"), "{}", text.data);
    let table = run(&["log", &log, "across", "--csv"]);
    assert_eq!((table.code, table.data.lines().count()), (0, 4), "{}", table.data);
    let json = run(&["log", &log, "across", "--json"]).json();
    assert_eq!(json["batches"][2]["numbers"]["milk_l"], 5.04);
    assert_eq!(run(&["log", &log, "across", "--search", "nowhere"]).data, "no batch has these words\n");
}

/// What three invented batches tell of their kitchen is kept in a file, which any design may be calculated for.
#[test]
fn a_kitchen_is_learned_kept_and_used() {
    let folder = tempfile::tempdir().unwrap();
    let (saved, log) = (folder.path().join("cellar.kitchen.ron"), "resources/examples/three-batches.log.ron");
    let saved = saved.to_str().unwrap();
    let log = format!("{}/{log}", env!("CARGO_MANIFEST_DIR"));
    let learned = run(&["log", &log, "estimate", "3", "--save", saved, "--json"]);
    assert!(learned.words.contains("“cellar”") && learned.words.contains("--kitchen"), "{}", learned.words);
    let told = learned.json();
    assert!(told["error_after"].as_f64().unwrap() < told["error_before"].as_f64().unwrap());
    let drip = told["constants"].as_array().unwrap().iter().find(|one| one["key"] == "drip_end_moisture_percent").unwrap();
    let width = |range: &serde_json::Value| range[1].as_f64().unwrap() - range[0].as_f64().unwrap();
    assert!(width(&drip["likely"]) < width(&drip["likely_before"]), "{drip}");
    let design = example("first-vat");
    let (plain, own) = (run(&["figures", &design]), run(&["figures", &design, "--kitchen", saved]));
    assert!(
        own.data.contains("Calculated for the kitchen “cellar”, from ") && !plain.data.contains("Calculated for"),
        "{}",
        own.data
    );
    let json = run(&["figures", &design, "--kitchen", saved, "--json"]).json();
    assert_eq!((&json["kitchen"]["name"], &json["kitchen"]["batches"]), (&"cellar".into(), &serde_json::json!([3])));
    let missing = run(&["figures", &design, "--kitchen", "nowhere.kitchen.ron"]);
    assert!(missing.code != 0 && missing.words.contains("nowhere.kitchen.ron"), "{}", missing.words);
    let nothing = Kitchen::begun();
    let refused = nothing.log(&["estimate"]);
    assert!(refused.code != 0 && refused.words.contains("write down temperatures"), "{}", refused.words);
}
