//! What it takes to pasteurise the raw milk of the vat: how hot, how long, and with which water.

use super::MilkError;
use crate::design::MilkDesign;
use crate::law::Matter;
use crate::law::pasteurising::{hold_s, is_rich, least_c, on_a_clock_s};

/// How the milk is pasteurised in the vat.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Pasteurising {
    /// Temperature that the milk is held at, or above.
    pub hold_c: f64,
    /// Minutes that the rules ask for at this temperature, as a kitchen clock shows them.
    pub rule_min: f64,
    /// Minutes that it is held: by the rules, or longer.
    pub hold_min: f64,
    /// Whether the milk is so rich that the rules ask for more warmth.
    pub rich: bool,
    /// Where the thermostat of the bath is set for it.
    pub bath_c: f64,
    /// Cold water in which the pot is cooled.
    pub cold_water_l: f64,
    /// Its temperature.
    pub cold_water_c: f64,
}

/// Returns how the milk is pasteurised in the vat; nothing where it is not.
///
/// # Arguments
/// * `vat_milk`: with its cream, since all of it is heated together
///
/// # Errors
/// [`MilkError::TooCoolToPasteurise`] below the least temperature that the rules have for this milk.
pub(super) fn pasteurising(design: &MilkDesign, vat_milk: &Matter) -> Result<Option<Pasteurising>, MilkError> {
    if !design.pasteurises() {
        return Ok(None);
    }
    let (hold_c, rich) = (design.pasteurising_temperature_c, is_rich(vat_milk));
    let too_cool = MilkError::TooCoolToPasteurise { chosen_c: hold_c, least_c: least_c(rich), rich };
    let rule_min = on_a_clock_s(hold_s(hold_c, rich).ok_or(too_cool)?) / 60.0;
    Ok(Some(Pasteurising {
        hold_c,
        rule_min,
        hold_min: rule_min + design.pasteurising_extra_min,
        rich,
        bath_c: design.pasteurising_bath_temperature_c,
        cold_water_l: design.cooling_water_l,
        cold_water_c: design.cooling_water_temperature_c,
    }))
}
