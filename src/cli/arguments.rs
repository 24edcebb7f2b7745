//! What may stand on the command line.

use clap::{Args, Parser, Subcommand, ValueEnum};
use std::path::PathBuf;

/// Works out a vat of small fresh rennet cheeses. Without a command the window opens.
#[derive(Debug, Parser)]
#[command(name = "vatsketch", version, about, args_conflicts_with_subcommands = true, after_help = ENDINGS)]
pub struct Arguments {
    /// A design to open in the window.
    pub file: Option<PathBuf>,
    /// What to do without a window.
    #[command(subcommand)]
    pub command: Option<Command>,
}

const ENDINGS: &str = "Exit codes: 0 done, 1 a stage could not be worked out, or a goal or a time not be reached, 2 bad arguments, 3 trouble with a file.\nA file named - is read from standard input.";

/// What to do without a window.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Print all figures of a design.
    Figures {
        /// The design.
        file: PathBuf,
        /// Set an input, KEY=VALUE; may be given again.
        #[arg(long, value_name = "KEY=VALUE")]
        set: Vec<String>,
        /// As JSON, numbers in full.
        #[arg(long)]
        json: bool,
    },
    /// List every input with its unit, range and default.
    Inputs {
        /// As JSON.
        #[arg(long)]
        json: bool,
    },
    /// Work out one stage alone, from described milk or a described cheese.
    Stage {
        /// milk, vat, draining, salting, drying or pickling.
        name: String,
        /// Set an input of the stage or of the described cheese, KEY=VALUE; for drying and pickling also `report_h=6,12,24`.
        #[arg(long, value_name = "KEY=VALUE")]
        set: Vec<String>,
        /// As JSON, numbers in full.
        #[arg(long)]
        json: bool,
    },
    /// Write a design as a file; its ending says which kind: .pdf and .txt hold the plan, .ics the week for a calendar, .csv and .json all figures.
    ///
    /// With --curve one curve is written: .csv holds every point of it, .svg and .png the drawing.
    Export {
        /// The design.
        file: PathBuf,
        /// The file to write.
        #[arg(long, value_name = "FILE")]
        to: PathBuf,
        /// Set an input, KEY=VALUE; may be given again.
        #[arg(long, value_name = "KEY=VALUE")]
        set: Vec<String>,
        /// Write this curve alone; a wrong name lists them all.
        #[arg(long, value_name = "KEY")]
        curve: Option<String>,
        /// The paper of a plan.
        #[arg(long, value_enum, default_value = "a4")]
        paper: PaperChoice,
        /// When to begin or to be finished.
        #[command(flatten)]
        week: WeekOptions,
    },
    /// Set two designs side by side: the choices that differ, and every figure of A and B with B − A.
    Compare {
        /// The first design, A.
        #[arg(value_name = "A")]
        first: PathBuf,
        /// The second design, B.
        #[arg(value_name = "B", conflicts_with = "milk")]
        second: Option<PathBuf>,
        /// Instead of a second design: the same vat from this milk (cow, sheep, goat, buffalo or label).
        #[arg(long, value_name = "KIND")]
        milk: Option<String>,
        /// Write it as pages to print, a name that ends in .pdf.
        #[arg(long, value_name = "FILE", conflicts_with = "json")]
        to: Option<PathBuf>,
        /// The paper of those pages.
        #[arg(long, value_enum, default_value = "a4")]
        paper: PaperChoice,
        /// As JSON, numbers in full.
        #[arg(long)]
        json: bool,
    },
    /// Look for the value of one input that brings a figure to what is wanted, everything else as it is.
    Solve {
        /// The design.
        file: PathBuf,
        /// The figure and what it shall be, FIGURE=VALUE; `figures --json` lists the figures.
        #[arg(long = "for", value_name = "FIGURE=VALUE")]
        goal: String,
        /// The input that may move; `inputs` lists them.
        #[arg(long, value_name = "KEY")]
        by: String,
        /// Set an input first, KEY=VALUE; may be given again.
        #[arg(long, value_name = "KEY=VALUE")]
        set: Vec<String>,
        /// As JSON, numbers in full.
        #[arg(long)]
        json: bool,
    },
    /// Lay the tasks of a vat into the maker's week: when each begins, what the hours cost, what the week changes.
    Plan {
        /// The design.
        file: PathBuf,
        /// When to begin or to be finished.
        #[command(flatten)]
        week: WeekOptions,
        /// Set an input, KEY=VALUE; may be given again.
        #[arg(long, value_name = "KEY=VALUE")]
        set: Vec<String>,
        /// As JSON, times as ISO 8601 has them, lengths in minutes.
        #[arg(long)]
        json: bool,
    },
    /// List what a vat needs and which packages to buy, from the supplies that the design names.
    Shop {
        /// The design.
        file: PathBuf,
        /// Set an input, KEY=VALUE; may be given again.
        #[arg(long, value_name = "KEY=VALUE")]
        set: Vec<String>,
        /// As JSON, numbers in full.
        #[arg(long)]
        json: bool,
    },
    /// Say why a figure is what it is: the choices and figures that enter, the law, its source, its constants.
    Why {
        /// The design.
        file: PathBuf,
        /// The figure; `figures --json` lists them.
        #[arg(long, value_name = "FIGURE")]
        figure: String,
        /// Set an input first, KEY=VALUE; may be given again.
        #[arg(long, value_name = "KEY=VALUE")]
        set: Vec<String>,
        /// As JSON.
        #[arg(long)]
        json: bool,
    },
    /// Say between what every figure likely lies: all uncertain constants drawn from their ranges many times, always the same draws.
    Spread {
        /// The design.
        file: PathBuf,
        /// How many draws.
        #[arg(long, value_name = "N", default_value_t = 200, value_parser = clap::value_parser!(u32).range(10..=10_000))]
        draws: u32,
        /// Set an input first, KEY=VALUE; may be given again.
        #[arg(long, value_name = "KEY=VALUE")]
        set: Vec<String>,
        /// As JSON, numbers in full, with the bands of the curves.
        #[arg(long)]
        json: bool,
    },
    /// Rank what moves a figure: each choice by one step, each uncertain constant over its whole range.
    #[command(alias = "matters")]
    Sensitivity {
        /// The design.
        file: PathBuf,
        /// The figure; `figures --json` lists them.
        #[arg(long, value_name = "KEY")]
        figure: String,
        /// Set an input first, KEY=VALUE; may be given again.
        #[arg(long, value_name = "KEY=VALUE")]
        set: Vec<String>,
        /// As JSON, numbers in full.
        #[arg(long)]
        json: bool,
    },
    /// Print one of the invented examples as a design file.
    Example {
        /// Its name; a wrong one lists them all.
        name: String,
    },
}

/// When to begin or to be finished; what is given takes the place of the design's own wish.
#[derive(Debug, Default, Args)]
pub struct WeekOptions {
    /// Begin at this time, as in 2031-05-09T18:30, "9 May 18:30" or "tomorrow 9:00".
    #[arg(long, value_name = "WHEN", conflicts_with_all = ["soon", "ready", "here"])]
    pub start: Option<String>,
    /// Begin as soon after this time as the hours of sleep and work allow.
    #[arg(long, value_name = "WHEN", conflicts_with_all = ["ready", "here"])]
    pub soon: Option<String>,
    /// Be ready by this time.
    #[arg(long, value_name = "WHEN")]
    pub ready: Option<String>,
    /// The time zone by its name in the IANA list, such as Etc/UTC.
    #[arg(long, value_name = "NAME")]
    pub zone: Option<String>,
    /// Go on from this task, which really began at this time, as in cut@12:10; a wrong name lists them all.
    #[arg(long, value_name = "TASK@WHEN")]
    pub here: Option<String>,
    /// Plan as if it were this time by the clock of the zone, as in 2031-05-09T18:30.
    #[arg(long, value_name = "WHEN")]
    pub as_of: Option<String>,
}

/// The paper of a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum PaperChoice {
    /// 210 × 297 mm.
    A4,
    /// 8.5 × 11 in.
    Letter,
}
