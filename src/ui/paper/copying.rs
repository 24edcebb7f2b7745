//! A curve as a picture in the clipboard: drawn on a thread of its own, so that the window never waits.

use crate::curve::Curve;
use crate::export::curve_pixels;
use crate::ui::paper::printing::Printed;
use egui::{ColorImage, Context};
use std::sync::mpsc::{Receiver, TryRecvError, channel};

/// What is on its way to the clipboard.
#[derive(Debug, Default)]
pub(in crate::ui) struct Copier {
    running: Option<(String, Receiver<Result<ColorImage, String>>)>,
}

impl Copier {
    /// Returns whether a picture is being drawn.
    pub(in crate::ui) const fn is_copying(&self) -> bool {
        self.running.is_some()
    }

    /// Draws a curve for the clipboard; what is drawn just now for it is given up.
    ///
    /// # Errors
    /// What to say, if no thread can be had.
    pub(in crate::ui) fn copy(&mut self, ctx: &Context, curve: Curve) -> Result<(), String> {
        let (sender, receiver) = channel();
        let (title, repaint) = (curve.title.to_owned(), ctx.clone());
        let spawned = std::thread::Builder::new().name("curve-picture".to_owned()).spawn(move || {
            let drawn = curve_pixels(&curve).map_err(|error| error.to_string());
            let size = |picture: &crate::export::PageImage| [picture.width as usize, picture.height as usize];
            let drawn = drawn.map(|picture| ColorImage::from_rgba_premultiplied(size(&picture), &picture.rgba));
            // The window may have closed in the meantime; then nobody waits.
            let _ = sender.send(drawn);
            repaint.request_repaint();
        });
        spawned.map_err(|error| format!("The curve cannot be copied: the computer is too busy ({error}). Try again."))?;
        self.running = Some((title, receiver));
        Ok(())
    }

    /// Puts the picture into the clipboard once it is drawn, and returns what is said of it.
    pub(in crate::ui) fn answer(&mut self, ctx: &Context) -> Option<Printed> {
        let (title, receiver) = self.running.as_ref()?;
        let told = match receiver.try_recv() {
            Ok(Ok(picture)) => {
                ctx.copy_image(picture);
                Ok(format!("The curve “{title}” was copied as a picture."))
            }
            Ok(Err(why)) => Err(format!("The curve cannot be copied: {why}.")),
            Err(TryRecvError::Empty) => return None,
            Err(TryRecvError::Disconnected) => Err("The picture of the curve could not be drawn; try again.".to_owned()),
        };
        self.running = None;
        Some(told)
    }
}
