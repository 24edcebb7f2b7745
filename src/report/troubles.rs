//! What may go wrong at the vat and after it: what it may be, what to do, and when to discard untasted.

use crate::source::SourceId;

/// One trouble.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Trouble {
    /// What the maker sees.
    pub sign: &'static str,
    /// What it may come from.
    pub may_be: &'static str,
    /// What to do now.
    pub what_to_do: &'static str,
    /// When to discard it untasted.
    pub discard: &'static str,
    /// Where this comes from.
    pub source: SourceId,
}

/// The troubles, in the order of the work.
pub const TROUBLES: [Trouble; 8] = [
    Trouble {
        sign: "The milk does not set",
        may_be: "Rennet old, too little, or mixed too early; water with chlorine; milk too cool; ultra-heated milk.",
        what_to_do: "Check the temperature. Keep the milk covered and wait as long again. Then stir in a fresh dose once, newly diluted, and leave it alone.",
        discard: "Still liquid after that: discard it.",
        source: SourceId::CommonPractice,
    },
    Trouble {
        sign: "The curd is soft and breaks",
        may_be: "Homogenised or strongly heated milk, little calcium, cut too soon, or rennet added too cool.",
        what_to_do: "Wait ten minutes more, cut larger, and ladle gently. Next time: calcium as the plan says, or other milk.",
        discard: "Not for this alone.",
        source: SourceId::GuelphNotes,
    },
    Trouble {
        sign: "The curd will not drain",
        may_be: "A cold room, a mould that is blocked, curd that was cut very large, or souring that came late.",
        what_to_do: "Rinse the moulds and turn once more. Do not press. Where it is soured, drain at the plan's temperature until the drip stops.",
        discard: "Wet and warm past the plan's hours without an acid reading: discard it.",
        source: SourceId::CommonPractice,
    },
    Trouble {
        sign: "The rind is sticky",
        may_be: "Damp or still air, cheeses that touch, or yeasts.",
        what_to_do: "More and drier air, cheeses apart, turned on clean trays. Weigh: what loses no weight does not dry.",
        discard: "Slime, or a smell that is not of milk, acid or pepper.",
        source: SourceId::CommonPractice,
    },
    Trouble {
        sign: "Coloured or hairy spots",
        may_be: "Moulds or yeasts from the air, the trays or the pepper.",
        what_to_do: "Take the cheese away from the others at once, and clean what it touched.",
        discard: "Always: in a soft, moist cheese what grows goes deeper than what shows. Do not cut it off.",
        source: SourceId::CommonPractice,
    },
    Trouble {
        sign: "Holes, gas or swelling",
        may_be: "Coliform germs or yeasts in the curd; in a jar, also germs that grow without air.",
        what_to_do: "Do not taste. Do not open a bulging jar near your face. Keep it away from other food.",
        discard: "Always, untasted. Toxin may be there without any sign, and with these signs more likely.",
        source: SourceId::PickledEggs,
    },
    Trouble {
        sign: "The pH stops falling",
        may_be: "A culture that is old or dead, milk too cool or too hot for it, or residues in the milk that stop it.",
        what_to_do: "Measure again after an hour, meter calibrated. Keep it at the temperature of the culture only as long as it falls.",
        discard: "Stopped above the plan's limit: no warm drying. Treat it as cheese without acid, cold at once, or discard it.",
        source: SourceId::Ourselves,
    },
    Trouble {
        sign: "The vinegar is cloudy",
        may_be: "Pepper and a little whey; or something grows.",
        what_to_do: "Look for gas, film, slime and smell. Measure the pH of the vinegar and at the centre of a cheese.",
        discard: "With gas, film, slime or odd smell, untasted; also where the centre is not sour by the day of the plan and was not kept cold.",
        source: SourceId::PickledEggs,
    },
];
