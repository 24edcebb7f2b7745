//! What published rules and tables say of growth in food: limits of time and temperature, classes by acid and water activity, and
//! the least conditions in which germs grow. Each says what is written there; none is a proof about a cheese.

mod limits;
mod organisms;
mod tables;

pub use limits::{
    COLD_DRAINING, COLD_ENOUGH, CONSTANTS as LIMIT_CONSTANTS, HOT_ENOUGH, SERVICE_HOURS, SERVICE_WARM, above_service_warm, in_zone,
};
pub use organisms::{CORRELATIONS, Organism, growers};
pub use tables::{
    ACIDIFIED_PH, AcidClass, CONSTANTS as TABLE_CONSTANTS, Control, DRY, SHELF_STABLE, TABLE_B_PH, acid_class, table_b,
};
