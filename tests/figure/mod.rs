//! Tests of `src/figure`.
