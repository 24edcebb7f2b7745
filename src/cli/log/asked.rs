//! What is asked of a log.

use crate::cli::named;
use crate::cli::options::{DesignOptions, FormOptions};
use crate::record::{DateOrder, EntryKind};
use clap::{Args, Subcommand};
use std::path::PathBuf;

/// When something happened.
#[derive(Debug, Default, Args)]
pub struct EntryOptions {
    /// When it happened, as in 8:40, "yesterday 18:30" or 2031-05-09T18:30; now, if you leave it out.
    #[arg(long, value_name = "WHEN")]
    pub at: Option<String>,
    /// Pretend that the clock of the kitchen shows this time, as in 2031-05-09T18:30.
    #[arg(long, value_name = "WHEN")]
    pub as_of: Option<String>,
}

/// Of which batch the next step is asked for, and when.
#[derive(Debug, Args)]
pub struct NextOptions {
    /// The number of the batch; the last one, if you leave it out.
    #[arg(long, value_name = "N")]
    pub batch: Option<u32>,
    /// Pretend that the clock of the kitchen shows this time, as in 2031-05-09T18:30.
    #[arg(long, value_name = "WHEN")]
    pub as_of: Option<String>,
    /// Text or JSON.
    #[command(flatten)]
    pub form: FormOptions,
}

/// What is asked of a log.
#[derive(Debug, Subcommand)]
pub enum LogCommand {
    /// List all batches, or all entries of one; this is what happens if nothing else is asked for.
    List {
        /// The number of the batch whose entries are listed.
        #[arg(long, value_name = "N")]
        batch: Option<u32>,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// List what can be written down, in the order of the plan on paper.
    Fields {
        /// The number of the batch; the last one, if you leave it out.
        #[arg(long, value_name = "N")]
        batch: Option<u32>,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Begin the record of a batch: a copy of the design as it is today is kept in the log, which is made if it is not there.
    Begin {
        /// The design.
        #[command(flatten)]
        design: DesignOptions,
        /// What you call the batch.
        #[arg(long, value_name = "NAME", default_value = "", hide_default_value = true)]
        name: String,
        /// When.
        #[command(flatten)]
        when: EntryOptions,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Write something down: a measurement, an amount, a time, a note. Nothing that was written before is changed.
    Add {
        /// What it is; `vatsketch log FILE fields` lists what a batch asks for.
        #[arg(value_parser = named::entry_kind())]
        kind: EntryKind,
        /// The value, in the unit that its name ends in (milk_l: litres), or words; leave it out for what is simply done.
        #[arg(default_value = "", hide_default_value = true, allow_hyphen_values = true)]
        value: String,
        /// The number of the batch; the last one, if you leave it out.
        #[arg(long, value_name = "N")]
        batch: Option<u32>,
        /// When.
        #[command(flatten)]
        when: EntryOptions,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Correct an entry, or take it back; what stood there before is kept.
    Correct {
        /// The number of the entry, as it is listed.
        entry: u32,
        /// The right value; leave it out where only the time was wrong.
        #[arg(allow_hyphen_values = true)]
        value: Option<String>,
        /// Take the entry back, because it was wrong; it stays in the log, marked as taken back.
        #[arg(long, conflicts_with = "value")]
        take_back: bool,
        /// When it really was so; the time stays if you leave it out.
        #[command(flatten)]
        when: EntryOptions,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Read in measurements from a table with a column of times and one of values, such as a probe saves.
    ///
    /// Columns may be separated by commas, semicolons or tabs; decimal commas and the common forms of dates are read. Lines that cannot be read are
    /// listed with their number, and the others are read in; what the batch has already is left out.
    Import {
        /// What the values are.
        #[arg(value_parser = named::entry_kind())]
        kind: EntryKind,
        /// The table, a text file.
        table: PathBuf,
        /// The column of the times, by its heading or its number from 1.
        #[arg(long, value_name = "COLUMN")]
        time: Option<String>,
        /// The column of the values, by its heading or its number from 1.
        #[arg(long, value_name = "COLUMN")]
        value: Option<String>,
        /// In which order day and month stand, where the table does not tell.
        #[arg(long, value_name = "ORDER", value_parser = named::date_order())]
        dates: Option<DateOrder>,
        /// The number of the batch; the last one, if you leave it out.
        #[arg(long, value_name = "N")]
        batch: Option<u32>,
        /// Only show what would be read in.
        #[arg(long)]
        preview: bool,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Show what is under way and what comes next: whatever was written down too late or too early, the rest of the plan moves with it.
    Next(NextOptions),
    /// Compare a batch with its plan: every measurement with what the plan says at that hour, and what differed.
    Against {
        /// The number of the batch; the last one, if you leave it out.
        #[arg(long, value_name = "N")]
        batch: Option<u32>,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Lay all batches beside each other, the newest first: milk, clean break, weights, pH.
    Across {
        /// Only batches with these words in name, design, day or what was written down.
        #[arg(long, value_name = "WORDS", default_value = "", hide_default_value = true)]
        search: String,
        /// Write a table for a spreadsheet, with comma-separated values in metric units.
        #[arg(long, conflicts_with = "json")]
        csv: bool,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Show what the log suggests about your kitchen: a likely range for each value, beside that for any kitchen.
    Estimate {
        /// The numbers of the batches to learn from; the newest twelve, if you leave it out.
        batches: Vec<u32>,
        /// Keep it as a kitchen in this file, *.kitchen.ron, which any design may use.
        #[arg(long, value_name = "KITCHEN")]
        save: Option<PathBuf>,
        /// What you call the kitchen; the name of the file, if you leave it out.
        #[arg(long, value_name = "NAME", requires = "save")]
        name: Option<String>,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
    /// Show what changed between two batches: the choices that differ, and what was written down.
    Changed {
        /// The number of the first batch; the last but one, if you leave it out.
        #[arg(requires = "b")]
        a: Option<u32>,
        /// The number of the second batch; the last one, if you leave it out.
        b: Option<u32>,
        /// Text or JSON.
        #[command(flatten)]
        form: FormOptions,
    },
}
