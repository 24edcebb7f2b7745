//! From a batch to a week: the handlings with their times.
//!
//! It knows no clock. Times are minutes from a Monday 00:00; [`schedule`] puts [`Handling`]s into the [`Hours`] that a maker has.

mod block;
mod clock;
mod error;
mod gap;
mod here;
mod hours;
mod packages;
mod schedule;
mod start;
mod why;

pub use clock::{Clock, ClockError, local_time};
pub use error::{ScheduleError, length};
pub use gap::{GRID_MIN, Gap, Handling};
pub use here::{Here, Rest, rest};
pub use hours::{Habit, Hours, Lost, Span, Taken};
pub use packages::{Aim, Basket, Package, PackageError, Want, choose};
pub use schedule::{Placed, Schedule, horizon_min, schedule};
pub use start::Start;
pub use why::Reason;

use crate::source::Constant;

/// The plan's own lists of constants, one a module.
pub const CONSTANT_LISTS: [(&str, &[Constant]); 1] = [("hours of the maker", hours::CONSTANTS)];
