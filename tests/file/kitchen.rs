//! The file of a kitchen, and the kitchen in a design's file.

use crate::kitchen::invented::kitchen;
use vatsketch::design::Design;
use vatsketch::file::{from_text, kitchen_from_text, kitchen_to_text, read_kitchen, to_text};

fn invented() -> vatsketch::design::KnownKitchen {
    kitchen(&crate::example("first-vat"), &[("clotting", 0.9, 1.2, 1.29), ("drip_end_moisture_percent", 0.97, 1.0, 1.05)])
}

/// Format 1 is frozen: this file opens for ever and means what it meant.
#[test]
fn a_kitchen_of_format_one_means_what_it_meant() {
    let path = format!("{}/tests/saved/kitchen-1.kitchen.ron", env!("CARGO_MANIFEST_DIR"));
    let saved = read_kitchen(path.as_ref()).unwrap();
    assert_eq!((saved.name.as_str(), saved.measurements, saved.learned_from.len()), ("invented cellar", 177, 2));
    let batch = &saved.learned_from[1];
    assert_eq!((batch.number, batch.name.as_str(), batch.entries), (2, "dried longer", 58));
    assert_eq!(batch.begun, jiff::civil::date(2031, 5, 12).at(9, 30, 0, 0));
    let bath = saved.of("bath_side").unwrap();
    assert_eq!((bath.unit.as_str(), bath.now.value, bath.now.least, bath.now.most), ("W/(m² K)", 240.0, 210.0, 280.0));
    assert_eq!((bath.before.value, bath.before.least, bath.before.most), (300.0, 200.0, 500.0));
    assert_eq!(kitchen_from_text(&kitchen_to_text(&saved)).unwrap(), saved);
}

#[test]
fn a_design_keeps_its_own_copy() {
    let mut design = crate::example("first-vat");
    design.use_kitchen(invented()).unwrap();
    let text = to_text(&design);
    assert!(text.contains("invented") && text.contains("clotting"), "{text}");
    assert_eq!(from_text(&text).unwrap(), design);
    assert!(!to_text(&Design::default()).contains("kitchen:"), "who uses none has none in the file");
    assert_eq!(from_text("(format: 7)").unwrap().kitchen, None);
    assert!(from_text("(format: 6, kitchen: None)").is_err(), "format 6 knows no kitchen");
}

#[test]
fn what_cannot_be_is_refused_in_words() {
    let text = kitchen_to_text(&invented());
    let newer = kitchen_from_text(&text.replace("format: 1", "format: 2")).unwrap_err().to_string();
    assert!(newer.contains("newer"), "{newer}");
    assert!(kitchen_from_text(&text.replace("format: 1", "format: 0")).is_err());
    let design = to_text(&Design::default());
    assert!(kitchen_from_text(&design).unwrap_err().to_string().contains("holds no kitchen"));
    let no_time = kitchen_from_text(&text.replace("2031-05-05", "2031-15-05")).unwrap_err().to_string();
    assert!(no_time.contains("is no time"), "{no_time}");
    let mut twice = invented();
    twice.estimates.push(twice.estimates[0].clone());
    assert!(twice.check().unwrap_err().to_string().contains("twice"));
    let mut turned = invented();
    turned.estimates[0].now.least = 2.0 * turned.estimates[0].now.most;
    let said = kitchen_from_text(&kitchen_to_text(&turned)).unwrap_err().to_string();
    assert!(said.contains("clotting") && said.contains("in this order"), "{said}");
    let mut endless = invented();
    endless.estimates[1].now.most = f64::INFINITY;
    assert!(crate::example("first-vat").use_kitchen(endless).is_err());
}
