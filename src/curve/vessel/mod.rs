//! What is filled, to scale: the pot in its bath, a mould with its curd, a tray and a jar with their cheeses.

mod at;
mod jar;
mod mould;
mod pot;
mod shape;
mod tray;

pub use at::vessel;
pub use shape::{Content, Piece, Seen, Vessel};
