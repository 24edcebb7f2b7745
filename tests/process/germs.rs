//! How far germs could grow in a batch: against the law itself where all stays the same, against the chapter's own runs, and what must always hold.

use std::f64::consts::LN_10;
use vatsketch::batch::batch;
use vatsketch::design::{CultureBy, Design, SouredBy, Stage};
use vatsketch::law::growth::{Conditions, GrowthLaw};
use vatsketch::process::{DrainingOutcome, GermLine, GermsOutcome, GermsWay, SourPoint, VatOutcome, WarmingPoint, germs};

fn course(germs: &GermsOutcome, line: GermLine) -> f64 {
    germs.of(line).unwrap().dose() / LN_10
}

/// Returns the whole batch that the chapter speaks of: 36 h of draining at 21 °C, 48 h of drying in air of 40 °C.
fn chapters_batch(change: impl Fn(&mut Design)) -> GermsOutcome {
    let mut design = Design::default();
    design.draining.draining_temperature_c = 21.0;
    design.draining.turn_count = 5;
    design.draining.turn_gap_h = 6.0;
    design.drying.cabinet_temperature_c = 40.0;
    design.drying.drying_h = 48.0;
    design.pickling.pickled = false;
    design.keeping.keeping_days = 0.0;
    change(&mut design);
    batch(&design).unwrap().germs.unwrap()
}

#[test]
fn print_for_now() {
    let unsoured = chapters_batch(|_| ());
    let soured = chapters_batch(|design| {
        design.milk.soured_by = SouredBy::Culture;
        design.milk.culture_by = CultureBy::Cells;
        design.milk.culture_cells_million_g = 10.0;
    });
    for line in GermLine::ALL {
        let (one, two) = (unsoured.of(line).unwrap(), soured.of(line).unwrap());
        let stages = |course: &vatsketch::process::GermCourse| {
            Stage::ALL.map(|stage| {
                (course.by_stage.iter().find(|(at, _)| *at == stage).map_or(0.0, |(_, dose)| dose / LN_10) * 100.0).round() / 100.0
            })
        };
        println!(
            "{:32} {:6.2} {:?} soured {:6.2} lag {:6.2} mean {:.2} {:?}",
            line.key(),
            course(&unsoured, line),
            stages(one),
            course(&soured, line),
            two.increase_with_lag_log10(),
            two.mean_log10,
            stages(two)
        );
    }
    println!("{:?} {:?} {} {:?}", unsoured.airless, unsoured.yeast_log10, unsoured.mould_mm, unsoured.spans);
    let default = batch(&Design::default()).unwrap().germs.unwrap();
    for course in &default.courses {
        println!(
            "{:30} {:.2} {:.2} {:?} {}",
            course.line.key(),
            course.dose() / LN_10,
            course.mean_log10,
            course.by_stage.iter().map(|(s, d)| format!("{s:?} {:.2}", d / LN_10)).collect::<Vec<_>>(),
            course.points.len()
        );
    }
    println!("{:?} {:?} {} {:?}", default.airless, default.yeast_log10, default.mould_mm, default.spans);
}
