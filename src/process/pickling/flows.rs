//! What goes from the vinegar into the cheeses and from the cheeses into the vinegar.

use crate::law::Matter;
use crate::law::acidity::{vinegar_density_g_ml, vinegar_mass_percent};
use crate::law::brine::SALT_MOLAR_MASS;
use crate::law::food_density::WATER_DENSITY;
use crate::process::{StageBalance, Stream};

/// Temperature at which vinegar is measured.
const MEASURED_AT_C: f64 = 20.0;

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
    /// Salt stirred into it, g in 100 mL.
    pub(super) salt_g_per_100ml: f64,
    /// Share of what they brought dissolved that is left in them where the vinegar brings none.
    pub(super) left_share: f64,
    /// Water that they take up, kg per kg of their dry solids; below zero where salty vinegar takes some out.
    pub(super) water_gain: f64,
}

impl Exchange {
    /// Returns the salt stirred into the vinegar.
    pub(super) fn salt_g(&self) -> f64 {
        0.01 * self.vinegar_ml * self.salt_g_per_100ml
    }
}

/// Returns the salt in vinegar that would leave that of a cheese as it is, g in 100 mL: as much in each litre as there is in its water.
pub(super) fn even_salt_g_per_100ml(cheese: &Matter) -> f64 {
    0.1 * WATER_DENSITY.polynomial(MEASURED_AT_C) * cheese.salt_kg / cheese.water_kg
}

/// Returns the salt that cheeses as salty as the vinegar would bring, kg.
pub(super) fn even_kg(cheese: &Matter, salt_g_per_100ml: f64) -> f64 {
    salt_g_per_100ml / even_salt_g_per_100ml(&Matter { salt_kg: 1.0, ..*cheese })
}

/// Returns the salt in the water of a vinegar, mol/kg.
pub(super) fn salt_molality(salt_g_per_100ml: f64, acid_g_per_100ml: f64) -> f64 {
    let water_kg = vinegar(100.0, acid_g_per_100ml).water_kg;
    0.001 * salt_g_per_100ml / (SALT_MOLAR_MASS.value * water_kg)
}

impl Flows {
    /// Returns the streams. No more comes into the cheeses than there is in the vinegar, and no more leaves them than they have.
    ///
    /// Diffusion is linear, and equal saltiness stays: vinegar b times as salty as the water of the cheese leaves a + b (1 − a) of the salt where
    /// plain vinegar leaves a.
    pub(super) fn of(dried: &Matter, exchange: &Exchange) -> Self {
        let plain = vinegar(exchange.vinegar_ml, exchange.acid_g_per_100ml);
        let vinegar = Matter { salt_kg: 0.001 * exchange.salt_g(), ..plain };
        let into = Matter {
            water_kg: (exchange.water_gain * dried.solids_kg()).clamp(-dried.water_kg, vinegar.water_kg),
            acid_kg: (0.01 * exchange.acid_percent * dried.total_kg()).clamp(0.0, vinegar.acid_kg),
            ..Matter::default()
        };
        let even_kg = even_kg(dried, exchange.salt_g_per_100ml);
        let salt_out_kg = (1.0 - exchange.left_share).max(0.0) * (dried.salt_kg - even_kg);
        let out = Matter { salt_kg: salt_out_kg.max(-vinegar.salt_kg), ..Matter::default() };
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
