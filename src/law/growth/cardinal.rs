//! Factors between 0 and 1 by which one condition holds growth back: Rosso's cardinal model, squares, lines, acids, and their interaction.
//!
//! A figure that is no number holds nothing back, as everywhere in this folder.

use crate::source::Correlation;

/// The power of a cardinal model: one for pH, two for temperature, either for water activity.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Power {
    /// n = 1.
    One,
    /// n = 2.
    Two,
}

/// Where growth begins, is fastest and ends along one condition.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cardinal {
    /// No growth at or below it.
    pub least: f64,
    /// The fastest growth.
    pub best: f64,
    /// No growth at or above it.
    pub most: f64,
}

impl Cardinal {
    /// Returns the three values of a record.
    #[must_use]
    pub const fn of(record: &Correlation<3>) -> Self {
        let [least, best, most] = record.coefficients;
        Self { least, best, most }
    }

    /// Returns the factor of Rosso's cardinal model, 0 to 1: 0 outside least and most.
    ///
    /// CM_n(x) = (x − max)(x − min)ⁿ / {(opt − min)ⁿ⁻¹ [(opt − min)(x − opt) − (opt − max)((n − 1) opt + min − n x)]}
    ///
    /// # Source
    /// Rosso 1993 and 1995, in the form of two public R packages, one of them [`crate::source::SourceId::DynamicListeria`].
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::growth::{Cardinal, Power};
    /// let temperature = Cardinal { least: 7.7, best: 40.6, most: 46.7 };
    /// assert_eq!(temperature.factor(7.0, Power::Two), 0.0);
    /// assert!((temperature.factor(40.6, Power::Two) - 1.0).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn factor(&self, x: f64, power: Power) -> f64 {
        let Self { least, best, most } = *self;
        if x.is_nan() {
            return 1.0;
        }
        if x <= least || x >= most {
            return 0.0;
        }
        let (above, below) = match power {
            Power::One => ((x - most) * (x - least), (best - least) * (x - best) - (best - most) * (least - x)),
            Power::Two => (
                (x - most) * (x - least) * (x - least),
                (best - least) * ((best - least) * (x - best) - (best - most) * (best + least - 2.0 * x)),
            ),
        };
        between(above / below)
    }

    /// Returns ((x − least)/(best − least))², 1 from the best to the most, 0 outside; the plateau is ours and to the cautious side.
    #[must_use]
    pub fn squared(&self, x: f64) -> f64 {
        if x.is_nan() {
            return 1.0;
        }
        if x <= self.least || x >= self.most {
            return 0.0;
        }
        let way = (x - self.least) / (self.best - self.least);
        between(way * way)
    }

    /// Returns Le Marc's distance ((best − x)/(best − least))³, 0 at the best and above it, 1 at the least and below it.
    #[must_use]
    pub fn distance(&self, x: f64) -> f64 {
        let way = (self.best - x) / (self.best - self.least);
        between_or_nothing(way * way * way)
    }
}

/// Holds a factor between 0 and 1.
fn between(factor: f64) -> f64 {
    if factor.is_nan() { 1.0 } else { factor.clamp(0.0, 1.0) }
}

/// Holds a distance between 0 and 1.
fn between_or_nothing(distance: f64) -> f64 {
    if distance.is_nan() { 0.0 } else { distance.clamp(0.0, 1.0) }
}

/// Returns the factor (x − least)/(1 − least) of water activity, held between 0 and 1.
///
/// # Example
/// ```
/// assert!((vatsketch::law::growth::line(0.975, 0.95) - 0.5).abs() < 1e-12);
/// ```
#[must_use]
pub fn line(water_activity: f64, least: f64) -> f64 {
    between((water_activity - least) / (1.0 - least))
}

/// Returns how much of an acid is not split: total/(1 + 10^(pH − pK)), in the unit of the total.
///
/// # Example
/// ```
/// assert!((vatsketch::law::growth::undissociated(40.0, 3.86, 3.86) - 20.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn undissociated(total: f64, ph: f64, pk: f64) -> f64 {
    total / (1.0 + 10.0_f64.powf(ph - pk))
}

/// Returns the factor 1 − (amount/inhibiting)^alpha of an acid, 0 from the inhibiting amount on.
///
/// # Arguments
/// * `amount`: of the undissociated acid; less than none counts as none
/// * `inhibiting`: the amount from which nothing grows, > 0, in the same unit
/// * `alpha`: 1 for lactic, 0.5 for acetic acid
///
/// # Example
/// ```
/// assert!((vatsketch::law::growth::hindered(1.0, 4.0, 0.5) - 0.5).abs() < 1e-12);
/// ```
#[must_use]
pub fn hindered(amount: f64, inhibiting: f64, alpha: f64) -> f64 {
    // Where the acid is no number, `max` gives 0.
    let share = amount.max(0.0) / inhibiting;
    // The two powers in use are exact and quick; calculated for every place and step.
    let hold = if (alpha - 1.0).abs() < f64::EPSILON {
        share
    } else if (alpha - 0.5).abs() < f64::EPSILON {
        share.sqrt()
    } else {
        share.powf(alpha)
    };
    (1.0 - hold).max(0.0)
}

/// Distances of several conditions from the best, summed up so that one more costs only a few products.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Distances {
    sum: f64,
    left: f64,
}

impl Distances {
    /// Returns the sum of distances, each 0 at the best to 1 at the limit.
    #[must_use]
    pub fn of(distances: &[f64]) -> Self {
        let held = distances.iter().map(|distance| between_or_nothing(*distance));
        held.fold(Self { sum: 0.0, left: 1.0 }, |all, d| Self { sum: all.sum + d * (1.0 - d), left: all.left * (1.0 - d) })
    }

    /// Returns the interaction ξ with one more distance.
    #[must_use]
    pub fn interaction_with(&self, distance: f64) -> f64 {
        let d = between_or_nothing(distance);
        let left = self.left * (1.0 - d);
        if left <= 0.0 {
            return 0.0;
        }
        // φᵢ / Π_{j≠i} (1 − φⱼ) is φᵢ (1 − φᵢ) over the product of all.
        let psi = (self.sum + d * (1.0 - d)) / (2.0 * left);
        if psi <= 0.5 { 1.0 } else { (2.0 * (1.0 - psi)).max(0.0) }
    }
}

/// Returns Le Marc's interaction ξ of distances φ: ψ = Σ φᵢ/[2 Π_{j≠i} (1 − φⱼ)]; 1 up to ψ = 0.5, then 2 (1 − ψ) down to 0 at ψ = 1.
///
/// # Source
/// Le Marc 2002 and Augustin 2005, in the code of [`crate::source::SourceId::DynamicListeria`]; that φ is held between 0 and 1 is ours.
///
/// # Example
/// ```
/// use vatsketch::law::growth::interaction;
/// assert_eq!((interaction(&[0.1, 0.1]), interaction(&[0.0, 1.0])), (1.0, 0.0));
/// ```
#[must_use]
pub fn interaction(distances: &[f64]) -> f64 {
    Distances::of(distances).interaction_with(0.0)
}
