//! The steps of a week alone, for what prints no plan.

use super::Step;
use super::facts::Facts;
use super::steps::{of_week, steps};
use crate::batch::Batch;
use crate::plan::KitchenWeek;
use crate::units::Units;

/// Returns the steps of a week with their times, as [`super::week_plan`] prints them, but for the cautions that stand before them there.
///
/// # Arguments
/// * `units`: that they are shown in
///
/// # Example
/// ```
/// use jiff::{civil::date, tz::TimeZone};
/// use vatsketch::{batch::batch, design::{Design, Wish}, plan::{Now, kitchen_week}, report::week_steps, units::Units};
/// let now = Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC };
/// let mut design = Design::default();
/// design.week.wish = Wish::StartAt(date(2031, 5, 9).at(14, 30, 0, 0));
/// let batch = batch(&design)?;
/// let week = kitchen_week(&batch, &now)?.ok_or("no wish")?;
/// assert_eq!(week_steps(&batch, &week, Units::METRIC)[0].times[0].task, "sanitise");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn week_steps(batch: &Batch, week: &KitchenWeek, units: Units) -> Vec<Step> {
    let steps = of_week(steps(batch, &Facts::of(batch)), week, batch);
    if units.are_metric() { steps } else { steps.into_iter().map(|step| step.shown_in(units)).collect() }
}
