//! Hours and days that add up over the stages, and what the choices of a failed design still say.

use super::cautions::{severity, with};
use vatsketch::caution::{Severity, cautions};

/// A kitchen in which no stage alone is warm for four hours (US Food Code, 3-501.19): 3.5 h in the moulds, 3.5 h in the air, and the vat.
const SHORT_AND_WARM: [&str; 6] =
    ["turn_count=1", "salted_turns=1", "turn_gap_h=1.75", "draining_temperature_c=24", "drying_h=3.5", "cabinet_temperature_c=30"];
/// Cold moulds, so that only the air counts.
const COLD_MOULDS: &str = "draining_temperature_c=6";

fn cause(settings: &[&str], key: &str) -> Option<&'static str> {
    cautions(&with(settings)).into_iter().find(|caution| caution.key == key)?.caused_by
}

#[test]
fn short_warm_stages_are_warm_for_too_long_together() {
    let batch = with(&SHORT_AND_WARM);
    assert_eq!((severity(&batch, "warm_draining"), severity(&batch, "warm_drying")), (None, None));
    assert_eq!(severity(&batch, "warm_in_all"), Some(Severity::Stop));
    let hours = batch.keeping.done().unwrap().warm_h;
    assert!(hours > 7.0, "{hours}");
    let cold = [&SHORT_AND_WARM[..3], &[COLD_MOULDS, "drying_h=1", "cabinet_temperature_c=30"]].concat();
    assert_eq!(severity(&with(&cold), "warm_in_all"), None);
}

/// A stage that is warned of by itself is not counted again.
#[test]
fn what_is_said_of_one_stage_is_not_said_of_all() {
    let batch = with(&["draining_temperature_c=24", COLD_MOULDS, "cabinet_temperature_c=40"]);
    assert_eq!((severity(&batch, "warm_drying"), severity(&batch, "warm_in_all")), (Some(Severity::Stop), None));
}

/// The hazard guide's appendix 4, from memory: 5 to 12 h from 11 to 21 °C, two days from 7 to 10 °C.
#[test]
fn ten_days_of_cool_air_are_too_long() {
    let air = ["drying_place=open_air", "day_temperature_c=20", "night_temperature_c=14", "drying_h=240", COLD_MOULDS];
    assert_eq!(severity(&with(&air), "cool_for_days"), Some(Severity::Stop));
    assert_eq!(cause(&air, "cool_for_days"), Some("day_temperature_c"));
    let short = [&air[..3], &["drying_h=12", COLD_MOULDS]].concat();
    assert_eq!(severity(&with(&short), "cool_for_days"), None);
    // Moulds of 16 °C for more than a day are as grave.
    assert_eq!(severity(&with(&["draining_temperature_c=16", "turn_gap_h=6"]), "warm_draining"), Some(Severity::Stop));
}

/// US Food Code, 3-501.17, from memory: seven days, the day of making counted.
#[test]
fn a_moist_cheese_without_acid_is_kept_for_days_not_months() {
    let bare = ["pickled=no", "kept_in=bare", "keeping_temperature_c=4"];
    for (days, long) in [("keeping_days=365", true), ("keeping_days=8", true), ("keeping_days=7", false)] {
        let settings = [&bare[..], &[days]].concat();
        assert_eq!(severity(&with(&settings), "kept_long"), long.then_some(Severity::Stop), "{days}");
    }
    let sour = vatsketch::batch::batch(&crate::example("first-vat")).unwrap();
    assert_eq!(severity(&sour, "kept_long"), None);
}

/// Soured curd is judged by the growth of germs; its hours are figures.
#[test]
fn hours_of_soured_curd_are_no_warning() {
    let culture = ["soured_by=culture", "culture_by=cells", "draining_temperature_c=20", "turn_gap_h=8"];
    let batch = with(&culture);
    for key in ["warm_in_all", "cool_for_days", "warm_draining", "warm_drying", "kept_long"] {
        assert_eq!(severity(&batch, key), None, "{key}");
    }
    assert!(batch.keeping.done().unwrap().cool_h > 24.0);
}

/// Oil and warmth are chosen, whatever fails before them.
#[test]
fn a_design_that_fails_keeps_the_warnings_of_its_later_choices() {
    let failed =
        with(&["mould_count=1", "kept_in=oil", "keeping_days=30", "keeping_temperature_c=20", "pickling_temperature_c=21"]);
    assert!(failed.draining.failed().is_some());
    for key in ["stage_failed", "oil_before_acid", "long_in_oil", "warm_keeping", "warm_pickling"] {
        assert_eq!(severity(&failed, key), Some(Severity::Stop), "{key}");
    }
}
