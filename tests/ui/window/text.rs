//! Nothing is cut: every text has room in its place, at the sizes of window that count, at every station and on every page.

use crate::ui::log::{begun, invented, morning, probe_table, typed, under_way};
use crate::ui::{about_second, example, settled, shown, type_path};
use egui::epaint::{ClippedShape, Shape, TextShape};
use egui::{Rect, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use vatsketch::design::Stage;
use vatsketch::ui::{Page, Window};

/// The sizes of a window, with the frame of the test around them: a small screen, two wider ones, a narrow window, and the first at 200 % text.
const SIZES: [[f32; 2]; 5] = [[1296.0, 816.0], [1382.0, 784.0], [1936.0, 1096.0], [736.0, 1016.0], [656.0, 416.0]];
/// A letter may reach so far over the edge of its place by the rounding to whole points.
const ROUNDED: f32 = 1.5;

/// Calls `see` with every text and the place that it may be seen in.
fn texts<'a>(shapes: &'a [ClippedShape], see: &mut dyn FnMut(&'a TextShape, Rect)) {
    fn inside<'a>(shape: &'a Shape, clip: Rect, see: &mut dyn FnMut(&'a TextShape, Rect)) {
        match shape {
            Shape::Text(text) => see(text, clip),
            Shape::Vec(shapes) => shapes.iter().for_each(|shape| inside(shape, clip, see)),
            _ => (),
        }
    }
    for ClippedShape { clip_rect, shape, .. } in shapes {
        inside(shape, *clip_rect, see);
    }
}

/// Returns the texts that are cut at a side, or shortened.
fn cut(harness: &Harness<'_, Window>) -> Vec<String> {
    let mut cut = Vec::new();
    // What is typed into a box moves along in it.
    let title = &harness.state().session.design().title;
    texts(&harness.output().shapes, &mut |text, place| {
        let rect = text.visual_bounding_rect();
        // What is scrolled out of sight, or has nothing in it, is not cut.
        let words = text.galley.text();
        if !rect.intersects(place) || words.trim().is_empty() || words == title {
            return;
        }
        if text.galley.elided || rect.left() < place.left() - ROUNDED || rect.right() > place.right() + ROUNDED {
            cut.push(format!("“{}” at {rect:?} in {place:?}", text.galley.text()));
        }
    });
    cut
}

/// Adds what is cut on every page and at every station.
fn check(harness: &mut Harness<'_, Window>, what: &str, found: &mut Vec<String>) {
    for page in [Page::Design, Page::Plan, Page::Sources] {
        for stage in if page == Page::Design { &Stage::ALL[..] } else { &Stage::ALL[..1] } {
            harness.state_mut().view.page = page;
            harness.state_mut().view.station = *stage;
            settled(harness);
            found.extend(cut(harness).into_iter().map(|text| format!("{what}, {page:?}, {stage:?}: {text}")));
        }
    }
}

#[test]
fn no_text_is_cut_of_one_design() {
    let mut found = Vec::new();
    // The longest words: a serious warning at nearly every stage, and figures that are words.
    for (name, sizes) in [("unsoured-vat", &SIZES[..]), ("own-carton", &SIZES[3..])] {
        for size in sizes {
            check(&mut shown(example(name), *size, Theme::Light), &format!("{name} at {size:?}"), &mut found);
        }
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn no_text_is_cut_in_a_log() {
    let mut found = Vec::new();
    for size in SIZES {
        let folder = tempfile::tempdir().unwrap();
        let mut harness = begun(folder.path(), size, Theme::Light);
        morning(&mut harness);
        harness.state_mut().view.log.at = Some(jiff::civil::date(2031, 5, 5).at(7, 40, 0, 0));
        // A reason why something is refused is the longest text beside a box.
        typed(&mut harness, "Temperature of the milk", "much too hot");
        harness.get_by_label_contains("write a number");
        found.extend(cut(&harness).into_iter().map(|text| format!("a log at {size:?}: {text}")));
        let mut harness = under_way(folder.path(), size, Theme::Light);
        found.extend(cut(&harness).into_iter().map(|text| format!("what comes next at {size:?}: {text}")));
        harness.get_by_label("Read in a probe’s file…").click_accesskit();
        settled(&mut harness);
        type_path(&mut harness, &probe_table(folder.path()));
        settled(&mut harness);
        found.extend(cut(&harness).into_iter().map(|text| format!("a probe's table at {size:?}: {text}")));
        let harness = invented(size, Theme::Light);
        found.extend(cut(&harness).into_iter().map(|text| format!("all batches at {size:?}: {text}")));
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn no_text_is_cut_of_two_designs() {
    let mut found = Vec::new();
    for size in SIZES {
        let mut harness = shown(example("warm-cabinet"), size, Theme::Light);
        about_second(&mut harness, "The same vat from sheep's milk");
        check(&mut harness, &format!("two at {size:?}"), &mut found);
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}
