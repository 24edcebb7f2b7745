//! The table of a probe, looked at before it is written down.

use jiff::civil::date;
use jiff::tz::TimeZone;
use vatsketch::plan::Now;
use vatsketch::record::EntryKind;
use vatsketch::session::{Logbook, ProbeImport, ProbeWish};

const TABLE: &str = "Time;Milk;Bath\n09.05.2031 08:00;8,5;52\n09.05.2031 08:10;17,0;49\n09.05.2031 08:20;lost;47\n";

#[test]
fn a_table_is_read_again_in_another_way_and_written_down_once() {
    let folder = tempfile::tempdir().unwrap();
    let (design, table) = (folder.path().join("may.vat.ron"), folder.path().join("probe.csv"));
    std::fs::write(&table, TABLE).unwrap();
    let mut book = Logbook::open(&design).unwrap();
    book.begin("", &Now { at: date(2031, 5, 9).at(7, 0, 0, 0), zone: TimeZone::UTC }, &crate::example("warm-cabinet"), None)
        .unwrap();
    let mut import = ProbeImport::read(&table, book.chosen().unwrap(), TimeZone::UTC).unwrap();
    let values = |import: &ProbeImport| import.found().unwrap().0.read.iter().map(|line| line.value).collect::<Vec<_>>();
    assert_eq!(values(&import), [8.5, 17.0]);
    assert_eq!(import.found().unwrap().0.refused[0].line, 4);

    let bath = ProbeWish { kind: EntryKind::BathTemperature, value: "bath".to_owned(), ..import.wish().clone() };
    import.read_as(bath, book.chosen().unwrap());
    assert_eq!(values(&import), [52.0, 49.0, 47.0]);

    let nowhere = ProbeWish { value: "curd".to_owned(), ..import.wish().clone() };
    import.read_as(nowhere.clone(), book.chosen().unwrap());
    assert!(import.found().unwrap_err().to_string().contains("Milk"), "the columns are named");

    import.read_as(ProbeWish { value: "3".to_owned(), ..nowhere }, book.chosen().unwrap());
    let lines = import.found().unwrap().0.read.clone();
    assert_eq!(book.enter_table(EntryKind::BathTemperature, &lines).unwrap(), 3);
    let again = ProbeImport::read(&table, book.chosen().unwrap(), TimeZone::UTC).map(|mut again| {
        again.read_as(import.wish().clone(), book.chosen().unwrap());
        again
    });
    assert_eq!(again.unwrap().found().map(|(imported, known)| (imported.read.len(), known)).unwrap(), (0, 3));
    assert_eq!(Logbook::open(&design).unwrap().chosen().unwrap().of_kind(EntryKind::BathTemperature).len(), 3);
}

#[test]
fn a_file_that_is_not_there_is_named() {
    let book = Logbook::example().unwrap();
    let error = ProbeImport::read("no/such.csv".as_ref(), book.chosen().unwrap(), TimeZone::UTC).unwrap_err();
    assert!(error.to_string().contains("no/such.csv"));
}
