//! A tray with its cheeses, from above.

use super::shape::{Content, Piece, Seen, Vessel};
use crate::batch::Batch;
use crate::process::{DryingOutcome, SaltingOutcome, tray_places};

/// Returns the fullest tray with its cheeses as they are laid on it; none where nothing is dried, or a tray is too small for a cheese.
pub(super) fn tray(batch: &Batch, salted: &SaltingOutcome, dried: &DryingOutcome) -> Option<Vessel> {
    let design = &batch.design.drying;
    if dried.cheese_count == 0 || design.drying_h <= 0.0 {
        return None;
    }
    let (width_mm, depth_mm, diameter_mm) = (design.tray_width_mm, design.tray_depth_mm, salted.diameter_mm);
    let places = tray_places(width_mm, depth_mm, diameter_mm);
    let each = dried.cheese_count.div_ceil(design.tray_count.max(1)) as usize;
    let laid = each.min(places.len());
    let pieces = places.into_iter().take(laid).map(|(across_mm, along_mm)| Piece {
        content: Content::Cheese,
        left_mm: across_mm - 0.5 * diameter_mm,
        bottom_mm: along_mm - 0.5 * diameter_mm,
        width_mm: diameter_mm,
        height_mm: diameter_mm,
    });
    let pieces: Vec<Piece> = pieces.collect();
    if pieces.is_empty() {
        return None;
    }
    let room = if laid < each { format!("; {} more have no room on it: add trays", each - laid) } else { String::new() };
    let trays = design.tray_count;
    let plural = if trays == 1 { "tray" } else { "trays" };
    let cheeses = if laid == 1 { "cheese" } else { "cheeses" };
    Some(Vessel {
        seen: Seen::Above,
        width_mm,
        height_mm: depth_mm,
        pieces,
        caption: format!("{trays} {plural}, {laid} {cheeses} on the fullest, from above{room}"),
    })
}
