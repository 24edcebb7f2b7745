//! What a frame of the window costs without a screen: laid out and cut into triangles, next to a bare window with one plot in the same run.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a measurement, which prints what it found and ends where it cannot")]

use egui::accesskit::Role;
use egui::{Context, Event, FullOutput, Modifiers, PointerButton, Pos2, RawInput, Rect, Ui, pos2, vec2};
use egui_plot::{Line, Plot, PlotPoints};
use jiff::{civil::date, tz::TimeZone};
use std::cell::RefCell;
use std::time::{Duration, Instant};
use vatsketch::batch::{batch, batch_after};
use vatsketch::design::{Design, Stage};
use vatsketch::plan::Now;
use vatsketch::session::{EXAMPLES, Session, WallClock};
use vatsketch::ui::{Window, install};

/// Size of the window, points.
const SIZE: [f32; 2] = [1280.0, 800.0];
/// Frames that are measured of each kind.
const FRAMES: u32 = 240;
/// Points of a line of the bare plot, as many as a curve has about.
const POINTS: u32 = 200;

/// A screen that nobody sees.
struct Screen {
    ctx: Context,
    at_s: f64,
}

/// What a frame took.
#[derive(Clone, Copy, Default)]
struct Took {
    laid_out: Duration,
    cut_up: Duration,
}

impl Took {
    fn whole_ms(self) -> f64 {
        1e3 * (self.laid_out + self.cut_up).as_secs_f64()
    }
}

impl Screen {
    fn new() -> Self {
        let ctx = Context::default();
        install(&ctx);
        Self { ctx, at_s: 0.0 }
    }

    /// Draws one frame and returns what came of it, and what it took.
    fn frame(&mut self, events: Vec<Event>, draw: &mut dyn FnMut(&mut Ui)) -> (FullOutput, Took) {
        self.at_s += 1.0 / 60.0;
        let screen_rect = Some(Rect::from_min_size(Pos2::ZERO, vec2(SIZE[0], SIZE[1])));
        let input = RawInput { screen_rect, time: Some(self.at_s), events, focused: true, ..Default::default() };
        let began = Instant::now();
        let mut output = self.ctx.run_ui(input, draw);
        let laid_out = began.elapsed();
        let shapes = std::mem::take(&mut output.shapes);
        let began = Instant::now();
        let triangles = std::hint::black_box(self.ctx.tessellate(shapes, output.pixels_per_point));
        let cut_up = began.elapsed();
        drop(triangles);
        (output, Took { laid_out, cut_up })
    }

    /// Returns where a slider is on the screen.
    fn slider(&mut self, label: &str, draw: &mut dyn FnMut(&mut Ui)) -> Option<Rect> {
        self.ctx.enable_accesskit();
        let mut found = None;
        for _ in 0..3 {
            let (output, _) = self.frame(Vec::new(), draw);
            let tree = output.platform_output.accesskit_update.as_ref();
            let nodes = tree.into_iter().flat_map(|tree| &tree.nodes);
            let named = nodes.map(|(_, node)| node).find(|node| node.role() == Role::Slider && node.label() == Some(label));
            found = named.and_then(egui::accesskit::Node::bounds).or(found);
            output.drop_without_applying_deltas();
        }
        self.ctx.disable_accesskit();
        let place = found?;
        Some(Rect::from_min_max(pos2(place.x0 as f32, place.y0 as f32), pos2(place.x1 as f32, place.y1 as f32)))
    }

    /// Draws frames with the pointer as told, and returns the median of what they took.
    fn median(&mut self, mut events: impl FnMut(u32) -> Vec<Event>, draw: &mut dyn FnMut(&mut Ui)) -> Took {
        let mut all: Vec<Took> = (0..FRAMES)
            .map(|frame| {
                let (output, took) = self.frame(events(frame), draw);
                output.drop_without_applying_deltas();
                took
            })
            .collect();
        all.sort_by(|one, other| one.whole_ms().total_cmp(&other.whole_ms()));
        all.get(all.len() / 2).copied().unwrap_or_default()
    }
}

fn press(pos: Pos2, pressed: bool) -> Event {
    Event::PointerButton { pos, button: PointerButton::Primary, pressed, modifiers: Modifiers::NONE }
}

/// Returns a place that goes to and fro along a rail, another one in each frame.
fn along(rail: Rect, frame: u32) -> Pos2 {
    let way = f64::from(frame % 120) / 60.0;
    let share = 0.25 + 0.5 * (1.0 - (way - 1.0).abs()) as f32;
    pos2(rail.left() + share * rail.width(), rail.center().y)
}

/// Draws a bare window: one plot of two lines.
fn bare(ui: &mut Ui, shift: f64) {
    egui::CentralPanel::default().show(ui, |ui| {
        Plot::new("bare").show(ui, |plot| {
            for line in 1..=2 {
                let points: PlotPoints<'_> = (0..POINTS)
                    .map(|point| {
                        let x = f64::from(point) / f64::from(POINTS);
                        [x, (f64::from(line) * (x + shift)).sin()]
                    })
                    .collect();
                plot.line(Line::new(format!("line {line}"), points));
            }
        });
    });
}

fn window(example: &str, station: Stage) -> Window {
    let design = EXAMPLES.iter().find(|found| found.name == example).unwrap().design().unwrap();
    let clock = WallClock::Stopped(Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC });
    let mut window = Window::plain(Session::open(design, None).unwrap(), clock);
    window.view.station = station;
    window
}

/// Returns what the calculation alone takes where a design goes through these in turn, ms, as the median.
fn calculation_ms(designs: &[Design]) -> f64 {
    let Some(first) = designs.first() else { return 0.0 };
    let mut before = batch(first).unwrap();
    let mut all: Vec<f64> = designs
        .iter()
        .map(|design| {
            let began = Instant::now();
            before = std::hint::black_box(batch_after(design, Some(&before)).unwrap().0);
            1e3 * began.elapsed().as_secs_f64()
        })
        .collect();
    all.sort_by(f64::total_cmp);
    all.get(all.len() / 2).copied().unwrap_or_default()
}

fn main() {
    let mut screen = Screen::new();
    let mut shift = 0.0;
    let plain = screen.median(|_| Vec::new(), &mut |ui| {
        shift += 0.01;
        bare(ui, shift);
    });
    println!(
        "A bare window with one plot: {:.2} ms laid out, {:.2} ms cut into triangles.",
        1e3 * plain.laid_out.as_secs_f64(),
        1e3 * plain.cut_up.as_secs_f64()
    );
    for (label, station) in
        [("Fat target", Stage::Vat), ("Drying time", Stage::Drying), ("Strength of the vinegar", Stage::Pickling)]
    {
        let mut screen = Screen::new();
        let mut window = window("first-vat", station);
        let designs = RefCell::new(Vec::new());
        let mut draw = |ui: &mut Ui| {
            window.logic(&ui.ctx().clone());
            window.ui(ui);
            designs.borrow_mut().push(window.session.design().clone());
        };
        let Some(rail) = screen.slider(label, &mut draw) else {
            println!("{label}: not in sight");
            continue;
        };
        let hovered = screen.median(|frame| vec![Event::PointerMoved(pos2(500.0 + (frame % 50) as f32, 400.0))], &mut draw);
        designs.borrow_mut().clear();
        let held = screen.median(
            |frame| {
                let place = along(rail, frame);
                let moved = Event::PointerMoved(place);
                if frame == 0 { vec![moved, press(place, true)] } else { vec![moved] }
            },
            &mut draw,
        );
        let calculated_ms = calculation_ms(&designs.borrow());
        println!(
            "{label}: pointer over it {:.2} + {:.2} ms ({:.1} times bare); dragged {:.2} + {:.2} ms, of which the batch alone {calculated_ms:.2} ms; the rest {:.1} times bare.",
            1e3 * hovered.laid_out.as_secs_f64(),
            1e3 * hovered.cut_up.as_secs_f64(),
            hovered.whole_ms() / plain.whole_ms(),
            1e3 * held.laid_out.as_secs_f64(),
            1e3 * held.cut_up.as_secs_f64(),
            (held.whole_ms() - calculated_ms) / plain.whole_ms(),
        );
    }
}
