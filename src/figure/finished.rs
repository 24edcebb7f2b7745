//! When the plan ends.

use super::figure::Figure;
use crate::batch::{Batch, soaked_min};
use crate::design::{Stage, Unit};

const SUM: &str =
    "sum of warming, setting, draining, drying and vinegar, whatever the hours of the day; the plan moves it to the maker's hours";

/// Returns the hours until the plan ends, if the batch came so far. Whether the cheeses are sour by then is for [`crate::caution::plan_end`].
pub(super) fn figures(batch: &Batch) -> Option<Figure> {
    let hours = soaked_min(batch)? / 60.0;
    Some(Figure::number(Stage::Keeping, "finished_h", "Plan ends after", hours, Unit::Hour, 0, SUM))
}
