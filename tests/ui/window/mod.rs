//! Tests of `src/ui/window`.

mod direct;
mod files;
mod focus;
mod folders;
mod shell;
mod text;
mod typing;
