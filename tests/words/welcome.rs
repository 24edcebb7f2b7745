//! What the tiles of the welcome say.

use vatsketch::analysis::Summary;
use vatsketch::caution::{PlanEnd, Severity};
use vatsketch::units::{Masses, Units};
use vatsketch::words::{tile_counts, tile_lines};

#[test]
fn a_tile_tells_cheeses_and_end_in_the_shown_units() {
    let summary = Summary {
        cheese_count: Some(12),
        dried_cheese_g: Some(54.4),
        end: Some(PlanEnd::Finished { at_h: 76.2 }),
        cautions: [0; 3],
    };
    assert_eq!(tile_lines(&summary, Units::METRIC), ["12 cheeses of 54 g", "finished after 3 days 4 h"]);
    let one = Summary { cheese_count: Some(1), ..summary.clone() };
    assert_eq!(tile_lines(&one, Units::METRIC)[0], "1 cheese of 54 g");
    let pounds = Units { masses: Masses::Pounds, ..Units::METRIC };
    assert!(tile_lines(&summary, pounds)[0].ends_with(" oz"), "{:?}", tile_lines(&summary, pounds));
    assert!(tile_lines(&Summary::default(), Units::METRIC).is_empty(), "a batch that came nowhere");
}

#[test]
fn a_tile_counts_serious_warnings_before_cautions_and_no_notes() {
    let summary = Summary { cautions: [2, 1, 5], ..Summary::default() };
    let expected = [(Severity::Stop, "2 serious warnings".to_owned()), (Severity::Caution, "1 caution".to_owned())];
    assert_eq!(tile_counts(&summary), expected);
    assert!(tile_counts(&Summary { cautions: [0, 0, 3], ..Summary::default() }).is_empty());
}
