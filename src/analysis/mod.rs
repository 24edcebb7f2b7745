//! What several batches say: two side by side, the whole design scaled, one choice that moves until a figure is as wanted, what a figure
//! rests on and is sensitive to, and how far figures may be wrong.

mod against;
mod changed;
mod compare;
mod compare_cautions;
mod compare_milk;
mod constants;
mod counterpart;
mod lift;
mod moved;
mod scale;
mod search;
mod sensitivity;
mod slow_soak;
mod solve;
mod spread;
mod standardisation;
mod summary;
mod ways;
mod why;

pub use against::{Against, against, differs};
pub use changed::{Changed, ChangedEntry, Recorded, changed};
pub use compare::{Difference, DifferingChoice, Likeness, compare, differing_choices};
pub use compare_cautions::{ComparedCaution, Whose, compare_cautions};
pub use compare_milk::{MilkComparison, compare_milk};
pub use constants::{constant_lists, constants, correlation_lists};
pub use counterpart::{Alike, alike_from, from_milk, other_milk, other_milks, same_vat_from};
pub use lift::{Change, Cost, Lift, Lifted, LiftedInTurn, WhyNot, cost, lift_in_turn, lifts};
pub use moved::{FigureError, numeric_choices};
pub use scale::{
    Kept, POT_FILLED, SCALE_CONSTANTS, ScaleError, ScaleGoal, ScaleTo, Scaled, ScaledChoice, Scaling, amount_now, scale, scaling_of,
};
pub use search::{Found, search};
pub use sensitivity::{Cause, Effect, sensitivity};
pub use slow_soak::{DrawnSoak, LEAST_DRAWS, slow_soak};
pub use solve::{Answer, Goal, SolveError, Solved, offered, offered_pairs, solve};
pub use spread::{DRAWS, DrawnFigures, LikelyFigure, drawn_batch, draws, likely_figures};
pub use standardisation::{MilkStandardisation, standardisation};
pub use summary::{Summary, summary};
pub use ways::{Way, ways};
pub use why::{Link, Why, constants_of, inputs_of, link, links, why};
