//! What is new, as it is written and as it is read.

use vatsketch::words::{changes, changes_in};

#[test]
fn the_newest_change_is_that_of_this_version_and_every_item_is_a_sentence() {
    let changes = changes();
    assert!(changes[0].heading.starts_with(env!("CARGO_PKG_VERSION")), "{}", changes[0].heading);
    assert!(changes.len() > 3);
    for change in &changes {
        assert!(!change.items.is_empty(), "{}", change.heading);
        for item in &change.items {
            assert!(item.ends_with('.') && !item.contains(['*', '`', '\n']), "{}: {item}", change.heading);
        }
    }
}

#[test]
fn headings_and_items_are_read_and_nothing_else() {
    let text = "# Title\n\n- Before any heading.\n\n## Second\n\n- One\n  and a half.\nA remark.\n- Two.\n\n## First\n- Old.\n";
    let read = changes_in(text);
    let told: Vec<(&str, Vec<&str>)> =
        read.iter().map(|change| (change.heading.as_str(), change.items.iter().map(String::as_str).collect())).collect();
    assert_eq!(told, [("Second", vec!["One and a half.", "Two."]), ("First", vec!["Old."])]);
    assert!(changes_in("").is_empty());
}
