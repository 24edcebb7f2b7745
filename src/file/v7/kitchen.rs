//! The kitchen that a design of format 7 uses: it is written as a kitchen's own file has it.

pub(in crate::file) use crate::file::kitchen::v1::Kitchen;
