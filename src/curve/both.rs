//! One curve of two designs in one frame.

use super::{Axis, Curve, Role};

/// Returns the same curve of two designs with one frame, so that the two can be laid over each other.
///
/// Each axis reaches as far as either needs; limits run through the whole frame. An empty curve takes the other's frame.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::{Design, Value}, curve::{curve, in_one_frame, CurveKey}};
/// let (one, mut other) = (Design::default(), Design::default());
/// other.set("drying_h", Value::Number(60.0))?;
/// let loss = |design: &Design| Ok::<_, vatsketch::design::DesignError>(curve(&batch(design)?, CurveKey::DryingLoss));
/// let (a, b) = in_one_frame(loss(&one)?, loss(&other)?);
/// assert!(a.x == b.x && a.x.most >= 60.0);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn in_one_frame(mut a: Curve, mut b: Curve) -> (Curve, Curve) {
    let (x, y) = match (a.empty_because.is_some(), b.empty_because.is_some()) {
        (false, true) => (a.x.clone(), a.y.clone()),
        (true, false) => (b.x.clone(), b.y.clone()),
        _ => (around(&a.x, &b.x), around(&a.y, &b.y)),
    };
    for figure in [&mut a, &mut b] {
        let limits = figure.series.iter_mut().filter(|series| series.role == Role::Limit);
        for [at, _] in limits.filter_map(|series| series.points.last_mut()) {
            *at = x.most;
        }
        (figure.x, figure.y) = (x.clone(), y.clone());
    }
    (a, b)
}

fn around(one: &Axis, other: &Axis) -> Axis {
    Axis { least: one.least.min(other.least), most: one.most.max(other.most), ..one.clone() }
}
