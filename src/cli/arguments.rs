//! What may stand on the command line.

use super::log::LogCommand;
use super::named;
use super::options::{
    DesignOptions, FigureOptions, FormOptions, OutputOptions, PaperOptions, ParameterOptions, ScaleOptions, StageOptions,
    UnitOptions, WeekOptions,
};
use super::stage_alone::StageAlone;
use crate::analysis::Alike;
use crate::curve::CurveKey;
use crate::design::MilkKind;
use crate::export::Part;
use crate::session::Example;
use clap::{Parser, Subcommand};
use clap_complete::Shell;
use std::path::PathBuf;

/// Calculates a vat of small fresh rennet cheeses. Without a command the window opens.
#[derive(Debug, Parser)]
#[command(name = "vatsketch", version, about, args_conflicts_with_subcommands = true, after_help = ENDINGS, max_term_width = 100)]
pub struct Arguments {
    /// A design to open in the window.
    pub file: Option<PathBuf>,
    /// What to do without a window.
    #[command(subcommand)]
    pub command: Option<Command>,
}

const ENDINGS: &str = "Exit codes: 0 done, 1 a stage could not be calculated, or a target or a time cannot be reached, 2 wrong arguments, 3 a problem with a file, 4 no window can be opened here.\nA file named - is read from standard input.";

/// What to do without a window.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Print all figures of a design.
    Figures {
        /// The design.
        #[command(flatten)]
        design: DesignOptions,
        /// Other values of uncertain constants.
        #[command(flatten)]
        parameters: ParameterOptions,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// List every input with its unit, range and default.
    Inputs {
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Calculate one stage alone, from described milk or a described cheese; or how a described milk or curd sours, or how far germs could grow.
    Stage {
        /// Which stage, or souring, or germs.
        #[arg(value_parser = named::stage())]
        name: StageAlone,
        /// How it is calculated.
        #[command(flatten)]
        how: StageOptions,
    },
    /// Write a design as a file; the ending of its name, or --as, decides the kind: .pdf and .txt hold the plan, .ics the week for a calendar, .csv and .json all figures.
    ///
    /// With --curve one curve is written: .csv holds every point of it, .svg and .png the drawing.
    Export {
        /// The design.
        #[command(flatten)]
        design: DesignOptions,
        /// Where to write, and as what.
        #[command(flatten)]
        output: OutputOptions,
        /// Write this curve alone.
        #[arg(long, value_name = "KEY", value_parser = named::curve())]
        curve: Option<CurveKey>,
        /// The paper of what is to be printed.
        #[command(flatten)]
        paper: PaperOptions,
        /// What to print behind the two pages of the plan; more than one with commas, as in shopping,labels.
        #[arg(long, value_name = "PARTS", value_delimiter = ',', value_parser = named::part())]
        with: Vec<Part>,
        /// When to begin or to be finished.
        #[command(flatten)]
        week: WeekOptions,
        /// What quantities are shown in.
        #[command(flatten)]
        shown: UnitOptions,
    },
    /// Put two designs side by side: the choices that differ, and every figure of A and B with B − A.
    Compare {
        /// The first design, A.
        #[arg(value_name = "A")]
        first: PathBuf,
        /// The second design, B.
        #[arg(value_name = "B", conflicts_with = "milk")]
        second: Option<PathBuf>,
        /// Instead of a second design: the same vat from this milk.
        #[arg(long, value_name = "KIND", value_parser = named::milk())]
        milk: Option<MilkKind>,
        /// What stays the same with --milk: the litres with nothing added, the fat, the curd, or the size of a cheese.
        #[arg(long, value_name = "WHAT", default_value = "fat", requires = "milk", value_parser = named::alike())]
        alike: Alike,
        /// Write it as a file: .pdf as pages to print, .txt or .json.
        #[command(flatten)]
        output: OutputOptions,
        /// The paper of what is to be printed.
        #[command(flatten)]
        paper: PaperOptions,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Find the value of one input that brings a figure to a target, with everything else unchanged.
    Solve {
        /// The design.
        #[command(flatten)]
        design: DesignOptions,
        /// The figure and its target, FIGURE=VALUE; `figures --json` lists the figures.
        #[arg(long = "for", value_name = "FIGURE=VALUE")]
        goal: String,
        /// The input to change; `inputs` lists them.
        #[arg(long, value_name = "KEY")]
        by: String,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Scale the whole design to so much milk, to a pot, to so many moulds or full jars, and show what follows.
    ///
    /// Your file stays as it is; --to writes the scaled design.
    Scale {
        /// The design.
        #[command(flatten)]
        design: DesignOptions,
        /// What to scale to.
        #[command(flatten)]
        goal: ScaleOptions,
        /// Write the scaled design to this file, *.vat.ron; - writes it to standard output, and nothing else there.
        #[arg(long, value_name = "FILE")]
        to: Option<PathBuf>,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Show the smallest changes of your choices that would lift each serious warning and caution, and what they cost.
    ///
    /// Your file stays as it is; give a change with --set to another command to use it.
    Lift {
        /// The design.
        #[command(flatten)]
        design: DesignOptions,
        /// Leave this choice alone; may be given again.
        #[arg(long, value_name = "KEY")]
        pin: Vec<String>,
        /// Lift one serious warning after another, this many at most, and show the way.
        #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..=20))]
        in_turn: Option<u32>,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Keep a log of what really happened: begin a batch, write down, correct, read in a probe's table, compare with the plan.
    Log {
        /// The log, *.log.ron.
        file: PathBuf,
        /// What to do with it; without a word it is listed.
        #[command(subcommand)]
        what: Option<LogCommand>,
    },
    /// Fit the tasks of a vat into your week: when each begins, what it disrupts, what the week changes.
    Plan {
        /// The design.
        #[command(flatten)]
        design: DesignOptions,
        /// When to begin or to be finished.
        #[command(flatten)]
        week: WeekOptions,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// List what a vat needs and which packages to buy, from the supplies in the design.
    Shop {
        /// The design.
        #[command(flatten)]
        design: DesignOptions,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Show why a figure has its value: the choices and figures that enter, the law, its source, its constants.
    Why {
        /// The design.
        #[command(flatten)]
        design: DesignOptions,
        /// The figure.
        #[command(flatten)]
        figure: FigureOptions,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Show the likely range of every figure: trial runs with all uncertain constants drawn from their ranges, always the same way.
    Spread {
        /// The design.
        #[command(flatten)]
        design: DesignOptions,
        /// How many trial runs.
        #[arg(long, value_name = "N", default_value_t = 200, value_parser = clap::value_parser!(u32).range(10..=10_000))]
        draws: u32,
        /// With the values of the constants in each trial run, as --parameter of `figures` takes them.
        #[arg(long, requires = "json")]
        trials: bool,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Rank what changes a figure most: each choice by one step, each uncertain constant over its whole range.
    #[command(alias = "matters")]
    Sensitivity {
        /// The design.
        #[command(flatten)]
        design: DesignOptions,
        /// The figure.
        #[command(flatten)]
        figure: FigureOptions,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Print what makes a shell complete commands and options when you press Tab.
    Completions {
        /// Which shell.
        shell: Shell,
    },
    /// Print the manual page, for `man`.
    Man {
        /// The command that the page is about; without one, the page of the whole program.
        command: Option<String>,
    },
    /// Print one of the invented examples as a design file.
    Example {
        /// Which example.
        #[arg(value_parser = named::example())]
        name: Example,
    },
}
