//! A program without paper says so.

use crate::report::sample;
use vatsketch::export::{ExportError, Paper, Sheets, curve_png, curve_svg, pages, pdf};
use vatsketch::report::{Plan, plan};

#[test]
fn a_program_without_paper_says_how_to_get_it() {
    let plan = Plan { curves: sample::curves(), ..plan(&sample::batch()) };
    let error = pdf(&plan, &Sheets::all(Paper::A4)).unwrap_err();
    assert_eq!(error, ExportError::WithoutPaper);
    assert_eq!(pages(&plan, &Sheets::all(Paper::A4), 1.0).unwrap_err(), ExportError::WithoutPaper);
    assert_eq!(curve_svg(&plan.curves[0]).unwrap_err(), ExportError::WithoutPaper);
    assert_eq!(curve_png(&plan.curves[0]).unwrap_err(), ExportError::WithoutPaper);
    assert!(error.to_string().contains("--features paper"));
}
