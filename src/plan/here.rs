//! Going on from where the maker really is in the plan.

use super::handling::Handling;
use super::{ScheduleError, Start};

/// Where the maker is in the plan: the last step that was begun, and when. Minutes from the Monday 00:00.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Here {
    /// That step, counted from 0.
    pub done: usize,
    /// When it really began.
    pub began_min: i64,
    /// What the clock says now.
    pub now_min: i64,
}

/// What is left, and how late the next step is already.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rest {
    /// The step that was done, now without hands, and all that follow.
    pub handlings: Vec<Handling>,
    /// To schedule them by.
    pub start: Start,
    /// Minutes by which the next step is already later than it ever should be; 0 if it is not.
    pub overdue_min: i64,
}

/// Returns what is left of a plan when a step began at another time than planned; limits that have already passed move to now.
///
/// # Arguments
/// * `by_min`: when everything is still to be finished, if it is
///
/// # Errors
/// [`ScheduleError::NoSuchStep`], [`ScheduleError::NotYetBegun`].
///
/// # Example
/// ```
/// use vatsketch::plan::{Gap, Habit, Handling, Here, Hours, Taken, rest, schedule};
/// let run = [
///     Handling::new("rennet", 5, Gap::fixed(50)),
///     Handling::new("cut", 10, Gap::flexible(20, 0, 40, 1)),
///     Handling::new("ladle", 25, Gap::default()),
/// ];
/// // The curd was late: it was cut at 11:07, and it is 11:12 now.
/// let left = rest(&run, &Here { done: 1, began_min: 667, now_min: 672 }, None)?;
/// let plan = schedule(&left.handlings, &Hours::of_habits(&[], 1440), &left.start)?;
/// assert_eq!(plan.placed[1].start_min, 690);
/// # Ok::<(), vatsketch::plan::ScheduleError>(())
/// ```
pub fn rest(handlings: &[Handling], here: &Here, by_min: Option<i64>) -> Result<Rest, ScheduleError> {
    let left = handlings.get(here.done..).unwrap_or_default();
    let Some((done, later)) = left.split_first() else {
        return Err(ScheduleError::NoSuchStep { given: here.done + 1, steps: handlings.len() });
    };
    let gone_min = here.now_min - here.began_min;
    if gone_min < 0 {
        return Err(ScheduleError::NotYetBegun { ahead_min: -gone_min });
    }
    let mut all = vec![Handling { name: done.name.clone(), hands_min: 0, then: done.then.not_before(gone_min) }];
    all.extend_from_slice(later);
    let overdue_min = if later.is_empty() { 0 } else { (gone_min - done.then.most_min).max(0) };
    Ok(Rest { handlings: all, start: Start::Here { at_min: here.began_min, by_min }, overdue_min })
}
