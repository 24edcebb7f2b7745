//! How a rate goes with temperature and pH between a least, a best and a greatest value (Rosso 1993, 1995).

/// A least, a best and a greatest value, in this order.
pub type Cardinal = [f64; 3];

/// Returns the factor of a temperature, 0 to 1: (T−max)(T−min)²/{(opt−min)[(opt−min)(T−opt) − (opt−max)(opt+min−2T)]}, 0 outside.
#[must_use]
pub(super) fn warmth_factor([least, best, most]: Cardinal, temperature_c: f64) -> f64 {
    if !(least < temperature_c && temperature_c < most) {
        return 0.0;
    }
    let span = best - least;
    let below = span * (span * (temperature_c - best) - (best - most) * (best + least - 2.0 * temperature_c));
    (temperature_c - most) * (temperature_c - least) * (temperature_c - least) / below
}

/// Returns the factor of a pH, 0 to 1: (x−min)(x−max)/[(x−min)(x−max) − (x−opt)²], 0 outside.
#[must_use]
pub(super) fn ph_factor([least, best, most]: Cardinal, ph: f64) -> f64 {
    if !(least < ph && ph < most) {
        return 0.0;
    }
    let ends = (ph - least) * (ph - most);
    ends / (ends - (ph - best) * (ph - best))
}
