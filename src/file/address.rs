//! Files named by an address, as desktops name them.

use std::path::{Path, PathBuf};

/// Returns the file that an address such as `file:///home/maker/may.vat.ron` means, and any other name as it is.
///
/// # Source
/// RFC 8089, section 2: a file URI of this machine has an empty host or `localhost`; RFC 3986, section 2.1: percent-encoding.
///
/// # Example
/// ```
/// use std::path::Path;
/// use vatsketch::file::path_of_address;
/// assert_eq!(path_of_address(Path::new("file:///home/my%20vat.vat.ron")), Path::new("/home/my vat.vat.ron"));
/// ```
#[must_use]
pub fn path_of_address(named: &Path) -> PathBuf {
    let text = named.to_string_lossy();
    let Some(rest) = text.strip_prefix("file://") else { return named.to_owned() };
    let path = rest.strip_prefix("localhost").unwrap_or(rest);
    let bytes: Vec<u8> = percent_encoding::percent_decode_str(path).collect();
    PathBuf::from(String::from_utf8_lossy(&bytes).into_owned())
}
