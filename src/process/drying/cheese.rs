//! One cheese as it comes to the air.

use crate::law::Matter;
use crate::law::air_transfer::COAT_RESISTANCE;

/// One cheese as it comes to the air.
///
/// Its default is a cheese without matter or size, at 18 °C, with top and side open and the coat of the record.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cheese {
    /// What it is made of.
    pub matter: Matter,
    /// Its diameter.
    pub diameter_mm: f64,
    /// Its thickness.
    pub thickness_mm: f64,
    /// Its temperature.
    pub temperature_c: f64,
    /// Share of the top that the air reaches, 0 to 1.
    pub top_open: f64,
    /// Share of the side that the air reaches, 0 to 1.
    pub side_open: f64,
    /// Resistance of its coat to vapour, s/m; 0 for a bare one.
    pub coat_s_m: f64,
}

impl Default for Cheese {
    fn default() -> Self {
        Self {
            matter: Matter::default(),
            diameter_mm: 0.0,
            thickness_mm: 0.0,
            temperature_c: 18.0,
            top_open: 1.0,
            side_open: 1.0,
            coat_s_m: COAT_RESISTANCE.value,
        }
    }
}
