//! `vatsketch shop`: what a vat needs, and in which packages to buy it.

use super::ending::{CliError, Ending};
use super::open;
use super::options::{DesignOptions, FormOptions};
use super::text::{with_notice, write_failures, write_head, write_json};
use crate::batch::{Batch, batch};
use crate::design::{BuyFor, Offer, SuppliesDesign, Unit};
use crate::export::printable;
use crate::plan::{Bought, Need, Shopping, shop};
use crate::report::{Amount, kitchen_amount, money, printed_size, weight_price};
use crate::units::Units;
use crate::words::FROM_A_MODEL;
use serde_json::{Value, json};
use std::io::Write;

pub(super) fn run(
    options: &DesignOptions,
    form: &FormOptions,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let batch = batch(&open::design(options)?)?;
    let ending = write_failures(&batch, "", form.shown.units, words)?;
    let shopping = shop(&batch).map_err(|why| CliError::Stage(why.to_string()))?;
    if form.json {
        write_json(with_notice(to_json(&batch, &shopping), &batch), data)?;
    } else {
        write_text(&batch, &shopping, form.shown.units, data)?;
    }
    Ok(ending)
}

/// Returns the packages that a thing can be bought in.
fn offers<'a>(supplies: &'a SuppliesDesign, bought: &Bought) -> &'a [Offer] {
    supplies.goods.get(&bought.need.good).map(|supply| supply.offers.as_slice()).unwrap_or_default()
}

fn to_json(batch: &Batch, shopping: &Shopping) -> Value {
    let supplies = &batch.design.supplies;
    let goods = shopping.bought.iter().map(|bought| {
        let packages = offers(supplies, bought)
            .iter()
            .zip(&bought.counts)
            .map(|(offer, count)| json!({ "size": offer.size, "price": offer.price, "at_most": offer.at_most, "count": count }));
        json!({
            "good": bought.need.good.key(), "need": bought.need.amount, "unit": bought.need.unit.symbol(),
            "at_home": bought.at_home, "packages": packages.collect::<Vec<_>>(), "bought": bought.amount,
            "left_over": bought.left_over, "short": bought.short, "price": bought.price, "used_price": bought.used_price,
        })
    });
    let without = shopping
        .without_supply
        .iter()
        .map(|need| json!({ "good": need.good.key(), "need": need.amount, "unit": need.unit.symbol() }));
    json!({
        "title": batch.design.title, "buy_for": supplies.buy_for.key(), "currency": supplies.currency,
        "goods": goods.collect::<Vec<_>>(), "without_supply": without.collect::<Vec<_>>(),
        "price": shopping.price, "used_price": shopping.used_price,
        "each_price": shopping.each_price, "kilogram_price": shopping.kilogram_price,
        "milk_l": batch.design.milk.milk_l, "milk_at_hand_l": shopping.milk_at_hand_l(),
    })
}

/// Returns an amount with a space that a terminal can copy.
fn plain(amount: Amount, units: Units) -> String {
    amount.shown_in(units).to_string().replace('\u{a0}', " ")
}

/// Returns a price with the maker's currency behind it.
fn price(value: f64, supplies: &SuppliesDesign) -> String {
    money(value, &printable(&supplies.currency)).replace('\u{a0}', " ")
}

fn write_text(batch: &Batch, shopping: &Shopping, units: Units, data: &mut dyn Write) -> Result<(), CliError> {
    let supplies = &batch.design.supplies;
    write_head(batch, units, data)?;
    writeln!(data, "\nTo buy, for the {}", aim(supplies))?;
    for bought in &shopping.bought {
        write_bought(bought, supplies, units, data)?;
    }
    if shopping.bought.is_empty() {
        writeln!(data, "  nothing: the design has no supplies")?;
    }
    if !shopping.without_supply.is_empty() {
        writeln!(data, "\nAlso needed, no supply entered, so it costs nothing here")?;
        for Need { good, amount: value, unit } in &shopping.without_supply {
            writeln!(data, "  {:<WIDTH$}{}", good.label(), plain(kitchen_amount(*value, *unit), units))?;
        }
    }
    write_sums(shopping, supplies, units, data)?;
    write_milk(batch.design.milk.milk_l, shopping, units, data)?;
    writeln!(data, "\n{FROM_A_MODEL}")?;
    Ok(())
}

/// Width of the column of names.
const WIDTH: usize = 18;

fn aim(supplies: &SuppliesDesign) -> String {
    match supplies.buy_for {
        BuyFor::LeastWaste => "least left over".to_owned(),
        BuyFor::LeastCost if supplies.waste_price > 0.0 => {
            format!("least cost; a litre or kilogram left over counts as {}", price(supplies.waste_price, supplies))
        }
        BuyFor::LeastCost => "least cost".to_owned(),
    }
}

fn write_bought(bought: &Bought, supplies: &SuppliesDesign, units: Units, data: &mut dyn Write) -> std::io::Result<()> {
    let unit = bought.need.unit;
    let packages: Vec<String> = offers(supplies, bought)
        .iter()
        .zip(&bought.counts)
        .filter(|(_, count)| **count > 0)
        .map(|(offer, count)| {
            format!(
                "{count} × {} at {}",
                printed_size(offer.size, unit, units).to_string().replace('\u{a0}', " "),
                price(offer.price, supplies)
            )
        })
        .collect();
    let mut parts = vec![format!("needs {}", plain(kitchen_amount(bought.need.amount, unit), units))];
    if bought.at_home > 0.0 {
        parts.push(format!("at home {}", plain(kitchen_amount(bought.at_home, unit), units)));
    }
    parts.push(if packages.is_empty() {
        "buy none".to_owned()
    } else {
        format!("buy {}, together {}", packages.join(" and "), price(bought.price, supplies))
    });
    if bought.left_over > 0.0 {
        parts.push(format!("{} left over", plain(kitchen_amount(bought.left_over, unit), units)));
    }
    if bought.short > 0.0 {
        parts.push(format!("{} short, as you allowed", plain(kitchen_amount(bought.short, unit), units)));
    }
    writeln!(data, "  {:<WIDTH$}{}", bought.need.good.label(), parts.join("; "))
}

fn write_sums(shopping: &Shopping, supplies: &SuppliesDesign, units: Units, data: &mut dyn Write) -> std::io::Result<()> {
    writeln!(data, "\nTo pay: {}; used in this vat: {}", price(shopping.price, supplies), price(shopping.used_price, supplies))?;
    let each = shopping.each_price.map(|each| format!("{} a cheese", price(each, supplies)));
    let kilogram = shopping.kilogram_price.map(|kilogram| {
        let (weight_price, weight) = weight_price(kilogram, units);
        format!("{} a {weight} of dried cheese", price(weight_price, supplies))
    });
    let shares: Vec<String> = each.into_iter().chain(kilogram).collect();
    if shares.is_empty() { Ok(()) } else { writeln!(data, "What is used costs {}", shares.join(", ")) }
}

/// Less than this is no other amount of milk, L.
const SAME_MILK_L: f64 = 0.005;

/// Says how the milk that will be there can become the milk of the vat.
fn write_milk(milk_l: f64, shopping: &Shopping, units: Units, data: &mut dyn Write) -> std::io::Result<()> {
    let Some(at_hand_l) = shopping.milk_at_hand_l().filter(|at_hand_l| (at_hand_l - milk_l).abs() >= SAME_MILK_L) else {
        return Ok(());
    };
    let to_type = |litres: f64| format!("{litres:.3}").trim_end_matches('0').trim_end_matches('.').to_owned();
    let said = |litres: f64| units.text(Unit::Litre, litres, 2).unwrap_or_else(|| format!("{} L", to_type(litres)));
    let (at_hand, wanted, to_type) = (said(at_hand_l), said(milk_l), to_type(at_hand_l));
    writeln!(
        data,
        "\nYou will have {at_hand} of milk, and the vat takes {wanted}: `--set milk_l={to_type}` calculates the vat with all of it."
    )
}
