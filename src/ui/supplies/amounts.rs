//! Amounts and prices that are typed, and the command that sets them.

use crate::design::{SuppliesDesign, Unit};
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::widget::number_text::read_number;
use crate::units::{Scale, Units};

/// Width of a box for a price.
pub(in crate::ui) const PRICE_WIDTH: f32 = 84.0;

/// Returns the command that sets supplies.
pub(in crate::ui) fn supplied(supplies: SuppliesDesign) -> Ask {
    Ask::Do(Command::SetSupplies(Box::new(supplies)))
}

/// Reads a number of one unit; its range is checked with the supplies. One without a unit is meant as the box shows it.
pub(in crate::ui) fn read_amount(text: &str, unit: Unit, (units, scale): (Units, Scale)) -> Result<(f64, Option<String>), String> {
    let understood = read_number(text, unit, units).map_err(|misread| misread.to_string())?;
    Ok((if understood.bare { scale.kept(understood.value) } else { understood.value }, understood.said))
}

/// Reads a number without a unit.
pub(in crate::ui) fn read_plain(text: &str) -> Result<(f64, Option<String>), String> {
    read_amount(text, Unit::One, (Units::METRIC, Scale::own(Unit::One)))
}

/// Returns supplies if they are allowed.
pub(in crate::ui) fn checked(supplies: SuppliesDesign) -> Result<SuppliesDesign, String> {
    supplies.check().map_err(|error| error.to_string()).map(|()| supplies)
}
