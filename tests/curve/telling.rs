//! Tests of `src/curve/telling.rs`.

use vatsketch::batch::batch;
use vatsketch::curve::{Section, SectionKey, section, telling_share};

/// Returns the standard deviation of what a cut shows.
fn deviation(cut: &Section) -> f64 {
    let count = cut.values.len() as f64;
    let mean = cut.values.iter().sum::<f64>() / count;
    (cut.values.iter().map(|value| (value - mean).powi(2)).sum::<f64>() / count).sqrt()
}

#[test]
fn at_no_other_hour_do_the_places_differ_much_more() {
    for name in ["first-vat", "warm-cabinet", "open-air"] {
        let batch = batch(&crate::example(name)).unwrap();
        for key in [SectionKey::Moisture, SectionKey::Salt] {
            let share = telling_share(&batch, key, None);
            let at = |share: f64| section(&batch, key, share, None).map(|cut| deviation(&cut));
            let Some(told) = at(share) else { continue };
            let most = (0..=200).filter_map(|step| at(f64::from(step) / 200.0)).fold(0.0, f64::max);
            // A cut of a lower half is mirrored, so that its middle row counts once more than in what is kept of it.
            assert!(told >= 0.95 * most, "{name} {key:?}: {told} at {share}, but {most}");
        }
    }
}

#[test]
fn of_ph_one_sees_what_the_acid_reaches_last() {
    for name in ["first-vat", "warm-cabinet"] {
        let batch = batch(&crate::example(name)).unwrap();
        let share = telling_share(&batch, SectionKey::Ph, None);
        let above = |share: f64| {
            let cut = section(&batch, SectionKey::Ph, share, None).unwrap();
            cut.values.iter().filter(|ph| **ph >= 4.2).count() as f64 / cut.values.len() as f64
        };
        // The cut that is shown lies between two that are kept, and a half that is mirrored counts its middle once more.
        assert!(share > 0.02 && above(share) > 0.05, "{name}: {} at {share}", above(share));
        assert!(share >= 1.0 || above((share + 0.1).min(1.0)) < 0.1, "{name}: {} a little later", above(share + 0.1));
    }
}

#[test]
fn what_is_not_known_tells_most_at_its_end() {
    let mut never = crate::example("warm-cabinet");
    never.pickling.pickled = false;
    let batch = batch(&never).unwrap();
    assert!(section(&batch, SectionKey::Ph, 1.0, None).is_none());
    assert!((telling_share(&batch, SectionKey::Ph, None) - 1.0).abs() < f64::EPSILON);
}
