//! The shopping: where everything comes from at the left, what to buy at the right.

use crate::batch::Batch;
use crate::design::{BuyFor, SuppliesDesign};
use crate::plan::{Now, needs};
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::supplies::amounts::{PRICE_WIDTH, checked, read_plain, supplied};
use crate::ui::supplies::bought::bought_ui;
use crate::ui::supplies::good::good_ui;
use crate::ui::week::kept::KeptWeek;
use crate::ui::widget::number_text::trimmed;
use crate::ui::widget::pill::{pill_ui, pills_ui};
use crate::ui::widget::room::Room;
use crate::ui::widget::scroll::scroll_ui;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{CAPTION, Palette};
use crate::ui::widget::typed_box::{Said, TypedBox, said_ui, typed_ui};
use egui::{CentralPanel, Frame, Margin, Panel, RichText, Ui};

/// Width of what is asked, at the left.
const ASKED_WIDTH: f32 = 560.0;

/// Draws the page and returns what is asked for.
pub(in crate::ui) fn supplies_page_ui(
    ui: &mut Ui,
    desk: &mut KeptWeek,
    view: &mut View,
    batch: &Batch,
    now: &Now,
    room: Room,
) -> Vec<Ask> {
    let side = Frame::new().fill(Palette::of(ui).background).inner_margin(Margin::symmetric(12, 10));
    let reckoned = desk.reckon(batch, now);
    let mut asks = Vec::new();
    match room {
        Room::Own => {
            Panel::left("supplies").exact_size(ASKED_WIDTH).resizable(false).frame(side).show(ui, |ui| {
                scroll_ui(ui, "supplies", |ui| {
                    asks.extend(supplies_ui(ui, view, batch, reckoned.shopping.as_ref().err()));
                });
            });
            CentralPanel::default().frame(side).show(ui, |ui| {
                scroll_ui(ui, "bought", |ui| {
                    asks.extend(bought_ui(ui, view.units, batch, &reckoned.shopping));
                });
            });
        }
        Room::Column => {
            CentralPanel::default().frame(side).show(ui, |ui| {
                scroll_ui(ui, "shopping", |ui| {
                    asks.extend(bought_ui(ui, view.units, batch, &reckoned.shopping));
                    ui.separator();
                    asks.extend(supplies_ui(ui, view, batch, reckoned.shopping.as_ref().err()));
                });
            });
        }
    }
    asks
}

fn supplies_ui(ui: &mut Ui, view: &mut View, batch: &Batch, trouble: Option<&crate::plan::ShoppingError>) -> Vec<Ask> {
    let supplies = &batch.design.supplies;
    let mut asks = aim_ui(ui, view, supplies);
    ui.add_space(10.0);
    heading_ui(ui, "At home and on the shelf");
    for need in needs(batch) {
        let own = trouble.filter(|trouble| trouble.good() == need.good).map(ToString::to_string);
        asks.extend(good_ui(ui, view, supplies, &need, own));
        ui.add_space(6.0);
    }
    asks
}

/// Draws what counts first, what a left-over counts as, and the currency.
fn aim_ui(ui: &mut Ui, view: &mut View, supplies: &SuppliesDesign) -> Vec<Ask> {
    let mut asks = Vec::new();
    heading_ui(ui, "Buy for");
    pills_ui(ui, "Buy for", |ui| {
        for buy_for in [BuyFor::LeastCost, BuyFor::LeastWaste] {
            let name = format!("Buy for: {}", buy_for.label());
            let help = "Least cost: the lowest price, plus your price for what is left over, if you give one. Least waste: the least left over, then the lowest price.";
            if pill_ui(ui, buy_for.label(), &name, help, (buy_for == supplies.buy_for, buy_for == supplies.buy_for)) {
                asks.push(supplied(SuppliesDesign { buy_for, ..supplies.clone() }));
            }
        }
    });
    let mut said: Vec<Said> = Vec::new();
    ui.horizontal_wrapped(|ui| {
        ui.label("Prices are in");
        let this = TypedBox { key: "currency", shown: supplies.currency.clone(), width: PRICE_WIDTH, number: false };
        let typed = typed_ui(ui, &mut view.typing, &this, |text| {
            checked(SuppliesDesign { currency: text.trim().to_owned(), ..supplies.clone() }).map(|changed| (changed, None))
        });
        let typed = typed.named(ui, "Currency");
        asks.extend(typed.value.map(supplied));
        said.extend(typed.said);
    });
    if supplies.buy_for == BuyFor::LeastCost {
        ui.horizontal_wrapped(|ui| {
            ui.label("Each litre or kg left over counts as");
            let this = TypedBox { key: "waste", shown: trimmed(supplies.waste_price), width: PRICE_WIDTH, number: true };
            let typed = typed_ui(ui, &mut view.typing, &this, |text| {
                let (waste_price, said) = read_plain(text)?;
                checked(SuppliesDesign { waste_price, ..supplies.clone() }).map(|changed| (changed, said))
            });
            let typed = typed.named(ui, "Price on what is left over");
            asks.extend(typed.value.map(supplied));
            said.extend(typed.said);
        });
    }
    for said in &said {
        said_ui(ui, said);
    }
    if said.is_empty() {
        let words = "Any currency, by the name you type. What has no price is listed but not counted.";
        ui.label(RichText::new(words).size(CAPTION).color(Palette::of(ui).soft));
    }
    asks
}
