//! Leg by leg: warm to a temperature, add something, hold for a time; the heater's modes change on the way.

use super::mode::Node;
use super::{Bath, Mode, Power};

/// A heater with a thermostat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thermostat {
    /// Full power, W.
    pub most_w: f64,
    /// Where it is set, °C.
    pub set_c: f64,
    /// Width of its band, K.
    pub band_k: f64,
}

/// When a leg ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum End {
    /// When the milk is at a temperature, or after so many seconds at the latest.
    MilkAt {
        /// The temperature, °C.
        milk_c: f64,
        /// The latest, s.
        within_s: f64,
    },
    /// After so many seconds.
    After(f64),
}

/// One leg of the course.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Leg {
    /// The heater; none where it is off.
    pub heater: Option<Thermostat>,
    /// When it ends.
    pub end: End,
}

/// One moment of the course.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Moment {
    /// Seconds from the start.
    pub at_s: f64,
    /// Temperature of the bath, °C.
    pub bath_c: f64,
    /// Temperature of the milk, °C.
    pub milk_c: f64,
}

/// Bath and milk on their way.
#[derive(Clone, Debug)]
pub struct Course {
    /// The two nodes; additions make the milk's heavier.
    pub nodes: Bath,
    /// Where they are now.
    pub now: Moment,
    /// Energy given so far, J.
    pub energy_j: f64,
    /// Pieces of one mode each, with the time at which they begin and end.
    pieces: Vec<(f64, f64, Mode)>,
}

/// A bath that sits this close to an edge of the band counts as on it, K.
const ON_EDGE_K: f64 = 1e-9;
/// A change of mode sooner than this is the one that was just made, s.
const JUST_CHANGED_S: f64 = 1e-10;
/// Changes of mode in one leg after which something is wrong with the input.
const MOST_PIECES: usize = 10_000;

impl Course {
    /// Returns bath and milk at the start.
    #[must_use]
    pub const fn new(nodes: Bath, bath_c: f64, milk_c: f64) -> Self {
        Self { nodes, now: Moment { at_s: 0.0, bath_c, milk_c }, energy_j: 0.0, pieces: Vec::new() }
    }

    /// Goes through one leg; returns whether the milk came to the temperature that ends it (always so for a leg by time).
    pub fn follow(&mut self, leg: &Leg) -> bool {
        let began_s = self.now.at_s;
        let (level_c, within_s) = match leg.end {
            End::MilkAt { milk_c, within_s } => (Some(milk_c), within_s),
            End::After(seconds) => (None, seconds),
        };
        if level_c.is_some_and(|level_c| (self.now.milk_c - level_c).abs() < 1e-12) {
            return true;
        }
        // Time is counted within the leg: adding tiny steps to a large time would lose digits.
        let mut spent_s = 0.0;
        for _ in 0..MOST_PIECES {
            let (power, edges) = self.power(leg.heater);
            let mode = Mode::new(&self.nodes, power, self.now.bath_c, self.now.milk_c);
            let left_s = within_s - spent_s;
            let reached = level_c.and_then(|level_c| mode.first_at(Node::Milk, level_c, left_s));
            let change = edges
                .into_iter()
                .flatten()
                .filter_map(|edge_c| mode.first_at(Node::Bath, edge_c, left_s).filter(|t| *t > JUST_CHANGED_S).map(|t| (t, edge_c)))
                .min_by(|left, right| left.0.total_cmp(&right.0));
            let end_s = reached.unwrap_or(left_s);
            let (step_s, edge_c) = match change {
                Some((t, edge_c)) if t < end_s => (t, Some(edge_c)),
                _ => (end_s, None),
            };
            let (bath_c, milk_c) = mode.at(step_s);
            self.energy_j += mode.energy_j(step_s);
            self.pieces.push((began_s + spent_s, began_s + spent_s + step_s, mode));
            spent_s += step_s;
            // At a change of mode the bath stands exactly on the edge.
            self.now = Moment { at_s: began_s + spent_s, bath_c: edge_c.unwrap_or(bath_c), milk_c };
            if edge_c.is_none() {
                return level_c.is_none() || reached.is_some();
            }
        }
        false
    }

    /// Adds something to the milk: T ← (C_m T_m + C_a T_a)/(C_m + C_a).
    ///
    /// # Arguments
    /// * `heat_j_k`: heat capacity of what is added, ≥ 0
    /// * `temperature_c`: its temperature
    pub fn add(&mut self, heat_j_k: f64, temperature_c: f64) {
        let milk_j_k = self.nodes.milk_j_k;
        self.now.milk_c = (milk_j_k * self.now.milk_c + heat_j_k * temperature_c) / (milk_j_k + heat_j_k);
        self.nodes.milk_j_k = milk_j_k + heat_j_k;
    }

    /// Returns bath and milk at a time that was gone through; before an addition that falls on it.
    #[must_use]
    pub fn at(&self, at_s: f64) -> Moment {
        let piece = self.pieces.iter().find(|(_, to_s, _)| at_s <= *to_s);
        piece.map_or(self.now, |(from_s, _, mode)| {
            let (bath_c, milk_c) = mode.at((at_s - from_s).max(0.0));
            Moment { at_s, bath_c, milk_c }
        })
    }

    /// Puts the pot into another bath; the milk, with what was stirred into it, stays as it is.
    ///
    /// # Arguments
    /// * `nodes`: the same pot in the other bath
    /// * `bath_c`: temperature of its water
    pub const fn put_into(&mut self, nodes: Bath, bath_c: f64) {
        self.nodes = Bath { milk_j_k: self.nodes.milk_j_k, ..nodes };
        self.now.bath_c = bath_c;
    }

    /// Returns the warmest bath and the warmest milk of all pieces, °C: at their ends and where they turn.
    #[must_use]
    pub fn warmest_c(&self) -> (f64, f64) {
        self.warmest_since_c(0.0)
    }

    /// Returns the same of the legs that began at a time or later.
    #[must_use]
    pub fn warmest_since_c(&self, since_s: f64) -> (f64, f64) {
        let least = (f64::NEG_INFINITY, f64::NEG_INFINITY);
        self.ends_and_turns(since_s).fold(least, |most, (bath_c, milk_c)| (most.0.max(bath_c), most.1.max(milk_c)))
    }

    /// Returns the coldest milk of the legs that began at a time or later, °C.
    #[must_use]
    pub fn coldest_milk_since_c(&self, since_s: f64) -> f64 {
        self.ends_and_turns(since_s).fold(f64::INFINITY, |least, (_, milk_c)| least.min(milk_c))
    }

    /// Returns bath and milk where pieces end and where either turns, °C; between two of these both go one way.
    fn ends_and_turns(&self, since_s: f64) -> impl Iterator<Item = (f64, f64)> {
        self.pieces.iter().filter(move |(from_s, _, _)| *from_s >= since_s).flat_map(|(from_s, to_s, mode)| {
            let length_s = to_s - from_s;
            let turns = [mode.turn(Node::Bath), mode.turn(Node::Milk)].into_iter().flatten().filter(move |turn| *turn < length_s);
            [0.0, length_s].into_iter().chain(turns).map(|t| mode.at(t))
        })
    }

    /// Returns what the heater does now, and the bath temperatures at which that changes.
    fn power(&self, heater: Option<Thermostat>) -> (Power, [Option<f64>; 2]) {
        let Some(Thermostat { most_w, set_c, band_k }) = heater else { return (Power::Off, [None, None]) };
        let Bath { between_w_k, bath_loss_w_k, room_c, .. } = self.nodes;
        let Moment { bath_c, milk_c, .. } = self.now;
        let rises = |watt: f64| watt - between_w_k * (bath_c - milk_c) - bath_loss_w_k * (bath_c - room_c);
        let low_c = set_c - band_k;
        let full = (Power::Full(most_w), [Some(low_c), None]);
        let off = (Power::Off, [Some(set_c), None]);
        let band = (Power::Band { most_w, set_c, band_k }, [Some(low_c), Some(set_c)]);
        if (bath_c - low_c).abs() <= ON_EDGE_K {
            if rises(most_w) >= 0.0 { band } else { full }
        } else if (bath_c - set_c).abs() <= ON_EDGE_K {
            if rises(0.0) > 0.0 { off } else { band }
        } else if bath_c < low_c {
            full
        } else if bath_c > set_c {
            off
        } else {
            band
        }
    }
}
