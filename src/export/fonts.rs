//! The fonts of the paper, and which letters they have.

use super::printable;
use serde_json::Value;
use std::sync::LazyLock;
use typst::foundations::Bytes;
use typst::text::Font;

const FONT_FILES: [&[u8]; 3] = [
    include_bytes!("../../resources/fonts/NotoSans-Regular.ttf"),
    include_bytes!("../../resources/fonts/NotoSans-Bold.ttf"),
    include_bytes!("../../resources/fonts/DejaVuSans.ttf"),
];

/// The fonts are parsed once: it takes longer than setting a page.
pub(super) static FONTS: LazyLock<Vec<Font>> =
    LazyLock::new(|| FONT_FILES.iter().flat_map(|file| Font::iter(Bytes::new(*file))).collect());

/// Stands in the place of a letter that no font has; an empty box would say nothing.
const REPLACEMENT: char = '?';

/// Returns whether a letter can be seen on the paper, or is one that is never seen.
pub(super) fn has(letter: char) -> bool {
    let unseen =
        matches!(letter, '\u{ad}' | '\u{200b}'..='\u{200f}' | '\u{2060}'..='\u{2064}' | '\u{fe00}'..='\u{fe0f}' | '\u{feff}');
    letter.is_ascii()
        || unseen
        || letter.is_whitespace()
        || FONTS.iter().any(|font| font.info().coverage.contains(u32::from(letter)))
}

/// Returns data for a template with every letter replaced that the fonts do not have.
pub(super) fn printed(data: Value) -> Value {
    match data {
        Value::String(text) => {
            Value::String(printable(&text).chars().map(|letter| if has(letter) { letter } else { REPLACEMENT }).collect())
        }
        Value::Array(rows) => Value::Array(rows.into_iter().map(printed).collect()),
        Value::Object(members) => Value::Object(members.into_iter().map(|(name, value)| (name, printed(value))).collect()),
        plain => plain,
    }
}
