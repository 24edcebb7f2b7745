//! What a figure is made of.

use super::{CutHours, Handle, Tone};

/// One axis.
#[derive(Clone, Debug, PartialEq)]
pub struct Axis {
    /// What it measures, in words.
    pub label: &'static str,
    /// Symbol of its unit.
    pub unit: &'static str,
    /// Least value shown.
    pub least: f64,
    /// Greatest value shown.
    pub most: f64,
}

/// What a line stands for; it decides the stroke, as what it is of decides the colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Role {
    /// The quantity itself.
    Main,
    /// A second quantity beside it.
    Companion,
    /// A limit.
    Limit,
}

/// One line.
#[derive(Clone, Debug, PartialEq)]
pub struct Series {
    /// Written at the end of the line.
    pub name: &'static str,
    /// What it stands for.
    pub role: Role,
    /// What it is of.
    pub tone: Tone,
    /// Its points, x ascending.
    pub points: Vec<[f64; 2]>,
}

/// A band between two lines with the same x.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// What the band means, in words.
    pub name: &'static str,
    /// (x, low, high).
    pub points: Vec<[f64; 3]>,
}

/// Something that is done, or happens, at one moment.
#[derive(Clone, Debug, PartialEq)]
pub struct Event {
    /// In a word or two.
    pub name: &'static str,
    /// Where on the x axis.
    pub at: f64,
}

/// Something that was measured.
#[derive(Clone, Debug, PartialEq)]
pub struct Dot {
    /// The line that it is laid beside.
    pub line: &'static str,
    /// Where, on both axes.
    pub at: [f64; 2],
}

/// One figure.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// Its heading.
    pub title: &'static str,
    /// The x axis.
    pub x: Axis,
    /// The y axis.
    pub y: Axis,
    /// Its lines.
    pub series: Vec<Series>,
    /// Its bands.
    pub bands: Vec<Band>,
    /// Its events.
    pub events: Vec<Event>,
    /// The choices that can be moved in the chart.
    pub handles: Vec<Handle>,
    /// What was measured.
    pub dots: Vec<Dot>,
    /// The hours of the cut through a cheese that belongs to it.
    pub cut: Option<CutHours>,
    /// What to say instead of an empty plot.
    pub empty_because: Option<String>,
    /// One sentence that says what the curve shows, for a reader who cannot see it.
    pub in_words: String,
}
