//! Germ by stage: how far each could grow where, in tenfold steps, as one table for window, paper and command line.

use super::figure::Figure;
use super::germs;
use crate::batch::Batch;
use crate::design::Stage;
use crate::law::growth::{CARELESS_START, TOXIN_DENSITY};
use crate::process::{GermCourse, GermLine, GermsOutcome};

/// One germ, or one reading of its law.
#[derive(Clone, Debug, PartialEq)]
pub struct GermRow {
    /// Whose.
    pub line: GermLine,
    /// Potential increase in each of [`GermTable::STAGES`] at the place that is worst in it, log₁₀; none where the batch did not come so far or
    /// does not go through.
    pub by_stage: Vec<Option<f64>>,
    /// The same on the whole way at the place that is worst in the end; none where the batch did not come to its end.
    pub whole: Option<f64>,
    /// Whether the warning rests on this reading, where there are two of the same germ.
    pub decides: bool,
}

/// Germ by stage.
#[derive(Clone, Debug, PartialEq)]
pub struct GermTable {
    /// A row for each line of growth.
    pub rows: Vec<GermRow>,
    /// What has no stages: hours without air, yeasts, mould.
    pub others: Vec<Figure>,
    /// What must be said of this table alone, a sentence each; [`GermTable::notes`] has all.
    own_notes: Vec<&'static str>,
}

/// Returns how far each germ could grow in each stage; none where nothing was calculated.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, figure::{GermTable, germ_table}};
/// let table = germ_table(&batch(&Design::default())?).unwrap();
/// assert_eq!(table.headings().len(), GermTable::STAGES.len() + 2);
/// assert!(table.rows.iter().all(|row| row.by_stage.len() == GermTable::STAGES.len()));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn germ_table(batch: &Batch) -> Option<GermTable> {
    let germs = batch.germs.as_ref()?;
    let is_whole = batch.keeping.done().is_some();
    let deciding = deciding(germs);
    let rows = germs.courses.iter().map(|course| GermRow {
        line: course.line,
        by_stage: GermTable::STAGES.iter().map(|stage| in_stage(germs, course, *stage)).collect(),
        whole: is_whole.then(|| course.increase_log10()),
        decides: course.line == deciding,
    });
    let others: Vec<Figure> = if is_whole {
        germs::figures(germs).into_iter().filter(|figure| germs::BESIDE.contains(&figure.key)).collect()
    } else {
        Vec::new()
    };
    let mut own_notes = Vec::new();
    if batch.vat.done().is_some_and(|vat| vat.heat_step.is_some()) {
        own_notes.push("Counted from the end of the hold in which the raw milk is pasteurised, as if that had worked.");
    }
    if !is_whole {
        own_notes.push("The batch did not come to its end, so there is no sum.");
    } else if germs.yeast_log10.is_none() {
        own_notes.push("Yeasts have no figure: their law does not hold at this temperature or pH.");
    }
    Some(GermTable { rows: rows.collect(), others, own_notes })
}

fn in_stage(germs: &GermsOutcome, course: &GermCourse, stage: Stage) -> Option<f64> {
    germs.spans.iter().any(|span| span.stage == stage).then(|| course.in_stage_log10(stage))
}

/// Returns the reading of Staphylococcus aureus on which the warning rests: the one without lactic acid where it alone comes from careless hands
/// to the density of toxin in nine of ten draws.
fn deciding(germs: &GermsOutcome) -> GermLine {
    let comes_so_far = |line| {
        let course = germs.of(line);
        let log10 = course.and_then(|course| course.points.last().map(|point| course.cautious_log10(point)));
        log10.is_some_and(|log10| log10 >= TOXIN_DENSITY.value - CARELESS_START.value)
    };
    let alone = comes_so_far(GermLine::StaphylococcusWithoutLactic) && !comes_so_far(GermLine::Staphylococcus);
    if alone { GermLine::StaphylococcusWithoutLactic } else { GermLine::Staphylococcus }
}

impl GermTable {
    /// The stages that have a column; the salting is within the moulds.
    pub const STAGES: [Stage; 5] = [Stage::Vat, Stage::Draining, Stage::Drying, Stage::Pickling, Stage::Keeping];

    /// Returns the headings of the columns.
    #[must_use]
    pub fn headings(&self) -> Vec<String> {
        let stages = Self::STAGES.into_iter().map(|stage| match stage {
            Stage::Milk | Stage::Vat => "Vat",
            Stage::Draining | Stage::Salting => "Moulds",
            Stage::Drying => "Drying",
            Stage::Pickling => "Vinegar",
            Stage::Keeping => "Jar",
        });
        std::iter::once("Germ").chain(stages).chain(std::iter::once("In all")).map(str::to_owned).collect()
    }

    /// Returns the cells of every row.
    ///
    /// # Arguments
    /// * `name`: of a row, such as [`GermLine::name`]
    #[must_use]
    pub fn cells(&self, name: impl Fn(GermLine) -> &'static str) -> Vec<Vec<String>> {
        self.rows.iter().map(|row| std::iter::once(name(row.line).to_owned()).chain(row.values()).collect()).collect()
    }

    /// Returns what must be said of the table, a sentence or a few each.
    ///
    /// # Arguments
    /// * `name`: of a row, as it is shown beside ([`GermTable::cells`])
    #[must_use]
    pub fn notes(&self, name: impl Fn(GermLine) -> &'static str) -> Vec<String> {
        let deciding = self.rows.iter().filter(|row| row.decides).map(|row| {
            format!(
                "Staphylococcus aureus is in two rows, because no published amount of lactic acid was found that stops it. Its warning rests on “{}”.",
                name(row.line)
            )
        });
        let shown = "Each column: tenfold steps at its worst place; these differ, so a row need not add up. ≥: as many germs as can live there. Warnings use a more cautious figure.";
        deciding.chain(std::iter::once(shown).chain(self.own_notes.iter().copied()).map(str::to_owned)).collect()
    }
}

impl GermRow {
    /// Returns the values of the columns, the stages first.
    fn values(&self) -> Vec<String> {
        let most = self.line.germ().most_log();
        let words = |log10: &Option<f64>| match log10 {
            Some(log10) if *log10 >= most => format!("≥ {log10:.1}"),
            Some(log10) => format!("{log10:.1}"),
            None => "–".to_owned(),
        };
        self.by_stage.iter().chain(std::iter::once(&self.whole)).map(words).collect()
    }
}
