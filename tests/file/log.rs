//! The log as a file: what is in it is never lost, whatever happens while it is written.

use crate::record::{at, begun, done, numbers};
use proptest::prelude::*;
use std::path::Path;
use vatsketch::file::{FileError, LogFile, WhyLost};
use vatsketch::record::{EntryKind, EntryValue, Log};

/// Writes a log into a new file, entry by entry, and returns its bytes.
fn written(path: &Path) -> Vec<u8> {
    let mut file = LogFile::of(begun("small-vat"));
    file.append(path).unwrap();
    for (hour, number) in [(10, 20.0), (11, 30.0), (12, 35.0)] {
        numbers(&mut file.log, EntryKind::MilkTemperature, &[(at(5, hour, 0), number)]);
        file.append(path).unwrap();
    }
    file.log
        .enter(1, at(5, 13, 0), EntryKind::Note, EntryValue::Words("two\nlines, \"quoted\" // and ümlauts".to_owned()))
        .unwrap();
    file.log.correct(2, None, EntryValue::Number(31.0)).unwrap();
    done(&mut file.log, EntryKind::RennetAdded, at(5, 13, 5));
    file.append(path).unwrap();
    std::fs::read(path).unwrap()
}

/// Returns a folder with a file called `a.log.ron` that holds some bytes.
fn holding(bytes: &[u8]) -> (tempfile::TempDir, std::path::PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.log.ron");
    std::fs::write(&path, bytes).unwrap();
    (folder, path)
}

fn whole() -> (Log, Vec<u8>) {
    let folder = tempfile::tempdir().unwrap();
    let bytes = written(&folder.path().join("a.log.ron"));
    let read = LogFile::from_bytes(&bytes).unwrap();
    assert!(read.lost.is_empty(), "{:?}", read.lost);
    (read.log, bytes)
}

#[test]
fn what_was_written_is_read_again() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a.log.ron");
    let bytes = written(&path);
    let read = LogFile::read(&path).unwrap();
    let batch = read.log.batch(1).unwrap();
    assert_eq!(batch.design, crate::example("small-vat"));
    let values: Vec<_> = batch.of_kind(EntryKind::MilkTemperature).iter().map(|entry| entry.amount().unwrap()).collect();
    assert_eq!(values, [20.0, 31.0, 35.0]);
    assert_eq!(batch.latest(EntryKind::Note).unwrap().value, EntryValue::Words("two\nlines, \"quoted\" // and ümlauts".to_owned()));
    assert_eq!(String::from_utf8(bytes).unwrap().lines().count(), 8, "one line each");
}

/// ISO 3309 has the check of the nine figures 1 to 9 as CBF43926.
#[test]
fn each_line_carries_the_check_that_other_programs_know() {
    assert_eq!(format!("{:08X}", crc32fast::hash(b"123456789")), "CBF43926");
    let (_, bytes) = whole();
    for line in String::from_utf8(bytes).unwrap().lines() {
        let (body, check) = line.rsplit_once(" // ").unwrap();
        assert_eq!(check, format!("{:08x}", crc32fast::hash(body.as_bytes())));
        assert!(ron::from_str::<ron::Value>(body).is_ok() || body.starts_with("batch("), "{body} is no RON");
    }
}

/// A kill at any moment: the file ends anywhere, and all lines before are there.
#[test]
fn cut_at_every_byte_it_opens_up_to_the_last_whole_line_and_says_what_is_lost() {
    let (all, bytes) = whole();
    let entries: Vec<_> = all.batches[0].entries.clone();
    for end in 0..=bytes.len() {
        let cut = &bytes[..end];
        let read = LogFile::from_bytes(cut).unwrap_or_else(|error| panic!("cut at {end}: {error}"));
        let lines = cut.split(|byte| *byte == b'\n').filter(|line| !line.is_empty());
        // The last line is whole as soon as its check is, with or without its end.
        let good = lines.filter(|line| bytes.split(|byte| *byte == b'\n').any(|whole| whole == *line)).count();
        let kept: Vec<_> = read.log.batches.iter().flat_map(|batch| batch.entries.clone()).collect();
        assert_eq!(kept, entries[..good.saturating_sub(2)], "cut at {end}");
        assert_eq!(read.log.batches.len(), usize::from(good > 1), "cut at {end}");
        let half = !cut.is_empty() && !cut.ends_with(b"\n") && good < cut.split(|byte| *byte == b'\n').count();
        assert_eq!(read.lost.len(), usize::from(half), "cut at {end}: {:?}", read.lost);
        assert!(read.lost.iter().all(|lost| lost.why == WhyLost::CutShort && lost.in_words().contains("cut short")));
    }
}

#[test]
fn after_a_cut_the_next_entry_is_written_and_the_broken_file_is_kept() {
    let (_, bytes) = whole();
    for end in [bytes.len() - 3, bytes.len() - 40, bytes.len() - 1] {
        let (folder, path) = holding(&bytes[..end]);
        let mut read = LogFile::read(&path).unwrap();
        let (kept, broken) = (read.log.batches[0].entries.len(), !read.lost.is_empty());
        numbers(&mut read.log, EntryKind::MilkTemperature, &[(at(5, 14, 0), 36.0)]);
        let copy = read.append(&path).unwrap();
        assert_eq!(copy.is_some(), broken, "cut at {end}");
        if let Some(copy) = copy {
            assert_eq!(std::fs::read(&copy).unwrap(), &bytes[..end]);
            assert_eq!(copy, folder.path().join("a.log.ron.broken"));
        }
        let again = LogFile::read(&path).unwrap();
        assert!(again.lost.is_empty(), "{:?}", again.lost);
        assert_eq!(again.log.batches[0].entries.len(), kept + 1);
        assert_eq!(again.log.batches[0].entries, read.log.batches[0].entries);
    }
}

#[test]
fn a_line_that_was_changed_is_told_and_all_others_are_read() {
    let (all, bytes) = whole();
    let text = String::from_utf8(bytes).unwrap().replace("number(35.0)", "number(85.0)");
    let (_folder, path) = holding(text.as_bytes());
    let mut read = LogFile::read(&path).unwrap();
    let said: Vec<String> = read.lost.iter().map(vatsketch::file::LostLine::in_words).collect();
    assert!(said[0].starts_with("Line 5 of the log was damaged") && said[0].contains("number(85.0)"), "{said:?}");
    assert!(said[1].contains("entry 3"), "{said:?}");
    assert_eq!(read.log.batches[0].entries.len(), all.batches[0].entries.len() - 1);
    // Once it is mended, what is lost was told once, and its number is not given again.
    done(&mut read.log, EntryKind::CurdCut, at(5, 14, 0));
    assert!(read.append(&path).unwrap().is_some());
    let again = LogFile::read(&path).unwrap();
    assert!(again.lost.is_empty(), "{:?}", again.lost);
    assert_eq!(again.log.batches[0].entries.last().unwrap().number, all.batches[0].entries.last().unwrap().number + 1);
}

#[test]
fn entries_of_a_batch_whose_line_is_lost_are_told_and_another_batch_gets_another_number() {
    let (_, bytes) = whole();
    let text = String::from_utf8(bytes).unwrap().replace("batch(number:1,", "batch(number:9,");
    let (_folder, path) = holding(text.as_bytes());
    let mut read = LogFile::read(&path).unwrap();
    assert!(read.log.batches.is_empty());
    assert!(read.lost.iter().any(|lost| lost.why == WhyLost::NoBatch(1)), "{:?}", read.lost);
    assert_eq!(read.log.begin("", at(9, 9, 0), crate::example("small-vat"), None), 2);
    assert_eq!(read.log.enter(2, at(9, 9, 0), EntryKind::WarmingBegan, EntryValue::Done), Ok(7));
    read.append(&path).unwrap();
    let again = LogFile::read(&path).unwrap();
    assert!(again.lost.is_empty(), "{:?}", again.lost);
    assert_eq!((again.log.batches.len(), again.log.batches[0].number, again.log.batches[0].entries.len()), (1, 2, 1));
}

#[test]
fn what_another_version_wrote_stays_in_its_place() {
    let (_, mut bytes) = whole();
    let body = "entry(number:7,batch:1,at:\"2031-05-05 15:00\",kind:\"moon\",value:number(1.0),corrects:None)";
    let line = format!("{body} // {:08x}\n", crc32fast::hash(body.as_bytes()));
    bytes.extend(line.bytes());
    let (_folder, path) = holding(&bytes);
    let mut read = LogFile::read(&path).unwrap();
    assert!(read.lost[0].in_words().contains("no entries called `moon`"), "{:?}", read.lost);
    done(&mut read.log, EntryKind::CurdCut, at(5, 16, 0));
    assert_eq!(read.append(&path).unwrap(), None, "nothing is broken, so nothing is mended");
    let text = std::fs::read_to_string(&path).unwrap();
    assert!(text.contains(&line) && text.contains("entry(number:8,"), "{text}");
}

#[test]
fn a_log_that_another_program_changed_is_not_written_to() {
    let (_, bytes) = whole();
    let (_folder, path) = holding(&bytes);
    let (mut one, mut other) = (LogFile::read(&path).unwrap(), LogFile::read(&path).unwrap());
    done(&mut one.log, EntryKind::CurdCut, at(5, 14, 0));
    one.append(&path).unwrap();
    let after = std::fs::read(&path).unwrap();
    done(&mut other.log, EntryKind::CurdCut, at(5, 14, 5));
    assert!(matches!(other.append(&path).unwrap_err().cause(), FileError::LogChanged));
    assert_eq!(std::fs::read(&path).unwrap(), after);
    // One that is read again may write.
    let mut again = LogFile::read(&path).unwrap();
    done(&mut again.log, EntryKind::CleanBreak, at(5, 14, 5));
    again.append(&path).unwrap();
    let began = LogFile::of(begun("small-vat")).append(&path);
    assert!(matches!(began.unwrap_err().cause(), FileError::LogChanged), "a new log does not take the place of one");
}

#[cfg(unix)]
#[test]
fn while_another_program_writes_nothing_is_written() {
    let (_, bytes) = whole();
    let (_folder, path) = holding(&bytes);
    let held = std::fs::OpenOptions::new().append(true).open(&path).unwrap();
    held.lock().unwrap();
    let mut read = LogFile::read(&path).unwrap();
    done(&mut read.log, EntryKind::CurdCut, at(5, 14, 0));
    assert!(matches!(read.append(&path).unwrap_err().cause(), FileError::LogInUse));
    assert_eq!(std::fs::read(&path).unwrap(), bytes);
    drop(held);
    read.append(&path).unwrap();
    assert!(std::fs::read(&path).unwrap().starts_with(&bytes), "nothing that was there is touched");
}

#[test]
fn what_is_no_log_and_what_is_of_a_later_format_is_refused() {
    let design = std::fs::read(format!("{}/resources/examples/first-vat.vat.ron", env!("CARGO_MANIFEST_DIR"))).unwrap();
    for bytes in [&design[..], b"%PDF-1.7", &[0, 255, 254, 10]] {
        assert!(matches!(LogFile::from_bytes(bytes), Err(FileError::NotALog)));
    }
    let later = format!("log(format:2) // {:08x}\n", crc32fast::hash(b"log(format:2)"));
    assert!(matches!(LogFile::from_bytes(later.as_bytes()), Err(FileError::LogTooNew { found: 2, newest: 1 })));
    assert!(LogFile::from_bytes(b"").unwrap().log.batches.is_empty(), "killed while it was made");
}

/// The first version of the format, kept for ever.
#[test]
fn the_saved_log_of_format_one_means_what_it_meant() {
    let path = format!("{}/tests/saved/log-1.log.ron", env!("CARGO_MANIFEST_DIR"));
    let read = LogFile::read(path.as_ref()).unwrap();
    assert!(read.lost.is_empty(), "{:?}", read.lost);
    let batch = read.log.batch(1).unwrap();
    assert_eq!((batch.title().as_str(), batch.begun), ("batch 1, the saved one", at(5, 9, 0)));
    assert_eq!((batch.design.title.as_str(), batch.design.milk.milk_l), ("Two litres", 2.0));
    assert_eq!(batch.design_id.unwrap().to_string(), "97e4b20c-a516-4d3f-9be8-04c8f1a2d765");
    assert_eq!(batch.latest(EntryKind::MilkTemperature).unwrap().amount(), Some(34.25));
    assert_eq!(batch.latest(EntryKind::MilkTemperature).unwrap().at, at(5, 10, 0).with().second(30).build().unwrap());
    assert_eq!(batch.latest(EntryKind::Taste).unwrap().value, EntryValue::Words("mild, a little salty".to_owned()));
    assert!(batch.latest(EntryKind::CurdCut).is_none() && batch.entries.len() == 6, "one was taken back");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// Whatever happens to one byte, one line at most is lost, it is told, and no number of another is changed.
    #[test]
    fn a_byte_that_is_changed_costs_one_line_at_most(place in any::<prop::sample::Index>(), with in any::<u8>()) {
        let (all, mut bytes) = whole();
        let at = place.index(bytes.len());
        prop_assume!(bytes[at] != with);
        // Two lines may become one, or one two, where the end of a line is hit.
        let ends = bytes[at] == b'\n' || with == b'\n';
        bytes[at] = with;
        let read = LogFile::from_bytes(&bytes).unwrap();
        let known = &all.batches[0].entries;
        let kept: Vec<_> = read.log.batches.iter().flat_map(|batch| batch.entries.clone()).collect();
        prop_assert!(kept.iter().all(|entry| known.contains(entry)));
        let lost = known.len() - kept.len();
        prop_assert!(lost <= 1 + usize::from(ends) || read.log.batches.is_empty());
        prop_assert!(lost == 0 || !read.lost.is_empty());
    }
}
