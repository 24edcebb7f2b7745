//! Makes a new file like the one whose place it takes: owner, group, permissions, access list and extended attributes.

use std::fs::{File, Metadata};
use std::io::Result;
use std::path::Path;

/// Gives a new file what an old one has besides its content. The permissions must be kept; the rest is kept where the system allows.
pub(super) fn make_alike(file: &File, path: &Path, (old_path, old): (&Path, &Metadata)) -> Result<()> {
    #[cfg(unix)]
    {
        use std::os::unix::fs::MetadataExt;
        // Each by itself: who may not give a file away may still give it to a group. Before the permissions, which a new owner takes away.
        let _ = std::os::unix::fs::fchown(file, None, Some(old.gid()));
        let _ = std::os::unix::fs::fchown(file, Some(old.uid()), None);
        copy_attributes(path, old_path);
    }
    #[cfg(not(unix))]
    let _ = (path, old_path);
    file.set_permissions(old.permissions())
}

/// Copies the extended attributes, one of which is the access list.
#[cfg(unix)]
fn copy_attributes(to: &Path, from: &Path) {
    for name in xattr::list(from).into_iter().flatten() {
        if let Ok(Some(value)) = xattr::get(from, &name) {
            // Some belong to the system and may not be set by anybody.
            let _ = xattr::set(to, &name, &value);
        }
    }
}
