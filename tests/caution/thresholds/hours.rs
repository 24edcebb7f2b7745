//! Hours and days that add up over the stages.

use super::{Row, hold};
use vatsketch::caution::Severity::{Caution, Stop};

pub(super) const ROWS: &[Row] = &[
    Row {
        name: "vat and moulds above 21 °C, though the room is at 16 °C",
        set: &["turn_count=3", "turn_gap_h=6", "drying_h=0"],
        there: &[("warm_draining", Caution), ("warm_in_all", Stop)],
        gone: &[],
        why: "chapter 2, section 6: the first hours of draining are warm whatever the room; from 35 to 21 in air of 16 takes ln(19/5) = 1.3 time constants of 2.2 h or more: 3 to 4 h, with 1.6 h of the vat more than the 4 h of chapter 3, section 11. The caution about 16 °C takes no hour off the sum",
    },
    Row {
        name: "20 h at 16 °C and 14 h at 20 °C",
        set: &["turn_count=4", "turn_gap_h=4", "drying_h=14", "cabinet_temperature_c=20"],
        there: &[("warm_draining", Caution), ("cool_for_days", Stop)],
        gone: &["warm_drying"],
        why: "chapter 3, section 11: rules of time are cumulative; 5 gaps · 4 h, less 4 h above 21 °C, and 14 h are 30 h between 7 and 21 °C, more than the 24 of the record",
    },
    Row {
        name: "a year at pH 6.25, bare",
        set: &["unmoulded_ph_from=measured", "unmoulded_ph=6.25", "pickled=no", "kept_in=bare", "keeping_days=365"],
        there: &[("needs_cold", Caution), ("germs_could_grow:keeping", Caution), ("kept_long", Stop)],
        gone: &[],
        why: "record (Food Code 3-501.17, from memory): 7 days for food that needs the cold, which chapter 3, section 5, table B says of pH 4.2 and more; below the pH of any cheese without acid, but far from 4.6",
    },
    Row {
        name: "a year at pH 4.5, bare",
        set: &["unmoulded_ph_from=measured", "unmoulded_ph=4.5", "pickled=no", "kept_in=bare", "keeping_days=365"],
        there: &[],
        gone: &["kept_long"],
        why: "acidified food (Title 21, part 114, chapter 3, section 5: pH 4.6 or less): its days are judged by the growth of germs, as chapter 4 asks of soured cheese",
    },
];

#[test]
fn hours_and_days_add_up_over_the_stages() {
    hold(ROWS);
}
