//! Curves as data: axes, series, bands and events; no widget.

mod curve;
mod figures;

pub use curve::{Axis, Band, Event, Figure, Role, Series};
pub use figures::{FigureKey, figure};
