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

/// A row of the table `standardising`: one milk brought to a fat with another.
#[derive(serde::Deserialize)]
pub struct Standardising {
    pub source: String,
    pub base: f64,
    pub base_fat: f64,
    pub add_fat: f64,
    pub target: f64,
    pub expected_add: f64,
}
