//! United States and imperial measures by their legal definitions, and the scale of Fahrenheit.
//!
//! Quart, cup and fluid ounce are parts of the gallon, and the ounce of the pound; only the definitions are records.

crate::constants! {
    /// Degrees Fahrenheit that a degree Celsius makes.
    FAHRENHEIT_DEGREES = { "Degrees Fahrenheit in a degree Celsius", 1.8, "°F/K", (1.8, 1.8), NistHandbook44, "appendix C, conversion equations for units of temperature", FromMemory }
    /// Where water freezes on the scale of Fahrenheit.
    FAHRENHEIT_FREEZING = { "Zero degrees Celsius on the scale of Fahrenheit", 32.0, "°F", (32.0, 32.0), NistHandbook44, "appendix C, conversion equations for units of temperature", FromMemory }
    /// The United States gallon.
    GALLON = { "Gallon, United States", 3_785.411_784, "mL", (3_785.411_784, 3_785.411_784), NistHandbook44, "appendix C; 231 cubic inches, by definition", Published }
    /// The imperial gallon.
    IMPERIAL_GALLON = { "Gallon, imperial", 4546.09, "mL", (4546.09, 4546.09), WeightsAndMeasures1985, "schedule 1, part IV; by definition", Secondhand }
    /// The pound, which both have in common.
    POUND = { "Pound, avoirdupois", 453.592_37, "g", (453.592_37, 453.592_37), WeightsAndMeasures1985, "schedule 1, part V; by definition", Published }
}

/// Millilitres in a United States quart, a quarter of the gallon.
pub const QUART_ML: f64 = GALLON.value / 4.0;
/// Millilitres in a United States pint, half a quart.
pub const PINT_ML: f64 = QUART_ML / 2.0;
/// Millilitres in a United States cup, half a pint.
pub const CUP_ML: f64 = PINT_ML / 2.0;
/// Millilitres in a United States fluid ounce, an eighth of a cup.
pub const FLUID_OUNCE_ML: f64 = CUP_ML / 8.0;
/// Millilitres in an imperial quart, a quarter of the gallon.
pub const IMPERIAL_QUART_ML: f64 = IMPERIAL_GALLON.value / 4.0;
/// Millilitres in an imperial pint, half a quart.
pub const IMPERIAL_PINT_ML: f64 = IMPERIAL_QUART_ML / 2.0;
/// Millilitres in an imperial fluid ounce, a twentieth of a pint.
pub const IMPERIAL_FLUID_OUNCE_ML: f64 = IMPERIAL_PINT_ML / 20.0;
/// Grams in an ounce, a sixteenth of a pound.
pub const OUNCE_G: f64 = POUND.value / 16.0;
