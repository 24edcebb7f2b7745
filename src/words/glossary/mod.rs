//! The words that a maker may meet here for the first time, each explained once, with the words that are never used for the same thing.

mod exact;
mod find;
mod term;
mod trade;

pub use exact::EXACT_WORDS;
pub use find::{explained, terms, terms_with};
pub use term::Term;
pub use trade::TRADE_WORDS;
