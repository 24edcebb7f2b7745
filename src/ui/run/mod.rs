//! The run: the band of matter at the top.

pub(super) mod band;
pub(super) mod flow;
pub(super) mod weighed;
