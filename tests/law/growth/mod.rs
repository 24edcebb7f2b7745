//! Tests of `src/law/growth`.

mod cardinal;
mod conditions;
mod crowd;
mod germ;
mod germs_table;
mod history;
mod lag;
mod limits;
mod mejlholm_dalgaard;
mod organisms;
mod rate;
mod rules;
mod spoilage;
mod tables;

pub use germs_table::germ_rows;
use vatsketch::law::growth::{Conditions, Moment};

/// Returns conditions without acids.
fn plain(temperature_c: f64, ph: f64, water_activity: f64) -> Conditions {
    Conditions { temperature_c, ph, water_activity, ..Conditions::default() }
}

/// Returns a history that stays as it is.
fn steady(hours: f64, conditions: Conditions) -> [Moment; 2] {
    [0.0, hours].map(|at_h| Moment { at_h, conditions })
}
