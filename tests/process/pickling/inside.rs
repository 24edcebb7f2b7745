//! Salt and water inside a cheese in vinegar, and what a rest evens out.

use vatsketch::batch::{batch, batch_given};
use vatsketch::design::{Design, Value};
use vatsketch::figure::figures;
use vatsketch::process::{EvenedOut, Given, Inside, PicklingOutcome, Runs};

fn soured(choices: &[(&str, f64)]) -> PicklingOutcome {
    let mut design = Design::default();
    for (key, value) in choices {
        design.set(key, Value::Number(*value)).unwrap();
    }
    batch(&design).unwrap().pickling.done().unwrap().clone()
}

/// Both are of the same run; the salt that a figure counts in the cheese stands in the water that it counts.
#[test]
fn the_curves_end_where_the_figures_are() {
    for choices in [&[][..], &[("vinegar_salt_g_per_100ml", 8.0)], &[("pickling_h", 36.0)]] {
        let soured = soured(choices);
        let end = |inside: &Inside| inside.points.last().unwrap().mean;
        assert!((end(&soured.moisture) - moisture_of_what_came(&soured)).abs() < 1e-6, "{choices:?}");
        let salt = 100.0 * soured.cheese.salt_kg / soured.cheese.water_kg;
        assert!((end(&soured.salt) / salt - 1.0).abs() < 1e-9, "{choices:?}: {} and {salt}", end(&soured.salt));
    }
}

/// Moisture of the cheese had it taken up no acid and given no salt, %: the curve knows water, and the solids that came.
fn moisture_of_what_came(soured: &PicklingOutcome) -> f64 {
    let water_kg = soured.cheese.water_kg;
    100.0 * water_kg / (water_kg + soured.balance.came.solids_kg())
}

/// A place that is nearer to the vinegar is ahead of the centre.
#[test]
fn the_face_is_ahead_of_the_centre() {
    let salty = soured(&[("vinegar_salt_g_per_100ml", 15.0), ("pickling_h", 48.0)]);
    let plain = soured(&[("pickling_h", 48.0)]);
    let ends = |inside: &Inside| *inside.points.last().unwrap();
    assert!(ends(&salty.salt).face > ends(&salty.salt).centre && ends(&plain.salt).face < ends(&plain.salt).centre);
    assert!(ends(&salty.moisture).face < ends(&plain.moisture).face);
    assert!(salty.cheese.water_kg < plain.cheese.water_kg);
}

#[test]
fn the_cuts_have_the_start_and_the_end_and_at_most_forty_moments() {
    let soured = soured(&[]);
    for inside in [&soured.moisture, &soured.salt] {
        let frames = &inside.field.frames;
        assert!((2..=40).contains(&frames.len()), "{}", frames.len());
        assert_eq!(frames[0].at_h, 0.0);
        assert!((frames.last().unwrap().at_h - Design::default().pickling.pickling_h).abs() < 1e-6);
        let nodes = inside.field.radii_mm.len() * inside.field.heights_mm.len();
        assert!(frames.iter().all(|frame| frame.values.len() == nodes && frame.values.iter().all(|value| *value >= 0.0)));
    }
}

/// Nothing comes in or goes out, so acid and salt at centre and face come nearer to each other. Water may not: under a wetted face there is still the
/// crust that drying left. None of the three goes beyond what there was anywhere in the cheese.
#[test]
fn a_rest_brings_centre_and_face_nearer_to_each_other() {
    let soured = soured(&[("pickling_h", 72.0)]);
    let rest = soured.rest.unwrap();
    for EvenedOut { centre, face } in [rest.ph, rest.salt_percent] {
        assert!((centre.1 - face.1).abs() < (centre.0 - face.0).abs(), "{centre:?} {face:?}");
    }
    let fields = [soured.field.as_ref().unwrap(), &soured.moisture.field, &soured.salt.field];
    for (EvenedOut { centre, face }, field) in [rest.ph, rest.moisture_percent, rest.salt_percent].into_iter().zip(fields) {
        let there = &field.frames.last().unwrap().values;
        let (least, most) = there.iter().fold((f32::MAX, f32::MIN), |(least, most), value| (least.min(*value), most.max(*value)));
        // The frames have seven digits, the solver errs by less than a hundredth.
        let within = |x: f64| (f64::from(least) - 0.01..=f64::from(most) + 0.01).contains(&x);
        assert!([centre.0, centre.1, face.0, face.1].into_iter().all(within), "{centre:?} {face:?}, {least} to {most}");
    }
}

#[test]
fn the_rest_is_left_out_where_only_the_middle_is_asked_for() {
    let given = Given { runs: Runs::MiddleOnly, ..Given::default() };
    let middle = batch_given(&Design::default(), &given).unwrap();
    assert_eq!(middle.pickling.done().unwrap().rest, None);
}

/// In plain words, with what is likely: salt turns it round.
#[test]
fn the_figure_says_whether_the_soak_softens() {
    let said = |salt: f64, hours: f64| {
        let mut design = Design::default();
        design.set("vinegar_salt_g_per_100ml", Value::Number(salt)).unwrap();
        design.set("pickling_h", Value::Number(hours)).unwrap();
        let batch = batch(&design).unwrap();
        figures(&batch).iter().find(|figure| figure.key == "soak_softens").unwrap().text()
    };
    let (plain, salty) = (said(0.0, 504.0), said(15.0, 504.0));
    assert!(plain.contains("softer") && plain.contains("likely"), "{plain}");
    assert!(!salty.starts_with("softer"), "{salty}");
    assert!(said(0.0, 0.0).starts_with("about as before"), "{}", said(0.0, 0.0));
}
