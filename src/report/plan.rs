//! The whole plan.

use super::facts::Facts;
use super::{
    Cost, JarLabel, LawRow, ShoppingRow, Step, Target, Timing, UsedSource, Weighing, label, laws, prepare, shopping, sources,
    steps, weighing,
};
use crate::batch::{Batch, is_soured};
use crate::caution::{Caution, CautionKind, cautions};
use crate::curve::{Curve, CurveKey, curve, drying_weight};
use crate::design::{Design, Stage};
use crate::figure::{GermTable, germ_table};
use crate::plan::{KitchenWeek, Now, kitchen_week};
use crate::units::Units;
use crate::words::{FROM_A_MODEL, kitchen_line};

/// A stage that could not be calculated, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stopped {
    /// The stage.
    pub stage: Stage,
    /// Why, and what to do.
    pub why: String,
}

/// Everything that is printed, in order.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// The maker's name for the vat, or ours if there is none.
    pub title: String,
    /// What this paper is and what it is not.
    pub subtitle: &'static str,
    /// The maker's own words about it, and below them the kitchen that it is calculated for, if one is known.
    pub note: String,
    /// The few figures that matter most.
    pub figures: Vec<Target>,
    /// What to buy and to have at hand.
    pub shopping: Vec<ShoppingRow>,
    /// What it costs, where the maker's supplies say.
    pub cost: Option<Cost>,
    /// Why no packages could be chosen.
    pub shopping_trouble: Option<String>,
    /// When it begins and how it ends, by the clock on the wall.
    pub timing: Option<Timing>,
    /// Why times only count from the start of warming although the maker asked for more.
    pub no_week: Option<String>,
    /// Every caution, the gravest first; those of a step are also in [`Step::cautions`].
    pub cautions: Vec<Caution>,
    /// The cautions that belong to no step.
    pub before_all: Vec<Caution>,
    /// What is prepared before the first step.
    pub prepare: Vec<String>,
    /// The steps, in the trade's order.
    pub steps: Vec<Step>,
    /// When the marked cheese is weighed while it dries, and what it is to weigh.
    pub weighings: Vec<Weighing>,
    /// The weight of one cheese while it dries.
    pub weight_curve: Option<Curve>,
    /// The label of the jars, where there are any.
    pub label: Option<JarLabel>,
    /// Stages that could not be calculated.
    pub stopped: Vec<Stopped>,
    /// The curves: warming, loss in drying, and the pH where there is vinegar.
    pub curves: Vec<Curve>,
    /// How far germs could grow in each stage.
    pub germs: Option<GermTable>,
    /// The laws behind the main figures.
    pub laws: Vec<LawRow>,
    /// Where the numbers of the calculation come from.
    pub sources: Vec<UsedSource>,
    /// Whether anything sours milk or curd before the vinegar.
    pub soured: bool,
    /// The units that it is shown in; what is said of cautions follows them too.
    pub units: Units,
}

impl Plan {
    /// What a plan is called whose maker gave it no name.
    pub const UNTITLED: &'static str = "A vat of small fresh rennet cheeses";
}

/// Returns the plan of a batch with times that count from the start of warming. A stage that failed is named with its reason; what could be calculated is planned all the same.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, report::plan};
/// let plan = plan(&batch(&Design::default())?);
/// assert_eq!(plan.steps[0].verb, "Measure");
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn plan(batch: &Batch) -> Plan {
    week_plan(batch, None)
}

/// Returns the plan of a batch with the times of its week, as the design wishes it; where there is no week it counts from the start of
/// warming and says why ([`Plan::no_week`]).
///
/// # Arguments
/// * `now`: what the clock on the wall says
///
/// # Example
/// ```
/// use jiff::{civil::date, tz::TimeZone};
/// use vatsketch::{batch::batch, design::{Design, Wish}, plan::Now, report::plan_at};
/// let now = Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC };
/// let mut design = Design::default();
/// design.week.wish = Wish::StartAt(date(2031, 5, 9).at(14, 30, 0, 0));
/// assert_eq!(plan_at(&batch(&design)?, &now).steps[0].times[0].words(), "14:30");
/// design.week.wish = Wish::FinishedBy(date(2031, 5, 6).at(14, 30, 0, 0));
/// assert!(plan_at(&batch(&design)?, &now).no_week.is_some_and(|why| why.contains("at the earliest")));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn plan_at(batch: &Batch, now: &Now) -> Plan {
    match kitchen_week(batch, now) {
        Ok(week) => week_plan(batch, week.as_ref()),
        Err(error) => Plan { no_week: Some(error.to_string()), ..plan(batch) },
    }
}

/// Returns the plan of a batch with the times of a week, or without one as [`plan`].
#[must_use]
pub fn week_plan(batch: &Batch, week: Option<&KitchenWeek>) -> Plan {
    let facts = Facts::of(batch);
    let mut steps = steps::steps(batch, &facts);
    if let Some(week) = week {
        steps = steps::of_week(steps, week, batch);
    }
    let shopping = shopping::list(batch, &facts);
    let all = cautions(batch);
    let before_all = place_cautions(&all, &mut steps);
    let main_laws = laws::main_laws(batch);
    let weight_curve = drying_weight(batch);
    let title = batch.design.title.trim();
    Plan {
        title: if title.is_empty() { Plan::UNTITLED.to_owned() } else { title.to_owned() },
        subtitle: FROM_A_MODEL,
        note: note(&batch.design),
        figures: facts.lead(),
        label: label::jar_label(batch, if title.is_empty() { Plan::UNTITLED } else { title }, &steps, &shopping.rows),
        shopping: shopping.rows,
        cost: shopping.cost,
        shopping_trouble: shopping.trouble,
        timing: week.map(|week| Timing::of(week, batch)),
        no_week: None,
        before_all,
        prepare: prepare::prepare(&batch.design.vat, &steps),
        weighings: weight_curve.as_ref().map(|curve| weighing::weighings(&steps, curve)).unwrap_or_default(),
        weight_curve,
        steps,
        stopped: stopped(batch),
        curves: curves(batch),
        germs: germ_table(batch),
        sources: sources::used(&main_laws, &all, Units::METRIC, is_soured(batch)),
        laws: main_laws,
        soured: is_soured(batch),
        cautions: all,
        units: Units::METRIC,
    }
}

/// Returns the maker's note, and the kitchen.
fn note(design: &Design) -> String {
    let own = Some(design.note.trim().to_owned()).filter(|note| !note.is_empty());
    own.into_iter().chain(kitchen_line(design)).collect::<Vec<_>>().join("\n")
}

/// Returns the curves of the paper: warming and drying loss, and the pH where the cheeses go into vinegar.
fn curves(batch: &Batch) -> Vec<Curve> {
    let soured = batch.pickling.done().is_some_and(|pickling| pickling.pickled);
    let keys = [CurveKey::Warming, CurveKey::DryingLoss].into_iter().chain(soured.then_some(CurveKey::Souring));
    keys.map(|key| curve(batch, key)).collect()
}

/// Puts each caution before the first step that its input governs, and returns those that no step owns, and what is said of a cheese without
/// acid: that counts from the first step on, whatever could sour it.
fn place_cautions(cautions: &[Caution], steps: &mut [Step]) -> Vec<Caution> {
    let mut before_all = Vec::new();
    for caution in cautions {
        let cause = caution.caused_by.filter(|_| !matches!(caution.kind, CautionKind::Fresh(_)));
        let owner = cause.and_then(|key| steps.iter_mut().find(|step| step.governed_by.contains(&key)));
        match owner {
            Some(step) => step.cautions.push(caution.clone()),
            None => before_all.push(caution.clone()),
        }
    }
    before_all
}

fn stopped(batch: &Batch) -> Vec<Stopped> {
    Stage::ALL.into_iter().filter_map(|stage| Some(Stopped { stage, why: batch.ending(stage).why_not()? })).collect()
}
