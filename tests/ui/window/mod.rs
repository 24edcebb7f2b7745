//! Tests of `src/ui/window`.

mod files;
mod focus;
mod folders;
mod shell;
mod typing;
