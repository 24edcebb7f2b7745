//! How the cheeses go on souring while they dry.

use super::souring::{cultured, near, way};
use vatsketch::design::Design;

#[test]
fn a_culture_that_bears_the_warmth_goes_on_souring_as_the_cheese_dries() {
    let mut design = cultured();
    design.drying.cabinet_temperature_c = 24.0;
    let dried = way(&design).unwrap().drying;
    let (first, last) = (dried.souring.first().unwrap(), dried.souring.last().unwrap());
    assert!(last.ph < first.ph && last.lactose_percent < first.lactose_percent * last_over_first(&dried));
    near(last.at_h, design.drying.drying_h, 1e-9);
    near(last.ph, dried.sourness.ph(&dried.cheese), 1e-6);
}

/// How much the mass of a cheese shrinks, which alone makes what is left in it more for each gram.
fn last_over_first(dried: &vatsketch::process::DryingOutcome) -> f64 {
    dried.balance.came.total_kg() / dried.cheese.total_kg()
}

/// A mesophilic culture grows up to 40.5 °C: the cheese in air of 60 °C is above that from an early hour, and sours no further then.
#[test]
fn a_culture_stops_where_the_cheese_is_hotter_than_it_bears() {
    let mut design = cultured();
    design.drying.cabinet_temperature_c = 60.0;
    let dried = way(&design).unwrap().drying;
    let hot: Vec<_> = dried.souring.iter().filter(|point| point.temperature_c > 40.5).collect();
    assert!(hot.len() > 5);
    let (first, last) = (hot.first().unwrap(), hot.last().unwrap());
    assert!(hot.windows(2).all(|pair| pair[1].cells_per_g / pair[0].cells_per_g >= 1.0 - 1e-9), "cells are only crowded together");
    near(last.ph, first.ph, 0.02);
}

#[test]
fn vapour_takes_no_acid_along() {
    for design in [Design::default(), cultured()] {
        let way = way(&design).unwrap();
        let gained = way.drying.cheese.lactic_kg - way.drying.balance.came.lactic_kg;
        let lost = way.drying.balance.came.carbohydrate_kg - way.drying.cheese.carbohydrate_kg;
        near(gained, lost * 4.0 * 90.08 / 342.3, 1e-9);
    }
}
