//! From a batch to a week: the tasks with their times, and what to buy in which packages.
//!
//! [`tasks()`] makes [`Task`]s of a batch, [`schedule()`] puts [`Handling`]s into the [`Hours`] that a maker has, [`week()`] does both;
//! [`shopping()`] buys what a batch needs in packages that [`choose`] picks. It asks no clock: times are minutes from a Monday 00:00, and [`Clock`] turns them into
//! those of a wall clock. [`kitchen_week()`] and [`shop`] read the wishes, hours and supplies from the design itself; window, paper, calendar and command line use them.

mod asked;
mod block;
mod calendar_error;
mod clock;
mod counted;
mod day;
mod error;
mod fewer_turns;
mod gap;
mod handling;
mod hands;
mod here;
mod hours;
mod impossible;
mod kept;
mod kitchen_week;
mod now;
mod offer;
mod packages;
mod pass;
mod price_change;
mod reached;
mod schedule;
mod shopping;
mod spoken;
mod start;
mod taken;
mod tasks;
mod timeline;
mod waking;
mod week;
mod why;
mod wish_offer;

pub use calendar_error::KitchenWeekError;
pub use clock::{Clock, ClockError};
pub use counted::{Counted, CountedTask, counted, ends_before_words};
pub use day::{WALL_DAY_MIN, day_words, time_words, weekday_name, whole_day_words, whole_time_words};
pub use error::{ScheduleError, length};
pub use fewer_turns::{TurnsOffer, fewer_turns};
pub use gap::{GRID_MIN, Gap};
pub use handling::Handling;
pub use here::{Here, Rest, rest};
pub use hours::{Hours, Lost};
pub use impossible::Impossible;
pub use kept::{KeptPlan, kept_plan};
pub use kitchen_week::{KitchenWeek, TakenSpan, WeekTask, kitchen_week};
pub use now::{Now, check_zone};
pub use offer::{WishKind, moved_start, wish_of_kind, wish_offers, wished_time};
pub use packages::{Aim, Basket, Package, PackageError, Want, choose};
pub use pass::Pass;
pub use price_change::{PriceChange, price_change};
pub use reached::{begins, reached};
pub use schedule::{Placed, Schedule, horizon_min, schedule};
pub use shopping::{Bought, Need, Shopping, ShoppingError, milk_good, needs, shop, shopping};
pub use spoken::{Lean, SpokenError, spoken_time};
pub use start::Start;
pub use taken::{Habit, Span, Taken};
pub use tasks::{LEAST_LEG_MIN, MeterTask, Task, Tasks, meter_task, task_after_cooling, tasks};
pub use timeline::{Timeline, TimelineBand, TimelineBlock, TimelineDay, TimelineRow, TimelineWait, timeline};
pub use week::{Stretch, WeekError, on_from_here, stretches, week};
pub use why::Reason;
pub use wish_offer::WishOffer;

use crate::source::Constant;

/// The plan's own lists of constants, one a module.
pub const CONSTANT_LISTS: [(&str, &[Constant]); 4] = [
    ("hours of the maker", taken::CONSTANTS),
    ("work at each task", hands::CONSTANTS),
    ("fewer turns", fewer_turns::CONSTANTS),
    ("turns in the log", reached::CONSTANTS),
];
