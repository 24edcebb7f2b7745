//! What the window has calculated in the background: what matters to the figure of the open card, and the spread of the open design.

use crate::analysis::Goal;
use crate::caution::Caution;
use crate::curve::Spread;
use crate::design::Design;
use crate::session::{ExamplesJob, FoundKitchen, FoundLifts, FoundWays, KitchenJob, LiftJob, SensitivityJob, SpreadJob, WaysJob};
use crate::ui::figure_card::known::{Card, Effects};
use crate::ui::results::lift::FAILED;
use std::collections::BTreeSet;
use std::sync::Arc;

/// What is known about the open card, and the jobs.
#[derive(Default)]
pub(super) struct BackgroundWork {
    /// Design and figure that the card was asked for, and what is known of it.
    pub(super) card: Option<(Design, &'static str, Option<Card>)>,
    pub(super) sensitivity: Option<SensitivityJob>,
    pub(super) spread: Option<SpreadJob>,
    /// The design whose spread was ordered last.
    pub(super) spread_of: Option<Design>,
    pub(super) lifts: Option<LiftJob>,
    /// What the examples come to, once the welcome was shown.
    pub(super) examples: Option<ExamplesJob>,
    /// The design, the caution and the pins for which lifts were ordered last.
    pub(super) lifts_of: Option<(Design, Caution, BTreeSet<&'static str>)>,
    pub(super) ways: Option<WaysJob>,
    /// The design, the target and the choices for which ways were ordered last.
    pub(super) ways_of: Option<(Design, Goal, Vec<&'static str>)>,
    pub(super) kitchen: Option<KitchenJob>,
    /// A spread that was handed over ready-made: for tests and pictures.
    given: Option<Arc<Spread>>,
    /// Whether what is shown is judged by the draws of its spread.
    pub(super) judged: bool,
    /// Whether spreads are calculated at all.
    pub(super) spreads: bool,
}

impl BackgroundWork {
    /// Returns the work of a window that has the spread of every design calculated.
    pub(super) fn with_spread() -> Self {
        Self { spreads: true, ..Self::default() }
    }

    pub(super) fn is_busy(&self) -> bool {
        self.sensitivity.as_ref().is_some_and(SensitivityJob::is_running)
            || self.spread.as_ref().is_some_and(SpreadJob::is_running)
            || self.lifts.as_ref().is_some_and(LiftJob::is_running)
            || self.ways.as_ref().is_some_and(WaysJob::is_running)
            || self.kitchen.as_ref().is_some_and(KitchenJob::is_running)
            || self.examples.as_ref().is_some_and(ExamplesJob::is_running)
    }

    /// Returns what lifts the caution that was asked about last, if that is known.
    pub(super) fn found_lifts(&self) -> Option<Arc<FoundLifts>> {
        let (design, caution, _) = self.lifts_of.as_ref()?;
        let job = self.lifts.as_ref().filter(|job| !job.is_running())?;
        job.answer().filter(|found| found.design == *design && found.lifted.warning == *caution)
    }

    /// Returns the ways to a target, if they are known.
    pub(super) fn found_ways(&self) -> Option<Arc<FoundWays>> {
        let (design, goal, _) = self.ways_of.as_ref()?;
        let job = self.ways.as_ref().filter(|job| !job.is_running())?;
        job.answer().filter(|found| found.design == *design && found.goal == *goal)
    }

    /// Returns what batches were found to tell of their kitchen, if that was asked for.
    pub(super) fn found_kitchen(&self) -> Option<Arc<FoundKitchen>> {
        self.kitchen.as_ref().and_then(KitchenJob::answer)
    }

    /// Returns whether the ways could not be looked for.
    pub(super) fn ways_failed(&self) -> bool {
        self.ways.as_ref().is_some_and(WaysJob::has_failed)
    }

    /// Returns whether the lifts could not be looked for.
    pub(super) fn lifts_failed(&self) -> bool {
        self.lifts.as_ref().is_some_and(LiftJob::has_failed)
    }

    /// Returns what is known about the figure of the open card.
    pub(super) fn card(&self) -> Option<&Card> {
        self.card.as_ref().and_then(|(.., card)| card.as_ref())
    }

    /// Returns whether the spread could not be calculated.
    pub(super) fn spread_failed(&self) -> bool {
        self.spread.as_ref().is_some_and(SpreadJob::has_failed)
    }

    /// Returns what matters to it, once that is calculated; until the next answer is there, what mattered before the last change.
    pub(super) fn effects(&self) -> Option<Effects> {
        let (design, figure, _) = self.card.as_ref()?;
        let job = self.sensitivity.as_ref()?;
        if job.has_failed() {
            return Some(Effects { of: Err(FAILED.to_owned()), old: false });
        }
        let answer = job.answer()?;
        (answer.figure == *figure).then(|| Effects { of: answer.effects.clone(), old: !answer.design.same_cheese(design) })
    }

    /// Takes a spread that was calculated elsewhere.
    pub(super) fn give(&mut self, spread: Arc<Spread>) {
        self.given = Some(spread);
    }

    /// Returns the spread of a design, if it is known.
    pub(super) fn spread(&self, design: &Design) -> Option<Arc<Spread>> {
        let answer = self.spread.as_ref().and_then(SpreadJob::answer).or_else(|| self.given.clone())?;
        answer.design.same_cheese(design).then_some(answer)
    }
}
