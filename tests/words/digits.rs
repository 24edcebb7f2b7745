//! Numbers in words come from the records: no digit is typed in the texts of `src/words`.

use std::path::Path;

/// What an amount is of, in the words of the trade; neither is a figure of ours.
const BASES: [&str; 2] = ["100 g", "100 mL"];

/// Returns the digits in the text literals of a source, what stands in braces, in comments and in [`BASES`] left out.
fn typed_digits(source: &str) -> Vec<String> {
    let mut found = Vec::new();
    for line in source.lines().filter(|line| !line.trim_start().starts_with("//")) {
        for literal in line.split('"').skip(1).step_by(2) {
            let bare = BASES.iter().fold(literal.to_owned(), |text, base| text.replace(base, ""));
            let mut depth = 0;
            let outside: String = bare
                .chars()
                .filter(|letter| {
                    match letter {
                        '{' => depth += 1,
                        '}' => depth -= 1,
                        _ => {}
                    }
                    depth == 0
                })
                .collect();
            if outside.contains(|letter: char| letter.is_ascii_digit()) {
                found.push(literal.to_owned());
            }
        }
    }
    found
}

#[test]
fn no_number_is_typed_in_the_words() {
    for (path, text) in crate::house::texts("src/words", ".rs") {
        // The one place that writes numbers, with the power of ten.
        if path.ends_with(Path::new("number.rs")) {
            continue;
        }
        let found = typed_digits(&text);
        assert!(found.is_empty(), "{}: {found:?}", path.display());
    }
}

#[test]
fn the_reader_of_digits_sees_them_in_texts_alone() {
    let source = "let a = 4.2;\nsaid(format!(\"below {sour:.2} of 100 g\"), \"use 3 mL\")";
    assert_eq!(typed_digits(source), ["use 3 mL"]);
}
