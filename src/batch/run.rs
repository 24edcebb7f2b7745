//! The calls, in the trade's order.

use super::reuse::Reuse;
use super::{Batch, MassBalance};
use crate::design::{Design, DesignError, Stage};
use crate::process::{
    GermsOutcome, GermsWay, Given, KitchenPlaces, KnownConstants, Runs, SoFar, draining_given, drying_given, germs_given,
    keeping_given, milk_given, pickling_given, salting_given, vat_given,
};
use std::sync::Arc;

/// Returns everything that follows from a design. It never fails as a whole: each stage is done, failed or not reached.
///
/// # Errors
/// [`DesignError`] only if the design itself holds a number that is not finite or not in its range.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design};
/// let batch = batch(&Design::default())?;
/// assert!(batch.milk.done().is_some());
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn batch(design: &Design) -> Result<Batch, DesignError> {
    Ok(batch_after(design, None)?.0)
}

/// Returns the same as [`batch()`] under other parameters of the uncertain constants; with [`crate::process::Runs::MiddleOnly`] in half the time.
///
/// # Errors
/// As for [`batch()`].
///
/// # Example
/// ```
/// use vatsketch::{batch::{batch, batch_given}, design::Design, process::{UncertainParameters, Given}};
/// let design = Design::default();
/// let slow = Given { parameters: UncertainParameters { moisture_diffusivity: 0.5, ..UncertainParameters::default() }, ..Given::default() };
/// let moister = batch_given(&design, &slow)?;
/// assert!(moister.drying.done().unwrap().end.moisture_percent > batch(&design)?.drying.done().unwrap().end.moisture_percent);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn batch_given(design: &Design, given: &Given) -> Result<Batch, DesignError> {
    Ok(batch_until(design, given, None, Stage::Keeping)?.0)
}

/// Returns the same as [`batch()`], and the stages that were calculated again: one whose choices and whose incoming matter are as in
/// `before` is taken over from there.
///
/// # Errors
/// As for [`batch()`].
///
/// # Example
/// ```
/// use vatsketch::{batch::{batch, batch_after}, design::{Design, Stage}};
/// let before = batch(&Design::default())?;
/// let mut design = before.design.clone();
/// design.pickling.pickling_h = 300.0;
/// let (after, again) = batch_after(&design, Some(&before))?;
/// assert_eq!(again, [Stage::Pickling, Stage::Keeping]);
/// assert_eq!(after, batch(&design)?);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
pub fn batch_after(design: &Design, before: Option<&Batch>) -> Result<(Batch, Vec<Stage>), DesignError> {
    batch_until(design, &Given::of(design), before, Stage::Keeping)
}

/// Returns the same as [`batch_after`] under other parameters, and only as far as a stage; later ones wait for it. The mass balance, which looks at
/// the whole, is made only where the last stage is asked for.
///
/// # Errors
/// As for [`batch()`].
pub fn batch_until(
    design: &Design,
    given: &Given,
    before: Option<&Batch>,
    last: Stage,
) -> Result<(Batch, Vec<Stage>), DesignError> {
    design.check()?;
    let (mut batch, anew) = run(design, given, before, last);
    if last == Stage::Keeping {
        batch.guarded = guarded(design, given, before);
    }
    Ok((batch, anew))
}

/// Runs the stages of a design that was checked.
fn run(design: &Design, given: &Given, before: Option<&Batch>, last: Stage) -> (Batch, Vec<Stage>) {
    let mut reuse = Reuse::of(before, given, last);
    let met = KitchenPlaces::of(design, &given.parameters);
    let milk = reuse.first(Stage::Milk, |b| (b.design.milk == design.milk).then_some(&b.milk), || milk_given(&design.milk, given));
    let drip_end_percent = design.draining.drip_end_moisture_percent;
    let vat = reuse.stage(
        Stage::Vat,
        (Stage::Milk, &milk),
        |b| {
            let same = b.design.draining.drip_end_moisture_percent.to_bits() == drip_end_percent.to_bits();
            (same && b.design.vat == design.vat && b.milk == milk).then_some(&b.vat)
        },
        |milk| vat_given(&design.vat, drip_end_percent, milk, given),
    );
    let draining = reuse.stage(
        Stage::Draining,
        (Stage::Vat, &vat),
        |b| (b.design.draining == design.draining && b.vat == vat).then_some(&b.draining),
        |vat| draining_given(&met.draining, vat, given),
    );
    let salting = reuse.stage(
        Stage::Salting,
        (Stage::Draining, &draining),
        |b| {
            let same = b.design.salting == design.salting && b.design.draining == design.draining;
            (same && b.draining == draining).then_some(&b.salting)
        },
        |drained| salting_given(&design.salting, drained, met.draining.draining_temperature_c, given),
    );
    let drying = reuse.stage(
        Stage::Drying,
        (Stage::Salting, &salting),
        |b| {
            let same = b.design.drying == design.drying && b.design.draining == design.draining;
            (same && b.salting == salting).then_some(&b.drying)
        },
        |salted| drying_given(&met.drying, salted, salted.temperature_c, given),
    );
    let pickling = reuse.stage(
        Stage::Pickling,
        (Stage::Drying, &drying),
        |b| (b.design.pickling == design.pickling && b.drying == drying).then_some(&b.pickling),
        |dried| pickling_given(&met.pickling, dried, given),
    );
    let way = || {
        Some(SoFar {
            vat: vat.done()?,
            drained: draining.done()?,
            dried: drying.done()?,
            pickling_design: &met.pickling,
            pickled: pickling.done()?,
        })
    };
    // What may be said about keeping rests on the whole way there, so it is always said again: it costs next to nothing.
    let keeping = reuse.stage(
        Stage::Keeping,
        (Stage::Pickling, &pickling.and(way())),
        |_| None,
        |way| keeping_given(&met.keeping, way, given),
    );
    let anew = reuse.anew;
    let mut batch = Batch {
        design: design.clone(),
        given: *given,
        milk,
        vat,
        draining,
        salting,
        drying,
        pickling,
        keeping,
        germs: None,
        balance: MassBalance::default(),
        guarded: None,
    };
    if last == Stage::Keeping {
        batch.germs = germs_after(&batch, &met, before);
        let done = |stage| Some((stage, (*batch.ending(stage).done()?).clone()));
        batch.balance = MassBalance { stages: Stage::ALL.into_iter().filter_map(done).collect() };
    }
    (batch, anew)
}

/// Returns the batch by which the cautions of a known kitchen are judged besides its own; none where nothing is known, or only a draw is asked for.
fn guarded(design: &Design, given: &Given, before: Option<&Batch>) -> Option<Arc<Batch>> {
    if given.runs == Runs::MiddleOnly || given.known == KnownConstants::default() {
        return None;
    }
    let before = before.and_then(|before| before.guarded.as_deref());
    Some(Arc::new(run(design, &Given::guarded(design), before, Stage::Keeping).0))
}

/// Returns how far germs could grow, taken over from the batch before where all that they went through is as it was.
fn germs_after(batch: &Batch, met: &KitchenPlaces, before: Option<&Batch>) -> Option<GermsOutcome> {
    let same = |b: &&Batch| {
        let stages = b.vat == batch.vat && b.draining == batch.draining && b.drying == batch.drying && b.pickling == batch.pickling;
        stages && b.design.keeping == batch.design.keeping && b.given.same_for(Stage::Keeping, &batch.given)
    };
    if let Some(served) = before.filter(same) {
        return served.germs.clone();
    }
    let way = GermsWay {
        vat: batch.vat.done()?,
        drained: batch.draining.done(),
        salted: batch.salting.done(),
        dried: batch.drying.done(),
        pickled: batch.pickling.done(),
        pickling: &met.pickling,
        keeping: &met.keeping,
    };
    Some(germs_given(&way, &batch.given))
}
