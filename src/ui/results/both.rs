//! Results of two designs by stage, in columns, and the cautions of both.

use crate::analysis::{Difference, Whose};
use crate::curve::Run;
use crate::design::Stage;
use crate::figure::{Weight, is_of_germs};
use crate::ui::results::beside::Beside;
use crate::ui::results::caution::caution_ui;
use crate::ui::results::compared::{compared_ui, costs_ui, heads_ui, stroke};
use crate::ui::results::lift::{LiftsKnown, Way};
use crate::ui::results::one::potential_ui;
use crate::ui::results::shown::Shown;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::room::Room;
use crate::ui::widget::spoken::heading_ui;
use crate::ui::widget::theme::{CAPTION, Palette, bold};
use crate::words::{TRUE_OF_ALL, said_of_b};
use egui::{Align, Rect, RichText, Sense, Stroke, Ui, vec2};

/// Share of the height that the results take, above the cautions.
const RESULTS_SHARE: f32 = 0.64;

/// Draws the results of two designs above and their cautions below; returns what is asked for.
///
/// `lifts`: what is known of the ways to lift the caution of A that was asked about
pub(in crate::ui) fn results_both_ui(
    ui: &mut Ui,
    view: &mut View,
    shown: &Shown,
    lifts: LiftsKnown<'_>,
    beside: &Beside,
    room: Room,
) -> Vec<Ask> {
    let palette = Palette::of(ui);
    let height = if room == Room::Own { ui.available_height() * RESULTS_SHARE } else { 0.0 };
    let mut asks = Vec::new();
    ui.allocate_ui(vec2(ui.available_width(), height), |ui| {
        titles_ui(ui, beside);
        room.scrolled(ui, ("results of both", view.station.key()), |ui| {
            let others = Stage::ALL.into_iter().filter(|stage| *stage != view.station);
            for stage in std::iter::once(view.station).chain(others) {
                asks.extend(stage_ui(ui, view, stage, &shown.run, beside));
            }
            if beside.costs.is_some() || beside.cost_note.is_some() {
                heading_ui(ui, "Costs");
                costs_ui(ui, view.units, beside);
            }
        });
    });
    ui.painter().hline(ui.max_rect().x_range(), ui.cursor().top(), Stroke::new(1.0, palette.grid));
    ui.add_space(8.0);
    heading_ui(ui, "Cautions");
    let to_first = std::mem::take(&mut view.to_cautions);
    let view = &*view;
    room.scrolled(ui, "cautions of both", |ui| {
        if to_first {
            ui.scroll_to_cursor(Some(Align::Min));
        }
        ui.label(RichText::new(counted(beside)).size(CAPTION).color(palette.soft));
        let (always, own): (Vec<_>, Vec<_>) = beside.cautions.iter().partition(|compared| compared.caution.always);
        let heading_at = own.len();
        for (at, compared) in own.into_iter().chain(always).enumerate() {
            if at == heading_at {
                heading_ui(ui, TRUE_OF_ALL);
            }
            let whose = compared.whose.words();
            // What lifts a caution is looked for as A has it: A is the design that the choices change.
            let way = compared.of_a.as_ref().map(|own| Way::of(view, own, lifts));
            asks.extend(caution_ui(
                ui,
                view.units,
                &compared.caution,
                Some((whose, said_of_b(compared, view.units).as_deref())),
                way,
            ));
            ui.add_space(6.0);
        }
    });
    asks
}

/// Writes the title of each design beside its stroke.
fn titles_ui(ui: &mut Ui, beside: &Beside) {
    let palette = Palette::of(ui);
    ui.spacing_mut().item_spacing.y = 2.0;
    for (place, (name, title)) in ["A", "B"].into_iter().zip(&beside.titles).enumerate() {
        ui.horizontal(|ui| {
            ui.spacing_mut().interact_size.y = 20.0;
            let (rect, _) = ui.allocate_exact_size(vec2(26.0, 20.0), Sense::hover());
            stroke(
                ui,
                Rect::from_center_size(rect.center(), rect.size()),
                place,
                if place == 0 { palette.design } else { palette.second },
            );
            ui.label(RichText::new(name).font(bold(CAPTION)));
            ui.add(egui::Label::new(RichText::new(title).size(CAPTION)).wrap());
        });
    }
}

fn stage_ui(ui: &mut Ui, view: &View, stage: Stage, run: &Run, beside: &Beside) -> Vec<Ask> {
    let mut asks = Vec::new();
    let palette = Palette::of(ui);
    ui.spacing_mut().item_spacing.y = 3.0;
    ui.add_space(4.0);
    heading_ui(ui, stage.title());
    for (name, run) in [("A", run), ("B", &beside.run)] {
        let stopped =
            run.stations.iter().find(|station| station.stage == stage).and_then(|station| station.stopped_because.as_ref());
        if let Some(why) = stopped {
            egui::Frame::new().fill(palette.stop_fill).corner_radius(6).inner_margin(8).show(ui, |ui| {
                ui.label(RichText::new(format!("{name}: not calculated: {}", view.units.told(why))).color(palette.stop_text));
            });
        }
    }
    let of = |weight: Weight| {
        beside.figures.iter().filter(move |figure| figure.stage == stage && figure.weight == weight).collect::<Vec<&Difference>>()
    };
    let (lead, details) = (of(Weight::Lead), of(Weight::Detail));
    let lead_of_germs = lead.iter().any(|figure| is_of_germs(figure.key));
    if !lead.is_empty() || !details.is_empty() {
        heads_ui(ui);
    }
    for figure in lead {
        asks.extend(compared_ui(ui, view.units, figure));
    }
    if lead_of_germs {
        potential_ui(ui);
    }
    if !details.is_empty() {
        egui::CollapsingHeader::new(RichText::new(format!("More about {}", stage.in_a_sentence())).size(CAPTION))
            .id_salt((stage.key(), "details of both"))
            .show_unindented(ui, |ui| {
                for figure in details {
                    asks.extend(compared_ui(ui, view.units, figure));
                }
            });
    }
    ui.add_space(8.0);
    asks
}

/// Returns how many cautions both have, and each alone; without what is true of every cheese like this.
fn counted(beside: &Beside) -> String {
    let count =
        |whose: Whose| beside.cautions.iter().filter(|compared| compared.whose == whose && !compared.caution.always).count();
    format!("{} in A and B, {} only in A, {} only in B", count(Whose::Both), count(Whose::OnlyA), count(Whose::OnlyB))
}
