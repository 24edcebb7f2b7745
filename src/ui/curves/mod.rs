//! The curves, and the cut through a cheese.

pub(super) mod cut;
pub(super) mod labels;
pub(super) mod page;
pub(super) mod plot;
pub(super) mod plotted;
