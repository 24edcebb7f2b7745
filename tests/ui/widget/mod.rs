//! Tests of `src/ui/widget`.

mod number_text;
mod slider;
mod theme;
mod units;
