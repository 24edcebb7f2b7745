//! What to buy, what it costs, and the milk that will be there.

use crate::batch::Batch;
use crate::design::{SuppliesDesign, Unit, Value};
use crate::plan::{Bought, Need, Shopping, ShoppingError};
use crate::report::{kitchen_amount, money, printed_size, weight_price};
use crate::session::Command;
use crate::ui::state::ask::Ask;
use crate::ui::widget::number_text::trimmed;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{BODY, CAPTION, FIGURE, Palette, bold, plain};
use crate::units::Units;
use egui::{Align, Button, FontId, Frame, Layout, RichText, Role, Ui, WidgetInfo, vec2};

/// Room between two figures.
const APART: f32 = 26.0;
/// Less than this is no other amount of milk, L.
const SAME_MILK_L: f64 = 0.005;

/// Draws it and returns what is asked for.
pub(in crate::ui) fn bought_ui(ui: &mut Ui, units: Units, batch: &Batch, shopping: &Result<Shopping, ShoppingError>) -> Vec<Ask> {
    let palette = Palette::of(ui);
    let supplies = &batch.design.supplies;
    heading_ui(ui, "What to buy");
    let shopping = match shopping {
        Ok(shopping) => shopping,
        Err(why) => {
            Frame::new().fill(palette.stop_fill).corner_radius(6).inner_margin(8).show(ui, |ui| {
                ui.label(RichText::new(format!("Nothing can be bought yet: {why}.")).color(palette.stop_text));
            });
            return Vec::new();
        }
    };
    let mut asks = Vec::new();
    if shopping.bought.is_empty() {
        ui.label("No supplies entered yet. Enter what you have at home and which packages the shop sells, and this page lists what to buy.");
    } else {
        total_ui(ui, units, shopping, supplies);
        asks.extend(milk_ui(ui, units, batch, shopping));
    }
    for bought in &shopping.bought {
        row_ui(ui, units, bought, supplies);
        ui.add_space(4.0);
    }
    if !shopping.without_supply.is_empty() {
        ui.add_space(8.0);
        ui.label(RichText::new("Needed, no supply entered").font(bold(BODY)));
        for Need { good, amount, unit } in &shopping.without_supply {
            ui.label(format!("{}: {}", good.label(), kitchen_amount(*amount, *unit).shown_in(units)));
        }
        ui.label(RichText::new("Not counted in the cost until you enter where it comes from.").size(CAPTION).color(palette.soft));
    }
    asks
}

fn total_ui(ui: &mut Ui, units: Units, shopping: &Shopping, supplies: &SuppliesDesign) {
    let soft = Palette::of(ui).soft;
    let per_weight = format!("per {} of dried cheese", weight_price(0.0, units).1);
    let figures = [
        ("to pay", Some(shopping.price)),
        ("used in this vat", Some(shopping.used_price)),
        ("per cheese", shopping.each_price),
        (per_weight.as_str(), shopping.kilogram_price.map(|price| weight_price(price, units).0)),
    ];
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = APART;
        for (words, price) in figures.iter().filter_map(|(words, price)| Some((words, (*price)?))) {
            let price = money(price, &supplies.currency);
            // A figure and its words stay together, so what has no room goes to the next line as a whole.
            let width = |words: &str, font: FontId| ui.painter().layout_no_wrap(words.to_owned(), font, soft).size().x;
            if ui.available_size_before_wrap().x < width(&price, bold(FIGURE)).max(width(words, plain(CAPTION))) {
                ui.end_row();
            }
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                let figure = ui.label(RichText::new(&price).font(bold(FIGURE)));
                figure.widget_info(|| WidgetInfo::labeled(Role::Label, true, format!("{price} {words}")));
                ui.label(RichText::new(*words).size(CAPTION).color(soft));
            });
        }
    });
    ui.add_space(6.0);
}

/// Draws the offer to make more cheese of the milk that will be there anyway.
fn milk_ui(ui: &mut Ui, units: Units, batch: &Batch, shopping: &Shopping) -> Option<Ask> {
    let milk_l = batch.design.milk.milk_l;
    let at_hand_l = shopping.milk_at_hand_l().filter(|at_hand_l| (at_hand_l - milk_l).abs() >= SAME_MILK_L)?;
    let mut asked = None;
    Frame::new().fill(Palette::of(ui).changed).corner_radius(6).inner_margin(10).show(ui, |ui| {
        ui.horizontal_wrapped(|ui| {
            let said = |litres| units.text(Unit::Litre, litres, 2).unwrap_or_else(|| format!("{} L", trimmed(litres)));
            ui.label(format!("You will have {} of milk; the vat takes {}.", said(at_hand_l), said(milk_l)));
            let response = ui.add(Button::new(format!("Use all {}", said(at_hand_l))).min_size(vec2(0.0, 28.0)));
            if response.clicked() {
                asked = Some(Ask::Do(Command::SetInput { key: "milk_l", value: Value::Number(at_hand_l) }));
            }
        });
    });
    ui.add_space(6.0);
    asked
}

fn row_ui(ui: &mut Ui, units: Units, bought: &Bought, supplies: &SuppliesDesign) {
    let palette = Palette::of(ui);
    let unit = bought.need.unit;
    let offers = supplies.goods.get(&bought.need.good).map(|supply| supply.offers.as_slice()).unwrap_or_default();
    let packages = offers.iter().zip(&bought.counts).filter(|(_, count)| **count > 0);
    let packages: Vec<String> =
        packages.map(|(offer, count)| format!("{count} × {}", printed_size(offer.size, unit, units))).collect();
    let buy = if packages.is_empty() { "none to buy".to_owned() } else { packages.join(" and ") };
    let mut rest = vec![format!("needed {}", kitchen_amount(bought.need.amount, unit).shown_in(units))];
    for (words, amount) in
        [("at home", bought.at_home), ("left over", bought.left_over), ("short, which you allowed", bought.short)]
    {
        if amount > 0.0 {
            rest.push(format!("{words} {}", kitchen_amount(amount, unit).shown_in(units)));
        }
    }
    let price = if bought.price > 0.0 { money(bought.price, &supplies.currency) } else { "–".to_owned() };
    Frame::new().fill(palette.panel).corner_radius(6).inner_margin(10).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.horizontal(|ui| {
            ui.label(RichText::new(bought.need.good.label()).font(bold(BODY)));
            let whole = ui.label(&buy);
            whole.widget_info(|| {
                WidgetInfo::labeled(Role::Label, true, format!("{}: {buy}, {}, {price}", bought.need.good.label(), rest.join(", ")))
            });
            ui.with_layout(Layout::right_to_left(Align::Center), |ui| ui.label(RichText::new(&price).font(bold(BODY))));
        });
        ui.label(RichText::new(rest.join(", ")).size(CAPTION).color(palette.soft));
    });
}
