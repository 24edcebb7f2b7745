//! What a frame of the window costs without a screen: laid out and cut into triangles, next to a bare window with one plot in the same run.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a measurement, which prints what it found and ends where it cannot")]

mod screen;

use egui::{Event, Ui, pos2};
use screen::{FRAMES, Screen, along, bare, press, window};
use std::cell::RefCell;
use std::time::{Duration, Instant};
use vatsketch::batch::{batch, batch_after};
use vatsketch::design::{Design, Stage};

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

/// Draws one frame and returns what it took.
fn timed(screen: &mut Screen, events: Vec<Event>, draw: &mut dyn FnMut(&mut Ui)) -> Took {
    let began = Instant::now();
    let mut output = screen.frame(events, draw);
    let laid_out = began.elapsed();
    let shapes = std::mem::take(&mut output.shapes);
    let began = Instant::now();
    let triangles = std::hint::black_box(screen.ctx.tessellate(shapes, output.pixels_per_point));
    let cut_up = began.elapsed();
    drop(triangles);
    output.drop_without_applying_deltas();
    Took { laid_out, cut_up }
}

/// Draws frames with the pointer as told, and returns the median of what they took.
fn median(screen: &mut Screen, mut events: impl FnMut(u32) -> Vec<Event>, draw: &mut dyn FnMut(&mut Ui)) -> Took {
    let mut all: Vec<Took> = (0..FRAMES).map(|frame| timed(screen, events(frame), draw)).collect();
    all.sort_by(|one, other| one.whole_ms().total_cmp(&other.whole_ms()));
    all.get(all.len() / 2).copied().unwrap_or_default()
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
    let plain = median(&mut screen, |_| Vec::new(), &mut |ui| {
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
        let hovered = median(&mut screen, |frame| vec![Event::PointerMoved(pos2(500.0 + (frame % 50) as f32, 400.0))], &mut draw);
        designs.borrow_mut().clear();
        let held = median(
            &mut screen,
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
