//! Facts in plain English, each said in one place: the cautions, what every output says of itself, numbers of the records, the glossary,
//! the guide, the welcome and what is new.

mod alarms;
mod caution;
mod changes;
mod glossary;
mod guide;
mod kitchen;
mod kitchen_row;
mod learned;
mod lift;
mod model;
mod number;
mod plan_end;
mod said;
mod scale;
mod to_buy;
mod ways;
mod welcome;

pub use alarms::alarm_words;
pub use caution::{caution_line, caution_word, caution_words, counted, counted_words, said_of_b, severity_word};
pub use changes::{Change, changes, changes_in};
pub use glossary::{EXACT_WORDS, TRADE_WORDS, Term, explained, terms, terms_with};
pub use guide::{GUIDE, GuidePlace, GuideStep, step_words};
pub use kitchen::{kitchen_line, kitchen_since, three_figures};
pub use kitchen_row::{KitchenRow, kitchen_rows};
pub use learned::{NOTHING_TOLD, nearness_words, untold_words};
pub use lift::{changes_words, lift_lines, short_lift_lines, why_not_words};
pub use model::{FROM_A_MODEL, GERMS_BY_STAGE, MUST_NOT_EAT, POTENTIAL_GROWTH, TRUE_OF_ALL};
pub use number::{number_words, quantity, range_words, value};
pub use plan_end::{EndWords, end_words};
pub use said::CautionWords;
pub use scale::{KEPT_IN_SCALING, scale_name, scale_remarks};
pub use to_buy::to_buy;
pub use ways::{way_lines, way_words};
pub use welcome::{GUIDE_START, NOT_CALCULATED, START_EMPTY, START_FROM_MILK, Start, TILES_SHOW, WELCOME, tile_counts, tile_lines};
