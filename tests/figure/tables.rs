//! Every curve as a table.

use vatsketch::batch::batch;
use vatsketch::design::Design;
use vatsketch::figure::{Axis, Figure, FigureKey, Role, Series, figure, table};

#[test]
fn a_table_has_a_column_for_x_and_for_each_line_and_a_row_more_than_asked_for() {
    let batch = batch(&Design::default()).unwrap();
    for key in FigureKey::ALL {
        let figure = figure(&batch, key);
        for rows in [1, 8, 24] {
            let table = table(&figure, rows);
            assert_eq!(table.headings.len(), figure.series.len() + 1, "{key:?}");
            assert_eq!(table.rows.len(), rows + 1, "{key:?}");
            assert!(table.rows.iter().all(|row| row.len() == table.headings.len()), "{key:?}");
            assert!(table.rows.windows(2).all(|pair| pair[0][0] < pair[1][0]), "{key:?}");
            // The main line runs all the way.
            assert!(table.rows.iter().all(|row| row[0].is_some()), "{key:?}");
        }
        assert!(table(&figure, 4).headings[0].contains(figure.x.unit), "{key:?}");
    }
}

/// By hand: two straight lines, of which the second begins late.
#[test]
fn values_between_points_lie_on_the_line_and_outside_them_there_are_none() {
    let axis = |label| Axis { label, unit: "h", least: 0.0, most: 4.0 };
    let line = |name, points: &[[f64; 2]]| Series { name, role: Role::Main, points: points.to_vec() };
    let figure = Figure {
        title: "By hand",
        x: axis("time"),
        y: axis("y"),
        series: vec![line("one", &[[0.0, 0.0], [4.0, 8.0]]), line("late", &[[2.0, 5.0], [4.0, 5.0]])],
        bands: Vec::new(),
        events: Vec::new(),
        empty_because: None,
        in_words: String::new(),
    };
    let table = table(&figure, 4);
    assert_eq!(table.headings, ["time, h", "one, h", "late, h"]);
    assert_eq!(table.rows[1], [Some(1.0), Some(2.0), None]);
    assert_eq!(table.rows[2], [Some(2.0), Some(4.0), Some(5.0)]);
    assert_eq!(table.rows[4], [Some(4.0), Some(8.0), Some(5.0)]);
}
