//! The first minute: what the program is, and what one may start from.

use crate::session::{EXAMPLES, ExampleCard};
use crate::ui::help::card::{HelpReply, card_ui};
use crate::ui::help::picture;
use crate::ui::help::tile::{Tile, tile_width, tiles_ui};
use crate::ui::state::ask::Ask;
use crate::ui::widget::scroll::in_card_ui;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{CAPTION, Palette};
use crate::units::Units;
use crate::words::{
    FROM_A_MODEL, GUIDE_START, NOT_CALCULATED, START_EMPTY, START_FROM_MILK, Start, TILES_SHOW, WELCOME, tile_counts, tile_lines,
};
use egui::{Context, Label, RichText, Ui};

/// Widest welcome, and the least width of a tile.
const WIDTH: f32 = 1200.0;
const LEAST_TILE: f32 = 190.0;
/// Most tiles in a row.
const MOST_COLUMNS: usize = 4;

/// What one may start from besides the examples, with what each asks for.
const STARTS: [(Start, Ask); 3] =
    [(START_FROM_MILK, Ask::NewFromMilk), (START_EMPTY, Ask::New), (GUIDE_START, Ask::Guide(Some(0)))];

/// Draws the welcome.
///
/// `cards`: what each example comes to, once that is calculated
pub(in crate::ui) fn welcome_ui(ctx: &Context, units: Units, cards: Option<&[Option<ExampleCard>]>) -> HelpReply {
    card_ui(ctx, "Welcome", WIDTH, |ui, room| {
        in_card_ui(ui, "welcome", room, |ui| {
            ui.add(Label::new(WELCOME).wrap());
            ui.add(Label::new(RichText::new(FROM_A_MODEL).color(Palette::of(ui).soft)).wrap());
            ui.add_space(6.0);
            heading_ui(ui, "Start from");
            let start = starts_ui(ui);
            ui.add_space(2.0);
            heading_ui(ui, "Or from an example");
            let example = examples_ui(ui, units, cards);
            ui.add(Label::new(RichText::new(TILES_SHOW).size(CAPTION).color(Palette::of(ui).soft)).wrap());
            start.or(example)
        })
    })
}

fn starts_ui(ui: &mut Ui) -> Option<Ask> {
    let tiles = STARTS.each_ref().map(|(start, _)| Tile {
        title: start.title,
        kind: "",
        picture: None,
        lines: vec![start.says.to_owned()],
        counts: Vec::new(),
    });
    let columns = columns(ui).min(tiles.len());
    tiles_ui(ui, &tiles, columns).and_then(|place| STARTS.get(place)).map(|(_, ask)| ask.clone())
}

fn examples_ui(ui: &mut Ui, units: Units, cards: Option<&[Option<ExampleCard>]>) -> Option<Ask> {
    let columns = columns(ui);
    let all = cards.into_iter().flatten().flatten();
    let per_mm = picture::scale(all, tile_width(ui, columns));
    let tiles: Vec<Tile<'_>> = EXAMPLES
        .iter()
        .enumerate()
        .map(|(place, example)| {
            let card = cards.and_then(|cards| cards.get(place)).and_then(Option::as_ref);
            Tile {
                title: example.shows,
                kind: "Example: ",
                picture: Some((card, per_mm)),
                lines: card.map_or_else(|| vec![NOT_CALCULATED.to_owned()], |card| tile_lines(&card.summary, units)),
                counts: card.map_or_else(Vec::new, |card| tile_counts(&card.summary)),
            }
        })
        .collect();
    tiles_ui(ui, &tiles, columns).map(Ask::OpenExample)
}

/// Returns how many tiles fit into a row.
fn columns(ui: &Ui) -> usize {
    ((ui.available_width() / LEAST_TILE) as usize).clamp(1, MOST_COLUMNS)
}
