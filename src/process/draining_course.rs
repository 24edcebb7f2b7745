//! What happens in the moulds from hour to hour: the curd cools, whey leaves it, and it sours.

use super::Given;
use super::souring::{SourPoint, SouringRun, Sourness};
use crate::design::DrainingDesign;
use crate::law::Matter;
use crate::law::heat::specific_heat_kj_kg_k;
use crate::law::souring::drip_factor;
use crate::law::syneresis::Drip;

crate::constants! {
    /// How fast curd in a mould cools.
    MOULD_COOLING = { "Heat transfer from curd in a basket mould to the room", 8.0, "W/(m² K)", (5.0, 15.0), Ourselves, "still air and radiation; the whey that drips and dries on the mould is not counted apart", Judged }
}

/// Points of the drip curve.
const DRIP_POINTS: u32 = 96;
/// A colder or warmer difference than this counts as none, K.
const SAME_TEMPERATURE_K: f64 = 1e-9;

/// The curd as it comes into the moulds.
#[derive(Clone, Copy, Debug)]
pub(super) struct LadledCurd {
    /// All of it.
    pub(super) curd: Matter,
    /// The whey in it that is still to come.
    pub(super) to_come: Matter,
    /// Its temperature.
    pub(super) temperature_c: f64,
    /// How sour it is.
    pub(super) sourness: Sourness,
    /// pH of such curd unsoured, for which the time of the drip is known.
    pub(super) unsoured_ph: f64,
    /// Surface of the curd in one mould, m².
    pub(super) area_m2: f64,
    /// Moulds.
    pub(super) moulds: f64,
}

/// What it comes to.
#[derive(Clone, Debug)]
pub(super) struct DrainingCourse {
    /// (hours from ladling, whey so far in g, drip rate in g/h), all moulds together.
    pub(super) drip: Vec<(f64, f64, f64)>,
    /// Temperature and sourness on the way.
    pub(super) souring: Vec<SourPoint>,
    /// Whey that left.
    pub(super) whey: Matter,
    /// The curd at the end.
    pub(super) curd: Matter,
    /// What of lactose turned into lactic acid, in curd and whey.
    pub(super) turned_kg: f64,
    /// How sour the curd is at the end.
    pub(super) sourness: Sourness,
    /// Drip so far, in time constants.
    pub(super) constants: f64,
}

/// The curd of all moulds, cooling to the room: T = T_room + (T₀ − T_room) e^(−t/τ), τ = m c/(h A).
#[derive(Clone, Copy, Debug)]
struct Cooling {
    room_c: f64,
    above_k: f64,
    time_h: f64,
}

impl Cooling {
    fn of(ladled: &LadledCurd, room_c: f64) -> Self {
        let heat_j_k = 1000.0 * specific_heat_kj_kg_k(&ladled.curd, ladled.temperature_c) * ladled.curd.total_kg();
        let loss_w_k = MOULD_COOLING.value * ladled.area_m2 * ladled.moulds;
        Self { room_c, above_k: ladled.temperature_c - room_c, time_h: heat_j_k / loss_w_k / 3600.0 }
    }

    fn at_c(&self, at_h: f64) -> f64 {
        let above_k = self.above_k * (-at_h / self.time_h).exp();
        if above_k.abs() < SAME_TEMPERATURE_K { self.room_c } else { self.room_c + above_k }
    }
}

/// Returns what happens in the moulds until they are emptied.
///
/// Whey leaves first order, dw/dt = (W − w)/τ, with τ after the curd's own temperature and pH; the curd cools by itself and sours by its culture.
/// What turns into lactic acid leaves with the whey as the lactose does.
pub(super) fn follow(ladled: &LadledCurd, design: &DrainingDesign, draining_h: f64, given: &Given) -> DrainingCourse {
    let drip: Drip = given.parameters.drip();
    let cooling = Cooling::of(ladled, design.draining_temperature_c);
    let time_h = |at_h: f64, ph: f64| drip.in_moulds_h(cooling.at_c(at_h)) * drip_factor(ph) / drip_factor(ladled.unsoured_ph);
    let left_at = |constants: f64| -(-constants).exp_m1();
    let unturned = |constants: f64| ladled.curd - ladled.to_come * left_at(constants);
    let mut run = SouringRun::new(&ladled.sourness, &ladled.curd);
    let (mut at_h, mut constants, mut turned_in_whey) = (0.0, 0.0_f64, 0.0);
    let whey_g = 1000.0 * ladled.to_come.total_kg();
    let mut points = vec![(0.0, 0.0, whey_g / time_h(0.0, run.ph()))];
    let mut souring = vec![run.point(0.0, cooling.at_c(0.0), &ladled.curd)];
    for point in 1..=DRIP_POINTS {
        let end_h = draining_h * f64::from(point) / f64::from(DRIP_POINTS);
        while at_h < end_h {
            let left_h = end_h - at_h;
            let step_h = run.step_h(cooling.at_c(at_h), &unturned(constants)).min(left_h);
            let step_h = if left_h - step_h < 1e-9 { left_h } else { step_h };
            let (left_before, turned_before) = (left_at(constants), run.turned_share());
            constants += step_h / time_h(at_h + 0.5 * step_h, run.ph());
            run.step(&unturned(constants), cooling.at_c(at_h), step_h);
            turned_in_whey += (left_at(constants) - left_before) * 0.5 * (turned_before + run.turned_share());
            at_h = if step_h >= left_h { end_h } else { at_h + step_h };
        }
        points.push((at_h, whey_g * left_at(constants), whey_g * (-constants).exp() / time_h(at_h, run.ph())));
        souring.push(run.point(at_h, cooling.at_c(at_h), &unturned(constants)));
    }
    let curd = unturned(constants);
    let in_whey_kg = turned_in_whey * ladled.to_come.carbohydrate_kg;
    let in_curd_kg = run.turned_share() * curd.carbohydrate_kg;
    DrainingCourse {
        drip: points,
        souring,
        whey: ladled.to_come * left_at(constants) + super::souring::turned(in_whey_kg),
        curd: run.matter(&curd),
        turned_kg: in_whey_kg + in_curd_kg,
        sourness: run.sourness(&curd),
        constants,
    }
}

/// Returns the hours until so many time constants of the drip have passed, straight between points; none if they do not within the draining.
pub(super) fn hours_to_left(drip: &[(f64, f64, f64)], whey_g: f64, share: f64) -> Option<f64> {
    let wanted_g = share * whey_g;
    let pairs = drip.iter().zip(drip.iter().skip(1));
    pairs.map(|(before, after)| (*before, *after)).find(|(_, after)| after.1 >= wanted_g).map(
        |((from_h, from_g, _), (to_h, to_g, _))| {
            // Between two points the rest falls as a power of e.
            let (rest_before, rest_after, rest) = (whey_g - from_g, whey_g - to_g, whey_g - wanted_g);
            from_h + (to_h - from_h) * (rest_before / rest).ln() / (rest_before / rest_after).ln()
        },
    )
}
