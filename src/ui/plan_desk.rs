//! What the page of the plan keeps: the drawing and the printing that go on in the background.

use super::ask::Ask;
use super::files::file_name;
use super::plan_page::plan_ui;
use super::preview::Preview;
use super::printing::{Printed, Printer};
use super::saving::Saver;
use super::theme::Palette;
use crate::batch::Batch;
use crate::export::{Paper, text};
use crate::plan::Now;
use crate::report::plan_at;
use egui::{CentralPanel, Frame, Ui};
use std::path::PathBuf;

/// The drawing and the printing.
#[derive(Default)]
pub(super) struct PlanDesk {
    preview: Preview,
    printer: Printer,
    saver: Saver,
}

impl PlanDesk {
    /// Returns a desk whose printer never calls a viewer.
    pub(super) fn without_viewer() -> Self {
        Self { printer: Printer::without_viewer(), ..Self::default() }
    }

    /// Returns whether something goes on in the background.
    pub(super) const fn is_busy(&self) -> bool {
        self.preview.is_drawing() || self.printer.is_printing() || self.saver.is_saving()
    }

    /// Returns what came of the printing or the saving, once something did.
    pub(super) fn printed(&mut self) -> Option<Printed> {
        self.printer.answer().or_else(|| self.saver.answer())
    }

    /// Draws the page of the plan and returns what is asked for.
    pub(super) fn page_ui(&mut self, ui: &mut Ui, batch: &Batch, now: &Now, paper: Paper) -> Vec<Ask> {
        let page = Frame::new().fill(Palette::of(ui).background).inner_margin(20);
        let printing = self.printer.is_printing();
        CentralPanel::default().frame(page).show(ui, |ui| plan_ui(ui, &mut self.preview, batch, now, paper, printing)).inner
    }

    /// Hands the plan to the system's viewer.
    pub(super) fn print(&mut self, ctx: &egui::Context, batch: &Batch, now: Now, paper: Paper) {
        self.printer.print(ctx, batch, now, paper, file_name(&batch.design.title, ".pdf"));
    }

    /// Saves the plan as PDF in the background.
    ///
    /// # Errors
    /// What to say, if it cannot begin.
    pub(super) fn save(&mut self, ctx: &egui::Context, batch: &Batch, now: Now, paper: Paper, path: PathBuf) -> Result<(), String> {
        self.saver.save(ctx, batch, now, paper, path)
    }

    /// Puts the plan into the clipboard; returns what to say of it.
    pub(super) fn copy(ctx: &egui::Context, batch: &Batch, now: &Now) -> String {
        ctx.copy_text(text(&plan_at(batch, now)));
        "The plan is in the clipboard as text.".to_owned()
    }
}
