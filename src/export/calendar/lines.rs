//! Content lines of RFC 5545: text escaped, lines folded, ends of lines as the standard has them.
//!
//! Our own, because the general-purpose crate for it was found to write lines of 76 octets, and a random name into every alarm.

/// Greatest length of a line without its end, octets (3.1).
const MOST_OCTETS: usize = 75;

/// The lines of a calendar file so far.
#[derive(Default)]
pub(super) struct Lines(String);

impl Lines {
    /// Adds a line whose value is no text: a time, a number, a word of the standard.
    pub(super) fn value(&mut self, name: &str, value: &str) {
        self.folded(&format!("{name}:{value}"));
    }

    /// Adds a line whose value is text.
    pub(super) fn text(&mut self, name: &str, text: &str) {
        self.value(name, &escaped(text));
    }

    /// Adds a component, with what is written inside it.
    pub(super) fn component(&mut self, name: &str, inside: impl FnOnce(&mut Self)) {
        self.value("BEGIN", name);
        inside(self);
        self.value("END", name);
    }

    /// Returns the bytes of the file.
    pub(super) fn into_bytes(self) -> Vec<u8> {
        self.0.into_bytes()
    }

    /// Adds a line in pieces, each after the first behind a space.
    fn folded(&mut self, line: &str) {
        let (mut left, mut room) = (line, MOST_OCTETS);
        while left.len() > room {
            let (piece, rest) = left.split_at(cut(left, room));
            self.0.push_str(piece);
            self.0.push_str("\r\n ");
            (left, room) = (rest, MOST_OCTETS - 1);
        }
        self.0.push_str(left);
        self.0.push_str("\r\n");
    }
}

/// Returns where to cut a line that is longer than there is room: between letters, and not behind a space, which some readers lose there.
fn cut(line: &str, room: usize) -> usize {
    let places = || (1..=room).rev().filter(|at| line.is_char_boundary(*at));
    let after_space = |at: &usize| line.get(..*at).is_some_and(|piece| piece.ends_with(char::is_whitespace));
    // A line of nothing but spaces is cut anywhere.
    places().find(|at| !after_space(at)).or_else(|| places().next()).unwrap_or(room)
}

/// Returns words as a value of the type TEXT (3.3.11).
fn escaped(words: &str) -> String {
    let mut text = String::with_capacity(words.len());
    for letter in words.chars() {
        match letter {
            '\\' | ',' | ';' => text.extend(['\\', letter]),
            '\n' => text.push_str("\\n"),
            _ => text.push(letter),
        }
    }
    text
}
