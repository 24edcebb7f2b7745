//! Reports as bytes.

#[cfg(feature = "paper")]
mod boxes;
mod calendar;
mod calendar_words;
mod cancelled;
#[cfg(feature = "paper")]
mod comparison;
#[cfg(feature = "paper")]
mod curve;
mod html;
#[cfg(feature = "paper")]
mod pages;
#[cfg(feature = "paper")]
mod pdf;
#[cfg(feature = "paper")]
mod reader;
#[cfg(feature = "paper")]
mod sheets;
mod tables;
mod text;
#[cfg(not(feature = "paper"))]
mod without_paper;
