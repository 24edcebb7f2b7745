//! Tests of `src/ui/curves`.

mod cut;
mod handles;
