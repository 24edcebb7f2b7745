//! Every JSON output says first what wrote it.

use super::{example, run};
use serde_json::json;

#[test]
fn every_json_output_begins_with_the_version_and_the_number_of_its_shape() {
    let file = example("warm-cabinet");
    let as_of = ["--as-of", "2031-05-06T08:00"];
    for arguments in [
        vec!["inputs", "--json"],
        vec!["figures", &file, "--json"],
        vec!["stage", "vat", "--json"],
        vec!["stage", "salting", "--json"],
        vec!["stage", "drying", "--set", "report_h=6", "--json"],
        vec!["stage", "pickling", "--json"],
        vec!["export", &file, "--to", "-", "--as", "json"],
        vec!["compare", &file, "--milk", "sheep", "--json"],
        vec!["solve", &file, "--for", "dried_cheese_g=60", "--by", "milk_l", "--json"],
        [&["plan", &file, "--json", "--start", "2031-05-09T17:20"][..], &as_of].concat(),
        vec!["plan", &example("small-vat"), "--json"],
        vec!["scale", &file, "--jars", "2", "--json"],
        vec!["shop", &file, "--json"],
        vec!["why", &file, "--figure", "centre_ph", "--json"],
        vec!["spread", &file, "--draws", "10", "--json"],
        vec!["sensitivity", &file, "--figure", "cream_g", "--json"],
    ] {
        let run = run(&arguments);
        let answer = run.json();
        let first = answer.as_object().unwrap().iter().next().unwrap();
        let wanted = json!({ "version": env!("CARGO_PKG_VERSION"), "shape": 1 });
        assert_eq!((first.0.as_str(), first.1), ("vatsketch", &wanted), "{arguments:?}");
        assert!(answer.as_object().unwrap().len() > 1, "{arguments:?}: the rest is still there");
    }
}
