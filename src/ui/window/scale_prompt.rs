//! The question to what the whole design is to be scaled, with what would follow.

use crate::analysis::{ScaleGoal, ScaleTo, amount_now};
use crate::batch::Batch;
use crate::report::ScalePreview;
use crate::session::{Command, ScaleTrial, Session};
use crate::ui::widget::number_text::read_number;
use crate::ui::widget::pill::{pill_ui, pills_ui};
use crate::ui::widget::spoken::{alert_ui, say_changes};
use crate::ui::widget::text_undo::remember_text;
use crate::ui::widget::theme::{CAPTION, Palette};
use crate::ui::window::reply::{Reply, heading};
use crate::ui::window::scale_preview::preview_ui;
use crate::units::{Scale, Units};
use egui::{Button, Key, RichText, TextEdit, Ui, vec2};

/// What is asked, and what would follow from the answer so far.
#[derive(Clone, Debug, PartialEq)]
pub(in crate::ui) struct ScalePrompt {
    before: Batch,
    units: Units,
    to: ScaleTo,
    text: String,
    tried: Tried,
}

/// What came of the answer so far.
#[derive(Clone, Debug, PartialEq)]
enum Tried {
    /// Nothing was typed.
    Nothing,
    /// It cannot be done, and why.
    Refused(String),
    /// What would follow, and the command that does it.
    Shown(Box<(ScalePreview, Command)>),
}

impl ScalePrompt {
    /// Returns the question about the open design.
    pub(in crate::ui) fn of(session: &Session, units: Units) -> Self {
        Self { before: session.batch().clone(), units, to: ScaleTo::Milk, text: String::new(), tried: Tried::Nothing }
    }

    /// Asks about something else.
    fn choose(&mut self, to: ScaleTo) {
        if to != self.to {
            (self.to, self.tried) = (to, Tried::Nothing);
            self.text.clear();
        }
    }

    /// Returns the unit in which the answer is shown: that of what there is now.
    fn scale(&self) -> Scale {
        self.units.scale(self.to.unit(), amount_now(&self.before, self.to).unwrap_or_default())
    }

    /// Returns how much there is now, in words.
    fn now_words(&self) -> String {
        match amount_now(&self.before, self.to) {
            Ok(amount) => format!("now {}", ScaleGoal { to: self.to, amount }.in_words(self.units)),
            Err(_) => String::new(),
        }
    }

    /// Tries what was typed.
    fn try_text(&mut self) {
        self.tried = if self.text.trim().is_empty() { Tried::Nothing } else { self.trial() };
    }

    fn trial(&self) -> Tried {
        let amount = match read_number(&self.text, self.to.unit(), self.units) {
            // A bare number is meant as the amount is shown.
            Ok(read) => {
                if read.bare {
                    self.scale().kept(read.value)
                } else {
                    read.value
                }
            }
            Err(why) => return Tried::Refused(why.to_string()),
        };
        match ScaleTrial::of(&self.before, ScaleGoal { to: self.to, amount }, self.units) {
            Ok(trial) => {
                let command = trial.command();
                Tried::Shown(Box::new((trial.preview, command)))
            }
            Err(error) => Tried::Refused(error.in_words(self.units)),
        }
    }
}

/// Draws the question and returns its answer, once there is one.
pub(in crate::ui) fn scale_ui(ui: &mut Ui, prompt: &mut ScalePrompt) -> Option<Reply> {
    heading(ui, "Scale the design");
    ui.label("All amounts change together, as one step to undo. Nothing changes before you press “Scale”.");
    ui.add_space(6.0);
    goals_ui(ui, prompt);
    ui.add_space(6.0);
    let entered = amount_ui(ui, prompt);
    ui.add_space(6.0);
    let command = tried_ui(ui, &prompt.tried, prompt.units);
    ui.add_space(10.0);
    ui.horizontal(|ui| {
        let does = ui.add_enabled(command.is_some(), Button::new("Scale").min_size(BUTTON)).clicked();
        let given_up = ui.add(Button::new("Cancel").min_size(BUTTON)).clicked();
        let asked = command.filter(|_| does || entered).map(|command| Reply::Scale(Box::new(command)));
        asked.or_else(|| given_up.then_some(Reply::Cancel))
    })
    .inner
}

/// What the box is called.
const BOX: &str = "Scale to";
/// Least size of a button.
const BUTTON: egui::Vec2 = vec2(96.0, 32.0);

fn goals_ui(ui: &mut Ui, prompt: &mut ScalePrompt) {
    pills_ui(ui, "What to scale to", |ui| {
        for to in ScaleTo::ALL {
            let chosen = prompt.to == to;
            if pill_ui(ui, to.label(), &format!("Scale to: {}", to.label()), to.help(), (chosen, chosen)) {
                prompt.choose(to);
            }
        }
    });
}

/// Draws the box of the amount, and returns whether it was entered.
fn amount_ui(ui: &mut Ui, prompt: &mut ScalePrompt) -> bool {
    let (behind, now) = (prompt.to.behind(prompt.scale().symbol), prompt.now_words());
    ui.horizontal(|ui| {
        let label = ui.label(BOX);
        let edit = TextEdit::singleline(&mut prompt.text).desired_width(96.0).margin(vec2(8.0, 4.0));
        let response = ui.add(edit).labelled_by(label.id);
        remember_text(ui, &response, &prompt.text);
        ui.label(behind);
        ui.label(RichText::new(now).size(CAPTION).color(Palette::of(ui).soft));
        if response.changed() {
            prompt.try_text();
        }
        let entered = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
        // It is what is answered first.
        if !entered && ui.memory(|memory| memory.focused().is_none()) {
            response.request_focus();
        }
        entered
    })
    .inner
}

/// Draws what would follow, and returns the command that does it.
fn tried_ui(ui: &mut Ui, tried: &Tried, units: Units) -> Option<Command> {
    match tried {
        Tried::Nothing => {
            ui.label(RichText::new(crate::words::KEPT_IN_SCALING).size(CAPTION));
            None
        }
        Tried::Refused(why) => {
            let palette = Palette::of(ui);
            egui::Frame::new().fill(palette.stop_fill).corner_radius(4).inner_margin(6).show(ui, |ui| {
                alert_ui(ui, RichText::new(why).size(CAPTION).color(palette.stop_text));
            });
            None
        }
        Tried::Shown(shown) => {
            let (preview, command) = shown.as_ref();
            say_changes(&ui.label(RichText::new(&preview.name).strong()));
            preview_ui(ui, preview, units);
            Some(command.clone())
        }
    }
}
