//! Tests of `src/ui/widget`.

mod motion;
mod number_text;
mod slider;
mod theme;
mod units;
