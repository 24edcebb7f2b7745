//! Frozen means frozen: a changed design or a changed default changes no file that was written before.

use std::collections::BTreeSet;
use vatsketch::batch::batch;
use vatsketch::design::{BusyOnce, BuyFor, Design, Habitual, PhFrom, SouredBy, TakenHours, Wish, fields, hour};
use vatsketch::file::{from_text, read};

const FORMATS: [u32; 7] = [1, 2, 3, 4, 5, 6, 7];

fn saved(name: &str) -> String {
    format!("{}/tests/saved/{name}", env!("CARGO_MANIFEST_DIR"))
}

/// Returns key and value of every input that there was when a format was released, as an empty file of a format meant them then.
fn meant(format: u32) -> Vec<(String, String)> {
    let text = std::fs::read_to_string(saved(&format!("{format}-short.means"))).unwrap();
    text.lines().map(|line| line.split_once(' ').unwrap()).map(|(key, value)| (key.to_owned(), value.to_owned())).collect()
}

/// The values are literals in `tests/saved`, not those of today's design.
#[test]
fn a_short_file_of_any_format_means_what_it_meant() {
    for format in FORMATS {
        let design = read(saved(&format!("{format}-short.vat.ron")).as_ref()).unwrap();
        let meant = meant(format);
        let keys: BTreeSet<&String> = meant.iter().map(|(key, _)| key).collect();
        let inputs = match format {
            ..5 => 79,
            5 => 106,
            6 => 107,
            _ => 112,
        };
        assert_eq!((keys.len(), meant.len()), (inputs, inputs), "inputs of format {format}");
        for (key, value) in &meant {
            assert_eq!(&design.get(key).unwrap().to_string(), value, "format {format}: {key}");
        }
        let night = &design.week.taken[..];
        let [TakenHours { by: Habitual::Sleep, days: [true, true, true, true, true, true, true], from, to, impossible: false }] =
            night
        else {
            panic!("format {format}: {night:?}")
        };
        assert_eq!((hour(*from), hour(*to)), ("22:45".to_owned(), "06:45".to_owned()), "format {format}");
        assert_eq!((design.week.wish, design.week.zone.as_str(), &design.week.reached), (Wish::Open, "", &None));
        assert_eq!(design.week.busy, Vec::<BusyOnce>::new());
        assert_eq!((design.supplies.buy_for, design.supplies.waste_price), (BuyFor::LeastCost, 0.0));
        assert!(design.supplies.currency.is_empty() && design.supplies.goods.is_empty());
        assert!(design.title.is_empty() && design.note.is_empty());
    }
}

/// Half a stage is as good as none: what it leaves out means the same.
#[test]
fn a_stage_that_is_begun_leaves_the_rest_as_it_meant() {
    for format in FORMATS {
        let short = from_text(&format!("(format: {format}, draining: (turn_count: 7), drying: (drying_h: 41.0))")).unwrap();
        for (key, value) in meant(format) {
            let value = match key.as_str() {
                "turn_count" => "7".to_owned(),
                "drying_h" => "41".to_owned(),
                _ => value,
            };
            assert_eq!(short.get(&key).unwrap().to_string(), value, "format {format}: {key}");
        }
    }
}

/// Before format 5 the pH of the dried cheese was always given: it stays so, while a file of format 5 that leaves it out has it calculated.
/// None of them knew souring before the vinegar.
#[test]
fn what_came_with_format_five_leaves_older_files_as_they_were() {
    for format in FORMATS {
        let design = read(saved(&format!("{format}-short.vat.ron")).as_ref()).unwrap();
        let from = if format < 5 { PhFrom::Measured } else { PhFrom::Calculated };
        assert_eq!((design.pickling.cheese_ph_from, design.pickling.cheese_ph), (from, 6.5), "format {format}");
        assert_eq!(design.milk.soured_by, SouredBy::Nothing, "format {format}");
        let on_the_way = (design.draining.ladled_ph_from, design.drying.unmoulded_ph_from);
        assert_eq!(on_the_way, (PhFrom::Calculated, PhFrom::Calculated), "format {format}");
    }
    // Format 1 ended with drying.
    for format in FORMATS.into_iter().filter(|format| (2..5).contains(format)) {
        let given = from_text(&format!("(format: {format}, pickling: (cheese_ph: 6.1))")).unwrap();
        let batch = batch(&given).unwrap();
        assert_eq!(batch.pickling.done().unwrap().start_ph, 6.1, "format {format}");
    }
    let given = from_text("(format: 7, pickling: (cheese_ph: 6.1))").unwrap();
    let calculated = batch(&given).unwrap().pickling.done().unwrap().start_ph;
    // Milk of pH 6.65, and 0.15 less from milk to curd.
    assert!((calculated - 6.5).abs() < 1e-9, "{calculated}");
}

/// Before format 7 nobody could choose the size of the pieces, drops were not counted, and no hours were impossible.
#[test]
fn what_came_with_format_seven_leaves_older_files_as_they_were() {
    for format in FORMATS {
        let design = read(saved(&format!("{format}-short.vat.ron")).as_ref()).unwrap();
        assert_eq!(design.vat.curd_piece_mm, 25.0, "format {format}");
        assert_eq!((design.milk.calcium_drops_counted, design.milk.rennet_drops_counted), (false, false), "format {format}");
    }
    let hours = "(format: 6, week: (taken: [(by: work, days: [mon], from: \"9\", to: \"17\")], busy: [(from: \"2031-05-24 18:00\", to: \"2031-05-24 21:30\")]))";
    let week = from_text(hours).unwrap().week;
    assert!(!week.taken[0].impossible && !week.busy[0].impossible);
    assert!(from_text(&hours.replace("to: \"17\"", "to: \"17\", impossible: true")).is_err(), "format 6 has no such word");
    assert_eq!(from_text(&hours.replace("format: 6", "format: 7")).unwrap().week, week, "what is left out is disliked");
}

/// As long as format 7 is the newest, a new design and an empty file are the same. Who changes a default of a design makes a format 8, whose
/// files mean the new value; those of format 7 keep the old one.
#[test]
fn an_empty_file_of_the_newest_format_is_a_new_design() {
    let design = from_text("(format: 7)").unwrap();
    for field in fields() {
        assert_eq!(field.get(&design), field.default(), "{}: a changed default needs a new format", field.key);
    }
    assert_eq!(design, Design::default(), "week and supplies");
}
