//! Which known name a mistyped one may have meant.

/// One letter in so many may be wrong; a name that is further off is no guess at all.
const LETTERS_FOR_A_SLIP: usize = 3;

/// Returns the known name that is spelled most like the given one; nothing if all are far off.
///
/// A slip is a letter too many, too few or wrong, or two that changed places; capitals do not count.
///
/// # Arguments
/// * `given`: as it was typed
/// * `known`: what there is; of two that are equally near, the first is taken
///
/// # Example
/// ```
/// use vatsketch::design::nearest;
/// assert_eq!(nearest("mlik_l", ["cream_l", "milk_l"].into_iter()), Some("milk_l"));
/// assert_eq!(nearest("teapot", ["cream_l", "milk_l"].into_iter()), None);
/// ```
#[must_use]
pub fn nearest<'a>(given: &str, known: impl Iterator<Item = &'a str>) -> Option<&'a str> {
    let typed = given.to_lowercase();
    let slips = |name: &str| strsim::osa_distance(&typed, &name.to_lowercase());
    let most = |name: &str| (typed.chars().count().max(name.chars().count()) / LETTERS_FOR_A_SLIP).max(1);
    known
        .map(|name| (slips(name), name))
        .filter(|(slips, name)| *slips <= most(name))
        .min_by_key(|(slips, _)| *slips)
        .map(|(_, name)| name)
}

/// Returns the question whether a known name was meant, for the end of a sentence; nothing where none is near.
///
/// # Example
/// ```
/// use vatsketch::design::did_you_mean;
/// assert_eq!(did_you_mean(Some("milk_l")), "; did you mean `milk_l`?");
/// assert_eq!(did_you_mean(None), "");
/// ```
#[must_use]
pub fn did_you_mean(nearest: Option<&str>) -> String {
    nearest.map_or_else(String::new, |name| format!("; did you mean `{name}`?"))
}
