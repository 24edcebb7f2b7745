//! Bringing one milk to another's fat and casein with cream and dry milk, and what cream alone can do.

use super::Matter;
use super::blending::{BlendError, StrengthPart, addition_kg, two_additions_kg};

crate::constants! {
    /// Most solids-not-fat of cheese milk.
    SKIM_SOLIDS_LIMIT = { "Solids-not-fat of cheese milk, at most, when dry milk goes in", 11.0, "%", (10.0, 12.0), GuelphNotes, "general guidelines on standardising", Published }
}

/// What is added to a milk, and what that makes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Addition {
    /// Cream, kg.
    pub cream_kg: f64,
    /// Low-heat non-fat dry milk, kg.
    pub dry_milk_kg: f64,
    /// The milk with both.
    pub blend: Matter,
}

/// How far a milk comes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Standardised {
    /// To both, fat and casein.
    Both(Addition),
    /// Only as near as the limit on solids-not-fat allows: to the fat, if that can be met within it, and not to the casein.
    Limited {
        /// What stays within the limit.
        addition: Addition,
        /// What both would take.
        beyond: Addition,
    },
}

/// Why a milk cannot be brought to that fat and casein by adding.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum StandardisationError {
    /// Fat and casein would both have to go down.
    #[error(
        "this milk is richer in both ({fat_percent:.2} % of fat for {wanted_fat_percent:.2} %, {casein_percent:.2} % of casein for {wanted_casein_percent:.2} %): cream and dry milk only add; skimmed milk brings the fat down, but nothing that is added takes casein away"
    )]
    RicherInBoth {
        /// Fat of the milk.
        fat_percent: f64,
        /// Wanted fat.
        wanted_fat_percent: f64,
        /// Casein of the milk.
        casein_percent: f64,
        /// Wanted casein.
        wanted_casein_percent: f64,
    },
    /// The fat would have to go down.
    #[error(
        "this milk would need {cream_less_kg:.3} kg of cream taken away to come from {fat_percent:.2} % to {wanted_fat_percent:.2} % of fat at that casein: cream only adds; start from a leaner milk, or add skimmed milk"
    )]
    TooFat {
        /// Cream to be taken away, kg.
        cream_less_kg: f64,
        /// Fat of the milk.
        fat_percent: f64,
        /// Wanted fat.
        wanted_fat_percent: f64,
    },
    /// The casein would have to go down.
    #[error(
        "at {wanted_fat_percent:.2} % of fat this milk has more casein than {wanted_casein_percent:.2} %: cream lowers the casein only a little, and dry milk only adds to it"
    )]
    TooMuchCasein {
        /// Wanted fat.
        wanted_fat_percent: f64,
        /// Wanted casein.
        wanted_casein_percent: f64,
    },
    /// The balances have no answer.
    #[error(transparent)]
    Blend(#[from] BlendError),
}

/// Returns what cream alone does: it meets the fat, and whatever casein comes of it.
///
/// # Arguments
/// * `milk`: the milk; `cream`: a kilogram of it; `fat_percent`: the wanted fat, from the milk's to just short of the cream's
///
/// # Errors
/// [`BlendError::OutOfReach`] if the fat would have to go down, or beyond the cream's.
///
/// # Example
/// ```
/// use vatsketch::law::{blending::BlendError, composition::Animal, standardisation::cream_alone};
/// let (cow, sheep) = (Animal::Cow, Animal::Sheep.milk());
/// let creamed = cream_alone(&(cow.milk() * 5.0), &cow.cream(30.0), sheep.fat_percent())?;
/// assert!((creamed.blend.fat_percent() - 7.0).abs() < 0.01);
/// // Half the casein of sheep's milk is still missing.
/// assert!(creamed.blend.percent(creamed.blend.casein_kg) < 2.4);
/// # Ok::<(), BlendError>(())
/// ```
pub fn cream_alone(milk: &Matter, cream: &Matter, fat_percent: f64) -> Result<Addition, BlendError> {
    let cream_kg = addition_kg(milk.total_kg(), milk.fat_percent(), cream.fat_percent(), fat_percent)?;
    Ok(added(milk, (cream, cream_kg), (&Matter::default(), 0.0)))
}

/// Returns what cream and dry milk do together: two balances, for fat and for casein; where these would bring the solids-not-fat beyond
/// [`SKIM_SOLIDS_LIMIT`], the balances for fat and for that limit.
///
/// # Arguments
/// * `milk`: the milk; `cream`, `dry_milk`: a kilogram of each
/// * `fat_percent`, `casein_percent`: what is asked for, by mass
///
/// # Errors
/// [`StandardisationError`] if an amount below zero would be needed.
///
/// # Source
/// [`crate::source::SourceId::GuelphNotes`], standardising and its general guidelines.
///
/// # Example
/// ```
/// use vatsketch::law::{composition::{Animal, dry_milk}, standardisation::{standardised, Standardised, StandardisationError}};
/// let (cow, sheep) = (Animal::Cow, Animal::Sheep.milk());
/// let got = standardised(&(cow.milk() * 5.0), &cow.cream(30.0), &dry_milk(), sheep.fat_percent(), sheep.percent(sheep.casein_kg))?;
/// // The casein of sheep's milk would take more dry milk than cheese milk should hold.
/// assert!(matches!(got, Standardised::Limited { .. }));
/// # Ok::<(), StandardisationError>(())
/// ```
pub fn standardised(
    milk: &Matter,
    cream: &Matter,
    dry_milk: &Matter,
    fat_percent: f64,
    casein_percent: f64,
) -> Result<Standardised, StandardisationError> {
    let fat: StrengthPart = (|matter| matter.fat_kg, fat_percent);
    let (cream_kg, dry_milk_kg) = two_additions_kg(milk, cream, dry_milk, [fat, (|matter| matter.casein_kg, casein_percent)])?;
    // A milk that has both already needs nothing; rounding must not make that a refusal.
    let nothing_kg = -1e-12 * milk.total_kg();
    match (cream_kg >= nothing_kg, dry_milk_kg >= nothing_kg) {
        (true, true) => {}
        (false, false) => {
            return Err(StandardisationError::RicherInBoth {
                fat_percent: milk.fat_percent(),
                wanted_fat_percent: fat_percent,
                casein_percent: milk.percent(milk.casein_kg),
                wanted_casein_percent: casein_percent,
            });
        }
        (false, true) => {
            return Err(StandardisationError::TooFat {
                cream_less_kg: -cream_kg,
                fat_percent: milk.fat_percent(),
                wanted_fat_percent: fat_percent,
            });
        }
        (true, false) => {
            return Err(StandardisationError::TooMuchCasein {
                wanted_fat_percent: fat_percent,
                wanted_casein_percent: casein_percent,
            });
        }
    }
    let both = added(milk, (cream, cream_kg.max(0.0)), (dry_milk, dry_milk_kg.max(0.0)));
    if both.blend.solids_not_fat_percent() <= SKIM_SOLIDS_LIMIT.value {
        return Ok(Standardised::Both(both));
    }
    Ok(Standardised::Limited { addition: within_limit(milk, cream, dry_milk, fat)?, beyond: both })
}

/// Returns what meets the fat and comes up to the limit on solids-not-fat. Where that cannot be: cream alone, for a milk that stands beyond
/// the limit by itself; dry milk alone up to the limit, for one that only ever more dry milk would thin to that fat.
fn within_limit(milk: &Matter, cream: &Matter, dry_milk: &Matter, fat: StrengthPart) -> Result<Addition, StandardisationError> {
    let solids: StrengthPart = (|matter| matter.solids_kg() - matter.fat_kg, SKIM_SOLIDS_LIMIT.value);
    let (cream_kg, dry_milk_kg) = two_additions_kg(milk, cream, dry_milk, [fat, solids])?;
    if dry_milk_kg < 0.0 {
        return Ok(cream_alone(milk, cream, fat.1)?);
    }
    if cream_kg >= 0.0 {
        return Ok(added(milk, (cream, cream_kg), (dry_milk, dry_milk_kg)));
    }
    let (has, adds) = (milk.solids_not_fat_percent(), dry_milk.solids_not_fat_percent());
    let dry_milk_kg = addition_kg(milk.total_kg(), has, adds, SKIM_SOLIDS_LIMIT.value)?;
    Ok(added(milk, (cream, 0.0), (dry_milk, dry_milk_kg)))
}

fn added(milk: &Matter, (cream, cream_kg): (&Matter, f64), (dry_milk, dry_milk_kg): (&Matter, f64)) -> Addition {
    Addition { cream_kg, dry_milk_kg, blend: *milk + *cream * cream_kg + *dry_milk * dry_milk_kg }
}
