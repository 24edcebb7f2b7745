//! The foot: what is always in sight.

use crate::ui::{example, shown};
use egui::Theme;
use egui_kittest::kittest::{NodeT, Queryable};

/// The least window, with the frame of the test around it.
const SIZE: [f32; 2] = [1296.0, 816.0];

#[test]
fn a_plan_that_ends_before_the_cheeses_are_sour_pushes_nothing_out_of_sight() {
    let harness = shown(example("unsoured-vat"), SIZE, Theme::Light);
    let notice = harness.get_by_label_contains("Last change: ").rect();
    assert!(notice.bottom() <= SIZE[1] - 8.0, "{notice:?}");
    let figures = harness.root().children_recursive().filter_map(|node| {
        let words = node.accesskit_node().label().or_else(|| node.accesskit_node().value())?;
        words.starts_with("not sour by ").then(|| node.rect())
    });
    let ends: Vec<egui::Rect> = figures.collect();
    assert!(ends.iter().any(|rect| rect.right() < SIZE[0] && rect.bottom() < notice.top() + 1.0), "{ends:?} above {notice:?}");
    let serious = harness.query_all_by_label_contains("serious warnings").any(|node| node.rect().bottom() < notice.top() + 1.0);
    assert!(serious, "the serious warnings are counted in it");
}
