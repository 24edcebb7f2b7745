//! Where numbers come from: every constant of the calculation is a record with unit, range, source and standing.
//!
//! Records stand next to the law that uses them, made with [`constants!`](crate::constants) and
//! [`correlations!`](crate::correlations); the ledger of sources is `resources/sources.ron`.

mod ledger;
mod record;

pub use ledger::{LEDGER_TEXT, LedgerError, SourceRow, ledger};
pub use record::{AnyCorrelation, Constant, Correlation, SourceId, Standing};
