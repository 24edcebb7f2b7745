//! Tests of `src/ui/help`: the welcome, the guide, the words, what is new.

mod cards;
mod guide;
mod path;
pub mod pictures;
mod welcome;

use egui::{Key, Modifiers};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use vatsketch::ui::Window;

const SIZE: [f32; 2] = [1296.0, 816.0];
/// The sizes of a window that count: the usual one, a narrow one, and as much as is seen of 1280 × 800 at 200 %; the frame of the test around them.
const SIZES: [[f32; 2]; 3] = [SIZE, [736.0, 716.0], [656.0, 416.0]];

/// Chooses an entry of the menu of help.
fn from_menu(harness: &mut Harness<'_, Window>, entry: &str) {
    harness.get_by_label("Help").click();
    harness.run();
    harness.get_by_label(entry).click();
    harness.run();
    harness.run();
}

/// Presses a key.
fn press(harness: &mut Harness<'_, Window>, key: Key) {
    harness.key_press_modifiers(Modifiers::NONE, key);
    harness.run();
}

/// Returns the name of what has the focus.
fn focused(harness: &Harness<'_, Window>) -> String {
    let node = harness.root().children_recursive().find(|node| node.accesskit_node().is_focused());
    node.map_or_else(String::new, |node| {
        node.accesskit_node().label().or_else(|| node.accesskit_node().value()).unwrap_or_default()
    })
}

/// Presses a key until what has the focus has a name that begins so; fails if it is not reached.
fn reach(harness: &mut Harness<'_, Window>, key: Key, name: &str) {
    let mut met = Vec::new();
    for _ in 0..80 {
        if focused(harness).starts_with(name) {
            return;
        }
        press(harness, key);
        met.push(focused(harness));
    }
    panic!("“{name}” is not reached by {key:?}: {met:?}");
}
