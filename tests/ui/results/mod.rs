//! Tests of `src/ui/results`.

mod lift;
mod second;
