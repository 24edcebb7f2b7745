//! What a frame costs in a window on the desktop while a slider is dragged, next to a bare window with one plot in the same run: processor time of
//! all threads, drawing included. Says also when the first frame was there, and with a number of minutes behind `--` how memory grows in them.
//! Each window is a process of its own, for the toolkit opens one in a process.
#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::print_stdout,
    reason = "a measurement, which prints what it found and ends where it cannot"
)]

mod screen;

use egui::{Context, Event, RawInput, Rect, Ui, ViewportCommand, pos2};
use screen::{FRAMES, SIZE, Screen, along, bare, press, window};
use std::process::{Command, Stdio};
use std::time::Instant;
use vatsketch::design::Stage;
use vatsketch::ui::install;

/// Names of the two windows.
const OURS: &str = "ours";
const BARE: &str = "bare";
/// Frames before anything is counted: fonts and curves are drawn for the first time in them.
const WARM_UP: u32 = 60;
/// Hundredths of a second in a tick of the processor's time, as Linux counts them.
const TICK_MS: f64 = 10.0;
/// The slider that is dragged, and its station.
const DRAGGED: (&str, Stage) = ("Drying time", Stage::Drying);

/// A window that is dragged in until its frames are counted.
struct Dragged {
    draw: Box<dyn FnMut(&mut Ui)>,
    rail: Rect,
    began: Instant,
    first_frame_ms: f64,
    frames: u32,
    counted_from_ms: f64,
    minutes: f64,
    memory_mb: Vec<f64>,
    is_told: bool,
}

impl eframe::App for Dragged {
    fn raw_input_hook(&mut self, _: &Context, input: &mut RawInput) {
        let place = along(self.rail, self.frames);
        input.events.push(Event::PointerMoved(place));
        if self.frames == 1 {
            input.events.push(press(place, true));
        }
    }

    fn ui(&mut self, ui: &mut Ui, _: &mut eframe::Frame) {
        (self.draw)(ui);
        ui.ctx().request_repaint();
        self.frames += 1;
        match self.frames {
            // The first frame is on the screen when the second begins.
            2 => self.first_frame_ms = 1e3 * self.began.elapsed().as_secs_f64(),
            WARM_UP => self.counted_from_ms = processor_ms(),
            _ => {}
        }
        let minutes = self.began.elapsed().as_secs_f64() / 60.0;
        if minutes >= self.memory_mb.len() as f64 {
            self.memory_mb.push(memory_mb());
        }
        if self.frames >= WARM_UP + FRAMES && minutes >= self.minutes && !self.is_told {
            self.is_told = true;
            self.memory_mb.push(memory_mb());
            let frame_ms = (processor_ms() - self.counted_from_ms) / f64::from(self.frames - WARM_UP);
            let memory: Vec<String> = self.memory_mb.iter().map(|mb| format!("{mb:.1}")).collect();
            println!("{frame_ms:.2} {:.0} {}", self.first_frame_ms, memory.join(" "));
            ui.ctx().send_viewport_cmd(ViewportCommand::Close);
        }
    }
}

/// Returns the processor time of all threads of this process, ms; 0 where there is no such account.
fn processor_ms() -> f64 {
    let account = std::fs::read_to_string("/proc/self/stat").unwrap_or_default();
    // Behind the name, which may hold anything, the twelfth and thirteenth fields: time of its own, and of the system for it.
    let fields = account.rsplit(')').next().unwrap_or_default().split_whitespace().skip(11).take(2);
    TICK_MS * fields.filter_map(|ticks| ticks.parse::<f64>().ok()).sum::<f64>()
}

/// Returns the memory that this process holds, MB; 0 where there is no such account.
fn memory_mb() -> f64 {
    let account = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let held = account.lines().find_map(|line| line.strip_prefix("VmRSS:")).unwrap_or_default();
    held.split_whitespace().next().and_then(|kb| kb.parse::<f64>().ok()).unwrap_or_default() / 1024.0
}

/// Opens a window and drags in it along a rail.
fn opened(which: &str, rail: Rect, minutes: f64) {
    let began = Instant::now();
    let viewport = egui::ViewportBuilder::default().with_title("Measured").with_inner_size(SIZE);
    let options = eframe::NativeOptions { viewport, ..Default::default() };
    let is_ours = which == OURS;
    let create: eframe::AppCreator<'_> = Box::new(move |context| {
        install(&context.egui_ctx);
        let draw = if is_ours { our_own() } else { a_bare_one() };
        let (frames, first_frame_ms, counted_from_ms) = (0, 0.0, 0.0);
        Ok(Box::new(Dragged {
            draw,
            rail,
            began,
            first_frame_ms,
            frames,
            counted_from_ms,
            minutes,
            memory_mb: Vec::new(),
            is_told: false,
        }))
    });
    if let Err(error) = eframe::run_native("measured", options, create) {
        println!("no window can be opened here: {error}");
    }
}

fn our_own() -> Box<dyn FnMut(&mut Ui)> {
    let mut measured = window("first-vat", DRAGGED.1);
    Box::new(move |ui| {
        measured.logic(&ui.ctx().clone());
        measured.ui(ui);
    })
}

fn a_bare_one() -> Box<dyn FnMut(&mut Ui)> {
    let mut shift = 0.0;
    Box::new(move |ui| {
        shift += 0.01;
        bare(ui, shift);
    })
}

/// Returns what a window of its own process found: processor time of a frame, first frame, and memory.
fn measured(which: &str, rail: Rect, minutes: f64) -> Option<Vec<f64>> {
    let numbers = [rail.left(), rail.top(), rail.right(), rail.bottom(), minutes as f32].map(|number| number.to_string());
    let child = Command::new(std::env::current_exe().unwrap()).arg(which).args(numbers).stderr(Stdio::inherit()).output().unwrap();
    let said = String::from_utf8_lossy(&child.stdout).into_owned();
    let found: Option<Vec<f64>> = said.split_whitespace().map(|number| number.parse().ok()).collect();
    found.filter(|found| found.len() > 2).or_else(|| {
        println!("{}", said.trim());
        None
    })
}

fn main() {
    let given: Vec<String> = std::env::args().skip(1).filter(|given| given != "--bench").collect();
    let numbers: Vec<f64> = given.iter().filter_map(|given| given.parse().ok()).collect();
    match (given.first().map(String::as_str), &numbers[..]) {
        (Some(which @ (OURS | BARE)), &[left, top, right, bottom, minutes]) => {
            let (left_top, right_bottom) = (pos2(left as f32, top as f32), pos2(right as f32, bottom as f32));
            opened(which, Rect::from_min_max(left_top, right_bottom), minutes);
        }
        (_, minutes) => compared(minutes.first().copied().unwrap_or_default()),
    }
}

/// Opens one window after the other and prints what they cost.
fn compared(minutes: f64) {
    let mut own = our_own();
    let Some(rail) = Screen::new().slider(DRAGGED.0, &mut *own) else {
        println!("{}: not in sight", DRAGGED.0);
        return;
    };
    let (Some(bare), Some(ours)) = (measured(BARE, rail, 0.0), measured(OURS, rail, minutes)) else { return };
    println!(
        "{} dragged: {:.1} ms of processor time a frame; a bare window with one plot: {:.1} ms; {:.2} times as much. First frame after {:.0} ms, bare {:.0} ms.",
        DRAGGED.0,
        ours[0],
        bare[0],
        ours[0] / bare[0],
        ours[1],
        bare[1]
    );
    println!("Memory, MB, a number a minute: {:?}", &ours[2..]);
}
