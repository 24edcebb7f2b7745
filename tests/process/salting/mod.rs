//! Tests of `src/process/salting`.

mod column;
mod dry_salting;
mod series;

/// Water of an even cheese that does not change, kg per kg of salt-free solids.
const WATER: f64 = 1.5;
/// Its diffusivity, m²/s.
const DIFFUSIVITY: f64 = 2.5e-10;
/// Its thickness.
const THICKNESS_MM: f64 = 20.0;

/// Fills an even cheese that does not change.
fn even(_at_s: f64, water: &mut [f64]) -> f64 {
    water.fill(WATER);
    DIFFUSIVITY
}

/// Returns the seconds after which D t/L² is this, with L the whole thickness.
fn seconds(fourier: f64) -> f64 {
    fourier * (0.001 * THICKNESS_MM).powi(2) / DIFFUSIVITY
}
