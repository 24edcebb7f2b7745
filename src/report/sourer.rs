//! What sours the milk, on the shopping list.

use super::facts::Facts;
use super::shopping_row::ShoppingRow;
use super::{Amount, kitchen_amount};
use crate::design::{CultureBy, Good, MilkAcid, MilkDesign, SouredBy, Unit, lower_first};
use crate::process::MilkSouring;

/// Returns what sours the milk.
pub(super) fn sourer(design: &MilkDesign, soured: &MilkSouring, facts: &Facts) -> Option<ShoppingRow> {
    let row = |good: Good, amount, key: &str, look_for: String| {
        Some(ShoppingRow { what: good.label(), amount, also: None, kitchen: facts.kitchen(key), look_for, buy: None })
    };
    match design.soured_by {
        SouredBy::Nothing => None,
        SouredBy::Culture => {
            let kind = lower_first(design.culture_kind.label());
            match design.culture_by {
                CultureBy::Packet => {
                    let look_for = format!("{kind}, each for {:.0}\u{a0}L; kept frozen, check the date", design.culture_packet_l);
                    row(Good::Culture, kitchen_amount(design.culture_packets, Unit::Packet), "", look_for)
                }
                CultureBy::Bulk => {
                    let look_for = format!("{kind}, living, not older than a week");
                    row(Good::Culture, Amount::new(soured.bulk_g, Unit::Gram, 0), "bulk_starter_g", look_for)
                }
                CultureBy::Cells => None,
            }
        }
        SouredBy::Acid => match design.milk_acid {
            MilkAcid::Citric => {
                let look_for = "citric acid, food grade, dry".to_owned();
                row(Good::MilkAcid, Amount::new(soured.acid_g, Unit::Gram, 1), "citric_acid_g", look_for)
            }
            MilkAcid::Vinegar => {
                let look_for = format!("vinegar, {:.1}\u{a0}g of acid in 100\u{a0}mL", design.milk_vinegar_g_per_100ml);
                row(Good::MilkAcid, Amount::new(soured.acid_ml, Unit::Millilitre, 1), "milk_vinegar_ml", look_for)
            }
            MilkAcid::Lactic => {
                let look_for = format!("lactic acid of {:.0}\u{a0}%, food grade", design.lactic_acid_percent);
                row(Good::MilkAcid, Amount::new(soured.acid_ml, Unit::Millilitre, 1), "lactic_acid_ml", look_for)
            }
        },
        SouredBy::Lactone => {
            row(Good::Lactone, Amount::new(soured.acid_g, Unit::Gram, 1), "lactone_g", "GDL, food grade, dry".to_owned())
        }
    }
}
