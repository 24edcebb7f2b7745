//! Souring milk and curd: by a culture, by an acid stirred in, by glucono-delta-lactone; and what that does to gel, calcium and taste.
//! A model of one maker's pH, to be measured with a pH meter; a culture may fail.

mod acids;
mod calcium;
mod cardinal;
mod course;
mod culture;
mod gel;
mod lactone;
mod records;
mod sourable;
mod taste;

pub use acids::{
    ACETIC_PK, Acid, AcidAmounts, CITRIC_MOLAR_MASS, CITRIC_PK, CONSTANTS as ACID_CONSTANTS, CORRELATIONS as ACID_CORRELATIONS,
    GLUCONIC_MOLAR_MASS, GLUCONIC_PK, LACTIC_MOLAR_MASS, LACTIC_PK,
};
pub use calcium::{
    COLLOIDAL_LEFT, COLLOIDAL_SHARE, CONSTANTS as CALCIUM_CONSTANTS, CORRELATIONS as CALCIUM_CORRELATIONS, CURD_WHEY_SHARE,
    colloidal_calcium_left, curd_calcium_share,
};
pub use cardinal::Cardinal;
pub use course::{CultureState, SOURING_STEP_H, SouringPoint, hours_to, lactose_percent, sour, sour_beside_lactone, souring_at};
pub use culture::{Beyond, Culture, CultureLaw};
pub use gel::{
    ACID_CLOT_C, ACID_CLOT_PH, CLOTTING_PH_LEAST, CONSTANTS as GEL_CONSTANTS, DRIP_PH_FACTOR, DRIP_PH_FROM, DRIP_PH_TO,
    STIR_ACID_BELOW_C, WARM_ACID_CLOT_PH, clots_where_it_falls, clotting_factor, drip_factor,
};
pub use lactone::{
    CONSTANTS as LACTONE_CONSTANTS, LACTONE_ENERGY, LACTONE_MOLAR_MASS, LACTONE_RATE, gluconic_mol_kg, lactone_rate_per_h,
    lactone_split_share,
};
pub use records::{
    BULK_STARTER_CELLS, CONSTANTS as CULTURE_CONSTANTS, CORRELATIONS as CULTURE_CORRELATIONS, CULTURE_LAG_WORK, CULTURE_YIELD,
    LACTIC_PER_LACTOSE, LACTOSE_MOLAR_MASS, MESOPHILIC_MOST, MESOPHILIC_RATE, MESOPHILIC_SOURNESS, MESOPHILIC_STOP_PH,
    MESOPHILIC_UPKEEP, MESOPHILIC_WARMTH, MIXED_RATE, MIXED_WARMTH, PACKET_CELLS, SOURING_PH_LEAST, SOURING_WARMEST,
    THERMOPHILIC_MOST, THERMOPHILIC_RATE, THERMOPHILIC_SOURNESS, THERMOPHILIC_STOP_PH, THERMOPHILIC_UPKEEP, THERMOPHILIC_WARMTH,
};
pub use sourable::{CONSTANTS as SOURABLE_CONSTANTS, SOURING_BUFFER_SCALE, Sourable};
pub use taste::{CORRELATIONS as TASTE_CORRELATIONS, TASTE_EDGES, Taste};
