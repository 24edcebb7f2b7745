//! What really happened, as plain data: what can be written down, entries, and the batch that they belong to. No clock, no file.

mod anchor;
mod batch_record;
mod csv_text;
mod dates;
mod entry;
mod error;
mod import;
mod kind;
mod kinds;
mod log;
mod moment;
mod reading;

pub use anchor::Anchor;
pub use batch_record::BatchRecord;
pub use dates::{DateError, DateOrder};
pub use entry::{Entry, EntryValue, MOST_WORDS};
pub use error::RecordError;
pub use import::{Import, ImportError, Imported, ReadLine, RefusedLine, import};
pub use kind::{Beside, Holds, Line};
pub use kinds::{EntryKind, KindRow};
pub use log::{Additions, Log};
pub use moment::{log_moment, read_log_moment};
pub use reading::{
    CLOCK_SPREAD, CONSTANTS, DRIP_END_KNOWN, FITS_BADLY, LEARNED_FROM, LEARNED_RANGES_WIDER, MARKED_CHEESE_DEVIATION,
    READING_DEVIATION, READINGS_BELIEVED, SHARED_DEVIATION, TOLD_FROM, WHEY_CAUGHT_DEVIATION,
};
