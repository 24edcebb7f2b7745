//! Two designs side by side as a PDF file.

use super::{ExportError, Paper};
use crate::report::Comparison;

/// Returns two designs side by side as a tagged PDF with its fonts embedded and its text searchable.
///
/// Reads no file and no network and knows no clock: the same comparison gives the same bytes.
///
/// # Errors
/// [`ExportError`]; [`ExportError::WithoutPaper`] if the program was built without the feature `paper`.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::from_milk, design::{Design, MilkKind}};
/// use vatsketch::{export::{comparison_pdf, Paper}, report::comparison, units::Units};
/// let cow = Design::default();
/// let both = comparison(&batch(&cow)?, &batch(&from_milk(&cow, MilkKind::Sheep))?, Units::METRIC);
/// match comparison_pdf(&both, Paper::A4) {
///     Ok(bytes) => assert!(bytes.starts_with(b"%PDF-")),
///     Err(error) => assert!(error.to_string().contains("built without paper")),
/// }
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[cfg(feature = "paper")]
pub fn comparison_pdf(both: &Comparison, paper: Paper) -> Result<Vec<u8>, ExportError> {
    use super::template;
    template::pdf(&template::set(template::Main::Comparison, &sheet::Sheet::of(both, paper))?)
}

/// Returns an error that says that this program was built without paper.
///
/// # Errors
/// Always [`ExportError::WithoutPaper`].
#[cfg(not(feature = "paper"))]
pub const fn comparison_pdf(_both: &Comparison, _paper: Paper) -> Result<Vec<u8>, ExportError> {
    Err(ExportError::WithoutPaper)
}

#[cfg(feature = "paper")]
mod sheet {
    //! What the template is given.

    use crate::caution::Caution;
    use crate::export::Paper;
    use crate::export::chart::Chart;
    use crate::export::kitchen::Short;
    use crate::report::{ComparedRow, Comparison};
    use crate::words::FROM_A_MODEL;
    use serde::Serialize;

    #[derive(Debug, Serialize)]
    pub(super) struct Sheet {
        paper: &'static str,
        title: &'static str,
        subtitle: &'static str,
        titles: [String; 2],
        answers: Vec<Answer>,
        choices: Vec<Row>,
        costs: Vec<Row>,
        #[serde(rename = "cost-note")]
        cost_note: Option<String>,
        milk: Vec<String>,
        serious: Vec<Short>,
        cautions: [Vec<Short>; 2],
        charts: Vec<Chart>,
        stages: Vec<StageRows>,
    }

    #[derive(Debug, Serialize)]
    struct Row {
        label: String,
        a: String,
        b: String,
        change: String,
        lead: bool,
        differs: bool,
    }

    /// Letters of a cell above which it is a sentence, which is left to the plain text.
    const LONGEST: usize = 24;

    #[derive(Debug, Serialize)]
    struct Answer {
        heading: &'static str,
        rows: Vec<Row>,
    }

    #[derive(Debug, Serialize)]
    struct StageRows {
        title: &'static str,
        rows: Vec<Row>,
    }

    impl Sheet {
        pub(super) fn of(both: &Comparison, paper: Paper) -> Self {
            let warnings = |cautions: &[Caution]| cautions.iter().map(|caution| Short::of(caution, both.units)).collect::<Vec<_>>();
            let answered =
                |row: &&ComparedRow| both.answers.iter().flat_map(|(_, rows)| rows).any(|answer| answer.label == row.label);
            let told =
                |row: &&ComparedRow| row.differs && !answered(row) && row.a.chars().count().max(row.b.chars().count()) <= LONGEST;
            let [only_a, only_b] = &both.cautions;
            Self {
                paper: paper.sheet(),
                title: "Two vats side by side",
                subtitle: FROM_A_MODEL,
                titles: both.titles.clone(),
                answers: both
                    .answers
                    .iter()
                    .map(|(heading, rows)| Answer { heading, rows: rows.iter().map(Row::of).collect() })
                    .collect(),
                choices: both.choices.iter().map(Row::of).collect(),
                costs: both.costs.iter().map(Row::of).collect(),
                cost_note: both.cost_note.clone(),
                milk: both.milk.clone(),
                serious: both.serious.iter().map(|compared| Short::of(&compared.caution, both.units)).collect(),
                cautions: [warnings(only_a), warnings(only_b)],
                charts: both.curves.iter().map(|(a, b)| Chart::of_both(a, b)).collect(),
                stages: both
                    .stages
                    .iter()
                    .map(|(stage, rows)| StageRows { title: stage.title(), rows: rows.iter().filter(told).map(Row::of).collect() })
                    .filter(|stage| !stage.rows.is_empty())
                    .collect(),
            }
        }
    }

    impl Row {
        fn of(row: &ComparedRow) -> Self {
            let ComparedRow { label, a, b, change, lead, differs } = row.clone();
            Self { label, a, b, change, lead, differs }
        }
    }
}
