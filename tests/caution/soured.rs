//! What is said of a cheese that is soured, or always.

use super::cautions::{severity, with};
use vatsketch::batch::batch;
use vatsketch::caution::{Severity, cautions};
use vatsketch::units::Units;
use vatsketch::words::{MUST_NOT_EAT, caution_line, caution_words};

/// Foreseen acid takes the place of none, and is as grave: a model is no measurement, and local rules come first here too. Nothing is called
/// sour enough.
#[test]
fn a_soured_cheese_is_warned_of_as_gravely_and_asked_to_be_measured() {
    for settings in [
        &["soured_by=culture", "culture_by=cells", "draining_temperature_c=21"][..],
        &["unmoulded_ph_from=measured", "unmoulded_ph=4.3"],
        &["unmoulded_ph_from=measured", "unmoulded_ph=5"],
    ] {
        let batch = with(settings);
        let first = &cautions(&batch)[0];
        assert_eq!((first.key, first.severity), ("acid_is_foreseen", Severity::Stop));
        let said = caution_words(first, Units::METRIC);
        assert!(said.remedy.contains("local food rules and licensed practice come first") && said.remedy.contains(MUST_NOT_EAT));
        assert!(said.remedy.contains("Measure the pH"));
        let ph = batch.drying.done().unwrap().souring[0].ph;
        assert!(said.what.contains(&format!("pH {ph:.2}")), "{}", said.what);
        // European rules on Listeria: at 4.4 or below.
        assert_eq!(said.what.contains("may still grow"), ph > 4.4, "{}", said.what);
        // A cheese that is not so sour can be made sourer; one that is, is still a cheese of a model.
        assert_eq!((first.always, first.caused_by.is_some()), (ph <= 4.4, ph > 4.4));
        assert!(!said.what.contains("without acid"));
    }
}

/// Rules that count hours are for food without acid (US Food Code): where a culture has soured the curd, what germs could do is judged instead, and
/// the hours stay among the figures.
#[test]
fn hours_are_judged_by_growth_where_the_curd_is_sour() {
    let culture = ["soured_by=culture", "culture_by=cells", "draining_temperature_c=24", "cabinet_temperature_c=40"];
    let soured = with(&culture);
    assert_eq!((severity(&soured, "warm_draining"), severity(&soured, "warm_drying")), (None, None));
    assert!(severity(&soured, "germs_could_grow").or(severity(&soured, "toxin_could_form")).is_some());
    assert!(soured.keeping.done().unwrap().warm_h > 40.0);
    let unsoured = with(&culture[2..]);
    assert_eq!(
        (severity(&unsoured, "warm_draining"), severity(&unsoured, "warm_drying")),
        (Some(Severity::Stop), Some(Severity::Stop))
    );
}

/// What is true of every cheese like this is told apart: no choice leads out of it, and it is not counted among what the design has. The word
/// before it is not how grave it is, and who must not eat the cheese stands in it.
#[test]
fn what_no_choice_lifts_is_told_apart_and_not_counted() {
    let sour = batch(&crate::example("first-vat")).unwrap();
    let (always, own): (Vec<_>, Vec<_>) = cautions(&sour).into_iter().partition(|caution| caution.always);
    let keys: Vec<_> = always.iter().map(|caution| caution.key).collect();
    assert_eq!(keys, ["acid_is_foreseen", "model_uncertainty", "measure_the_ph", "in_the_jar", "class_is_no_proof"]);
    assert!(always.iter().all(|caution| caution_line(caution, Units::METRIC).starts_with("Always true: ")));
    assert!(caution_words(&always[0], Units::METRIC).remedy.contains(MUST_NOT_EAT));
    assert_eq!(vatsketch::analysis::summary(&sour).cautions.iter().sum::<usize>(), own.len());
    // A careful maker's choice: nothing serious that another choice would lift.
    assert!(own.iter().all(|caution| caution.severity < Severity::Stop), "{own:?}");
    // Without a culture there is no acid, and a choice leads out of that.
    let unsoured = batch(&crate::example("unsoured-vat")).unwrap();
    let no_acid = cautions(&unsoured).into_iter().find(|caution| caution.key == "no_acid").unwrap();
    assert_eq!((no_acid.always, no_acid.caused_by), (false, Some("soured_by")));
}

/// A cheese that its vinegar sours to the centre, slow cheeses too, is not kept by dryness either, and need not be.
#[test]
fn dryness_is_serious_only_where_the_vinegar_does_not_sour_a_slow_cheese() {
    let sour = batch(&crate::example("first-vat")).unwrap();
    assert_eq!(severity(&sour, "not_kept_by_dryness"), Some(Severity::Note));
    for settings in [&["pickling_h=20"][..], &["pickled=no"], &["vinegar_ml_per_g=1"]] {
        assert_eq!(severity(&with(settings), "not_kept_by_dryness"), Some(Severity::Stop), "{settings:?}");
    }
}

/// Too much acid is taken back where it was chosen: as an amount, or as a pH.
#[test]
fn milk_that_clots_leads_to_the_choice_of_its_acid() {
    for (settings, choice) in [
        (&["soured_by=acid", "acid_by=amount", "milk_acid_g_l=9"][..], "milk_acid_g_l"),
        (&["soured_by=acid", "acid_by=ph", "soured_milk_ph=5.2", "fridge_temperature_c=16"], "soured_milk_ph"),
    ] {
        let batch = with(settings);
        let failed = cautions(&batch).into_iter().find(|caution| caution.key == "stage_failed").unwrap();
        assert_eq!(failed.caused_by, Some(choice), "{settings:?}");
    }
}
