//! The label of a jar.

use super::{ShoppingRow, Step, short_day};
use crate::batch::Batch;
use crate::law::growth::COLD_ENOUGH;
use crate::plan::kept_plan;

/// What stands on the label of every jar.
#[derive(Clone, Debug, PartialEq)]
pub struct JarLabel {
    /// The maker's name for the vat.
    pub title: String,
    /// How many jars there are.
    pub jars: u32,
    /// The day on which the curd was made; none without a week.
    pub made: Option<String>,
    /// The day on which the cheeses went into the vinegar; none without a week.
    pub in_vinegar: Option<String>,
    /// The day after which what is left is discarded; none without a week.
    pub discard_after: Option<String>,
    /// Days of keeping after the soak, where there is no week to name the day.
    pub days: f64,
    /// What went in, the most first where that is known.
    pub ingredients: Vec<String>,
    /// How cold it is kept, °C.
    pub no_warmer_than_c: f64,
}

/// What a label says of the acid until the maker has measured it.
pub const NOT_MEASURED: &str = "NOT MEASURED until filled in";
/// Whom it is not for; what stands beside it on every label.
pub const NOT_FOR: &str =
    "Home-made. Not for people who are pregnant, old, very young or ill. Gas, swelling, slime or odd smell: discard untasted.";
/// What many people must not eat.
///
/// # Source
/// Regulation (EU) No 1169/2011, annex II, from memory: milk is one of the substances that a label must name.
pub const ALLERGEN: &str = "milk";

/// Goods that stay in no cheese.
const NOT_IN_IT: [&str; 2] = ["Water for the rennet", "Jars"];

/// Returns the label of the jars of a batch; nothing where no cheese goes into a jar.
pub(super) fn jar_label(batch: &Batch, title: &str, steps: &[Step], shopping: &[ShoppingRow]) -> Option<JarLabel> {
    let pickling = batch.pickling.done().filter(|pickling| pickling.pickled && pickling.jars > 0)?;
    let day = |task: &str| {
        let time = steps.iter().flat_map(|step| &step.times).find(|time| time.task == task)?;
        time.day().map(short_day)
    };
    let kept = kept_plan(batch);
    Some(JarLabel {
        title: title.to_owned(),
        jars: pickling.jars,
        made: day("rennet"),
        in_vinegar: day("vinegar"),
        discard_after: day("last_day"),
        days: kept.keeping.keeping_days,
        ingredients: shopping.iter().filter(|row| !NOT_IN_IT.contains(&row.what)).map(ingredient).collect(),
        no_warmer_than_c: kept.keeping.keeping_temperature_c.min(COLD_ENOUGH.value),
    })
}

/// Returns a good as an ingredient: what sours the milk by its own name.
fn ingredient(row: &ShoppingRow) -> String {
    match row.what {
        "Acid for the milk" => row.look_for.split(',').next().unwrap_or(row.what).to_owned(),
        what => crate::design::lower_first(what),
    }
}
