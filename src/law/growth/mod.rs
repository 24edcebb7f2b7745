//! Growth in food: what published rules and tables say, and how far germs could grow at a place by published laws.
//!
//! Limits of time and temperature, classes by acid and water activity and the least conditions of growth say what is written there.
//! The laws give potential growth, which compares designs; that they foresee none is no proof. Rates are in ln per hour, acids in mmol per
//! kg of water, all forms together unless undissociated. A figure that is no number holds nothing back.

mod best_rates;
mod cardinal;
mod cardinal_values;
mod conditions;
mod crowd;
mod germ;
mod germ_numbers;
mod history;
mod inhibiting;
mod lag;
mod limits;
mod mejlholm_dalgaard;
mod organisms;
mod rate;
mod rules;
mod shape;
mod spoilage;
mod tables;

pub use best_rates::CONSTANTS as BEST_RATE_CONSTANTS;
pub use cardinal::{Cardinal, Distances, Power, hindered, interaction, line, undissociated};
pub use cardinal_values::CORRELATIONS as CARDINAL_CORRELATIONS;
pub use conditions::{Conditions, GrowthFactors, HeldBackBy};
pub use crowd::{LogisticCrowd, Start, beside_crowd};
pub use germ::Germ;
pub use germ_numbers::{
    AIRLESS_LIMITS, CARELESS_START, CLEAN_START, COLD_AIRLESS_LIMITS, CONSTANTS as GERM_CONSTANTS,
    CORRELATIONS as GERM_CORRELATIONS, CURD_CONCENTRATION, RAW_MILK_START, TOXIN_DENSITY, TOXIN_LIMITS, USUAL_LAG_WORK,
};
pub use history::{Moment, dose_along, hours_within};
pub use inhibiting::{
    CONSTANTS as INHIBITING_CONSTANTS, LISTERIA_ACETIC, LISTERIA_CHEESE_ACETIC, LISTERIA_CHEESE_CITRIC, LISTERIA_CHEESE_LACTIC,
    LISTERIA_HARDY_ACETIC, LISTERIA_HARDY_LACTIC, LISTERIA_LOW_ACETIC, LISTERIA_LOW_LACTIC, STAPHYLOCOCCUS_LACTIC,
};
pub use lag::{increase_capped_log10, increase_log10};
pub use limits::{
    COLD_DRAINING, COLD_ENOUGH, CONSTANTS as LIMIT_CONSTANTS, COOL_ABOVE, COOL_HOURS, HOT_ENOUGH, SERVICE_HOURS, SERVICE_WARM,
    above_service_warm, in_zone,
};
pub use mejlholm_dalgaard::{CORRELATIONS as CHILLED_CORRELATIONS, Chilled, mejlholm_dalgaard};
pub use organisms::{CORRELATIONS, Organism, growers};
pub use rate::{GrowthLaw, GrowthPlace, Sour, WarmGrowth};
pub use rules::{
    AIRLESS_DAYS, AIRLESS_PH, AIRLESS_WATER, CEREUS_MANY, CONSTANTS as RULE_CONSTANTS, GERM_GREW, LISTERIA_ALLOWED, LISTERIA_GREW,
    LISTERIA_STOPS_PH, LISTERIA_STOPS_PH_TOO, LISTERIA_STOPS_WATER, LISTERIA_STOPS_WATER_TOO, SOUR_BEFORE_DRYING_PH,
    SOURED_IN_TIME_H, SOURED_IN_TIME_PH, STAPHYLOCOCCI_GOOD, STAPHYLOCOCCI_MOST, STAPHYLOCOCCI_TEST, STARTER_ENOUGH, WARM_DRYING,
};
pub use spoilage::{
    CONSTANTS as SPOILAGE_CONSTANTS, CORRELATIONS as SPOILAGE_CORRELATIONS, YEAST_COLDEST, YEAST_DRIEST, YEAST_MILDEST,
    YEAST_SOUREST, YEAST_WARMEST, YEAST_WETTEST, mould_mm_per_day, yeast_rate_per_h,
};
pub use tables::{
    ACIDIFIED_PH, AcidClass, CONSTANTS as TABLE_CONSTANTS, Control, DRY, SHELF_STABLE, TABLE_B_PH, acid_class, table_b,
};
