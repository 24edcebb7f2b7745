//! Tests of `src/ui/results`.

mod second;
