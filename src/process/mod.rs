//! The stages in the trade's order: each a function from its design and what came in to an outcome or an error.
//!
//! [`milk()`] → [`vat()`] (warming, setting, cutting) → [`draining()`] → [`salting()`] → [`drying()`] → [`pickling()`] → [`keeping()`].

mod draining;
mod draining_course;
mod drying;
mod field;
mod fineness;
mod flow;
mod frames;
mod germs;
mod given;
mod jar;
mod keeping;
mod milk;
mod milk_error;
mod milk_pasteurising;
mod milk_souring;
mod pickling;
mod salting;
mod souring;
mod stage_error;
mod vat;

pub use crate::numeric::Fineness;
pub use draining::{DrainingError, DrainingOutcome, draining, draining_given};
pub use draining_course::CONSTANTS as COOLING_CONSTANTS;
pub use drying::{
    AirNow, AirPlan, Cheese, DiscRun, DryingError, DryingOutcome, DryingPoint, OpenFaces, Place, Problem, Surface, TRAY_AIR,
    TRAY_CONSTANTS, TRAY_COOLING, TrayFit, TrayRun, cabinet_humidity_percent, dry_cheese, dry_cheese_given, drying, drying_given,
    problem, tray_fit, tray_holds, tray_places,
};
pub use field::{DiscField, DiscFrame};
pub use flow::{StageBalance, Stream};
pub use germs::{
    AirlessHours, CONSTANTS as GERM_WATER_CONSTANTS, GermCourse, GermHold, GermLine, GermMap, GermPoint, GermsNow, GermsOutcome,
    GermsWay, MetInStage, MetMoment, StageSpan, germs, germs_given,
};
pub(crate) use given::KitchenPlaces;
pub use given::{
    CONSTANTS as PARAMETER_CONSTANTS, Distribution, Factors, Given, KnownConstants, LIKELY_SHARES, PLACE_CONSTANTS, Runs,
    SET_ONLY_PARAMETERS, UNCERTAIN_PARAMETERS, UncertainParameter, UncertainParameters, place_warmth,
};
pub use jar::jar_packing;
pub use keeping::{
    ColdKeeping, KeepingError, KeepingOutcome, SoFar, StageHours, draining_hours, drying_hours, keeping, keeping_given, vat_hours,
};
pub use milk::{CONSTANTS as MILK_CONSTANTS, MilkOutcome, animal, milk, milk_given};
pub use milk_error::MilkError;
pub use milk_pasteurising::Pasteurising;
pub use milk_souring::{CONSTANTS as MILK_ACID_CONSTANTS, MilkSouring};
pub use pickling::{
    EvenedOut, Inside, InsidePoint, LIKELY_CONSTANTS as LIKELY_SOAK_CONSTANTS, LONGEST_SOAK_H, LeachRun, PH_TARGETS, PicklePoint,
    PickleRun, PickledCheese, PicklingError, PicklingOutcome, REST_H, Rest, STRONGEST_BUFFER, SlowSoak, Soak, SoakRun, SoakState,
    Swelling, SwollenPoint, TargetHours, VinegarBath, pickle, pickle_given, pickling, pickling_given, salt_left,
};
pub use salting::{
    Face, SaltColumn, SaltPoint, SaltProfile, SaltRun, SaltStuck, SaltingError, SaltingOutcome, WaterAt, salting, salting_given,
};
pub use souring::{
    CONSTANTS as SOURING_CONSTANTS, CultureNow, OtherAcid, SourPoint, Sourness, hours_to_ph, ph_at, souring_on_the_way, turned,
};
pub use stage_error::StageError;
pub use vat::{
    Curd, HeatStep, Setting, VatError, VatOutcome, WARMING_CONSTANTS, WarmingEvent, WarmingMark, WarmingPoint, curd, setting, vat,
    vat_given,
};
