//! Tests of `src/ui/widget/motion.rs`.

use egui::{Context, Id, RawInput};
use vatsketch::ui::{glided, keep_still};

/// Returns where a value is in the frame at a moment.
fn at(ctx: &Context, at_s: f64, to: f64, at_once: bool) -> f64 {
    let mut now = f64::NAN;
    let input = RawInput { time: Some(at_s), ..Default::default() };
    let frame = ctx.run_ui(input, |ui| now = glided(ui.ctx(), Id::unique("limit"), to, at_once));
    frame.drop_without_applying_deltas();
    now
}

#[test]
fn a_limit_goes_to_its_new_place_within_a_sixth_of_a_second() {
    let ctx = Context::default();
    let places: Vec<f64> =
        [0.0, 0.02, 0.06, 0.1, 0.2].map(|at_s| at(&ctx, 1.0 + at_s, if at_s > 0.0 { 60.1 } else { 20.0 }, false)).into();
    assert!(places.is_sorted() && places[0].to_bits() == 20_f64.to_bits(), "{places:?}");
    assert!(places[2] > 20.0 && places[3] < 60.1, "on its way: {places:?}");
    assert_eq!(places[4].to_bits(), 60.1_f64.to_bits(), "there, to the last digit");
}

#[test]
fn what_is_dragged_is_followed_at_once_and_so_is_everything_where_little_movement_is_wished() {
    let ctx = Context::default();
    at(&ctx, 1.0, 20.0, false);
    assert_eq!(at(&ctx, 1.02, 30.0, true).to_bits(), 30_f64.to_bits());
    keep_still(&ctx);
    assert_eq!(at(&ctx, 1.04, 50.0, false).to_bits(), 50_f64.to_bits());
}
