//! Tests of `src/ui/window`.

mod files;
mod shell;
mod typing;
