//! Save files: frozen types per format, errors that help, writing without loss.

mod error;
mod frozen;
mod read;
mod stamp;
mod v1;
mod v2;
mod wording;
mod write;

pub use error::FileError;
pub use read::{MOST_BYTES, from_text, read};
pub use stamp::{Stamp, stamp};
pub use v2::{check_texts, to_text};
pub use write::write_safely;
