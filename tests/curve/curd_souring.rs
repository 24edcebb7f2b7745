//! The curve of pH from the milk to the dried cheese.

use vatsketch::batch::{Batch, batch};
use vatsketch::curve::{Curve, CurveKey, curve, in_one_frame};
use vatsketch::design::{CultureBy, Design, SouredBy, Value};

fn cultured() -> Design {
    let mut design = Design::default();
    (design.milk.soured_by, design.milk.culture_by) = (SouredBy::Culture, CultureBy::Cells);
    design
}

fn drawn(design: &Design) -> (Batch, Curve) {
    let batch = batch(design).unwrap();
    let curve = curve(&batch, CurveKey::CurdSouring);
    (batch, curve)
}

fn at(curve: &Curve, name: &str) -> f64 {
    curve.events.iter().find(|event| event.name == name).unwrap_or_else(|| panic!("{name}: {:?}", curve.events)).at
}

#[test]
fn the_curve_goes_from_the_cold_milk_to_the_dried_cheese_with_its_windows() {
    let design = cultured();
    let (batch, curve) = drawn(&design);
    let (vat, drained) = (batch.vat.done().unwrap(), batch.draining.done().unwrap());
    let points = &curve.series[0].points;
    assert_eq!(points[0], [0.0, batch.milk.done().unwrap().milk_ph]);
    let ladled_h = vat.to_ladle_min / 60.0;
    let end_h = ladled_h + drained.draining_h + design.drying.drying_h;
    assert!((points.last().unwrap()[0] - end_h).abs() < 1e-9 && curve.x.most >= end_h);
    assert_eq!((curve.y.least, curve.y.most), (4.0, 7.0));
    // Advice for one raw-milk cheese: measured 6 h after the culture.
    assert!((at(&curve, "measure the pH") - at(&curve, "culture") - 6.0).abs() < 1e-12);
    assert!((at(&curve, "culture") - vat.to_culture_min / 60.0).abs() < 1e-12);
    assert!((at(&curve, "draining begins") - ladled_h).abs() < 1e-12);
    assert!((at(&curve, "unmoulded") - ladled_h - drained.draining_h).abs() < 1e-12);
    assert!(curve.in_words.contains("lactose left"), "{}", curve.in_words);
}

#[test]
fn milk_without_a_culture_has_no_hour_to_measure_it_at() {
    let (_, curve) = drawn(&Design::default());
    let names: Vec<&str> = curve.events.iter().map(|event| event.name).collect();
    assert_eq!(names, ["rennet", "draining begins", "unmoulded"]);
}

#[test]
fn cheeses_that_cannot_be_dried_have_the_curve_as_far_as_the_moulds() {
    let mut design = cultured();
    design.salting.salted_turns = 0;
    let (batch, curve) = drawn(&design);
    assert!(batch.drying.done().is_none());
    let (vat, drained) = (batch.vat.done().unwrap(), batch.draining.done().unwrap());
    let end_h = vat.to_ladle_min / 60.0 + drained.draining_h;
    assert!((curve.series[0].points.last().unwrap()[0] - end_h).abs() < 1e-9);
    design.draining.mould_count = 1;
    let (_, none) = drawn(&design);
    assert!(none.empty_because.is_some_and(|why| why.contains("does not fit")));
    design.set("fat_target_percent", Value::Number(9.0)).unwrap();
    let (_, none) = drawn(&design);
    assert!(none.empty_because.is_some());
}

#[test]
fn two_designs_share_one_frame_and_the_sourer_one_opens_it() {
    let mut lactone = Design::default();
    (lactone.milk.soured_by, lactone.milk.lactone_g_l) = (SouredBy::Lactone, 25.0);
    let (a, b) = in_one_frame(drawn(&Design::default()).1, drawn(&lactone).1);
    assert_eq!((a.x, a.y), (b.x, b.y.clone()));
    assert!(b.series[0].points.iter().all(|[_, ph]| (b.y.least..=b.y.most).contains(ph)));
}
