//! Souring from moment to moment in a matter that may lose whey or water meanwhile.

use super::sourness::{CultureNow, Sourness, turned};
use crate::law::Matter;
use crate::law::souring::{
    Acid, AcidAmounts, Beyond, CultureState, LACTOSE_MOLAR_MASS, SOURING_STEP_H, Sourable, lactone_rate_per_h,
};

/// One moment of souring.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SourPoint {
    /// Hours since the stage began.
    pub at_h: f64,
    /// Temperature.
    pub temperature_c: f64,
    /// pH.
    pub ph: f64,
    /// Lactic acid, mmol for each kg of water.
    pub lactic_mm: f64,
    /// Acetic acid, mmol for each kg of water.
    pub acetic_mm: f64,
    /// Lactose, % of the mass.
    pub lactose_percent: f64,
    /// Cells of the culture for each g.
    pub cells_per_g: f64,
    /// How crowded it is: those cells over the most that there can be, 0 to 1.
    pub crowd: f64,
    /// Where this lies beyond the law of souring, if it does.
    pub beyond: Option<Beyond>,
}

/// Longest step while little happens, h.
const LONGEST_STEP_H: f64 = 0.25;
/// Longest step while a culture works without growing, h.
const WORKING_STEP_H: f64 = 0.1;
/// Growth for each hour, below which little happens.
const LITTLE_GROWTH_H: f64 = 0.02;
/// Change of mass, as a share, that is none.
const SAME_MASS: f64 = 1e-12;

/// Souring on its way. What leaves as whey or vapour is not its business: it is told of the matter as it would be if nothing had turned since
/// the stage began, and keeps the share of that lactose that has turned. What leaves changes no pH ([`Sourness::holding`]).
#[derive(Clone, Debug)]
pub(in crate::process) struct SouringRun {
    sourness: Sourness,
    cells: f64,
    turned_share: f64,
    sourable: Sourable,
    sourable_kg: f64,
    ph: f64,
}

impl SouringRun {
    /// Returns the run at the start of a stage.
    pub(in crate::process) fn new(sourness: &Sourness, matter: &Matter) -> Self {
        let sourable = sourness.sourable(matter);
        let ph = sourable.ph_of(&sourness.acids(matter));
        let cells = sourness.culture.map_or(0.0, |culture| 1000.0 * matter.total_kg() * culture.cells_per_g);
        Self { sourness: *sourness, cells, turned_share: 0.0, sourable, sourable_kg: matter.total_kg(), ph }
    }

    /// Returns the pH now.
    pub(in crate::process) const fn ph(&self) -> f64 {
        self.ph
    }

    /// Returns the share of the lactose that has turned since the stage began.
    pub(in crate::process) const fn turned_share(&self) -> f64 {
        self.turned_share
    }

    /// Returns the matter as it is, from what it would be if nothing had turned since the stage began.
    pub(in crate::process) fn matter(&self, unturned: &Matter) -> Matter {
        *unturned + turned(self.turned_share * unturned.carbohydrate_kg)
    }

    /// Returns how sour it is now, in a matter as it would be if nothing had turned.
    pub(in crate::process) fn sourness(&self, unturned: &Matter) -> Sourness {
        let cells_per_g = self.cells / (1000.0 * unturned.total_kg());
        let held = self.sourness.holding(&self.matter(unturned), self.ph);
        Sourness { culture: self.sourness.culture.map(|culture| CultureNow { cells_per_g, ..culture }), ..held }
    }

    /// Returns the next step, h: short while a culture grows or a lactone splits.
    pub(in crate::process) fn step_h(&self, temperature_c: f64, unturned: &Matter) -> f64 {
        let grows = self.sourness.culture.is_some_and(|CultureNow { law, .. }| {
            let crowd = self.cells / (1000.0 * unturned.total_kg() * law.most_per_g);
            law.growth_per_h(temperature_c, self.ph) * (1.0 - crowd) > LITTLE_GROWTH_H
        });
        if grows || (self.sourness.goes_on() && self.sourness.culture.is_none()) {
            SOURING_STEP_H
        } else if self.sourness.culture.is_some() {
            WORKING_STEP_H
        } else {
            LONGEST_STEP_H
        }
    }

    /// Sours on for one step.
    ///
    /// # Arguments
    /// * `unturned`: the matter at the end of the step, if nothing had turned since the stage began
    pub(in crate::process) fn step(&mut self, unturned: &Matter, temperature_c: f64, step_h: f64) {
        if !self.sourness.goes_on() {
            return;
        }
        let kg = unturned.total_kg();
        if (kg - self.sourable_kg).abs() > SAME_MASS * self.sourable_kg {
            let left = self.matter(unturned);
            self.sourness = self.sourness.holding(&left, self.ph);
            (self.sourable, self.sourable_kg) = (self.sourness.sourable(&left), kg);
        }
        let rate = lactone_rate_per_h(temperature_c);
        self.sourness.lactone_split = 1.0 - (1.0 - self.sourness.lactone_split) * (-rate * step_h).exp();
        if let Some(culture) = &mut self.sourness.culture {
            let lactose_mol = unturned.carbohydrate_kg / LACTOSE_MOLAR_MASS.value;
            let mut state = CultureState {
                cells_per_g: self.cells / (1000.0 * kg),
                dose: culture.dose,
                lactose_mol_kg: (1.0 - self.turned_share) * lactose_mol / kg,
                acids: AcidAmounts::default(),
            };
            let before = state.lactose_mol_kg;
            culture.law.step(&mut state, temperature_c, self.ph, step_h);
            culture.dose = state.dose;
            self.cells = state.cells_per_g * 1000.0 * kg;
            if lactose_mol > 0.0 {
                self.turned_share = (self.turned_share + (before - state.lactose_mol_kg) * kg / lactose_mol).min(1.0);
            }
        }
        let matter = self.matter(unturned);
        self.ph = self.sourable.ph_near(&self.sourness.acids(&matter), self.ph);
    }

    /// Returns this moment.
    pub(in crate::process) fn point(&self, at_h: f64, temperature_c: f64, unturned: &Matter) -> SourPoint {
        let matter = self.matter(unturned);
        let acids = self.sourness.acids(&matter);
        let per_water = 1000.0 * matter.total_kg() / matter.water_kg;
        let cells_per_g = self.cells / (1000.0 * matter.total_kg());
        SourPoint {
            at_h,
            temperature_c,
            ph: self.ph,
            lactic_mm: per_water * acids.amount(Acid::Lactic),
            acetic_mm: per_water * acids.amount(Acid::Acetic),
            lactose_percent: matter.percent(matter.carbohydrate_kg),
            cells_per_g,
            crowd: self.sourness.culture.map_or(0.0, |culture| (cells_per_g / culture.law.most_per_g).min(1.0)),
            beyond: self.sourness.culture.and_then(|_| Beyond::at(temperature_c, self.ph)),
        }
    }
}

/// Returns the first hours at or below a pH along some points, straight between them; none if it never comes there.
#[must_use]
pub fn hours_to_ph(points: &[SourPoint], ph: f64) -> Option<f64> {
    let first = points.first()?;
    if first.ph <= ph {
        return Some(first.at_h);
    }
    points
        .iter()
        .zip(points.iter().skip(1))
        .find(|(_, after)| after.ph <= ph)
        .map(|(before, after)| before.at_h + (before.ph - ph) / (before.ph - after.ph) * (after.at_h - before.at_h))
}
