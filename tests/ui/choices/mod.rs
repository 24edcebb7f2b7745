//! Tests of `src/ui/choices`.

mod whose;
