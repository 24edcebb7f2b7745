//! The help: what is in front of the window, and the steps of the guide.

use crate::design::Stage;
use crate::ui::state::pages::{Page, PlanPart};
use crate::ui::state::view::View;
use crate::words::{GUIDE, GuidePlace, GuideStep};

impl View {
    /// Returns the step of the guide that is shown, if it is on.
    pub(in crate::ui) fn guide_step(&self) -> Option<&'static GuideStep> {
        self.guide.and_then(|step| GUIDE.get(step))
    }

    /// Shows a step of the guide and brings the window to the place that it speaks of, or leaves the guide.
    pub(in crate::ui) fn go_to_guide(&mut self, step: Option<usize>) {
        self.guide = step.filter(|step| *step < GUIDE.len());
        let Some(step) = self.guide_step() else { return };
        self.guide_to = Some(step.place);
        match step.place {
            GuidePlace::BeforeBuying | GuidePlace::Run => self.show_station(Stage::Milk),
            GuidePlace::Curve | GuidePlace::Menus => self.show_station(Stage::Drying),
            GuidePlace::Results => {
                self.show_station(Stage::Drying);
                self.go_to_cautions();
            }
            GuidePlace::Plan => (self.page, self.plan_part) = (Page::Plan, PlanPart::Week),
            GuidePlace::Log => self.page = Page::Log,
            GuidePlace::Sources => self.page = Page::Sources,
        }
    }
}
