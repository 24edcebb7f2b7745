//! One curve of two designs in one frame.

use vatsketch::batch::{Batch, batch};
use vatsketch::curve::{CurveKey, Role, curve, in_one_frame, table_of_both};
use vatsketch::design::{Design, Value};

fn with(key: &str, value: f64) -> Batch {
    let mut design = Design::default();
    design.set(key, Value::Number(value)).unwrap();
    batch(&design).unwrap()
}

#[test]
fn one_frame_holds_every_point_of_both_and_moves_none() {
    let (one, other) = (with("milk_l", 6.0), with("drying_h", 90.0));
    for key in CurveKey::ALL {
        let (before_a, before_b) = (curve(&one, key), curve(&other, key));
        let (a, b) = in_one_frame(before_a.clone(), before_b.clone());
        assert!(a.x == b.x && a.y == b.y, "{key:?}");
        for (framed, before) in [(&a, &before_a), (&b, &before_b)] {
            assert!(framed.x.least <= before.x.least && framed.x.most >= before.x.most, "{key:?}");
            assert!(framed.y.least <= before.y.least && framed.y.most >= before.y.most, "{key:?}");
            for (series, was) in framed.series.iter().zip(&before.series) {
                let same = series.points == was.points;
                assert!(same || series.role == Role::Limit, "{key:?}: {}", series.name);
                // A limit runs through the whole frame.
                assert!(series.role != Role::Limit || series.points.last().unwrap()[0] == framed.x.most, "{key:?}");
            }
        }
    }
}

/// One mould for all the curd: no curve of drying.
#[test]
fn an_empty_curve_takes_the_frame_of_the_other() {
    let (none, one) = (with("mould_count", 1.0), with("milk_l", 6.0));
    let loss = curve(&one, CurveKey::DryingLoss);
    let (a, b) = in_one_frame(curve(&none, CurveKey::DryingLoss), loss.clone());
    assert!(a.empty_because.is_some() && a.x == loss.x && a.y == loss.y);
    assert_eq!(b, loss);
    let (b, a) = in_one_frame(loss.clone(), curve(&none, CurveKey::DryingLoss));
    assert!(a.x == loss.x && b == loss);
}

#[test]
fn the_table_of_both_ends_where_the_longer_one_ends() {
    let (a, b) = (curve(&with("drying_h", 20.0), CurveKey::DryingLoss), curve(&with("drying_h", 50.0), CurveKey::DryingLoss));
    let table = table_of_both(&a, &b, 10);
    assert_eq!(table.headings, ["drying time, h", "A: middle tray, %", "B: middle tray, %"]);
    assert_eq!(table.rows.last().unwrap()[0], Some(50.0));
    assert_eq!(table.rows.last().unwrap()[1], None, "A ended after 20 h");
    let at_20 = table.rows.iter().find(|row| row[0] == Some(20.0)).unwrap();
    let ends_at = a.series[0].points.last().unwrap()[1];
    assert!((at_20[1].unwrap() - ends_at).abs() < 1e-9);
}

#[test]
fn the_table_of_an_empty_and_a_drawn_curve_has_the_axis_of_the_drawn_one() {
    let (none, one) = (with("mould_count", 1.0), with("milk_l", 6.0));
    let key = CurveKey::DryingLoss;
    let table = table_of_both(&curve(&none, key), &curve(&one, key), 4);
    assert_eq!(table.headings, ["drying time, h", "B: middle tray, %"]);
}
