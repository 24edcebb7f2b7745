//! From litres and lids to heat capacities and conductances.

use std::f64::consts::PI;

crate::constants! {
    /// Shape of the pot.
    POT_ASPECT = { "Depth of the milk over the width of the pot", 0.6, "1", (0.4, 1.0), Ourselves, "a usual pot", Judged }
    /// Wall of the pot.
    POT_WALL = { "Thickness of the pot's wall", 0.0008, "m", (0.0005, 0.0015), Ourselves, "a usual steel pot", Judged }
    /// Wall that weighs as much as the pot.
    POT_MASS_WALL = { "Thickness of steel that weighs as the pot does", 0.001, "m", (0.0008, 0.003), Ourselves, "wall, rim and base", Judged }
    /// Side of the pot over the milk's.
    POT_SIDE = { "Side of the pot over that of the milk", 1.25, "1", (1.1, 1.5), Ourselves, "a rim above the milk", Judged }
    /// Conductivity of the wall.
    STEEL_CONDUCTIVITY = { "Conductivity of stainless steel", 15.0, "W/(m K)", (14.0, 17.0), Textbook, "austenitic steel", FromMemory }
    /// Density of the wall.
    STEEL_DENSITY = { "Density of stainless steel", 7900.0, "kg/m³", (7800.0, 8000.0), Textbook, "austenitic steel", FromMemory }
    /// Specific heat of the wall.
    STEEL_HEAT = { "Specific heat of stainless steel", 500.0, "J/(kg K)", (460.0, 510.0), Textbook, "austenitic steel", FromMemory }
    /// Transfer on the side of the milk.
    MILK_SIDE = { "Heat transfer to the milk, stirred now and then", 430.0, "W/(m² K)", (300.0, 1000.0), Perry, "table 11-7 has 285 to 1700 for whole jackets; this is by correlation", Judged }
    /// Transfer on the side of the bath.
    BATH_SIDE = { "Heat transfer from a moving bath", 600.0, "W/(m² K)", (300.0, 1000.0), Perry, "table 11-7 has 285 to 1700 for whole jackets; this is by correlation", Judged }
    /// Density of milk in the bath's equations.
    MILK_MASS = { "Density of milk in the warming", 1030.0, "kg/m³", (1020.0, 1038.0), GuelphNotes, "round value; half a per cent", Fitted }
    /// Specific heat of milk.
    MILK_HEAT = { "Specific heat of milk", 3900.0, "J/(kg K)", (3850.0, 3930.0), MilkHeatTables, "3.85, 3.9 and 3.93 in three tables", Published }
    /// Density of the bath.
    BATH_MASS = { "Density of the bath's water", 998.0, "kg/m³", (990.0, 1000.0), Kell1975, "20 °C", Fitted }
    /// Specific heat of the bath.
    BATH_HEAT = { "Specific heat of the bath's water", 4180.0, "J/(kg K)", (4178.0, 4190.0), Textbook, "20 to 50 °C", FromMemory }
    /// Loss through the side.
    SIDE_LOSS = { "Heat loss through the side of the bath", 8.0, "W/(m² K)", (5.0, 12.0), Ourselves, "still air and radiation", Judged }
    /// Loss through the floor.
    FLOOR_LOSS = { "Heat loss through the floor of the bath", 3.0, "W/(m² K)", (1.0, 6.0), Ourselves, "on a worktop", Judged }
    /// Loss through a lid.
    LID_LOSS = { "Heat loss through a lid", 7.0, "W/(m² K)", (5.0, 10.0), Ourselves, "still air and radiation", Judged }
    /// Loss from an open surface.
    OPEN_LOSS = { "Heat loss from an open warm surface", 36.0, "W/(m² K)", (20.0, 60.0), Ourselves, "with evaporation", Judged }
    /// Water under the pot.
    WATER_UNDER = { "Depth of water under the pot", 0.02, "m", (0.0, 0.05), Ourselves, "a rack", Judged }
    /// Spread of warming times.
    WARMING_SPREAD = { "Spread of warming times between kitchens", 0.25, "1", (0.2, 0.25), Ourselves, "overall transfer by correlation; until your own log calibrates it", Judged }
    /// Band of the thermostat.
    THERMOSTAT_BAND = { "Proportional band of the bath's thermostat", 0.5, "K", (0.1, 2.0), Ourselves, "a bath circulator", Judged }
}

/// How the pot is placed in the bath.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pot {
    /// Milk, L.
    pub milk_l: f64,
    /// Share of the milk's side below the bath's level, 0 to 1.
    pub side_wetted: f64,
    /// Share of the base that the bath reaches: 1 on an open rack, 0 flat on the floor.
    pub base_wetted: f64,
    /// Whether the pot has a lid.
    pub lid: bool,
    /// Heat transfer on the side of the milk, W/(m² K).
    pub milk_side_w_m2_k: f64,
    /// Heat transfer on the side of the bath, W/(m² K).
    pub bath_side_w_m2_k: f64,
}

impl Pot {
    /// Returns a pot that stands on a rack, wholly below the waterline, with a lid.
    #[must_use]
    pub const fn new(milk_l: f64) -> Self {
        Self {
            milk_l,
            side_wetted: 1.0,
            base_wetted: 1.0,
            lid: true,
            milk_side_w_m2_k: MILK_SIDE.value,
            bath_side_w_m2_k: BATH_SIDE.value,
        }
    }

    /// Returns the width of the pot, m: D = (4 V/(0.6 π))^⅓.
    #[must_use]
    pub fn width_m(&self) -> f64 {
        (4.0 * 0.001 * self.milk_l / (PI * POT_ASPECT.value)).cbrt()
    }

    /// Returns the depth of the milk, m.
    #[must_use]
    pub fn depth_m(&self) -> f64 {
        POT_ASPECT.value * self.width_m()
    }

    /// Returns the height of the pot up to its rim, m.
    #[must_use]
    pub fn height_m(&self) -> f64 {
        POT_SIDE.value * self.depth_m()
    }

    /// Returns the area of the base, m².
    #[must_use]
    pub fn base_m2(&self) -> f64 {
        0.25 * PI * self.width_m().powi(2)
    }

    /// Returns the area of the side that the milk touches, m².
    #[must_use]
    pub fn side_m2(&self) -> f64 {
        PI * self.width_m() * self.depth_m()
    }

    /// Returns the overall heat transfer through the wall, W/(m² K): 1/U = 1/h_i + s/k + 1/h_o.
    #[must_use]
    pub fn overall_w_m2_k(&self) -> f64 {
        1.0 / (1.0 / self.milk_side_w_m2_k + POT_WALL.value / STEEL_CONDUCTIVITY.value + 1.0 / self.bath_side_w_m2_k)
    }

    /// Returns the heat capacity of the pot itself, J/K.
    #[must_use]
    pub fn steel_j_k(&self) -> f64 {
        STEEL_HEAT.value * STEEL_DENSITY.value * POT_MASS_WALL.value * (POT_SIDE.value * self.side_m2() + self.base_m2())
    }

    /// Returns what the milk loses to the room from its surface, W/K.
    #[must_use]
    pub fn surface_loss_w_k(&self) -> f64 {
        top_loss(self.lid) * self.base_m2()
    }
}

fn top_loss(lid: bool) -> f64 {
    if lid { LID_LOSS.value } else { OPEN_LOSS.value }
}

/// Returns how high the water of a bath stands, m: over the wetted share of the milk's depth, and under the pot.
#[must_use]
pub fn bath_level_m(pot: &Pot) -> f64 {
    pot.side_wetted * pot.depth_m() + WATER_UNDER.value
}

/// Returns the floor of a round bath that holds so much water with the pot in it, m²: volume of water and wetted pot over the level.
///
/// # Arguments
/// * `bath_l`: water, L, > 0
#[must_use]
pub fn bath_floor_m2(pot: &Pot, bath_l: f64) -> f64 {
    0.001 * (bath_l + pot.side_wetted * pot.milk_l) / bath_level_m(pot)
}

/// Returns the width of the same, m.
///
/// # Example
/// ```
/// use vatsketch::law::bath::{Pot, bath_floor_m2, bath_width_m};
/// let pot = Pot::new(6.0);
/// let width_m = bath_width_m(&pot, 8.0);
/// assert!((0.25 * std::f64::consts::PI * width_m.powi(2) - bath_floor_m2(&pot, 8.0)).abs() < 1e-12);
/// ```
#[must_use]
pub fn bath_width_m(pot: &Pot, bath_l: f64) -> f64 {
    (4.0 * bath_floor_m2(pot, bath_l) / PI).sqrt()
}

/// The two nodes: heat capacities and conductances.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bath {
    /// Heat capacity of the bath, J/K.
    pub bath_j_k: f64,
    /// Heat capacity of the milk, J/K.
    pub milk_j_k: f64,
    /// Between bath and milk, W/K.
    pub between_w_k: f64,
    /// From bath to room, W/K.
    pub bath_loss_w_k: f64,
    /// From milk to room, W/K.
    pub milk_loss_w_k: f64,
    /// Temperature of the room, °C.
    pub room_c: f64,
}

/// Returns the two nodes of a pot in a bath.
///
/// The wall of the pot is split between milk and bath in proportion to the transfer on its sides. The bath is a cylinder filled to the level
/// of the milk (or as far as the pot is wetted) and a little below the pot.
///
/// # Arguments
/// * `bath_l`: water in the bath, > 0
/// * `bath_lid`: whether the bath has a lid
/// * `room_c`: temperature of the kitchen
///
/// # Source
/// Conductances in series (any textbook of heat transfer, from memory); [`crate::source::SourceId::Perry`], table 11-7, for the range in
/// which [`MILK_SIDE`] and its neighbours are.
///
/// # Example
/// ```
/// use vatsketch::law::bath::{bath_of, Pot};
/// let nodes = bath_of(&Pot::new(9.4), 11.0, true, 20.0);
/// assert!((nodes.between_w_k - 48.54886).abs() < 1e-5);
/// ```
#[must_use]
pub fn bath_of(pot: &Pot, bath_l: f64, bath_lid: bool, room_c: f64) -> Bath {
    let (milk_m3, bath_m3) = (0.001 * pot.milk_l, 0.001 * bath_l);
    let steel_with_bath = pot.bath_side_w_m2_k / (pot.bath_side_w_m2_k + pot.milk_side_w_m2_k);
    let steel_j_k = pot.steel_j_k();
    let (level_m, floor_m2, width_m) = (bath_level_m(pot), bath_floor_m2(pot, bath_l), bath_width_m(pot, bath_l));
    let open_m2 = (floor_m2 - pot.base_m2()).max(0.0);
    Bath {
        bath_j_k: BATH_MASS.value * bath_m3 * BATH_HEAT.value + steel_with_bath * steel_j_k,
        milk_j_k: MILK_MASS.value * milk_m3 * MILK_HEAT.value + (1.0 - steel_with_bath) * steel_j_k,
        between_w_k: pot.overall_w_m2_k() * (pot.side_wetted * pot.side_m2() + pot.base_wetted * pot.base_m2()),
        bath_loss_w_k: SIDE_LOSS.value * PI * width_m * level_m + FLOOR_LOSS.value * floor_m2 + top_loss(bath_lid) * open_m2,
        milk_loss_w_k: pot.surface_loss_w_k(),
        room_c,
    }
}
