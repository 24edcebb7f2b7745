//! What souring does to the calcium of the casein: it dissolves, and leaves with the whey.

use crate::source::Correlation;

crate::constants! {
    /// Share of the milk's calcium in the casein.
    COLLOIDAL_SHARE = { "Calcium of milk that is in the casein at its own pH", 0.67, "1", (0.60, 0.72), Textbook, "about two thirds", FromMemory }
    /// What the curd's own whey holds.
    CURD_WHEY_SHARE = { "Whey that stays in the curd, of that of the milk", 0.12, "1", (0.08, 0.18), Ourselves, "from the water of fresh curd", Judged }
}

crate::correlations! {
    /// What is left in the casein.
    COLLOIDAL_LEFT = { "Colloidal calcium phosphate left in the casein", "pairs of pH and share, straight between", [
        4.9, 0.0, 5.0, 0.06, 5.2, 0.22, 5.4, 0.42, 5.6, 0.58, 5.8, 0.70, 6.0, 0.80, 6.2, 0.88, 6.4, 0.95, 6.65, 1.0
    ], "1", (4.9, 6.65), "pH", FoxMcSweeney, "that all is dissolved below about 4.9 was seen; the rest from memory, each ± 0.08", FromMemory }
}

/// Returns the value of a record of pairs, straight between them and the end value beyond.
fn straight<const N: usize>(record: &Correlation<N>, x: f64) -> f64 {
    let mut before: Option<(f64, f64)> = None;
    for pair in record.coefficients.chunks_exact(2) {
        let [at, value] = pair else { continue };
        if x <= *at {
            return before.map_or(*value, |(from, low)| low + (value - low) * (x - from) / (at - from));
        }
        before = Some((*at, *value));
    }
    if x.is_nan() { x } else { before.map_or(f64::NAN, |(_, value)| value) }
}

/// Returns the share of the colloidal calcium phosphate that is still in the casein, 0 to 1.
///
/// # Example
/// ```
/// assert!((vatsketch::law::souring::colloidal_calcium_left(5.2) - 0.22).abs() < 1e-12);
/// ```
#[must_use]
pub fn colloidal_calcium_left(ph: f64) -> f64 {
    straight(&COLLOIDAL_LEFT, ph)
}

/// Returns the share of the milk's calcium that stays with the curd: what is in the casein, and what is dissolved in the curd's own whey.
///
/// # Arguments
/// * `ph_at_draining`: pH when the whey leaves; what dissolves later stays
///
/// # Example
/// ```
/// use vatsketch::law::souring::curd_calcium_share;
/// assert!(curd_calcium_share(6.5) > 0.6 && curd_calcium_share(4.6) < 0.15);
/// ```
#[must_use]
pub fn curd_calcium_share(ph_at_draining: f64) -> f64 {
    let held = COLLOIDAL_SHARE.value * colloidal_calcium_left(ph_at_draining);
    held + CURD_WHEY_SHARE.value * (1.0 - held)
}
