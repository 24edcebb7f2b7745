//! Keys that figures had before. A script may go on using them: what it asks by an old key is found, what it reads by one is there.

/// An old key, and the key that took its place.
const REPLACED: [(&str, &str); 2] = [("balance_ph", "equilibrium_ph"), ("ready_h", "finished_h")];

/// Returns the present key of a figure, whichever of its keys it is asked by; a key that is no figure's comes back as it is.
///
/// # Example
/// ```
/// use vatsketch::figure::current_key;
/// assert_eq!(current_key("balance_ph"), "equilibrium_ph");
/// assert_eq!(current_key("equilibrium_ph"), "equilibrium_ph");
/// ```
#[must_use]
pub fn current_key(key: &str) -> &str {
    REPLACED.iter().find(|(old, _)| *old == key).map_or(key, |(_, current)| current)
}

/// Returns every key under which a figure is written for other programs: its present one first, then those that it had before.
///
/// # Example
/// ```
/// use vatsketch::figure::every_key;
/// assert_eq!(every_key("equilibrium_ph").collect::<Vec<_>>(), ["equilibrium_ph", "balance_ph"]);
/// assert_eq!(every_key("cream_g").collect::<Vec<_>>(), ["cream_g"]);
/// ```
pub fn every_key(key: &'static str) -> impl Iterator<Item = &'static str> {
    std::iter::once(key).chain(REPLACED.iter().filter(move |(_, current)| *current == key).map(|(old, _)| *old))
}
