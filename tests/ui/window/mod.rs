//! Tests of `src/ui/window`.

mod shell;
