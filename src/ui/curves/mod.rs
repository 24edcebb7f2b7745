//! The curves, and the cut through a cheese.

mod crosshair;
pub(super) mod cut;
pub(super) mod germs_foot;
mod handles;
pub(super) mod heading;
pub(super) mod labels;
pub(super) mod page;
pub(super) mod plot;
pub(super) mod plotted;
pub(super) mod tables;
mod vessel;
