//! The air around the cheeses: steady in a cabinet, by day and by night in the open.

use super::cheese::Cheese;
use super::place::Place;
use crate::design::{DryingDesign, DryingPlace};
use crate::law::air_transfer::{heat_w_m2_k, vapour_m_s};
use crate::law::moist_air::{saturation_pa, warmed_humidity};
use crate::process::UncertainParameters;

/// The air at one moment, as a cheese meets it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AirNow {
    /// Its temperature.
    pub temperature_c: f64,
    /// Partial pressure of its vapour, Pa.
    pub vapour_pa: f64,
    /// Heat transfer by convection, W/(m² K).
    pub heat_w_m2_k: f64,
    /// Vapour transfer, m/s.
    pub vapour_m_s: f64,
}

impl AirNow {
    /// Returns air of this temperature, relative humidity (0 to 1) and speed, as a cheese of this diameter meets it.
    #[must_use]
    pub fn new(temperature_c: f64, relative_humidity: f64, speed_m_s: f64, diameter_m: f64) -> Self {
        let heat_w_m2_k = heat_w_m2_k(speed_m_s, diameter_m, temperature_c);
        Self {
            temperature_c,
            vapour_pa: relative_humidity * saturation_pa(temperature_c),
            heat_w_m2_k,
            vapour_m_s: vapour_m_s(heat_w_m2_k, temperature_c),
        }
    }
}

impl AirNow {
    /// Returns the same air that brings `times` as much heat by convection and takes `times` as much vapour.
    #[must_use]
    pub fn transferring(self, times: f64) -> Self {
        Self { heat_w_m2_k: times * self.heat_w_m2_k, vapour_m_s: times * self.vapour_m_s, ..self }
    }
}

/// The air of one place over the whole drying.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum AirPlan {
    /// Always the same.
    Steady(AirNow),
    /// By day and by night, in turn; it begins with a day.
    DayAndNight {
        /// By day.
        day: AirNow,
        /// By night.
        night: AirNow,
        /// Length of the day, s.
        day_s: f64,
    },
}

/// Length of a day and a night together, s.
const DAY_AND_NIGHT_S: f64 = 86_400.0;

impl AirPlan {
    /// Returns the air that a design gives a cheese of this diameter at one place.
    ///
    /// The vapour in the air is the same everywhere; a warmer place is a drier one.
    #[must_use]
    pub fn of(design: &DryingDesign, place: Place, diameter_m: f64) -> Self {
        let at = |temperature_c: f64, humidity_percent: f64| {
            let warm_c = temperature_c + place.warmer_k;
            let humidity = warmed_humidity(temperature_c, humidity_percent / 100.0, warm_c);
            AirNow::new(warm_c, humidity, design.air_speed_m_s * place.speed, diameter_m)
        };
        match design.drying_place {
            DryingPlace::Cabinet => Self::Steady(at(design.cabinet_temperature_c, cabinet_humidity_percent(design))),
            DryingPlace::OpenAir => Self::DayAndNight {
                day: at(design.day_temperature_c, design.day_humidity_percent),
                night: at(design.night_temperature_c, design.night_humidity_percent),
                day_s: 3600.0 * design.day_h,
            },
        }
    }

    /// Returns the air that one cheese meets at a place, under other parameters.
    pub(super) fn met_by(cheese: &Cheese, design: &DryingDesign, place: Place, parameters: &UncertainParameters) -> Self {
        Self::of(design, place, 0.001 * cheese.diameter_mm).transferring(parameters.air_transfer)
    }

    /// Returns the same air that brings `times` as much heat by convection and takes `times` as much vapour.
    #[must_use]
    pub fn transferring(self, times: f64) -> Self {
        match self {
            Self::Steady(air) => Self::Steady(air.transferring(times)),
            Self::DayAndNight { day, night, day_s } => {
                Self::DayAndNight { day: day.transferring(times), night: night.transferring(times), day_s }
            }
        }
    }

    /// Returns the air at a time and the time until which it stays so, both in seconds.
    #[must_use]
    pub fn at(&self, at_s: f64) -> (AirNow, f64) {
        match *self {
            Self::Steady(air) => (air, f64::INFINITY),
            Self::DayAndNight { day, night, day_s } => {
                let began_s = (at_s / DAY_AND_NIGHT_S).floor() * DAY_AND_NIGHT_S;
                // Compared with the very number that is returned: a difference would round otherwise, and the air would last no time.
                let evening_s = began_s + day_s;
                if at_s < evening_s { (day, evening_s) } else { (night, began_s + DAY_AND_NIGHT_S) }
            }
        }
    }
}

/// Returns the relative humidity of the air in a cabinet: the room's air, warmed.
#[must_use]
pub fn cabinet_humidity_percent(design: &DryingDesign) -> f64 {
    100.0 * warmed_humidity(design.room_air_temperature_c, design.room_humidity_percent / 100.0, design.cabinet_temperature_c)
}
