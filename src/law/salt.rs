//! How long dry salt takes to even out in a cheese.

use std::f64::consts::PI;

crate::constants! {
    /// Diffusivity of common salt.
    SALT_DIFFUSIVITY = { "Diffusivity of common salt in the moisture of cheese", 2.3e-10, "m²/s", (1.0e-10, 5.0e-10), Floury2010, "table II, dry-salted cheese of the brined kind at 13 °C; 1.2 to 4 over its cheeses at 4 to 20 °C", Published }
}

/// Seconds in a day.
const SECONDS_PER_DAY: f64 = 86_400.0;
/// Unevenness that is left, as a share of what there was.
const LEFT: f64 = 0.05;

/// Returns the days until the unevenness of salt has fallen to a twentieth: t = ln 20 · L²/(π² D).
///
/// Salt lies on the faces, none leaves the cheese, and the side is not looked at. The slowest part of the unevenness then falls as
/// e^(−π² D t/L²) over a depth L, the depth from a salted face to the middle, or to the other face if that is not salted. Salt that is
/// slow to dissolve, and the water that it draws, are not in it.
///
/// # Arguments
/// * `depth_mm`: L, ≥ 0; half the thickness of a cheese that is salted on both faces
/// * `diffusivity_m2_s`: D, > 0
///
/// # Source
/// [`SALT_DIFFUSIVITY`]; the law is the slowest mode of diffusion in a slab (Crank 1975, chapter 4).
///
/// # Example
/// ```
/// use vatsketch::law::salt::{even_days, SALT_DIFFUSIVITY};
/// let days = even_days(11.0, SALT_DIFFUSIVITY.value);
/// assert!((days - 1.848).abs() < 0.001);
/// ```
#[must_use]
pub fn even_days(depth_mm: f64, diffusivity_m2_s: f64) -> f64 {
    let depth_m = 0.001 * depth_mm;
    -LEFT.ln() * depth_m * depth_m / (PI * PI * diffusivity_m2_s) / SECONDS_PER_DAY
}
