//! Facts in words.

mod cautions;
mod digits;
mod glossary;
mod labels;
