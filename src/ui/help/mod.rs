//! What explains the program: the welcome, the guide, the words, what is new.

pub(super) mod card;
pub(super) mod changes;
pub(super) mod guide;
pub(super) mod picture;
pub(super) mod tile;
pub(super) mod welcome;
pub(super) mod words;
