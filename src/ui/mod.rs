//! Draws a session; decides nothing. Each part takes data and returns what is asked for.

mod choices;
mod curves;
mod figure_card;
mod help;
mod log;
mod paper;
mod results;
mod run;
mod state;
mod supplies;
mod week;
mod widget;
mod window;

pub use state::ask::{Ask, LogAsk, SecondAsk};
pub use state::card::{CardView, Told};
pub use state::cut::CutView;
pub use state::draft::Draft;
pub use state::pages::{HelpCard, Page, PlanPart};
pub use state::view::View;
pub use widget::matter::MatterColours;
pub use widget::motion::{glided, keep_still};
pub use widget::number_text::{Misread, Understood, read_number};
pub use widget::theme::{Palette, install};
pub use widget::typing::Typing;
pub use window::app::{WindowError, run};
pub use window::folders::{Folders, Platform};
pub use window::shell::Window;
