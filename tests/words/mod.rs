//! Facts in words.

mod alarms;
mod cautions;
mod digits;
mod glossary;
mod labels;
