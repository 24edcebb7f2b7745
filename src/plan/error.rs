//! Why there is no plan, and what would make one.

use super::gap::Gap;

/// Why the handlings cannot be put into the week.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ScheduleError {
    /// No handling at all.
    #[error(
        "there is nothing to plan: the batch has no step with work in it; correct the stage that could not be calculated first"
    )]
    NothingToPlan,
    /// Limits that are not in order.
    #[error(
        "“{name}”: the time to the next step must run from least to most, but is at least {} min, usually {} to {} min, at most {} min, at {} points a quarter of an hour; put them in order, none below 0",
        gap.least_min, gap.usual_from_min, gap.usual_to_min, gap.most_min, gap.shift_points
    )]
    InvertedLimits {
        /// Of which handling.
        name: String,
        /// The limits.
        gap: Gap,
    },
    /// Hands for less than no time.
    #[error("“{name}” takes {hands_min} min of work; give 0 or more")]
    NegativeHands {
        /// Which handling.
        name: String,
        /// The minutes given.
        hands_min: i64,
    },
    /// Points that are negative or beyond all measure.
    #[error("a quarter of an hour cannot cost {points} points; choose from 0 to {most}")]
    WrongPoints {
        /// The points given.
        points: i64,
        /// The most.
        most: i64,
    },
    /// A start before the Monday from which minutes are counted.
    #[error("the start is {} before the week that is planned; plan from an earlier Monday, or start later", length(*before_min))]
    BeforeMonday {
        /// How long before.
        before_min: i64,
    },
    /// Finished before it can begin.
    #[error("the finish time is in the past, {} before the earliest start; choose a later day", length(*past_min))]
    FinishedInThePast {
        /// How long ago.
        past_min: i64,
    },
    /// No start leaves enough time.
    #[error(
        "there is not enough time: the tasks take at least {}, and only {} is left; finish {} later or begin {} earlier (the longest wait, at least {}, follows “{longest}”; do not shorten a soak to save time)",
        length(*shortest_min), length(*left_min), length(*later_min), length(*earlier_min), length(*longest_min)
    )]
    NoFeasibleStart {
        /// Time between the earliest start and the finish time.
        left_min: i64,
        /// Least time that the run takes from there on.
        shortest_min: i64,
        /// How much later the finish time would have to be.
        later_min: i64,
        /// Or how much earlier the run would have to begin.
        earlier_min: i64,
        /// The handling with the longest wait after it.
        longest: String,
        /// That wait.
        longest_min: i64,
    },
    /// What is left to do cannot be done in time.
    #[error(
        "what is left takes at least {}, and the finish time is only {} away; finish {} later",
        length(*shortest_min), length(*left_min), length(*later_min)
    )]
    TooLateNow {
        /// Time until the finish time.
        left_min: i64,
        /// Least time that the rest takes.
        shortest_min: i64,
        /// How much later the finish time would have to be.
        later_min: i64,
    },
    /// A window for the start that holds no quarter of an hour.
    #[error("the start may be anywhere within {within_min} min, but no quarter of an hour is in them; allow 15 min or more")]
    NoQuarterHour {
        /// The window.
        within_min: i64,
    },
    /// Longer than anybody plans.
    #[error(
        "the plan would look over {days} days; at most {most_days} can be planned: start within a shorter time, or shorten the run"
    )]
    TooLong {
        /// Days.
        days: i64,
        /// At most so many.
        most_days: i64,
    },
    /// The maker's hours are not known for long enough.
    #[error("the hours of sleep and work are given for {}, but the plan looks over {}; give them for so long", length(*known_min), length(*needed_min))]
    HoursEnd {
        /// Known until.
        known_min: i64,
        /// Needed until.
        needed_min: i64,
    },
    /// Going on from a step that the plan does not have.
    #[error("step {given} is the last one done, but the plan has only {steps} steps; choose one of them")]
    NoSuchStep {
        /// The step given, counted from 1.
        given: usize,
        /// Steps of the plan.
        steps: usize,
    },
    /// A step that begins after now.
    #[error("the step begins {} from now; give the time at which it really began", length(*ahead_min))]
    NotYetBegun {
        /// How far ahead.
        ahead_min: i64,
    },
}

/// Returns minutes as an exact length of time: "2 days 3 h 15 min".
///
/// # Example
/// ```
/// use vatsketch::plan::length;
/// assert_eq!(length(3075), "2 days 3 h 15 min");
/// assert_eq!(length(60), "1 h");
/// assert_eq!(length(0), "0 min");
/// ```
#[must_use]
pub fn length(minutes: i64) -> String {
    let all = minutes.abs();
    let parts = [(all / 1440, if all / 1440 == 1 { "day" } else { "days" }), (all / 60 % 24, "h"), (all % 60, "min")];
    let words: Vec<String> = parts.iter().filter(|(count, _)| *count > 0).map(|(count, unit)| format!("{count} {unit}")).collect();
    if words.is_empty() { "0 min".to_owned() } else { words.join(" ") }
}
