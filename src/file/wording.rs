//! What is wrong at one place of the text, in the maker's words instead of the parser's.

use ron::error::Error;

/// Returns what is wrong, as part of a longer sentence.
pub(super) fn cause(code: &Error) -> String {
    match code {
        Error::ExpectedNamedStructLike(_) | Error::ExpectedStructLike => {
            "a list in round brackets was expected, as in (format: 1, title: \"…\")".to_owned()
        }
        Error::MissingStructField { field: "format", .. } => {
            "the member `format` is missing, so this is no Vatsketch design or its beginning was lost".to_owned()
        }
        Error::MissingStructField { field, .. } => format!("the member `{field}` is missing"),
        Error::DuplicateStructField { field, .. } => format!("the member `{field}` is there twice; keep one"),
        Error::NoSuchStructField { expected, found, .. } => format!("nothing is called `{found}` here{}", meant(expected, found)),
        Error::NoSuchEnumVariant { expected, found, .. } => {
            format!("`{found}` is none of the choices, which are {}", expected.join(", "))
        }
        Error::ExceededRecursionLimit => "brackets are nested deeper here than in any design".to_owned(),
        Error::IntegerOutOfBounds => "this whole number is too large or below zero".to_owned(),
        Error::TrailingCharacters => "the design ends before this, and something follows it".to_owned(),
        Error::ExpectedComma => "a comma was expected (or a whole number was written with a point)".to_owned(),
        other => other.to_string(),
    }
}

/// Returns the hint at the known name that is spelled most like the given one.
fn meant(known: &[&'static str], given: &str) -> String {
    crate::design::nearest(given, known.iter().copied()).map_or_else(String::new, |near| format!("; did you mean `{near}`?"))
}
