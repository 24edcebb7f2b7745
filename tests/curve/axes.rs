//! Axes hold still while a slider moves a little.

use vatsketch::batch::{Batch, batch};
use vatsketch::curve::{CurveKey, Role, curve};
use vatsketch::design::{Design, Value};

fn with(key: &str, value: f64) -> Batch {
    let mut design = Design::default();
    design.set(key, Value::Number(value)).unwrap();
    batch(&design).unwrap()
}

#[test]
fn no_limit_of_an_axis_moves_in_a_small_change() {
    let before = batch(&Design::default()).unwrap();
    for (key, value) in [
        ("milk_l", 6.1),
        ("drying_h", 34.5),
        ("drying_h", 33.5),
        ("bath_set_temperature_c", 37.7),
        ("turn_gap_h", 6.2),
        ("cabinet_temperature_c", 43.5),
    ] {
        let after = with(key, value);
        for figure_key in CurveKey::ALL {
            let (old, new) = (curve(&before, figure_key), curve(&after, figure_key));
            assert_eq!((old.x, old.y), (new.x, new.y), "{figure_key:?} after {key} = {value}");
        }
    }
}

#[test]
fn the_axes_of_a_larger_batch_are_longer() {
    let (small, large) = (with("drying_h", 30.0), with("drying_h", 200.0));
    let most = |batch: &Batch| curve(batch, CurveKey::Moisture).x.most;
    assert!(most(&small) >= 30.0 && most(&large) >= 200.0 && most(&large) <= 300.0, "{}", most(&large));
}

#[test]
fn every_curve_has_one_main_line_with_a_name_and_a_sentence() {
    let batch = batch(&Design::default()).unwrap();
    for key in CurveKey::ALL {
        let figure = curve(&batch, key);
        let main = figure.series.iter().filter(|series| series.role == Role::Main).count();
        assert_eq!(main, 1, "{key:?}");
        assert!(figure.series.iter().all(|series| !series.name.is_empty() && series.points.len() >= 2), "{key:?}");
        assert!(figure.in_words.ends_with('.') && figure.in_words.contains(char::is_numeric), "{key:?}: {}", figure.in_words);
        assert!(
            figure.events.iter().all(|event| (figure.x.least..=figure.x.most).contains(&event.at)),
            "{key:?}: {:?}",
            figure.events
        );
    }
}
