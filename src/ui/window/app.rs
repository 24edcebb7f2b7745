//! The window on the desktop.

use crate::session::{EXAMPLES, Session};
use crate::ui::widget::theme::install;
use crate::ui::window::shell::Window;
use std::path::{Path, PathBuf};

/// Why no window could be opened.
#[derive(Debug, thiserror::Error)]
pub enum WindowError {
    /// No display, or no graphics driver.
    #[error(
        "no window can be opened here ({0}); on a machine with a display check that DISPLAY or WAYLAND_DISPLAY is set and an OpenGL driver is installed (resources/debian-packages.sh says what is missing), or use the command line: vatsketch --help"
    )]
    NoWindow(String),
    /// The named design cannot be opened, and the built-in example neither.
    #[error(transparent)]
    Session(#[from] crate::session::SessionError),
}

/// Opens the window on a design, or on the first example, and returns when it is closed.
///
/// # Errors
/// [`WindowError`].
pub fn run(file: Option<&Path>) -> Result<(), WindowError> {
    let opened = file.map(Session::open_file);
    let (session, problem) = match opened {
        Some(Ok(session)) => (session, None),
        Some(Err(error)) => (first_example()?, Some(error.to_string())),
        None => (first_example()?, None),
    };
    let (config, state) = folders();
    let options = eframe::NativeOptions {
        viewport: egui::ViewportBuilder::default()
            .with_app_id("vatsketch")
            .with_title("Vatsketch")
            .with_inner_size([1280.0, 800.0])
            .with_min_inner_size([640.0, 480.0]),
        ..Default::default()
    };
    let create: eframe::AppCreator<'_> = Box::new(move |context| {
        install(&context.egui_ctx);
        let mut window = Window::with_folders(session, &config, &state);
        if let Some(problem) = problem {
            window.tell(problem);
        }
        Ok(Box::new(Desktop { window }))
    });
    // Without a display the toolkit panics in some places and returns an error in others; both are said in one sentence.
    let quiet = std::panic::take_hook();
    std::panic::set_hook(Box::new(|_| ()));
    let ran = std::panic::catch_unwind(std::panic::AssertUnwindSafe(|| eframe::run_native("vatsketch", options, create)));
    std::panic::set_hook(quiet);
    match ran {
        Ok(Ok(())) => Ok(()),
        // The toolkit names its own source files first; what went wrong stands last.
        Ok(Err(error)) => Err(WindowError::NoWindow(
            error.to_string().rsplit(": ").next().unwrap_or_default().trim_end_matches('.').trim_end_matches(')').to_owned(),
        )),
        Err(_) => Err(WindowError::NoWindow("the display could not be reached".to_owned())),
    }
}

/// The worked example, untitled and in no file.
fn first_example() -> Result<Session, crate::session::SessionError> {
    let mut design = EXAMPLES.first().map(crate::session::Example::design).transpose()?.unwrap_or_default();
    design.title.clear();
    Ok(Session::open(design, None)?)
}

/// Returns the folders for lists and for the recovery copy, as the desktop's base directory specification has them.
fn folders() -> (PathBuf, PathBuf) {
    let of = |variable: &str, under_home: &str| {
        let named = std::env::var_os(variable).map(PathBuf::from).filter(|path| path.is_absolute());
        let home = || std::env::var_os("HOME").map_or_else(std::env::temp_dir, PathBuf::from).join(under_home);
        named.unwrap_or_else(home).join("vatsketch")
    };
    (of("XDG_CONFIG_HOME", ".config"), of("XDG_STATE_HOME", Path::new(".local").join("state").to_string_lossy().as_ref()))
}

/// The window as the desktop's toolkit wants it.
struct Desktop {
    window: Window,
}

impl eframe::App for Desktop {
    fn logic(&mut self, ctx: &egui::Context, _: &mut eframe::Frame) {
        self.window.logic(ctx);
    }

    fn ui(&mut self, ui: &mut egui::Ui, _: &mut eframe::Frame) {
        self.window.ui(ui);
    }
}
