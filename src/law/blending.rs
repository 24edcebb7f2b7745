//! Bringing milk to a target with cream, skimmed milk or milk powder; always by mass, never by volume.

use super::Matter;

/// Why a mixture cannot be made.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum BlendError {
    /// No mixture of the two has that strength.
    #[error("cannot blend to {target}: the two reach only from {least} to {most}")]
    OutOfReach {
        /// What was wanted.
        target: f64,
        /// The weaker of the two.
        least: f64,
        /// The stronger of the two.
        most: f64,
    },
    /// The two additions do the same, so they cannot meet two targets.
    #[error("the two additions change fat and casein in the same proportion, so they cannot meet two targets")]
    Alike,
}

/// Returns how much of an addition brings a base to a target: x = m (T − A)/(B − T), the Pearson square.
///
/// # Arguments
/// * `base_kg`: mass of the base, ≥ 0
/// * `base`, `addition`, `target`: strengths by mass, in one unit; the target lies from the base's to just short of the addition's
///
/// # Errors
/// [`BlendError::OutOfReach`].
///
/// # Source
/// [`crate::source::SourceId::GuelphNotes`], standardising.
///
/// # Example
/// ```
/// use vatsketch::law::blending::{addition_kg, BlendError};
/// assert!((addition_kg(500.0, 4.0, 35.0, 10.0)? - 120.0).abs() < 1e-9);
/// # Ok::<(), BlendError>(())
/// ```
pub fn addition_kg(base_kg: f64, base: f64, addition: f64, target: f64) -> Result<f64, BlendError> {
    let between = (base <= target && target < addition) || (addition < target && target <= base);
    if !between {
        return Err(BlendError::OutOfReach { target, least: base.min(addition), most: base.max(addition) });
    }
    Ok(base_kg * (target - base) / (addition - target))
}

/// Returns the strength of a mixture, in the unit of the strengths.
///
/// # Arguments
/// * masses ≥ 0, not both zero
///
/// # Example
/// ```
/// assert_eq!(vatsketch::law::blending::blended(3.0, 2.0, 1.0, 6.0), 3.0);
/// ```
#[must_use]
pub fn blended(base_kg: f64, base: f64, addition_kg: f64, addition: f64) -> f64 {
    (base_kg * base + addition_kg * addition) / (base_kg + addition_kg)
}

/// A part of a matter, kg, and the per cent by mass that it shall have.
pub type StrengthPart = (fn(&Matter) -> f64, f64);

/// Returns how much of two additions brings milk to two strengths, whatever parts they are of; an amount may come out below zero.
///
/// For each part: e + x e₁ + y e₂ = 0, where e is what the matter holds of it beyond the wanted share; solved by Cramer's rule.
///
/// # Arguments
/// * `milk`: the milk; `first`, `second`: a kilogram of each addition; `parts`: the two parts and their wanted shares, %
///
/// # Errors
/// [`BlendError::Alike`].
pub fn two_additions_kg(
    milk: &Matter,
    first: &Matter,
    second: &Matter,
    parts: [StrengthPart; 2],
) -> Result<(f64, f64), BlendError> {
    let [one, other] = parts.map(|(part, percent)| {
        let excess = |matter: &Matter| part(matter) - 0.01 * percent * matter.total_kg();
        [excess(milk), excess(first), excess(second)]
    });
    let ([e, e_1, e_2], [f, f_1, f_2]) = (one, other);
    let determinant = e_1 * f_2 - e_2 * f_1;
    if determinant.abs() < 1e-15 {
        return Err(BlendError::Alike);
    }
    Ok(((e_2 * f - e * f_2) / determinant, (e * f_1 - e_1 * f) / determinant))
}
