//! The id of a design in a file: a plain text, and no member at all where there is none. Format 4 was the first to have it.

use crate::design::DesignId;
use serde::de::Error;
use serde::{Deserialize, Deserializer, Serializer};

/// The id, as all formats have it.
pub(super) type SavedId = DesignId;

/// Writes the id; asked only where there is one.
#[allow(clippy::ref_option, reason = "serde hands the member over as it is")]
pub(super) fn serialize<S: Serializer>(id: &Option<SavedId>, serializer: S) -> Result<S::Ok, S::Error> {
    match id {
        Some(id) => serializer.collect_str(id),
        None => serializer.serialize_none(),
    }
}

/// Reads the id; what is wrong with it is told with its place in the file.
pub(super) fn deserialize<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Option<SavedId>, D::Error> {
    let text = String::deserialize(deserializer)?;
    DesignId::read(&text).map(Some).map_err(Error::custom)
}
