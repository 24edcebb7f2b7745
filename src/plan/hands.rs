//! How long hands are needed: seconds a cheese, a jar, a litre. Our own judgement, for one practised pair of hands; a maker's log knows better.

crate::constants! {
    /// Steaming.
    STEAMING = { "Steaming everything made of steel", 20.0, "min", (15.0, 30.0), Ourselves, "estimate", Judged }
    /// What every visit takes.
    VISIT = { "Work at any visit: wash, fetch, write down, put away", 180.0, "s", (60.0, 600.0), Ourselves, "estimate", Judged }
    /// Measuring out.
    MEASURE_LITRE = { "Work to measure out, a litre of milk", 30.0, "s/L", (15.0, 60.0), Ourselves, "estimate: a carton is opened and poured", Judged }
    /// Stirring in.
    STIR_IN = { "Work to stir in the rennet and still the milk", 180.0, "s", (60.0, 300.0), Ourselves, "estimate", Judged }
    /// Testing the break.
    TEST_BREAK = { "Work to test for a clean break", 90.0, "s", (30.0, 180.0), Ourselves, "estimate", Judged }
    /// Cutting.
    CUT_LITRE = { "Work to cut the curd, a litre of milk", 25.0, "s/L", (10.0, 60.0), Ourselves, "estimate; the first strokes are slow whatever the vat", Judged }
    /// Ladling, by volume.
    LADLE_LITRE = { "Work to ladle, a litre of curd", 75.0, "s/L", (40.0, 150.0), Ourselves, "estimate: a ladle holds about 0.1 L", Judged }
    /// Ladling, by mould.
    LADLE_MOULD = { "Work to fill evenly, a mould", 15.0, "s", (5.0, 40.0), Ourselves, "estimate", Judged }
    /// Turning.
    TURN_CHEESE = { "Work to turn, a cheese", 20.0, "s", (10.0, 60.0), Ourselves, "estimate: out of the mould, over, and in again", Judged }
    /// Salting.
    SALT_CHEESE = { "Work to weigh and sprinkle salt, a cheese", 20.0, "s", (10.0, 60.0), Ourselves, "estimate", Judged }
    /// Unmoulding.
    UNMOULD_CHEESE = { "Work to unmould, a cheese", 15.0, "s", (5.0, 40.0), Ourselves, "estimate", Judged }
    /// Peppering.
    PEPPER_CHEESE = { "Work to roll in pepper, a cheese", 25.0, "s", (10.0, 60.0), Ourselves, "estimate", Judged }
    /// Laying out.
    LAY_CHEESE = { "Work to lay on a tray or into a jar, a cheese", 8.0, "s", (4.0, 20.0), Ourselves, "estimate", Judged }
    /// Swapping trays.
    SWAP_TRAY = { "Work to swap, a tray", 40.0, "s", (20.0, 90.0), Ourselves, "estimate", Judged }
    /// Covering.
    COVER_JAR = { "Work to cover with vinegar and close, a jar", 90.0, "s", (45.0, 180.0), Ourselves, "estimate", Judged }
    /// Pouring off.
    POUR_OFF_JAR = { "Work to pour off and fill with oil, a jar", 180.0, "s", (90.0, 360.0), Ourselves, "estimate", Judged }
    /// Measuring pH.
    METER = { "Work to measure pH at a centre and on a blended sample", 600.0, "s", (300.0, 1200.0), Ourselves, "estimate, with the meter's own test", Judged }
    /// Measuring with another task.
    METER_MOVES = { "Measuring pH may move by this much, to go with another task", 30.0, "min", (15.0, 60.0), Ourselves, "the pH moves by a tenth or two", Judged }
    /// Rolling.
    ROLL_JAR = { "Work to roll, a jar", 20.0, "s", (10.0, 40.0), Ourselves, "estimate", Judged }
    /// What a shift costs.
    SHIFT_POINTS = { "Points for a quarter of an hour outside the usual gap", 2.0, "1", (1.0, 4.0), Ourselves, "a wish, not a fact: next to the 10 points of a minute of sleep", Judged }
    /// Clean and waiting.
    CLEAN_WAITS = { "Clean ware and measured milk may wait", 30.0, "min", (15.0, 60.0), Ourselves, "covered, and the milk cold", Judged }
    /// Curd that waits in its whey.
    CURD_WAITS = { "Cut curd may wait in its whey beyond its rest", 30.0, "min", (15.0, 60.0), Ourselves, "it firms and sours on", Judged }
    /// How far a turn may be moved.
    TURN_GIVES = { "Share of the time between turns by which a turn may be moved", 0.4, "1", (0.1, 0.5), Ourselves, "the drip is of first order and slow next to it; a night must fit between two turns", Judged }
    /// How far drying may be moved.
    LOSS_GIVES = { "Loss by which drying may end sooner or later", 1.0, "%", (0.5, 2.0), Ourselves, "less than the trays lie apart", Judged }
    /// How far drying may be moved at most.
    LEG_GIVES = { "Share of the time to the swap or the end of drying by which it may be moved, at most", 0.25, "1", (0.1, 0.5), Ourselves, "however flat the curve has become", Judged }
    /// How much longer a cheese may stay in the vinegar.
    VINEGAR_WAITS = { "Cheeses may stay in the vinegar beyond their time", 24.0, "h", (6.0, 72.0), Ourselves, "never shorter: the centre needs the hours", Judged }
    /// Rolling, soonest.
    ROLL_SOONEST = { "A jar is rolled again after at least", 4.0, "d", (2.0, 5.0), Ourselves, "every few days", Judged }
    /// Rolling, latest.
    ROLL_LATEST = { "A jar is rolled again after at most", 6.0, "d", (5.0, 9.0), Ourselves, "every few days", Judged }
}

/// Returns seconds as whole minutes, rounded up.
pub(super) fn minutes_of(seconds: f64) -> i64 {
    (seconds / 60.0 - 1e-9).ceil().clamp(0.0, 1e6) as i64
}

/// Returns the minutes of a visit in which so many seconds of work are done.
pub(super) fn visit_min(seconds: f64) -> i64 {
    minutes_of(VISIT.value + seconds)
}

/// Returns minutes as whole ones.
pub(super) fn whole(minutes: f64) -> i64 {
    minutes.round().clamp(0.0, 1e6) as i64
}
