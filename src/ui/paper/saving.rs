//! “Save as PDF…”: the pages are set and written on a thread of its own, so that the window never waits.

use crate::file::write_safely;
use crate::ui::paper::printing::Printed;
use std::path::PathBuf;
use std::sync::mpsc::{Receiver, TryRecvError, channel};
use std::thread::JoinHandle;

/// Saves, one file at a time.
#[derive(Debug, Default)]
pub(in crate::ui) struct Saver {
    running: Option<(Receiver<Printed>, JoinHandle<()>)>,
}

impl Saver {
    /// Returns whether a file is on its way to the disk.
    pub(in crate::ui) const fn is_saving(&self) -> bool {
        self.running.is_some()
    }

    /// Saves a file.
    ///
    /// # Arguments
    /// * `make`: sets the pages; returns the bytes, and what is to be said once they are written
    ///
    /// # Errors
    /// What to say, if one is on its way already or no thread can be had.
    pub(in crate::ui) fn save(
        &mut self,
        ctx: &egui::Context,
        path: PathBuf,
        make: impl FnOnce() -> Result<(Vec<u8>, String), String> + Send + 'static,
    ) -> Result<(), String> {
        if self.running.is_some() {
            return Err("Another file is being saved; try again when that is done.".to_owned());
        }
        let (sender, receiver) = channel();
        let repaint = ctx.clone();
        let spawned = std::thread::Builder::new().name("save-pages".to_owned()).spawn(move || {
            // Whole or not at all: nothing half-written stays, whatever happens.
            let written = make()
                .and_then(|(bytes, said)| write_safely(&path, &bytes, false).map(|()| said).map_err(|error| error.to_string()));
            // The window may have closed in the meantime; then nobody waits.
            let _ = sender.send(written);
            repaint.request_repaint();
        });
        match spawned {
            Ok(thread) => self.running = Some((receiver, thread)),
            Err(error) => return Err(format!("Nothing can be saved: no thread could be started: {error}.")),
        }
        Ok(())
    }

    /// Returns what came of it, once something did.
    pub(in crate::ui) fn answer(&mut self) -> Option<Printed> {
        let (receiver, _) = self.running.as_ref()?;
        let saved = match receiver.try_recv() {
            Ok(saved) => saved,
            Err(TryRecvError::Disconnected) => Err("the saving ended without an answer; please report this".to_owned()),
            Err(TryRecvError::Empty) => return None,
        };
        self.running = None;
        Some(saved)
    }
}

impl Drop for Saver {
    /// Waits for what is on its way: what was to be saved is saved, even if the window is closed at once.
    fn drop(&mut self) {
        if let Some((_, thread)) = self.running.take() {
            let _ = thread.join();
        }
    }
}
