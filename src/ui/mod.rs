//! Draws a session; decides nothing. Each part takes data and returns what is asked for.

mod app;
mod ask;
mod choices;
mod cross_section;
mod curves;
mod files;
mod foot;
mod look;
mod number_field;
mod number_text;
mod plan_desk;
mod plan_page;
mod preview;
mod printing;
mod prompt;
mod rail;
mod results;
mod run_ribbon;
mod sources_page;
mod theme;
mod top_bar;
mod units;
mod view;
mod window;

pub use app::{WindowError, run};
pub use ask::Ask;
pub use number_text::{Misread, Understood, read_number};
pub use theme::{Palette, install};
pub use units::Units;
pub use view::{CutView, Page, View};
pub use window::Window;
