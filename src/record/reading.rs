//! How near a kitchen reads what it writes down.

crate::constants! {
    /// Of a pH meter.
    METER_SPREAD = { "Nearness of a kitchen's pH meter", 0.1, "1", (0.05, 0.2), Ourselves, "calibrated at two points, and where the probe happens to be", Judged }
    /// Of a kitchen scale.
    SCALE_SPREAD = { "Nearness of a kitchen scale", 1.0, "g", (0.5, 2.0), Ourselves, "half a gram either way, twice where a tray is taken off", Judged }
    /// Of a hygrometer.
    HYGROMETER_SPREAD = { "Nearness of a household hygrometer, percentage points", 5.0, "%", (3.0, 8.0), Ourselves, "what such devices say of themselves", Judged }
    /// Of the clock when hands are full.
    CLOCK_SPREAD = { "Nearness of a time that is written down in the kitchen", 5.0, "min", (1.0, 10.0), Ourselves, "a plan names no less than five minutes either", Judged }
}
