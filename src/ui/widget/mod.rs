//! Parts that know nothing of the page they are on: colours, boxes, sliders, pins.

pub(super) mod appearance;
pub(super) mod focus;
pub(super) mod limits;
pub(super) mod matter;
pub(super) mod menu;
pub(super) mod motion;
pub(super) mod number_text;
pub(super) mod pill;
pub(super) mod pin;
pub(super) mod record;
pub(super) mod reset;
pub(super) mod room;
pub(super) mod scroll;
pub(super) mod severity;
pub(super) mod slider;
pub(super) mod spelling;
pub(super) mod spoken;
pub(super) mod stepped;
pub(super) mod text_undo;
pub(super) mod theme;
pub(super) mod tick;
pub(super) mod tip;
pub(super) mod typed_box;
pub(super) mod typing;
