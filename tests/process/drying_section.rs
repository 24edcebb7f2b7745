//! What of the drying is kept for pictures, and the salt while the cheese dries.

use vatsketch::batch::batch;
use vatsketch::design::{Design, DryingPlace};
use vatsketch::numeric::Half;
use vatsketch::process::{DryingOutcome, SaltingOutcome};

fn dried(change: impl FnOnce(&mut Design)) -> (SaltingOutcome, DryingOutcome) {
    let mut design = Design::default();
    change(&mut design);
    let batch = batch(&design).unwrap();
    (batch.salting.done().unwrap().clone(), batch.drying.done().unwrap().clone())
}

#[test]
fn the_moisture_over_the_section_is_that_of_the_curve_at_centre_and_top() {
    for underside_open_percent in [100.0, 60.0, 0.0] {
        let (_, dried) = dried(|design| design.drying.underside_open_percent = underside_open_percent);
        let field = &dried.moisture;
        assert_eq!(field.half, if underside_open_percent == 100.0 { Half::Upper } else { Half::Whole });
        let heights = field.heights_mm.len();
        let centre = if field.half == Half::Upper { 0 } else { heights / 2 };
        for frame in &field.frames {
            assert_eq!(frame.values.len(), field.radii_mm.len() * heights);
            let point = dried.middle.points.iter().find(|point| point.at_h == frame.at_h).unwrap();
            assert!((f64::from(frame.values[centre]) - point.centre_moisture_percent).abs() < 1e-4);
            assert!((f64::from(frame.values[heights - 1]) - point.surface_moisture_percent).abs() < 1e-4);
            assert!((frame.shrunk - point.diameter_mm / field.radii_mm.last().unwrap() / 2.0).abs() < 1e-9);
        }
    }
}

/// The first hours, in which the skin dries, are closer than the last; short and long runs keep few enough.
#[test]
fn few_moments_are_kept_and_the_first_lie_closer() {
    for (drying_h, place) in [(0.0, DryingPlace::Cabinet), (34.0, DryingPlace::Cabinet), (720.0, DryingPlace::OpenAir)] {
        let (_, dried) = dried(|design| {
            design.drying.drying_h = drying_h;
            design.drying.drying_place = place;
        });
        let hours: Vec<f64> = dried.moisture.frames.iter().map(|frame| frame.at_h).collect();
        assert!(hours.len() <= 40 && hours[0] == 0.0 && *hours.last().unwrap() == drying_h, "{hours:?}");
        if drying_h > 0.0 {
            assert!(hours.len() >= 15 && hours[3] < 0.05 * drying_h, "{hours:?}");
        }
        let salt: Vec<f64> = dried.salt.field.frames.iter().map(|frame| frame.at_h).collect();
        assert_eq!(salt, hours);
    }
}

#[test]
fn the_salt_goes_on_from_where_it_was_at_unmoulding() {
    for underside_open_percent in [100.0, 60.0] {
        let (salted, dried) = dried(|design| design.drying.underside_open_percent = underside_open_percent);
        let first = dried.salt.points[0];
        let before = salted.unmoulded;
        assert_eq!(first.at_h, before.at_h);
        for (now, then) in [
            (first.mean_percent, before.mean_percent),
            (first.surface_percent, before.surface_percent),
            (first.centre_percent, before.centre_percent),
        ] {
            assert!((now / then - 1.0).abs() < 1e-9, "{first:?} {before:?}");
        }
        let last = dried.salt.points.last().unwrap();
        assert!((last.at_h - salted.unmoulded_h - dried.end.at_h).abs() < 1e-9);
        // Water leaves and salt stays; it has come nearer to the centre meanwhile.
        assert!(last.mean_percent > first.mean_percent && last.centre_percent > first.centre_percent);
        assert!(last.surface_percent - last.centre_percent < 0.5 * (first.surface_percent - first.centre_percent));
    }
}

/// Where all faces dry alike only the upper half is cut up; with hardly less air below, the whole is, and the answers agree.
#[test]
fn the_mirrored_half_and_the_whole_agree() {
    let last = |underside_open_percent| {
        let (_, dried) = dried(|design| design.drying.underside_open_percent = underside_open_percent);
        *dried.salt.points.last().unwrap()
    };
    let (half, whole) = (last(100.0), last(99.9));
    for (one, other) in [
        (half.mean_percent, whole.mean_percent),
        (half.surface_percent, whole.surface_percent),
        (half.centre_percent, whole.centre_percent),
    ] {
        assert!((one / other - 1.0).abs() < 2e-3, "{half:?} {whole:?}");
    }
}

/// Dried until it is hard, the crust holds salt that its moisture no longer dissolves.
#[test]
fn a_hard_salty_cheese_holds_crystals() {
    let (_, dried) = dried(|design| {
        design.drying.drying_h = 720.0;
        design.drying.cabinet_temperature_c = 60.0;
        design.salting.salt_percent = 6.0;
    });
    assert!(dried.salt.points.last().unwrap().undissolved_g > 0.1, "{:?}", dried.salt.points.last());
    assert!(dried.salt.field.frames.iter().flat_map(|frame| &frame.values).all(|value| (0.0..35.93).contains(value)));
}
