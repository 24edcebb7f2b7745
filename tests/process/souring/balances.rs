//! Nothing is made or lost on the way, and lactose turns into as much lactic acid as chemistry says.

use super::{cultured, near, soured_designs, way};
use vatsketch::process::{CultureNow, SOURING_CONSTANTS, Sourness, StageBalance, VatOutcome, draining, drying, salting};

/// C₁₂H₂₂O₁₁ + H₂O → 4 C₃H₆O₃, by the atomic masses: 4 · 90.08 g from 342.3 g.
const LACTIC_FROM_LACTOSE: f64 = 4.0 * 90.08 / 342.3;

fn closes(name: &str, balance: &StageBalance) {
    let all_kg = balance.came.total_kg() + balance.added.iter().map(|stream| stream.matter.total_kg()).sum::<f64>();
    for part in balance.residual().parts_kg() {
        assert!(part.abs() <= 1e-9 * all_kg, "{name}: {part} of {all_kg} kg");
    }
    for matter in balance.left.iter().map(|stream| stream.matter).chain([balance.came, balance.goes_on]) {
        assert!(matter.parts_kg().iter().all(|part| *part >= 0.0), "{name}: {matter:?}");
    }
}

#[test]
fn every_component_is_accounted_for_from_the_vat_to_the_dried_cheese() {
    for (name, design) in soured_designs() {
        let way = way(&design).unwrap();
        for balance in [&way.vat.balance, &way.draining.balance, &way.salting.balance, &way.drying.balance] {
            closes(name, balance);
        }
        assert_eq!(way.draining.balance.came, way.vat.balance.goes_on, "{name}");
        assert_eq!(way.drying.balance.came, way.salting.balance.goes_on, "{name}");
    }
}

/// What turned is looked for in everything that came out, not in the balances that the stages write themselves.
#[test]
fn the_lactose_that_is_gone_is_there_as_lactic_acid() {
    for (name, design) in soured_designs() {
        let way = way(&design).unwrap();
        let out = [way.vat.whey, way.draining.whey, way.drying.cheese];
        let lactose_kg: f64 = out.iter().map(|matter| matter.carbohydrate_kg).sum();
        let lactic_kg: f64 = out.iter().map(|matter| matter.lactic_kg).sum();
        let gone_kg = way.milk.vat_milk.carbohydrate_kg - lactose_kg;
        let made_kg = lactic_kg - way.milk.soured.acid.lactic_kg;
        near(made_kg, LACTIC_FROM_LACTOSE * gone_kg, 1e-9 * way.milk.vat_milk.carbohydrate_kg);
        assert_eq!(design.milk.soured_by == vatsketch::design::SouredBy::Culture, made_kg > 1e-6, "{name}: {made_kg} kg were made");
        // Acetic, citric and gluconic acid are neither made nor used up.
        let acetic_kg: f64 = out.iter().map(|matter| matter.acid_kg).sum();
        near(acetic_kg, way.milk.soured.acid.acid_kg, 1e-9);
        let other_kg: f64 = out.iter().map(|matter| matter.other_acid_kg).sum();
        near(other_kg, way.milk.soured.acid.other_acid_kg + way.milk.soured.lactone.other_acid_kg, 1e-9);
    }
}

fn kept_share() -> f64 {
    SOURING_CONSTANTS.iter().find(|record| record.name.contains("cells that the curd keeps")).unwrap().value
}

#[test]
fn the_curd_keeps_its_share_of_the_cells_in_the_milk() {
    for (name, design) in
        soured_designs().into_iter().filter(|(_, design)| design.milk.soured_by == vatsketch::design::SouredBy::Culture)
    {
        let way = way(&design).unwrap();
        let in_milk = way.vat.souring.last().unwrap().cells_per_g * way.milk.vat_milk.total_kg();
        let in_curd = way.vat.sourness.culture.unwrap().cells_per_g * way.vat.curd.total_kg();
        assert!((in_curd / in_milk / kept_share() - 1.0).abs() < 1e-9, "{name}: {in_milk} and {in_curd}");
    }
}

/// Returns a culture that neither grows nor works.
fn asleep(sourness: &Sourness) -> Sourness {
    let still = |now: CultureNow| {
        let mut law = now.law;
        (law.rate_per_h, law.upkeep_mol_h) = (0.0, 0.0);
        CultureNow { law, ..now }
    };
    Sourness { culture: sourness.culture.map(still), ..*sourness }
}

#[test]
fn cells_that_do_not_grow_are_as_many_in_the_dried_cheese_as_in_the_ladled_curd() {
    let design = cultured();
    let vat = way(&design).unwrap().vat;
    let vat = VatOutcome { sourness: asleep(&vat.sourness), ..vat };
    let temperature_c = design.draining.draining_temperature_c;
    let drained = draining(&design.draining, &vat).unwrap();
    let salted = salting(&design.salting, &drained, temperature_c).unwrap();
    let dried = drying(&design.drying, &salted, temperature_c).unwrap();
    let cells = |sourness: &Sourness, kg: f64| sourness.culture.unwrap().cells_per_g * kg;
    let ladled = cells(&vat.sourness, vat.curd.total_kg());
    for later in [
        cells(&drained.sourness, drained.curd.total_kg()),
        cells(&salted.sourness, salted.cheese.total_kg()),
        cells(&dried.sourness, dried.cheese.total_kg()),
    ] {
        assert!((later / ladled - 1.0).abs() < 1e-9, "{ladled} and {later}");
    }
}
