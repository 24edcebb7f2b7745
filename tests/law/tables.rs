//! Reads the reference tables.

/// Returns the rows of a table in `tests/reference`; lines that begin with `#` are comments.
pub fn rows<T: serde::de::DeserializeOwned>(name: &str) -> Vec<T> {
    csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path(format!("tests/reference/{name}.csv"))
        .unwrap()
        .deserialize()
        .map(Result::unwrap)
        .collect()
}

/// Asserts that two numbers differ by no more than a tolerance; not a number fails.
#[track_caller]
pub fn near(got: f64, want: f64, tolerance: f64) {
    let within = (got - want).abs() <= tolerance;
    assert!(within, "got {got}, wanted {want} ± {tolerance}");
}
