//! Reports as bytes.

#[cfg(feature = "paper")]
mod pdf;
#[cfg(feature = "paper")]
mod reader;
#[cfg(not(feature = "paper"))]
mod without_paper;
