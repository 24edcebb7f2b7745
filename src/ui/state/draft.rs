//! A package that is not on the list yet.

/// A package that is not on the list yet.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Draft {
    /// What it holds, in the unit of the need.
    pub size: Option<f64>,
    /// What it costs.
    pub price: Option<f64>,
}
