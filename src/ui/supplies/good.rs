//! One thing that is needed: what is at home of it, and the packages it comes in.

use crate::design::{Offer, SuppliesDesign, Supply, Unit};
use crate::plan::Need;
use crate::report::kitchen_amount;
use crate::ui::state::ask::Ask;
use crate::ui::state::draft::Draft;
use crate::ui::state::view::View;
use crate::ui::supplies::amounts::{PRICE_WIDTH, checked, read_amount, read_plain, supplied};
use crate::ui::widget::number_text::trimmed;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold};
use crate::ui::widget::typed_box::{Said, Typed, TypedBox, said_ui, typed_ui};
use crate::units::{Scale, Units};
use egui::{Button, Frame, RichText, Role, Ui, WidgetInfo, vec2};

/// Width of a box for an amount.
const AMOUNT_WIDTH: f32 = 100.0;
/// Width of a box for a count.
const COUNT_WIDTH: f32 = 56.0;

/// Draws one thing and returns what is asked for.
///
/// # Arguments
/// * `trouble`: why it cannot be bought, if it cannot
pub(in crate::ui) fn good_ui(
    ui: &mut Ui,
    view: &mut View,
    supplies: &SuppliesDesign,
    need: &Need,
    trouble: Option<String>,
) -> Vec<Ask> {
    let palette = Palette::of(ui);
    let supply = supplies.goods.get(&need.good).cloned().unwrap_or_default();
    let mut card = Card { view, supplies, need, supply: &supply, changed: Vec::new(), said: Vec::new() };
    Frame::new().fill(palette.panel).corner_radius(6).inner_margin(10).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.horizontal_wrapped(|ui| {
            ui.label(RichText::new(need.good.label()).font(bold(BODY)));
            ui.label(
                RichText::new(format!("needed {}", kitchen_amount(need.amount, need.unit).shown_in(card.view.units)))
                    .color(palette.soft),
            );
        });
        card.home_ui(ui);
        card.say(ui);
        for number in 0..supply.offers.len() {
            card.offer_ui(ui, number);
            card.say(ui);
        }
        card.draft_ui(ui);
        card.say(ui);
        if let Some(trouble) = trouble {
            said_ui(ui, &Said::Refused(trouble));
        }
    });
    card.changed.into_iter().map(supplied).collect()
}

/// One thing while it is drawn.
struct Card<'a> {
    view: &'a mut View,
    supplies: &'a SuppliesDesign,
    need: &'a Need,
    supply: &'a Supply,
    changed: Vec<SuppliesDesign>,
    said: Vec<Said>,
}

impl Card<'_> {
    fn say(&mut self, ui: &mut Ui) {
        for said in self.said.drain(..) {
            said_ui(ui, &said);
        }
    }

    /// Returns the units, and the one in which amounts of this thing are shown.
    fn shown(&self) -> (Units, Scale) {
        (self.view.units, self.view.units.shelf_scale(self.need.unit, self.need.amount))
    }

    fn name(&self, what: &str) -> String {
        format!("{}: {what}", self.need.good.label())
    }

    /// Returns the supplies with another supply of this thing, if it is allowed; one that says nothing is no supply.
    fn with(&self, supply: Supply) -> Result<SuppliesDesign, String> {
        let mut supplies = self.supplies.clone();
        if supply == Supply::default() {
            supplies.goods.remove(&self.need.good);
        } else {
            supplies.goods.insert(self.need.good, supply);
        }
        checked(supplies)
    }

    fn with_offer(&self, number: usize, offer: Offer) -> Result<SuppliesDesign, String> {
        let mut supply = self.supply.clone();
        if let Some(place) = supply.offers.get_mut(number) {
            *place = offer;
        }
        self.with(supply)
    }

    /// Draws a box that sets the supplies.
    fn box_ui(&mut self, ui: &mut Ui, what: &str, shown: String, width: f32, read: impl FnOnce(&Self, &str) -> Read) {
        let key = format!("{} {what}", self.need.good.key());
        let this = TypedBox { key: &key, shown, width, number: true };
        let mut typing = std::mem::take(&mut self.view.typing);
        let typed: Typed<SuppliesDesign> = typed_ui(ui, &mut typing, &this, |text| read(self, text)).named(ui, &self.name(what));
        self.view.typing = typing;
        self.changed.extend(typed.value);
        self.said.extend(typed.said);
    }

    fn home_ui(&mut self, ui: &mut Ui) {
        let (unit, supply, shown) = (self.need.unit, self.supply, self.shown());
        ui.horizontal_wrapped(|ui| {
            ui.label("at home");
            self.box_ui(ui, "at home", own_words(supply.at_home, shown), AMOUNT_WIDTH, |card, text| {
                let (at_home, said) = read_amount(text, unit, shown)?;
                Ok((card.with(Supply { at_home, ..supply.clone() })?, said))
            });
            ui.label("can be short by");
            self.box_ui(ui, "can be short by", own_words(supply.stretch, shown), AMOUNT_WIDTH, |card, text| {
                let (stretch, said) = read_amount(text, unit, shown)?;
                Ok((card.with(Supply { stretch, ..supply.clone() })?, said))
            });
        });
    }

    fn offer_ui(&mut self, ui: &mut Ui, number: usize) {
        let Some(offer) = self.supply.offers.get(number).copied() else { return };
        let (unit, shown) = (self.need.unit, self.shown());
        let what = |what: &str| format!("package {}, {what}", number + 1);
        ui.horizontal_wrapped(|ui| {
            ui.label("package of");
            self.box_ui(ui, &what("size"), own_words(offer.size, shown), AMOUNT_WIDTH, |card, text| {
                let (size, said) = read_amount(text, unit, shown)?;
                Ok((card.with_offer(number, Offer { size, ..offer })?, said))
            });
            ui.label("for");
            self.box_ui(ui, &what("price"), format!("{:.2}", offer.price), PRICE_WIDTH, |card, text| {
                let (price, said) = read_plain(text)?;
                Ok((card.with_offer(number, Offer { price, ..offer })?, said))
            });
            ui.label("at most");
            let shown = offer.at_most.map_or_else(String::new, |most| most.to_string());
            self.box_ui(ui, &what("at most"), shown, COUNT_WIDTH, |card, text| {
                Ok((card.with_offer(number, Offer { at_most: read_count(text)?, ..offer })?, None))
            });
            let response = ui.add(Button::new(RichText::new("×").size(CAPTION)).min_size(vec2(28.0, 28.0)));
            response.widget_info(|| WidgetInfo::labeled(Role::Button, true, self.name(&what("remove"))));
            if response.clicked() {
                let kept = self.supply.offers.iter().enumerate().filter(|(place, _)| *place != number).map(|(_, offer)| *offer);
                let supply = Supply { offers: kept.collect(), ..self.supply.clone() };
                self.changed.extend(self.with(supply).ok());
            }
        });
    }

    /// Draws the boxes for a package that is not on the list yet; it counts as soon as both are filled.
    fn draft_ui(&mut self, ui: &mut Ui) {
        let (unit, amounts) = (self.need.unit, self.shown());
        let draft = self.view.drafts.get(&self.need.good).copied().unwrap_or_default();
        ui.horizontal_wrapped(|ui| {
            ui.label("another package of");
            let shown = draft.size.map_or_else(String::new, |size| own_words(size, amounts));
            self.draft_box_ui(ui, "new package, size", shown, unit, |draft, size| draft.size = Some(size));
            ui.label("for");
            let shown = draft.price.map_or_else(String::new, |price| format!("{price:.2}"));
            self.draft_box_ui(ui, "new package, price", shown, Unit::One, |draft, price| draft.price = Some(price));
        });
        let draft = self.view.drafts.get(&self.need.good).copied().unwrap_or_default();
        let Some((size, price)) = draft.size.zip(draft.price) else { return };
        let mut supply = self.supply.clone();
        supply.offers.push(Offer { size, price, at_most: None });
        match self.with(supply) {
            Ok(supplies) => {
                self.view.drafts.remove(&self.need.good);
                self.changed.push(supplies);
            }
            Err(why) => self.said.push(Said::Refused(why)),
        }
    }

    fn draft_box_ui(&mut self, ui: &mut Ui, what: &str, shown: String, unit: Unit, set: impl FnOnce(&mut Draft, f64)) {
        let key = format!("{} {what}", self.need.good.key());
        let width = if unit == Unit::One { PRICE_WIDTH } else { AMOUNT_WIDTH };
        let this = TypedBox { key: &key, shown, width, number: true };
        let amounts = self.shown();
        let typed = typed_ui(ui, &mut self.view.typing, &this, |text| {
            let (value, said) = if unit == Unit::One { read_plain(text)? } else { read_amount(text, unit, amounts)? };
            if value > 0.0 { Ok((value, said)) } else { Err("give a number above 0".to_owned()) }
        });
        let typed = typed.named(ui, &self.name(what));
        if let Some(value) = typed.value {
            set(self.view.drafts.entry(self.need.good).or_default(), value);
        }
        self.said.extend(typed.said);
    }
}

/// What a box for supplies reads.
type Read = Result<(SuppliesDesign, Option<String>), String>;

/// Returns an amount as it is shown in a box.
fn own_words(value: f64, (_, scale): (Units, Scale)) -> String {
    format!("{} {}", trimmed(scale.shown(value)), scale.symbol)
}

/// Reads a count; empty means as many as wanted.
fn read_count(text: &str) -> Result<Option<u32>, String> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    let count = text.parse().ok().filter(|count| *count > 0);
    count
        .map(Some)
        .ok_or_else(|| format!("“{text}” is not a count; type a whole number above 0, or leave the box empty for no limit"))
}
