//! Tests of `src/ui/results`.

mod foot;
mod lift;
mod second;
