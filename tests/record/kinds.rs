//! The table of what can be written down.

use std::collections::BTreeSet;
use vatsketch::analysis::inputs_of;
use vatsketch::batch::batch;
use vatsketch::design::field;
use vatsketch::figure::figures;
use vatsketch::record::{Beside, EntryKind, Holds};
use vatsketch::session::EXAMPLES;

#[test]
fn each_key_is_there_once_and_ends_in_its_unit() {
    let keys: BTreeSet<&str> = EntryKind::ALL.iter().map(|kind| kind.key()).collect();
    assert_eq!(keys.len(), EntryKind::ALL.len());
    for kind in EntryKind::ALL {
        let row = kind.row();
        assert_eq!(EntryKind::from_key(row.key), Some(*kind));
        let ending = match row.holds.unit().symbol() {
            "" => continue,
            "°C" => "_c".to_owned(),
            "%" => "_percent".to_owned(),
            symbol => format!("_{}", symbol.to_lowercase()),
        };
        assert!(row.key.ends_with(&ending), "{} holds {}", row.key, row.holds.unit().symbol());
        // What paper asks for names the same unit.
        let symbol = row.holds.unit().symbol();
        assert!(row.blank.is_empty() || row.blank.contains(symbol), "{} asks for {}", row.key, row.blank);
    }
}

#[test]
fn a_range_holds_what_is_read_and_a_reading_is_finer_than_the_range() {
    for kind in EntryKind::ALL {
        if let Holds::Number { least, most, reads_to, .. } = kind.row().holds {
            assert!(least < most && reads_to > 0.0 && reads_to < most - least, "{}", kind.key());
        }
    }
}

/// A key that named nothing would lay nothing beside the plan, and nobody would notice.
#[test]
fn what_a_kind_is_laid_beside_is_there_in_some_design() {
    let mut known: BTreeSet<&str> = BTreeSet::new();
    for example in EXAMPLES {
        known.extend(figures(&batch(&example.design().unwrap()).unwrap()).iter().map(|figure| figure.key));
    }
    let mut lactone = crate::example("first-vat");
    lactone.milk.soured_by = vatsketch::design::SouredBy::Lactone;
    let mut acid = lactone.clone();
    acid.milk.soured_by = vatsketch::design::SouredBy::Acid;
    for design in [lactone, acid] {
        known.extend(figures(&batch(&design).unwrap()).iter().map(|figure| figure.key));
    }
    for kind in EntryKind::ALL {
        match kind.row().beside {
            Beside::Figure(key) | Beside::Minutes(_, key) => {
                assert!(known.contains(key), "{} is laid beside {key}", kind.key());
                assert!(!inputs_of(key).is_empty(), "{key} rests on no choice");
            }
            Beside::Choice(key) => assert!(field(key).is_ok(), "{} is laid beside {key}", kind.key()),
            Beside::Line(_) => assert!(matches!(kind.row().holds, Holds::Number { .. }), "{}", kind.key()),
            Beside::Nothing => {}
        }
        let is_minutes = matches!(kind.row().beside, Beside::Minutes(..));
        assert!(!is_minutes || kind.row().holds == Holds::Done, "{} counts minutes and is not a time", kind.key());
    }
}
