//! Tests of the hours of the cut: where it opens, and how they run.

use crate::ui::{example, settled, shown};
use egui::Theme;
use egui_kittest::kittest::Queryable;
use vatsketch::curve::{section, telling_share};
use vatsketch::design::Stage;

#[test]
fn the_cut_opens_at_the_hour_that_tells_most() {
    let mut harness = shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light);
    harness.state_mut().view.station = Stage::Pickling;
    settled(&mut harness);
    let (cut, batch) = (harness.state().view.cut, harness.state().session.batch());
    assert_eq!(cut.share, None);
    let told = section(batch, cut.key, telling_share(batch, cut.key, cut.germ), cut.germ).unwrap();
    assert!(told.at_h < told.last_h);
    let picture = told.in_words.clone();
    assert!(harness.query_by_label(&picture).is_some(), "{picture}");
}

#[test]
fn the_hours_run_when_they_are_told_to_and_stop_at_the_end() {
    let mut harness = shown(example("warm-cabinet"), [1296.0, 816.0], Theme::Light);
    harness.state_mut().view.station = Stage::Drying;
    harness.state_mut().view.cut.share = Some(0.2);
    settled(&mut harness);
    harness.get_by_label("Cut through a cheese: play the hours").click();
    harness.step();
    harness.step();
    harness.step();
    let cut = harness.state().view.cut;
    assert!(cut.runs && cut.share > Some(0.2), "{cut:?}");
    harness.get_by_label("Cut through a cheese: pause").click();
    settled(&mut harness);
    assert!(!harness.state().view.cut.runs);
    // At the end they begin once more, and there they stop by themselves.
    harness.state_mut().view.cut.share = Some(0.999);
    harness.get_by_label("Cut through a cheese: play the hours").click();
    for _ in 0..4 {
        harness.step();
    }
    settled(&mut harness);
    let cut = harness.state().view.cut;
    assert!(!cut.runs && cut.share == Some(1.0), "{cut:?}");
}
