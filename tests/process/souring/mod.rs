//! Souring from stage to stage: balances, the course in a curd, measured pH.

mod balances;
mod properties;
mod run;
mod sourness;
mod way;

use vatsketch::design::{AcidBy, CultureBy, Design, MilkAcid, PhFrom, SouredBy};
use vatsketch::process::{
    DrainingOutcome, DryingOutcome, MilkOutcome, SaltingOutcome, StageError, VatOutcome, draining, drying, milk, salting, vat,
};

/// A batch as far as the dried cheese.
pub(super) struct Way {
    pub(super) milk: MilkOutcome,
    pub(super) vat: VatOutcome,
    pub(super) draining: DrainingOutcome,
    pub(super) salting: SaltingOutcome,
    pub(super) drying: DryingOutcome,
}

pub(super) fn way(design: &Design) -> Result<Way, StageError> {
    let milk = milk(&design.milk)?;
    let vat = vat(&design.vat, design.draining.drip_end_moisture_percent, &milk)?;
    let draining = draining(&design.draining, &vat)?;
    let salting = salting(&design.salting, &draining, design.draining.draining_temperature_c)?;
    let drying = drying(&design.drying, &salting, draining.temperature_c)?;
    Ok(Way { milk, vat, draining, salting, drying })
}

#[track_caller]
pub(super) fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "got {got}, wanted {want} ± {tolerance}");
}

/// Ten million living cells in each gram, an hour's ripening at 30 °C.
pub(super) fn cultured() -> Design {
    let mut design = Design::default();
    design.milk.soured_by = SouredBy::Culture;
    design.milk.culture_by = CultureBy::Cells;
    design
}

pub(super) fn acidified(acid: MilkAcid, ph: f64) -> Design {
    let mut design = Design::default();
    design.milk.soured_by = SouredBy::Acid;
    (design.milk.milk_acid, design.milk.acid_by, design.milk.soured_milk_ph) = (acid, AcidBy::Ph, ph);
    design
}

pub(super) fn with_lactone() -> Design {
    let mut design = Design::default();
    design.milk.soured_by = SouredBy::Lactone;
    design
}

/// Every way of souring, and one culture that was measured on the way.
pub(super) fn soured_designs() -> Vec<(&'static str, Design)> {
    let mut bulk = cultured();
    (bulk.milk.culture_by, bulk.milk.culture_bulk_percent) = (CultureBy::Bulk, 2.0);
    let mut packet = cultured();
    packet.milk.culture_by = CultureBy::Packet;
    let mut measured = cultured();
    (measured.draining.ladled_ph_from, measured.draining.ladled_ph) = (PhFrom::Measured, 5.9);
    (measured.drying.unmoulded_ph_from, measured.drying.unmoulded_ph) = (PhFrom::Measured, 5.05);
    let mut less_sour = cultured();
    (less_sour.drying.unmoulded_ph_from, less_sour.drying.unmoulded_ph) = (PhFrom::Measured, 6.1);
    vec![
        ("cells", cultured()),
        ("bulk", bulk),
        ("packet", packet),
        ("measured", measured),
        ("measured less sour", less_sour),
        ("vinegar", acidified(MilkAcid::Vinegar, 6.0)),
        ("citric acid", acidified(MilkAcid::Citric, 5.8)),
        ("lactic acid", acidified(MilkAcid::Lactic, 5.9)),
        ("lactone", with_lactone()),
    ]
}
