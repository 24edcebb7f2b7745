//! `scale` shows what follows and writes only where it is told to.

use super::{example, run};
use vatsketch::file::{self, DesignFile};

#[test]
fn the_text_shows_before_and_after_and_the_file_stays() {
    let path = example("warm-cabinet");
    let before = std::fs::read(&path).unwrap();
    let ran = run(&["scale", &path, "--milk", "8"]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    for words in ["Scale to 8 L of milk\n", "Choices that change", "Number of moulds", "To buy", "Packages", "Costs", "When"] {
        assert!(ran.data.contains(words), "{words} is missing in {}", ran.data);
    }
    let moulds = ran.data.lines().find(|line| line.contains("Number of moulds")).unwrap();
    assert_eq!(moulds.split_whitespace().collect::<Vec<_>>(), ["Number", "of", "moulds", "12", "16"]);
    assert_eq!(std::fs::read(&path).unwrap(), before);
}

#[test]
fn json_says_the_same_in_full() {
    let path = example("warm-cabinet");
    let json = run(&["scale", &path, "--moulds", "5", "--json"]).json();
    assert_eq!(json["goal"], serde_json::json!({ "to": "moulds", "amount": 5.0, "unit": "" }));
    let choices = json["choices"].as_array().unwrap();
    let trays = choices.iter().find(|choice| choice["key"] == "tray_count").unwrap();
    assert_eq!((&trays["from"], &trays["exact"], &trays["to"]), (&3.0.into(), &1.25.into(), &2.0.into()));
    let after = run(&[
        "figures",
        &path,
        "--set",
        "milk_l=2.5",
        "--set",
        "mould_count=5",
        "--set",
        "tray_count=2",
        "--set",
        "bath_l=3.33",
        "--json",
    ]);
    let figure = |key: &str| json["figures"].as_array().unwrap().iter().find(|figure| figure["key"] == key).unwrap().clone();
    assert_eq!(figure("dried_cheese_g")["after"], after.json()["drying"]["dried_cheese_g"]);
    assert_eq!(figure("rennet_ml")["after"], after.json()["milk"]["rennet_ml"]);
}

#[test]
fn the_scaled_design_is_written_with_an_id_of_its_own_and_the_old_file_is_kept_beside_it() {
    let folder = tempfile::tempdir().unwrap();
    let (own, other) = (folder.path().join("own.vat.ron"), folder.path().join("other.vat.ron"));
    let mut design = crate::example("warm-cabinet");
    design.note.clear();
    let session = || vatsketch::session::Session::open(design.clone(), None).unwrap();
    session().save(&own).unwrap();
    let id = DesignFile::read(&own).unwrap().id;
    let scale = |to: &std::path::Path| {
        run(&["scale", own.to_str().unwrap(), "--jars", "2", "--set", "drying_h=30", "--to", to.to_str().unwrap()])
    };
    let ran = scale(&other);
    assert!(ran.code == 0 && ran.words.contains("wrote ") && ran.data.contains("Scale to 2 full jars"), "{}", ran.words);
    let written = DesignFile::read(&other).unwrap();
    assert!(written.id.is_some() && written.id != id);
    assert_eq!(written.design.drying.drying_h, 30.0);
    assert_eq!(file::read(&own).unwrap(), design, "the file that was read stays");
    assert_eq!(scale(&own).code, 0);
    assert_eq!(DesignFile::read(&own).unwrap(), DesignFile { id, design: written.design });
    assert_eq!(file::read(&folder.path().join("own.vat.ron.bak")).unwrap(), design);
}

#[test]
fn standard_output_gets_the_design_and_nothing_else() {
    let ran = run(&["scale", &example("warm-cabinet"), "--pot", "10", "--to", "-"]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    let design = file::from_text(&ran.data).unwrap();
    assert!(design.milk.milk_l > 7.5 && design.milk.milk_l < 8.5, "{}", design.milk.milk_l);
}

#[test]
fn what_is_wrong_is_refused_with_what_to_do() {
    let path = example("warm-cabinet");
    for (more, said) in [
        (&[][..], "--milk"),
        (&["--milk", "8", "--jars", "2"], "cannot be used with"),
        (&["--milk", "much"], "give a number"),
        (&["--milk", "0.6"], "choose 0.75 to 60 L of milk"),
        (&["--moulds", "2.5"], "must be a whole number"),
        (&["--milk", "8", "--to", "plan.pdf"], "must end in .vat.ron"),
        (&["--milk", "8", "--to", "-", "--json"], "leave one of them out"),
    ] {
        let ran = run(&[&["scale", path.as_str()][..], more].concat());
        assert_eq!((ran.code, ran.data.as_str()), (2, ""), "{more:?}");
        assert!(ran.words.contains(said), "{more:?}: {}", ran.words);
    }
    assert_eq!(run(&["scale", "missing.vat.ron", "--milk", "8"]).code, 3);
}
