//! The plan on paper: seen, printed, saved.

pub(super) mod copying;
pub(super) mod file_name;
pub(super) mod jobs;
pub(super) mod note;
pub(super) mod page;
pub(super) mod preview;
pub(super) mod printing;
pub(super) mod saving;
