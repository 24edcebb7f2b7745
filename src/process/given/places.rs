//! The places of a kitchen: none is just as warm as is chosen for it.

use super::place_temperature::{AIR_WARMTH, JAR_WARMTH, MOULDS_WARMTH, met_c};
use super::rows::UncertainParameters;
use crate::design::{Design, DrainingDesign, DryingDesign, KeepingDesign, PicklingDesign};
use crate::source::Constant;

/// The choices about places as the parameters have them, each place as much warmer or colder as its factor says.
#[derive(Clone, Debug)]
pub(crate) struct KitchenPlaces {
    /// Around the moulds.
    pub(crate) draining: DrainingDesign,
    /// In the air.
    pub(crate) drying: DryingDesign,
    /// Around the jar, in the soak.
    pub(crate) pickling: PicklingDesign,
    /// Around the jar, afterwards.
    pub(crate) keeping: KeepingDesign,
}

impl KitchenPlaces {
    /// Returns the places of a design.
    pub(crate) fn of(design: &Design, parameters: &UncertainParameters) -> Self {
        let mut places =
            Self { draining: design.draining, drying: design.drying, pickling: design.pickling, keeping: design.keeping };
        let met = |chosen_c: &mut f64, factor: f64, record: &Constant| *chosen_c = met_c(*chosen_c, factor, record.value);
        met(&mut places.draining.draining_temperature_c, parameters.warmth_of_moulds, &MOULDS_WARMTH);
        let drying = &mut places.drying;
        for chosen_c in [&mut drying.cabinet_temperature_c, &mut drying.day_temperature_c, &mut drying.night_temperature_c] {
            met(chosen_c, parameters.warmth_of_air, &AIR_WARMTH);
        }
        met(&mut places.pickling.pickling_temperature_c, parameters.warmth_of_jar, &JAR_WARMTH);
        met(&mut places.keeping.keeping_temperature_c, parameters.warmth_of_jar, &JAR_WARMTH);
        places
    }
}
