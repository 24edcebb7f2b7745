//! One cheese and its vinegar, as they come together.

use super::error::{PicklingError, within};
use crate::law::Matter;
use crate::law::souring::AcidAmounts;

/// One cheese as it comes into the vinegar.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PickledCheese {
    /// What it is made of.
    pub matter: Matter,
    /// Its diameter.
    pub diameter_mm: f64,
    /// Its thickness.
    pub thickness_mm: f64,
    /// Its pH.
    pub start_ph: f64,
    /// The acids that it brings, mol/kg.
    pub acids: AcidAmounts,
    /// How much more acid it takes up than its composition says, as a factor; likely 0.7 to 1.8.
    pub buffer_scale: f64,
    /// How much faster acid moves in it than we judge, as a factor; likely 0.5 to 2.
    pub diffusivity_scale: f64,
}

/// The vinegar of one cheese.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct VinegarBath {
    /// Strength, g of acetic acid in 100 mL.
    pub acid_g_per_100ml: f64,
    /// Volume for each cheese.
    pub volume_ml: f64,
    /// Temperature of vinegar and cheese.
    pub temperature_c: f64,
}

/// Greatest thickness of a body in vinegar, mm.
const MOST_MM: f64 = 200.0;

impl PickledCheese {
    /// Returns a pile of such cheeses as one body.
    #[must_use]
    pub(super) fn piled(&self, count: u32) -> Self {
        let count = f64::from(count);
        Self { matter: self.matter * count, thickness_mm: self.thickness_mm * count, ..*self }
    }

    /// Returns how many such cheeses may be taken as one body; a taller pile is sour through its side first, so that more change nothing.
    pub(super) fn most_piled(&self) -> u32 {
        (MOST_MM / self.thickness_mm).floor().max(1.0) as u32
    }

    pub(super) fn check(&self) -> Result<(), PicklingError> {
        let percent = |kg: f64| 100.0 * kg / self.matter.total_kg();
        within("the diameter of the cheese, mm,", self.diameter_mm, 5.0, 300.0)?;
        within("the thickness of the cheese, mm,", self.thickness_mm, 2.0, MOST_MM)?;
        within("the moisture of the cheese, %,", percent(self.matter.water_kg), 5.0, 90.0)?;
        within("the protein of the cheese, %,", percent(self.matter.protein_kg()), 0.0, 70.0)?;
        within("the pH of the cheese", self.start_ph, 3.5, 7.5)?;
        within("the buffer scale", self.buffer_scale, 0.0, 5.0)?;
        within("the diffusivity scale", self.diffusivity_scale, 0.05, 10.0)
    }
}

impl VinegarBath {
    pub(super) fn check(&self) -> Result<(), PicklingError> {
        within("the acetic acid of the vinegar, g/100 mL,", self.acid_g_per_100ml, 0.5, 10.0)?;
        within("the vinegar for each cheese, mL,", self.volume_ml, 0.1, 100_000.0)?;
        within("the temperature of the vinegar, °C,", self.temperature_c, 0.0, 40.0)
    }
}
