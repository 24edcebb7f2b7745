//! “Print…”: the plan as a PDF in a folder of our own among the system's temporary files, opened with the system's viewer.

use crate::batch::Batch;
use crate::export::{Sheets, pdf};
use crate::file::write_safely;
use crate::plan::Now;
use crate::report::plan_at;
use crate::units::Units;
use std::fs::DirBuilder;
use std::io::{Error, ErrorKind, Result as IoResult};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::mpsc::{Receiver, TryRecvError, channel};
use std::time::{Duration, Instant};

/// A viewer that is still there after this long has not refused the file.
const HAS_OPENED: Duration = Duration::from_secs(2);
/// How often it is looked at meanwhile.
const LOOK_EVERY: Duration = Duration::from_millis(50);
/// Names that are tried for the folder.
const NAMES_TRIED: u32 = 64;

/// What came of it: what to say, as good news or as bad.
pub(in crate::ui) type Printed = Result<String, String>;

/// Prints, one plan at a time.
#[derive(Debug, Default)]
pub(in crate::ui) struct Printer {
    /// Never call a viewer, as in tests and pictures.
    without_viewer: bool,
    running: Option<Receiver<(Option<PathBuf>, Printed)>>,
    /// Our own folder, once it is made; the plan in it is written over, so that one file is left and not many.
    folder: Option<PathBuf>,
}

impl Printer {
    /// Returns a printer that never calls a viewer.
    pub(in crate::ui) fn without_viewer() -> Self {
        Self { without_viewer: true, ..Self::default() }
    }

    /// Returns whether a plan is on its way.
    pub(in crate::ui) const fn is_printing(&self) -> bool {
        self.running.is_some()
    }

    /// Prints a plan, unless one is on its way.
    ///
    /// # Errors
    /// What to say, if no thread can be had.
    pub(in crate::ui) fn print(
        &mut self,
        ctx: &egui::Context,
        batch: &Batch,
        now: Now,
        sheet: (Sheets, Units),
        name: String,
    ) -> Result<(), String> {
        if self.running.is_some() {
            return Ok(());
        }
        let (sender, receiver) = channel();
        let (batch, repaint, without_viewer, folder) = (batch.clone(), ctx.clone(), self.without_viewer, self.folder.clone());
        let spawned = std::thread::Builder::new().name("print".to_owned()).spawn(move || {
            let tell = |folder, printed| {
                // The window may have closed in the meantime; then nobody waits.
                let _ = sender.send((folder, printed));
                repaint.request_repaint();
            };
            let (folder, path) = match written(&batch, &now, sheet, folder, &name) {
                Ok(places) => places,
                Err(error) => return tell(None, Err(error)),
            };
            let opened = if without_viewer { Err(Error::from(ErrorKind::NotFound)) } else { open(&path) };
            match opened {
                Ok(still_running) => {
                    tell(
                        Some(folder),
                        Ok(format!("The plan is open in the system's viewer; print it from there. It is in {}.", path.display())),
                    );
                    if let Some(mut viewer) = still_running {
                        // Waited for only so that the system can forget it.
                        let _ = viewer.wait();
                    }
                }
                Err(error) => tell(Some(folder), Err(no_viewer(&path, &error))),
            }
        });
        match spawned {
            Ok(_) => self.running = Some(receiver),
            Err(error) => return Err(format!("The plan cannot be printed: no thread could be started: {error}.")),
        }
        Ok(())
    }

    /// Returns what came of the printing, once something did.
    pub(in crate::ui) fn answer(&mut self) -> Option<Printed> {
        let printed = match self.running.as_ref()?.try_recv() {
            Ok((folder, printed)) => {
                // A plan that could not be written leaves the folder as it was.
                self.folder = folder.or_else(|| self.folder.take());
                printed
            }
            Err(TryRecvError::Disconnected) => Err("the printing ended without an answer; please report this".to_owned()),
            Err(TryRecvError::Empty) => return None,
        };
        self.running = None;
        Some(printed)
    }
}

fn no_viewer(path: &Path, error: &Error) -> String {
    let why = if error.kind() == ErrorKind::NotFound { String::new() } else { format!(" ({error})") };
    format!("No PDF viewer could be started{why}. The plan is in {}: open it from there, or save it as PDF.", path.display())
}

/// Writes the plan; returns its folder and its file.
fn written(
    batch: &Batch,
    now: &Now,
    (sheets, units): (Sheets, Units),
    folder: Option<PathBuf>,
    name: &str,
) -> Result<(PathBuf, PathBuf), String> {
    let bytes = pdf(&plan_at(batch, now).shown_in(units), &sheets).map_err(|error| error.to_string())?;
    let folder = match folder.filter(|folder| folder.is_dir()) {
        Some(folder) => folder,
        None => own_folder().map_err(|error| {
            format!("no folder for the plan could be made in {}: {error}; save it as PDF instead", std::env::temp_dir().display())
        })?,
    };
    let path = folder.join(name);
    write_safely(&path, &bytes, false).map_err(|error| error.to_string())?;
    Ok((folder, path))
}

/// Makes a folder that nobody else made and, where the system can, nobody else may look into: temporary files are often everybody's.
fn own_folder() -> IoResult<PathBuf> {
    let mut builder = DirBuilder::new();
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
    let mut taken = Error::from(ErrorKind::AlreadyExists);
    for number in 0..NAMES_TRIED {
        let folder = std::env::temp_dir().join(format!("vatsketch-{}-{number}", std::process::id()));
        match builder.create(&folder) {
            Ok(()) => return Ok(folder),
            Err(error) if error.kind() == ErrorKind::AlreadyExists => taken = error,
            Err(error) => return Err(error),
        }
    }
    Err(taken)
}

/// Opens a file with the system's viewer; returns the process if it is still running when the viewer has taken the file.
fn open(path: &Path) -> IoResult<Option<std::process::Child>> {
    let program = match () {
        () if cfg!(windows) => "explorer",
        () if cfg!(target_os = "macos") => "open",
        () => "xdg-open",
    };
    let mut viewer = Command::new(program).arg(path).stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null()).spawn()?;
    let began = Instant::now();
    while began.elapsed() < HAS_OPENED {
        if let Some(status) = viewer.try_wait()? {
            // The Windows desktop answers 1 whatever came of it.
            let taken = status.success() || cfg!(windows);
            return if taken { Ok(None) } else { Err(Error::other(format!("{program} says {status}"))) };
        }
        std::thread::sleep(LOOK_EVERY);
    }
    Ok(Some(viewer))
}
