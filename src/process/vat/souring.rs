//! How the milk sours from the fridge to the ladle.

use super::warming::Warming;
use crate::law::Matter;
use crate::process::MilkOutcome;
use crate::process::souring::{SourPoint, SouringRun, Sourness};

/// Points are kept no closer than this, h.
const POINTS_APART_H: f64 = 0.1;

/// The milk of the vat on its way to sourness.
#[derive(Clone, Debug)]
pub(super) struct MilkOnItsWay {
    run: SouringRun,
    /// The milk, as it would be if nothing had turned.
    unturned: Matter,
    at_h: f64,
    points: Vec<SourPoint>,
}

impl MilkOnItsWay {
    /// Returns the milk at the start, without a culture yet: with the acid that was stirred in, unless it is pasteurised first.
    pub(super) fn start(milk: &MilkOutcome) -> Self {
        let acid = if milk.pasteurising.is_some() { Matter::default() } else { milk.soured.acid };
        let unturned = milk.vat_milk + acid;
        let sourness = Sourness { culture: None, ..milk.soured.sourness };
        let run = SouringRun::new(&sourness, &unturned);
        let points = vec![run.point(0.0, milk.start_c, &unturned)];
        Self { run, unturned, at_h: 0.0, points }
    }

    /// Stirs the acid into pasteurised milk that has been cooled.
    pub(super) fn add_acid(&mut self, milk: &MilkOutcome, milk_c: f64) {
        if milk.soured.acid.total_kg() > 0.0 {
            self.unturned += milk.soured.acid;
            self.run = SouringRun::new(&Sourness { culture: None, ..milk.soured.sourness }, &self.unturned);
            self.points.push(self.run.point(self.at_h, milk_c, &self.unturned));
        }
    }

    /// Stirs the culture in now.
    pub(super) fn add_culture(&mut self, milk: &MilkOutcome) {
        self.run = SouringRun::new(&milk.soured.sourness, &self.unturned);
    }

    /// Stirs the lactone in now.
    pub(super) fn add_lactone(&mut self, milk: &MilkOutcome) {
        if milk.soured.lactone.total_kg() > 0.0 {
            self.unturned += milk.soured.lactone;
            self.run = SouringRun::new(&milk.soured.sourness, &self.unturned);
        }
    }

    /// Sours on until a minute of the warming that was gone through.
    pub(super) fn follow(&mut self, warming: &Warming, to_min: f64) {
        let to_h = to_min / 60.0;
        while self.at_h < to_h - 1e-9 {
            let temperature_c = warming.milk_c_at(60.0 * self.at_h);
            let step_h = self.run.step_h(temperature_c, &self.unturned).min(POINTS_APART_H).min(to_h - self.at_h);
            self.run.step(&self.unturned, temperature_c, step_h);
            self.at_h += step_h;
            let last_h = self.points.last().map_or(0.0, |point| point.at_h);
            if self.at_h - last_h >= POINTS_APART_H || self.at_h >= to_h - 1e-9 {
                self.points.push(self.run.point(self.at_h, warming.milk_c_at(60.0 * self.at_h), &self.unturned));
            }
        }
    }

    /// Returns the mean pH over the next minutes of a warming that goes on beyond now, by Simpson's rule; nothing moves on.
    pub(super) fn mean_ph(&self, ahead: &Warming, minutes: f64) -> f64 {
        let (began_ph, began_min) = (self.ph(), 60.0 * self.at_h);
        let mut on = self.clone();
        on.follow(ahead, began_min + 0.5 * minutes);
        let middle_ph = on.ph();
        on.follow(ahead, began_min + minutes);
        (began_ph + 4.0 * middle_ph + on.ph()) / 6.0
    }

    /// Returns the pH now.
    pub(super) const fn ph(&self) -> f64 {
        self.run.ph()
    }

    /// Returns the milk now, how sour it is, and the lactose that has turned, kg.
    pub(super) fn now(&self) -> (Matter, Sourness, f64) {
        let turned_kg = self.run.turned_share() * self.unturned.carbohydrate_kg;
        (self.run.matter(&self.unturned), self.run.sourness(&self.unturned), turned_kg)
    }

    /// Returns the points so far.
    pub(super) fn into_points(self) -> Vec<SourPoint> {
        self.points
    }
}
