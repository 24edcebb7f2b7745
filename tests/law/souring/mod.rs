//! Tests of `src/law/souring`.

mod acids;
mod calcium;
mod course;
mod culture;
mod gel;
mod lactone;
mod sourable;
mod table;
mod taste;

pub use table::souring_rows;
use vatsketch::law::souring::Sourable;

/// Returns the milk of the table.
fn milk() -> Sourable {
    Sourable::new(0.0325, 0.880, 6.65, 1.0)
}

/// Returns the curd of the table.
fn curd() -> Sourable {
    Sourable::new(0.16, 0.60, 6.5, 1.0)
}
