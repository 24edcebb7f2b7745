//! How far the figures may be wrong: the uncertain constants drawn from their ranges, all at once.

use crate::batch::{Batch, batch_given};
use crate::design::{Design, DesignError};
use crate::figure::{Figure, Reading, figures};
use crate::numeric::{latin_hypercube, quantile};
use crate::process::{Given, LIKELY_SHARES, Runs, UNCERTAIN_PARAMETERS, UncertainParameters};
use crate::units::Units;

/// Draws that a spread is made of, where nothing else is asked for.
pub const DRAWS: usize = 200;
/// Where the draws begin; always the same, so that a design has one spread.
const SEED: u64 = 20_260;

/// Returns so many draws of what may be believed of the uncertain constants, each within the range of its record
/// ([`crate::process::UncertainParameter::at_share`]) and none bound to another.
///
/// # Example
/// ```
/// use vatsketch::{analysis::draws, design::Design};
/// let draws = draws(&Design::default(), 20);
/// assert_eq!(draws.iter().filter(|parameters| parameters.mould_time < 1.0).count(), 10);
/// ```
#[must_use]
pub fn draws(design: &Design, count: usize) -> Vec<UncertainParameters> {
    let believed = |shares: Vec<f64>| {
        let pairs = UNCERTAIN_PARAMETERS.iter().zip(shares);
        pairs.fold(UncertainParameters::default(), |parameters, (parameter, share)| {
            parameter.set(parameters, parameter.at_share(design, share))
        })
    };
    latin_hypercube(count, UNCERTAIN_PARAMETERS.len(), SEED).into_iter().map(believed).collect()
}

/// Returns the batch of one draw: the runs that are shown alone.
///
/// # Errors
/// As for [`crate::batch::batch()`].
pub fn drawn_batch(design: &Design, parameters: &UncertainParameters) -> Result<Batch, DesignError> {
    batch_given(design, &Given { parameters: *parameters, runs: Runs::MiddleOnly, ..Given::default() })
}

/// The figures of one draw: of each its key and its number, or none where it says in words that it never comes so far.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DrawnFigures(Vec<(&'static str, Option<f64>)>);

impl DrawnFigures {
    /// Returns what is kept of a drawn batch.
    #[must_use]
    pub fn of(batch: &Batch) -> Self {
        let kept = |figure: Figure| match figure.reading {
            Reading::Number(number) => Some((figure.key, Some(number))),
            Reading::Words(_) => Some((figure.key, None)),
            Reading::Switch(_) => None,
        };
        Self(figures(batch).into_iter().filter_map(kept).collect())
    }

    /// Returns a figure: none if the draw has no such figure, infinite if it never comes so far.
    fn number(&self, key: &str) -> Option<f64> {
        let (_, number) = self.0.iter().find(|(own, _)| *own == key)?;
        Some(number.unwrap_or(f64::INFINITY))
    }
}

/// Between what a figure likely lies.
#[derive(Clone, Debug, PartialEq)]
pub struct LikelyFigure {
    /// The figure as it is shown.
    pub figure: Figure,
    /// Below this lies one draw in ten; none if not even that many come so far.
    pub least: Option<f64>,
    /// The middle of the draws; none if half of them never come so far.
    pub middle: Option<f64>,
    /// Above this lies one draw in ten; none if so many never come so far.
    pub most: Option<f64>,
    /// Share of the draws that never come so far, 0 to 1.
    pub never: f64,
    /// Share of the draws in which its stage could not be calculated, 0 to 1; they count for none of the others.
    pub failed: f64,
}

impl LikelyFigure {
    /// Returns a figure with what the draws make of it; none if it is a number in none of them.
    fn of(figure: &Figure, draws: &[DrawnFigures]) -> Option<Self> {
        let mut numbers: Vec<f64> = draws.iter().filter_map(|draw| draw.number(figure.key)).collect();
        numbers.sort_by(f64::total_cmp);
        let reached = numbers.iter().filter(|number| number.is_finite()).count();
        if reached == 0 {
            return None;
        }
        let at = |share: f64| quantile(&numbers, share).filter(|number| number.is_finite());
        let share = |count: usize, of: usize| count as f64 / of as f64;
        Some(Self {
            figure: figure.clone(),
            least: at(LIKELY_SHARES.0),
            middle: at(0.5),
            most: at(LIKELY_SHARES.1),
            never: share(numbers.len() - reached, numbers.len()),
            failed: share(draws.len() - numbers.len(), draws.len()),
        })
    }

    /// Returns whether the draws move it by as much as shows.
    #[must_use]
    pub fn moves(&self) -> bool {
        let text = |number| self.figure.number_text(number, Units::METRIC);
        self.never > 0.0 || self.least.map(text) != self.most.map(text)
    }

    /// Returns its likely range in words, "22–24 °C"; none where an end of it is never reached.
    ///
    /// # Example
    /// ```
    /// use vatsketch::{design::Design, session::{spread, Work}, units::Units};
    /// let spread = spread(&Design::default(), &Work { draws: 10, threads: 1, goes_on: &|| true })?.unwrap();
    /// assert!(spread.figure("drained_cheese_g").unwrap().range_words(Units::METRIC).unwrap().ends_with(" g"));
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn range_words(&self, units: Units) -> Option<String> {
        let (least, most) = self.least.zip(self.most)?;
        let text = |number| self.figure.number_text(number, units);
        if !self.moves() {
            return Some(text(most));
        }
        let other = units.range(self.figure.unit, (least, most), self.figure.decimals);
        Some(other.unwrap_or_else(|| format!("{:.*}–{}", self.figure.decimals, least, text(most))))
    }

    /// Returns it in words: "8 of 10 trial runs: 112–130 g", "8 of 10 trial runs: 150 h to never (30 of 100 trial runs never reach it)".
    ///
    /// # Example
    /// ```
    /// use vatsketch::{batch::batch, analysis::{draws, drawn_batch, likely_figures, DrawnFigures}, design::Design, units::Units};
    /// let design = Design::default();
    /// let kept = draws(&design, 8).into_iter().map(|parameters| Ok(DrawnFigures::of(&drawn_batch(&design, &parameters)?)));
    /// let kept = kept.collect::<Result<Vec<_>, vatsketch::design::DesignError>>()?;
    /// let likely = likely_figures(&batch(&design)?, &kept);
    /// let cheese = likely.iter().find(|likely| likely.figure.key == "dried_cheese_g").unwrap();
    /// let said = cheese.in_words(Units::default());
    /// assert!(said.starts_with("8 of 10 trial runs: ") && said.ends_with(" g"));
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn in_words(&self, units: Units) -> String {
        let text = |number| self.figure.number_text(number, units);
        let never = || format!(" ({} of 100 trial runs never reach it)", in_hundred(self.never));
        let said = match (self.least, self.range_words(units)) {
            (_, Some(range)) => format!("8 of 10 trial runs: {range}"),
            (Some(least), None) => format!("8 of 10 trial runs: {} to never{}", text(least), never()),
            (None, _) => format!("8 of 10 trial runs: never{}", never()),
        };
        if self.failed > 0.0 {
            return format!("{said}; in {} of 100 trial runs it cannot be calculated", in_hundred(self.failed));
        }
        said
    }
}

/// Returns a share in a hundred; one that is there is never said to be none, nor one that is not all to be all.
fn in_hundred(share: f64) -> f64 {
    if share >= 1.0 { 100.0 } else { (100.0 * share).round().clamp(1.0, 99.0) }
}

/// Returns the likely range of every figure of a batch that is a number in one draw at least, in the order of the figures.
///
/// # Arguments
/// * `shown`: the batch that is shown; `draws`: what was kept of the draws of the same design
#[must_use]
pub fn likely_figures(shown: &Batch, draws: &[DrawnFigures]) -> Vec<LikelyFigure> {
    figures(shown).iter().filter_map(|figure| LikelyFigure::of(figure, draws)).collect()
}
