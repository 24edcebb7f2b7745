//! Warming the milk, and keeping it warm while it sets: bath, double boiler or hob behind one face.
//!
//! The bath warms and holds by its thermostat. Double boiler and hob warm until a temperature is reached; after the rennet the maker either
//! takes the pot off (heat off) or keeps the milk where it is by hand, which is taken as an ideal hold.

use super::course::{WarmingEvent, WarmingMark, WarmingPoint};
use super::error::VatError;
use crate::design::{Heating, PotRest, VatDesign};
use crate::law::Matter;
use crate::law::bath::{Bath, Course, DoubleBoiler, End, Hob, Leg, Mode, Moment, Node, Pot, Thermostat, bath_of, inner_wall_c};
use crate::law::bath::{MILK_HEAT, POWER_REACHES, SIDE_LOSS, STEAM_TEMPERATURE, THERMOSTAT_BAND};
use crate::law::heat::LIQUID_WATER_HEAT;
use crate::process::{MilkOutcome, UncertainParameters};

crate::constants! {
    /// Longest warming.
    LONGEST_WARMING = { "Longest warming that is looked at", 6.0, "h", (3.0, 12.0), Ourselves, "milk that takes longer sours or spoils", Judged }
}

/// Points of the curve, events not counted.
const CURVE_POINTS: u32 = 150;

/// What heats the milk, and where it stands.
#[derive(Clone, Debug)]
pub(super) enum Heat {
    Bath(Course),
    /// One node: (when, temperature) at the ends of the pieces, and how each piece runs.
    Single(Vec<Piece>),
}

/// A piece of a single-node course.
#[derive(Clone, Copy, Debug)]
pub(super) struct Piece {
    pub(super) from_s: f64,
    pub(super) to_s: f64,
    pub(super) from_c: f64,
    pub(super) run: Run,
}

#[derive(Clone, Copy, Debug)]
pub(super) enum Run {
    Boiler(DoubleBoiler),
    Hob(Hob),
    /// In cold water.
    Cold(Mode),
    Hold,
}

impl Piece {
    fn milk_c(&self, at_s: f64) -> f64 {
        let t = (at_s - self.from_s).max(0.0);
        match self.run {
            Run::Boiler(boiler) => boiler.milk_c(self.from_c, t),
            Run::Hob(hob) => hob.milk_c(self.from_c, t),
            Run::Cold(mode) => mode.node(Node::Milk, t),
            Run::Hold => self.from_c,
        }
    }
}

/// Milk on its way from the fridge to the ladle.
#[derive(Clone, Debug)]
pub(super) struct Warming {
    pub(super) pot: Pot,
    nodes: Bath,
    pub(super) heat: Heat,
    milk_j_k: f64,
    /// What comes to a pot without a bath.
    reaches_w: f64,
    pub(super) now: Moment,
    pub(super) energy_j: f64,
    events: Vec<WarmingMark>,
}

/// The curve and its events, drawn.
pub(super) struct WarmingCourse {
    pub curve: Vec<WarmingPoint>,
    pub events: Vec<WarmingMark>,
    pub wall_most_c: f64,
    /// The same by a little and by a much hotter hot spot; none where the wall is known well.
    pub likely_wall_most_c: Option<(f64, f64)>,
    pub bath_most_c: f64,
}

impl WarmingCourse {
    /// Returns the minute of an event; 0 if it never comes.
    pub fn at(&self, event: WarmingEvent) -> f64 {
        self.events.iter().find(|mark| mark.event == event).map_or(0.0, |mark| mark.at_min)
    }
}

impl Warming {
    /// Returns the milk at the start, cold in its pot.
    pub fn start(design: &VatDesign, milk: &MilkOutcome, parameters: &UncertainParameters) -> Self {
        let usual = Pot::new(milk.vat_milk_l);
        let pot = Pot {
            side_wetted: design.pot_depth_percent / 100.0,
            base_wetted: if design.pot_rest == PotRest::Rack { 1.0 } else { 0.0 },
            lid: design.pot_lid,
            milk_side_w_m2_k: parameters.milk_side * usual.milk_side_w_m2_k,
            bath_side_w_m2_k: parameters.bath_side * usual.bath_side_w_m2_k,
            ..usual
        };
        let nodes = bath_of(&pot, design.bath_l, design.bath_lid, design.room_temperature_c);
        let heat = match design.heating {
            Heating::Bath => Heat::Bath(Course::new(nodes, design.bath_start_temperature_c, milk.start_c)),
            Heating::DoubleBoiler | Heating::Hob => Heat::Single(Vec::new()),
        };
        let now = Moment { at_s: 0.0, bath_c: design.bath_start_temperature_c, milk_c: milk.start_c };
        // Without a bath all of the pot's steel goes with the milk.
        let alone_j_k = nodes.milk_j_k.max(milk.vat_milk_kg * MILK_HEAT.value + pot.steel_j_k());
        let reaches_w = parameters.power_reaches * POWER_REACHES.value * design.heater_power_w;
        let mut warming = Self { pot, nodes, heat, milk_j_k: alone_j_k, reaches_w, now, energy_j: 0.0, events: Vec::new() };
        warming.note(WarmingEvent::Start);
        warming
    }

    /// Warms the milk to a temperature, with everything on, and notes it; milk that is warm enough already is not cooled.
    pub fn warm_to(&mut self, design: &VatDesign, event: WarmingEvent, milk_c: f64) -> Result<(), VatError> {
        let never = |most_c: f64| VatError::NeverWarm { wanted_c: milk_c, most_c, hours: LONGEST_WARMING.value };
        self.heat_up(&thermostat(design), design, milk_c).map_err(never)?;
        self.note(event);
        Ok(())
    }

    /// Warms the milk to a temperature; if it never comes there, returns the most that it comes to, °C.
    pub(super) fn heat_up(&mut self, heater: &Thermostat, design: &VatDesign, milk_c: f64) -> Result<(), f64> {
        if self.now.milk_c >= milk_c {
            return Ok(());
        }
        let within_s = 3600.0 * LONGEST_WARMING.value;
        match &mut self.heat {
            Heat::Bath(course) => {
                let began_s = course.now.at_s;
                if !course.follow(&Leg { heater: Some(*heater), end: End::MilkAt { milk_c, within_s } }) {
                    return Err(course.warmest_since_c(began_s).1);
                }
                self.now = course.now;
                self.energy_j = course.energy_j;
            }
            Heat::Single(pieces) => {
                let run = single(design, &self.pot, &self.nodes, self.milk_j_k, self.reaches_w);
                let spent_s = match run {
                    Run::Boiler(boiler) => boiler.warming_s(self.now.milk_c, milk_c),
                    Run::Hob(hob) => hob.warming_s(self.now.milk_c, milk_c),
                    Run::Hold | Run::Cold(_) => Some(0.0),
                };
                let piece = Piece { from_s: self.now.at_s, to_s: self.now.at_s, from_c: self.now.milk_c, run };
                let spent_s =
                    spent_s.filter(|spent_s| *spent_s <= within_s).ok_or_else(|| piece.milk_c(piece.from_s + within_s))?;
                let to_s = piece.from_s + spent_s;
                pieces.push(Piece { to_s, ..piece });
                self.energy_j += design.heater_power_w * spent_s;
                self.now = Moment { at_s: to_s, bath_c: self.now.bath_c, milk_c };
            }
        }
        Ok(())
    }

    /// Warms the milk to where its culture likes it, and keeps it there: the bath is brought to that temperature by hand and then held by its
    /// thermostat; on a hob or over steam the milk is taken to be kept where it is.
    pub fn ripen(&mut self, design: &VatDesign, milk_c: f64, hours: f64) -> Result<(), VatError> {
        self.warm_to(design, WarmingEvent::Culture, milk_c)?;
        let seconds = 3600.0 * hours;
        match &mut self.heat {
            Heat::Bath(course) => {
                course.now.bath_c = course.now.milk_c;
                let heater = Thermostat { set_c: milk_c, ..thermostat(design) };
                course.follow(&Leg { heater: Some(heater), end: End::After(seconds) });
                self.now = course.now;
                self.energy_j = course.energy_j;
            }
            Heat::Single(pieces) => {
                let piece = Piece { from_s: self.now.at_s, to_s: self.now.at_s + seconds, from_c: self.now.milk_c, run: Run::Hold };
                self.now = Moment { at_s: piece.to_s, ..self.now };
                pieces.push(piece);
            }
        }
        Ok(())
    }

    /// Returns the temperature of the milk at a minute that was gone through.
    pub fn milk_c_at(&self, at_min: f64) -> f64 {
        self.milk_at(60.0 * at_min).milk_c
    }

    /// Stirs something into the milk.
    pub fn add(&mut self, matter: &Matter, temperature_c: f64) {
        let heat_j_k = matter.total_kg() * LIQUID_WATER_HEAT.value;
        match &mut self.heat {
            Heat::Bath(course) => {
                course.add(heat_j_k, temperature_c);
                self.now = course.now;
            }
            Heat::Single(_) => {
                self.now.milk_c = (self.milk_j_k * self.now.milk_c + heat_j_k * temperature_c) / (self.milk_j_k + heat_j_k);
            }
        }
        self.milk_j_k += heat_j_k;
    }

    /// Lets the milk stand for some minutes, with the heat on or off as chosen.
    pub fn hold(&mut self, design: &VatDesign, minutes: f64) {
        let seconds = 60.0 * minutes;
        match &mut self.heat {
            Heat::Bath(course) => {
                let heater = design.heat_while_setting.then(|| thermostat(design));
                course.follow(&Leg { heater, end: End::After(seconds) });
                self.now = course.now;
            }
            Heat::Single(pieces) => {
                let off = Hob {
                    milk_j_k: self.milk_j_k,
                    power_w: 0.0,
                    loss_w_k: alone_loss_w_k(&self.pot),
                    room_c: design.room_temperature_c,
                    base_m2: self.pot.base_m2(),
                    milk_side_w_m2_k: self.pot.milk_side_w_m2_k,
                };
                let run = if design.heat_while_setting { Run::Hold } else { Run::Hob(off) };
                let piece = Piece { from_s: self.now.at_s, to_s: self.now.at_s + seconds, from_c: self.now.milk_c, run };
                self.now = Moment { at_s: piece.to_s, bath_c: self.now.bath_c, milk_c: piece.milk_c(piece.to_s) };
                pieces.push(piece);
            }
        }
    }

    /// Returns the mean temperature of the milk over the next minutes of a hold, °C, by Simpson's rule; nothing moves on.
    pub fn mean_while_setting_c(&self, design: &VatDesign, minutes: f64) -> f64 {
        let mut ahead = self.clone();
        ahead.hold(design, minutes);
        let middle_c = ahead.milk_at(self.now.at_s + 30.0 * minutes).milk_c;
        (self.now.milk_c + 4.0 * middle_c + ahead.now.milk_c) / 6.0
    }

    /// Notes an event now.
    pub fn note(&mut self, event: WarmingEvent) {
        self.events.push(WarmingMark { event, at_min: self.now.at_s / 60.0, milk_c: self.now.milk_c });
    }

    /// Notes an event at a minute that was gone through, or will be.
    pub fn note_between(&mut self, at_min: f64, event: WarmingEvent) {
        let milk_c = self.milk_at(60.0 * at_min).milk_c;
        self.events.push(WarmingMark { event, at_min, milk_c });
    }

    pub fn now_min(&self) -> f64 {
        self.now.at_s / 60.0
    }

    pub fn now_milk_c(&self) -> f64 {
        self.now.milk_c
    }

    pub fn energy_j(&self) -> f64 {
        self.energy_j
    }

    /// Returns the temperatures at a time that was gone through.
    fn milk_at(&self, at_s: f64) -> Moment {
        match &self.heat {
            Heat::Bath(course) => course.at(at_s),
            Heat::Single(pieces) => {
                let piece = pieces.iter().find(|piece| at_s <= piece.to_s);
                let milk_c = piece.map_or(self.now.milk_c, |piece| piece.milk_c(at_s));
                let outside_c = match piece.map(|piece| piece.run) {
                    Some(Run::Cold(mode)) => mode.node(Node::Bath, piece.map_or(0.0, |piece| at_s - piece.from_s)),
                    Some(Run::Boiler(boiler)) => (milk_c + boiler.most_w / boiler.steam_w_k).min(STEAM_TEMPERATURE.value),
                    Some(Run::Hob(hob)) => hob.wall_c(milk_c),
                    Some(Run::Hold) | None => milk_c,
                };
                Moment { at_s, bath_c: outside_c, milk_c }
            }
        }
    }

    /// Returns the wall on the milk's side at a moment, °C.
    fn wall_c(&self, moment: Moment) -> f64 {
        match &self.heat {
            Heat::Bath(_) => inner_wall_c(&self.pot, moment.bath_c, moment.milk_c),
            Heat::Single(pieces) => match pieces.iter().find(|piece| moment.at_s <= piece.to_s).map(|piece| piece.run) {
                Some(Run::Boiler(_) | Run::Cold(_)) => inner_wall_c(&self.pot, moment.bath_c, moment.milk_c),
                Some(Run::Hob(hob)) => hob.wall_c(moment.milk_c),
                Some(Run::Hold) | None => moment.milk_c,
            },
        }
    }

    /// Draws the curve: even steps, and a point at each event.
    pub fn drawn(&self) -> WarmingCourse {
        let mut events = self.events.clone();
        events.sort_by(|one, other| one.at_min.total_cmp(&other.at_min));
        let even = (0..=CURVE_POINTS).map(|point| self.now.at_s * f64::from(point) / f64::from(CURVE_POINTS));
        let mut times: Vec<f64> = even.chain(events.iter().map(|event| 60.0 * event.at_min)).collect();
        times.sort_by(f64::total_cmp);
        times.dedup_by(|later, earlier| (*later - *earlier).abs() < 1e-6);
        let curve: Vec<WarmingPoint> = times
            .into_iter()
            .map(|at_s| {
                let moment = self.milk_at(at_s);
                WarmingPoint { at_min: at_s / 60.0, bath_c: moment.bath_c, milk_c: moment.milk_c, wall_c: self.wall_c(moment) }
            })
            .collect();
        let most = |of: fn(&WarmingPoint) -> f64| curve.iter().map(of).fold(f64::NEG_INFINITY, f64::max);
        let wall_most_c = most(|point| point.wall_c);
        // The wall may be hottest away from the hob, where it is known well.
        let around = |(least, most): (f64, f64)| (least.min(wall_most_c), most.max(wall_most_c));
        WarmingCourse {
            wall_most_c,
            likely_wall_most_c: self.likely_wall_most_c(&curve).map(around),
            bath_most_c: most(|point| point.bath_c),
            curve,
            events,
        }
    }

    /// Returns the hottest wall over a hob by the least and by the greatest likely flux at its hot spot; none without a hob.
    fn likely_wall_most_c(&self, curve: &[WarmingPoint]) -> Option<(f64, f64)> {
        let Heat::Single(pieces) = &self.heat else { return None };
        let on_hob = |point: &WarmingPoint| match pieces.iter().find(|piece| 60.0 * point.at_min <= piece.to_s)?.run {
            Run::Hob(hob) => Some(hob.likely_wall_c(point.milk_c)),
            Run::Boiler(_) | Run::Cold(_) | Run::Hold => None,
        };
        let hotter = |one: (f64, f64), other: (f64, f64)| (one.0.max(other.0), one.1.max(other.1));
        curve.iter().filter_map(on_hob).reduce(hotter)
    }
}

pub(super) fn thermostat(design: &VatDesign) -> Thermostat {
    Thermostat { most_w: design.heater_power_w, set_c: design.bath_set_temperature_c, band_k: THERMOSTAT_BAND.value }
}

/// Returns what a pot without a bath loses to the room from its surface and its side, W/K.
fn alone_loss_w_k(pot: &Pot) -> f64 {
    pot.surface_loss_w_k() + SIDE_LOSS.value * pot.side_m2()
}

/// Returns how the milk warms without a bath.
fn single(design: &VatDesign, pot: &Pot, nodes: &Bath, milk_j_k: f64, reaches_w: f64) -> Run {
    let room_c = nodes.room_c;
    match design.heating {
        Heating::DoubleBoiler => Run::Boiler(DoubleBoiler {
            milk_j_k,
            steam_w_k: pot.overall_w_m2_k() * (pot.side_m2() + pot.base_m2()),
            steam_c: STEAM_TEMPERATURE.value,
            most_w: reaches_w,
            loss_w_k: pot.surface_loss_w_k(),
            room_c,
        }),
        Heating::Hob => Run::Hob(Hob {
            milk_j_k,
            power_w: reaches_w,
            loss_w_k: alone_loss_w_k(pot),
            room_c,
            base_m2: pot.base_m2(),
            milk_side_w_m2_k: pot.milk_side_w_m2_k,
        }),
        Heating::Bath => Run::Hold,
    }
}
