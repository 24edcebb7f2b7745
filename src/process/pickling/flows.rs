//! What goes from the vinegar into the cheeses and from the cheeses into the vinegar.

use crate::law::Matter;
use crate::law::acidity::{vinegar_density_g_ml, vinegar_mass_percent};
use crate::process::{StageBalance, Stream};

/// All streams of the stage.
#[derive(Clone, Copy, Debug)]
pub(super) struct Flows {
    vinegar: Matter,
    spent: Matter,
    /// All cheeses after the soak.
    pub(super) cheese: Matter,
}

/// What was calculated about one batch of cheeses in vinegar.
#[derive(Clone, Copy, Debug)]
pub(super) struct Exchange {
    /// Vinegar for all of them.
    pub(super) vinegar_ml: f64,
    /// Its strength, g of acetic acid in 100 mL.
    pub(super) acid_g_per_100ml: f64,
    /// Acetic acid in the cheeses, % of their mass before.
    pub(super) acid_percent: f64,
    /// Share of the salt that is left in them.
    pub(super) salt_left_share: f64,
    /// Water that they take up, kg per kg of their dry solids.
    pub(super) water_gain: f64,
}

impl Flows {
    /// Returns the streams. No more comes into the cheeses than there is in the vinegar.
    pub(super) fn of(dried: &Matter, exchange: &Exchange) -> Self {
        let vinegar = vinegar(exchange.vinegar_ml, exchange.acid_g_per_100ml);
        let into = Matter {
            water_kg: (exchange.water_gain * dried.solids_kg()).clamp(0.0, vinegar.water_kg),
            acid_kg: (0.01 * exchange.acid_percent * dried.total_kg()).clamp(0.0, vinegar.acid_kg),
            ..Matter::default()
        };
        let out = Matter { salt_kg: (1.0 - exchange.salt_left_share).max(0.0) * dried.salt_kg, ..Matter::default() };
        Self { vinegar, spent: vinegar - into + out, cheese: *dried + into - out }
    }

    pub(super) fn balance(&self, dried: &Matter) -> StageBalance {
        StageBalance {
            came: *dried,
            added: vec![Stream { name: "vinegar", matter: self.vinegar }],
            left: vec![Stream { name: "spent vinegar", matter: self.spent }],
            goes_on: self.cheese,
        }
    }
}

/// Returns what so much vinegar is made of: acetic acid and water, measured at 20 °C.
fn vinegar(volume_ml: f64, acid_g_per_100ml: f64) -> Matter {
    let vinegar_kg = 0.001 * volume_ml * vinegar_density_g_ml(vinegar_mass_percent(acid_g_per_100ml));
    let acid_kg = 1e-5 * volume_ml * acid_g_per_100ml;
    Matter { water_kg: vinegar_kg - acid_kg, acid_kg, ..Matter::default() }
}
