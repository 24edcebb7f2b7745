//! What is at home, and what to buy.

pub(super) mod amounts;
pub(super) mod bought;
pub(super) mod good;
pub(super) mod page;
