//! Amounts and prices that are typed, and the command that sets them.

use crate::design::{SuppliesDesign, Unit};
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::widget::number_text::read_number;

/// Width of a box for a price.
pub(in crate::ui) const PRICE_WIDTH: f32 = 84.0;

/// Returns the command that sets supplies.
pub(in crate::ui) fn supplied(supplies: SuppliesDesign) -> Ask {
    Ask::Do(Command::SetSupplies(Box::new(supplies)))
}

/// Reads a number of one unit; its range is checked with the supplies.
pub(in crate::ui) fn read_amount(text: &str, unit: Unit) -> Result<(f64, Option<String>), String> {
    let understood = read_number(text, unit).map_err(|misread| misread.to_string())?;
    Ok((understood.value, understood.said))
}

/// Returns supplies if they are allowed.
pub(in crate::ui) fn checked(supplies: SuppliesDesign) -> Result<SuppliesDesign, String> {
    supplies.check().map_err(|error| error.to_string()).map(|()| supplies)
}
