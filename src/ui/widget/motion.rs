//! Movement in the window: short, and none where the desktop asks for little of it.

use egui::{Context, Id};

/// How long an axis takes to its new limits, s.
const GLIDE_S: f32 = 0.15;

fn still_id() -> Id {
    Id::unique("little movement is wished")
}

/// Lets nothing glide from now on.
///
/// # Example
/// ```
/// let ctx = egui::Context::default();
/// vatsketch::ui::keep_still(&ctx);
/// ```
pub fn keep_still(ctx: &Context) {
    ctx.data_mut(|data| data.insert_temp(still_id(), true));
}

/// Returns where a value that glides to another is now: there at once where it is drawn for the first time, `at_once` is said, or little
/// movement is wished.
///
/// # Arguments
/// * `id`: of the value, the same in every frame
///
/// # Example
/// ```
/// use vatsketch::ui::glided;
/// let ctx = egui::Context::default();
/// let frame = ctx.run_ui(egui::RawInput::default(), |ui| {
///     assert_eq!(glided(ui.ctx(), egui::Id::unique("limit"), 80.0, false), 80.0);
/// });
/// frame.drop_without_applying_deltas();
/// ```
#[must_use]
pub fn glided(ctx: &Context, id: Id, to: f64, at_once: bool) -> f64 {
    let still = at_once || ctx.data(|data| data.get_temp::<bool>(still_id())).unwrap_or(false);
    let target = to as f32;
    let now = ctx.animate_value_with_time(id, target, if still { 0.0 } else { GLIDE_S });
    // Where it has arrived it is the number itself, not what is left of it in single precision.
    if now.to_bits() == target.to_bits() { to } else { f64::from(now) }
}
