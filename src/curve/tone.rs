//! What a line is of, so that one matter, or one place, has the same colour in every picture.

/// What a line is of; each has a colour of its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Tone {
    /// Milk.
    Milk,
    /// What stands around it: the bath, or the wall of the pot.
    Around,
    /// Whey.
    Whey,
    /// Salt.
    Salt,
    /// The whole cheese: its mean, or what it would be blended.
    Whole,
    /// The centre of the cheese.
    Centre,
    /// A face of the cheese.
    Face,
    /// One germ of several, by its place in the list.
    Germ(u8),
    /// A limit.
    Limit,
}
