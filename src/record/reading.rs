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
    /// How far a single reading lies from what is so.
    READING_DEVIATION = { "Standard deviation of one reading, as a share of how near it is read", 0.5, "1", (0.4, 0.7), Ourselves, "nineteen of twenty readings are as near as we say", Judged }
    /// How far all readings of an instrument lie off together.
    SHARED_DEVIATION = { "Standard deviation that all readings of one kind in a batch have in common, as a share of how near they are read", 0.5, "1", (0.2, 1.0), Ourselves, "an instrument that reads high does so all day, and a probe stays where it was put", Judged }
    /// How far the marked cheese is from the others.
    MARKED_CHEESE_DEVIATION = { "Standard deviation of the marked cheese's weight about that of all of them, as a share", 0.03, "1", (0.01, 0.06), Ourselves, "common practice, no source: ladled by eye", Judged }
    /// How far whey that is poured off is from what came.
    WHEY_CAUGHT_DEVIATION = { "Standard deviation of the whey that is caught in a batch about what drips, as a share", 0.03, "1", (0.01, 0.06), Ourselves, "what stays in trays and cloths", Judged }
    /// How much wider learned ranges are than their law has them.
    LEARNED_RANGES_WIDER = { "Width of the range of a constant that was learned from records, over what follows where the model is a straight line in every constant", 1.2, "1", (1.0, 1.4), Ourselves, "to 12 invented kitchens, every other one of which does not follow the model: their ranges of 80 % held 74 % without it; held against 200 others in tests/bench/kitchens.rs", Fitted }
    /// From when on records are said to tell of a constant.
    TOLD_FROM = { "Width of the range of a constant, over that before any record, from which on records are said to tell of it", 0.7, "1", (0.5, 0.9), Ourselves, "a range that is nine tenths as wide as before is no news", Judged }
    /// How well one kind of reading is taken to be met before any is seen.
    READINGS_BELIEVED = { "Readings that our own judgement of the scatter counts for, where a kind is met worse than it scatters", 2.0, "1", (1.0, 5.0), Ourselves, "two readings keep a few others from saying much", Judged }
    /// From when on a calculation is said to fit badly.
    FITS_BADLY = { "Times what readings scatter from which on a calculation is said to fit badly", 2.0, "1", (1.5, 3.0), Ourselves, "half of what is off is then no scatter", Judged }
    /// How many batches tell of a kitchen as it is.
    LEARNED_FROM = { "Newest batches that a kitchen is learned from, where nothing else is said", 12.0, "1", (6.0, 24.0), Ourselves, "a batch a month for a year: rennet, thermometers and rooms change", Judged }
    /// How well a maker knows the moisture at which the drip ends.
    DRIP_END_KNOWN = { "Moisture at the end of the drip, over what the design says", 1.0, "1", (0.92, 1.08), Ourselves, "five percentage points of sixty-one either way, between kitchens that never weighed a cheese", Judged }
}
