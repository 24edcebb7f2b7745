//! How a small amount is measured where neither spoons nor a scale of whole grams come near enough.

use crate::law::kitchen::{SCALE_LEAST, SYRINGE_LEAST, drop_words, stock};
use crate::report::Target;

/// What a meter needs before every reading (common practice, no source).
pub(super) const CALIBRATE: &str = "Calibrate the meter at pH\u{a0}4 and pH\u{a0}7 just before.";
/// Sizes of syringes that a pharmacy sells, mL (common practice, no source).
const SYRINGES_ML: [f64; 3] = [1.0, 5.0, 10.0];
/// What a scale of whole grams weighs for a solution, g, and what that is made up to, mL.
const DRY: (f64, [f64; 2]) = (10.0, [100.0, 1000.0]);
/// What a syringe measures for a solution of a liquid, mL, and what that is made up to, mL.
const LIQUID: (f64, [f64; 2]) = (1.0, [50.0, 200.0]);

/// Returns how a dry amount is weighed, as a sentence or two; nothing where spoons or a scale of whole grams will do.
pub(super) fn dry(target: &Target) -> String {
    let grams = target.amount.value;
    if target.kitchen.is_some() || grams <= 0.0 || grams >= SCALE_LEAST.value {
        return String::new();
    }
    let (holds, sizes) = DRY;
    match stock(grams, holds, &sizes) {
        Some(stock) => format!(
            "Scale of whole grams: dissolve {holds}\u{a0}g to make {}\u{a0}mL, stir in only {}\u{a0}mL.",
            stock.made_up_to_ml, stock.used_ml
        ),
        None => "It takes a scale that shows hundredths of a gram.".to_owned(),
    }
}

/// Returns how a liquid is measured, as a sentence or two; nothing where spoons or a jug will do.
///
/// `drops`: how many drops of its bottle, and how many of them are a millilitre, where they were counted and no spoon will do
pub(super) fn liquid(what: &str, target: &Target, drops: Option<(u32, f64)>) -> String {
    if let Some((drops, drops_in_ml)) = drops {
        let count = drop_words(drops);
        return format!("Count {count} of {what} (by your count {drops_in_ml} of this bottle are one millilitre).");
    }
    let ml = target.amount.value;
    let Some(size) = SYRINGES_ML.into_iter().find(|size| ml <= *size).filter(|_| target.kitchen.is_none() && ml > 0.0) else {
        return String::new();
    };
    if ml >= SYRINGE_LEAST.value {
        return format!("Measure {what} with a small syringe (for {size}\u{a0}mL).");
    }
    let (holds, sizes) = LIQUID;
    stock(ml, holds, &sizes).map_or_else(String::new, |stock| {
        format!(
            "With a syringe, measure {holds}\u{a0}mL of {what} and add cool water to make {}\u{a0}mL. Use {}\u{a0}mL of that straight away, and pour the rest away.",
            stock.made_up_to_ml, stock.used_ml
        )
    })
}
