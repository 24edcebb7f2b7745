//! Tiles to choose one from: a heading, a picture, a few lines, and how many warnings there are.

use crate::caution::Severity;
use crate::session::ExampleCard;
use crate::ui::help::picture::{HIGH, picture};
use crate::ui::widget::severity::sign_at;
use crate::ui::widget::theme::{BODY, CAPTION, Palette, bold, plain};
use egui::{Color32, CornerRadius, Galley, Pos2, Role, Sense, Stroke, StrokeKind, Ui, WidgetInfo, vec2};
use std::sync::Arc;

/// Gap between tiles, and from the edge of one to what is in it.
const BETWEEN: f32 = 10.0;
const INSIDE: f32 = 10.0;
/// Gap between two lines, the room of a sign before its words, and the height of the two.
const LEADING: f32 = 3.0;
const SIGN: f32 = 26.0;
const COUNT: f32 = 22.0;

/// One tile.
pub(in crate::ui) struct Tile<'a> {
    /// Its heading.
    pub(in crate::ui) title: &'a str,
    /// What it is, before its heading for a reader of the screen.
    pub(in crate::ui) kind: &'a str,
    /// The cheese that it shows, with the scale of all; room for one where it is not calculated yet.
    pub(in crate::ui) picture: Option<(Option<&'a ExampleCard>, f32)>,
    /// Its lines.
    pub(in crate::ui) lines: Vec<String>,
    /// How many warnings there are.
    pub(in crate::ui) counts: Vec<(Severity, String)>,
}

impl Tile<'_> {
    /// Returns all that it says, for a reader of the screen.
    fn name(&self) -> String {
        let counts = self.counts.iter().map(|(_, words)| words.as_str());
        let said: Vec<&str> = self.lines.iter().map(String::as_str).chain(counts).collect();
        format!("{}{}: {}", self.kind, self.title, said.join("; "))
    }
}

/// The words of a tile as they are laid out, and the height that it needs.
struct LaidOut {
    title: Arc<Galley>,
    lines: Vec<Arc<Galley>>,
    /// The number of warnings, each with its place below the lines: next to each other where there is room.
    counts: Vec<(Severity, Arc<Galley>, egui::Vec2)>,
    height: f32,
}

/// Returns the width of a tile where so many are in a row.
pub(in crate::ui) fn tile_width(ui: &Ui, columns: usize) -> f32 {
    (ui.available_width() - BETWEEN * (columns as f32 - 1.0)) / columns as f32
}

/// Draws tiles in rows and returns the place of the one that was chosen; those of a row are of one height.
pub(in crate::ui) fn tiles_ui(ui: &mut Ui, tiles: &[Tile<'_>], columns: usize) -> Option<usize> {
    let width = tile_width(ui, columns);
    let mut chosen = None;
    for (row, tiles) in tiles.chunks(columns).enumerate() {
        let laid_out: Vec<LaidOut> = tiles.iter().map(|tile| lay_out(ui, tile, width)).collect();
        let height = laid_out.iter().map(|words| words.height).fold(0.0, f32::max);
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = BETWEEN;
            for (place, (tile, words)) in tiles.iter().zip(&laid_out).enumerate() {
                if tile_ui(ui, tile, words, vec2(width, height)) {
                    chosen = Some(row * columns + place);
                }
            }
        });
        ui.add_space(BETWEEN - ui.spacing().item_spacing.y);
    }
    chosen
}

fn lay_out(ui: &Ui, tile: &Tile<'_>, width: f32) -> LaidOut {
    let palette = Palette::of(ui);
    let room = width - 2.0 * INSIDE;
    let laid = |words: &str, font, colour, room| ui.painter().layout(words.to_owned(), font, colour, room);
    let title = laid(tile.title, bold(BODY), palette.text, room);
    let lines: Vec<_> = tile.lines.iter().map(|line| laid(line, plain(CAPTION), palette.soft, room)).collect();
    let (mut counts, mut at) = (Vec::new(), vec2(0.0, 0.0));
    for (severity, words) in &tile.counts {
        let words = laid(words, plain(CAPTION), palette.text, room - SIGN);
        if at.x > 0.0 && at.x + SIGN + words.size().x > room {
            at = vec2(0.0, at.y + COUNT);
        }
        counts.push((*severity, Arc::clone(&words), at));
        at.x += SIGN + words.size().x + BETWEEN;
    }
    let counted = if counts.is_empty() { 0.0 } else { at.y + COUNT };
    let said = lines.iter().map(|words| words.size().y + LEADING).sum::<f32>();
    let height = 2.0 * INSIDE + title.size().y + LEADING + tile.picture.map_or(0.0, |_| HIGH + LEADING) + said + counted;
    LaidOut { title, lines, counts, height }
}

/// Draws one tile; returns whether it was chosen.
fn tile_ui(ui: &mut Ui, tile: &Tile<'_>, words: &LaidOut, size: egui::Vec2) -> bool {
    let palette = Palette::of(ui);
    let (rect, response) = ui.allocate_exact_size(size, Sense::click());
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, tile.name()));
    let edge = if response.hovered() { palette.link } else { palette.edge };
    ui.painter().rect(rect, CornerRadius::same(8), palette.panel, Stroke::new(1.0, edge), StrokeKind::Inside);
    let mut at = rect.left_top() + vec2(INSIDE, INSIDE);
    let put = |at: &mut Pos2, words: &Arc<Galley>, left: f32| {
        ui.painter().galley(*at + vec2(left, 0.0), Arc::clone(words), Color32::PLACEHOLDER);
        at.y += words.size().y + LEADING;
    };
    put(&mut at, &words.title, 0.0);
    if let Some((card, per_mm)) = tile.picture {
        if let Some(card) = card {
            picture(ui, egui::Rect::from_min_size(at, vec2(size.x - 2.0 * INSIDE, HIGH)), card, per_mm);
        }
        at.y += HIGH + LEADING;
    }
    for line in &words.lines {
        put(&mut at, line, 0.0);
    }
    for (severity, words, place) in &words.counts {
        let colour = if *severity == Severity::Stop { palette.stop_fill } else { palette.caution_text };
        let left = at + *place;
        sign_at(ui.painter(), left + vec2(0.5 * (SIGN - 6.0), 0.5 * words.size().y + 1.0), *severity, colour);
        ui.painter().galley(left + vec2(SIGN, 0.0), Arc::clone(words), Color32::PLACEHOLDER);
    }
    response.clicked()
}
