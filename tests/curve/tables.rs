//! Every curve as a table.

use vatsketch::batch::batch;
use vatsketch::curve::{Axis, Band, Curve, CurveKey, Event, Role, Series, Tone, curve, every_point, table};
use vatsketch::design::Design;

#[test]
fn a_table_has_a_column_for_x_and_for_each_line_and_a_row_more_than_asked_for() {
    let batch = batch(&Design::default()).unwrap();
    for key in CurveKey::ALL {
        let figure = curve(&batch, key);
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

fn line(name: &'static str, points: &[[f64; 2]]) -> Series {
    Series { name, role: Role::Main, tone: Tone::Whole, points: points.to_vec() }
}

fn by_hand(series: Vec<Series>, bands: Vec<Band>) -> Curve {
    let axis = |label| Axis { label, unit: "h", least: 0.0, most: 4.0 };
    Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: "By hand",
        x: axis("time"),
        y: axis("y"),
        series,
        bands,
        events: Vec::new(),
        empty_because: None,
        in_words: String::new(),
    }
}

/// By hand: two straight lines, of which the second begins late.
#[test]
fn values_between_points_lie_on_the_line_and_outside_them_there_are_none() {
    let figure = by_hand(vec![line("one", &[[0.0, 0.0], [4.0, 8.0]]), line("late", &[[2.0, 5.0], [4.0, 5.0]])], Vec::new());
    let table = table(&figure, 4);
    assert_eq!(table.headings, ["time, h", "one, h", "late, h"]);
    assert_eq!(table.rows[1], [Some(1.0), Some(2.0), None]);
    assert_eq!(table.rows[2], [Some(2.0), Some(4.0), Some(5.0)]);
    assert_eq!(table.rows[4], [Some(4.0), Some(8.0), Some(5.0)]);
}

#[test]
fn the_whole_table_has_every_point_of_every_line_and_band_as_it_is() {
    let batch = batch(&Design::default()).unwrap();
    for key in CurveKey::ALL {
        let figure = curve(&batch, key);
        let table = every_point(&figure);
        let holds = |column: usize, [x, y]: [f64; 2]| table.rows.iter().any(|row| row[0] == Some(x) && row[column] == Some(y));
        for (column, series) in figure.series.iter().enumerate() {
            assert!(series.points.iter().all(|point| holds(column + 1, *point)), "{key:?}, {}", series.name);
        }
        for (number, band) in figure.bands.iter().enumerate() {
            let low = 1 + figure.series.len() + 2 * number;
            assert!(band.points.iter().all(|[x, y, _]| holds(low, [*x, *y])), "{key:?}, {}", band.name);
            assert!(band.points.iter().all(|[x, _, y]| holds(low + 1, [*x, *y])), "{key:?}, {}", band.name);
        }
        assert!(table.rows.iter().all(|row| row.len() == table.headings.len()), "{key:?}");
        assert!(table.rows.windows(2).all(|pair| pair[0][0] <= pair[1][0]), "{key:?}");
    }
}

/// By hand: a line that jumps at 2 from 4 to 6, another that begins at 1, and a band.
#[test]
fn the_whole_table_keeps_a_jump_and_fills_in_what_lies_between() {
    let jumps = line("jumps", &[[0.0, 0.0], [2.0, 4.0], [2.0, 6.0], [4.0, 6.0]]);
    let band = Band { name: "spread", points: vec![[0.0, -1.0, 1.0], [4.0, 3.0, 9.0]] };
    let table = every_point(&by_hand(vec![jumps, line("late", &[[1.0, 5.0], [4.0, 8.0]])], vec![band]));
    assert_eq!(table.headings, ["time, h", "jumps, h", "late, h", "spread: low, h", "spread: high, h"]);
    let wanted = [
        [Some(0.0), Some(0.0), None, Some(-1.0), Some(1.0)],
        [Some(1.0), Some(2.0), Some(5.0), Some(0.0), Some(3.0)],
        [Some(2.0), Some(4.0), Some(6.0), Some(1.0), Some(5.0)],
        [Some(2.0), Some(6.0), Some(6.0), Some(1.0), Some(5.0)],
        [Some(4.0), Some(6.0), Some(8.0), Some(3.0), Some(9.0)],
    ];
    assert_eq!(table.rows, wanted);
}

#[test]
fn a_point_that_is_no_number_is_left_out_of_the_whole_table() {
    let table = every_point(&by_hand(vec![line("holed", &[[0.0, 1.0], [f64::NAN, 2.0], [3.0, 4.0]])], Vec::new()));
    assert_eq!(table.rows, [[Some(0.0), Some(1.0)], [Some(3.0), Some(4.0)]]);
    assert!(every_point(&by_hand(Vec::new(), Vec::new())).rows.is_empty());
}

/// By hand: an event between two points, one on a point where the line jumps, and two at once.
#[test]
fn an_event_marks_its_row_and_has_one_of_its_own_between_the_points() {
    let event = |name, at| Event { name, at };
    let jumps = line("jumps", &[[0.0, 0.0], [2.0, 4.0], [2.0, 6.0], [4.0, 6.0]]);
    let events = vec![event("stirred", 1.0), event("cut", 2.0), event("done", 5.0), event("seen", 5.0)];
    let table = every_point(&Curve { events, ..by_hand(vec![jumps], Vec::new()) });
    let at = |row: usize| (table.rows[row][0].unwrap(), table.rows[row][1], table.marks[row].as_str());
    assert_eq!([at(0), at(1)], [(0.0, Some(0.0), ""), (1.0, Some(2.0), "stirred")]);
    assert_eq!([at(2), at(3)], [(2.0, Some(4.0), "cut"), (2.0, Some(6.0), "")]);
    assert_eq!([at(4), at(5)], [(4.0, Some(6.0), ""), (5.0, None, "done; seen")]);
    assert_eq!((table.rows.len(), table.marks.len()), (6, 6));
}
