//! A mould with its curd.

use super::shape::{Content, Piece, Seen, Vessel};
use crate::batch::Batch;
use crate::process::DrainingOutcome;

pub(super) fn mould(batch: &Batch, drained: &DrainingOutcome) -> Vessel {
    let design = &batch.design.draining;
    let (width_mm, height_mm) = (design.mould_diameter_mm, design.mould_height_mm);
    let across = |content, height_mm| Piece { content, left_mm: 0.0, bottom_mm: 0.0, width_mm, height_mm };
    let (depth_mm, moulds) = (drained.ladled_depth_mm, drained.cheese_count);
    let room = if drained.fits {
        "the ladled curd has room"
    } else {
        "the curd stands over the rim, so top up as it sinks, or use more moulds"
    };
    Vessel {
        seen: Seen::Side,
        width_mm,
        height_mm,
        pieces: vec![across(Content::Curd, depth_mm), across(Content::Cheese, drained.thickness_mm)],
        caption: format!("Moulds: {moulds}; {room}. Darker: the drained cheese."),
    }
}
