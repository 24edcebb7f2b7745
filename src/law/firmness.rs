//! Firmness classes of cheese.

/// A class with the moisture on a fat-free basis that it covers; the classes overlap, as the standard has them.
const CLASSES: [(&str, f64, f64); 5] =
    [("extra hard", 0.0, 51.0), ("hard", 49.0, 56.0), ("semi-hard", 54.0, 63.0), ("semi-soft", 61.0, 69.0), ("soft", 67.0, 100.0)];

/// Returns the firmness classes of a cheese; two where they overlap.
///
/// # Arguments
/// * `fat_free_moisture_percent`: water as per cent of everything but fat, 0 to 100
///
/// # Source
/// [`crate::source::SourceId::Codex283`], designation by firmness. The standard has one class from 54 to 69 %; its split into semi-hard and
/// semi-soft is second-hand.
///
/// # Example
/// ```
/// use vatsketch::law::firmness::classes;
/// assert_eq!(classes(50.0), ["extra hard", "hard"]);
/// assert_eq!(classes(74.0), ["soft"]);
/// ```
#[must_use]
pub fn classes(fat_free_moisture_percent: f64) -> Vec<&'static str> {
    let m = fat_free_moisture_percent;
    let within = |&&(name, least, most): &&(&str, f64, f64)| match name {
        "extra hard" => m < most,
        "soft" => m > least,
        _ => least <= m && m <= most,
    };
    CLASSES.iter().filter(within).map(|(name, ..)| *name).collect()
}
