//! The names that events have for ever.

use crate::design::DesignId;
use uuid::Uuid;

/// Where the names of the events of designs without an id are counted: chosen once at random, and never changed again.
const NAMES: Uuid = Uuid::from_u128(0x2035_8962_8195_492e_862d_b598_85e3_6223);
/// The property that holds the key of a task, a word of our own as RFC 5545, 3.8.8.2 allows.
pub(super) const TASK: &str = "X-VATSKETCH-TASK";

/// Returns the name that an event has for ever.
pub(super) fn name(title: &str, id: Option<DesignId>, key: &str) -> String {
    if let Some(id) = id {
        return Uuid::new_v5(id.as_uuid(), key.as_bytes()).to_string();
    }
    let title = title.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase();
    Uuid::new_v5(&NAMES, format!("{title}\n{key}").as_bytes()).to_string()
}
