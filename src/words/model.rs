//! What every output says.

/// What a plan is and is not: in every output that has figures or times.
pub const FROM_A_MODEL: &str = "A plan from a model, not a measurement. Local food rules and licensed practice come first.";

/// What potential growth is and is not: beside every figure of it.
pub const POTENTIAL_GROWTH: &str = "Local food rules and licensed practice come first. Potential growth only compares designs; none foreseen is no proof: germs may still grow. Left out: later germs, numbers, toxin already there, strains, slow starts (see “newly come”).";

/// What the table of germs is called on paper.
pub const GERMS_BY_STAGE: &str = "How far germs could grow, in tenfold steps (two: a hundred times)";

/// Who must not eat it; said wherever Listeria or raw milk is the subject.
pub const MUST_NOT_EAT: &str = "People who are pregnant, old, very young or have a weakened immune system must not eat it.";

/// Over the cautions that no choice lifts.
pub const TRUE_OF_ALL: &str = "True of every cheese like this";
