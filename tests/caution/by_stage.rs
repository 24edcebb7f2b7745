//! The stations that wear the mark of a caution.

use vatsketch::batch::batch;
use vatsketch::caution::{Severity, cautions, worst_by_stage};
use vatsketch::design::field;

#[test]
fn each_stage_has_the_gravest_of_what_its_choices_cause() {
    let all = cautions(&batch(&crate::example("warm-cabinet")).unwrap());
    let worst = worst_by_stage(&all);
    assert!(!worst.is_empty());
    for caution in all.iter().filter(|caution| !caution.always && caution.severity > Severity::Note) {
        let Some(key) = caution.caused_by else { continue };
        let stage = field(key).unwrap().stage;
        let (_, severity) = worst.iter().find(|(at, _)| *at == stage).unwrap();
        assert!(*severity >= caution.severity, "{}", caution.key);
    }
    for (stage, severity) in worst {
        let caused = |key: &str| field(key).is_ok_and(|field| field.stage == stage);
        assert!(all.iter().any(|caution| caution.severity == severity && caution.caused_by.is_some_and(caused)), "{stage:?}");
    }
}
