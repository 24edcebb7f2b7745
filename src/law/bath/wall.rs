//! The wall on the milk's side, and what it does to the milk.

use super::Pot;

crate::constants! {
    /// Where deposits begin.
    DEPOSITS_BEGIN = { "Wall temperature at which milk begins to leave deposits", 55.0, "°C", (50.0, 60.0), JDairySci1968, "deposits began with heating water of about 55 °C", Secondhand }
    /// Where they grow fast.
    DEPOSITS_GROW = { "Wall temperature at which deposits grow fast", 65.0, "°C", (60.0, 70.0), Ourselves, "between deposits and burning", Judged }
    /// Where milk burns on.
    BURNS_ON = { "Wall temperature at which milk burns on", 90.0, "°C", (85.0, 100.0), Ourselves, "common experience", Judged }
}

/// What a wall of a temperature does to milk.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Scorching {
    /// Nothing.
    Fine,
    /// A thin deposit.
    Deposits,
    /// A thick deposit; stir.
    Heavy,
    /// It burns on.
    BurnsOn,
}

/// Returns what a wall of this temperature does to milk.
///
/// # Example
/// ```
/// use vatsketch::law::bath::{scorching, Scorching};
/// assert_eq!(scorching(40.0), Scorching::Fine);
/// assert_eq!(scorching(95.0), Scorching::BurnsOn);
/// ```
#[must_use]
pub fn scorching(wall_c: f64) -> Scorching {
    if wall_c < DEPOSITS_BEGIN.value {
        Scorching::Fine
    } else if wall_c < DEPOSITS_GROW.value {
        Scorching::Deposits
    } else if wall_c < BURNS_ON.value {
        Scorching::Heavy
    } else {
        Scorching::BurnsOn
    }
}

/// Returns the temperature of the wall on the milk's side, °C: T_w = T_m + U (T_b − T_m)/h_i.
///
/// # Arguments
/// * `outside_c`: of the bath or the steam; `milk_c`: of the milk
#[must_use]
pub fn inner_wall_c(pot: &Pot, outside_c: f64, milk_c: f64) -> f64 {
    milk_c + pot.overall_w_m2_k() * (outside_c - milk_c) / pot.milk_side_w_m2_k
}
