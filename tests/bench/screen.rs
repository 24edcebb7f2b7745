//! What is drawn and how a hand drags over it, for the benchmarks of the window.

use egui::accesskit::Role;
use egui::{Context, Event, FullOutput, Modifiers, PointerButton, Pos2, RawInput, Rect, Ui, pos2, vec2};
use egui_plot::{Line, Plot, PlotPoints};
use jiff::{civil::date, tz::TimeZone};
use vatsketch::design::Stage;
use vatsketch::plan::Now;
use vatsketch::session::{EXAMPLES, Session, WallClock};
use vatsketch::ui::{Window, install};

/// Size of the window, points.
pub const SIZE: [f32; 2] = [1280.0, 800.0];
/// Frames that are measured of each kind.
pub const FRAMES: u32 = 240;
/// Points of a line of the bare plot, as many as a curve has about.
const POINTS: u32 = 200;

/// A screen that nobody sees.
pub struct Screen {
    pub ctx: Context,
    at_s: f64,
}

impl Screen {
    pub fn new() -> Self {
        let ctx = Context::default();
        install(&ctx);
        Self { ctx, at_s: 0.0 }
    }

    /// Draws one frame and returns what came of it.
    pub fn frame(&mut self, events: Vec<Event>, draw: &mut dyn FnMut(&mut Ui)) -> FullOutput {
        self.at_s += 1.0 / 60.0;
        let screen_rect = Some(Rect::from_min_size(Pos2::ZERO, vec2(SIZE[0], SIZE[1])));
        let input = RawInput { screen_rect, time: Some(self.at_s), events, focused: true, ..Default::default() };
        self.ctx.run_ui(input, draw)
    }

    /// Returns where a slider is on the screen.
    pub fn slider(&mut self, label: &str, draw: &mut dyn FnMut(&mut Ui)) -> Option<Rect> {
        self.ctx.enable_accesskit();
        let mut found = None;
        for _ in 0..3 {
            let output = self.frame(Vec::new(), draw);
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
}

pub fn press(pos: Pos2, pressed: bool) -> Event {
    Event::PointerButton { pos, button: PointerButton::Primary, pressed, modifiers: Modifiers::NONE }
}

/// Returns a place that goes to and fro along a rail, another one in each frame.
pub fn along(rail: Rect, frame: u32) -> Pos2 {
    let way = f64::from(frame % 120) / 60.0;
    let share = 0.25 + 0.5 * (1.0 - (way - 1.0).abs()) as f32;
    pos2(rail.left() + share * rail.width(), rail.center().y)
}

/// Draws a bare window: one plot of two lines.
pub fn bare(ui: &mut Ui, shift: f64) {
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

pub fn window(example: &str, station: Stage) -> Window {
    let design = EXAMPLES.iter().find(|found| found.name == example).unwrap().design().unwrap();
    let clock = WallClock::Stopped(Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC });
    let mut window = Window::plain(Session::open(design, None).unwrap(), clock);
    window.view.station = station;
    window
}
