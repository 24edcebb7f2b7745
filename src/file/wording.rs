//! What is wrong at one place of the text, in the maker's words instead of the parser's.

use super::place::Place;
use crate::design::{did_you_mean, nearest};
use ron::error::Error;

/// Members that stand in the outermost brackets; one of them elsewhere means that a bracket was forgotten.
const OUTERMOST: [&str; 13] =
    ["format", "id", "title", "note", "milk", "vat", "draining", "salting", "drying", "pickling", "keeping", "week", "supplies"];

/// Returns what is wrong, as part of a longer sentence.
pub(super) fn cause(code: &Error, place: &Place<'_>) -> String {
    if let Some((comma, point)) = place.decimal_comma() {
        let key = place_member(place);
        return format!("{key}a comma stands in a number here; write {point} instead of {comma}");
    }
    match code {
        Error::MissingStructField { field: "format", .. } => {
            "the entry `format` is missing, so this is no Vatsketch design or its beginning was lost".to_owned()
        }
        Error::MissingStructField { field, .. } => format!("the entry `{field}` is missing; add it"),
        Error::DuplicateStructField { field, .. } => format!("the entry `{field}` is there twice; keep one"),
        Error::NoSuchStructField { expected, found, .. } => {
            format!("there is no entry called `{found}` here; correct its name or take it out{}", meant(expected, found))
        }
        Error::NoSuchEnumVariant { expected, found, .. } => {
            let near = did_you_mean(nearest(found, expected.iter().copied()));
            format!("`{found}` is not a choice here; write one of {}{near}", expected.join(", "))
        }
        Error::ExceededRecursionLimit => "brackets are nested deeper here than in any design".to_owned(),
        Error::IntegerOutOfBounds => format!("{}this whole number is too large or below zero", place_member(place)),
        Error::Message(words) => words.clone(),
        Error::ExpectedFloat => value(place, "a number, as in 6.0"),
        Error::ExpectedInteger | Error::InvalidIntegerDigit { .. } => value(place, "a whole number, as in 8"),
        Error::ExpectedBoolean => value(place, "true or false"),
        Error::ExpectedString => value(place, "words in quotation marks, as in \"18:30\""),
        Error::ExpectedOption => value(place, "None, or its value within brackets, as in Some(3)"),
        Error::ExpectedArray => value(place, "a list in square brackets, as in [ … ]"),
        other => brackets(other, place),
    }
}

/// Returns what is wrong with the signs that hold a design together.
fn brackets(code: &Error, place: &Place<'_>) -> String {
    match code {
        Error::ExpectedComma | Error::ExpectedOptionEnd | Error::ExpectedStructLikeEnd | Error::ExpectedArrayEnd
            if place.is_end() =>
        {
            "the text ends here, but a bracket is still open: add the ) or ] that is missing".to_owned()
        }
        Error::Eof => "the text stops too early here; the rest is missing".to_owned(),
        Error::ExpectedComma => no_comma(place),
        Error::ExpectedOptionEnd | Error::ExpectedStructLikeEnd => "a closing round bracket `)` was expected here".to_owned(),
        Error::ExpectedArrayEnd => "a closing square bracket `]` was expected here".to_owned(),
        Error::ExpectedMapColon => format!("a colon was expected after `{}`, as in milk_l: 6.0", place.ended().0),
        Error::ExpectedNamedStructLike(_) | Error::ExpectedStructLike | Error::ExpectedDifferentStructName { .. } => {
            "round brackets were expected here, as in ( milk_l: 6.0 )".to_owned()
        }
        Error::ExpectedStringEnd => "the words that begin here have no closing quotation mark".to_owned(),
        Error::InvalidEscape(_) => "a backslash stands in these words; write two of them for one".to_owned(),
        Error::UnclosedBlockComment => "the comment that begins here is not closed: */ is missing".to_owned(),
        Error::TrailingCharacters if matches!(place.sign(), Some(')' | ']' | '}')) => {
            "there is one closing bracket too many here; take out that bracket".to_owned()
        }
        Error::TrailingCharacters => "the design ends before this; take out what follows".to_owned(),
        // A choice is a word, and so is a name.
        _ if place.is_value() => value(place, "one of its choices, without quotation marks, as in milk_kind: cow"),
        _ if place.sign() == Some(',') => "two commas follow each other here; take one out".to_owned(),
        _ if place.is_end() => "the text stops too early here; the rest is missing".to_owned(),
        _ => format!("the name of an entry was expected here, as in milk_l: 6.0, but `{}` is none", place.word()),
    }
}

/// Returns what to do where a member ends and no comma follows.
fn no_comma(place: &Place<'_>) -> String {
    let ((before, is_value), key, found) = (place.ended(), place_member(place), place.word());
    let is_number = before.starts_with(|letter: char| letter.is_ascii_digit());
    let is_word = before.starts_with(char::is_alphabetic);
    match (is_value, place.sign()) {
        (false, _) if is_word => format!("a colon was expected after `{before}`, as in milk_l: 6.0"),
        (true, Some('.')) if is_number => {
            format!("{key}a whole number was expected, and a point follows it here; write {before}")
        }
        (true, _) if is_number && !found.contains(':') => {
            format!("{key}only a number can stand here; write {before} without `{found}`")
        }
        (true, _) if is_word && !found.contains(':') => {
            format!("{key}words must stand in quotation marks, as in \"{before} …\"")
        }
        _ => "a comma was expected here, before the next name".to_owned(),
    }
}

/// Returns what must be the value of a member, and what stands there instead.
fn value(place: &Place<'_>, wanted: &str) -> String {
    let key = place.member().map_or_else(|| "this".to_owned(), |key| format!("`{key}`"));
    match place.word().trim_start_matches(':').trim() {
        "" => format!("{key} must be {wanted}, but nothing stands there"),
        found => format!("{key} must be {wanted}, but `{found}` stands there"),
    }
}

/// Returns the name of the member that this is about, to put first.
fn place_member(place: &Place<'_>) -> String {
    place.member().map_or_else(String::new, |key| format!("`{key}`: "))
}

/// Returns the hint at the known name that is spelled most like the given one, or at the bracket that was forgotten.
fn meant(known: &[&'static str], given: &str) -> String {
    if OUTERMOST.contains(&given) {
        return format!("; perhaps the bracket `)` that ends the entry before `{given}` is missing");
    }
    did_you_mean(nearest(given, known.iter().copied()))
}
