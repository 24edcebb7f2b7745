//! Vatsketch calculates a vat of small fresh rennet cheeses before anything is bought.
//!
//! The house, from what the maker chooses to what the maker sees:
//!
//! [`design`] (what the maker chooses) → [`process`] (milk, vat, draining, salting, drying; each a function)
//! → [`batch`] (all stages in order, mass balance, cautions) → [`mod@plan`] (the week, what to buy), [`figure`] and [`report`] (as data)
//! → [`export`] (bytes), [`cli`] and `ui` (the window). [`session`] holds the open design and its undo list, [`mod@file`] reads and writes it.
//! [`record`] is what really happened, as the maker wrote it down.
//!
//! [`law`] holds the laws that every stage shares, [`numeric`] the mathematics, [`source`] where each number comes from.
//! A test reads the `use` lines and holds every folder to what it may import.

pub mod analysis;
pub mod batch;
pub mod caution;
pub mod cli;
pub mod curve;
pub mod design;
pub mod export;
pub mod figure;
pub mod file;
pub mod kitchen;
pub mod law;
pub mod numeric;
pub mod plan;
pub mod process;
pub mod record;
pub mod report;
pub mod session;
pub mod source;
#[cfg(feature = "gui")]
pub mod ui;
pub mod units;
pub mod words;
