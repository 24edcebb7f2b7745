//! Salting between the turns.

use super::{DrainingOutcome, StageBalance, Stream};
use crate::design::SaltingDesign;
use crate::law::Matter;
use crate::law::food_density::cheese_volume_ml;
use crate::law::salt::{SALT_DIFFUSIVITY, even_after_days};

/// What the salting stage worked out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SaltingOutcome {
    /// All cheeses after salting.
    pub cheese: Matter,
    /// Salt to strew in all.
    pub salt_g: f64,
    /// Salt to strew on each cheese in all.
    pub salt_each_g: f64,
    /// Salt to strew on one face at one salted turn.
    pub salt_each_turn_g: f64,
    /// Salt that stays in the cheeses.
    pub salt_kept_g: f64,
    /// Salt in the cheese, per cent by mass.
    pub salt_percent: f64,
    /// Salt in the moisture, g per 100 g of water.
    pub salt_in_moisture_percent: f64,
    /// Days until salt from both faces is 95 % even through the cheese.
    pub salt_even_days: f64,
    /// Cheeses.
    pub cheese_count: u32,
    /// Mass of a cheese after salting.
    pub cheese_g: f64,
    /// Diameter of a cheese.
    pub diameter_mm: f64,
    /// Thickness of a cheese.
    pub thickness_mm: f64,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Why the cheeses cannot be salted.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum SaltingError {
    /// Salt is to be strewn, but at no turn.
    #[error("{salt_percent:.1} % of salt is to be strewn at no turn at all; salt at one turn at least, or set the salt to 0 %")]
    NoSaltedTurn {
        /// The salt chosen.
        salt_percent: f64,
    },
    /// More salted turns than turns.
    #[error("{salted_turns} turns are to be salted, but there are only {turn_count}; turn more often, or salt at fewer turns")]
    MoreSaltedThanTurned {
        /// Salted turns chosen.
        salted_turns: u32,
        /// Turns chosen.
        turn_count: u32,
    },
}

/// Returns the salted cheeses.
///
/// Salt is a share of the drained curd by mass; a share of it runs off with the last whey. Without salt, the number of salted turns is idle.
///
/// # Arguments
/// * `turn_count`: turns in the moulds
///
/// # Errors
/// [`SaltingError`].
///
/// # Example
/// ```
/// use vatsketch::{design::SaltingDesign, law::Matter, process::{salting, DrainingOutcome}};
/// let curd = Matter { water_kg: 0.6, fat_kg: 0.2, casein_kg: 0.2, ..Matter::default() };
/// let drained = DrainingOutcome { curd, cheese_count: 10, diameter_mm: 60.0, ..DrainingOutcome::default() };
/// let design = SaltingDesign { salt_percent: 1.5, salt_run_off_percent: 0.0, ..SaltingDesign::default() };
/// let salted = salting(&design, 4, &drained)?;
/// assert!((salted.salt_in_moisture_percent - 2.5).abs() < 1e-12);
/// # Ok::<(), vatsketch::process::SaltingError>(())
/// ```
pub fn salting(design: &SaltingDesign, turn_count: u32, draining: &DrainingOutcome) -> Result<SaltingOutcome, SaltingError> {
    let SaltingDesign { salt_percent, salted_turns, salt_run_off_percent } = *design;
    let salts = salt_percent > 0.0;
    if salts && salted_turns == 0 {
        return Err(SaltingError::NoSaltedTurn { salt_percent });
    }
    if salts && salted_turns > turn_count {
        return Err(SaltingError::MoreSaltedThanTurned { salted_turns, turn_count });
    }
    let cheeses = f64::from(draining.cheese_count);
    let salt_kg = salt_percent / 100.0 * draining.curd.total_kg();
    let run_off_kg = salt_run_off_percent / 100.0 * salt_kg;
    let salt = |salt_kg| Matter { salt_kg, ..Matter::default() };
    let (strewn, run_off) = (salt(salt_kg), salt(run_off_kg));
    let cheese = draining.curd + strewn - run_off;
    let salt_each_g = 1000.0 * salt_kg / cheeses;
    let area_mm2 = std::f64::consts::PI / 4.0 * draining.diameter_mm.powi(2);
    let thickness_mm = 1000.0 * cheese_volume_ml(&cheese) / cheeses / area_mm2;
    Ok(SaltingOutcome {
        cheese,
        salt_g: 1000.0 * salt_kg,
        salt_each_g,
        salt_each_turn_g: if salts { salt_each_g / f64::from(salted_turns) } else { 0.0 },
        salt_kept_g: 1000.0 * cheese.salt_kg,
        salt_percent: cheese.percent(cheese.salt_kg),
        salt_in_moisture_percent: cheese.salt_in_moisture_percent(),
        salt_even_days: even_after_days(thickness_mm / 2000.0, SALT_DIFFUSIVITY.value),
        cheese_count: draining.cheese_count,
        cheese_g: 1000.0 * cheese.total_kg() / cheeses,
        diameter_mm: draining.diameter_mm,
        thickness_mm,
        balance: StageBalance {
            came: draining.curd,
            added: vec![Stream { name: "salt", matter: strewn }],
            left: vec![Stream { name: "salt in the drip", matter: run_off }],
            goes_on: cheese,
        },
    })
}
