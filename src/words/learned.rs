//! What records tell of a kitchen, in words.

use crate::kitchen::LearnedKitchen;
use crate::record::FITS_BADLY;

/// What is said where every constant is as uncertain as before.
pub const NOTHING_TOLD: &str = "These batches show nothing new about your kitchen yet. In your next batch, write down, each with its time: the temperature of the milk as it warms, the clean break, pH, and the weight of the marked cheese on several days.";

/// Returns how near the calculation came to what was measured, before and with what was learned.
#[must_use]
pub fn nearness_words(kitchen: &LearnedKitchen) -> String {
    let LearnedKitchen { measurements, before, after, .. } = kitchen;
    let used = if *measurements == 1 { "One measurement used.".to_owned() } else { format!("{measurements} measurements used.") };
    let fits = format!(
        "{used} The calculation was off by {before:.1} times what kitchen readings are off by themselves, and is off by {after:.1} times now."
    );
    if *after > FITS_BADLY.value {
        return format!("{fits} That is still a lot: check the times and weights that you wrote down.");
    }
    format!("{fits} The next batch may still differ.")
}

/// Returns what the records do not tell; none where they tell all that they touch.
#[must_use]
pub fn untold_words(kitchen: &LearnedKitchen) -> Option<String> {
    let names: Vec<&str> =
        kitchen.learned.iter().filter(|learned| !learned.is_told()).map(|learned| learned.unknown.words()).collect();
    (!names.is_empty())
        .then(|| format!("These batches do not show the following, so it is taken as in any kitchen: {}.", names.join("; ")))
}
