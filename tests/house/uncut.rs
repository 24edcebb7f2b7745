//! The window never cuts words off with an ellipsis: they wrap, or shorter words take their place.

use super::texts;

#[test]
fn no_part_of_the_window_cuts_its_words() {
    let cuts = [".truncate()", "truncate_at_width", "TextWrapMode::Truncate"];
    let mut parts = 0;
    let mut found = Vec::new();
    for (path, text) in texts("src/ui", ".rs") {
        parts += 1;
        found.extend(cuts.iter().filter(|cut| text.contains(**cut)).map(|cut| format!("{}: {cut}", path.display())));
    }
    assert!(parts > 40, "only {parts} files were read");
    assert!(found.is_empty(), "{found:?}");
}
