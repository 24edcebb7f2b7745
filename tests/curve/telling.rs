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
        for key in [SectionKey::Moisture, SectionKey::Salt, SectionKey::Ph] {
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
fn what_is_not_known_tells_most_at_its_end() {
    let batch = batch(&crate::example("unsoured-vat")).unwrap();
    if section(&batch, SectionKey::Ph, 1.0, None).is_none() {
        assert!((telling_share(&batch, SectionKey::Ph, None) - 1.0).abs() < f64::EPSILON);
    }
}
