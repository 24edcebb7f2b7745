//! Several batches against each other.

mod changed;
mod compare;
mod compare_cautions;
mod compare_milk;
mod counterpart;
mod lift;
mod scale;
mod search;
mod sensitivity;
mod slow_soak;
mod solve;
mod spread;
mod standardisation;
mod ways;
mod why;
