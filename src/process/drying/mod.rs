//! Drying in a cabinet or in the open air.

mod air;
mod cheese;
mod curve;
mod error;
mod implicit;
mod middle;
mod place;
mod problem;
mod rates;
mod refine;
mod run;
mod salt;
mod section;
mod shape;
mod skin;
mod solver;
mod souring;
mod spread;
mod stage;
mod step;
mod trays;

pub use air::{AirNow, AirPlan, cabinet_humidity_percent};
pub use cheese::Cheese;
pub use curve::{DryingPoint, TrayRun};
pub use error::DryingError;
pub use middle::{dry_cheese, dry_cheese_given};
pub use place::Place;
pub use problem::{OpenFaces, Problem, Surface};
pub use run::problem;
pub use solver::DiscRun;
pub use stage::{DryingOutcome, drying, drying_given};
pub use trays::{CONSTANTS as TRAY_CONSTANTS, TRAY_AIR, TRAY_COOLING, TrayFit, fit as tray_fit, tray_holds, tray_places};
