//! Germ by stage.

use vatsketch::batch::batch;
use vatsketch::caution::cautions;
use vatsketch::design::{CultureBy, Design, SouredBy, Stage};
use vatsketch::figure::{GermTable, Reading, figures, germ_table, is_of_germs};
use vatsketch::process::GermLine;
use vatsketch::session::EXAMPLES;

/// Returns the examples, and one that is soured by so much culture, in million cells per gram.
fn designs() -> Vec<Design> {
    let soured = |cells: f64| {
        let mut design = Design::default();
        design.milk.soured_by = SouredBy::Culture;
        design.milk.culture_by = CultureBy::Cells;
        design.milk.culture_cells_million_g = cells;
        design
    };
    EXAMPLES.iter().map(|example| example.design().unwrap()).chain([1.0, 10.0, 100.0].map(soured)).collect()
}

#[test]
fn every_cell_is_that_of_its_course_and_the_last_one_is_the_figure() {
    for design in designs() {
        let made = batch(&design).unwrap();
        let (table, germs, all) = (germ_table(&made).unwrap(), made.germs.clone().unwrap(), figures(&made));
        assert_eq!(table.rows.iter().map(|row| row.line).collect::<Vec<_>>(), GermLine::ALL);
        for row in &table.rows {
            let course = germs.of(row.line).unwrap();
            for (stage, cell) in GermTable::STAGES.into_iter().zip(&row.by_stage) {
                let gone_through = germs.spans.iter().any(|span| span.stage == stage);
                assert_eq!(*cell, gone_through.then(|| course.in_stage_log10(stage)), "{}", stage.key());
            }
            let figure = all.iter().find(|figure| figure.key == format!("{}_log10", row.line.key())).unwrap();
            assert_eq!(figure.reading, Reading::Number(row.whole.unwrap()));
        }
        assert!(table.others.iter().any(|figure| figure.key == "airless_h"));
        assert!(table.others.iter().all(|figure| is_of_germs(figure.key)));
    }
}

/// The line on which the warning rests is that of the warning, over designs of which some are soured so far that only the other reading of
/// lactic acid comes to toxin.
#[test]
fn the_line_that_decides_is_that_of_the_warning() {
    let mut seen = [false; 2];
    for design in designs() {
        let made = batch(&design).unwrap();
        let deciding: Vec<GermLine> =
            germ_table(&made).unwrap().rows.iter().filter(|row| row.decides).map(|row| row.line).collect();
        let all = cautions(&made);
        let warned = |key: &str| all.iter().any(|caution| caution.key == key);
        let wanted = if warned("toxin_if_lactic_fails") && !warned("toxin_could_form") {
            GermLine::StaphylococcusWithoutLactic
        } else {
            GermLine::Staphylococcus
        };
        assert_eq!(deciding, [wanted]);
        seen[usize::from(wanted == GermLine::Staphylococcus)] = true;
    }
    assert!(seen[1], "no design whose warning rests on the usual line");
}

#[test]
fn a_batch_that_stops_half_way_has_cells_as_far_as_it_came_and_no_sum() {
    let mut design = Design::default();
    design.draining.mould_count = 1;
    let table = germ_table(&batch(&design).unwrap()).unwrap();
    for row in &table.rows {
        assert_eq!((row.whole, row.by_stage.iter().flatten().count()), (None, 1));
    }
    assert!(table.cells(GermLine::name).iter().all(|row| row[2..].iter().all(|cell| cell == "–")));
    assert!(table.notes(GermLine::name).iter().any(|note| note.contains("did not come to its end")));
    design.vat.bath_set_temperature_c = 25.0;
    assert_eq!(germ_table(&batch(&design).unwrap()), None);
}

#[test]
fn the_note_about_the_two_readings_quotes_the_row_as_it_is_shown() {
    let table = germ_table(&batch(&Design::default()).unwrap()).unwrap();
    for name in [GermLine::name, GermLine::short_name] {
        let deciding = table.rows.iter().find(|row| row.decides).unwrap();
        assert!(table.notes(name)[0].contains(&format!("rests on “{}”", name(deciding.line))), "{:?}", table.notes(name));
    }
}

#[test]
fn what_reaches_its_greatest_density_says_so() {
    let table = germ_table(&batch(&Design::default()).unwrap()).unwrap();
    let cells = table.cells(GermLine::short_name);
    let aureus = cells.iter().find(|row| row[0] == "S. aureus").unwrap();
    assert_eq!(aureus.last().unwrap(), "≥ 8.5", "the greatest density of the record");
    let drying = GermTable::STAGES.iter().position(|stage| *stage == Stage::Drying).unwrap();
    assert_eq!(table.headings()[drying + 1], "Drying");
}
