//! The growth that is judged stands for the draws: it is what nine of ten of them stay below.

use super::pickling::likely::rows;
use vatsketch::analysis::{drawn_batch, draws};
use vatsketch::batch::{Batch, batch};
use vatsketch::process::GermLine;

/// The germs of the table, in the order of its columns.
const LINES: [GermLine; 5] = [GermLine::Listeria, GermLine::Staphylococcus, GermLine::Salmonella, GermLine::Coli, GermLine::Cereus];
/// Draws of each design of the table.
const DRAWS: usize = 100;

/// Returns the ninth deciles of the table, one row a design of the table of the slow soak.
fn ninths() -> Vec<[f64; 5]> {
    let table = include_str!("../reference/fast-growth.csv");
    let row = |line: &str| {
        let cells: Vec<f64> = line.split(',').map(|cell| cell.parse().unwrap()).collect();
        std::array::from_fn(|at| cells[at])
    };
    table.lines().filter(|line| !line.starts_with('#')).skip(1).map(row).collect()
}

fn grown(batch: &Batch, line: GermLine) -> f64 {
    batch.germs.as_ref().unwrap().of(line).unwrap().increase_log10()
}

/// Our own promise: within 0.3 log of five germs in 200 designs, none of which it was fitted to: it follows from the range of the rate alone.
#[test]
fn the_growth_that_is_judged_meets_nine_draws_of_ten_in_two_hundred_designs() {
    let (rows, ninths) = (rows(), ninths());
    assert_eq!((rows.len(), ninths.len()), (200, 200));
    for ((design, _), ninths) in rows.iter().zip(ninths) {
        let done = batch(design).unwrap();
        for (line, ninth) in LINES.into_iter().zip(ninths) {
            let (_, judged) = done.germs.as_ref().unwrap().of(line).unwrap().likely_log10();
            assert!((judged - ninth).abs() <= 0.3, "{line:?}: {judged} against {ninth} of {design:?}");
        }
    }
}

/// The table is what the draws give today: one of its rows, drawn again.
#[test]
fn the_table_of_the_growth_is_that_of_the_draws() {
    let ((design, _), ninths) = (&rows()[0], ninths()[0]);
    let all: Vec<Batch> = draws(design, DRAWS).iter().filter_map(|parameters| drawn_batch(design, parameters).ok()).collect();
    for (line, ninth) in LINES.into_iter().zip(ninths) {
        let mut logs: Vec<f64> = all.iter().map(|batch| grown(batch, line)).collect();
        logs.sort_by(f64::total_cmp);
        let again = logs[(0.9 * (logs.len() - 1) as f64).ceil() as usize];
        // Rounded to the thousandth in the table.
        assert!((again - ninth).abs() <= 0.000_6, "{line:?}: {again} against {ninth}");
    }
}
