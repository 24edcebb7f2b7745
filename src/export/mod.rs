//! From a report to bytes; nothing is written here.

#[cfg(feature = "paper")]
mod aim;
mod batches;
mod calendar;
#[cfg(feature = "paper")]
mod chart;
mod comparison;
mod csv;
mod curve;
mod error;
#[cfg(feature = "paper")]
mod fonts;
mod format;
mod html;
mod html_body;
mod jar_label;
mod json;
#[cfg(feature = "paper")]
mod kitchen;
#[cfg(feature = "paper")]
mod label;
mod letters;
mod pages;
mod paper;
mod parts;
mod pdf;
mod printable;
#[cfg(feature = "paper")]
mod sheet;
mod target_words;
#[cfg(feature = "paper")]
mod template;
mod text;
mod text_page;
mod week_calendar;

pub use batches::batches_csv;
pub use calendar::calendar;
pub use comparison::comparison_pdf;
pub use csv::{curve_csv, figures_csv};
pub use curve::{curve_pixels, curve_png, curve_svg};
pub use error::ExportError;
pub use format::Format;
pub use html::html;
pub use jar_label::label_png;
pub use json::{json, json_by_key, json_cautions, json_figure, json_figures, json_members, json_notice, json_signed, json_text};
pub use letters::{missing_letters, missing_letters_of};
pub use pages::{PageImage, pages};
pub use paper::Paper;
pub use parts::{Part, Sheets};
pub use pdf::pdf;
pub use printable::printable;
pub use text::text;
pub use week_calendar::{WeekCalendarError, week_calendar};
