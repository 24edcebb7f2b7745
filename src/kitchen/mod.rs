//! What records say about the kitchen they were made in: the uncertain constants, narrower than before, with honest intervals.

mod belief;
mod chain;
mod error;
mod groups;
mod known;
mod learning;
mod linear;
mod made;
mod misfit;
mod problem;
mod seek;
mod unknown;

pub use belief::Belief;
pub use error::LearnError;
pub use learning::{Learned, LearnedKitchen, learn, learn_while, newest};
pub use unknown::{KitchenConstants, Unknown};
