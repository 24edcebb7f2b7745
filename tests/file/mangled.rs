//! Every file that the program reads, with its bytes cut, doubled, exchanged and strange things written in: nothing breaks the reader, and what is read
//! is right. A few hundred of each here; `MANGLED=1000000 cargo test --release -- --ignored file::mangled` reads so many of each.

use jiff::tz::TimeZone;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use proptest::test_runner::{TestCaseError, TestRunner};
use vatsketch::file::{LogFile, from_text, kitchen_from_text, kitchen_to_text, to_text};
use vatsketch::record::{EntryKind, Import, import};
use vatsketch::session::Appearance;

/// What breaks readers of text: ends of numbers, brackets of every kind, signs that turn letters round, a mark of another encoding.
const STRANGE: [&[u8]; 24] = [
    b"NaN",
    b"-inf",
    b"1e999",
    b"-0.0",
    b"1e-320",
    b"18446744073709551616",
    b"-1",
    b"0x7f",
    b"Some(",
    b"None",
    b"((((((((",
    b"))))",
    b"[",
    b"{",
    b"\"",
    b"r#\"",
    b"/*",
    b"//",
    b"\\u{0}",
    b"\0",
    b"\xff\xfe",
    b"\xe2\x80\xae",
    b"\r\n",
    b";,\t",
];

/// What may stand in itself.
const NESTED: [&[u8]; 6] = [b"(", b"[", b"{", b"Some(", b"/*", b"\""];

/// One change of a file.
#[derive(Clone, Debug)]
enum Change {
    Cut(Index, usize),
    Double(Index, usize),
    Flip(Index, u8),
    Write(Index, &'static [u8]),
    /// A piece of another place.
    Move(Index, Index, usize),
    /// The same many times over, as deep as a program may have been written for.
    Nest(Index, &'static [u8], usize),
}

fn change() -> impl Strategy<Value = Change> {
    let piece = 1..200_usize;
    prop_oneof![
        (any::<Index>(), piece.clone()).prop_map(|(at, bytes)| Change::Cut(at, bytes)),
        (any::<Index>(), piece.clone()).prop_map(|(at, bytes)| Change::Double(at, bytes)),
        (any::<Index>(), any::<u8>()).prop_map(|(at, byte)| Change::Flip(at, byte)),
        (any::<Index>(), select(&STRANGE[..])).prop_map(|(at, what)| Change::Write(at, what)),
        (any::<Index>(), any::<Index>(), piece).prop_map(|(at, from, bytes)| Change::Move(at, from, bytes)),
        (any::<Index>(), select(&NESTED[..]), 1..20_000_usize).prop_map(|(at, what, times)| Change::Nest(at, what, times)),
    ]
}

impl Change {
    fn make(&self, bytes: &mut Vec<u8>) {
        let place = |at: &Index| at.index(bytes.len() + 1);
        let piece = |from: usize, count: usize| from..(from + count).min(bytes.len());
        let (at, gone, new) = match self {
            Self::Cut(at, count) => (place(at), piece(place(at), *count).len(), Vec::new()),
            Self::Double(at, count) => (place(at), 0, bytes[piece(place(at), *count)].to_vec()),
            Self::Flip(at, byte) => (place(at), piece(place(at), 1).len(), vec![*byte]),
            Self::Write(at, what) => (place(at), 0, what.to_vec()),
            Self::Move(at, from, count) => (place(at), 0, bytes[piece(place(from), *count)].to_vec()),
            Self::Nest(at, what, times) => (place(at), 0, what.repeat(*times)),
        };
        bytes.splice(at..at + gone, new);
    }
}

/// Has a reader read mangled files.
fn mangled(files: &[&str], cases: u32, read: impl Fn(&[u8]) -> Result<(), TestCaseError>) {
    let files: Vec<Vec<u8>> = files.iter().map(|file| file.as_bytes().to_vec()).collect();
    let mut runner = TestRunner::new(ProptestConfig { cases, failure_persistence: None, ..ProptestConfig::default() });
    let strategy = (select(files), proptest::collection::vec(change(), 1..6));
    runner
        .run(&strategy, |(mut bytes, changes)| {
            for change in changes {
                change.make(&mut bytes);
            }
            read(&bytes)
        })
        .unwrap();
}

/// Returns how many files of a kind are read in a long run.
fn many() -> u32 {
    std::env::var("MANGLED").ok().and_then(|many| many.parse().ok()).unwrap_or(10_000)
}

/// A text that is read has numbers within their bounds, and says the same when it is written and read again.
fn designs(cases: u32) {
    const FILES: [&str; 4] = [
        include_str!("../saved/1-short.vat.ron"),
        include_str!("../saved/3-open-air.vat.ron"),
        include_str!("../saved/7-own-carton.vat.ron"),
        include_str!("../saved/7-short.vat.ron"),
    ];
    mangled(&FILES, cases, |bytes| {
        if let Ok(design) = from_text(&String::from_utf8_lossy(bytes)) {
            prop_assert!(design.check().is_ok());
            prop_assert_eq!(from_text(&to_text(&design)).unwrap(), design);
        }
        Ok(())
    });
}

fn kitchens(cases: u32) {
    mangled(&[include_str!("../saved/kitchen-1.kitchen.ron")], cases, |bytes| {
        if let Ok(kitchen) = kitchen_from_text(&String::from_utf8_lossy(bytes)) {
            prop_assert_eq!(kitchen_from_text(&kitchen_to_text(&kitchen)).unwrap(), kitchen);
        }
        Ok(())
    });
}

/// Returns a log of which each line has the check that fits, as a program at fault might have written it.
fn with_checks(bytes: &[u8]) -> Vec<u8> {
    let line = |line: &[u8]| {
        let body = String::from_utf8_lossy(line);
        let body = body.rsplit_once(" // ").map_or(&*body, |(body, _)| body).to_owned();
        format!("{body} // {:08x}\n", crc32fast::hash(body.as_bytes())).into_bytes()
    };
    bytes.split(|byte| *byte == b'\n').flat_map(line).collect()
}

/// Of a log no line vanishes: it is read, or it is told as lost.
fn logs(cases: u32) {
    const LOG: &str = include_str!("../saved/log-1.log.ron");
    mangled(&[LOG], cases, |bytes| {
        for bytes in [bytes.to_vec(), with_checks(bytes)] {
            if let Ok(file) = LogFile::from_bytes(&bytes) {
                let entries: usize = file.log.batches.iter().map(|batch| 1 + batch.entries.len()).sum();
                prop_assert!(entries + file.lost.len() > 0 || bytes.len() < LOG.len());
                prop_assert_eq!(file.lost_words().len(), file.lost.len());
            }
        }
        Ok(())
    });
}

/// Of a probe's table every value is a number, and no line is both read and refused.
fn tables(cases: u32) {
    const FILES: [&str; 3] = [
        "Time;Probe 1\n09.05.2031 18:30;34,5\n09.05.2031 18:31;34,9\n09.05.2031 18:32;off\n",
        "No,Date,Time,Milk °F\n1,2031-05-09,18:30:00,95.1\n2,2031-05-09,18:31:00,\"95,3\"\n",
        "2031-05-09T18:30:00+02:00\t1.034,5 g\n2031-05-09T18:31:00Z\t1,034.5\n",
    ];
    let wanted = Import { kind: EntryKind::MilkTemperature, time: None, value: None, order: None, zone: TimeZone::UTC };
    mangled(&FILES, cases, |bytes| {
        if let Ok(table) = import(&String::from_utf8_lossy(bytes), &wanted) {
            prop_assert!(table.read.iter().all(|line| line.value.is_finite()));
            prop_assert!(table.refused.iter().all(|line| !line.why.is_empty()));
            prop_assert!(!table.refused.iter().any(|refused| table.read.iter().any(|read| read.line == refused.line)));
        }
        Ok(())
    });
}

fn looks(cases: u32) {
    let look = ron::to_string(&Appearance::default()).unwrap();
    mangled(&[&look, "(colours:Dark,size_percent:150,fahrenheit:true)"], cases, |bytes| {
        if let Ok(look) = ron::from_str::<Appearance>(&String::from_utf8_lossy(bytes)) {
            prop_assert_eq!(ron::from_str::<Appearance>(&ron::to_string(&look).unwrap()).unwrap(), look);
        }
        Ok(())
    });
}

#[test]
fn a_mangled_design_is_read_right_or_refused() {
    designs(300);
}

#[test]
fn a_mangled_kitchen_is_read_right_or_refused() {
    kitchens(300);
}

#[test]
fn a_mangled_log_loses_no_line_without_a_word() {
    logs(300);
}

#[test]
fn a_mangled_table_of_a_probe_gives_numbers_or_refuses_its_lines() {
    tables(300);
}

#[test]
fn a_mangled_look_is_read_or_refused() {
    looks(300);
}

#[test]
#[ignore = "reads as many files of each kind as MANGLED says"]
fn many_mangled_files_are_read_right_or_refused() {
    let kinds: [fn(u32); 5] = [designs, kitchens, logs, tables, looks];
    for kind in kinds {
        kind(many());
    }
}
