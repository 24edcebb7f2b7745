//! What was measured, as dots in a curve.

use crate::record::{at, begun, done, numbers};
use vatsketch::batch::batch;
use vatsketch::curve::{CurveKey, curve, measured, with_measured};
use vatsketch::record::EntryKind;
use vatsketch::units::Units;

#[test]
fn dots_lie_on_their_curve_alone_and_its_axes_reach_as_far_as_they_do() {
    let planned = batch(&crate::example("first-vat")).unwrap();
    let mut log = begun("first-vat");
    done(&mut log, EntryKind::WarmingBegan, at(5, 9, 0));
    numbers(&mut log, EntryKind::MilkTemperature, &[(at(5, 9, 20), 21.0), (at(5, 20, 0), 92.0)]);
    let lines = measured(&planned, log.batch(1).unwrap(), None);
    let plain = curve(&planned, CurveKey::Warming);
    assert!(plain.x.most < 660.0 && plain.y.most < 92.0);
    let dotted = with_measured(CurveKey::Warming, plain.clone(), &lines);
    let places: Vec<[f64; 2]> = dotted.dots.iter().map(|dot| dot.at).collect();
    assert_eq!(places, [[20.0, 21.0], [660.0, 92.0]]);
    assert!(dotted.x.most >= 660.0 && dotted.y.most >= 92.0);
    assert_eq!(dotted.series, plain.series, "the plan stays the plan");
    let loss = curve(&planned, CurveKey::DryingLoss);
    assert_eq!(with_measured(CurveKey::DryingLoss, loss.clone(), &lines), loss);
    let shown = dotted.shown_in(Units::US);
    assert!((shown.dots[0].at[1] - 69.8).abs() < 1e-9, "{:?}", shown.dots);
}
