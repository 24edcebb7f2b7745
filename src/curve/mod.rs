//! Curves as data: axes, series, bands and events; no widget.

mod axes;
mod both;
mod curd_souring;
#[expect(clippy::module_inception, reason = "the main type of the folder is in a file of its name, which only the folder sees")]
mod curve;
mod dotted;
mod drawn;
mod drying;
mod germs;
mod handle;
mod key;
mod measured;
mod mirror;
mod run;
mod run_measured;
mod salt;
mod section;
mod section_growth;
mod shown;
mod soak;
mod souring;
mod spread;
mod table;
mod telling;
mod tone;
mod vessel;
mod wet;

pub use both::in_one_frame;
pub use curve::{Axis, Band, Curve, Dot, Event, Role, Series};
pub use dotted::with_measured;
pub use drawn::curve;
pub use drying::drying_weight;
pub use handle::{Along, CutHours, Handle};
pub use key::CurveKey;
pub use measured::{MeasuredLine, MeasuredOn, MeasuredPoint, measured};
pub use run::{Flowing, Layer, Run, Side, SideStream, Station, Substance, run};
pub use run_measured::run_measured;
pub use section::{Section, SectionKey, section};
pub use section_growth::{SectionGrowth, growth_words};
pub use spread::{Kept, LineSpread, SPREAD_NAME, Spread, Spreading, with_spread};
pub use table::{Table, every_point, table, table_of_both};
pub use telling::telling_share;
pub use tone::Tone;
pub use vessel::{Content, Piece, Seen, Vessel, vessel};
