//! One mode of the heater: off, at full power, or in the band of the thermostat. In each the two nodes are linear and solved exactly.

use super::Bath;
use crate::numeric::{Bracket, brent};

/// What the heater does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Power {
    /// Off.
    Off,
    /// A constant power, W.
    Full(f64),
    /// In proportion to what is missing: P_max (T_set − T_b)/band.
    Band {
        /// Full power, W.
        most_w: f64,
        /// Where the thermostat is set, °C.
        set_c: f64,
        /// Width of the band, K.
        band_k: f64,
    },
}

/// The exact course of bath and milk in one mode.
///
/// With x = T − T_room: C_b ẋ_b = P − UA (x_b − x_m) − G_b x_b and C_m ẋ_m = UA (x_b − x_m) − G_m x_m. The slope at the start is split on
/// the eigenvectors, u = Σ cᵢ vᵢ, and x(t) = x₀ + Σ cᵢ vᵢ g(λᵢ, t) with g = (e^(λt) − 1)/λ. No steady state is formed, so a bath without
/// losses needs no special treatment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mode {
    start: [f64; 2],
    rates: [f64; 2],
    vectors: [[f64; 2]; 2],
    shares: [f64; 2],
    power: Power,
    room_c: f64,
}

/// (e^(λt) − 1)/λ, and t where λ vanishes.
fn grown(rate: f64, t: f64) -> f64 {
    if (rate * t).abs() < 1e-13 { t } else { (rate * t).exp_m1() / rate }
}

/// The integral of [`grown`] from 0 to t.
fn grown_sum(rate: f64, t: f64) -> f64 {
    let z = rate * t;
    if z.abs() < 1e-3 { t * t * (0.5 + z / 6.0 + z * z / 24.0 + z * z * z / 120.0) } else { (z.exp_m1() - z) / (rate * rate) }
}

impl Mode {
    /// Returns the course from these temperatures on.
    ///
    /// # Arguments
    /// * `bath_c`, `milk_c`: at the start
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::bath::{bath_of, Mode, Pot, Power};
    /// let nodes = bath_of(&Pot::new(9.4), 11.0, true, 20.0);
    /// let (bath_c, milk_c) = Mode::new(&nodes, Power::Full(1000.0), 20.0, 4.0).at(600.0);
    /// assert!((milk_c - 13.8995).abs() < 1e-4 && (bath_c - 24.7800).abs() < 1e-4);
    /// ```
    #[must_use]
    pub fn new(nodes: &Bath, power: Power, bath_c: f64, milk_c: f64) -> Self {
        let Bath { bath_j_k, milk_j_k, between_w_k, bath_loss_w_k, milk_loss_w_k, room_c } = *nodes;
        let (feedback, drive) = match power {
            Power::Off => (0.0, 0.0),
            Power::Full(watt) => (0.0, watt / bath_j_k),
            Power::Band { most_w, set_c, band_k } => {
                let feedback = most_w / (band_k * bath_j_k);
                (feedback, feedback * (set_c - room_c))
            }
        };
        let m11 = -(between_w_k + bath_loss_w_k) / bath_j_k - feedback;
        let m12 = between_w_k / bath_j_k;
        let m21 = between_w_k / milk_j_k;
        let m22 = -(between_w_k + milk_loss_w_k) / milk_j_k;
        // Written so that nothing cancels: all terms are positive.
        let determinant = (between_w_k * (bath_loss_w_k + milk_loss_w_k) + bath_loss_w_k * milk_loss_w_k) / (bath_j_k * milk_j_k)
            + feedback * (between_w_k + milk_loss_w_k) / milk_j_k;
        let fast = 0.5 * (m11 + m22 - ((m11 - m22).powi(2) + 4.0 * m12 * m21).sqrt());
        let slow = determinant / fast;
        let (fast_vector, slow_vector) = ([fast - m22, m21], [slow - m22, m21]);
        let (bath_x, milk_x) = (bath_c - room_c, milk_c - room_c);
        let slope = [m11 * bath_x + m12 * milk_x + drive, m21 * bath_x + m22 * milk_x];
        let [[f0, f1], [s0, s1]] = [fast_vector, slow_vector];
        let cross = f0 * s1 - s0 * f1;
        let shares = [(slope[0] * s1 - s0 * slope[1]) / cross, (f0 * slope[1] - slope[0] * f1) / cross];
        Self { start: [bath_x, milk_x], rates: [fast, slow], vectors: [fast_vector, slow_vector], shares, power, room_c }
    }

    /// Returns the temperatures of bath and milk after `t` seconds, °C.
    #[must_use]
    pub fn at(&self, t: f64) -> (f64, f64) {
        let [fast, slow] = self.rates;
        let (a, b) = (self.shares[0] * grown(fast, t), self.shares[1] * grown(slow, t));
        let [[f0, f1], [s0, s1]] = self.vectors;
        (self.room_c + self.start[0] + a * f0 + b * s0, self.room_c + self.start[1] + a * f1 + b * s1)
    }

    /// Returns the energy that the heater gives within `t` seconds, J.
    #[must_use]
    pub fn energy_j(&self, t: f64) -> f64 {
        match self.power {
            Power::Off => 0.0,
            Power::Full(watt) => watt * t,
            Power::Band { most_w, set_c, band_k } => {
                let [fast, slow] = self.rates;
                let [[f0, _], [s0, _]] = self.vectors;
                let sum = self.start[0] * t + self.shares[0] * f0 * grown_sum(fast, t) + self.shares[1] * s0 * grown_sum(slow, t);
                most_w / band_k * ((set_c - self.room_c) * t - sum)
            }
        }
    }

    /// Returns the one time after the start at which a node turns, if it does.
    #[must_use]
    pub fn turn(&self, node: Node) -> Option<f64> {
        let [[f0, f1], [s0, s1]] = self.vectors;
        let (fast_part, slow_part) = match node {
            Node::Bath => (f0, s0),
            Node::Milk => (f1, s1),
        };
        let (a, b) = (self.shares[0] * fast_part, self.shares[1] * slow_part);
        let ratio = -b / a;
        let turns = a != 0.0 && b != 0.0 && ratio > 0.0;
        let t = ratio.ln() / (self.rates[0] - self.rates[1]);
        (turns && t > 0.0).then_some(t)
    }

    /// Returns the first time in (0, `most`] at which a node is at a temperature, if it comes there.
    ///
    /// A node turns at most once, so there are at most two monotone pieces, and each holds at most one crossing.
    #[must_use]
    pub fn first_at(&self, node: Node, level_c: f64, most: f64) -> Option<f64> {
        let excess = |t: f64| self.node(node, t) - level_c;
        let turn = self.turn(node).filter(|turn| *turn < most);
        let mut from = 0.0;
        for to in turn.into_iter().chain([most]) {
            let (before, after) = (excess(from), excess(to));
            if before.abs() < 1e-11 {
                if from > 0.0 {
                    return Some(from);
                }
            } else if before * after <= 0.0 {
                return brent(excess, Bracket { from, to }, 1e-12).ok();
            }
            from = to;
        }
        None
    }

    /// Returns the temperature of a node after `t` seconds, °C.
    #[must_use]
    pub fn node(&self, node: Node, t: f64) -> f64 {
        let (bath_c, milk_c) = self.at(t);
        match node {
            Node::Bath => bath_c,
            Node::Milk => milk_c,
        }
    }
}

/// One of the two nodes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Node {
    /// The bath.
    Bath,
    /// The milk.
    Milk,
}
