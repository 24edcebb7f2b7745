//! “Save as PDF…”: the page is set and written on a thread of its own, so that the window never waits.

use super::printing::Printed;
use crate::batch::Batch;
use crate::export::{Paper, pdf};
use crate::file::write_safely;
use crate::plan::Now;
use crate::report::plan_at;
use std::path::PathBuf;
use std::sync::mpsc::{Receiver, TryRecvError, channel};
use std::thread::JoinHandle;

/// Saves, one plan at a time.
#[derive(Debug, Default)]
pub(super) struct Saver {
    running: Option<(Receiver<Printed>, JoinHandle<()>)>,
}

impl Saver {
    /// Returns whether a plan is on its way to the disk.
    pub(super) const fn is_saving(&self) -> bool {
        self.running.is_some()
    }

    /// Saves a plan.
    ///
    /// # Errors
    /// What to say, if one is on its way already or no thread can be had.
    pub(super) fn save(&mut self, ctx: &egui::Context, batch: &Batch, now: Now, paper: Paper, path: PathBuf) -> Result<(), String> {
        if self.running.is_some() {
            return Err("A plan is just being saved; save this one when that is done.".to_owned());
        }
        let (sender, receiver) = channel();
        let (batch, repaint) = (batch.clone(), ctx.clone());
        let spawned = std::thread::Builder::new().name("save-plan".to_owned()).spawn(move || {
            let plan = plan_at(&batch, &now);
            let bytes = pdf(&plan, paper).map_err(|error| error.to_string());
            // Whole or not at all: nothing half-written stays, whatever happens.
            let written = bytes.and_then(|bytes| write_safely(&path, &bytes, false).map_err(|error| error.to_string()));
            let counted = plan.no_week.map(|why| format!(" Its times only count: {why}.")).unwrap_or_default();
            // The window may have closed in the meantime; then nobody waits.
            let _ = sender.send(written.map(|()| format!("The plan is in {}.{counted}", path.display())));
            repaint.request_repaint();
        });
        match spawned {
            Ok(thread) => self.running = Some((receiver, thread)),
            Err(error) => return Err(format!("The plan cannot be saved: no thread could be started: {error}.")),
        }
        Ok(())
    }

    /// Returns what came of it, once something did.
    pub(super) fn answer(&mut self) -> Option<Printed> {
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
    /// Waits for a plan that is on its way: what was to be saved is saved, even if the window is closed at once.
    fn drop(&mut self) {
        if let Some((_, thread)) = self.running.take() {
            let _ = thread.join();
        }
    }
}
