//! A design that uses a kitchen: its batch, its ranges, its cautions.

use super::invented::kitchen;
use vatsketch::analysis::draws;
use vatsketch::batch::{batch, batch_after};
use vatsketch::caution::{CautionKind, Severity, cautions};
use vatsketch::design::{CultureKind, Design, Value};
use vatsketch::process::{Given, UNCERTAIN_PARAMETERS};
use vatsketch::session::EXAMPLES;

fn known(known: &[(&str, f64, f64, f64)]) -> (Design, Design) {
    let plain = crate::example("first-vat");
    let mut design = plain.clone();
    design.use_kitchen(kitchen(&plain, known)).unwrap();
    (plain, design)
}

#[test]
fn the_batch_takes_the_estimates_and_its_likely_ranges_are_narrower() {
    let (plain, design) = known(&[("moisture_diffusivity", 0.75, 0.8, 0.9), ("buffer", 0.95, 1.0, 1.05)]);
    let (any, own) = (batch(&plain).unwrap(), batch(&design).unwrap());
    assert_eq!(own.given.parameters.moisture_diffusivity, 0.8);
    let moisture = |batch: &vatsketch::batch::Batch| {
        let dried = batch.drying.done().unwrap();
        let at_the_end = |run: &vatsketch::process::TrayRun| run.points.last().unwrap().moisture_percent;
        (dried.end.moisture_percent, at_the_end(&dried.if_slow) - at_the_end(&dried.if_fast))
    };
    let ((any_percent, any_width), (own_percent, own_width)) = (moisture(&any), moisture(&own));
    assert!(own_percent > any_percent, "slower water leaves a moister cheese");
    assert!(own_width < 0.5 * any_width, "{own_width} and {any_width}");
    let soured = |batch: &vatsketch::batch::Batch| batch.pickling.done().unwrap().likely_equilibrium_ph;
    let width = |(least, most): (f64, f64)| most - least;
    assert!(width(soured(&own)) < width(soured(&any)));
}

#[test]
fn draws_stay_within_what_is_known_and_all_else_keeps_its_range() {
    let (plain, design) = known(&[("mould_time", 0.9, 1.0, 1.1)]);
    for drawn in draws(&design, 20) {
        assert!((0.9..=1.1).contains(&drawn.mould_time), "{}", drawn.mould_time);
    }
    for parameter in UNCERTAIN_PARAMETERS.iter().filter(|parameter| parameter.key != "mould_time") {
        assert_eq!(parameter.ends(&design), parameter.ends(&plain), "{}", parameter.key);
        assert_eq!(parameter.at_share(&design, 0.5), 1.0, "{}", parameter.key);
    }
}

#[test]
fn what_was_learned_of_one_culture_says_nothing_of_another() {
    let (plain, mut design) = known(&[("culture_rate", 0.8, 0.9, 1.0)]);
    assert_eq!(Given::of(&design).parameters.culture_rate, 0.9);
    assert_eq!(plain.milk.culture_kind, CultureKind::Mesophilic);
    design.set("culture_kind", Value::Choice("thermophilic")).unwrap();
    assert_eq!(Given::of(&design), Given::default());
}

#[test]
fn nothing_is_calculated_again_that_the_kitchen_does_not_touch() {
    let (plain, design) = known(&[("acid_obstruction", 0.9, 1.1, 1.3)]);
    let (own, again) = batch_after(&design, Some(&batch(&plain).unwrap())).unwrap();
    assert_eq!(again, [vatsketch::design::Stage::Pickling, vatsketch::design::Stage::Keeping]);
    assert_eq!(own, batch(&design).unwrap());
}

/// Germs grow less where the culture is quicker. As long as the log leaves it open whether it is, nothing is said more mildly.
#[test]
fn no_caution_goes_because_the_middle_moved() {
    for example in &EXAMPLES[..3] {
        let plain = example.design().unwrap();
        let mut design = plain.clone();
        let wide = [
            ("culture_cells", 0.6, 1.5, 2.9),
            ("culture_rate", 0.9, 1.05, 1.15),
            ("moisture_diffusivity", 0.7, 1.3, 1.9),
            ("mould_time", 0.7, 0.8, 1.2),
        ];
        design.use_kitchen(kitchen(&plain, &wide)).unwrap();
        let (any, own) = (cautions(&batch(&plain).unwrap()), cautions(&batch(&design).unwrap()));
        for caution in any.iter().filter(|caution| caution.severity > Severity::Note) {
            match &caution.kind {
                CautionKind::Germs(grows) => assert!(
                    own.iter().any(|own| matches!(&own.kind, CautionKind::Germs(own) if own.stage == grows.stage && own.log10 >= grows.log10 - 1e-9)),
                    "{}: {grows:?}",
                    example.name
                ),
                CautionKind::Stopped(_) | CautionKind::Pickling(_) => {}
                _ => assert!(own.iter().any(|own| own.key == caution.key), "{}: {} is gone", example.name, caution.key),
            }
        }
    }
}

/// What the log makes certain counts, also where it makes a caution milder.
#[test]
fn what_is_certain_is_judged_by_its_cautious_end() {
    let (_, design) = known(&[("culture_cells", 1.8, 2.2, 2.6), ("clotting", 0.8, 0.9, 1.1)]);
    let guarded = Given::guarded(&design).parameters;
    assert!((1.8..2.2).contains(&guarded.culture_cells), "{}", guarded.culture_cells);
    assert_eq!(guarded.clotting, 1.0, "its record's value is not excluded");
    assert_eq!(batch(&design).unwrap().guarded.unwrap().given.parameters, guarded);
}

#[test]
fn the_moisture_at_the_end_of_the_drip_is_a_choice_that_the_kitchen_sets_and_gives_back() {
    let (plain, mut design) = known(&[("drip_end_moisture_percent", 0.97, 1.02, 1.05)]);
    let was = plain.draining.drip_end_moisture_percent;
    assert_eq!(design.draining.drip_end_moisture_percent, 1.02 * was);
    design.leave_kitchen();
    assert_eq!(design, plain);
    let (_, mut changed) = known(&[("drip_end_moisture_percent", 0.97, 1.02, 1.05)]);
    changed.set("drip_end_moisture_percent", Value::Number(65.0)).unwrap();
    changed.leave_kitchen();
    assert_eq!(changed.draining.drip_end_moisture_percent, 65.0, "what the maker changed since stays");
}
