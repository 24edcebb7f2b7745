//! Finds choices and figures by the beginnings of words.

use crate::design::{Design, Field, fields};
use crate::figure::Figure;

/// What was found.
#[derive(Debug, Default)]
pub struct Found<'a> {
    /// Choices that have an effect in the design.
    pub choices: Vec<&'static Field>,
    /// Figures.
    pub figures: Vec<&'a Figure>,
}

/// Returns the choices and figures of which every word of a question begins a word: of the label or the stage, or else of the help or the law. What
/// the label says comes first. An empty question finds nothing.
///
/// # Example
/// ```
/// use vatsketch::{analysis::search, batch::batch, design::Design, figure::figures};
/// let design = Design::default();
/// let figures = figures(&batch(&design)?);
/// let found = search(&design, &figures, "renn");
/// assert!(found.choices.iter().any(|field| field.label.contains("Rennet")));
/// assert!(found.figures.iter().any(|figure| figure.key == "rennet_ml"));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn search<'a>(design: &Design, figures: &'a [Figure], question: &str) -> Found<'a> {
    let asked: Vec<String> = words(question).collect();
    if asked.is_empty() {
        return Found::default();
    }
    let mut choices: Vec<(u8, &'static Field)> = fields()
        .filter(|field| (field.used)(design))
        .filter_map(|field| Some((rank(&asked, [field.label, field.stage.title(), field.help])?, field)))
        .collect();
    choices.sort_by_key(|(rank, _)| *rank);
    let mut found: Vec<(u8, &Figure)> = figures
        .iter()
        .filter_map(|figure| Some((rank(&asked, [figure.label, figure.stage.title(), figure.law])?, figure)))
        .collect();
    found.sort_by_key(|(rank, _)| *rank);
    Found {
        choices: choices.into_iter().map(|(_, field)| field).collect(),
        figures: found.into_iter().map(|(_, figure)| figure).collect(),
    }
}

fn words(text: &str) -> impl Iterator<Item = String> {
    text.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty()).map(str::to_lowercase)
}

/// Returns how many of the texts, from the first on, it takes to find every word; none where they do not have all.
fn rank(asked: &[String], texts: [&str; 3]) -> Option<u8> {
    let has = |texts: &[&str]| {
        let there: Vec<String> = texts.iter().flat_map(|text| words(text)).collect();
        asked.iter().all(|word| there.iter().any(|other| other.starts_with(word.as_str())))
    };
    (1..=3_u8).find(|many| texts.get(..usize::from(*many)).is_some_and(has))
}
