//! What the window remembers, and what its parts ask for: data alone.

pub(super) mod ask;
pub(super) mod card;
pub(super) mod cut;
pub(super) mod draft;
pub(super) mod help;
pub(super) mod log_view;
pub(super) mod pages;
pub(super) mod view;
