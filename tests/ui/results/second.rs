//! Two designs in the window, by accessible label.

use crate::ui::{about_second, example, shown, shown_window, type_path};
use egui::accesskit::Role;
use egui::{Key, Modifiers, Theme};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use vatsketch::analysis::{Likeness, MilkStandardisation};
use vatsketch::design::{Design, MilkKind, Stage, Value};
use vatsketch::file;
use vatsketch::session::{Command, Recovery, Session};
use vatsketch::ui::Window;
use vatsketch::units::{Temperatures, Units};

const SIZE: [f32; 2] = [1296.0, 816.0];
const SHEEP: &str = "The same vat from sheep's milk";

fn with_sheep() -> Harness<'static, Window> {
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    about_second(&mut harness, SHEEP);
    harness
}

fn second(harness: &Harness<'_, Window>) -> Option<Design> {
    harness.state().session.second().map(|second| second.design().clone())
}

fn click(harness: &mut Harness<'_, Window>, label: &str) {
    harness.get_by_label(label).click_accesskit();
    harness.run();
}

/// In which respect two milks are to be like is asked, never assumed.
#[test]
fn what_is_to_be_the_same_of_another_milk_is_asked() {
    for (answer, litres_differ, moulds_differ) in [
        ("The same litres of milk: no cream or skimmed milk is added", false, false),
        ("The same weight of curd: the litres change", true, false),
        ("The same size of a cheese: the number of moulds changes", false, true),
    ] {
        let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
        click(&mut harness, "Compare");
        harness.get_by_label_contains(SHEEP).click_accesskit();
        harness.run();
        assert!(second(&harness).is_none(), "it is asked first");
        click(&mut harness, answer);
        let (a, b) = (harness.state().session.design().clone(), second(&harness).unwrap());
        assert_eq!(
            (a.milk.milk_l != b.milk.milk_l, a.draining.mould_count != b.draining.mould_count),
            (litres_differ, moulds_differ)
        );
    }
}

#[test]
fn the_same_vat_from_sheeps_milk_stands_beside_the_first() {
    let harness = with_sheep();
    assert_eq!(second(&harness).unwrap().milk.milk_kind, MilkKind::Sheep);
    assert_eq!(harness.state().session.design().milk.milk_kind, MilkKind::Cow);
    assert!(!harness.state().session.is_dirty());
    // Figures in columns, both runs, both curves, both foots.
    harness.get_by_label_contains("Cream to add: A 228 g, B 0 g, B − A −228 g");
    harness.get_by_label_contains("A: Vat: 5.56 kg with ");
    harness.get_by_label_contains("B: Vat: ");
    harness.get_by_label_contains("A: Warming: the milk is warm enough for the rennet after 36 min");
    harness.get_by_label_contains(", 12 cheeses, each 70 g");
    harness.get_by_label_contains("B: 7 serious warnings, 12 cheeses, each ");
}

/// Every figure that the session compares is drawn, in the words of the library.
#[test]
fn every_main_figure_has_its_columns_and_says_where_the_model_cannot_tell() {
    for stage in Stage::ALL {
        let mut harness = with_sheep();
        harness.state_mut().view.station = stage;
        harness.run();
        let differences = harness.state().session.differences();
        let of_stage = differences
            .iter()
            .filter(|figure| figure.stage == stage && figure.weight == vatsketch::figure::Weight::Lead && figure.change.is_some());
        for figure in of_stage {
            let start = format!("{}: A {}, B {}, ", figure.label, figure.a_text(Units::METRIC), figure.b_text(Units::METRIC));
            let label = harness.query_all_by_label_contains(&start).next().and_then(|node| node.accesskit_node().label());
            let label = label.unwrap_or_else(|| panic!("no row begins with “{start}”"));
            assert!(label.contains(&format!("B − A {}", figure.change_text(Units::METRIC))), "{label}");
        }
        if stage == Stage::Vat {
            let unsure =
                differences.iter().find(|figure| figure.likeness == Likeness::WithinSpread && figure.key == "to_rennet_min");
            assert!(unsure.is_some(), "warming of 36 and 45 minutes is within a spread of 25 %");
        }
    }
}

#[test]
fn a_choice_is_taken_over_and_given_each_time_as_one_step() {
    let mut harness = with_sheep();
    click(&mut harness, "Kind of milk: use B's, Sheep");
    assert_eq!(harness.state().session.design().milk.milk_kind, MilkKind::Sheep);
    assert!(harness.query_by_label("Kind of milk: use B's, Sheep").is_none(), "nothing differs any more");
    harness.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    harness.run();
    assert_eq!(harness.state().session.design().milk.milk_kind, MilkKind::Cow);
    click(&mut harness, "Kind of milk: copy A's to B, Cow");
    assert_eq!(second(&harness).unwrap().milk.milk_kind, MilkKind::Cow);
    assert_eq!(harness.state().session.history().undo_name(), Some("B: Kind of milk Sheep → Cow"));
    assert!(harness.state().session.last_change.contains("B: Kind of milk Sheep → Cow"));
}

/// The open air has a day that a cabinet has no use for.
#[test]
fn what_only_the_second_design_uses_is_shown_too() {
    let mut session = example("warm-cabinet");
    session.second_from_first().unwrap();
    session.swap_second().unwrap();
    session.apply(Command::SetInput { key: "drying_place", value: Value::Choice("open_air") }).unwrap();
    session.apply(Command::SetInput { key: "day_temperature_c", value: Value::Number(31.0) }).unwrap();
    session.swap_second().unwrap();
    let mut harness = shown(session, SIZE, Theme::Light);
    harness.state_mut().view.station = Stage::Drying;
    harness.run();
    harness.get_by_label("Temperature by day, only in B");
    assert!(harness.query_all_by_label_contains("use B's, 31 °C").count() == 1);
}

#[test]
fn a_swap_is_taken_back_with_one_key() {
    let mut harness = with_sheep();
    about_second(&mut harness, "Swap A and B");
    assert_eq!(harness.state().session.design().milk.milk_kind, MilkKind::Sheep);
    assert!(harness.state().session.before().is_none(), "a ghost would lie on B's curve");
    harness.get_by_label_contains("Milk in the vat: A 10.08 L, B 6.23 L, B − A −3.85 L");
    harness.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    harness.run();
    harness.get_by_label_contains("Cream to add: A 228 g, B 0 g, B − A −228 g");
}

#[test]
fn an_unsaved_second_design_is_asked_about_before_it_is_put_away() {
    let mut harness = with_sheep();
    about_second(&mut harness, "Close B");
    click(&mut harness, "Cancel");
    assert!(second(&harness).is_some());
    about_second(&mut harness, "Compare with a copy of A");
    click(&mut harness, "Discard");
    assert_eq!(second(&harness).unwrap().milk.milk_kind, MilkKind::Cow);
    about_second(&mut harness, "Close B");
    click(&mut harness, "Discard");
    assert!(second(&harness).is_none());
    harness.get_by_label_contains("Cream to add: 228 g");
}

#[test]
fn the_second_design_is_saved_under_its_own_name_and_opened_again_beside_another() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("beside.vat.ron");
    let mut harness = with_sheep();
    about_second(&mut harness, "Save B");
    type_path(&mut harness, &path);
    assert_eq!(file::read(&path).unwrap().milk.milk_kind, MilkKind::Sheep);
    assert!(harness.state().session.path().is_none(), "the first belongs to no file");
    about_second(&mut harness, "Close B");
    assert!(second(&harness).is_none(), "a saved one is put away without a question");
    about_second(&mut harness, "Compare with a file…");
    type_path(&mut harness, &path);
    assert_eq!(second(&harness).unwrap().milk.milk_kind, MilkKind::Sheep);
}

#[test]
fn putting_away_after_saving_goes_on_by_itself() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("beside.vat.ron");
    let mut harness = with_sheep();
    about_second(&mut harness, "Close B");
    click(&mut harness, "Save");
    type_path(&mut harness, &path);
    assert!(path.exists() && second(&harness).is_none());
}

#[test]
fn the_page_of_the_milk_says_what_cream_cannot_mend() {
    let mut harness = with_sheep();
    let said: MilkStandardisation = {
        let session = &harness.state().session;
        vatsketch::analysis::standardisation(session.batch(), session.second().unwrap().batch()).unwrap()
    };
    harness.get_by_label("The milk of A against the milk of B");
    for line in said.in_words(Units::METRIC) {
        harness.get_by_label(&line);
    }
    harness.get_by_label_contains("Casein in the milk in the vat: A 2.40 %, B 4.65 %, B − A +2.25 %");
    harness.state_mut().view.station = Stage::Vat;
    harness.run();
    assert!(harness.query_by_label("The milk of A against the milk of B").is_none());
    harness.get_by_label("Whey from the moulds");
}

#[test]
fn alike_milk_has_nothing_to_mend_and_keeps_the_curve() {
    let mut harness = shown(example("warm-cabinet"), SIZE, Theme::Light);
    about_second(&mut harness, "Compare with a copy of A");
    assert!(harness.query_by_label("The milk of A against the milk of B").is_none());
    harness.get_by_label("Whey from the moulds");
}

#[test]
fn the_table_of_a_curve_has_the_columns_of_both() {
    let mut harness = with_sheep();
    click(&mut harness, "Drying loss: show as a table");
    harness.get_by_label("A: middle tray, %");
    harness.get_by_label("B: middle tray, %");
}

fn hottest(harness: &Harness<'_, Window>) -> f64 {
    harness.state().session.batch().vat.done().unwrap().bath_most_c
}

#[test]
fn degrees_fahrenheit_apart_are_no_degrees_from_freezing() {
    let mut session = example("warm-cabinet");
    session.second_from_first().unwrap();
    session.apply(Command::SetInput { key: "draining_temperature_c", value: Value::Number(10.0) }).unwrap();
    session.apply(Command::SetInput { key: "bath_set_temperature_c", value: Value::Number(36.5) }).unwrap();
    let mut harness = shown(session, SIZE, Theme::Light);
    harness.state_mut().view.units.temperatures = Temperatures::Fahrenheit;
    harness.state_mut().view.station = Stage::Vat;
    harness.run();
    click(&mut harness, "More about the vat");
    let differences = harness.state().session.differences();
    let change = differences.iter().find(|figure| figure.key == "bath_most_c").and_then(|figure| figure.change).unwrap();
    assert!(change > 0.5);
    // A kitchen reads whole degrees Fahrenheit.
    let said = format!("Hottest bath: A {:.0} °F, B ", 1.8 * hottest(&harness) + 32.0);
    let row = harness.query_all_by_label_contains(&said).next().and_then(|node| node.accesskit_node().label());
    assert!(row.as_ref().is_some_and(|row| row.contains(&format!("B − A +{:.0} °F", 1.8 * change))), "{row:?}");
}

#[test]
fn a_stage_that_failed_in_one_design_says_so_and_the_other_is_drawn() {
    let mut session = example("warm-cabinet");
    session.second_from_first().unwrap();
    session.apply(Command::SetInput { key: "mould_count", value: Value::Number(1.0) }).unwrap();
    let mut harness = shown(session, SIZE, Theme::Light);
    harness.state_mut().view.station = Stage::Draining;
    harness.run();
    assert!(harness.query_all_by_label_contains("A: not calculated: ").count() > 0);
    harness.get_by_label_contains("B: Drying loss: after 34 h");
    harness.get_by_label_contains("no A: waits for");
}

#[test]
fn cautions_say_whose_they_are() {
    let harness = with_sheep();
    assert!(harness.query_all_by_label("only in B").count() > 0);
    assert!(harness.query_all_by_label("in A and B").count() > 0);
    harness.get_by_label_contains("only in A, ");
}

#[test]
fn every_control_still_has_a_name_with_two_designs_and_all_fits_a_narrow_window() {
    for size in [SIZE, [736.0, 1016.0], [656.0, 416.0]] {
        let mut harness = shown(Session::open(Design::default(), None).unwrap(), size, Theme::Dark);
        about_second(&mut harness, SHEEP);
        for node in harness.root().children_recursive() {
            let node = node.accesskit_node();
            if matches!(node.role(), Role::Slider | Role::Button | Role::RadioButton | Role::CheckBox | Role::TextInput) {
                assert!(node.label().is_some_and(|label| !label.is_empty()), "a {:?} has no name", node.role());
            }
        }
        let pages = harness.get_by_label("Page Design").rect();
        let title = harness.get_by_label("Title of the design").rect();
        let apart = title.right() <= pages.left() || title.top() >= pages.bottom();
        assert!(apart, "{size:?}: {title:?} runs into {pages:?}");
    }
}

/// The program ended while only the second design was unsaved.
#[test]
fn a_second_design_that_was_left_behind_is_offered_again() {
    let folder = tempfile::tempdir().unwrap();
    let left = Design { title: "Left behind".into(), ..Design::default() };
    let mut session = Session::open(left.clone(), None).unwrap();
    session.second_from_first().unwrap();
    Recovery::in_folder(folder.path()).keep(session.open_designs()).unwrap();
    let window = Window::with_folders(example("warm-cabinet"), folder.path(), folder.path());
    let mut harness = shown_window(window, SIZE, Theme::Light);
    harness.get_by_label_contains("“Left behind”, changed last on ");
    click(&mut harness, "Recover");
    assert_eq!(second(&harness), Some(left));
    assert!(!harness.state().session.is_dirty());
}

#[test]
fn two_designs_are_written_side_by_side_as_pdf() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("both.pdf");
    let mut harness = with_sheep();
    about_second(&mut harness, "Save A and B side by side as PDF…");
    type_path(&mut harness, &file);
    crate::ui::settled(&mut harness);
    if cfg!(feature = "paper") {
        assert!(std::fs::read(&file).unwrap().starts_with(b"%PDF-"));
        assert!(harness.state().session.last_change.contains("side by side saved as"), "{}", harness.state().session.last_change);
    } else {
        assert!(!file.exists());
    }
}
