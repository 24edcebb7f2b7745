//! Curves as pictures: the lines read by a reader of XML, the pixels by a decoder of PNG, neither of which shares code with the writers.

use crate::report::sample;
use roxmltree::{Document, Node};
use vatsketch::batch::batch;
use vatsketch::curve::{Curve, CurveKey, Event, curve};
use vatsketch::design::Design;
use vatsketch::export::{ExportError, curve_png, curve_svg};
use vatsketch::words::FROM_A_MODEL;

fn all() -> Vec<Curve> {
    let batch = batch(&Design::default()).unwrap();
    CurveKey::ALL.into_iter().map(|key| curve(&batch, key)).chain(sample::curves()).collect()
}

/// Whether a path is a line of the curve: those are black, and 1.6 or 1.1 points thick; nothing else is.
fn is_line(node: &Node<'_, '_>) -> bool {
    node.has_tag_name("path")
        && node.attribute("stroke") == Some("#000000")
        && matches!(node.attribute("stroke-width"), Some("1.6" | "1.1"))
}

#[test]
fn the_svg_has_a_title_words_and_a_path_for_each_line_and_band() {
    for figure in all() {
        let svg = curve_svg(&figure).unwrap();
        let read = Document::parse(&svg).unwrap();
        let root = read.root_element();
        assert_eq!(root.tag_name().namespace(), Some("http://www.w3.org/2000/svg"));
        let text = |tag: &str| root.children().find(|node| node.has_tag_name(tag)).and_then(|node| node.text()).unwrap_or_default();
        assert_eq!(text("title"), figure.title);
        assert!(root.first_element_child().unwrap().has_tag_name("title"), "SVG 2, 5.8: the title comes first");
        let words = text("desc");
        assert!(words.contains(&figure.in_words) && words.contains(figure.x.label) && words.contains(figure.y.label), "{words}");
        assert!(words.ends_with(FROM_A_MODEL), "{words}");
        assert!(figure.series.iter().all(|series| words.contains(series.name)), "{words}");
        assert!(figure.events.iter().all(|event| words.contains(event.name)), "{words}");
        assert_eq!(read.descendants().filter(is_line).count(), figure.series.len(), "{}", figure.title);
        let shaded = |node: &Node<'_, '_>| node.attribute("fill") == Some("#d7d7d7");
        assert_eq!(read.descendants().filter(shaded).count(), figure.bands.len(), "{}", figure.title);
        // Named by those two, and an image to a screen reader (WAI-ARIA 1.2, role img).
        assert_eq!((root.attribute("role"), root.attribute("aria-labelledby")), (Some("img"), Some("title desc")));
    }
}

#[test]
fn the_svg_needs_nothing_from_outside() {
    let svg = curve_svg(&all()[0]).unwrap();
    let read = Document::parse(&svg).unwrap();
    let ids: Vec<&str> = read.descendants().filter_map(|node| node.attribute("id")).collect();
    for node in read.descendants() {
        for attribute in node.attributes().filter(|attribute| attribute.name() == "href") {
            let target = attribute.value().strip_prefix('#').expect("a link inside the file");
            assert!(ids.contains(&target), "{target} is not in the file");
        }
    }
    assert!(!svg.contains("<script") && !svg.contains("<image"));
}

#[test]
fn words_that_look_like_markup_stay_words() {
    let figure = Curve { in_words: "5 < 6 & \"7\" > 4 ]]> <b>".to_owned(), ..sample::curves().remove(0) };
    let svg = curve_svg(&figure).unwrap();
    let read = Document::parse(&svg).unwrap();
    let words = read.descendants().find(|node| node.has_tag_name("desc")).and_then(|node| node.text()).unwrap();
    assert!(words.starts_with(&figure.in_words), "{words}");
}

#[test]
fn the_png_is_wide_enough_for_a_page_and_has_ink_in_it() {
    for figure in all() {
        let picture = image::load_from_memory(&curve_png(&figure).unwrap()).unwrap().to_rgba8();
        assert!(picture.width() >= 1600 && picture.height() >= 800, "{} × {}", picture.width(), picture.height());
        assert!(picture.pixels().all(|pixel| pixel.0[3] == 255), "white paper lies behind");
        let dark = picture.pixels().filter(|pixel| pixel.0[0] < 64).count();
        let share = dark as f64 / picture.pixels().len() as f64;
        // Lines and letters: more than a frame alone, and far from a black sheet.
        assert!((0.003..0.1).contains(&share), "{}: {share} of it is dark", figure.title);
    }
}

#[test]
fn another_curve_is_another_picture_and_the_same_curve_the_same() {
    let figures = all();
    assert!(curve_png(&figures[0]).unwrap() == curve_png(&figures[0]).unwrap(), "two runs differ");
    assert!(curve_svg(&figures[0]).unwrap() == curve_svg(&figures[0]).unwrap(), "two runs differ");
    let moved = Curve { events: vec![Event { name: "rennet", at: 3.0 }], ..figures[0].clone() };
    assert!(curve_png(&figures[0]).unwrap() != curve_png(&moved).unwrap());
}

#[test]
fn a_curve_that_is_not_there_is_refused() {
    let empty = curve(&sample::failed(), CurveKey::Warming);
    assert!(matches!(curve_svg(&empty), Err(ExportError::NoCurve { .. })));
    assert!(matches!(curve_png(&empty), Err(ExportError::NoCurve { .. })));
}
