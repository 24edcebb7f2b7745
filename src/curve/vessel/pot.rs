//! The pot with its milk, in the water of its bath.

use super::shape::{Content, Piece, Seen, Vessel};
use crate::batch::Batch;
use crate::design::Heating;
use crate::law::bath::{Pot, WATER_UNDER, bath_level_m, bath_width_m};
use crate::process::MilkOutcome;

const MM_PER_M: f64 = 1000.0;

/// Returns the pot as deep as it is wide by rule, and the bath as wide as its water makes it with the pot in it.
pub(super) fn pot(batch: &Batch, milk: &MilkOutcome) -> Vessel {
    let design = &batch.design.vat;
    let pot = Pot { side_wetted: 0.01 * design.pot_depth_percent, ..Pot::new(milk.vat_milk_l) };
    let (width_mm, rim_mm, milk_mm) = (MM_PER_M * pot.width_m(), MM_PER_M * pot.height_m(), MM_PER_M * pot.depth_m());
    let in_bath = design.heating == Heating::Bath;
    let outer_mm = if in_bath { (MM_PER_M * bath_width_m(&pot, design.bath_l)).max(width_mm) } else { width_mm };
    let level_mm = MM_PER_M * bath_level_m(&pot);
    let under_mm = if in_bath { MM_PER_M * WATER_UNDER.value } else { 0.0 };
    let water = Piece { content: Content::Bath, left_mm: 0.0, bottom_mm: 0.0, width_mm: outer_mm, height_mm: level_mm };
    let inside = |height_mm| Piece {
        content: Content::Milk,
        left_mm: 0.5 * (outer_mm - width_mm),
        bottom_mm: under_mm,
        width_mm,
        height_mm,
    };
    let caption = if in_bath {
        format!(
            "{:.1}\u{a0}L of milk in a pot {width_mm:.0}\u{a0}mm wide, in {:.1}\u{a0}L of water: drawn as a round bath.",
            pot.milk_l, design.bath_l
        )
    } else {
        format!("{:.1}\u{a0}L of milk, drawn in a pot {width_mm:.0}\u{a0}mm wide.", pot.milk_l)
    };
    Vessel {
        seen: Seen::Side,
        width_mm: outer_mm,
        height_mm: if in_bath { level_mm.max(under_mm + rim_mm) } else { rim_mm },
        pieces: in_bath.then_some(water).into_iter().chain([inside(milk_mm)]).collect(),
        caption,
    }
}
