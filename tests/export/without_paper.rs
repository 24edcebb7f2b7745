//! A program without paper says so.

use vatsketch::export::{ExportError, Paper, pdf};

#[test]
fn a_program_without_paper_says_how_to_get_it() {
    let plan = vatsketch::report::plan(&crate::report::sample::batch());
    let error = pdf(&plan, Paper::A4).unwrap_err();
    assert_eq!(error, ExportError::WithoutPaper);
    assert!(error.to_string().contains("--features paper"));
}
