//! Tests of the week and of what to buy.

mod any;
mod clock;
mod fewer_turns;
mod hours;
mod impossible;
mod kitchen_week;
mod offer;
mod packages;
mod price_change;
mod replan;
mod schedule_cases;
mod schedule_properties;
mod schedule_refusals;
mod shopping;
mod spoken;
mod tasks;
mod timeline;
mod waking;
mod week;
