//! Limits of time and temperature.

crate::constants! {
    /// Cold enough to slow most growth.
    COLD_ENOUGH = { "Upper edge of cold keeping", 4.0, "°C", (4.0, 5.0), FoodCode, "time and temperature control", Published }
    /// Hot enough to stop growth; the widest zone that the tables have.
    HOT_ENOUGH = { "Lower edge of hot keeping", 60.0, "°C", (57.0, 60.0), FoodCode, "time and temperature control, its older and wider edge; the hazard guide's appendix 4 counts 10 to 57.2 °C", Published }
    /// Where food-service limits get short.
    SERVICE_WARM = { "Above this, food-service limits are 2 to 4 hours", 21.0, "°C", (21.0, 21.1), FoodCode, "hazard guide, appendix 4", Published }
    /// Those limits.
    SERVICE_HOURS = { "Hours that food-service rules allow without control", 4.0, "h", (2.0, 4.0), FoodCode, "time as a control", Published }
    /// Where cool begins.
    COOL_ABOVE = { "Colder than this, growth is slow enough to be counted in days of keeping", 7.0, "°C", (4.0, 10.0), FoodCode, "the tables of the hazard guide's appendix 4 begin or change at 5 to 10 °C", FromMemory }
    /// A day there.
    COOL_HOURS = { "Hours between 7 and 21 °C from which on they are too many without acid", 24.0, "h", (5.0, 48.0), Ourselves, "hazard guide, appendix 4: 5 h (Salmonella) to 12 h (staphylococci) from 11 to 21 °C, two days from 7 to 10 °C, from memory; a day lies between", Judged }
    /// Draining this cold or colder is offered.
    COLD_DRAINING = { "Draining at or below this slows growth", 10.0, "°C", (7.0, 10.0), Ourselves, "Staphylococcus makes its toxin above about 10 °C", Secondhand }
}

/// Returns whether a temperature lies between cold and hot keeping; one that is no number counts as there.
///
/// # Source
/// [`COLD_ENOUGH`] and [`HOT_ENOUGH`].
///
/// # Example
/// ```
/// use vatsketch::law::growth::in_zone;
/// assert!(in_zone(12.0) && !in_zone(4.0) && !in_zone(60.0));
/// ```
#[must_use]
pub fn in_zone(temperature_c: f64) -> bool {
    let kept = temperature_c <= COLD_ENOUGH.value || temperature_c >= HOT_ENOUGH.value;
    !kept
}

/// Returns whether a temperature lies above [`SERVICE_WARM`] and below hot keeping; one that is no number counts as there.
#[must_use]
pub fn above_service_warm(temperature_c: f64) -> bool {
    let kept = temperature_c <= SERVICE_WARM.value || temperature_c >= HOT_ENOUGH.value;
    !kept
}
