//! Save files: frozen types per format, errors that help, writing without loss.

mod address;
mod alike;
mod design_file;
mod error;
mod frozen;
mod kitchen;
mod log;
mod place;
mod probe_table;
mod read;
mod saved_id;
mod stamp;
mod temporary;
mod texts;
mod v1;
mod v2;
mod v3;
mod v4;
mod v5;
mod v6;
mod v7;
mod wording;
mod write;

pub use address::path_of_address;
pub use design_file::DesignFile;
pub use error::FileError;
pub use kitchen::{kitchen_from_text, kitchen_to_text, read_kitchen};
pub use log::{LogFile, LostLine, WhyLost};
pub use probe_table::read_table;
pub use read::{MOST_BYTES, from_text, read, to_text};
pub use stamp::{Stamp, stamp};
use temporary::with_ending;
pub use texts::{MOST_NOTE, MOST_TITLE, check_texts};
pub use write::{is_pipe_or_device, write_safely};
