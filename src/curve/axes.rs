//! Limits of axes that hold still while a slider moves.

/// Steps between which a limit jumps: each about a third above the last.
const STEPS: [f64; 8] = [1.0, 1.5, 2.0, 3.0, 4.0, 6.0, 8.0, 10.0];

/// Returns the least round number at or above a value, so that small changes leave the axis where it is.
///
/// # Arguments
/// * `value`: > 0; anything else gives 1
#[must_use]
pub(super) fn round_up(value: f64) -> f64 {
    if !(value > 0.0 && value.is_finite()) {
        return 1.0;
    }
    let power = 10.0_f64.powf(value.log10().floor());
    let step = STEPS.into_iter().find(|step| step * power >= value * (1.0 - 1e-9));
    step.unwrap_or(10.0) * power
}

/// Returns the greatest value of some points' second coordinate; 0 of none.
#[must_use]
pub(super) fn highest(points: &[[f64; 2]]) -> f64 {
    points.iter().map(|[_, y]| *y).fold(0.0, f64::max)
}
