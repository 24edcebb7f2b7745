//! What the maker chooses, as a form.

pub(super) mod form;
pub(super) mod number_field;
