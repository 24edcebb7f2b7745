//! A pot of milk in a bath of warm water: two nodes, bath and milk, solved exactly.

mod course;
mod geometry;
mod mode;
mod other;
mod wall;

pub use course::{Course, End, Leg, Moment, Thermostat};
pub use geometry::{
    BATH_SIDE, Bath, CONSTANTS as GEOMETRY_CONSTANTS, MILK_HEAT, MILK_SIDE, Pot, SIDE_LOSS, THERMOSTAT_BAND, WARMING_SPREAD,
    WATER_UNDER, bath_floor_m2, bath_level_m, bath_of, bath_width_m,
};
pub use mode::{Mode, Node, Power};
pub use other::{CONSTANTS as OTHER_CONSTANTS, DoubleBoiler, Hob, POWER_REACHES, STEAM_TEMPERATURE};
pub use wall::{CONSTANTS as WALL_CONSTANTS, DEPOSITS_BEGIN, Scorching, inner_wall_c, scorching};
