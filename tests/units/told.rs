//! Sentences in other units.

use proptest::prelude::*;
use vatsketch::batch::batch;
use vatsketch::caution::cautions;
use vatsketch::design::{Design, Value};
use vatsketch::figure::figures;
use vatsketch::session::EXAMPLES;
use vatsketch::units::{Clock, LongTimes, Units};
use vatsketch::words::{CautionWords, caution_words};

#[test]
fn sentences_are_told_in_other_units() {
    let hours = Units { long_times: LongTimes::Hours, ..Units::METRIC };
    let days = Units { long_times: LongTimes::Days, ..Units::METRIC };
    let halves = Units { clock: Clock::Hours12, ..Units::METRIC };
    for (units, metric, told) in [
        (Units::US, "from 33.0 to 30.1 °C.", "from 91 to 86 °F."),
        (Units::US, "Keep at 4 °C or colder.", "Keep at 39 °F or colder."),
        (Units::US, "freeze at −20 °C", "freeze at −4 °F"),
        (Units::US, "between −5 and 5 °C", "between 23 and 41 °F"),
        (Units::US, "dry at 20–30 °C", "dry at 68–86 °F"),
        (Units::US, "a fridge-4 °C", "a fridge-39 °F"),
        (Units::US, "353 mL for each mould of 178 mL", "12 fl oz for each mould of 6 fl oz"),
        (Units::US, "6 g of acid in 100 mL", "6 g of acid in 100 mL"),
        (Units::US, "1.031 kg/L", "1.031 kg/L"),
        (Units::US, "would weigh 2.30 kg", "would weigh 5 lb 1.2 oz"),
        (days, "spends 63 h between 4 and 60 °C", "spends 2 d 15 h between 4 and 60 °C"),
        (hours, "drain 1 day 16 h 30 min instead of 1 day 11 h.", "drain 40 h 30 min instead of 35 h."),
        (hours, "no longer than 7 days", "no longer than 7 days"),
        (halves, "Begin tomorrow 09:00; Fri 9 May, 17:20", "Begin tomorrow 9:00 am; Fri 9 May, 5:20 pm"),
        (halves, "2031-05-09T17:20 and 1:234", "2031-05-09T17:20 and 1:234"),
        (Units::METRIC, "at 35.0 °C, 17:20", "at 35.0 °C, 17:20"),
    ] {
        assert_eq!(units.told(metric), told);
    }
}

/// A design in which as much as can be goes wrong.
fn careless() -> Design {
    let mut design = crate::example("warm-cabinet");
    for (key, value) in [("draining_temperature_c", 25.0), ("pickling_temperature_c", 20.0), ("keeping_temperature_c", 15.0)] {
        design.set(key, Value::Number(value)).unwrap();
    }
    design
}

#[test]
fn no_caution_and_no_name_of_a_figure_keeps_a_degree_that_is_not_shown() {
    let designs = EXAMPLES.iter().map(|example| example.design().unwrap()).chain([careless()]);
    let mut degrees = 0;
    for design in designs {
        let batch = batch(&design).unwrap();
        for caution in cautions(&batch) {
            let CautionWords { what, remedy, short } = caution_words(&caution, Units::METRIC);
            let shown = caution_words(&caution, Units::US);
            degrees += [&what, &remedy, &short].iter().filter(|words| words.contains("°C")).count();
            assert!(![&shown.what, &shown.remedy, &shown.short].iter().any(|words| words.contains("°C")), "{shown:?}");
            assert_eq!(what.matches("°C").count(), shown.what.matches("°F").count(), "{shown:?}");
            assert!(shown.short.chars().count() <= 70, "{}", shown.short);
        }
        for figure in figures(&batch) {
            assert!(!figure.label_in(Units::US).contains("°C"), "{}", figure.label);
            assert!(!figure.text_in(Units::US).contains("°C"), "{}", figure.key);
        }
    }
    assert!(degrees > 10, "only {degrees} cautions have degrees");
}

proptest! {
    /// Whatever stands in a sentence, nothing panics, and metric units leave it as it is.
    #[test]
    fn any_text_can_be_told(text in "[0-9a-z .:°Cg/→kLmhd]{0,40}") {
        prop_assert_eq!(Units::METRIC.told(&text), text.clone());
        let all = Units { long_times: LongTimes::Days, ..Units::US };
        prop_assert!(all.told(&text).len() < 20 * text.len() + 20);
    }
}
