//! `vatsketch export`: the plan, the figures or a curve as a file, by the ending of its name.

use super::ending::{CliError, Ending};
use super::options::{DesignOptions, PaperChoice, WeekOptions};
use super::{open, week};
use crate::batch::{Batch, batch};
use crate::caution::{Caution, cautions};
use crate::curve::{Curve, CurveKey, curve};
use crate::design::DesignId;
use crate::export::{
    ExportError, Format, Paper, WeekCalendarError, curve_csv, curve_png, curve_svg, figures_csv, json, pdf, text, week_calendar,
};
use crate::file::{DesignFile, is_pipe_or_device, write_safely};
use crate::plan::{Now, kitchen_week};
use crate::report::plan_at;
use std::io::Write;
use std::path::Path;

/// What is given on the command line apart from the design.
pub(super) struct Wanted<'a> {
    pub(super) to: &'a Path,
    pub(super) curve: Option<CurveKey>,
    pub(super) paper: PaperChoice,
    pub(super) week: &'a WeekOptions,
}

/// What is written.
#[derive(Clone, Copy)]
enum Job {
    PlanPdf(Paper),
    PlanText,
    Calendar,
    FiguresCsv,
    FiguresJson,
    Curve(CurveKey, fn(&Curve, &[Caution]) -> Result<Vec<u8>, ExportError>),
}

pub(super) fn run(options: &DesignOptions, wanted: &Wanted<'_>, words: &mut dyn Write) -> Result<Ending, CliError> {
    let job = job(wanted)?;
    let DesignFile { id, mut design } = open::design_file(options)?;
    let now = week::laid_over(wanted.week, &mut design.week)?;
    let batch = batch(&design)?;
    let no_week = match job {
        // A wish that cannot be understood is refused; one that cannot be kept leaves a plan with counted times.
        Job::PlanPdf(_) | Job::PlanText => kitchen_week(&batch, &now).err().map(CliError::from),
        Job::Calendar | Job::FiguresCsv | Job::FiguresJson | Job::Curve(..) => None,
    };
    let no_week = match no_week {
        Some(error) if error.ending() == Ending::BadArguments => return Err(error),
        no_week => no_week,
    };
    // What the last file has and this week has not is cancelled.
    let before = if is_pipe_or_device(wanted.to) { Vec::new() } else { std::fs::read(wanted.to).unwrap_or_default() };
    let bytes = bytes(job, &batch, id, &now, &before)?;
    write_safely(wanted.to, &bytes, false)?;
    writeln!(words, "wrote {}", wanted.to.display())?;
    if matches!(job, Job::Calendar) && id.is_none() {
        writeln!(
            words,
            "this design was never saved in the window; after you save it there, a calendar that already holds these events shows them twice, so delete the old ones"
        )?;
    }
    if let Some(why) = &no_week {
        writeln!(words, "its times only count from the start of warming: {why}")?;
    }
    // A curve that was drawn is whole, whatever became of the stages after it.
    let whole = no_week.is_none() && (matches!(job, Job::Curve(..)) || batch.first_missing().is_none());
    Ok(if whole { Ending::Done } else { Ending::StageFailed })
}

/// Returns what is asked for, before anything is read or calculated.
fn job(wanted: &Wanted<'_>) -> Result<Job, CliError> {
    let ending = wanted.to.extension().unwrap_or_default().to_string_lossy();
    let Some(format) = Format::from_ending(&ending) else {
        let endings = Format::endings(|_| true);
        return Err(CliError::Arguments(format!("cannot write `{}`: the name must end in {endings}", wanted.to.display())));
    };
    match (format, wanted.curve) {
        (Format::Pdf, None) => Ok(Job::PlanPdf(Paper::from(wanted.paper))),
        (Format::Text, None) => Ok(Job::PlanText),
        (Format::Calendar, None) => Ok(Job::Calendar),
        (Format::Csv, None) => Ok(Job::FiguresCsv),
        (Format::Json, None) => Ok(Job::FiguresJson),
        (Format::Csv, Some(key)) => Ok(Job::Curve(key, curve_csv)),
        (Format::Svg, Some(key)) => Ok(Job::Curve(key, |figure, _| curve_svg(figure).map(String::into_bytes))),
        (Format::Png, Some(key)) => Ok(Job::Curve(key, |figure, _| curve_png(figure))),
        (Format::Svg | Format::Png, None) => {
            Err(CliError::Arguments(format!("a .{} holds one curve; say which with --curve: {}", format.ending(), curves())))
        }
        (Format::Pdf | Format::Text | Format::Calendar | Format::Json, Some(_)) => {
            let endings = Format::endings(Format::of_curves);
            Err(CliError::Arguments(format!("a curve is written as {endings}, not as .{}", format.ending())))
        }
    }
}

/// Returns the keys of all curves.
fn curves() -> String {
    CurveKey::ALL.map(CurveKey::key).join(", ")
}

fn bytes(job: Job, batch: &Batch, id: Option<DesignId>, now: &Now, before: &[u8]) -> Result<Vec<u8>, CliError> {
    Ok(match job {
        Job::PlanPdf(paper) => pdf(&plan_at(batch, now), paper)?,
        Job::PlanText => text(&plan_at(batch, now)).into_bytes(),
        Job::Calendar => week_calendar(batch, id, now, before)?,
        Job::FiguresCsv => figures_csv(batch)?,
        Job::FiguresJson => json(batch).into_bytes(),
        Job::Curve(key, write) => write(&curve(batch, key), &cautions(batch))?,
    })
}

impl From<WeekCalendarError> for CliError {
    fn from(error: WeekCalendarError) -> Self {
        match error {
            WeekCalendarError::NoTime => {
                Self::Arguments(format!("{error}; say when with --start, --soon or --finished-by, as in --start \"tomorrow 9:00\""))
            }
            WeekCalendarError::Week(error) => error.into(),
            WeekCalendarError::Export(error) => error.into(),
        }
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
