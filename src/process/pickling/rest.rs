//! What a rest out of the vinegar evens out inside a cheese.
//!
//! Nothing goes in or out; acid, salt and water each go on to spread as they did. Where cheeses are stacked it is the pile that rests.

use super::error::PicklingError;
use super::inside::Saltiness;
use super::leach::LeachRun;
use super::soak::Soak;
use super::solver::SoakRun;
use super::swell::Swelling;
use super::swell::SwollenPoint;

/// Hours of rest for which that is calculated.
pub const REST_H: f64 = 24.0;

/// One quantity at centre and face, when the cheese comes out and after the rest.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct EvenedOut {
    /// At the centre, before and after.
    pub centre: (f64, f64),
    /// In the middle of the top face, before and after.
    pub face: (f64, f64),
}

/// What a rest evens out.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Rest {
    /// pH.
    pub ph: EvenedOut,
    /// Moisture, %.
    pub moisture_percent: EvenedOut,
    /// Salt in the moisture, g in 100 g of water.
    pub salt_percent: EvenedOut,
}

/// Returns a soak whose faces are shut.
pub(super) fn shut(soak: &Soak) -> Soak {
    Soak { open: (0.0, 0.0), ..soak.clone() }
}

/// Returns the pH of a cheese in shut rings before and after its rest.
pub(super) fn ph(mut run: SoakRun<'_>) -> Result<EvenedOut, PicklingError> {
    let before = run.state();
    run.advance(3600.0 * REST_H, &mut |_| ())?;
    let after = run.state();
    Ok(EvenedOut { centre: (before.centre_ph, after.centre_ph), face: (before.surface_ph, after.surface_ph) })
}

/// Returns the same of salt.
pub(super) fn salt(saltiness: &Saltiness<'_>, mut run: LeachRun<'_>) -> Result<EvenedOut, PicklingError> {
    let before = saltiness.at_end(&run);
    run.advance(3600.0 * REST_H, &mut |_| ())?;
    let after = saltiness.at_end(&run);
    Ok(EvenedOut { centre: (before.0, after.0), face: (before.1, after.1) })
}

/// Returns the same of moisture.
///
/// * `swelling`: the cheese as it comes out of the vinegar
pub(super) fn moisture(swelling: &Swelling<'_>) -> Result<EvenedOut, PicklingError> {
    let points = swelling.rest(REST_H)?;
    let percent = |of: fn(&SwollenPoint) -> f64, point: Option<&SwollenPoint>| {
        let water = point.map_or(0.0, of);
        100.0 * water / (1.0 + water)
    };
    let both = |of: fn(&SwollenPoint) -> f64| (percent(of, points.first()), percent(of, points.last()));
    Ok(EvenedOut { centre: both(|point| point.centre), face: both(|point| point.face) })
}
