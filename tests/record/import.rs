//! Tables of probes, with what is wrong in them.

use super::{at, begun, numbers};
use jiff::tz::TimeZone;
use proptest::prelude::*;
use vatsketch::record::{EntryKind, Import, ImportError, Imported, import};

fn wanted(kind: EntryKind) -> Import<'static> {
    Import { kind, time: None, value: None, order: None, zone: TimeZone::UTC }
}

fn values(imported: &Imported) -> Vec<f64> {
    imported.read.iter().map(|line| line.value).collect()
}

#[test]
fn semicolons_tabs_and_commas_part_columns_and_a_decimal_comma_is_read() {
    for table in [
        "Time;Probe\n2031-05-09 18:30;34,5\n2031-05-09 18:31;1.034,5\n",
        "Time\tProbe\n2031-05-09 18:30\t34.5\n2031-05-09 18:31\t1,034.5\n",
        "Time,Probe\n2031-05-09 18:30,34.5 g\n2031-05-09 18:31,\"1 034,5\"\n",
    ] {
        assert_eq!(values(&import(table, &wanted(EntryKind::CheeseWeight)).unwrap()), [34.5, 1034.5], "{table}");
    }
}

#[test]
fn each_line_that_cannot_be_read_is_named_and_the_others_are_read() {
    let table = "Device 7\n\nTime;Probe\n2031-05-09 18:30;20\nnever;21\n2031-05-09 18:32;\n2031-05-09 18:33;off\n2031-05-09 18:34;400\n2031-05-09 18:35;22\n";
    let imported = import(table, &wanted(EntryKind::MilkTemperature)).unwrap();
    assert_eq!(values(&imported), [20.0, 22.0]);
    let refused: Vec<(u64, &str)> = imported.refused.iter().map(|line| (line.line, line.why.as_str())).collect();
    let said = [(5, "no date with a time"), (6, "there is no value"), (7, "“off” is no number"), (8, "between 0 and 100")];
    assert_eq!(refused.len(), said.len(), "{refused:?}");
    for ((line, why), (wanted_line, words)) in refused.iter().zip(said) {
        assert!(*line == wanted_line && why.contains(words), "{line}: {why}");
    }
}

/// 95 °F is 35 °C and 212 °F is 100 °C: NIST Handbook 44, appendix C.
#[test]
fn degrees_fahrenheit_that_are_called_so_become_degrees_celsius() {
    let table = "Time,Temp (°F)\n2031-05-09 18:30,95\n2031-05-09 18:31,212\n";
    let imported = import(table, &wanted(EntryKind::MilkTemperature)).unwrap();
    assert_eq!(values(&imported), [35.0, 100.0]);
    assert!(imported.understood.contains("°F made °C"), "{}", imported.understood);
    assert_eq!(values(&import(table, &wanted(EntryKind::CheeseWeight)).unwrap()), [95.0, 212.0], "a weight has no degrees");
}

#[test]
fn columns_are_found_by_themselves_by_heading_and_by_number() {
    let table = "No;Date;Time;Bath;Milk\n1;09.05.2031;18:30;40,5;20,5\n2;09.05.2031;18:31;40,5;21\n";
    assert_eq!(values(&import(table, &wanted(EntryKind::MilkTemperature)).unwrap()), [1.0, 2.0], "the first column of numbers");
    for column in ["milk", "5"] {
        let named = Import { value: Some(column), ..wanted(EntryKind::MilkTemperature) };
        let imported = import(table, &named).unwrap();
        assert_eq!(values(&imported), [20.5, 21.0]);
        assert_eq!(imported.read[1].at, at(9, 18, 31));
    }
    let missing = import(table, &Import { value: Some("whey"), ..wanted(EntryKind::MilkTemperature) });
    assert!(missing.unwrap_err().to_string().contains("No, Date, Time, Bath, Milk"));
    assert_eq!(import("a;b\n1;2\n", &wanted(EntryKind::MilkTemperature)), Err(ImportError::NoTimes));
    assert_eq!(import("a;b\n2031-05-09 18:30;x\n", &wanted(EntryKind::MilkTemperature)), Err(ImportError::NoValues));
    assert!(import("", &wanted(EntryKind::Note)).unwrap_err().to_string().contains("only numbers are imported"));
}

#[test]
fn lines_that_end_with_a_carriage_return_are_counted_too() {
    for end in ["\n", "\r\n", "\r"] {
        let table = ["Time;Probe", "2031-05-09 18:30;34,5", "2031-05-09 18:31;off", ""].join(end);
        let imported = import(&table, &wanted(EntryKind::MilkTemperature)).unwrap();
        assert_eq!((imported.read[0].line, imported.refused[0].line), (2, 3), "{end:?}");
    }
}

#[test]
fn a_table_that_was_read_before_adds_only_what_is_new() {
    let mut log = begun("small-vat");
    numbers(&mut log, EntryKind::MilkTemperature, &[(at(9, 18, 30), 20.0)]);
    let table = "2031-05-09 18:30;20\n2031-05-09 18:31;21\n";
    let mut imported = import(table, &wanted(EntryKind::MilkTemperature)).unwrap();
    assert_eq!(imported.leave_out_known(EntryKind::MilkTemperature, log.batch(1).unwrap()), 1);
    assert_eq!(values(&imported), [21.0]);
}

proptest! {
    /// Whatever is in a file, nothing breaks down, and every line that is not empty is read or refused once at most.
    #[test]
    fn any_text_is_read_or_refused(text in "[ -~\\n;,\\t°]{0,400}") {
        if let Ok(imported) = import(&text, &wanted(EntryKind::MilkTemperature)) {
            let mut lines: Vec<u64> = imported.read.iter().map(|line| line.line).chain(imported.refused.iter().map(|line| line.line)).collect();
            let all = lines.len();
            lines.sort_unstable();
            lines.dedup();
            prop_assert_eq!(lines.len(), all);
        }
    }
}
