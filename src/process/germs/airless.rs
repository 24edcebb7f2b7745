//! Hours in which a spore former of airless food lies within all its published limits.

use crate::law::growth::{AIRLESS_LIMITS, COLD_AIRLESS_LIMITS};

/// Hours without air in which temperature, pH and water activity all lie above the published least.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct AirlessHours {
    /// Of Clostridium botulinum, proteolytic.
    pub proteolytic_h: f64,
    /// Of the type that grows in the cold.
    pub cold_h: f64,
}

impl AirlessHours {
    /// Counts some hours at a place.
    pub(super) fn count(&mut self, hours: f64, temperature_c: f64, ph: f64, water_activity: f64) {
        let place = [temperature_c, ph, water_activity];
        let within = |limits: [f64; 3]| place.iter().zip(limits).all(|(at, least)| *at > least);
        if within(AIRLESS_LIMITS.coefficients) {
            self.proteolytic_h += hours;
        }
        if within(COLD_AIRLESS_LIMITS.coefficients) {
            self.cold_h += hours;
        }
    }
}
