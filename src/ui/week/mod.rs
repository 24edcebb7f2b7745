//! The week: when, its picture and its list.

pub(super) mod drag;
pub(super) mod hours;
pub(super) mod kept;
pub(super) mod label;
pub(super) mod line;
pub(super) mod list;
pub(super) mod page;
pub(super) mod start;
pub(super) mod track;
pub(super) mod when;
pub(super) mod wish;
