//! Blending by mass: Pearson's square, casein to fat, and two targets at once.

/// Why there is no such blend.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum BlendError {
    /// No mixture of the two has that strength.
    #[error("cannot blend to {target:.2} %: the streams reach only from {least:.2} % to {most:.2} %; choose a target between them")]
    OutOfReach {
        /// The wanted strength.
        target: f64,
        /// The least that is reached.
        least: f64,
        /// The most that is reached; the addition's own strength is approached, never met.
        most: f64,
    },
    /// No mixture has that ratio of casein to fat.
    #[error(
        "cannot blend to a casein to fat ratio of {target:.3}: the streams reach only from {least:.3} to {most:.3}; choose a target between them"
    )]
    RatioOutOfReach {
        /// The wanted ratio.
        target: f64,
        /// The least that is reached.
        least: f64,
        /// The most that is reached.
        most: f64,
    },
    /// With this fat, that casein is not reached.
    #[error(
        "cannot blend to {casein:.2} % casein at {fat:.2} % fat: at that fat the streams reach only from {least:.2} % to {most:.2} % casein; choose a casein between them, or another fat"
    )]
    CaseinOutOfReach {
        /// The wanted casein.
        casein: f64,
        /// The wanted fat.
        fat: f64,
        /// The least casein at that fat.
        least: f64,
        /// The most casein at that fat.
        most: f64,
    },
}

/// Fat and casein of a stream, per cent by mass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Strength {
    /// Fat.
    pub fat: f64,
    /// Casein.
    pub casein: f64,
}

/// Returns the mass of an addition that brings a base to a target strength: x = m (T − A)/(B − T).
///
/// Pearson's square for a given base. By mass: volumes do not add up this way.
///
/// # Arguments
/// * `base_kg`: mass of the base, ≥ 0
/// * `base`, `addition`: strengths, % by mass
/// * `target`: strength of the blend, from the base's up to, but not at, the addition's
///
/// # Errors
/// [`BlendError::OutOfReach`].
///
/// # Source
/// [`crate::source::SourceId::GuelphNotes`], standardising.
///
/// # Example
/// ```
/// use vatsketch::law::blending::addition_kg;
/// assert!((addition_kg(500.0, 4.0, 35.0, 10.0)? - 120.0).abs() < 1e-9);
/// # Ok::<(), vatsketch::law::blending::BlendError>(())
/// ```
pub fn addition_kg(base_kg: f64, base: f64, addition: f64, target: f64) -> Result<f64, BlendError> {
    let (wanted, relief) = (target - base, addition - target);
    if wanted.abs() <= 0.0 {
        return Ok(0.0);
    }
    let within_reach = (wanted > 0.0 && relief > 0.0) || (wanted < 0.0 && relief < 0.0);
    if !within_reach {
        return Err(BlendError::OutOfReach { target, least: base.min(addition), most: base.max(addition) });
    }
    Ok(base_kg * wanted / relief)
}

/// Returns the mass of a part to take away (cream skimmed off) that leaves a target strength: x = m (A − T)/(B − T).
///
/// # Arguments
/// * `base_kg`: mass at first, ≥ 0
/// * `base`, `removed`: strengths, % by mass
/// * `target`: strength of what is left, on the other side of the base's from the part removed, and at least 0 %
///
/// # Errors
/// [`BlendError::OutOfReach`].
///
/// # Example
/// ```
/// use vatsketch::law::blending::removal_kg;
/// assert!((removal_kg(1000.0, 3.8, 40.0, 2.0)? - 47.37).abs() < 0.005);
/// # Ok::<(), vatsketch::law::blending::BlendError>(())
/// ```
pub fn removal_kg(base_kg: f64, base: f64, removed: f64, target: f64) -> Result<f64, BlendError> {
    let (least, most) = if removed > base { (0.0, base) } else { (base, 100.0) };
    let within_reach = least <= target && target <= most && (removed - base).abs() > 0.0;
    if !within_reach {
        return Err(BlendError::OutOfReach { target, least, most });
    }
    Ok(base_kg * (base - target) / (removed - target))
}

/// Returns the strength of a blend, % by mass: (m A + x B)/(m + x).
///
/// # Arguments
/// * `base_kg`, `addition_kg`: masses, ≥ 0, not both 0
/// * `base`, `addition`: strengths, % by mass
#[must_use]
pub fn blend_percent(base_kg: f64, base: f64, addition_kg: f64, addition: f64) -> f64 {
    (base_kg * base + addition_kg * addition) / (base_kg + addition_kg)
}

/// Returns the mass of an addition that brings a base to a ratio of casein to fat: x = m (R F − C)/(c − R f).
///
/// # Arguments
/// * `base_kg`: mass of the base, ≥ 0
/// * `base`, `addition`: their fat and casein
/// * `ratio`: casein to fat of the blend, about 0.70 for full-fat cheese
///
/// # Errors
/// [`BlendError::RatioOutOfReach`].
pub fn addition_for_ratio_kg(base_kg: f64, base: Strength, addition: Strength, ratio: f64) -> Result<f64, BlendError> {
    let excess = ratio * base.fat - base.casein;
    let relief = addition.casein - ratio * addition.fat;
    if excess.abs() <= 0.0 {
        return Ok(0.0);
    }
    let within_reach = (excess > 0.0 && relief > 0.0) || (excess < 0.0 && relief < 0.0);
    if within_reach {
        return Ok(base_kg * excess / relief);
    }
    let (one, other) = (base.casein / base.fat, addition.casein / addition.fat);
    Err(BlendError::RatioOutOfReach { target: ratio, least: one.min(other), most: one.max(other) })
}

/// Returns the masses of two additions (cream and dry milk) that bring a base to a fat and a casein at once.
///
/// Both balances together, two equations linear in the two masses:
/// x (f₁ − F) + y (f₂ − F) = m (F − f₀), and the same with casein.
///
/// # Arguments
/// * `base_kg`: mass of the base, ≥ 0
/// * `base`, `additions`: their fat and casein
/// * `target`: fat and casein of the blend
///
/// # Errors
/// [`BlendError::OutOfReach`] if no blend has that fat, [`BlendError::CaseinOutOfReach`] if none with that fat has that casein.
///
/// # Example
/// ```
/// use vatsketch::law::blending::{two_additions_kg, Strength};
/// let (milk, cream) = (Strength { fat: 3.4, casein: 2.5 }, Strength { fat: 36.0, casein: 1.6 });
/// let powder = Strength { fat: 0.8, casein: 27.8 };
/// let [cream_kg, powder_kg] = two_additions_kg(50.0, milk, [cream, powder], Strength { fat: 4.5, casein: 3.2 })?;
/// let fat = (50.0 * 3.4 + cream_kg * 36.0 + powder_kg * 0.8) / (50.0 + cream_kg + powder_kg);
/// assert!((fat - 4.5).abs() < 1e-12);
/// # Ok::<(), vatsketch::law::blending::BlendError>(())
/// ```
pub fn two_additions_kg(base_kg: f64, base: Strength, additions: [Strength; 2], target: Strength) -> Result<[f64; 2], BlendError> {
    let [one, two] = additions;
    let fat = [one.fat - target.fat, two.fat - target.fat];
    let casein = [one.casein - target.casein, two.casein - target.casein];
    let lacks = [base_kg * (target.fat - base.fat), base_kg * (target.casein - base.casein)];
    let determinant = cross(fat, casein);
    let masses =
        [(lacks[0] * casein[1] - fat[1] * lacks[1]) / determinant, (fat[0] * lacks[1] - lacks[0] * casein[0]) / determinant];
    let within_reach = masses.iter().all(|mass| mass.is_finite() && *mass >= 0.0);
    if within_reach { Ok(masses) } else { Err(beyond([base, one, two], target)) }
}

/// Returns the determinant of two rows.
const fn cross(one: [f64; 2], two: [f64; 2]) -> f64 {
    one[0] * two[1] - one[1] * two[0]
}

/// Names what is out of reach: the fat, or at that fat the casein. All blends lie in the triangle of the three streams.
fn beyond(corners: [Strength; 3], target: Strength) -> BlendError {
    let [p, q, r] = corners;
    let crossings = [(p, q), (q, r), (r, p)].into_iter().filter_map(|(from, to)| {
        let share = (target.fat - from.fat) / (to.fat - from.fat);
        (0.0..=1.0).contains(&share).then_some(from.casein + share * (to.casein - from.casein))
    });
    let (least, most) =
        crossings.fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), casein| (least.min(casein), most.max(casein)));
    if least <= most {
        return BlendError::CaseinOutOfReach { casein: target.casein, fat: target.fat, least, most };
    }
    let fats = corners.map(|corner| corner.fat);
    BlendError::OutOfReach {
        target: target.fat,
        least: fats.iter().copied().fold(f64::INFINITY, f64::min),
        most: fats.iter().copied().fold(f64::NEG_INFINITY, f64::max),
    }
}
