//! What stays the same while one cheese lies in vinegar.

use super::cheese::{PickledCheese, VinegarBath};
use super::direction::Direction;
use super::error::PicklingError;
use crate::law::acidity::{ACETATE_MOBILITY, ACID_OBSTRUCTION, CONDITIONAL_PK, FILM_TRANSFER, acid_diffusivity_m2_s, acid_mol_m3};
use crate::law::buffering::{Buffer, equilibrium_ph};
use crate::law::food_density::WATER_DENSITY;
use crate::law::souring::Acid;
use crate::numeric::{DiscGrid, Fineness, Half};
use crate::process::UncertainParameters;

/// What stays the same while one cheese lies in vinegar.
#[derive(Clone, Debug)]
pub struct Soak {
    /// The rings of the upper half.
    pub grid: DiscGrid,
    /// Share of water in the cheese, by volume.
    pub water_share: f64,
    /// Density of the cheese, kg/m³.
    pub cheese_kg_m3: f64,
    /// Diffusivity of acetic acid in the water of the cheese, m²/s.
    pub acid_m2_s: f64,
    /// Diffusivity of acetate over that of the acid.
    pub acetate_mobility: f64,
    /// Transfer through the film, m/s.
    pub film_m_s: f64,
    /// Share of the top and of the side that the vinegar reaches, 0 to 1; the underside is as the top.
    pub open: (f64, f64),
    /// Vinegar for the whole cheese, m³.
    pub bath_m3: f64,
    /// Its strength at the start, mol/m³.
    pub acid_mol_m3: f64,
    /// pK of the acid.
    pub pk: f64,
    /// How the cheese takes up hydrogen ions.
    pub buffer: Buffer,
    /// Tolerance of a step: error of the amounts relative to what is there.
    pub tolerance: f64,
}

impl Soak {
    /// Returns the equations of one cheese in its vinegar, as fine as the reference cases want it.
    ///
    /// # Errors
    /// As for [`Soak::with`].
    pub fn new(cheese: &PickledCheese, bath: &VinegarBath) -> Result<Self, PicklingError> {
        Self::with(cheese, bath, Fineness::SOAK_FINE)
    }

    /// Returns the equations of one cheese in its vinegar.
    ///
    /// The water of the cheese is taken to fill its share of the volume; what dries or swells meanwhile is not in it.
    ///
    /// # Errors
    /// [`PicklingError`] where a figure is out of its range.
    pub fn with(cheese: &PickledCheese, bath: &VinegarBath, fineness: Fineness) -> Result<Self, PicklingError> {
        cheese.check()?;
        bath.check()?;
        let matter = &cheese.matter;
        let share = |kg: f64| kg / matter.total_kg();
        let (radius_m, height_m) = (0.0005 * cheese.diameter_mm, 0.001 * cheese.thickness_mm);
        let cheese_kg_m3 = matter.total_kg() / (std::f64::consts::PI * radius_m * radius_m * height_m);
        let water_share = share(matter.water_kg) * cheese_kg_m3 / WATER_DENSITY.polynomial(bath.temperature_c);
        if !(water_share > 0.0 && water_share < 1.0) {
            return Err(PicklingError::MassAndSize { cheese_kg_m3, water_percent: 100.0 * water_share });
        }
        Ok(Self {
            grid: DiscGrid::new(radius_m, height_m, fineness.radial, fineness.half_height, fineness.ratio, Half::Upper),
            water_share,
            cheese_kg_m3,
            acid_m2_s: cheese.diffusivity_scale * ACID_OBSTRUCTION.value * water_share * acid_diffusivity_m2_s(bath.temperature_c),
            acetate_mobility: ACETATE_MOBILITY.value,
            film_m_s: FILM_TRANSFER.value,
            open: (1.0, 1.0),
            bath_m3: 1e-6 * bath.volume_ml,
            acid_mol_m3: acid_mol_m3(bath.acid_g_per_100ml),
            pk: CONDITIONAL_PK.value,
            buffer: buffer(cheese, share(matter.protein_kg()), share(matter.water_kg)),
            tolerance: fineness.tolerance,
        })
    }

    /// Returns the same with a cheese that takes up `factor` times as much acid.
    #[must_use]
    pub fn buffered(&self, factor: f64) -> Self {
        Self { buffer: self.buffer.scaled(factor), ..self.clone() }
    }

    /// Returns the same under other parameters of how acid splits, how the split part moves and how the film lets it through; those of the
    /// cheese are in it already.
    #[must_use]
    pub(super) fn under(self, parameters: &UncertainParameters) -> Self {
        Self {
            acetate_mobility: parameters.acetate_mobility * self.acetate_mobility,
            pk: parameters.acid_pk * self.pk,
            film_m_s: parameters.acid_film * self.film_m_s,
            ..self
        }
    }

    /// Returns the equilibrium pH of cheese and bath.
    ///
    /// # Errors
    /// [`PicklingError::NoEquilibrium`].
    pub fn equilibrium_ph(&self) -> Result<f64, PicklingError> {
        let cheese_m3 = 2.0 * self.grid.volume_m3();
        let liquid_m3 = self.bath_m3 + self.water_share * cheese_m3;
        Ok(equilibrium_ph(self.acid_mol_m3 * self.bath_m3, liquid_m3, self.cheese_kg_m3 * cheese_m3, &self.buffer, self.pk)?)
    }

    /// Returns the radial and the axial direction of the rings, with the bath at the end of both.
    pub(super) fn directions(&self) -> (Direction, Direction) {
        let (grid, (top, side)) = (&self.grid, self.open);
        // Only the upper half is cut up, so half of the bath belongs to it.
        let (film, share, bath_m3) = (self.film_m_s, self.water_share, 0.5 * self.bath_m3);
        (
            Direction::new(&grid.radial, &grid.ring_area_m2, &grid.layer_m, side * grid.rim_m, film, share, bath_m3),
            Direction::new(&grid.axial, &grid.layer_m, &grid.ring_area_m2, top, film, share, bath_m3),
        )
    }

    /// Returns the mass of cheese around each m³ of its water, kg/m³.
    pub(super) fn cheese_per_water(&self) -> f64 {
        self.cheese_kg_m3 / self.water_share
    }
}

/// Returns how the cheese takes up hydrogen ions: by its groups, and by the acids that it brings, which are taken to stay where they are.
fn buffer(cheese: &PickledCheese, protein: f64, water: f64) -> Buffer {
    let own = Buffer::new(protein, water, cheese.start_ph, cheese.buffer_scale);
    Acid::ALL
        .into_iter()
        .fold(own, |buffer, acid| acid.pks().iter().fold(buffer, |buffer, pk| buffer.with_acid(cheese.acids.amount(acid), *pk)))
}
