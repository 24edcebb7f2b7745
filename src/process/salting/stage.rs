//! The salting stage of a batch: dry salt between the turns.

use super::column::SaltColumn;
use super::dry_salting::{DrySalting, Salted, dry_salt};
use super::profile::{SaltPoint, SaltProfile};
use super::run::SaltStuck;
use crate::design::SaltingDesign;
use crate::law::food_density::cheese_volume_ml;
use crate::law::salt::{SALT_DIFFUSIVITY, even_days};
use crate::law::{Matter, coat};
use crate::process::{CultureNow, DrainingOutcome, Factors, Given, Sourness, StageBalance, Stream};
use std::f64::consts::PI;

/// What the salting stage calculates.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SaltingOutcome {
    /// All cheeses after salting.
    pub cheese: Matter,
    /// Salt to sprinkle in all.
    pub salt_g: f64,
    /// Salt to sprinkle on each cheese in all.
    pub salt_each_g: f64,
    /// Salt to sprinkle on one face at one salted turn.
    pub salt_each_turn_g: f64,
    /// Salt to sprinkle at one salted turn, all cheeses.
    pub salt_turn_g: f64,
    /// Salt that stays in the cheeses.
    pub salt_kept_g: f64,
    /// Salt in the cheese, per cent by mass.
    pub salt_percent: f64,
    /// Salt in the moisture, g per 100 g of water.
    pub salt_in_moisture_percent: f64,
    /// Days until the salt has evened out; 0 without salt.
    pub even_days: f64,
    /// Least and greatest of those days, by the range of the diffusivity.
    pub likely_even_days: (f64, f64),
    /// Cheeses.
    pub cheese_count: u32,
    /// Mass of a cheese after salting.
    pub cheese_g: f64,
    /// Diameter of a cheese.
    pub diameter_mm: f64,
    /// Thickness of a cheese.
    pub thickness_mm: f64,
    /// Salt through the thickness from ladling to unmoulding.
    pub profile: SaltProfile,
    /// The last point of that.
    pub unmoulded: SaltPoint,
    /// Least and greatest likely salt in the moisture of the faces then, by the range of the diffusivity, g per 100 g.
    pub likely_surface_percent: (f64, f64),
    /// The same at the centre.
    pub likely_centre_percent: (f64, f64),
    /// Where the salt is at unmoulding, the cheese as it lies then.
    pub column: SaltColumn,
    /// Whether salt still lies undissolved on the faces at unmoulding.
    pub salt_lies_on_faces: bool,
    /// Hours from ladling to unmoulding.
    pub unmoulded_h: f64,
    /// Pepper for all cheeses; it lies on them and is not in their mass.
    pub pepper_g: f64,
    /// Pepper for each cheese.
    pub pepper_each_g: f64,
    /// How thick the pepper lies.
    pub coat_mm: f64,
    /// Resistance of the pepper to vapour, s/m.
    pub coat_s_m: f64,
    /// Temperature of the cheeses at unmoulding.
    pub temperature_c: f64,
    /// How sour they are.
    pub sourness: Sourness,
    /// What crossed the edge of the stage.
    pub balance: StageBalance,
}

/// Why the cheeses cannot be salted.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum SaltingError {
    /// Salt is to be sprinkled, but at no turn.
    #[error("{salt_percent:.1} % of salt is to be sprinkled at no turn at all; salt at one turn at least, or set the salt to 0 %")]
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
    /// The salt's way inwards cannot be calculated.
    #[error(transparent)]
    Stuck(#[from] SaltStuck),
}

/// Returns the salted cheeses: a mass balance of the salt, its way inwards from the faces until unmoulding, and how long it takes to even
/// out ([`even_days`]).
///
/// # Arguments
/// * `drained`: its `turns_h` are the turns of which the first are salted
/// * `draining_temperature_c`: temperature of the cheeses in the moulds, 0 to 60 °C
///
/// # Errors
/// [`SaltingError`].
pub fn salting(
    design: &SaltingDesign,
    drained: &DrainingOutcome,
    draining_temperature_c: f64,
) -> Result<SaltingOutcome, SaltingError> {
    salting_given(design, drained, draining_temperature_c, &Given::default())
}

/// Returns the same as [`salting()`] under other parameters.
///
/// # Errors
/// As for [`salting()`].
pub fn salting_given(
    design: &SaltingDesign,
    drained: &DrainingOutcome,
    draining_temperature_c: f64,
    given: &Given,
) -> Result<SaltingOutcome, SaltingError> {
    let turn_count = drained.turns_h.len() as u32;
    let SaltingDesign { salt_percent, salted_turns, salt_run_off_percent, pepper_g_dm2, .. } = *design;
    if salt_percent > 0.0 && salted_turns == 0 {
        return Err(SaltingError::NoSaltedTurn { salt_percent });
    }
    if salt_percent > 0.0 && salted_turns > turn_count {
        return Err(SaltingError::MoreSaltedThanTurned { salted_turns, turn_count });
    }
    let salt = |salt_kg: f64| Matter { salt_kg, ..Matter::default() };
    let salt_kg = 0.01 * salt_percent * drained.curd.total_kg();
    let lost_kg = 0.01 * salt_run_off_percent * salt_kg;
    let cheese = drained.curd + salt(salt_kg) - salt(lost_kg);
    let count = f64::from(drained.cheese_count.max(1));
    let salt_each_g = 1000.0 * salt_kg / count;
    let area_mm2 = PI * (0.5 * drained.diameter_mm).powi(2);
    let thickness_mm = 1000.0 * cheese_volume_ml(&cheese) / count / area_mm2;
    // A single salted face has the whole thickness before it.
    let depth_mm = if salted_turns > 1 { 0.5 * thickness_mm } else { thickness_mm };
    let days = |diffusivity_m2_s: f64| if salt_kg > 0.0 { even_days(depth_mm, diffusivity_m2_s) } else { 0.0 };
    let pepper_each_g = pepper_g_dm2 * coat::area_dm2(drained.diameter_mm, thickness_mm);
    let coat_mm = coat::thickness_mm(pepper_g_dm2);
    let Factors { least, most, .. } = Factors::known_or(given.known.salt_diffusivity, &SALT_DIFFUSIVITY);
    let (slowest, fastest) = (least * SALT_DIFFUSIVITY.value, most * SALT_DIFFUSIVITY.value);
    let kept_each_turn_kg = (salt_kg - lost_kg) / f64::from(salted_turns.max(1));
    let Salted { profile, column, lies_on_the_faces, likely_surface_percent, likely_centre_percent } =
        dry_salt(&DrySalting { drained, draining_temperature_c, thickness_mm, kept_each_turn_kg, salted_turns, given })?;
    Ok(SaltingOutcome {
        cheese,
        salt_g: 1000.0 * salt_kg,
        salt_each_g,
        salt_each_turn_g: salt_each_g / f64::from(salted_turns.max(1)),
        salt_turn_g: 1000.0 * salt_kg / f64::from(salted_turns.max(1)),
        salt_kept_g: 1000.0 * (salt_kg - lost_kg),
        salt_percent: cheese.percent(cheese.salt_kg),
        salt_in_moisture_percent: cheese.salt_in_moisture_percent(),
        cheese_count: drained.cheese_count,
        cheese_g: 1000.0 * cheese.total_kg() / count,
        diameter_mm: drained.diameter_mm,
        thickness_mm,
        even_days: days(given.parameters.salt_diffusivity * SALT_DIFFUSIVITY.value),
        likely_even_days: (days(fastest), days(slowest)),
        unmoulded: profile.points.last().copied().unwrap_or_default(),
        likely_surface_percent,
        likely_centre_percent,
        profile,
        column,
        salt_lies_on_faces: lies_on_the_faces,
        unmoulded_h: drained.draining_h,
        pepper_g: count * pepper_each_g,
        pepper_each_g,
        coat_mm,
        coat_s_m: coat::resistance_s_m(coat_mm),
        temperature_c: drained.temperature_c,
        sourness: in_salted_cheese(&drained.sourness, drained.curd.total_kg() / cheese.total_kg()),
        balance: StageBalance {
            came: drained.curd,
            added: vec![Stream { name: "salt", matter: salt(salt_kg) }],
            left: vec![Stream { name: "salt in the drip", matter: salt(lost_kg) }],
            goes_on: cheese,
        },
    })
}

/// Returns how sour the cheese is when salt has made it heavier: the cells of its culture are as many as before.
fn in_salted_cheese(sourness: &Sourness, lighter: f64) -> Sourness {
    let thinned = |culture: CultureNow| CultureNow { cells_per_g: lighter * culture.cells_per_g, ..culture };
    Sourness { culture: sourness.culture.map(thinned), ..*sourness }
}
