//! Tests of `src/ui/window`.

mod direct;
mod files;
mod focus;
mod folders;
mod scale;
mod shell;
mod text;
mod typing;
