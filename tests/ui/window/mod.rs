//! Tests of `src/ui/window`.

mod files;
mod focus;
mod shell;
mod typing;
