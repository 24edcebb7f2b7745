//! One place of a text: what stands there and before it.

/// A place of the text of a design.
#[derive(Clone, Copy)]
pub(super) struct Place<'a> {
    before: &'a str,
    after: &'a str,
}

impl<'a> Place<'a> {
    /// Returns the place at a line and a column, both from 1; the end of the text if it has none there.
    pub(super) fn at(text: &'a str, line: usize, column: usize) -> Self {
        let begins: usize = text.split_inclusive('\n').take(line.saturating_sub(1)).map(str::len).sum();
        let rest = text.get(begins..).unwrap_or_default();
        let at = begins + rest.char_indices().nth(column.saturating_sub(1)).map_or(rest.len(), |(at, _)| at);
        let (before, after) = text.split_at_checked(at).unwrap_or((text, ""));
        Self { before, after }
    }

    /// Returns what stands here, up to the next sign that parts members; nothing at the end of the text.
    pub(super) fn word(&self) -> &'a str {
        self.after.trim_start().split([',', '\n', ')', ']', '}']).next().unwrap_or_default().trim()
    }

    /// Returns the sign that stands here.
    pub(super) fn sign(&self) -> Option<char> {
        self.after.trim_start().chars().next()
    }

    /// Returns whether the text ends here.
    pub(super) fn is_end(&self) -> bool {
        self.after.trim().is_empty()
    }

    /// Returns whether a value is to stand here, and no name.
    pub(super) fn is_value(&self) -> bool {
        self.before.trim_end().ends_with(':')
    }

    /// Returns the name of the member whose value stands here.
    pub(super) fn member(&self) -> Option<&'a str> {
        // The parser may point at the value, or at the colon or the space before it.
        let colon_here = self.after.trim_start().starts_with(':');
        let name = if colon_here { self.before } else { self.before.rsplit_once(':')?.0 };
        Some(last_word(name)).filter(|name| name.starts_with(|letter: char| letter.is_ascii_alphabetic()))
    }

    /// Returns what ends here, and whether it is the value of a member and not a name.
    pub(super) fn ended(&self) -> (&'a str, bool) {
        let begins = self.before.rfind([':', ',', '(', '[']).map_or(0, |at| at + 1);
        let (head, ended) = self.before.split_at_checked(begins).unwrap_or(("", self.before));
        (ended.trim(), head.ends_with(':'))
    }

    /// Returns the number that a decimal comma was written in, with a comma and with a point.
    pub(super) fn decimal_comma(&self) -> Option<(String, String)> {
        let whole = last_word(self.before.trim_end().strip_suffix(',')?);
        let digits = self.after.len() - self.after.trim_start_matches(|letter: char| letter.is_ascii_digit()).len();
        let fraction = self.after.get(..digits)?;
        let number = !fraction.is_empty() && !whole.is_empty() && whole.chars().all(|letter| letter.is_ascii_digit());
        number.then(|| (format!("{whole},{fraction}"), format!("{whole}.{fraction}")))
    }
}

/// Returns the letters, digits and low lines that a text ends with.
fn last_word(text: &str) -> &str {
    let text = text.trim_end();
    let begins = text.trim_end_matches(|letter: char| letter.is_ascii_alphanumeric() || letter == '_').len();
    text.get(begins..).unwrap_or_default()
}
