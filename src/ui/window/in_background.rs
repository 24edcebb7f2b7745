//! What the window has worked out in the background: what matters to the figure of the open card, and the spread of the open design.

use crate::curve::Spread;
use crate::design::Design;
use crate::session::{SensitivityJob, SpreadJob};
use crate::ui::figure_card::card::Card;
use crate::ui::figure_card::sensitivity::Effects;
use crate::ui::window::shell::Window;
use std::sync::Arc;

/// What is known about the open card, and the jobs.
#[derive(Default)]
pub(super) struct Desk {
    /// Design and figure that the card was asked for, and what is known of it.
    card: Option<(Design, &'static str, Option<Card>)>,
    matters: Option<SensitivityJob>,
    spread: Option<SpreadJob>,
    /// The design whose spread was ordered last.
    spread_of: Option<Design>,
    /// A spread that was handed over ready-made: for tests and pictures.
    given: Option<Arc<Spread>>,
    /// Whether spreads are worked out at all.
    spreads: bool,
}

impl Desk {
    /// Returns a desk that has the spread of every design worked out.
    pub(super) fn with_spread() -> Self {
        Self { spreads: true, ..Self::default() }
    }

    pub(super) fn is_busy(&self) -> bool {
        self.matters.as_ref().is_some_and(SensitivityJob::is_running) || self.spread.as_ref().is_some_and(SpreadJob::is_running)
    }

    /// Returns what is known about the figure of the open card.
    pub(super) fn card(&self) -> Option<&Card> {
        self.card.as_ref().and_then(|(.., card)| card.as_ref())
    }

    /// Returns what matters to it, once that is worked out; until the next answer is there, what mattered before the last change.
    pub(super) fn effects(&self) -> Option<Effects> {
        let (design, figure, _) = self.card.as_ref()?;
        let answer = self.matters.as_ref()?.answer()?;
        (answer.figure == *figure).then(|| Effects { of: answer.effects.clone(), old: !answer.design.same_cheese(design) })
    }

    /// Takes a spread that was worked out elsewhere.
    pub(super) fn give(&mut self, spread: Arc<Spread>) {
        self.given = Some(spread);
    }

    /// Returns the spread of a design, if it is known.
    pub(super) fn spread(&self, design: &Design) -> Option<Arc<Spread>> {
        let answer = self.spread.as_ref().and_then(SpreadJob::answer).or_else(|| self.given.clone())?;
        answer.design.same_cheese(design).then_some(answer)
    }
}

impl Window {
    /// Shows a spread that was worked out elsewhere, as long as the design stays what it belongs to.
    pub fn show_spread(&mut self, spread: Arc<Spread>) {
        self.desk.give(spread);
    }

    /// Orders what is out of date; before each drawing.
    pub(super) fn order_work(&mut self, ctx: &egui::Context) {
        self.order_card(ctx);
        self.order_spread(ctx);
    }

    fn order_card(&mut self, ctx: &egui::Context) {
        let Some(figure) = self.view.card.as_ref().map(|card| card.figure) else {
            self.desk.card = None;
            return;
        };
        let design = self.session.design();
        let same = self.desk.card.as_ref().is_some_and(|(of, key, _)| of.same_cheese(design) && *key == figure);
        let pins = self.session.pins();
        let pins_as_before =
            self.desk.card().is_none_or(|card| card.ways.iter().all(|way| way.pinned == pins.contains(way.field.key)));
        if same && pins_as_before {
            return;
        }
        self.desk.card = Some((design.clone(), figure, Card::of(&self.session, figure)));
        if !same {
            let wake = ctx.clone();
            let job = self.desk.matters.get_or_insert_with(|| SensitivityJob::new(Box::new(move || wake.request_repaint())));
            job.order(self.session.batch(), figure);
        }
    }

    /// Orders the spread once a drag has ended: two hundred batches beside a moving slider would only be thrown away.
    fn order_spread(&mut self, ctx: &egui::Context) {
        if !self.desk.spreads
            || self.session.is_dragging()
            || self.desk.spread_of.as_ref().is_some_and(|of| of.same_cheese(self.session.design()))
        {
            return;
        }
        let wake = ctx.clone();
        let job = self.desk.spread.get_or_insert_with(|| SpreadJob::new(Box::new(move || wake.request_repaint())));
        job.order(self.session.design());
        self.desk.spread_of = Some(self.session.design().clone());
    }
}
