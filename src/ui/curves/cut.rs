//! The cut through a cheese: a picture of moisture, salt or pH, with a slider for the hour.

use crate::batch::Batch;
use crate::curve::{Section, SectionKey, growth_words, section, telling_share};
use crate::design::Unit;
use crate::process::GermLine;
use crate::ui::state::ask::Ask;
use crate::ui::state::cut::CutView;
use crate::ui::widget::limits::Limits;
use crate::ui::widget::matter::on_scale;
use crate::ui::widget::pill::{pill_ui, pills_ui};
use crate::ui::widget::slider::{SliderMarks, SliderWords, slider_ui};
use crate::ui::widget::theme::{CAPTION, Palette, plain};
use crate::units::Units;
use egui::{Align2, Color32, ComboBox, Key, Pos2, Rect, RichText, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2};

/// Height of the bar that explains the colours, with its numbers.
const SCALE_HEIGHT: f32 = 30.0;
/// Height of the slider, and of the choice of a germ.
const RAIL_HEIGHT: f32 = 24.0;
const CHOOSER_HEIGHT: f32 = 30.0;
/// Height of the list of germs, so that all are in sight.
const LIST_HEIGHT: f32 = 320.0;
/// Gap between the parts.
const GAP: f32 = 3.0;
/// Least height of the picture, and the greatest, above which its scale would stand far from it.
const LEAST_PICTURE: f32 = 40.0;
const MOST_PICTURE: f32 = 260.0;
/// Room for the height of the cheese beside it, and for its width below it.
const BESIDE: f32 = 48.0;
const BELOW: f32 = 20.0;
/// Room around it.
const EDGE: f32 = 4.0;
/// Steps of the slider.
const RAIL_STEP: f64 = 0.02;

/// Draws the picture with what governs it, and says whose it is; returns what is asked for.
pub(in crate::ui) fn cross_section_ui(
    ui: &mut Ui,
    (cut, units): (CutView, Units),
    batch: &Batch,
    whose: &str,
    height: f32,
) -> Vec<Ask> {
    let (mut asks, top) = (Vec::new(), ui.cursor().top());
    ui.spacing_mut().item_spacing.y = GAP;
    // All four next to each other in a narrow window too.
    ui.spacing_mut().button_padding.x = 7.0;
    pills_ui(ui, "Cut through a cheese", |ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        for key in cut.key.next_to() {
            let words = format!("Cut through a cheese: {}", key.title());
            if pill_ui(ui, key.title(), &words, "What the picture shows", (key == cut.key, key == cut.key)) {
                asks.push(Ask::Cut(CutView { key, ..cut }));
            }
        }
    });
    let Some(drawn) = drawn_cut(batch, cut) else {
        ui.label(RichText::new(format!("No {} to show: its stage was not calculated.", cut.key.title())).size(CAPTION));
        return asks;
    };
    // The picture gives what the choices above it take and the lines below it will take.
    let value = units.told(&format!("{:.0} {}", drawn.at_h, cut.key.counted_from()));
    let last = units.in_days(60.0 * drawn.last_h).unwrap_or_else(|| format!("{:.0}", drawn.last_h));
    let below = format!("{whose}after {value}, of {last}");
    let below_height = ui.painter().layout(below.clone(), plain(CAPTION), Color32::GRAY, ui.available_width()).size().y;
    let chooser_height = if cut.key == SectionKey::Germs { CHOOSER_HEIGHT } else { 0.0 };
    let left = height - (ui.cursor().top() - top) - SCALE_HEIGHT - RAIL_HEIGHT - below_height - chooser_height - 6.0 * GAP;
    picture_ui(ui, units, &drawn, left.clamp(LEAST_PICTURE, MOST_PICTURE));
    scale_ui(ui, cut.key);
    let limits = Limits { least: 0.0, most: 1.0, step: RAIL_STEP, whole: false };
    let words = SliderWords { label: "Hour of the cut", value };
    asks.extend(rail_ui(ui, cut, limits, drawn.at_h / drawn.last_h, &words));
    ui.label(RichText::new(below).size(CAPTION).color(Palette::of(ui).soft));
    if let Some(growth) = &drawn.growth {
        asks.extend(germ_ui(ui, cut, growth.line));
    }
    asks
}

/// Draws the rail of the hours with the button that lets them run.
fn rail_ui(ui: &mut Ui, cut: CutView, limits: Limits, share: f64, words: &SliderWords<'_>) -> Vec<Ask> {
    let mut asks = Vec::new();
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 4.0;
        if play_ui(ui, cut.runs) {
            asks.push(Ask::Cut(CutView { runs: !cut.runs, share: Some(share), ..cut }));
        }
        let moved = slider_ui(ui, limits, share, SliderMarks::default(), words);
        asks.extend(moved.to.map(|share| Ask::Cut(CutView { share: Some(share), runs: false, ..cut })));
        let space = moved.response.has_focus() && ui.input(|input| input.key_pressed(Key::Space));
        asks.extend(space.then_some(Ask::Cut(CutView { runs: !cut.runs, share: Some(share), ..cut })));
    });
    asks
}

/// Draws the button that lets the hours run, or stops them; returns whether it was pressed.
fn play_ui(ui: &mut Ui, runs: bool) -> bool {
    let palette = Palette::of(ui);
    let response = ui.add(egui::Button::new("").min_size(vec2(RAIL_HEIGHT + 4.0, RAIL_HEIGHT)));
    let centre = response.rect.center();
    if runs {
        for side in [-3.0, 3.0] {
            ui.painter().rect_filled(Rect::from_center_size(centre + vec2(side, 0.0), vec2(3.0, 10.0)), 0, palette.text);
        }
    } else {
        let corners = vec![centre + vec2(-4.0, -5.5), centre + vec2(5.5, 0.0), centre + vec2(-4.0, 5.5)];
        ui.painter().add(Shape::convex_polygon(corners, palette.text, Stroke::NONE));
    }
    let words = if runs { "Cut through a cheese: pause" } else { "Cut through a cheese: play the hours" };
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, words));
    response.on_hover_text(if runs { "Pause" } else { "Play from this hour, or from the start if it is at the end" }).clicked()
}

/// Draws the choice of the germ whose growth is shown.
fn germ_ui(ui: &mut Ui, cut: CutView, shown: GermLine) -> Option<Ask> {
    let mut chosen = cut.germ;
    let words = |germ: Option<GermLine>| match germ {
        Some(line) => line.short_name().to_owned(),
        None => format!("Grows furthest: {}", shown.short_name()),
    };
    let shown_words = if cut.germ.is_some() { shown.short_name().to_owned() } else { words(None) };
    let list = ComboBox::from_id_salt("germ of the cut")
        .selected_text(RichText::new(&shown_words).size(CAPTION))
        .width(ui.available_width())
        .height(LIST_HEIGHT);
    let response = list
        .show_ui(ui, |ui| {
            ui.selectable_value(&mut chosen, None, "The germ that could grow furthest");
            for line in GermLine::ALL {
                ui.selectable_value(&mut chosen, Some(line), line.name());
            }
        })
        .response;
    response.widget_info(|| WidgetInfo::labeled(Role::ComboBox, true, format!("Germ in the cut: {shown_words}")));
    (chosen != cut.germ).then_some(Ask::Cut(CutView { germ: chosen, ..cut }))
}

/// Returns what the cut shows; none where its stage was not calculated.
pub(in crate::ui) fn drawn_cut(batch: &Batch, cut: CutView) -> Option<Section> {
    section(batch, cut.key, moment(batch, cut), cut.germ)
}

/// Returns the moment that the cut shows, as a share of the hours that it knows.
pub(in crate::ui) fn moment(batch: &Batch, cut: CutView) -> f64 {
    cut.share.unwrap_or_else(|| telling_share(batch, cut.key, cut.germ))
}

/// Draws the cut to scale, the cheese as it was at the start as a thin frame around it.
fn picture_ui(ui: &mut Ui, units: Units, drawn: &Section, height: f32) {
    let palette = Palette::of(ui);
    let [wide, high] = [drawn.radii_mm.last().map(|radius| 2.0 * radius), drawn.heights_mm.last().copied()];
    // In the vinegar it may have grown.
    let (start_wide_mm, start_high_mm) = drawn.size_at_start_mm;
    let (width_mm, height_mm) = (start_wide_mm.max(wide.unwrap_or(0.0)), start_high_mm.max(high.unwrap_or(0.0)));
    // Its height is written to the right of it, its width below it.
    let per_mm = ((ui.available_width() - BESIDE - EDGE) / width_mm as f32).min((height - BELOW - 2.0 * EDGE) / height_mm as f32);
    let taken = per_mm * height_mm as f32 + BELOW + 2.0 * EDGE;
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), taken), Sense::hover());
    let floor = pos2(rect.center().x + 0.5 * (EDGE - BESIDE), rect.top() + EDGE + per_mm * height_mm as f32);
    let at = |radius_mm: f64, height_mm: f64| floor + per_mm * vec2(radius_mm as f32, -height_mm as f32);
    let frame = Rect::from_min_max(at(-0.5 * width_mm, height_mm), at(0.5 * width_mm, 0.0));
    let at_start = Rect::from_min_max(at(-0.5 * start_wide_mm, start_high_mm), at(0.5 * start_wide_mm, 0.0));
    ui.painter().rect_stroke(at_start, 0, Stroke::new(1.0, palette.grid), egui::StrokeKind::Outside);
    let name = |at: Pos2, anchor: Align2, mm: Option<f64>| {
        let words = mm.map(|mm| units.text(Unit::Millimetre, mm, 0).unwrap_or_else(|| format!("{mm:.0} mm")));
        ui.painter().text(at, anchor, words.unwrap_or_default(), plain(CAPTION), palette.soft);
    };
    name(pos2(frame.right() + 5.0, frame.center().y), Align2::LEFT_CENTER, high);
    name(pos2(frame.center().x, frame.bottom() + 1.0), Align2::CENTER_TOP, wide);
    for side in [-1.0, 1.0] {
        let place = |radius: usize, layer: usize| Some(at(side * drawn.radii_mm.get(radius)?, *drawn.heights_mm.get(layer)?));
        ui.painter().add(Shape::mesh(mesh(drawn, &place)));
        for line in drawn.key.lines() {
            for (from, to) in level_line(drawn, *line, &place) {
                ui.painter().line_segment([from, to], Stroke::new(1.5, Color32::from_rgb(30, 27, 24)));
            }
        }
    }
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, &drawn.in_words));
    let pointed = response.hover_pos().and_then(|pointer| {
        let from_floor = (pointer - floor) / per_mm;
        growth_at(drawn, f64::from(from_floor.x.abs()), f64::from(-from_floor.y))
    });
    response.on_hover_text_at_pointer(pointed.as_deref().unwrap_or(&drawn.in_words));
}

/// Returns what a germ could do at the place that is nearest to a point in the cheese; none beside the cheese, and where no germs are shown.
fn growth_at(drawn: &Section, radius_mm: f64, height_mm: f64) -> Option<String> {
    let growth = drawn.growth.as_ref()?;
    let nearest = |nodes: &[f64], at: f64| {
        let inside = nodes.first().is_some_and(|least| at >= *least) && nodes.last().is_some_and(|most| at <= *most);
        let apart = |node: &f64| (node - at).abs();
        let near = nodes.iter().enumerate().min_by(|one, other| apart(one.1).total_cmp(&apart(other.1)));
        near.filter(|_| inside).map(|(index, mm)| (index, *mm))
    };
    let ((radius, from_axis_mm), (layer, above_mm)) =
        (nearest(&drawn.radii_mm, radius_mm)?, nearest(&drawn.heights_mm, height_mm)?);
    let (log10, now) = growth.places.get(radius * drawn.heights_mm.len() + layer)?;
    Some(format!(
        "{}, {from_axis_mm:.0} mm from the axis, {above_mm:.0} mm above the underside: {}.",
        growth.line.name(),
        growth_words(*log10, now)
    ))
}

/// Returns one half of the cut as coloured triangles.
fn mesh(drawn: &Section, place: &dyn Fn(usize, usize) -> Option<Pos2>) -> egui::Mesh {
    let mut mesh = egui::Mesh::default();
    let layers = drawn.heights_mm.len();
    for radius in 0..drawn.radii_mm.len() {
        for layer in 0..layers {
            let value = drawn.values.get(radius * layers + layer).copied().unwrap_or(0.0);
            mesh.colored_vertex(place(radius, layer).unwrap_or(Pos2::ZERO), on_scale(drawn.key, value));
        }
    }
    for radius in 1..drawn.radii_mm.len() {
        for layer in 1..layers {
            let [inner, outer] = [radius - 1, radius].map(|radius| (radius * layers + layer) as u32);
            mesh.add_triangle(inner - 1, inner, outer);
            mesh.add_triangle(inner - 1, outer, outer - 1);
        }
    }
    mesh
}

/// Returns the pieces of the line on which the quantity has a value: each triangle that it crosses gives one.
fn level_line(drawn: &Section, level: f64, place: &dyn Fn(usize, usize) -> Option<Pos2>) -> Vec<(Pos2, Pos2)> {
    let layers = drawn.heights_mm.len();
    let corner = |radius: usize, layer: usize| {
        let value = drawn.values.get(radius * layers + layer)?;
        Some((place(radius, layer)?, value - level))
    };
    let mut pieces = Vec::new();
    for radius in 1..drawn.radii_mm.len() {
        for layer in 1..layers {
            let corners = [(radius - 1, layer - 1), (radius - 1, layer), (radius, layer), (radius, layer - 1)];
            let [Some(a), Some(b), Some(c), Some(d)] = corners.map(|(radius, layer)| corner(radius, layer)) else { continue };
            for triangle in [[a, b, c], [a, c, d]] {
                let [one, two, three] = triangle;
                let crossed: Vec<Pos2> = [(one, two), (two, three), (three, one)]
                    .into_iter()
                    .filter(|((_, from), (_, to))| (*from < 0.0) != (*to < 0.0))
                    .map(|((start, from), (end, to))| start + (end - start) * (from / (from - to)) as f32)
                    .collect();
                if let [from, to] = crossed.as_slice() {
                    pieces.push((*from, *to));
                }
            }
        }
    }
    pieces
}

/// Draws the bar that explains the colours: its ends, and the values whose lines are drawn.
fn scale_ui(ui: &mut Ui, key: SectionKey) {
    let palette = Palette::of(ui);
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), SCALE_HEIGHT), Sense::hover());
    let (least, most) = key.scale();
    let bar = Rect::from_min_size(rect.min + vec2(8.0, 2.0), vec2(rect.width() - 16.0, 8.0));
    let x = |value: f64| bar.left() + ((value - least) / (most - least)) as f32 * bar.width();
    let mut mesh = egui::Mesh::default();
    for step in 0..=24_u32 {
        let value = least + (most - least) * f64::from(step) / 24.0;
        mesh.colored_vertex(pos2(x(value), bar.top()), on_scale(key, value));
        mesh.colored_vertex(pos2(x(value), bar.bottom()), on_scale(key, value));
        if step > 0 {
            mesh.add_triangle(2 * step - 2, 2 * step - 1, 2 * step);
            mesh.add_triangle(2 * step - 1, 2 * step, 2 * step + 1);
        }
    }
    ui.painter().add(Shape::mesh(mesh));
    let name = |value: f64, anchor: Align2, unit: &str| {
        let words = if unit.is_empty() { format!("{value}") } else { format!("{value} {unit}") };
        ui.painter().text(pos2(x(value), bar.bottom() + 1.0), anchor, words, plain(CAPTION), palette.soft);
    };
    name(least, Align2::LEFT_TOP, "");
    name(most, Align2::RIGHT_TOP, key.unit());
    for line in key.lines() {
        name(*line, Align2::CENTER_TOP, "");
        ui.painter().vline(x(*line), bar.y_range(), Stroke::new(1.5, palette.text));
    }
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, format!("Colours from {least} to {most} {}", key.unit())));
}
