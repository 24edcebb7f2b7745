//! How water moves inside a drying cheese.

use super::Matter;
use super::food_density::{CHEESE_WATER_DENSITY, solids_density_kg_m3};
use super::moist_air::{GAS_CONSTANT, kelvin};
use crate::numeric::quick_ln;

crate::constants! {
    /// Diffusivity of water in cheese at the reference.
    MOISTURE_DIFFUSIVITY = { "Diffusivity of water in cheese", 1.5e-10, "m²/s", (0.75e-10, 3.0e-10), CommonPractice, "common practice, no source: fitted at 40 °C and 0.4 kg/kg moisture so that 48 h leave a hard cheese; gives 3.05e-11 at 16 °C against 3.71e-11 published for one cheese, and another has 7.8e-12 at 12 °C", Fitted }
    /// Temperature of the reference.
    DIFFUSION_REFERENCE_TEMPERATURE = { "Reference temperature of the diffusivity", 40.0, "°C", (40.0, 40.0), Ourselves, "chosen", Judged }
    /// Water content of the reference.
    DIFFUSION_REFERENCE_WATER = { "Reference water content of the diffusivity", 2.0 / 3.0, "kg/kg dry", (2.0 / 3.0, 2.0 / 3.0), Ourselves, "chosen: 40 % moisture", Judged }
    /// Activation energy of diffusion.
    DIFFUSION_ENERGY = { "Activation energy of the diffusion of water", 50_000.0, "J/mol", (30_000.0, 65_000.0), CheeseDrying, "no published value for cheese found; our diffusivity at 40 °C with the one at 16 °C gives 44 kJ/mol, with the one at 12 °C 78, which the ranges of both together reach; a gel, fruit, a cactus pad and salt in cheese have 27 to 61", Judged }
}

/// How the diffusivity depends on the water content.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Obstruction {
    /// Mackie and Meares: water finds its way around the solids, D ∝ (X/(X + c))².
    #[default]
    BySolids,
    /// It does not depend on it; for checks against exact solutions.
    None,
}

/// Diffusion of water in one cheese.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MoistureDiffusion {
    /// D at the reference, m²/s.
    pub diffusivity_m2_s: f64,
    /// How it depends on the water content.
    pub obstruction: Obstruction,
    /// c = 2 ρ_water/ρ_solids, kg/kg.
    pub obstruction_water: f64,
    /// E, J/mol.
    pub energy_j_mol: f64,
}

impl MoistureDiffusion {
    /// Returns the diffusion of water in a cheese of this composition.
    #[must_use]
    pub fn of(matter: &Matter) -> Self {
        Self {
            diffusivity_m2_s: MOISTURE_DIFFUSIVITY.value,
            obstruction: Obstruction::BySolids,
            obstruction_water: 2.0 * CHEESE_WATER_DENSITY.value / solids_density_kg_m3(matter),
            energy_j_mol: DIFFUSION_ENERGY.value,
        }
    }

    /// Returns the diffusivity at the reference water content, m²/s: Arrhenius, D₀ exp(−E/R (1/T − 1/T₀)).
    ///
    /// # Arguments
    /// * `temperature_c`: 0 to 60 °C
    #[must_use]
    pub fn at_m2_s(&self, temperature_c: f64) -> f64 {
        let inverse = 1.0 / kelvin(temperature_c) - 1.0 / kelvin(DIFFUSION_REFERENCE_TEMPERATURE.value);
        self.diffusivity_m2_s * (-self.energy_j_mol / GAS_CONSTANT.value * inverse).exp()
    }

    /// Returns the relative slope of [`MoistureDiffusion::at_m2_s`] with temperature, 1/K.
    #[must_use]
    pub fn log_slope_per_k(&self, temperature_c: f64) -> f64 {
        self.energy_j_mol / (GAS_CONSTANT.value * kelvin(temperature_c).powi(2))
    }

    /// Returns the diffusivity relative to the reference, S(X) = (X/(X + c))² / (X₀/(X₀ + c))².
    ///
    /// # Arguments
    /// * `water`: kg of water per kg of dry solids, > 0
    #[must_use]
    pub fn relative(&self, water: f64) -> f64 {
        match self.obstruction {
            Obstruction::None => 1.0,
            Obstruction::BySolids => {
                let share = water / (water + self.obstruction_water);
                share * share * self.norm()
            }
        }
    }

    /// Returns Kirchhoff's potential F(X) = ∫ S dX, whose differences give the flux between two places exactly.
    ///
    /// F = (X − 2c ln(1 + X/c) + c − c²/(X + c)) / (X₀/(X₀ + c))². A harmonic mean of the diffusivities at the two places would be wrong by half.
    ///
    /// # Arguments
    /// As for [`MoistureDiffusion::relative`].
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::moisture_diffusion::{MoistureDiffusion, Obstruction};
    /// let water = MoistureDiffusion {
    ///     diffusivity_m2_s: 1.5e-10, obstruction: Obstruction::BySolids, obstruction_water: 1.7611, energy_j_mol: 50_000.0,
    /// };
    /// let slope = (water.potential(1.001) - water.potential(0.999)) / 0.002;
    /// assert!((slope - water.relative(1.0)).abs() < 1e-6);
    /// ```
    #[must_use]
    pub fn potential(&self, water: f64) -> f64 {
        match self.obstruction {
            Obstruction::None => water,
            Obstruction::BySolids => {
                let c = self.obstruction_water;
                (water - 2.0 * c * (water / c).ln_1p() + c - c * c / (water + c)) * self.norm()
            }
        }
    }

    /// Fills in [`MoistureDiffusion::potential`] and [`MoistureDiffusion::relative`] for many waters, several at a time; water below `least` counts
    /// as that.
    ///
    /// # Arguments
    /// * `water`: as for [`MoistureDiffusion::relative`]; `least`: > 0; the others as long as `water`
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::{Matter, moisture_diffusion::MoistureDiffusion};
    /// let diffusion = MoistureDiffusion::of(&Matter { water_kg: 0.6, casein_kg: 0.2, fat_kg: 0.2, ..Matter::default() });
    /// let (mut potentials, mut relatives) = ([0.0; 1], [0.0; 1]);
    /// diffusion.fill(&[1.2], 1e-6, &mut potentials, &mut relatives);
    /// assert!((potentials[0] / diffusion.potential(1.2) - 1.0).abs() < 1e-12);
    /// assert!((relatives[0] / diffusion.relative(1.2) - 1.0).abs() < 1e-12);
    /// ```
    #[inline(always)]
    #[expect(clippy::inline_always, reason = "a loop goes several at a time only where no call is left in it")]
    pub fn fill(&self, water: &[f64], least: f64, potentials: &mut [f64], relatives: &mut [f64]) {
        let all = water.iter().zip(potentials).zip(relatives);
        if self.obstruction == Obstruction::None {
            for ((water, potential), relative) in all {
                (*potential, *relative) = (water.max(least), 1.0);
            }
            return;
        }
        let (c, norm) = (self.obstruction_water, self.norm());
        let per_c = 1.0 / c;
        for ((water, potential), relative) in all {
            let water = if *water < least { least } else { *water };
            let share = water / (water + c);
            *potential = (water + c * share - 2.0 * c * quick_ln(1.0 + water * per_c)) * norm;
            *relative = share * share * norm;
        }
    }

    /// Returns ((X₀ + c)/X₀)².
    fn norm(&self) -> f64 {
        let reference = DIFFUSION_REFERENCE_WATER.value;
        ((reference + self.obstruction_water) / reference).powi(2)
    }
}
