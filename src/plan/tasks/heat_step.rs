//! The heat step of raw milk, and what follows at once when it has cooled.

use super::task::Task;
use crate::design::{Heating, Stage};
use crate::plan::Gap;
use crate::plan::hands::whole;
use crate::process::{HeatStep, MilkOutcome, VatOutcome};

/// Returns the tasks of the heat step; none where the milk is not pasteurised in the vat. Hands are needed all the time: milk that nobody
/// watches has not been held.
pub(super) fn heat_step(vat: &VatOutcome, heating: Heating) -> Vec<Task> {
    let Some(HeatStep { to_hold_min, hold_ends_min, cooled_min, cooled_c, .. }) = vat.heat_step else { return Vec::new() };
    // Each has a minute at least, and together they take what the calculation says.
    let cooled_min = whole(cooled_min);
    let ends_min = whole(hold_ends_min).min(cooled_min - 1);
    let held_min = whole(to_hold_min).min(ends_min - 1);
    // A pot put back into the hot bath would warm again at once, and a culture in it would die.
    let bath = match heating {
        Heating::Bath => format!(" Meanwhile bring the bath to {cooled_c:.1} °C: pour off hot water, add cold."),
        Heating::DoubleBoiler | Heating::Hob => String::new(),
    };
    let watched = |key, name, minutes: i64, what: &str| {
        let minutes = minutes.max(1);
        Task::new(key, Stage::Vat, name, minutes, Gap::fixed(minutes)).saying(what)
    };
    vec![
        watched("pasteurise", "Heat the raw milk", held_min, "Stir all the time. Thermometer in the coldest place."),
        watched(
            "hold",
            "Hold the milk hot",
            ends_min - held_min,
            "Stir and read the coldest place; lid on in between. Spoon and thermometer stay in the hot milk. If it was cooler once, count the whole time anew.",
        ),
        watched(
            "cool",
            "Cool the milk quickly",
            cooled_min - ends_min,
            &format!(
                "Keep the pot covered in the cold water and stir with a clean spoon.{bath} Only what is clean touches the milk from now on."
            ),
        ),
    ]
}

/// Returns the minute at which the milk is ready to be warmed: cold as poured, or cooled after it was pasteurised.
pub(super) fn ready_min(vat: &VatOutcome) -> f64 {
    vat.heat_step.map_or(0.0, |step| step.cooled_min)
}

/// A leg of warming that would be shorter is none: nothing is warmed.
pub const LEAST_LEG_MIN: f64 = 0.5;

/// Returns the key of the first task after the milk was cooled, in which an acid is stirred in.
///
/// Milk that is warm enough for its calcium takes it at once, and is warmed in the same task.
#[must_use]
pub fn task_after_cooling(milk: &MilkOutcome, vat: &VatOutcome) -> &'static str {
    let at_once = milk.calcium_g > 0.0 && vat.to_calcium_min - ready_min(vat) < LEAST_LEG_MIN;
    if at_once { "calcium" } else { "warm" }
}
