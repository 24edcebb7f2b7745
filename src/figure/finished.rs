//! When the cheeses are finished.

use super::figure::Figure;
use crate::batch::{Batch, soaked_min};
use crate::design::{Stage, Unit};

const SUM: &str =
    "sum of warming, setting, draining, drying and vinegar, whatever the hours of the day; the plan moves it to the maker's hours";

/// Returns the hours until the cheeses are finished, if the batch came so far.
pub(super) fn figures(batch: &Batch) -> Option<Figure> {
    let hours = soaked_min(batch)? / 60.0;
    Some(Figure::number(Stage::Keeping, "finished_h", "Finished after", hours, Unit::Hour, 0, SUM))
}
