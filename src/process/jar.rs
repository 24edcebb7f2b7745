//! The jar of a batch: how many of its dried cheeses go in.

use super::DryingOutcome;
use crate::design::{JarLay, PicklingDesign};
use crate::law::jar::{Disc, Jar, JarError, Lay, Packing, packing};

/// Returns how the dried cheeses go into the chosen jar.
///
/// # Errors
/// [`JarError`] if not one goes in.
pub fn jar_packing(design: &PicklingDesign, dried: &DryingOutcome) -> Result<Packing, JarError> {
    let jar = Jar { width_mm: design.jar_width_mm, height_mm: design.jar_height_mm };
    let disc = Disc { diameter_mm: dried.end.diameter_mm, thickness_mm: dried.end.thickness_mm };
    let lay = match design.jar_lay {
        JarLay::Flat | JarLay::FlatTouching => Lay::Flat,
        JarLay::OnEdge => Lay::OnEdge,
    };
    packing(&jar, &disc, lay)
}
