//! What a changed design costs: hours, taste, and the cautions that come and go. What is bought is counted by the plan.

use super::trial::{is_among, own_serious};
use crate::batch::{Batch, soaked_min};
use crate::caution::{Caution, cautions};
use crate::law::souring::Taste;

/// What it costs to make one batch instead of another.
#[derive(Clone, Debug, PartialEq)]
pub struct Cost {
    /// Hours that the cheeses take longer, or less than nothing if they take less; none where either does not come to an end.
    pub hours: Option<f64>,
    /// Taste and body of a dried cheese before and after, where both come so far and they differ.
    pub taste: Option<(Taste, Taste)>,
    /// The cautions that come, the gravest first.
    pub brings: Vec<Caution>,
    /// The cautions that go, the gravest first.
    pub takes: Vec<Caution>,
}

impl Cost {
    /// Returns how many serious warnings of the design's own come that were not there.
    #[must_use]
    pub fn serious_brought(&self) -> usize {
        own_serious(&self.brings)
    }
}

/// Returns what it costs to make one batch instead of another.
///
/// # Example
/// ```
/// use vatsketch::{analysis::cost, batch::batch, design::Design};
/// let one = Design::default();
/// let mut longer = one.clone();
/// longer.pickling.pickling_h += 24.0;
/// assert_eq!(cost(&batch(&one)?, &batch(&longer)?).hours, Some(24.0));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn cost(before: &Batch, after: &Batch) -> Cost {
    let (was, is) = (cautions(before), cautions(after));
    let hours = soaked_min(before).zip(soaked_min(after)).map(|(before, after)| (after - before) / 60.0);
    let tastes = taste(before).zip(taste(after));
    Cost {
        hours,
        taste: tastes.filter(|(before, after)| before != after),
        brings: is.iter().filter(|caution| !is_among(caution, &was)).cloned().collect(),
        takes: was.iter().filter(|caution| !is_among(caution, &is)).cloned().collect(),
    }
}

/// Returns taste and body of a dried cheese.
fn taste(batch: &Batch) -> Option<Taste> {
    batch.drying.done()?.souring.last().map(|point| Taste::at(point.ph))
}
