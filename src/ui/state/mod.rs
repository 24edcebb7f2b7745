//! What the window remembers, and what its parts ask for: data alone.

pub(super) mod ask;
pub(super) mod view;
