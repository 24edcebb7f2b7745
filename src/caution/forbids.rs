//! Which step of a plan each serious warning forbids: there the plan ends.

use super::caution::Caution;
use super::every::serious_warnings;
use crate::batch::Batch;

/// A step that a plan leaves out, with all that would follow from it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ForbiddenStep {
    /// Covering with oil.
    Oil,
    /// Keeping on after the few days that rules allow in the cold.
    LongInTheCold,
}

/// Every serious warning, with the first step that it forbids; none where the maker is to do a step in another way, or to know something, and the
/// plan stands.
pub const FORBIDS: [(&str, Option<ForbiddenStep>); 28] = [
    ("stage_failed", None),
    ("no_acid", None),
    ("acid_is_foreseen", None),
    ("toxin_could_form", None),
    ("warm_in_all", None),
    ("cool_for_days", None),
    ("kept_long", Some(ForbiddenStep::LongInTheCold)),
    ("warm_draining", None),
    // Whose milk may be made into cheese is for local rules; the heat step is offered by the warning itself.
    ("raw_milk", None),
    ("pasteurised_in_vat", None),
    ("ultra_heated_milk", None),
    ("warm_before_sour", None),
    ("untreated_pepper", None),
    ("not_kept_by_dryness", None),
    ("dryness_is_estimated", None),
    ("warm_drying", None),
    ("never_sour", None),
    ("may_never_sour", None),
    ("weak_vinegar", None),
    ("little_vinegar", None),
    ("centre_not_sour", None),
    ("centre_may_not_be_sour", None),
    ("warm_pickling", None),
    ("not_submerged", None),
    // A pH meter is asked first, and says whether there is oil.
    ("oil_is_untested", None),
    ("oil_before_acid", Some(ForbiddenStep::Oil)),
    // Its words ask for a small part under oil at a time; how much, and how often anew, is the maker's.
    ("long_in_oil", None),
    ("warm_keeping", None),
];

/// Returns the steps that the serious warnings of a batch forbid, each with the first warning that does.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, caution::{ForbiddenStep, forbidden_steps}, design::{Design, KeptIn}};
/// let mut design = Design::default();
/// design.keeping.kept_in = KeptIn::Oil;
/// design.pickling.pickling_h = 20.0;
/// let forbidden = forbidden_steps(&batch(&design)?);
/// assert!(forbidden.iter().any(|(step, _)| *step == ForbiddenStep::Oil));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn forbidden_steps(batch: &Batch) -> Vec<(ForbiddenStep, Caution)> {
    let forbids = |key: &str| FORBIDS.iter().find(|(of, _)| *of == key).and_then(|(_, step)| *step);
    serious_warnings(batch).into_iter().filter_map(|caution| Some((forbids(caution.key)?, caution))).collect()
}
