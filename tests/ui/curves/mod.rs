//! Tests of `src/ui/curves`.

mod alone;
mod cut;
mod handles;
