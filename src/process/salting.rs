//! Salting between the turns.

use super::{DrainingOutcome, StageBalance};
use crate::design::SaltingDesign;
use crate::law::Matter;

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
/// # Errors
/// [`SaltingError`].
pub fn salting(_design: &SaltingDesign, _turn_count: u32, _draining: &DrainingOutcome) -> Result<SaltingOutcome, SaltingError> {
    Ok(SaltingOutcome::default())
}
