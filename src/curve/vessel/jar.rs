//! A jar with its cheeses and vinegar.

use super::shape::{Content, Piece, Seen, Vessel};
use crate::batch::Batch;
use crate::design::JarLay;
use crate::process::{DryingOutcome, PicklingOutcome};

/// Gap that mesh or space leaves between cheeses in a jar, as it is drawn, mm.
const GAP_MM: f64 = 4.0;
/// Cubic millimetres of a millilitre.
const MM3_PER_ML: f64 = 1000.0;

pub(super) fn jar(batch: &Batch, dried: &DryingOutcome, pickled: &PicklingOutcome) -> Option<Vessel> {
    let design = &batch.design.pickling;
    if pickled.jars == 0 {
        return None;
    }
    let (width_mm, fill_mm) = (design.jar_width_mm, design.jar_height_mm);
    let fullest = dried.cheese_count.div_ceil(pickled.jars).min(pickled.cheeses_per_jar).max(1);
    let (diameter_mm, thickness_mm) = (dried.end.diameter_mm, dried.end.thickness_mm);
    let (wide_mm, high_mm) =
        if design.jar_lay == JarLay::OnEdge { (thickness_mm, diameter_mm) } else { (diameter_mm, thickness_mm) };
    let gap_mm = if design.jar_lay == JarLay::FlatTouching { 0.0 } else { GAP_MM };
    let in_row = ((width_mm + gap_mm) / (wide_mm + gap_mm)).floor().clamp(1.0, f64::from(fullest)) as u32;
    let row_mm = f64::from(in_row) * (wide_mm + gap_mm) - gap_mm;
    let cheeses = (0..fullest).map(|number| Piece {
        content: Content::Cheese,
        left_mm: 0.5 * (width_mm - row_mm) + f64::from(number % in_row) * (wide_mm + gap_mm),
        bottom_mm: f64::from(number / in_row) * (high_mm + gap_mm),
        width_mm: wide_mm,
        height_mm: high_mm,
    });
    let cheese_mm3 = 0.25 * std::f64::consts::PI * diameter_mm.powi(2) * thickness_mm;
    let filled_mm3 = f64::from(fullest) * (cheese_mm3 + MM3_PER_ML * pickled.vinegar_each_ml);
    let level_mm = (filled_mm3 / (0.25 * std::f64::consts::PI * width_mm.powi(2))).min(fill_mm);
    let vinegar = Piece { content: Content::Vinegar, left_mm: 0.0, bottom_mm: 0.0, width_mm, height_mm: level_mm };
    let with_vinegar = pickled.vinegar_each_ml > 0.0;
    let plural = |count: u32, one: &str, many: &str| format!("{count} {}", if count == 1 { one } else { many });
    Some(Vessel {
        seen: Seen::Side,
        width_mm,
        height_mm: fill_mm,
        pieces: with_vinegar.then_some(vinegar).into_iter().chain(cheeses).collect(),
        caption: format!("{}, at most {} in each", plural(pickled.jars, "jar", "jars"), plural(fullest, "cheese", "cheeses")),
    })
}
