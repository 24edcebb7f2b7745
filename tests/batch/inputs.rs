//! Every input that is shown does something, and none that is hidden does.

use crate::design::any::value_at;
use vatsketch::batch::{Batch, batch};
use vatsketch::caution::cautions;
use vatsketch::design::{
    AcidBy, CalciumForm, CultureBy, Design, Field, KeptIn, MilkAcid, MilkTreatment, PhFrom, PhKnown, SouredBy, fields,
};
use vatsketch::session::EXAMPLES;

/// Returns whether two batches say the same; their designs differ by what was asked.
fn alike(one: &Batch, other: &Batch) -> bool {
    let design = &one.design;
    cautions(one) == cautions(other)
        && Batch { design: design.clone(), ..one.clone() } == Batch { design: design.clone(), ..other.clone() }
}

/// Returns the design with one input elsewhere in its range.
fn moved(design: &Design, field: &Field, share: f64) -> Design {
    let mut design = design.clone();
    field.set(&mut design, value_at(field, share)).unwrap();
    design
}

fn designs() -> Vec<Design> {
    // No example measures the acidity of its milk.
    let mut measured = Design::default();
    measured.milk.ph_known = PhKnown::Measured;
    // Nor does any keep its cheeses in oil.
    let mut in_oil = Design::default();
    in_oil.keeping.kept_in = KeptIn::Oil;
    // Nor does any sour its milk, in whatever way, or measure a pH on the way.
    let mut soured = Vec::new();
    for culture_by in [CultureBy::Packet, CultureBy::Bulk, CultureBy::Cells] {
        let mut design = Design::default();
        (design.milk.soured_by, design.milk.culture_by) = (SouredBy::Culture, culture_by);
        design.milk.culture_packets = 0.2;
        soured.push(design);
    }
    for (milk_acid, acid_by) in
        [(MilkAcid::Vinegar, AcidBy::Ph), (MilkAcid::Lactic, AcidBy::Amount), (MilkAcid::Citric, AcidBy::Amount)]
    {
        let mut design = Design::default();
        design.milk.soured_by = SouredBy::Acid;
        (design.milk.milk_acid, design.milk.acid_by) = (milk_acid, acid_by);
        soured.push(design);
    }
    let mut lactone = Design::default();
    lactone.milk.soured_by = SouredBy::Lactone;
    let mut on_the_way = Design::default();
    on_the_way.draining.ladled_ph_from = PhFrom::Measured;
    on_the_way.drying.unmoulded_ph_from = PhFrom::Measured;
    let mut dried = Design::default();
    dried.pickling.cheese_ph_from = PhFrom::Measured;
    // Nor does any pasteurise its raw milk.
    let mut heated = Design::default();
    (heated.milk.milk_treatment, heated.milk.pasteurised_in_vat) = (MilkTreatment::Raw, true);
    // Nor does any count drops; so small a vat needs less rennet than a spoon measures.
    let mut dripped = Design::default();
    (dripped.milk.milk_l, dripped.milk.calcium_form) = (2.5, CalciumForm::Solution);
    (dripped.milk.calcium_drops_counted, dripped.milk.rennet_drops_counted) = (true, true);
    let examples = EXAMPLES.iter().map(|example| example.design().unwrap());
    examples.chain([measured, in_oil, lactone, on_the_way, dried, heated, dripped]).chain(soured).collect()
}

#[test]
fn every_input_that_is_shown_changes_something() {
    let mut idle: Vec<&str> = fields().map(|field| field.key).collect();
    for design in designs() {
        let before = batch(&design).unwrap();
        idle.retain(|key| {
            let field = vatsketch::design::field(key).unwrap();
            let does = |share| !alike(&before, &batch(&moved(&design, field, share)).unwrap());
            !((field.used)(&design) && [0.3, 0.0, 1.0].into_iter().any(does))
        });
    }
    assert!(idle.is_empty(), "these inputs do nothing: {idle:?}");
}

#[test]
fn no_input_that_is_hidden_changes_anything() {
    for design in designs() {
        let before = batch(&design).unwrap();
        for field in fields().filter(|field| !(field.used)(&design)) {
            for share in [0.0, 1.0] {
                assert!(
                    alike(&before, &batch(&moved(&design, field, share)).unwrap()),
                    "{} is hidden in {}",
                    field.key,
                    design.title
                );
            }
        }
    }
}
