//! What holds for any design at all.

use crate::design::any::any_design;
use proptest::prelude::*;
use vatsketch::batch::{Batch, batch};
use vatsketch::caution::{cautions, hours_in_zone};
use vatsketch::curve::{CurveKey, curve, table};
use vatsketch::design::{Design, Unit, Value, field};
use vatsketch::figure::{Reading, figures};
use vatsketch::units::Units;
use vatsketch::words::caution_line;

fn check_figures(batch: &Batch) -> Result<(), TestCaseError> {
    for readout in figures(batch) {
        let Reading::Number(number) = readout.reading else { continue };
        prop_assert!(number.is_finite(), "{} is {number}", readout.key);
        // More salt than water is possible: it then lies there as crystals. Damp air gives a cheese water: the loss is then a gain.
        // A saltier vinegar brings salt in.
        let may_be_more = readout.key.ends_with("salt_in_moisture_percent") || readout.key == "salt_left_percent";
        let most = if may_be_more { f64::INFINITY } else { 100.0 };
        let least = if readout.key == "drying_loss_percent" { -100.0 } else { 0.0 };
        if readout.unit == Unit::Percent {
            prop_assert!((least - 1e-9..=most + 1e-9).contains(&number), "{} is {number}", readout.key);
        }
        if let Some((low, high)) = readout.likely {
            prop_assert!(low <= number && number <= high, "{}: {low} {number} {high}", readout.key);
        }
        prop_assert!(!readout.text().contains("-0 ") && !readout.text().is_empty(), "{}", readout.key);
    }
    Ok(())
}

fn check_cautions(batch: &Batch) -> Result<(), TestCaseError> {
    prop_assert!(cautions(batch).iter().any(|caution| ["no_acid", "acid_is_foreseen"].contains(&caution.key)));
    prop_assert!(cautions(batch).windows(2).all(|pair| pair[0].severity >= pair[1].severity));
    for caution in cautions(batch) {
        let said = caution_line(&caution, Units::METRIC);
        prop_assert!(!said.contains("NaN") && !said.contains("inf "), "{said}");
        let said = said.to_lowercase();
        prop_assert!(!said.split(|letter: char| !letter.is_alphabetic()).any(|word| word.starts_with("safe")), "{said}");
        prop_assert!(caution.caused_by.is_none_or(|key| field(key).is_ok()), "{}", caution.key);
    }
    prop_assert!(hours_in_zone(batch).is_none_or(|hours| hours.is_finite() && hours >= 0.0));
    Ok(())
}

fn check_curves(batch: &Batch) -> Result<(), TestCaseError> {
    for key in CurveKey::ALL {
        let figure = curve(batch, key);
        prop_assert!(figure.series.is_empty() == figure.empty_because.is_some(), "{key:?}");
        prop_assert!(figure.x.least < figure.x.most && figure.y.least < figure.y.most, "{key:?}");
        for series in &figure.series {
            prop_assert!(series.points.iter().flatten().all(|value| value.is_finite()), "{key:?} {}", series.name);
            prop_assert!(series.points.windows(2).all(|pair| pair[0][0] <= pair[1][0]), "{key:?} {}", series.name);
            // A cold cheese gathers dew at first and so "loses" less than nothing: a hundredth of the axis for that and for rounding.
            let slack = 0.01 * (figure.y.most - figure.y.least);
            for [x, y] in &series.points {
                let in_x = (figure.x.least..=figure.x.most * (1.0 + 1e-9)).contains(x);
                let inside = in_x && (figure.y.least - slack..=figure.y.most + slack).contains(y);
                prop_assert!(inside, "{key:?} {}: ({x}, {y}) is outside {:?} {:?}", series.name, figure.x, figure.y);
            }
        }
        for [x, low, high] in figure.bands.iter().flat_map(|band| &band.points) {
            prop_assert!(x.is_finite() && low <= high, "{key:?} band {x} {low} {high}");
        }
        let table = table(&figure, 10);
        prop_assert!(table.rows.iter().all(|row| row.len() == table.headings.len()), "{key:?}");
        prop_assert!(table.rows.iter().flatten().flatten().all(|value| value.is_finite()), "{key:?}");
    }
    Ok(())
}

/// Returns a check of everything at once: a batch costs far more than looking at it.
fn holds(batch: &Batch) -> Result<(), TestCaseError> {
    prop_assert!(batch.balance.greatest_relative_residual() < 1e-9, "{}", batch.balance.greatest_relative_residual());
    check_figures(batch)?;
    check_cautions(batch)?;
    check_curves(batch)
}

/// Found by the property below: a thin film of a cheese that meets air of 5 % humidity at nightfall overdrew its skin.
#[test]
fn a_film_that_meets_very_dry_air_at_nightfall_holds_no_less_than_no_water() {
    let mut design = Design::default();
    for (key, value) in [
        ("cream_by", Value::Choice("cream_amount")),
        ("cream_on_hand_ml", Value::Number(1860.0)),
        ("mould_count", Value::Number(117.0)),
        ("drying_place", Value::Choice("open_air")),
        ("drying_h", Value::Number(712.0)),
        ("day_temperature_c", Value::Number(44.4)),
        ("night_humidity_percent", Value::Number(5.0)),
    ] {
        design.set(key, value).unwrap();
    }
    holds(&batch(&design).unwrap()).unwrap();
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn near_the_default_all_figures_are_finite_the_balance_closes_and_curves_lie_in_their_axes(design in any_design(0.12)) {
        holds(&batch(&design).unwrap())?;
    }

    #[test]
    fn far_from_the_default_all_figures_are_finite_the_balance_closes_and_curves_lie_in_their_axes(design in any_design(0.6)) {
        holds(&batch(&design).unwrap())?;
    }
}
