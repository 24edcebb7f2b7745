//! The kinds of file, by the ending of their name.

/// A kind of file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Format {
    /// The plan on paper.
    Pdf,
    /// The plan as plain text.
    Text,
    /// The plan for a phone.
    Html,
    /// The week for a calendar.
    Calendar,
    /// The figures as a table, or the points of one curve.
    Csv,
    /// The figures for another program.
    Json,
    /// One curve as lines that stay sharp at any size.
    Svg,
    /// One curve, or the label of a jar, as pixels.
    Png,
}

impl Format {
    /// Every kind; a new one is added here and the compiler lists who must know it.
    pub const ALL: [Self; 8] = [Self::Pdf, Self::Text, Self::Html, Self::Calendar, Self::Csv, Self::Json, Self::Svg, Self::Png];

    /// Returns the ending of a file's name, without its point.
    #[must_use]
    pub const fn ending(self) -> &'static str {
        match self {
            Self::Pdf => "pdf",
            Self::Text => "txt",
            Self::Html => "html",
            Self::Calendar => "ics",
            Self::Csv => "csv",
            Self::Json => "json",
            Self::Svg => "svg",
            Self::Png => "png",
        }
    }

    /// Returns what it is, for a list of all kinds.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Pdf => "Pages to print",
            Self::Text => "Plain text",
            Self::Html => "A page for a phone in the kitchen",
            Self::Calendar => "Events for a calendar",
            Self::Csv => "A table",
            Self::Json => "For another program",
            Self::Svg => "A picture, sharp at any size",
            Self::Png => "A picture for messages and web pages",
        }
    }

    /// Returns whether a curve can be written as this.
    #[must_use]
    pub const fn of_curves(self) -> bool {
        matches!(self, Self::Csv | Self::Svg | Self::Png)
    }

    /// Returns the kind with this ending, in capitals or not, if there is one.
    ///
    /// # Example
    /// ```
    /// use vatsketch::export::Format;
    /// assert_eq!(Format::from_ending("PDF"), Some(Format::Pdf));
    /// ```
    #[must_use]
    pub fn from_ending(ending: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|format| format.ending().eq_ignore_ascii_case(ending))
    }

    /// Returns the endings of those kinds for which something holds, as in `.csv, .svg or .png`.
    #[must_use]
    pub fn endings(of: impl Fn(Self) -> bool) -> String {
        let endings: Vec<String> =
            Self::ALL.into_iter().filter(|format| of(*format)).map(|format| format!(".{}", format.ending())).collect();
        match endings.split_last() {
            Some((last, [])) => last.clone(),
            Some((last, first)) => format!("{} or {last}", first.join(", ")),
            None => String::new(),
        }
    }
}
