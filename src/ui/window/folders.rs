//! The folders in which a desktop expects what a program keeps for its user.

use std::ffi::OsString;
use std::path::{Path, PathBuf};

/// Name of our folder in each of them.
const OURS: &str = "vatsketch";

/// A family of systems with one rule for such folders.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Platform {
    /// Linux and its relatives: the XDG base directory specification, version 0.8.
    Xdg,
    /// Windows: the known folders `RoamingAppData` and `LocalAppData`.
    Windows,
    /// macOS: `Application Support` in the user's library.
    Mac,
}

impl Platform {
    /// The family that this program was built for.
    pub const HERE: Self = if cfg!(windows) {
        Self::Windows
    } else if cfg!(target_os = "macos") {
        Self::Mac
    } else {
        Self::Xdg
    };
}

/// Where the window keeps what is not a design that the maker saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Folders {
    /// The appearance and the list of recent files.
    pub config: PathBuf,
    /// The recovery copies and the note of a fault.
    pub state: PathBuf,
}

impl Folders {
    /// Returns the folders by the rule of a platform.
    ///
    /// A variable that holds no absolute path counts as not set, as the XDG specification demands.
    ///
    /// # Arguments
    /// * `variable`: what the environment holds under a name
    /// * `homeless`: the folder that stands for the user's own where the environment names none
    ///
    /// # Examples
    /// ```
    /// use std::path::Path;
    /// use vatsketch::ui::{Platform, Folders};
    /// let home = |name: &str| (name == "HOME").then(|| "/home/maker".into());
    /// assert_eq!(Folders::of(Platform::Xdg, home, Path::new("/tmp")).config, Path::new("/home/maker/.config/vatsketch"));
    /// ```
    #[must_use]
    pub fn of(platform: Platform, variable: impl Fn(&str) -> Option<OsString>, homeless: &Path) -> Self {
        let named = |name: &str| variable(name).map(PathBuf::from).filter(|path| path.is_absolute());
        let home = |name: &str| named(name).unwrap_or_else(|| homeless.to_owned());
        let (config, state) = match platform {
            Platform::Xdg => (
                named("XDG_CONFIG_HOME").unwrap_or_else(|| home("HOME").join(".config")),
                named("XDG_STATE_HOME").unwrap_or_else(|| home("HOME").join(".local").join("state")),
            ),
            Platform::Windows => {
                let data = || home("USERPROFILE").join("AppData");
                (
                    named("APPDATA").unwrap_or_else(|| data().join("Roaming")),
                    named("LOCALAPPDATA").unwrap_or_else(|| data().join("Local")),
                )
            }
            Platform::Mac => {
                let support = home("HOME").join("Library").join("Application Support");
                (support.clone(), support)
            }
        };
        Self { config: config.join(OURS), state: state.join(OURS) }
    }

    /// Returns the folders of whoever runs this program.
    #[must_use]
    pub fn here() -> Self {
        Self::of(Platform::HERE, |name| std::env::var_os(name), &std::env::temp_dir())
    }
}
