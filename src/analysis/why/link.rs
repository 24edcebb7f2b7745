//! One link of the chain behind a figure.

use crate::source::{AnyCorrelation, Constant, SourceId};

/// What figures of one law are calculated from.
#[derive(Clone, Copy, Debug)]
pub struct Link {
    /// The figures, by key.
    pub figures: &'static [&'static str],
    /// The choices that enter here, by key; those that enter further up are found by following `rests_on`.
    pub inputs: &'static [&'static str],
    /// The figures that enter, by key.
    pub rests_on: &'static [&'static str],
    /// Where the law comes from.
    pub source: SourceId,
    /// Where in the source.
    pub locator: &'static str,
    /// The constants that enter, in lists.
    pub constants: &'static [&'static [Constant]],
    /// The correlations that enter, in lists.
    pub correlations: &'static [&'static [AnyCorrelation]],
}

/// A link without anything, to fill in.
pub(super) const LINK: Link = Link {
    figures: &[],
    inputs: &[],
    rests_on: &[],
    source: SourceId::Ourselves,
    locator: "mass balance",
    constants: &[],
    correlations: &[],
};
