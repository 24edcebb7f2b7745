//! Tables, read back by the reader of the csv crate and compared with what they were made of.

use crate::report::sample;
use csv::{ReaderBuilder, StringRecord};
use vatsketch::batch::batch;
use vatsketch::caution::{cautions, serious_warnings};
use vatsketch::curve::{Curve, CurveKey, Role, Series, Tone, curve, every_point};
use vatsketch::design::Design;
use vatsketch::export::{ExportError, curve_csv, figures_csv, json};
use vatsketch::figure::{Reading, figures};
use vatsketch::units::{LongTimes, Units};
use vatsketch::words::{FROM_A_MODEL, POTENTIAL_GROWTH, caution_line};

/// Returns the headings and the records; the reader refuses records of another length than the headings.
fn read(bytes: &[u8]) -> (StringRecord, Vec<StringRecord>) {
    let mut reader = ReaderBuilder::new().from_reader(bytes);
    (reader.headers().unwrap().clone(), reader.records().map(Result::unwrap).collect())
}

#[test]
fn the_figures_come_back_as_they_are_read_out() {
    let batch = batch(&Design::default()).unwrap();
    let (headings, records) = read(&figures_csv(&batch).unwrap());
    assert_eq!(headings, vec!["stage", "key", "label", "value", "unit", "likely low", "likely high", "words"]);
    let figures = figures(&batch);
    // The notice, the serious warnings and the rows under replaced keys have keys that no figure has.
    let records: Vec<_> = records.into_iter().filter(|record| figures.iter().any(|figure| figure.key == &record[1])).collect();
    assert_eq!(records.len(), figures.len());
    for (record, figure) in records.iter().zip(&figures) {
        assert_eq!([&record[0], &record[1], &record[2]], [figure.stage.key(), figure.key, figure.label]);
        assert_eq!(&record[4], figure.unit.symbol());
        match &figure.reading {
            // A number is written so that reading it gives the same bits.
            Reading::Number(value) => assert_eq!(record[3].parse::<f64>().unwrap(), *value, "{}", figure.key),
            Reading::Words(_) | Reading::Switch(_) => assert_eq!([&record[3], &record[7]], ["", figure.text().as_str()]),
        }
        let likely = [record[5].parse::<f64>().ok(), record[6].parse::<f64>().ok()];
        assert_eq!(likely, [figure.likely.map(|(low, _)| low), figure.likely.map(|(_, high)| high)], "{}", figure.key);
    }
    assert!(records.iter().any(|record| &record[7] == "yes" || &record[7] == "no"));
}

#[test]
fn a_stage_that_failed_has_a_row_that_says_why() {
    let (_, records) = read(&figures_csv(&sample::failed()).unwrap());
    let status = |stage: &str| {
        records.iter().find(|record| &record[0] == stage && &record[1] == "status").map(|record| record[7].to_owned())
    };
    assert!(status("milk").unwrap().starts_with("failed: a fat target of 9.0 %"), "{:?}", status("milk"));
    assert_eq!(status("drying").unwrap(), "not reached: waits for “Milk”");
    let serious = serious_warnings(&sample::failed());
    assert_eq!(records.len(), 7 + 1 + serious.len(), "a row a stage, one for the notice, one a serious warning");
}

/// RFC 4180, 2.1 and 2.6: lines end in CR LF, and a field with a comma or a quote stands in quotes, the quote doubled.
#[test]
fn lines_and_quotes_are_as_the_standard_has_them() {
    let axis = |label| vatsketch::curve::Axis { label, unit: "", least: 0.0, most: 1.0 };
    let figure = Curve {
        handles: Vec::new(),
        dots: Vec::new(),
        cut: None,
        title: "By hand",
        x: axis("at"),
        y: axis("y"),
        series: vec![Series {
            name: "so-called \"mean\", of two",
            role: Role::Main,
            tone: Tone::Whole,
            points: vec![[0.0, 0.5], [1.0, f64::NAN]],
        }],
        bands: Vec::new(),
        events: Vec::new(),
        empty_because: None,
        in_words: String::new(),
    };
    let text = String::from_utf8(curve_csv(&figure, &[], Units::METRIC).unwrap()).unwrap();
    let heading = "at,\"so-called \"\"mean\"\", of two\",event (what is done or happens here),\"notice (what this is, and the serious warnings)\"";
    assert_eq!(text, format!("{heading}\r\n0,0.5,,\"{FROM_A_MODEL}\"\r\n1,,,\r\n"));
}

#[test]
fn every_point_of_every_curve_comes_back_with_units_in_the_headings() {
    let batch = batch(&Design::default()).unwrap();
    for key in CurveKey::ALL {
        let figure = curve(&batch, key);
        let (headings, records) = read(&curve_csv(&figure, &[], Units::METRIC).unwrap());
        let table = every_point(&figure);
        let mut others: Vec<&str> = headings.iter().collect();
        assert!(others.pop().unwrap().starts_with("notice"));
        let event = others.pop().unwrap();
        assert_eq!(
            (&others, event),
            (&table.headings.iter().map(String::as_str).collect::<Vec<_>>(), "event (what is done or happens here)")
        );
        assert!(headings[0].ends_with(figure.x.unit) && headings[1].ends_with(figure.y.unit), "{headings:?}");
        let longest = figure.series.iter().map(|series| series.points.len()).max().unwrap();
        assert!(records.len() >= longest && longest > 12, "{key:?}: {} rows of {longest} points", records.len());
        let back: Vec<Vec<Option<f64>>> =
            records.iter().map(|record| record.iter().take(others.len()).map(|field| field.parse().ok()).collect()).collect();
        assert_eq!(back, table.rows, "{key:?}");
        // Each event stands once, at its time, and nothing else stands in its column.
        let found: Vec<(f64, String)> = records
            .iter()
            .filter(|record| !record[others.len()].is_empty())
            .flat_map(|record| {
                record[others.len()].split("; ").map(|name| (record[0].parse().unwrap(), name.to_owned())).collect::<Vec<_>>()
            })
            .collect();
        let mut wanted: Vec<(f64, String)> = figure.events.iter().map(|event| (event.at, event.name.to_owned())).collect();
        wanted.sort_by(|one, other| one.0.total_cmp(&other.0));
        assert_eq!(found, wanted, "{key:?}");
    }
}

#[test]
fn a_curve_that_is_not_there_is_refused_with_the_reason() {
    let error = curve_csv(&curve(&sample::failed(), CurveKey::DryingLoss), &[], Units::METRIC).unwrap_err();
    assert!(matches!(error, ExportError::NoCurve { title: "Drying loss", .. }), "{error}");
    assert!(error.to_string().ends_with(": waits for “Milk”"), "{error}");
}

#[test]
fn the_json_is_one_that_another_reader_reads_and_has_every_figure() {
    let batch = batch(&Design::default()).unwrap();
    let read: serde_json::Value = serde_json::from_str(&json(&batch)).unwrap();
    for figure in figures(&batch) {
        assert!(!read[figure.stage.key()][figure.key].is_null(), "{}", figure.key);
    }
    assert_eq!(read["cautions"].as_array().unwrap().len(), cautions(&batch).len());
}

/// A table without its cautions would be a table of bare promises: they are rows, or a column of their own, never a comment.
#[test]
fn both_tables_say_what_they_are_and_hold_every_serious_warning() {
    let batch = batch(&Design::default()).unwrap();
    let serious = serious_warnings(&batch);
    assert!(!serious.is_empty());
    let (_, rows) = read(&figures_csv(&batch).unwrap());
    assert_eq!((&rows[0][1], &rows[0][7]), ("notice", FROM_A_MODEL));
    for (row, warning) in rows[1..].iter().zip(&serious) {
        assert_eq!((&row[1], &row[2]), (warning.key, "Serious warning"));
        assert_eq!(format!("{}: {}", &row[2], &row[7]), caution_line(warning, Units::METRIC));
    }
    let of_germs = &rows[1 + serious.len()];
    assert_eq!((&of_germs[1], &of_germs[7]), ("notice_germs", POTENTIAL_GROWTH));
    for key in CurveKey::ALL {
        let (headings, rows) = read(&curve_csv(&curve(&batch, key), &serious, Units::METRIC).unwrap());
        let column: Vec<&str> = rows.iter().map(|row| &row[headings.len() - 1]).filter(|cell| !cell.is_empty()).collect();
        let wanted: Vec<String> = std::iter::once(FROM_A_MODEL.to_owned())
            .chain(serious.iter().map(|caution| caution_line(caution, Units::METRIC)))
            .chain((key == CurveKey::Germs).then(|| POTENTIAL_GROWTH.to_owned()))
            .collect();
        assert_eq!(column, wanted, "{key:?}");
    }
}

#[test]
fn a_curve_in_other_units_says_so_in_its_headings() {
    let batch = batch(&Design::default()).unwrap();
    let metric = curve(&batch, CurveKey::Warming);
    let shown = metric.clone().shown_in(Units::US);
    let (headings, records) = read(&curve_csv(&shown, &cautions(&batch), Units::US).unwrap());
    assert_eq!(&headings[1], "milk, °F");
    assert!(records.iter().all(|record| !record.iter().any(|cell| cell.contains("°C"))));
    // By hand: t_F = 1.8 t_C + 32.
    let [_, first_c] = metric.series[0].points[0];
    assert!((records[0][1].parse::<f64>().unwrap() - (1.8 * first_c + 32.0)).abs() < 1e-9);
    let days = Units { long_times: LongTimes::Days, ..Units::METRIC };
    let loss = curve(&batch, CurveKey::DryingLoss).shown_in(days);
    let (headings, _) = read(&curve_csv(&loss, &[], days).unwrap());
    assert_eq!(&headings[0], "drying time, d");
}
