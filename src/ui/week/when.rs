//! When: the wish with its time, wishes to take over, and why a wish cannot be kept.

use crate::design::{WeekDesign, Wish, moment, upper_first};
use crate::plan::{Lean, WishKind, WishOffer, spoken_time, time_words, whole_time_words, wish_of_kind, wished_time};
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::week::kept::Reckoned;
use crate::ui::week::wish::wished;
use crate::ui::widget::pill::{pill_ui, pills_ui};
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{BODY, CAPTION, Palette};
use crate::ui::widget::typed_box::{Said, TypedBox, said_ui, typed_ui};
use crate::units::Units;
use egui::{Button, Frame, RichText, Ui, vec2};
use jiff::civil::DateTime;

/// Width of a box for a day and a time.
pub(in crate::ui) const TIME_WIDTH: f32 = 172.0;

/// Draws it and returns what is asked for.
pub(in crate::ui) fn when_ui(ui: &mut Ui, view: &mut View, week: &WeekDesign, reckoned: &Reckoned) -> Vec<Ask> {
    let mut asks = Vec::new();
    heading_ui(ui, "When");
    let kind = WishKind::of(week.wish);
    pills_ui(ui, "When", |ui| {
        for choice in WishKind::ALL {
            let name = format!("When: {}", choice.label());
            if pill_ui(ui, choice.label(), &name, help(choice), (choice == kind, choice == kind)) {
                let wish = wish_of_kind(choice, reckoned.planned(), &reckoned.now, &reckoned.counted);
                asks.push(wished(week, wish));
            }
        }
    });
    if let Some(at) = wished_time(week.wish) {
        let name = format!("{}: day and time", kind.label());
        let row = ui.horizontal(|ui| {
            ui.label(kind.label());
            time_box(ui, view, "wish", &name, at, reckoned.now.at, Lean::Ahead)
        });
        let (typed, said) = row.inner;
        asks.extend(typed.map(|at| wished(week, kind.at(at))));
        match said {
            Some(said) => said_ui(ui, &said),
            None => day_in_full(ui, view.units, at),
        }
    }
    if let Err(why) = &reckoned.week {
        asks.extend(trouble_ui(ui, view.units, week, &why.to_string(), why.offer()));
    }
    // While nothing is fixed the same offers stand in the middle of the page.
    if week.wish == Wish::Open {
        return asks;
    }
    ui.label(RichText::new("Quick choices").size(CAPTION).color(Palette::of(ui).soft));
    ui.horizontal_wrapped(|ui| {
        for offer in reckoned.offers.iter().filter(|offer| offer.wish != week.wish) {
            asks.extend(offer_ui(ui, view.units, week, offer));
        }
    });
    asks
}

const fn help(kind: WishKind) -> &'static str {
    match kind {
        WishKind::Open => "No date yet: times count from the first task.",
        WishKind::StartAt => "The first task begins at exactly this time.",
        WishKind::SoonAfter => "The first task begins within a week after this, as it suits your hours best.",
        WishKind::FinishedBy => "The cheeses are finished by this time; the start follows.",
    }
}

/// Draws a box for a day and a time; returns the time once it counts, and what is to be said of the text.
pub(in crate::ui) fn time_box(
    ui: &mut Ui,
    view: &mut View,
    key: &str,
    name: &str,
    at: DateTime,
    now: DateTime,
    lean: Lean,
) -> (Option<DateTime>, Option<Said>) {
    let units = view.units;
    let this = TypedBox { key, shown: units.told(&moment(at)), width: TIME_WIDTH, number: false };
    let typed = typed_ui(ui, &mut view.typing, &this, |text| {
        let at = spoken_time(text, now, lean).map_err(|error| error.to_string())?;
        Ok((at, Some(units.told(&whole_time_words(at)))))
    });
    let typed = typed.named(ui, name);
    (typed.value, typed.said)
}

fn day_in_full(ui: &mut Ui, units: Units, at: DateTime) {
    let words = units.told(&format!("{}. You can also type tomorrow 9:00, Fri 18:30, 9 May 18:30.", time_words(at)));
    ui.label(RichText::new(words).size(CAPTION).color(Palette::of(ui).soft));
}

/// Draws why there is no week, with a wish that would do.
fn trouble_ui(ui: &mut Ui, units: Units, week: &WeekDesign, why: &str, offer: Option<WishOffer>) -> Option<Ask> {
    let palette = Palette::of(ui);
    let why = units.told(why);
    Frame::new().fill(palette.stop_fill).corner_radius(6).inner_margin(8).show(ui, |ui| {
        ui.label(RichText::new(format!("{}.", upper_first(&why))).size(BODY).color(palette.stop_text));
    });
    offer.and_then(|offer| offer_ui(ui, units, week, &offer))
}

/// Draws one wish to take over.
pub(in crate::ui) fn offer_ui(ui: &mut Ui, units: Units, week: &WeekDesign, offer: &WishOffer) -> Option<Ask> {
    let response = ui.add(Button::new(RichText::new(units.told(&offer.words)).size(CAPTION)).min_size(vec2(0.0, 28.0)));
    response.clicked().then(|| wished(week, offer.wish))
}
