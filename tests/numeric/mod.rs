//! Tests of `src/numeric`.

mod table;
