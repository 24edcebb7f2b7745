//! What is new in the program, as a maker would tell another: read from `resources/changes.md`.

/// The changes as they are written.
const CHANGES: &str = include_str!("../../resources/changes.md");

/// What changed at one time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// The version or the day.
    pub heading: String,
    /// What is new, each a sentence or two.
    pub items: Vec<String>,
}

/// Returns what is new, the newest first.
///
/// # Example
/// ```
/// assert!(vatsketch::words::changes().iter().all(|change| !change.items.is_empty()));
/// ```
#[must_use]
pub fn changes() -> Vec<Change> {
    changes_in(CHANGES)
}

/// Returns the changes that a text tells: a line that begins with `## ` is a heading, one that begins with `- ` an item, and one that is set in by
/// two spaces goes on with the item before it. Other lines are for whoever writes them.
///
/// # Example
/// ```
/// let changes = vatsketch::words::changes_in("## May\n\n- A longer\n  item.\n- Another.\n");
/// assert_eq!((changes[0].heading.as_str(), &changes[0].items[..]), ("May", &["A longer item.".to_owned(), "Another.".to_owned()][..]));
/// ```
#[must_use]
pub fn changes_in(text: &str) -> Vec<Change> {
    let mut all: Vec<Change> = Vec::new();
    for line in text.lines() {
        if let Some(heading) = line.strip_prefix("## ") {
            all.push(Change { heading: heading.trim().to_owned(), items: Vec::new() });
        } else if let (Some(item), Some(change)) = (line.strip_prefix("- "), all.last_mut()) {
            change.items.push(item.trim().to_owned());
        } else if let (Some(more), Some(item)) =
            (line.strip_prefix("  "), all.last_mut().and_then(|change| change.items.last_mut()))
        {
            item.push(' ');
            item.push_str(more.trim());
        }
    }
    all
}
