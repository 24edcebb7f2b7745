//! Many invented kitchens, learned from their records and held to what is so in them.

use super::careful::{Differs, Kitchen, made};
use vatsketch::analysis::{drawn_batch, draws};
use vatsketch::curve::measured;
use vatsketch::design::{Design, Value};
use vatsketch::kitchen::{Belief, KitchenConstants, learn};
use vatsketch::numeric::Draws;
use vatsketch::record::{BatchRecord, DRIP_END_KNOWN};
use vatsketch::session::EXAMPLES;

/// What a kitchen came to.
#[derive(Clone, Debug)]
pub struct Studied {
    /// How it differs from our model.
    pub differs: Differs,
    /// Of each unknown that is told: its key, whether its range holds what is so, and how wide the range is over that before.
    pub told: Vec<(&'static str, bool, f64)>,
    /// How far the batch that was held out is from what was foreseen, in what a kitchen reads: before, and now.
    pub held_out: (f64, f64),
    /// The same of the batches that were learned from.
    pub learned_from: (f64, f64),
}

/// Returns so many kitchens from the whole range of what is believed, every other one of which does not follow our model; always the same.
pub fn kitchens(count: usize) -> Vec<Kitchen> {
    let differs = [Differs::Diffusivity, Differs::BathLoss, Differs::TwoDrips, Differs::Drift];
    let mut chance = Draws::new(71);
    let of = |(parameters, number): (_, usize)| {
        // A triangle, as the constants are drawn.
        let off = chance.share() - chance.share();
        let drip_end = 1.0 + off * (DRIP_END_KNOWN.range.1 - 1.0);
        let differs = if number % 2 == 0 { Differs::Not } else { differs[number / 2 % differs.len()] };
        Kitchen { constants: KitchenConstants { parameters, drip_end }, differs, seed: 10_000 * (number as u64 + 1), scatters: 1.0 }
    };
    draws(&design(), count).into_iter().zip(0..).map(of).collect()
}

fn design() -> Design {
    EXAMPLES[0].design().unwrap()
}

/// Returns batches that differ in some choices, as those of a maker who tries things.
pub fn designs() -> [Design; 3] {
    [
        with(&[]),
        with(&[("drying_h", 96.0), ("rennet_dose_imcu_kg", 44.0), ("bath_set_temperature_c", 40.0)]),
        with(&[("drying_h", 60.0), ("bath_l", 10.0), ("draining_temperature_c", 18.0)]),
    ]
}

/// Returns the batch that is to be foreseen.
pub fn next_design() -> Design {
    with(&[("drying_h", 84.0), ("rennet_dose_imcu_kg", 34.0), ("bath_set_temperature_c", 38.5)])
}

fn with(set: &[(&str, f64)]) -> Design {
    let mut design = design();
    for (key, value) in set {
        design.set(key, Value::Number(*value)).unwrap();
    }
    design
}

/// Makes three batches in a kitchen, learns from them and foresees the fourth.
pub fn study(kitchen: &Kitchen) -> Studied {
    let log = made(&designs(), kitchen);
    let learned = learn(&log.batches.iter().collect::<Vec<_>>()).unwrap();
    // What is foreseen is held to what is so, not to how it was read.
    let next = made(&[next_design()], &Kitchen { scatters: 0.0, ..*kitchen });
    let held_out = &next.batches[0];
    let told = learned.told().map(|one| {
        let (least, most) = one.belief.likely;
        let so = kitchen.constants.of(one.unknown);
        let before = Belief::before(one.unknown, &learned.design);
        (one.unknown.key(), (least..=most).contains(&so), one.belief.width_over(&before))
    });
    Studied {
        differs: kitchen.differs,
        told: told.collect(),
        held_out: (error(held_out, &KitchenConstants::default()), error(held_out, &learned.constants)),
        learned_from: (learned.before, learned.after),
    }
}

/// Returns the root of the mean square by which a record is off, in what a kitchen reads.
pub fn error(record: &BatchRecord, constants: &KitchenConstants) -> f64 {
    let batch = drawn_batch(&constants.made(&record.design), &constants.parameters).unwrap();
    let off: Vec<f64> = measured(&batch, record, None)
        .iter()
        .flat_map(|line| line.points.iter().filter_map(|point| Some(point.residual()? / line.reads_to)))
        .map(|residual| residual * residual)
        .collect();
    (off.iter().sum::<f64>() / off.len() as f64).sqrt()
}

/// Returns the share of ranges that hold what is so, how many there are, and the median of how wide they are over before.
pub fn summary(studied: &[&Studied]) -> (f64, usize, f64) {
    let told: Vec<_> = studied.iter().flat_map(|one| &one.told).collect();
    let mut widths: Vec<f64> = told.iter().map(|(_, _, width)| *width).collect();
    widths.sort_by(f64::total_cmp);
    let inside = told.iter().filter(|(_, inside, _)| *inside).count();
    (inside as f64 / told.len() as f64, told.len(), widths[widths.len() / 2])
}
