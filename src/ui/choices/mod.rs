//! What the maker chooses, as a form.

pub(super) mod before_buying;
mod finder;
pub(super) mod form;
pub(super) mod kitchen_note;
pub(super) mod marks;
pub(super) mod number_field;
mod row;
pub(super) mod whose;
