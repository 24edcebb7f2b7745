//! The pages of the plan as pictures, drawn on a thread of their own: the window never waits, and only the newest answer counts.

use crate::batch::Batch;
use crate::design::Design;
use crate::design::Wish;
use crate::export::{PageImage, Paper, Sheets, pages};
use crate::plan::Now;
use crate::report::plan_at;
use crate::units::Units;
use egui::{ColorImage, TextureHandle, TextureOptions};
use jiff::civil::DateTime;
use std::sync::mpsc::{Receiver, TryRecvError, channel};

/// What is to be drawn.
#[derive(Clone, Debug, PartialEq)]
struct Order {
    design: Design,
    sheets: Sheets,
    units: Units,
    /// Quarters of a pixel a point, so that a window that is pulled wider is not drawn again for each pixel.
    quarters: u16,
    /// The quarter of an hour in which it was asked for, where the plan depends on what time it is.
    asked: Option<DateTime>,
}

/// Finest drawing, quarters of a pixel a point: 216 dots an inch.
const FINEST: u16 = 12;
/// Coarsest drawing, quarters of a pixel a point.
const COARSEST: u16 = 4;
/// Height of the tallest paper, points; no picture may be taller than the screen's driver takes.
const TALLEST_PT: f32 = 842.0;

type Pages = Result<Vec<ColorImage>, String>;

/// The pages as far as they are drawn.
#[derive(Default)]
pub(in crate::ui) struct Preview {
    running: Option<(Order, Receiver<Pages>)>,
    shown: Option<(Order, Result<Vec<TextureHandle>, String>)>,
}

/// What the page can show.
pub(in crate::ui) struct Shown<'a> {
    /// The pages, or why there are none; nothing before the first answer.
    pub(in crate::ui) pages: Option<&'a Result<Vec<TextureHandle>, String>>,
    /// Whether a newer drawing is on its way.
    pub(in crate::ui) drawing: bool,
}

impl Preview {
    /// Takes what was drawn, has drawn what is out of date, and returns what can be shown.
    ///
    /// # Arguments
    /// * `now`: what the clock on the wall says
    /// * `width`: of a page in the window, in its points
    pub(in crate::ui) fn look(
        &mut self,
        ctx: &egui::Context,
        batch: &Batch,
        now: &Now,
        (sheets, units): (Sheets, Units),
        width: f32,
    ) -> Shown<'_> {
        let wanted = Order {
            design: batch.design.clone(),
            quarters: quarters(ctx, sheets.paper, width),
            sheets,
            units,
            asked: asked(&batch.design, now),
        };
        self.take(ctx, &wanted);
        let known = self.shown.as_ref().is_some_and(|(order, _)| *order == wanted);
        if !known && self.running.is_none() {
            self.start(ctx, batch, now, wanted);
        }
        Shown { pages: self.shown.as_ref().map(|(_, pages)| pages), drawing: self.running.is_some() }
    }

    /// Returns whether a drawing is on its way.
    pub(in crate::ui) const fn is_drawing(&self) -> bool {
        self.running.is_some()
    }

    /// Takes an answer, if there is one; one that nobody wants any more is dropped.
    fn take(&mut self, ctx: &egui::Context, wanted: &Order) {
        let Some((order, receiver)) = &self.running else { return };
        let drawn = match receiver.try_recv() {
            Ok(drawn) => drawn,
            Err(TryRecvError::Empty) => return,
            Err(TryRecvError::Disconnected) => Err("the drawing ended without an answer; please report this".to_owned()),
        };
        if order == wanted {
            let load = |(number, image)| ctx.load_texture(format!("plan {number}"), image, TextureOptions::LINEAR);
            let pages = drawn.map(|images| images.into_iter().enumerate().map(load).collect());
            self.shown = Some((order.clone(), pages));
        }
        self.running = None;
    }

    fn start(&mut self, ctx: &egui::Context, batch: &Batch, now: &Now, order: Order) {
        let (sender, receiver) = channel();
        let (batch, now, repaint, sheets, units) = (batch.clone(), now.clone(), ctx.clone(), order.sheets.clone(), order.units);
        let pixels_per_point = f64::from(order.quarters) / 4.0;
        let spawned = std::thread::Builder::new().name("plan-preview".to_owned()).spawn(move || {
            let drawn = pages(&plan_at(&batch, &now).shown_in(units), &sheets, pixels_per_point);
            let drawn = drawn.map(|pages| pages.iter().map(image).collect()).map_err(|error| error.to_string());
            // The window may have closed in the meantime; then nobody waits.
            let _ = sender.send(drawn);
            repaint.request_repaint();
        });
        match spawned {
            Ok(_) => self.running = Some((order, receiver)),
            Err(error) => self.shown = Some((order, Err(format!("no thread could be started: {error}")))),
        }
    }
}

/// Returns the quarter of an hour that it is, where what is planned depends on it.
fn asked(design: &Design, now: &Now) -> Option<DateTime> {
    let depends = design.week.reached.is_some() || matches!(design.week.wish, Wish::FinishedBy(_));
    let quarter = now.at.minute() / 15 * 15;
    depends.then(|| now.at.date().at(now.at.hour(), quarter, 0, 0))
}

fn image(page: &PageImage) -> ColorImage {
    // Every pixel is opaque, so that it is the same multiplied by its opacity or not.
    ColorImage::from_rgba_premultiplied([page.width as usize, page.height as usize], &page.rgba)
}

/// Returns how fine a page must be drawn to be sharp at this width on this screen.
fn quarters(ctx: &egui::Context, paper: Paper, width: f32) -> u16 {
    let sharp = 4.0 * width * ctx.pixels_per_point() / paper.width_pt();
    let most = 4.0 * ctx.input(|input| input.max_texture_side) as f32 / TALLEST_PT;
    let finest = (most.floor() as u16).clamp(COARSEST, FINEST);
    (sharp.ceil() as u16).clamp(COARSEST, finest)
}
