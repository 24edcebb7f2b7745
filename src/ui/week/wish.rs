//! The command that sets a wish.

use crate::design::{WeekDesign, Wish};
use crate::session::Command;
use crate::ui::state::ask::Ask;

/// Returns the command that sets a wish.
pub(in crate::ui) fn wished(week: &WeekDesign, wish: Wish) -> Ask {
    Ask::Do(Command::SetWeek(Box::new(WeekDesign { wish, ..week.clone() })))
}
