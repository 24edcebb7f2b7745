//! The window on the desktop.

use crate::file::path_of_address;
use crate::session::{EXAMPLES, FaultLog, Kept, Recovery, Session, WindowPlace, copies_in};
use crate::ui::widget::theme::install;
use crate::ui::window::desktop_wishes::ask_desktop;
use crate::ui::window::folders::Folders;
use crate::ui::window::place::{Place, placed};
use crate::ui::window::shell::Window;
use std::cell::Cell;
use std::panic::PanicHookInfo;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Why no window could be opened.
#[derive(Debug, thiserror::Error)]
pub enum WindowError {
    /// No display, or no graphics driver.
    #[error(
        "no window can be opened here ({0}); on a machine with a display check that DISPLAY or WAYLAND_DISPLAY is set and an OpenGL driver is installed (resources/debian-packages.sh says what is missing), or use the command line: vatsketch --help"
    )]
    NoWindow(String),
    /// The program broke down while its window was open.
    #[error("the program broke down: what is known of it is in {}; {}", log.display(), copies_in_words(copies))]
    Fault {
        /// Where it is noted.
        log: PathBuf,
        /// The copies of what was not saved.
        copies: Vec<PathBuf>,
    },
    /// The named design cannot be opened, and the built-in example neither.
    #[error(transparent)]
    Session(#[from] crate::session::SessionError),
}

/// Returns where the copies of what was not saved are.
fn copies_in_words(copies: &[PathBuf]) -> String {
    let paths: Vec<String> = copies.iter().map(|path| path.display().to_string()).collect();
    if paths.is_empty() {
        "nothing was unsaved".to_owned()
    } else {
        format!("what was not saved is kept in {} and is offered at the next start", paths.join(" and "))
    }
}

/// What is done when a thread breaks down.
type Hook = Arc<dyn Fn(&PanicHookInfo<'_>) + Send + Sync>;

/// Opens the window on a design, or on the first example, and returns when it is closed.
///
/// # Errors
/// [`WindowError`].
pub fn run(file: Option<&Path>) -> Result<(), WindowError> {
    let opened = file.map(|named| Session::open_file(&path_of_address(named)));
    let (session, problem) = match opened {
        Some(Ok(session)) => (session, None),
        Some(Err(error)) => (first_example()?, Some(error.to_string())),
        None => (first_example()?, None),
    };
    let Folders { config, state } = Folders::here();
    let kept_place = Kept::<WindowPlace>::in_folder(&config);
    let mut viewport = placed(egui::ViewportBuilder::default().with_app_id("vatsketch").with_title("Vatsketch"), kept_place.now());
    if let Some(icon) = icon() {
        viewport = viewport.with_icon(icon);
    }
    let options = eframe::NativeOptions { viewport, ..Default::default() };
    let log = FaultLog::in_folder(&state);
    let recovery = Recovery::in_folder(&state);
    let copies = recovery.folder().to_owned();
    // Without a display the toolkit panics in some places and returns an error in others; both are said in one sentence. Once the window is
    // there, a panic is a fault of the program and is noted.
    let normal: Hook = std::panic::take_hook().into();
    std::panic::set_hook(Box::new(|_| ()));
    let is_open = Cell::new(false);
    let (open, noted, told) = (&is_open, log.clone(), Arc::clone(&normal));
    let create: eframe::AppCreator<'_> = Box::new(move |context| {
        open.set(true);
        std::panic::set_hook(Box::new(noted.hook(move |panic: &PanicHookInfo<'_>| told(panic))));
        install(&context.egui_ctx);
        ask_desktop(&context.egui_ctx);
        let mut window = Window::with_recovery(session, &config, recovery);
        match problem {
            Some(problem) => window.tell(problem),
            // Who names a file knows what to open.
            None if file.is_none() => window.greet(&config),
            None => {}
        }
        Ok(Box::new(Desktop { window, place: Place::of(kept_place) }))
    });
    let ran = std::panic::catch_unwind(std::panic::AssertUnwindSafe(|| eframe::run_native("vatsketch", options, create)));
    std::panic::set_hook(Box::new(move |panic| normal(panic)));
    match ran {
        Ok(Ok(())) => Ok(()),
        // The toolkit names its own source files first; what went wrong stands last.
        Ok(Err(error)) => Err(WindowError::NoWindow(
            error.to_string().rsplit(": ").next().unwrap_or_default().trim_end_matches('.').trim_end_matches(')').to_owned(),
        )),
        Err(_) if is_open.get() => Err(WindowError::Fault { log: log.path().to_owned(), copies: copies_in(&copies) }),
        Err(_) => Err(WindowError::NoWindow("the display could not be reached".to_owned())),
    }
}

/// The worked example, untitled and in no file.
fn first_example() -> Result<Session, crate::session::SessionError> {
    let mut design = EXAMPLES.first().map(crate::session::Example::design).transpose()?.unwrap_or_default();
    design.title.clear();
    Ok(Session::open(design, None)?)
}

/// Returns the picture that stands for the window in lists of windows; none if it cannot be read, and then the desktop draws its own.
fn icon() -> Option<egui::IconData> {
    eframe::icon_data::from_png_bytes(include_bytes!("../../../resources/desktop/vatsketch-128.png")).ok()
}

/// The window as the desktop's toolkit expects it.
struct Desktop {
    window: Window,
    place: Place,
}

impl eframe::App for Desktop {
    fn logic(&mut self, ctx: &egui::Context, _: &mut eframe::Frame) {
        self.place.follow(ctx);
        self.window.logic(ctx);
    }

    fn ui(&mut self, ui: &mut egui::Ui, _: &mut eframe::Frame) {
        self.window.ui(ui);
    }
}

impl Drop for Desktop {
    /// Keeps where the window is, and what is not saved when the program breaks down, for the last change may be newer than its copy.
    fn drop(&mut self) {
        self.place.keep();
        if std::thread::panicking() {
            self.window.keep_in_a_fault();
        }
    }
}
