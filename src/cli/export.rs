//! `vatsketch export`: the plan, the figures or a curve as a file, by the ending of its name.

use super::destination::Destination;
use super::ending::{CliError, Ending};
use super::options::{DesignOptions, OutputOptions, PaperChoice, WeekOptions};
use super::text::write_missing_letters;
use super::{open, week};
use crate::batch::batch;
use crate::caution::{Caution, cautions};
use crate::curve::{Curve, CurveKey, curve};
use crate::export::{
    ExportError, Format, Paper, Part, Sheets, WeekCalendarError, curve_csv, curve_png, curve_svg, figures_csv, html, json,
    label_png, pdf, printable, text, week_calendar,
};
use crate::file::DesignFile;
use crate::plan::kitchen_week;
use crate::report::plan_at;
use crate::units::Units;
use std::io::Write;
use std::path::Path;

/// What is given on the command line apart from the design.
pub(super) struct Wanted<'a> {
    pub(super) output: &'a OutputOptions,
    pub(super) curve: Option<CurveKey>,
    pub(super) paper: PaperChoice,
    pub(super) with: &'a [Part],
    pub(super) week: &'a WeekOptions,
    pub(super) units: Units,
}

/// Makes bytes of a curve, with the cautions of its design.
type CurveWriter = fn(&Curve, &[Caution], Units) -> Result<Vec<u8>, ExportError>;

/// What is written.
enum Job {
    PlanPdf(Sheets),
    PlanText,
    PlanHtml,
    Label,
    Calendar,
    FiguresCsv,
    FiguresJson,
    Curve(CurveKey, CurveWriter),
}

pub(super) fn run(
    options: &DesignOptions,
    wanted: &Wanted<'_>,
    data: &mut dyn Write,
    words: &mut dyn Write,
) -> Result<Ending, CliError> {
    let nowhere =
        || CliError::Arguments("say with --to where to write, as in --to plan.pdf, or --to - for standard output".to_owned());
    let to = Destination::of(wanted.output, |_| true)?.ok_or_else(nowhere)?;
    let job = job(to.format, wanted)?;
    let DesignFile { id, mut design } = open::design_file(options)?;
    let now = week::laid_over(wanted.week, &mut design.week)?;
    let batch = batch(&design)?;
    let no_week = match &job {
        // A wish that cannot be understood is refused; one that cannot be kept leaves a plan with counted times.
        Job::PlanPdf(_) | Job::PlanText | Job::PlanHtml | Job::Label => {
            kitchen_week(&batch, &now).err().map(|error| week::trouble(&error, wanted.week, &options.file))
        }
        Job::Calendar | Job::FiguresCsv | Job::FiguresJson | Job::Curve(..) => None,
    };
    let no_week = match no_week {
        Some(error) if error.ending() != Ending::StageFailed => return Err(error),
        no_week => no_week,
    };
    let bytes = match job {
        Job::PlanPdf(ref sheets) => pdf(&plan_at(&batch, &now).shown_in(wanted.units), sheets)?,
        Job::PlanText => text(&plan_at(&batch, &now).shown_in(wanted.units)).into_bytes(),
        Job::PlanHtml => html(&plan_at(&batch, &now).shown_in(wanted.units)).into_bytes(),
        Job::Label => match &plan_at(&batch, &now).label {
            Some(label) => label_png(label, wanted.units)?,
            None => return Err(CliError::Arguments("no cheese of this design goes into a jar, so there is no label".to_owned())),
        },
        // What the last file has and this week has not is cancelled.
        Job::Calendar => week_calendar(&batch, id, &now, &to.before(), wanted.units)
            .map_err(|error| no_calendar(error, wanted.week, &options.file))?,
        Job::FiguresCsv => figures_csv(&batch)?,
        Job::FiguresJson => json(&batch).into_bytes(),
        Job::Curve(key, write) => write(&curve(&batch, key).shown_in(wanted.units), &cautions(&batch), wanted.units)?,
    };
    to.write(&bytes, data, words)?;
    if matches!(job, Job::Calendar) && id.is_none() {
        writeln!(
            words,
            "this design was never saved in the window; after you save it there, a calendar that already holds these events may show them twice; delete the old ones there"
        )?;
    }
    if matches!(job, Job::PlanPdf(_)) {
        write_missing_letters(&[&batch.design], words)?;
    }
    if let Some(why) = &no_week {
        writeln!(words, "its times only count from the start of warming: {}", printable(&wanted.units.told(&why.to_string())))?;
    }
    // A curve that was drawn is whole, whatever became of the stages after it.
    let whole = no_week.is_none() && (matches!(job, Job::Curve(..)) || batch.first_missing().is_none());
    Ok(if whole { Ending::Done } else { Ending::StageFailed })
}

/// Returns what is asked for, before anything is read or calculated.
fn job(format: Format, wanted: &Wanted<'_>) -> Result<Job, CliError> {
    // A picture of the plan is that of the one thing that is no page of it.
    if format == Format::Png && wanted.with == [Part::Labels] && wanted.curve.is_none() {
        return Ok(Job::Label);
    }
    if format != Format::Pdf && !wanted.with.is_empty() {
        return Err(CliError::Arguments(format!(
            "--with is for the pages of a .pdf, and --with labels for a .png of one label, not for a .{}",
            format.ending()
        )));
    }
    match (format, wanted.curve) {
        (Format::Pdf, None) => {
            Ok(Job::PlanPdf(Sheets { paper: Paper::from(wanted.paper), with: wanted.with.iter().copied().collect() }))
        }
        (Format::Text, None) => Ok(Job::PlanText),
        (Format::Html, None) => Ok(Job::PlanHtml),
        (Format::Calendar, None) => Ok(Job::Calendar),
        (Format::Csv, None) => Ok(Job::FiguresCsv),
        (Format::Json, None) => Ok(Job::FiguresJson),
        (Format::Csv, Some(key)) => Ok(Job::Curve(key, curve_csv)),
        (Format::Svg, Some(key)) => Ok(Job::Curve(key, |figure, _, _| curve_svg(figure).map(String::into_bytes))),
        (Format::Png, Some(key)) => Ok(Job::Curve(key, |figure, _, _| curve_png(figure))),
        (Format::Svg | Format::Png, None) => {
            Err(CliError::Arguments(format!("a .{} holds one curve; say which with --curve: {}", format.ending(), curves())))
        }
        (Format::Pdf | Format::Text | Format::Html | Format::Calendar | Format::Json, Some(_)) => {
            let endings = Format::endings(Format::of_curves);
            Err(CliError::Arguments(format!("a curve is written as {endings}, not as .{}", format.ending())))
        }
    }
}

/// Returns the keys of all curves.
fn curves() -> String {
    CurveKey::ALL.map(CurveKey::key).join(", ")
}

fn no_calendar(error: WeekCalendarError, options: &WeekOptions, file: &Path) -> CliError {
    match error {
        WeekCalendarError::NoTime => {
            CliError::Arguments(format!("{error}; say when with --start, --soon or --finished-by, as in --start \"tomorrow 9:00\""))
        }
        WeekCalendarError::Week(error) => week::trouble(&error, options, file),
        WeekCalendarError::Export(error) => error.into(),
    }
}

impl From<PaperChoice> for Paper {
    fn from(choice: PaperChoice) -> Self {
        match choice {
            PaperChoice::A4 => Self::A4,
            PaperChoice::Letter => Self::Letter,
        }
    }
}
