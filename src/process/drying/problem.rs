//! What stays the same while one disc dries.

use crate::law::food_density::CHEESE_WATER_DENSITY;
use crate::law::moisture_diffusion::MoistureDiffusion;
use crate::law::sorption::Sorption;
use crate::numeric::DiscGrid;

/// What stays the same while one disc dries.
#[derive(Clone, Debug)]
pub struct Problem {
    /// The rings.
    pub grid: DiscGrid,
    /// Water at the start, kg per kg of dry solids.
    pub start_water: f64,
    /// Temperature at the start.
    pub start_c: f64,
    /// How water moves inside.
    pub diffusion: MoistureDiffusion,
    /// How the solids hold it.
    pub sorption: Sorption,
    /// Density of the dry solids, kg/m³.
    pub solids_density_kg_m3: f64,
    /// Specific heat of the dry solids, J/(kg K).
    pub solids_heat_j_kg_k: f64,
    /// Share of each face that the air reaches.
    pub open: OpenFaces,
    /// Heat transfer by radiation, W/(m² K).
    pub radiation_w_m2_k: f64,
    /// Resistance of the coat to vapour, s/m.
    pub coat_s_m: f64,
    /// Whether the disc shrinks by the volume of the water it loses.
    pub shrinks: bool,
    /// Whether the disc has a temperature of its own; otherwise it is as warm as the air.
    pub warms: bool,
    /// How water leaves the faces.
    pub surface: Surface,
    /// Tolerance of a step: error of the water content relative to what is there.
    pub tolerance: f64,
}

/// How water leaves the faces.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Surface {
    /// It evaporates: the flux follows the water activity of the face and the vapour in the air.
    Evaporation,
    /// The flux is proportional to the excess over a fixed water content, J = ρₛ k (X − Xₑ); for checks against exact series.
    Film {
        /// k, m/s.
        transfer_m_s: f64,
        /// Xₑ, kg/kg.
        equilibrium_water: f64,
    },
}

/// Share of each face that the air reaches, 0 to 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OpenFaces {
    /// The top.
    pub top: f64,
    /// The side.
    pub side: f64,
    /// The underside; not looked at where only the upper half is cut up.
    pub underside: f64,
}

impl Problem {
    /// Returns the dry solids of the fresh disc, kg/m³.
    pub(super) fn solids_kg_m3(&self) -> f64 {
        1.0 / (1.0 / self.solids_density_kg_m3 + self.start_water / CHEESE_WATER_DENSITY.value)
    }

    /// Returns the linear shrinkage at a mean water content: the cube root of the volume, relative to the start.
    #[must_use]
    pub fn shrinkage(&self, mean_water: f64) -> f64 {
        if self.shrinks {
            ((1.0 / self.solids_density_kg_m3 + mean_water / CHEESE_WATER_DENSITY.value) * self.solids_kg_m3()).cbrt()
        } else {
            1.0
        }
    }
}
