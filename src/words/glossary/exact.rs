//! The exact words: those of the sciences, of packets and of standards. Their explanation is also the tip of every label that has them.

use super::term::Term;

/// Every exact word, in the order of the alphabet.
pub const EXACT_WORDS: &[Term] = &[
    Term {
        term: "anhydrous",
        means: "Calcium chloride without water in its crystals. It is about a third stronger than the dihydrate of the same weight.",
        instead_of: &["water-free"],
    },
    Term {
        term: "blended sample",
        means: "A whole cheese crushed to a paste, so that the pH meter reads the average of centre and edge.",
        instead_of: &["blended cheese paste", "slurry"],
    },
    Term {
        term: "casein",
        means: "The protein of milk that rennet turns into curd. The other proteins leave with the whey.",
        instead_of: &[],
    },
    Term {
        term: "clean break",
        means: "The curd is firm enough to cut when it splits cleanly over a lifted finger or knife and clear whey fills the split.",
        instead_of: &["clean cut", "flocculation"],
    },
    Term {
        term: "dihydrate",
        means: "The usual flakes of calcium chloride. About a quarter of their weight is water in the crystals.",
        instead_of: &[],
    },
    Term {
        term: "equilibrium pH",
        means: "The pH at which cheese and vinegar settle in the end. The centre never falls below it, however long the soak.",
        instead_of: &["resting pH", "pH at rest", "comes to rest", "come to rest", "final pH"],
    },
    Term {
        term: "fat-free basis",
        means: "Moisture as a share of everything but the fat. Standards class cheeses as soft or hard by it.",
        instead_of: &["MFFB"],
    },
    Term {
        term: "Food Code",
        means: "United States model rules for food service. Its table B shows when moist food needs control of time and temperature.",
        instead_of: &[],
    },
    Term {
        term: "IMCU",
        means: "International milk-clotting unit, the international measure of the strength of rennet. The label gives the units in a millilitre or gram.",
        instead_of: &[],
    },
    Term {
        term: "likely",
        means: "The range in which the figure probably is: by a rule of thumb, or where most trial runs put it.",
        instead_of: &["confidence interval", "eight of ten draws"],
    },
    Term {
        term: "percentage point",
        means: "A change of one in a percentage: from four to five per cent is one percentage point.",
        instead_of: &[],
    },
    Term {
        term: "rule of thumb",
        means: "A range from experience, which also allows for differences between cooks and kitchens.",
        instead_of: &[],
    },
    Term {
        term: "s/m",
        means: "Second per metre: how much a coat of pepper slows the vapour that leaves the cheese.",
        instead_of: &[],
    },
    Term {
        term: "salt in moisture",
        means: "Salt as a share of the water in the cheese, in grams for each hundred. It shows better than the salt in the whole cheese which germs can grow.",
        instead_of: &["salt in the moisture", "S/M"],
    },
    Term {
        term: "serious warning",
        means: "Somebody may be hurt, or the batch will be lost. It is shown before everything else.",
        instead_of: &["stop sign", "danger sign"],
    },
    Term {
        term: "solids-not-fat",
        means: "Everything in the milk that is neither water nor fat: protein, milk sugar and minerals.",
        instead_of: &["SNF", "fat-free solids"],
    },
    Term {
        term: "standardisation",
        means: "Bringing milk to the fat and casein you want by adding cream, skimmed milk or dry milk.",
        instead_of: &["mending", "standardization"],
    },
    Term {
        term: "trial run",
        means: "The whole calculation once more with every uncertain constant drawn from its range. Many of them show how far a figure may be wrong.",
        instead_of: &["Monte Carlo", "simulation run"],
    },
    Term {
        term: "water activity",
        means: "How freely germs can use the water in the cheese; pure water has one. Salt and drying lower it.",
        instead_of: &["water activity level", "a_w"],
    },
];
