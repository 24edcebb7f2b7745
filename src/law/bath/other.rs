//! The double boiler, whose steam is limited, and the hob, whose power is constant: one node, solved exactly.

crate::constants! {
    /// Steam.
    STEAM_TEMPERATURE = { "Steam of a double boiler", 100.0, "°C", (95.0, 100.0), Textbook, "boiling at sea level", FromMemory }
    /// What stirring does.
    STIRRED_FILM = { "Film of milk that is stirred over that of milk left alone", 2.0, "1", (1.5, 3.0), Ourselves, "by hand, slowly; stirred vessels reach more", Judged }
    /// Hottest spot over a hob.
    HOT_SPOT = { "Flux at a hob's hot spot over the mean", 2.0, "1", (1.5, 4.0), Ourselves, "thin steel over a plate or flame", Judged }
    /// What of the power comes to the pot.
    POWER_REACHES = { "Heat that comes to a pot over what its heater is rated at, on a hob or over steam", 1.0, "1", (0.75, 1.2), Ourselves, "what goes past the pot on one side, mains and a rating on the other; 1 is to be calibrated by the maker's own log", Judged }
    /// What boiling allows.
    BOILING_WALL = { "Hottest wall under boiling milk", 110.0, "°C", (103.0, 120.0), Ourselves, "milk boils on a wall some kelvins above 100 °C, and the bubbles carry the heat away", Judged }
}

/// A pot over steam: the milk takes what the steam brings, or what the wall lets through, whichever is less.
///
/// C Ṫ = min(P, UA (T_s − T)) − G (T − T_room).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DoubleBoiler {
    /// Heat capacity of milk and pot, J/K.
    pub milk_j_k: f64,
    /// From steam to milk, W/K.
    pub steam_w_k: f64,
    /// Temperature of the steam, °C.
    pub steam_c: f64,
    /// Power that makes the steam, W.
    pub most_w: f64,
    /// From milk to room, W/K.
    pub loss_w_k: f64,
    /// Temperature of the room, °C.
    pub room_c: f64,
}

impl DoubleBoiler {
    /// Returns the milk temperature above which the wall and no longer the steam is the limit, °C.
    fn changes_c(&self) -> f64 {
        self.steam_c - self.most_w / self.steam_w_k
    }

    /// Returns the seconds from one milk temperature up to another; none if it never gets there.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::bath::DoubleBoiler;
    /// let boiler = DoubleBoiler { milk_j_k: 10676.68041, steam_w_k: 15.5073493, steam_c: 100.0, most_w: 400.0, loss_w_k: 0.17166275, room_c: 20.0 };
    /// assert!((boiler.warming_s(4.0, 17.0).unwrap() - 345.5841).abs() < 1e-3);
    /// ```
    #[must_use]
    pub fn warming_s(&self, from_c: f64, to_c: f64) -> Option<f64> {
        let change_c = self.changes_c();
        let by_supply_c = to_c.min(change_c);
        let mut spent_s = 0.0;
        let mut now_c = from_c;
        if now_c < by_supply_c {
            spent_s += one_node_s(self.milk_j_k, self.loss_w_k, self.most_w + self.loss_w_k * self.room_c, now_c, by_supply_c)?;
            now_c = by_supply_c;
        }
        // Written so that a temperature that is not a number is never reached.
        let arrived = now_c >= to_c;
        if !arrived {
            let conductance = self.steam_w_k + self.loss_w_k;
            spent_s +=
                one_node_s(self.milk_j_k, conductance, self.steam_w_k * self.steam_c + self.loss_w_k * self.room_c, now_c, to_c)?;
        }
        Some(spent_s)
    }

    /// Returns the milk's temperature after `t` seconds, °C.
    #[must_use]
    pub fn milk_c(&self, from_c: f64, t: f64) -> f64 {
        let change_c = self.changes_c();
        let supply_s = if from_c < change_c { self.warming_s(from_c, change_c).unwrap_or(f64::INFINITY) } else { 0.0 };
        let by_supply_s = t.min(supply_s);
        let now_c = one_node_c(self.milk_j_k, self.loss_w_k, self.most_w + self.loss_w_k * self.room_c, from_c, by_supply_s);
        let conductance = self.steam_w_k + self.loss_w_k;
        one_node_c(self.milk_j_k, conductance, self.steam_w_k * self.steam_c + self.loss_w_k * self.room_c, now_c, t - by_supply_s)
    }
}

/// A pot straight on the hob: constant power into the milk. C Ṫ = P − G (T − T_room).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hob {
    /// Heat capacity of milk and pot, J/K.
    pub milk_j_k: f64,
    /// Power into the milk, W.
    pub power_w: f64,
    /// From milk to room, W/K.
    pub loss_w_k: f64,
    /// Temperature of the room, °C.
    pub room_c: f64,
    /// Area of the base, m².
    pub base_m2: f64,
    /// Heat transfer to the milk, W/(m² K).
    pub milk_side_w_m2_k: f64,
}

impl Hob {
    /// Returns the seconds from one milk temperature up to another; none if it never gets there.
    #[must_use]
    pub fn warming_s(&self, from_c: f64, to_c: f64) -> Option<f64> {
        one_node_s(self.milk_j_k, self.loss_w_k, self.power_w + self.loss_w_k * self.room_c, from_c, to_c)
    }

    /// Returns the milk's temperature after `t` seconds, °C.
    #[must_use]
    pub fn milk_c(&self, from_c: f64, t: f64) -> f64 {
        one_node_c(self.milk_j_k, self.loss_w_k, self.power_w + self.loss_w_k * self.room_c, from_c, t)
    }

    /// Returns the wall at the hot spot, °C: T_m + 2 P/(A h), but no more than boiling milk allows.
    #[must_use]
    pub fn wall_c(&self, milk_c: f64) -> f64 {
        self.wall_at(milk_c, HOT_SPOT.value)
    }

    /// Returns the same for the least flux that a hot spot is likely to have, under milk that is stirred, and for the greatest, under milk that
    /// stands: how hot it gets is known only roughly.
    #[must_use]
    pub fn likely_wall_c(&self, milk_c: f64) -> (f64, f64) {
        (self.wall_at(milk_c, HOT_SPOT.range.0 / STIRRED_FILM.value), self.wall_at(milk_c, HOT_SPOT.range.1))
    }

    fn wall_at(&self, milk_c: f64, over_mean: f64) -> f64 {
        (milk_c + over_mean * self.power_w / (self.base_m2 * self.milk_side_w_m2_k)).min(BOILING_WALL.value)
    }
}

/// Seconds in which C Ṫ = drive − conductance · T goes from one temperature up to another; none if it never does.
fn one_node_s(heat_j_k: f64, conductance_w_k: f64, drive_w: f64, from_c: f64, to_c: f64) -> Option<f64> {
    let seconds = if conductance_w_k > 0.0 {
        let steady_c = drive_w / conductance_w_k;
        heat_j_k / conductance_w_k * ((steady_c - from_c) / (steady_c - to_c)).ln()
    } else {
        heat_j_k * (to_c - from_c) / drive_w
    };
    (seconds.is_finite() && seconds >= 0.0).then_some(seconds)
}

/// The temperature of C Ṫ = drive − conductance · T after some seconds.
fn one_node_c(heat_j_k: f64, conductance_w_k: f64, drive_w: f64, from_c: f64, t: f64) -> f64 {
    let rate = -conductance_w_k / heat_j_k;
    let grown_s = if (rate * t).abs() < 1e-13 { t } else { (rate * t).exp_m1() / rate };
    from_c + (drive_w - conductance_w_k * from_c) / heat_j_k * grown_s
}
