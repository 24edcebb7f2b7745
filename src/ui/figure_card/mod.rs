//! The card of one figure.

pub(super) mod aim_form;
pub(super) mod card;
pub(super) mod known;
pub(super) mod sensitivity;
pub(super) mod ways;
