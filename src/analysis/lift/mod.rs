//! What would lift a warning: the one or two choices that lift it when they are moved least, and what each costs.

mod causes;
mod cost;
mod grid;
mod in_turn;
mod lifted;
mod lifts;
mod sets;
mod single;
mod together;
mod trial;

pub use cost::{Cost, cost};
pub use in_turn::{LiftedInTurn, lift_in_turn};
pub use lifted::{Change, Lift, Lifted, WhyNot};
pub use lifts::lifts;
pub use sets::CONSTANTS as LIFT_CONSTANTS;
