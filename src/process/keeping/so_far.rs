//! The stages before the keeping, together.

use crate::design::PicklingDesign;
use crate::law::acidity::{vinegar_density_g_ml, vinegar_mass_percent};
use crate::process::{DrainingOutcome, DryingOutcome, PicklingOutcome, VatOutcome};

/// Everything that the cheeses went through.
#[derive(Clone, Copy, Debug)]
pub struct SoFar<'a> {
    /// Warming and setting.
    pub vat: &'a VatOutcome,
    /// Draining.
    pub drained: &'a DrainingOutcome,
    /// Drying.
    pub dried: &'a DryingOutcome,
    /// The choices about vinegar and jar.
    pub pickling_design: &'a PicklingDesign,
    /// The vinegar.
    pub pickled: &'a PicklingOutcome,
}

impl SoFar<'_> {
    /// Returns the hours in vinegar until the centre has come below the pH that table B wants of this food; none if it never does.
    pub(super) fn centre_sour_h(&self) -> Option<f64> {
        let [_, target] = self.pickled.targets;
        if self.pickled.pickled { target.centre_h } else { None }
    }

    /// Returns the vinegar that the cheeses have left over, mL: what was poured on, less what they gained.
    pub(super) fn spent_ml(&self) -> f64 {
        if !self.pickled.pickled {
            return 0.0;
        }
        let gained_g = 1000.0 * (self.pickled.cheese.total_kg() - self.dried.cheese.total_kg());
        let density_g_ml = vinegar_density_g_ml(vinegar_mass_percent(self.pickling_design.acid_g_per_100ml));
        (self.pickled.vinegar_ml - gained_g / density_g_ml).max(0.0)
    }
}
