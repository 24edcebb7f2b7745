//! Tests of `src/source`.

mod ledger;
mod records;
