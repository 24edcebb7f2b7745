//! Tests of `src/ui/widget`.

mod theme;
mod units;
