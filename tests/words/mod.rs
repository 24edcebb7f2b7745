//! Facts in words.

mod alarms;
mod cautions;
mod changes;
mod digits;
mod glossary;
mod guide;
mod kitchen;
mod labels;
mod welcome;
