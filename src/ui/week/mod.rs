//! The week: when, its picture and its list.

pub(super) mod desk;
pub(super) mod hours;
pub(super) mod label;
pub(super) mod line;
pub(super) mod list;
pub(super) mod page;
pub(super) mod start;
pub(super) mod when;
