//! What was measured, on the curves.

use crate::record::{at, begun, done, numbers};
use vatsketch::batch::batch;
use vatsketch::curve::{CurveKey, MeasuredOn, curve, drying_weight, measured};
use vatsketch::design::{Design, MilkTreatment};
use vatsketch::record::{Beside, EntryKind, Log};

/// Whoever writes down exactly what the plan says is nowhere off, on any curve.
#[test]
fn the_plan_itself_written_down_lies_on_its_lines() {
    let planned = batch(&crate::example("first-vat")).unwrap();
    let mut log = begun("first-vat");
    let start = at(5, 9, 0);
    let later = |minutes: f64| start.checked_add(jiff::Span::new().seconds((60.0 * minutes).round() as i64)).unwrap();
    let (vat, draining) = (planned.vat.done().unwrap(), planned.draining.done().unwrap());
    let air_min = vat.to_ladle_min + 60.0 * draining.draining_h;
    let vinegar_min = air_min + 60.0 * planned.design.drying.drying_h;
    done(&mut log, EntryKind::WarmingBegan, start);
    done(&mut log, EntryKind::Ladled, later(vat.to_ladle_min));
    done(&mut log, EntryKind::AirBegan, later(air_min));
    numbers(&mut log, EntryKind::VinegarPoured, &[(later(vinegar_min), 1000.0)]);
    let line = |key: CurveKey, name: &str| {
        let found = curve(&planned, key).series.into_iter().find(|series| series.name == name);
        found.unwrap().points
    };
    let fifth = |points: Vec<[f64; 2]>| points.into_iter().step_by(5).collect::<Vec<_>>();
    for point in fifth(line(CurveKey::Warming, "milk")) {
        numbers(&mut log, EntryKind::MilkTemperature, &[(later(point[0]), point[1])]);
    }
    for point in fifth(drying_weight(&planned).unwrap().series[0].points.clone()) {
        numbers(&mut log, EntryKind::CheeseWeight, &[(later(air_min + 60.0 * point[0]), point[1])]);
    }
    for (kind, name) in [(EntryKind::CentrePh, "centre"), (EntryKind::BlendedPh, "blended")] {
        for point in fifth(line(CurveKey::Souring, name)) {
            numbers(&mut log, kind, &[(later(vinegar_min + 60.0 * point[0]), point[1])]);
        }
    }
    for point in fifth(line(CurveKey::CurdSouring, "pH")) {
        numbers(&mut log, EntryKind::CurdPh, &[(later(60.0 * point[0]), point[1])]);
    }
    let mut poured = 0.0;
    for point in fifth(line(CurveKey::WheyDrip, "whey so far")) {
        numbers(&mut log, EntryKind::TurnWhey, &[(later(vat.to_ladle_min + 60.0 * point[0]), point[1] - poured)]);
        poured = point[1];
    }
    let lines = measured(&planned, log.batch(1).unwrap(), None);
    let seen: Vec<_> = lines.iter().map(|line| (line.kind, line.on)).collect();
    assert_eq!(lines.len(), 7, "{seen:?}");
    assert!(seen.contains(&(EntryKind::CheeseWeight, MeasuredOn::Curve(CurveKey::DryingLoss))));
    let mut points = 0;
    for line in &lines {
        assert!(line.none_because.is_none() && !line.points.is_empty(), "{:?}", line.kind);
        for point in line.points.iter().filter(|point| point.planned.is_some()) {
            // Times are written to the second.
            assert!(point.residual().unwrap().abs() < 0.05 * line.reads_to.max(1.0), "{:?}: {point:?}", line.kind);
            assert!(!line.is_off(point), "{:?}: {point:?}", line.kind);
            points += 1;
        }
    }
    assert!(points > 60, "only {points} dots have a plan");
}

#[test]
fn what_is_beyond_the_band_by_more_than_it_is_read_to_is_off() {
    let planned = batch(&crate::example("first-vat")).unwrap();
    let mut log = begun("first-vat");
    done(&mut log, EntryKind::AirBegan, at(7, 9, 0));
    let weight = drying_weight(&planned).unwrap();
    let first = weight.series[0].points[0][1];
    numbers(&mut log, EntryKind::CheeseWeight, &[(at(7, 9, 0), first), (at(8, 9, 0), first), (at(20, 9, 0), 60.0)]);
    let lines = measured(&planned, log.batch(1).unwrap(), None);
    let off: Vec<bool> = lines[0].points.iter().map(|point| lines[0].is_off(point)).collect();
    assert_eq!(off, [false, true, false], "{:?}", lines[0].points);
    assert!(lines[0].points[2].planned.is_none(), "there is no plan behind the end of the drying");
    assert!(lines[0].points[1].likely.is_some());
}

/// A kind that is laid beside a line gets a line of its curve in some design.
#[test]
fn every_line_leads_to_one_of_a_curve() {
    let planned = batch(&crate::example("first-vat")).unwrap();
    for kind in EntryKind::ALL.iter().filter(|kind| matches!(kind.row().beside, Beside::Line(_))) {
        let mut log = begun("first-vat");
        done(&mut log, EntryKind::WarmingBegan, at(5, 9, 0));
        done(&mut log, EntryKind::Ladled, at(5, 9, 0));
        done(&mut log, EntryKind::AirBegan, at(5, 9, 0));
        numbers(&mut log, EntryKind::VinegarPoured, &[(at(5, 9, 0), 1000.0)]);
        numbers(&mut log, *kind, &[(at(5, 9, 30), 5.0)]);
        let lines = measured(&planned, log.batch(1).unwrap(), None);
        let own = lines.iter().find(|line| line.kind == *kind).unwrap();
        assert!(own.points[0].planned.is_some() && !own.line.is_empty(), "{}: {own:?}", kind.key());
    }
}

/// Raw milk that is held hot has to be so hot: what a thermometer may be wrong by counts above the plan, never below it.
#[test]
fn milk_that_is_held_hot_has_no_leeway_below_the_plan() {
    let mut design = Design::default();
    (design.milk.milk_treatment, design.milk.pasteurised_in_vat) = (MilkTreatment::Raw, true);
    let planned = batch(&design).unwrap();
    let milk = curve(&planned, CurveKey::Warming).series.into_iter().find(|series| series.name == "milk").unwrap();
    let [hottest_min, hottest_c] = milk.points.iter().copied().max_by(|one, other| one[1].total_cmp(&other[1])).unwrap();
    let mut log = Log::default();
    log.begin("", at(5, 9, 0), design, None);
    done(&mut log, EntryKind::WarmingBegan, at(5, 9, 0));
    let then = at(5, 9, 0).checked_add(jiff::Span::new().seconds((60.0 * hottest_min) as i64)).unwrap();
    numbers(&mut log, EntryKind::HeldMilk, &[(then, hottest_c - 0.3), (then, hottest_c + 0.3)]);
    let lines = measured(&planned, log.batch(1).unwrap(), None);
    let off: Vec<bool> = lines[0].points.iter().map(|point| lines[0].is_off(point)).collect();
    assert_eq!(off, [true, false], "{:?}", lines[0].points);
}
