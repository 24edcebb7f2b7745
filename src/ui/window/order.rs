//! What the window orders from the background, once for each change.

use crate::caution::Caution;
use crate::curve::Spread;
use crate::session::{ExamplesJob, LiftJob, SensitivityJob, SpreadJob, WaysJob};
use crate::ui::figure_card::known::Card;
use crate::ui::state::pages::HelpCard;
use crate::ui::window::shell::Window;
use std::sync::Arc;

/// Ways to a target that are compared at most.
const MOST_WAYS: usize = 8;

impl Window {
    /// Shows a spread that was calculated elsewhere, as long as the design stays what it belongs to.
    pub fn show_spread(&mut self, spread: Arc<Spread>) {
        self.background.give(spread);
    }

    /// Has the sensitivity of figures found by this job: for tests of what is said when it breaks down.
    pub fn find_sensitivity_with(&mut self, job: SensitivityJob) {
        self.background.sensitivity = Some(job);
    }

    /// Orders what is out of date; before each drawing.
    pub(super) fn order_work(&mut self, ctx: &egui::Context) {
        self.order_card(ctx);
        self.order_spread(ctx);
        self.judge_by_draws();
        self.order_lifts(ctx);
        self.order_examples(ctx);
        self.order_ways(ctx);
    }

    /// Orders the ways to the target that was asked for, by each choice that makers move for it and that is not pinned.
    fn order_ways(&mut self, ctx: &egui::Context) {
        let Some(goal) = self.view.card.as_ref().and_then(|card| card.goal.clone()) else {
            self.background.ways_of = None;
            return;
        };
        let Some(card) = self.background.card() else { return };
        let free = card.ways.iter().filter(|way| !way.pinned);
        let usual = free.clone().any(|way| way.usual);
        let choices: Vec<_> = free.filter(|way| way.usual == usual).take(MOST_WAYS).map(|way| way.field).collect();
        let keys: Vec<&'static str> = choices.iter().map(|choice| choice.key).collect();
        let wanted = (self.session.design().clone(), goal.clone(), keys);
        if self.background.ways_of.as_ref() == Some(&wanted) || self.session.is_dragging() {
            return;
        }
        let wake = ctx.clone();
        let job = self.background.ways.get_or_insert_with(|| WaysJob::new(Box::new(move || wake.request_repaint())));
        job.order(self.session.batch(), &goal, &choices);
        self.background.ways_of = Some(wanted);
    }

    /// Orders what would lift the caution that was asked about; after a change of the design nobody has asked.
    fn order_lifts(&mut self, ctx: &egui::Context) {
        let gone = |caution: &Caution| !self.shown.cautions.contains(caution);
        if self.view.lifting.as_ref().is_some_and(gone) {
            self.view.lifting = None;
        }
        let Some(caution) = &self.view.lifting else {
            self.background.lifts_of = None;
            return;
        };
        let wanted = (self.session.design().clone(), caution.clone(), self.session.pins().clone());
        if self.background.lifts_of.as_ref() == Some(&wanted) {
            return;
        }
        let wake = ctx.clone();
        let job = self.background.lifts.get_or_insert_with(|| LiftJob::new(Box::new(move || wake.request_repaint())));
        job.order(self.session.batch(), caution, self.session.pins());
        self.background.lifts_of = Some(wanted);
    }

    /// Has the examples calculated once, when they are first to be chosen from.
    fn order_examples(&mut self, ctx: &egui::Context) {
        if self.view.help == Some(HelpCard::Welcome) && self.background.examples.is_none() {
            let wake = ctx.clone();
            self.background.examples = Some(ExamplesJob::new(Box::new(move || wake.request_repaint())));
        }
    }

    fn order_card(&mut self, ctx: &egui::Context) {
        let Some(figure) = self.view.card.as_ref().map(|card| card.figure) else {
            self.background.card = None;
            return;
        };
        let design = self.session.design();
        let same = self.background.card.as_ref().is_some_and(|(of, key, _)| of.same_cheese(design) && *key == figure);
        let pins = self.session.pins();
        let pins_as_before =
            self.background.card().is_none_or(|card| card.ways.iter().all(|way| way.pinned == pins.contains(way.field.key)));
        if same && pins_as_before {
            return;
        }
        self.background.card = Some((design.clone(), figure, Card::of(&self.session, figure)));
        if !same {
            let wake = ctx.clone();
            let job =
                self.background.sensitivity.get_or_insert_with(|| SensitivityJob::new(Box::new(move || wake.request_repaint())));
            job.order(self.session.batch(), figure);
        }
    }

    /// Judges the design by its draws as soon as they are there; until then one run stands in for them.
    fn judge_by_draws(&mut self) {
        if self.background.judged || self.session.is_dragging() {
            return;
        }
        let Some(spread) = self.background.spread(self.session.design()) else { return };
        if self.session.judge(&spread) {
            self.kept_week.forget();
            self.refresh();
        }
        self.shown.take_ranges(&spread);
        self.background.judged = true;
    }

    /// Orders the spread once a drag has ended: two hundred batches beside a moving slider would only be thrown away.
    fn order_spread(&mut self, ctx: &egui::Context) {
        if !self.background.spreads
            || self.session.is_dragging()
            || self.background.spread_of.as_ref().is_some_and(|of| of.same_cheese(self.session.design()))
        {
            return;
        }
        let wake = ctx.clone();
        let job = self.background.spread.get_or_insert_with(|| SpreadJob::new(Box::new(move || wake.request_repaint())));
        job.order(self.session.design());
        self.background.spread_of = Some(self.session.design().clone());
    }
}
