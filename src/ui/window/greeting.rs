//! The welcome at the very first start.

use crate::session::{Kept, Welcomed};
use crate::ui::state::pages::HelpCard;
use crate::ui::window::shell::Window;
use std::path::Path;

impl Window {
    /// Welcomes a maker who starts the program for the first time: not one who has opened or saved a file before, nor one whose unsaved work is asked
    /// about. It is never done again unless it is asked for.
    ///
    /// `config`: the folder in which that is kept
    pub fn greet(&mut self, config: &Path) {
        let mut kept = Kept::<Welcomed>::in_folder(config);
        if kept.now().once || !self.recent.files.is_empty() || !self.left.is_empty() {
            return;
        }
        kept.keep(Welcomed { once: true });
        self.view.help = Some(HelpCard::Welcome);
    }
}
