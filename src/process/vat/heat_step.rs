//! The heat step of raw milk: warm to the hold, hold, cool in cold water; before anything is stirred in.

use super::course::WarmingEvent;
use super::error::VatError;
use super::warming::{Heat, LONGEST_WARMING, Piece, Run, Warming, thermostat};
use crate::design::{Heating, VatDesign};
use crate::law::bath::{End, Leg, Mode, Moment, Node, Power, Thermostat, bath_of};
use crate::law::pasteurising::LONGEST_COOLING;
use crate::law::souring::STIR_ACID_BELOW_C;
use crate::process::{MilkOutcome, Pasteurising};

/// How the raw milk went through its heat step.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct HeatStep {
    /// Minutes from the start until all of the milk is at its hold.
    pub to_hold_min: f64,
    /// Minutes from the start to the end of the hold.
    pub hold_ends_min: f64,
    /// Minutes from the start until the milk is cool enough to go on.
    pub cooled_min: f64,
    /// Coldest milk while it is held.
    pub hold_coldest_c: f64,
    /// Temperature that it is cooled to.
    pub cooled_c: f64,
}

impl HeatStep {
    /// Returns the minutes of cooling.
    #[must_use]
    pub fn cooling_min(&self) -> f64 {
        self.cooled_min - self.hold_ends_min
    }
}

/// What the milk may be cooler by than its hold without being counted so, K: the last digits of a calculation.
const ROUNDING_K: f64 = 1e-6;

/// Returns the temperature that pasteurised milk is cooled to and what goes in at it: acid or culture, and else the rennet.
fn cool_to(milk: &MilkOutcome, design: &VatDesign) -> (f64, &'static str) {
    if milk.soured.acid.total_kg() > 0.0 {
        (STIR_ACID_BELOW_C.value, "acid")
    } else if milk.soured.sourness.culture.is_some() {
        (milk.soured.ripening_c, "culture")
    } else {
        (design.rennet_temperature_c, "rennet")
    }
}

/// Takes the milk through its heat step, if there is one.
///
/// In a bath the thermostat warms and holds; over steam or on a hob the milk is kept at its hold by hand, which is taken as an ideal hold. The
/// pot is then put into cold water. After that the bath is brought to the temperature of the milk by hand, as for a culture.
pub(super) fn heat_step(warming: &mut Warming, design: &VatDesign, milk: &MilkOutcome) -> Result<Option<HeatStep>, VatError> {
    let Some(step) = &milk.pasteurising else { return Ok(None) };
    warming.come_to_hold(design, step)?;
    let to_hold_min = warming.now_min();
    let hold_coldest_c = warming.keep_hold(design, step);
    if hold_coldest_c < step.hold_c - ROUNDING_K {
        return Err(VatError::HoldNotKept { hold_c: step.hold_c, coldest_c: hold_coldest_c, bath_c: step.bath_c });
    }
    let hold_ends_min = warming.now_min();
    let (cooled_c, goes_in) = cool_to(milk, design);
    warming.cool_to(design, step, cooled_c, goes_in)?;
    Ok(Some(HeatStep { to_hold_min, hold_ends_min, cooled_min: warming.now_min(), hold_coldest_c, cooled_c }))
}

impl Warming {
    /// Warms the milk to its hold.
    fn come_to_hold(&mut self, design: &VatDesign, step: &Pasteurising) -> Result<(), VatError> {
        let hours = LONGEST_WARMING.value;
        let bath_c = (design.heating == Heating::Bath).then_some(step.bath_c);
        let never = |most_c: f64| VatError::NeverAtHold { hold_c: step.hold_c, most_c, hours, bath_c };
        match self.heat_up(&hot(design, step), design, step.hold_c) {
            Ok(()) => self.note(WarmingEvent::HoldBegins),
            Err(most_c) => return Err(never(most_c)),
        }
        Ok(())
    }

    /// Holds the milk; returns its coldest on the way, °C.
    fn keep_hold(&mut self, design: &VatDesign, step: &Pasteurising) -> f64 {
        let (began, seconds) = (self.now, 60.0 * step.hold_min);
        let coldest_c = match &mut self.heat {
            Heat::Bath(course) => {
                course.follow(&Leg { heater: Some(hot(design, step)), end: End::After(seconds) });
                (self.now, self.energy_j) = (course.now, course.energy_j);
                course.coldest_milk_since_c(began.at_s)
            }
            Heat::Single(pieces) => {
                pieces.push(Piece { from_s: began.at_s, to_s: began.at_s + seconds, from_c: began.milk_c, run: Run::Hold });
                self.now.at_s += seconds;
                began.milk_c
            }
        };
        self.note(WarmingEvent::HoldEnds);
        coldest_c
    }

    /// Cools the milk in cold water, to where something goes in.
    fn cool_to(&mut self, design: &VatDesign, step: &Pasteurising, milk_c: f64, goes_in: &'static str) -> Result<(), VatError> {
        let cold = bath_of(&self.pot, step.cold_water_l, design.bath_lid, design.room_temperature_c);
        let (hours, began) = (LONGEST_COOLING.value, self.now);
        let never = |least_c: f64| VatError::NeverCool { wanted_c: milk_c, least_c, hours, goes_in };
        match &mut self.heat {
            Heat::Bath(course) => {
                let warm = course.nodes;
                course.put_into(cold, step.cold_water_c);
                let end = End::MilkAt { milk_c, within_s: 3600.0 * hours };
                if !course.follow(&Leg { heater: None, end }) {
                    return Err(never(course.coldest_milk_since_c(began.at_s)));
                }
                course.put_into(warm, course.now.milk_c);
                self.now = course.now;
            }
            Heat::Single(pieces) => {
                let mode = Mode::new(&cold, Power::Off, step.cold_water_c, began.milk_c);
                let spent_s = mode.first_at(Node::Milk, milk_c, 3600.0 * hours).ok_or_else(|| {
                    let turn_s = mode.turn(Node::Milk).unwrap_or(f64::INFINITY).min(3600.0 * hours);
                    never(mode.node(Node::Milk, turn_s))
                })?;
                let to_s = began.at_s + spent_s;
                pieces.push(Piece { from_s: began.at_s, to_s, from_c: began.milk_c, run: Run::Cold(mode) });
                self.now = Moment { at_s: to_s, milk_c, ..began };
            }
        }
        self.note(WarmingEvent::Cooled);
        Ok(())
    }
}

/// Returns the thermostat of the bath for the heat step.
fn hot(design: &VatDesign, step: &Pasteurising) -> Thermostat {
    Thermostat { set_c: step.bath_c, ..thermostat(design) }
}
