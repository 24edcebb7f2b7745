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
    /// Two targets at once would need less than nothing of one of them.
    #[error(
        "both targets together need {first_kg:.3} kg of the first and {second_kg:.3} kg of the second, and an amount below zero cannot be added; at that fat these three reach from {least_percent:.2} to {most_percent:.2} % of casein"
    )]
    Negative {
        /// Amount of the first.
        first_kg: f64,
        /// Amount of the second.
        second_kg: f64,
        /// Least casein that the three reach at the wanted fat.
        least_percent: f64,
        /// Most casein that the three reach at the wanted fat.
        most_percent: f64,
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

/// Returns how much of an addition brings milk to a ratio of casein to fat: x = m (R·F_A − C_A)/(C_B − R·F_B).
///
/// # Arguments
/// * `milk`: the milk; `addition`: a kilogram of what is added
/// * `casein_to_fat`: the wanted ratio, > 0
///
/// # Errors
/// [`BlendError::OutOfReach`] if the addition moves the ratio the wrong way or cannot reach it.
pub fn addition_for_ratio_kg(milk: &Matter, addition: &Matter, casein_to_fat: f64) -> Result<f64, BlendError> {
    let ratio = |matter: &Matter| matter.casein_kg / matter.fat_kg;
    let needed = casein_to_fat * milk.fat_kg - milk.casein_kg;
    let given = addition.casein_kg - casein_to_fat * addition.fat_kg;
    let amount_kg = addition.total_kg() * needed / given;
    if amount_kg.is_finite() && amount_kg >= 0.0 {
        return Ok(amount_kg);
    }
    let (one, other) = (ratio(milk), ratio(addition));
    Err(BlendError::OutOfReach { target: casein_to_fat, least: one.min(other), most: one.max(other) })
}

/// Returns how much of two additions brings milk to a fat and a casein, both per cent by mass: two balances solved together.
///
/// # Arguments
/// * `milk`: the milk; `first`, `second`: a kilogram of each addition (cream and dry milk, say)
///
/// # Errors
/// [`BlendError::Alike`]; [`BlendError::OutOfReach`] if no mixture has that fat; [`BlendError::Negative`] if none has that casein with it.
///
/// # Example
/// ```
/// use vatsketch::law::{blending::{additions_kg, BlendError}, composition::Animal, Matter};
/// let powder = Matter { water_kg: 0.03, fat_kg: 0.01, casein_kg: 0.28, whey_protein_kg: 0.08, carbohydrate_kg: 0.52, ash_kg: 0.08, ..Matter::default() };
/// let milk = Animal::Cow.milk() * 10.0;
/// let (cream_kg, powder_kg) = additions_kg(&milk, &Animal::Cow.cream(40.0), &powder, 4.5, 2.8)?;
/// let blend = milk + Animal::Cow.cream(40.0) * cream_kg + powder * powder_kg;
/// assert!((blend.percent(blend.casein_kg) - 2.8).abs() < 1e-9);
/// # Ok::<(), BlendError>(())
/// ```
pub fn additions_kg(
    milk: &Matter,
    first: &Matter,
    second: &Matter,
    fat_percent: f64,
    casein_percent: f64,
) -> Result<(f64, f64), BlendError> {
    let parts: [StrengthPart; 2] = [(|matter| matter.fat_kg, fat_percent), (|matter| matter.casein_kg, casein_percent)];
    let (first_kg, second_kg) = two_additions_kg(milk, first, second, parts)?;
    let possible = first_kg >= 0.0 && second_kg >= 0.0;
    if possible {
        return Ok((first_kg, second_kg));
    }
    let strengths = [milk, first, second].map(|matter| (matter.fat_percent(), matter.percent(matter.casein_kg)));
    let (least_percent, most_percent) = casein_reach(&strengths, fat_percent).ok_or_else(|| {
        let fats = strengths.map(|(fat, _)| fat);
        let (least, most) = (fats.iter().copied().fold(f64::INFINITY, f64::min), fats.iter().copied().fold(0.0, f64::max));
        BlendError::OutOfReach { target: fat_percent, least, most }
    })?;
    Err(BlendError::Negative { first_kg, second_kg, least_percent, most_percent })
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

/// Returns the least and the most casein of the mixtures of three that have a given fat: where the edges of their triangle cross it.
fn casein_reach(strengths: &[(f64, f64); 3], fat_percent: f64) -> Option<(f64, f64)> {
    let [milk, first, second] = *strengths;
    let crossings =
        [(milk, first), (first, second), (second, milk)].into_iter().filter_map(|((fat, casein), (fat_2, casein_2))| {
            let share = (fat_percent - fat) / (fat_2 - fat);
            (0.0..=1.0).contains(&share).then_some(casein + share * (casein_2 - casein))
        });
    crossings.fold(None, |reach, casein| {
        let (least, most) = reach.unwrap_or((casein, casein));
        Some((casein.min(least), casein.max(most)))
    })
}
