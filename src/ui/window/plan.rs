//! The page of the plan: the row of its parts, and the part in sight.

use crate::session::WallClock;
use crate::ui::state::ask::Ask;
use crate::ui::state::pages::PlanPart;
use crate::ui::supplies::page::supplies_page_ui;
use crate::ui::week::page::week_page_ui;
use crate::ui::widget::room::Room;
use crate::ui::widget::theme::Palette;
use crate::ui::window::plan_parts::plan_parts_ui;
use crate::ui::window::shell::{ONE_COLUMN, Window};
use egui::{Frame, Margin, Panel, Ui};
use std::time::Duration;

/// How often a plan looks at the clock by itself.
const QUARTER_HOUR: Duration = Duration::from_mins(15);

impl Window {
    pub(super) fn plan_page(&mut self, ui: &mut Ui) -> Vec<Ask> {
        let parts = Frame::new().fill(Palette::of(ui).panel).inner_margin(Margin { left: 12, right: 12, top: 2, bottom: 6 });
        let part = self.view.plan_part;
        let mut asks = Panel::top("plan parts").frame(parts).show(ui, |ui| plan_parts_ui(ui, part)).inner;
        let room = if ui.available_width() < ONE_COLUMN { Room::Column } else { Room::Own };
        let batch = self.session.batch();
        if matches!(self.clock, WallClock::Computer) {
            // What is left of the day changes without anybody doing anything.
            ui.ctx().request_repaint_after(QUARTER_HOUR);
        }
        asks.extend(match part {
            PlanPart::Week => week_page_ui(ui, &mut self.kept_week, &mut self.view, batch, &self.clock.now(), room),
            PlanPart::Shopping => supplies_page_ui(ui, &mut self.kept_week, &mut self.view, batch, &self.clock.now(), room),
            PlanPart::Paper => self.paper_jobs.page_ui(ui, &mut self.view, batch, &self.clock.now()),
        });
        asks
    }
}
