//! Why a schedule costs what it costs.

use super::handling::Handling;
use super::{Schedule, length};

/// One thing that a schedule pays for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reason {
    /// The handling, counted from 0; none for the waiting before the first or after the last.
    pub handling: Option<usize>,
    /// What it costs.
    pub points: i64,
    /// In words.
    pub words: String,
    /// Whether it is an alarm that wakes.
    pub is_alarm: bool,
    /// Whether nobody can be there then.
    pub is_impossible: bool,
}

impl Schedule {
    /// Returns what it pays for, what is impossible first, then the dearest; the points add up to [`Schedule::points`].
    ///
    /// # Arguments
    /// * `handlings`: those that were scheduled
    ///
    /// # Example
    /// ```
    /// use vatsketch::plan::{Gap, Habit, Handling, Hours, Start, Taken, schedule};
    /// let sleep = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (22, 0), (6, 0));
    /// let run = [Handling::new("ladle", 30, Gap::fixed(300)), Handling::new("turn", 10, Gap::default())];
    /// let start = Start::Earliest { from_min: 17 * 60, within_min: 0, wait_points: 0 };
    /// let plan = schedule(&run, &Hours::of_habits(&[sleep], 2 * 1440), &start)?;
    /// assert_eq!(plan.reasons(&run)[0].words, "an alarm wakes you for “turn”");
    /// # Ok::<(), vatsketch::plan::ScheduleError>(())
    /// ```
    #[must_use]
    pub fn reasons(&self, handlings: &[Handling]) -> Vec<Reason> {
        let mut reasons = Vec::new();
        for (at, (placed, handling)) in self.placed.iter().zip(handlings).enumerate() {
            let name = &handling.name;
            if placed.alarm_points > 0 {
                let words = format!("an alarm wakes you for “{name}”");
                reasons.push(Reason {
                    handling: Some(at),
                    points: placed.alarm_points,
                    words,
                    is_alarm: true,
                    is_impossible: false,
                });
            }
            // Who is up at night does not pay for the minutes.
            reasons.extend(placed.lost.iter().filter(|lost| lost.points > 0 || lost.impossible).map(|lost| Reason {
                handling: Some(at),
                points: lost.points,
                words: format!("“{name}” takes {}", lost.words()),
                is_alarm: false,
                is_impossible: lost.impossible,
            }));
            if placed.shift_points > 0 {
                let way = if placed.shift_min > 0 { "later" } else { "earlier" };
                let words = format!("“{name}” comes {} {way} than usual", length(placed.shift_min));
                reasons.push(Reason {
                    handling: Some(at),
                    points: placed.shift_points,
                    words,
                    is_alarm: false,
                    is_impossible: false,
                });
            }
        }
        if self.wait_points > 0 {
            let words = "waiting for better hours".to_owned();
            reasons.push(Reason { handling: None, points: self.wait_points, words, is_alarm: false, is_impossible: false });
        }
        reasons.sort_by_key(|reason| std::cmp::Reverse((reason.is_impossible, reason.points)));
        reasons
    }
}
