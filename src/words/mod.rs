//! Facts in plain English, each said in one place: the cautions, what every output says of itself, numbers of the records, the glossary.

mod alarms;
mod caution;
mod glossary;
mod lift;
mod model;
mod number;
mod plan_end;
mod said;
mod scale;
mod to_buy;

pub use alarms::alarm_words;
pub use caution::{caution_line, caution_word, caution_words, counted, counted_words, said_of_b, severity_word};
pub use glossary::{GLOSSARY, Term, explained};
pub use lift::{changes_words, lift_lines, short_lift_lines, why_not_words};
pub use model::{FROM_A_MODEL, GERMS_BY_STAGE, MUST_NOT_EAT, POTENTIAL_GROWTH, TRUE_OF_ALL};
pub use number::{number_words, quantity, range_words, value};
pub use plan_end::{EndWords, end_words};
pub use said::CautionWords;
pub use scale::{KEPT_IN_SCALING, scale_name, scale_remarks};
pub use to_buy::to_buy;
