//! The value of one input, whatever its kind.

/// What an input can hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Value {
    /// A number, in the field's unit.
    Number(f64),
    /// The key of one of the field's choices.
    Choice(&'static str),
    /// On or off.
    Switch(bool),
}

impl std::fmt::Display for Value {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Number(number) => write!(f, "{number}"),
            Self::Choice(key) => f.write_str(key),
            Self::Switch(on) => f.write_str(if *on { "yes" } else { "no" }),
        }
    }
}
