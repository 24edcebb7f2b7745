//! Options that several commands share.

use super::named;
use crate::export::Format;
use crate::units::Units;
use clap::{Args, ValueEnum};
use std::path::PathBuf;

/// A design, with other values for some of its inputs.
#[derive(Debug, Default, Args)]
pub struct DesignOptions {
    /// The design; - reads it from standard input.
    pub file: PathBuf,
    /// Change a choice first, as in milk_l=7.5; may be given again.
    #[arg(long, value_name = "KEY=VALUE")]
    pub set: Vec<String>,
    /// Calculate for the kitchen in this file, *.kitchen.ron, saved by `log FILE estimate --save`, instead of the one in the design.
    #[arg(long, value_name = "KITCHEN")]
    pub kitchen: Option<PathBuf>,
}

/// Other values of uncertain constants than those of their records.
#[derive(Debug, Default, Args)]
pub struct ParameterOptions {
    /// Take this value of an uncertain constant, within the range of its record and in its unit, as in moisture_diffusivity=2e-10; may be given
    /// again. `vatsketch inputs` lists them.
    #[arg(long, value_name = "KEY=VALUE")]
    pub parameter: Vec<String>,
}

/// How one stage alone is calculated.
#[derive(Debug, Default, Args)]
pub struct StageOptions {
    /// Set an input of the stage, of the described cheese or of the germs, KEY=VALUE; for drying, pickling and souring also `report_h=6,12,24`. `vatsketch inputs` lists them.
    #[arg(long, value_name = "KEY=VALUE")]
    pub set: Vec<String>,
    /// Other values of uncertain constants; not for souring and germs, which are told everything with --set.
    #[command(flatten)]
    pub parameters: ParameterOptions,
    /// Cut and step the cheese finely, as a check needs it; for drying and pickling, and slower.
    #[arg(long)]
    pub fine: bool,
    /// Text or JSON.
    #[command(flatten)]
    pub form: FormOptions,
}

/// The form of what is printed.
#[derive(Debug, Default, Args)]
pub struct FormOptions {
    /// As JSON: numbers in full, in metric units, times as ISO 8601 has them.
    #[arg(long)]
    pub json: bool,
    /// What quantities are shown in.
    #[command(flatten)]
    pub shown: UnitOptions,
}

/// What quantities are shown in.
#[derive(Clone, Copy, Debug, Default, Args)]
pub struct UnitOptions {
    /// Show quantities in these units: metric, us, imperial, or a list such as fahrenheit,pounds,12h.
    ///
    /// A list has, with commas: celsius or fahrenheit; litres, cups, quarts (of the United States) or pints (imperial); kilograms or pounds; days
    /// or hours for long times; 24h or 12h. JSON and the table of all figures stay metric, and inputs are set in their own units.
    #[arg(long, value_name = "UNITS", default_value = "metric", hide_default_value = true)]
    pub units: Units,
}

/// What a design is scaled to: one of them.
#[derive(Clone, Copy, Debug, Default, Args)]
#[group(required = true, multiple = false)]
pub struct ScaleOptions {
    /// To so many litres of milk to buy.
    #[arg(long, value_name = "LITRES", value_parser = number)]
    pub milk: Option<f64>,
    /// To a pot of so many litres, which is not filled to its rim.
    #[arg(long, value_name = "LITRES", value_parser = number)]
    pub pot: Option<f64>,
    /// To so many moulds.
    #[arg(long, value_name = "N", value_parser = number)]
    pub moulds: Option<f64>,
    /// To so many full jars.
    #[arg(long, value_name = "N", value_parser = number)]
    pub jars: Option<f64>,
}

/// Reads a number with a point or a comma.
fn number(text: &str) -> Result<f64, String> {
    text.trim().replace(',', ".").parse().map_err(|_| "give a number, as in 7.5".to_owned())
}

/// Which figure a command is about.
#[derive(Debug, Default, Args)]
pub struct FigureOptions {
    /// The figure; `figures --json` lists them.
    #[arg(long = "figure", value_name = "FIGURE")]
    pub key: String,
}

/// Where something is written.
#[derive(Debug, Default, Args)]
pub struct OutputOptions {
    /// The file to write; - writes to standard output.
    #[arg(long, value_name = "FILE")]
    pub to: Option<PathBuf>,
    /// What to write, whatever the name ends in; needed for --to -.
    #[arg(long = "as", value_name = "KIND", value_parser = named::format())]
    pub kind: Option<Format>,
}

/// What is printed on.
#[derive(Debug, Args)]
pub struct PaperOptions {
    /// The paper of the pages.
    #[arg(long = "paper", value_enum, default_value = "a4")]
    pub size: PaperChoice,
}

/// The paper of a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum PaperChoice {
    /// 210 × 297 mm.
    A4,
    /// 8.5 × 11 in.
    Letter,
}

/// When to begin or to be finished; what is given takes the place of the design's own wish.
#[derive(Debug, Default, Args)]
pub struct WeekOptions {
    /// Begin at this time, as in 2031-05-09T18:30, "9 May 18:30" or "tomorrow 9:00".
    #[arg(long, value_name = "WHEN", conflicts_with_all = ["soon", "finished_by", "here"])]
    pub start: Option<String>,
    /// Begin as soon after this time as the hours of sleep and work allow.
    #[arg(long, value_name = "WHEN", conflicts_with_all = ["finished_by", "here"])]
    pub soon: Option<String>,
    /// Be finished by this time.
    #[arg(long, alias = "ready", value_name = "WHEN")]
    pub finished_by: Option<String>,
    /// The time zone by its name in the IANA list, such as Etc/UTC.
    #[arg(long, value_name = "NAME")]
    pub zone: Option<String>,
    /// Go on from this task, which really began at this time, as in cut@12:10; an unknown name lists them all.
    #[arg(long, value_name = "TASK@WHEN")]
    pub here: Option<String>,
    /// Plan as if it were this time by the clock of the zone, as in 2031-05-09T18:30.
    #[arg(long, value_name = "WHEN")]
    pub as_of: Option<String>,
}
