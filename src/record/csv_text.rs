//! A table as text: what parts its columns, its rows with their lines, and the numbers in it.

/// What may part columns, the likeliest first where two serve as well: a comma may be a decimal comma.
const DELIMITERS: [u8; 3] = [b';', b'\t', b','];

/// One row of a table.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Row {
    /// The line on which it begins, from 1.
    pub(super) line: u64,
    /// Its cells.
    pub(super) cells: Vec<String>,
}

impl Row {
    /// Returns a cell; an empty one where the row is too short.
    pub(super) fn cell(&self, column: usize) -> &str {
        self.cells.get(column).map_or("", |cell| cell.trim())
    }
}

/// Returns the rows of a text, and what parts its columns.
pub(super) fn rows(text: &str) -> (char, Vec<Row>) {
    // Some programs end a line with a carriage return alone; the reader takes that for an end too, but counts no line.
    let text = text.strip_prefix('\u{feff}').unwrap_or(text).replace("\r\n", "\n").replace('\r', "\n");
    let tables = DELIMITERS.map(|delimiter| (delimiter, parted(&text, delimiter)));
    let wide = |rows: &[Row]| rows.iter().filter(|row| row.cells.len() > 1).count();
    // The first of those that part the most rows.
    let best = tables.into_iter().rev().max_by_key(|(_, rows)| wide(rows));
    best.map_or((',', Vec::new()), |(delimiter, rows)| (char::from(delimiter), rows))
}

fn parted(text: &str, delimiter: u8) -> Vec<Row> {
    let mut reader = csv::ReaderBuilder::new().has_headers(false).flexible(true).delimiter(delimiter).from_reader(text.as_bytes());
    let row = |record: csv::StringRecord| Row {
        line: record.position().map_or(0, csv::Position::line),
        cells: record.iter().map(str::to_owned).collect(),
    };
    reader.records().filter_map(Result::ok).map(row).collect()
}

/// Returns the number in a cell, with a decimal point or comma, blanks or the other sign between thousands, and a unit behind it.
pub(super) fn number(cell: &str) -> Option<f64> {
    let bare: String = cell.chars().filter(|letter| !letter.is_whitespace() && *letter != '\'').collect();
    let bare = bare.trim_end_matches(|letter: char| letter.is_alphabetic() || "°%".contains(letter)).replace('−', "-");
    let plain = match (bare.rfind(','), bare.rfind('.')) {
        (Some(comma), Some(point)) if comma > point => bare.replace('.', "").replace(',', "."),
        (Some(_), Some(_)) => bare.replace(',', ""),
        (Some(_), None) => bare.replace(',', "."),
        (None, _) => bare,
    };
    plain.parse().ok().filter(|number: &f64| number.is_finite())
}

/// Returns whether a heading or a cell says that its temperatures are degrees Fahrenheit.
pub(super) fn says_fahrenheit(text: &str) -> bool {
    let lower = text.to_lowercase().replace(' ', "");
    ["°f", "ºf", "fahrenheit", "(f)", "[f]", "degf"].iter().any(|sign| lower.contains(sign))
}
