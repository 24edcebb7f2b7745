//! What the page of the plan keeps of the week and of the shopping: calculated when the design or the quarter of an hour changes, not for each drawing.

use crate::batch::Batch;
use crate::design::Design;
use crate::plan::{
    Counted, GRID_MIN, KitchenWeek, KitchenWeekError, Now, Shopping, ShoppingError, TurnsOffer, WishOffer, counted, fewer_turns,
    kitchen_week, moved_start, shop, wish_offers,
};
use crate::report::money;
use crate::ui::week::drag::StartDrag;
use jiff::civil::DateTime;

/// The week and the shopping of one design at one time.
pub(in crate::ui) struct Reckoned {
    design: Design,
    quarter: Option<DateTime>,
    /// What the clock says; the rest was calculated for its quarter of an hour.
    pub(in crate::ui) now: Now,
    /// The week, if there is a wish.
    pub(in crate::ui) week: Result<Option<KitchenWeek>, KitchenWeekError>,
    /// The tasks with counted times.
    pub(in crate::ui) counted: Counted,
    /// Wishes to take over.
    pub(in crate::ui) offers: Vec<WishOffer>,
    /// Fewer turns that save a night; none also as long as nobody has looked for them.
    pub(in crate::ui) turns: Option<TurnsOffer>,
    /// Whether they were looked for.
    turns_sought: bool,
    /// What is bought.
    pub(in crate::ui) shopping: Result<Shopping, ShoppingError>,
}

/// What the page keeps.
#[derive(Default)]
pub(in crate::ui) struct KeptWeek {
    reckoned: Option<Reckoned>,
    /// What one design costs, in words.
    cost: Option<(Design, Option<String>)>,
    /// The start while it is dragged.
    pub(in crate::ui) drag: Option<StartDrag>,
}

impl KeptWeek {
    /// Returns what is to be paid for a design, in words; nothing where no supplies are given.
    pub(in crate::ui) fn cost(&mut self, batch: &Batch) -> Option<&str> {
        if self.cost.as_ref().is_none_or(|(design, _)| *design != batch.design) {
            let supplies = &batch.design.supplies;
            let shopping = shop(batch).ok().filter(|shopping| !shopping.bought.is_empty());
            // A price and its currency never part at the end of a line.
            let words = shopping.map(|shopping| {
                let price = money(shopping.price, &supplies.currency);
                // What has no supply is bought too, for a price that nobody has entered.
                if shopping.without_supply.is_empty() { price } else { format!("more than {price}") }
            });
            self.cost = Some((batch.design.clone(), words));
        }
        self.cost.as_ref()?.1.as_deref()
    }

    /// Forgets what was calculated: the design is judged anew.
    pub(in crate::ui) fn forget(&mut self) {
        (self.reckoned, self.cost) = (None, None);
    }

    /// Returns the week and the shopping, calculated again only if something changed.
    pub(in crate::ui) fn reckon(&mut self, batch: &Batch, now: &Now) -> &Reckoned {
        let now = &now.for_week(&batch.design.week);
        let quarter = moved_start(now.at, -GRID_MIN / 2);
        let known = |known: &Reckoned| known.design == batch.design && known.quarter == quarter;
        // Taken out and put back, so that what is returned is never borrowed from a place that may be empty.
        let mut reckoned = match self.reckoned.take().filter(known) {
            Some(reckoned) => Reckoned { now: now.clone(), ..reckoned },
            None => Reckoned::of(batch, now, quarter),
        };
        // It takes a batch for each number of turns: too much while the start is dragged.
        if self.drag.is_none() && !reckoned.turns_sought {
            let turns = reckoned.planned().and_then(|week| fewer_turns(batch, week, now));
            (reckoned.turns, reckoned.turns_sought) = (turns, true);
        }
        self.reckoned.insert(reckoned)
    }
}

impl Reckoned {
    fn of(batch: &Batch, now: &Now, quarter: Option<DateTime>) -> Self {
        let counted = counted(batch);
        Self {
            design: batch.design.clone(),
            quarter,
            now: now.clone(),
            week: kitchen_week(batch, now),
            offers: wish_offers(now, &counted),
            turns: None,
            turns_sought: false,
            counted,
            shopping: shop(batch),
        }
    }

    /// Returns the week, if there is one.
    pub(in crate::ui) fn planned(&self) -> Option<&KitchenWeek> {
        self.week.as_ref().ok().and_then(Option::as_ref)
    }
}
