//! The slow soak stands for the draws: the pH at its centre is what nine of ten of them stay below.

use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use vatsketch::analysis::{drawn_batch, draws};
use vatsketch::batch::batch;
use vatsketch::design::{Design, SouredBy};

/// Designs that are compared, and draws of each.
const DESIGNS: usize = 30;
const DRAWS: usize = 100;

fn designs() -> impl Strategy<Value = Design> {
    let cheeses = (8_u32..22, 8.0..60.0_f64, 24.0..43.0_f64, any::<bool>());
    let soaks = (1.3..3.0_f64, 1.0..12.0_f64, 1.5..4.5_f64, 4.0..8.0_f64);
    (cheeses, soaks).prop_map(|((moulds, drying_h, cabinet_c, soured), (log_h, jar_c, ml_per_g, acid))| {
        let mut design = Design::default();
        design.draining.mould_count = moulds;
        (design.drying.drying_h, design.drying.cabinet_temperature_c) = (drying_h, cabinet_c);
        design.pickling.pickling_h = 10.0_f64.powf(log_h);
        design.pickling.pickling_temperature_c = jar_c;
        (design.pickling.vinegar_ml_per_g, design.pickling.acid_g_per_100ml) = (ml_per_g, acid);
        if soured {
            design.milk.soured_by = SouredBy::Culture;
        }
        design
    })
}

/// Our own promises. The slow soak: within 0.1 pH in nine designs of ten, and within 0.25 in all. Where the acid just reaches the centre its pH falls
/// by one in a few hours, and a hundred draws give their ninth decile no better. The middle: what is shown lies in the middle half of its own draws in
/// nine designs of ten, at the centre and blended, and in the middle eight tenths in all.
#[test]
fn the_slow_soak_meets_nine_draws_of_ten_and_the_shown_one_lies_in_their_middle() {
    let mut runner = TestRunner::deterministic();
    let (mut off, mut ranks) = (Vec::new(), Vec::new());
    while off.len() < DESIGNS {
        let design = designs().new_tree(&mut runner).unwrap().current();
        let Ok(Some(shown)) = batch(&design).map(|batch| batch.pickling.done().cloned()) else { continue };
        let drawn: Vec<(f64, f64)> = draws(&design, DRAWS)
            .iter()
            .filter_map(|parameters| {
                let end = drawn_batch(&design, parameters).ok()?.pickling.done()?.end;
                Some((end.centre_ph, end.slurry_ph))
            })
            .collect();
        let mut centres: Vec<f64> = drawn.iter().map(|(centre, _)| *centre).collect();
        centres.sort_by(f64::total_cmp);
        let ninth = centres[(0.9 * (centres.len() - 1) as f64).round() as usize];
        off.push(shown.if_slow.last().unwrap().centre_ph - ninth);
        let below =
            |of: fn(&(f64, f64)) -> f64, shown: f64| drawn.iter().filter(|one| of(one) < shown).count() as f64 / drawn.len() as f64;
        ranks.push(below(|one| one.0, shown.end.centre_ph));
        ranks.push(below(|one| one.1, shown.end.slurry_ph));
    }
    let near = off.iter().filter(|off| off.abs() <= 0.1).count();
    assert!(10 * near >= 9 * DESIGNS, "{near} of {DESIGNS}: {off:.2?}");
    assert!(off.iter().all(|off| off.abs() <= 0.25), "{off:.2?}");
    let middle = ranks.iter().filter(|rank| (0.25..=0.75).contains(*rank)).count();
    assert!(10 * middle >= 9 * ranks.len(), "{middle} of {}: {ranks:.2?}", ranks.len());
    assert!(ranks.iter().all(|rank| (0.1..=0.9).contains(rank)), "{ranks:.2?}");
}
