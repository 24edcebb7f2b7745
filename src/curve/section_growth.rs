//! How fast a germ could grow at each place of a cut, and what holds it back there, in words too.

use super::mirror::whole;
use crate::design::Stage;
use crate::process::{DiscField, GermLine, GermsNow, GermsOutcome};

/// Hours from which days are said.
const DAYS_FROM_H: f64 = 72.0;
/// Days from which no number is said any more.
const MOST_DAYS: f64 = 999.0;

/// How fast a germ could grow in a cut.
#[derive(Clone, Debug, PartialEq)]
pub struct SectionGrowth {
    /// Whose growth.
    pub line: GermLine,
    /// Each place, in the order of [`crate::curve::Section::values`], with the potential growth so far, log₁₀.
    pub places: Vec<(f64, GermsNow)>,
    /// At the centre.
    pub centre: (f64, GermsNow),
    /// At the rim, half-way up.
    pub rim: (f64, GermsNow),
}

/// Returns the growth at some hours after a stage began.
pub(super) fn growth(
    germs: &GermsOutcome,
    line: GermLine,
    (stage, after_h): (Stage, f64),
    (field, half): (&DiscField, &[f64]),
) -> Option<SectionGrowth> {
    let met = germs.met_in(stage)?;
    let half: Vec<(f64, GermsNow)> = half
        .iter()
        .enumerate()
        .map(|(place, log10)| Some((*log10, germs.now(line, stage, after_h, place)?)))
        .collect::<Option<_>>()?;
    let (centre, rim) = (half.get(met.centre).copied()?, half.get(met.rim).copied()?);
    Some(SectionGrowth { line, places: whole(field, &half), centre, rim })
}

impl SectionGrowth {
    /// Returns what is so at the centre and at the rim, a sentence each; one where both are alike.
    #[must_use]
    pub fn lines(&self) -> Vec<String> {
        let [centre, rim] = [self.centre, self.rim].map(|(log10, now)| growth_words(log10, &now));
        if centre == rim {
            vec![format!("Centre and rim: {centre}.")]
        } else {
            vec![format!("Centre: {centre}."), format!("Rim: {rim}.")]
        }
    }
}

/// Returns in words how a germ could grow at a place: how far so far, how fast now, and what holds it back most.
///
/// # Example
/// ```
/// use vatsketch::{curve::growth_words, law::growth::HeldBackBy, process::{GermHold, GermsNow}};
/// let now = GermsNow { rate_per_h: 1.151_293, held_back_by: GermHold::Law(HeldBackBy::Acidity) };
/// assert_eq!(growth_words(3.04, &now), "3.0 tenfold steps so far; could grow tenfold in 2.0 h; held back most by pH");
/// ```
#[must_use]
pub fn growth_words(log10: f64, now: &GermsNow) -> String {
    let speed = match now.tenfold_h() {
        None => "no growth foreseen by this model, not a proof".to_owned(),
        Some(hours) if hours < DAYS_FROM_H => format!("could grow tenfold in {hours:.1} h"),
        Some(hours) if hours < 24.0 * MOST_DAYS => format!("could grow tenfold in {:.0} days", hours / 24.0),
        Some(_) => format!("could grow tenfold in more than {MOST_DAYS:.0} days"),
    };
    format!("{log10:.1} tenfold steps so far; {speed}; held back most by {}", now.held_back_by.words())
}

/// Returns the germ that could grow furthest, but those that want no air.
pub(super) fn worst(germs: &GermsOutcome) -> Option<GermLine> {
    let counted =
        germs.courses.iter().filter(|course| !course.line.wants_no_air() && course.line != GermLine::StaphylococcusWithoutLactic);
    counted.max_by(|one, other| one.dose().total_cmp(&other.dose())).map(|course| course.line)
}
