//! The page of the log: the batches beside the design, what comes next, what is written down of one, and what was off.

pub(super) mod across;
pub(super) mod batches;
pub(super) mod beside;
pub(super) mod desk;
pub(super) mod entry;
pub(super) mod fields;
pub(super) mod import;
pub(super) mod kitchen;
pub(super) mod kitchen_found;
pub(super) mod next;
pub(super) mod page;
pub(super) mod shown;
