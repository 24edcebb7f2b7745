//! All batches of a log beside each other.

use vatsketch::export::batches_csv;
use vatsketch::report::{BATCH_COLUMNS, batch_lines};
use vatsketch::session::Logbook;

#[test]
fn the_invented_log_reads_as_it_was_written() {
    let book = Logbook::example().unwrap();
    let lines = batch_lines(book.batches(), "");
    assert_eq!(lines.iter().map(|line| line.number).collect::<Vec<_>>(), [3, 2, 1], "the newest first");
    // What its file says of the first batch: rennet at 11:06, clean break at 11:52, 102 g at first and 81 g at last.
    let of = |key: &str| lines[2].numbers[BATCH_COLUMNS.iter().position(|column| column.key == key).unwrap()];
    assert_eq!(of("milk_l"), Some(5.04));
    assert_eq!(of("clean_break_min"), Some(46.0));
    assert_eq!((of("first_cheese_g"), of("last_cheese_g")), (Some(102.0), Some(81.0)));
    assert!((of("lost_percent").unwrap() - 100.0 * 21.0 / 102.0).abs() < 1e-9);
    assert_eq!((of("centre_ph"), of("blended_ph")), (Some(3.85), Some(3.6)));
    assert_eq!(lines[2].weights.len(), 5);
    assert_eq!(lines[2].centre.len(), 2);
}

#[test]
fn every_word_of_a_search_has_to_be_found_wherever_it_stands() {
    let book = Logbook::example().unwrap();
    let found = |search: &str| batch_lines(book.batches(), search).iter().map(|line| line.number).collect::<Vec<_>>();
    assert_eq!(found("RENNET"), [3], "of a name");
    assert_eq!(found("2031-05-12"), [2], "of a day");
    assert_eq!(found("invented longer"), [2], "both words");
    assert!(found("invented nowhere").is_empty());
}

/// RFC 4180: one record a line, ended by CR LF, with as many fields as headings.
#[test]
fn a_table_for_a_spreadsheet_has_every_batch_and_every_column() {
    let book = Logbook::example().unwrap();
    let bytes = batches_csv(&batch_lines(book.batches(), "")).unwrap();
    let mut table = csv::Reader::from_reader(&bytes[..]);
    let heads = table.headers().unwrap().clone();
    assert_eq!(heads.len(), 5 + BATCH_COLUMNS.len());
    let rows: Vec<_> = table.records().map(Result::unwrap).collect();
    assert_eq!(rows.len(), 3);
    assert_eq!(rows[2].get(heads.iter().position(|head| head == "milk_l").unwrap()), Some("5.04"));
}
