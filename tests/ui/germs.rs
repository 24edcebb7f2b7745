//! The germs of a design in the window: the curve, the cut and the table at the jar.

use crate::ui::{about_second, example, settled, shown};
use egui::Theme;
use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use vatsketch::curve::{CurveKey, SectionKey};
use vatsketch::design::Stage;
use vatsketch::process::GermLine;
use vatsketch::ui::{CutView, Window};
use vatsketch::words::POTENTIAL_GROWTH;

/// The least window, with the frame of the test around it.
const SIZE: [f32; 2] = [1296.0, 816.0];

/// Where the curves are in it: right of the choices, left of the results, above the foot.
const CURVES: egui::Rect = egui::Rect { min: egui::pos2(336.0, 168.0), max: egui::pos2(976.0, 726.0) };

/// Returns the window of an example at the jar, its cut showing germs.
fn at_jar(name: &str) -> Harness<'static, Window> {
    let mut harness = shown(example(name), SIZE, Theme::Light);
    harness.state_mut().view.station = Stage::Keeping;
    harness.state_mut().view.cut = CutView { key: SectionKey::Germs, share: Some(0.03), runs: false, germ: None };
    harness.run();
    harness
}

#[test]
fn what_potential_growth_leaves_out_is_said_wherever_germs_are_shown() {
    let mut harness = at_jar("warm-cabinet");
    // Under curve and cut, and in the results.
    assert!(harness.query_all_by_label(POTENTIAL_GROWTH).count() >= 2);
    harness.state_mut().view.table = Some(CurveKey::Germs);
    harness.run();
    assert!(harness.query_all_by_label(POTENTIAL_GROWTH).count() >= 2, "under the table");
    harness.state_mut().view.card = Some(vatsketch::ui::CardView::of("listeria_log10"));
    settled(&mut harness);
    assert!(harness.query_all_by_label(POTENTIAL_GROWTH).count() >= 2, "on the card of the figure");
    let mut harness = at_jar("warm-cabinet");
    harness.state_mut().view.station = Stage::Vat;
    harness.run();
    assert!(harness.query_all_by_label(POTENTIAL_GROWTH).count() <= 1, "nor where no germs are shown");
}

#[test]
fn everything_at_the_jar_is_in_sight_in_the_least_window() {
    for name in ["warm-cabinet", "first-vat"] {
        let harness = at_jar(name);
        let said = harness.query_all_by_label(POTENTIAL_GROWTH).find(|node| CURVES.contains(node.rect().center())).unwrap();
        assert!(CURVES.contains_rect(said.rect()), "{:?} in {CURVES:?}", said.rect());
        let plot = harness.get_by_label_contains("Potential growth at the worst place by the end").rect();
        assert!(plot.height() > 100.0, "the curve is {} high", plot.height());
        let [one, last] = [SectionKey::Moisture, SectionKey::Germs]
            .map(|key| harness.get_by_label(&format!("Cut through a cheese: {}", key.title())).rect());
        assert!((one.center().y - last.center().y).abs() < 1.0, "the choices of the cut are in one line");
    }
}

#[test]
fn the_growth_at_centre_and_rim_is_in_words_and_another_germ_can_be_chosen() {
    let mut harness = at_jar("warm-cabinet");
    let centre = |harness: &Harness<'_, Window>| {
        let mut words = harness.root().children_recursive().filter_map(|node| {
            let node = node.accesskit_node();
            node.label().or_else(|| node.value())
        });
        words.find(|words| words.starts_with("Centre: ") || words.starts_with("Centre and rim: ")).unwrap()
    };
    assert!(
        centre(&harness).contains("could grow tenfold in") || centre(&harness).contains("no growth foreseen"),
        "{}",
        centre(&harness)
    );
    assert!(centre(&harness).contains("held back most by"));
    let before = centre(&harness);
    harness.get_by_label_contains("Germ in the cut").click();
    harness.run();
    harness.get_by_label(GermLine::ColdBotulinum.name()).click_accesskit();
    harness.run();
    assert_eq!(harness.state().view.cut.germ, Some(GermLine::ColdBotulinum));
    assert_ne!(centre(&harness), before);
    harness.get_by_label_contains("Potential growth of Clostridium botulinum, cold type in a cheese");
}

#[test]
fn the_pointer_in_the_cut_is_told_what_holds_growth_back_there() {
    let mut harness = at_jar("warm-cabinet");
    let cut = harness.get_by_label_contains("in a cheese cut through the middle").rect();
    harness.hover_at(cut.center());
    // A tip comes after a moment.
    harness.run_steps(60);
    harness.get_by_label_contains("mm from the axis");
}

#[test]
fn germ_by_stage_is_the_table_of_the_curve() {
    let mut harness = at_jar("first-vat");
    harness.get_by_label("Growth of germs: show as a table").click();
    harness.run();
    harness.get_by_role_and_label(Role::Table, "Tenfold steps in each stage");
    let last = harness.get_by_label("In all").rect();
    assert!(CURVES.contains_rect(last), "no sideways scrolling: {last:?}");
    for heading in ["Germ", "Vat", "Moulds", "Drying", "Vinegar", "In all"] {
        assert!(harness.query_all_by_label(heading).count() > 0, "{heading}");
    }
    for line in GermLine::ALL {
        assert!(harness.query_all_by_label(line.short_name()).count() > 0, "{}", line.short_name());
    }
    harness.get_by_label_contains("Its warning rests on");
    harness.get_by_label_contains("Hours in which warm-type botulinum could grow without air: ");
}

#[test]
fn with_two_designs_there_is_a_table_of_each() {
    let mut harness = at_jar("warm-cabinet");
    about_second(&mut harness, "The same vat from sheep's milk");
    harness.state_mut().view.table = Some(CurveKey::Germs);
    settled(&mut harness);
    for whose in ["A", "B"] {
        harness.get_by_role_and_label(Role::Table, &format!("{whose}: Tenfold steps in each stage"));
    }
}
