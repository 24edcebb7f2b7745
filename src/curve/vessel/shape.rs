//! What a vessel is made of when it is drawn to scale.

/// What lies in a vessel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Content {
    /// Milk.
    Milk,
    /// The water of the bath.
    Bath,
    /// Curd as it is ladled.
    Curd,
    /// A cheese.
    Cheese,
    /// Vinegar.
    Vinegar,
}

/// One thing in a vessel, as a rectangle of its cross-section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Piece {
    /// What it is.
    pub content: Content,
    /// Left edge, from that of the vessel inside.
    pub left_mm: f64,
    /// Lower edge, above the bottom of the vessel.
    pub bottom_mm: f64,
    /// Width.
    pub width_mm: f64,
    /// Height.
    pub height_mm: f64,
}

/// From where a vessel is seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seen {
    /// From the side, cut through the middle: open above.
    Side,
    /// From above, closed all round: cheeses are round.
    Above,
}

/// A vessel, to scale.
#[derive(Clone, Debug, PartialEq)]
pub struct Vessel {
    /// From where it is seen.
    pub seen: Seen,
    /// Width inside.
    pub width_mm: f64,
    /// Height inside, or up to the line to which it is filled; from above its depth.
    pub height_mm: f64,
    /// What lies in it, the hindmost first.
    pub pieces: Vec<Piece>,
    /// How many there are, and whether what is filled in has room.
    pub caption: String,
}
