//! Parts that know nothing of the page they are on: colours, units, boxes, rails, pins.

pub(super) mod appearance;
pub(super) mod number_text;
pub(super) mod pin;
pub(super) mod rail;
pub(super) mod theme;
pub(super) mod typed_box;
pub(super) mod units;
