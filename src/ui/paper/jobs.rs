//! What the page of the plan keeps: the drawing and the printing that go on in the background.

use crate::batch::Batch;
use crate::export::{Paper, Sheets, comparison_pdf, pdf, text};
use crate::plan::Now;
use crate::report::{comparison, plan_at};
use crate::ui::paper::file_name::file_name;
use crate::ui::paper::page::plan_ui;
use crate::ui::paper::preview::Preview;
use crate::ui::paper::printing::{Printed, Printer};
use crate::ui::paper::saving::Saver;
use crate::ui::state::ask::Ask;
use crate::ui::state::view::View;
use crate::ui::widget::theme::Palette;
use crate::units::Units;
use egui::{CentralPanel, Frame, Ui};
use std::path::PathBuf;

/// The drawing and the printing.
#[derive(Default)]
pub(in crate::ui) struct PaperJobs {
    preview: Preview,
    printer: Printer,
    saver: Saver,
}

impl PaperJobs {
    /// Returns a desk whose printer never calls a viewer.
    pub(in crate::ui) fn without_viewer() -> Self {
        Self { printer: Printer::without_viewer(), ..Self::default() }
    }

    /// Returns whether something goes on in the background.
    pub(in crate::ui) const fn is_busy(&self) -> bool {
        self.preview.is_drawing() || self.printer.is_printing() || self.saver.is_saving()
    }

    /// Returns what came of the printing or the saving, once something did.
    pub(in crate::ui) fn printed(&mut self) -> Option<Printed> {
        self.printer.answer().or_else(|| self.saver.answer())
    }

    /// Draws the page of the plan and returns what is asked for.
    pub(in crate::ui) fn page_ui(&mut self, ui: &mut Ui, view: &mut View, batch: &Batch, now: &Now) -> Vec<Ask> {
        let page = Frame::new().fill(Palette::of(ui).background).inner_margin(20);
        let printing = self.printer.is_printing();
        CentralPanel::default().frame(page).show(ui, |ui| plan_ui(ui, view, &mut self.preview, (batch, now), printing)).inner
    }

    /// Hands the plan to the system's viewer.
    ///
    /// # Errors
    /// What to say, if it cannot begin.
    pub(in crate::ui) fn print(
        &mut self,
        ctx: &egui::Context,
        batch: &Batch,
        now: Now,
        sheet: (Sheets, Units),
    ) -> Result<(), String> {
        self.printer.print(ctx, batch, now, sheet, file_name(&batch.design.title, ".pdf"))
    }

    /// Saves the plan as PDF in the background.
    ///
    /// # Errors
    /// What to say, if it cannot begin.
    pub(in crate::ui) fn save(
        &mut self,
        ctx: &egui::Context,
        batch: &Batch,
        now: Now,
        (sheets, units): (Sheets, Units),
        path: PathBuf,
    ) -> Result<(), String> {
        let (batch, named) = (batch.clone(), path.clone());
        self.saver.save(ctx, path, move || {
            let plan = plan_at(&batch, &now).shown_in(units);
            let bytes = pdf(&plan, &sheets).map_err(|error| error.to_string())?;
            let counted = plan.no_week.map(|why| format!(" Times count from the first task: {why}.")).unwrap_or_default();
            Ok((bytes, format!("Plan saved as {}.{counted}", named.display())))
        })
    }

    /// Saves two designs side by side as PDF in the background.
    ///
    /// # Errors
    /// What to say, if it cannot begin.
    pub(in crate::ui) fn save_both(
        &mut self,
        ctx: &egui::Context,
        (a, b): (&Batch, &Batch),
        (paper, units): (Paper, Units),
        path: PathBuf,
    ) -> Result<(), String> {
        let (a, b, named) = (a.clone(), b.clone(), path.clone());
        self.saver.save(ctx, path, move || {
            let bytes = comparison_pdf(&comparison(&a, &b, units), paper).map_err(|error| error.to_string())?;
            Ok((bytes, format!("A and B side by side saved as {}.", named.display())))
        })
    }

    /// Puts the plan into the clipboard; returns what to say of it.
    pub(in crate::ui) fn copy(ctx: &egui::Context, batch: &Batch, now: &Now, units: Units) -> String {
        ctx.copy_text(text(&plan_at(batch, now).shown_in(units)));
        "The plan is in the clipboard as text.".to_owned()
    }
}
