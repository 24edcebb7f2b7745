//! In a known kitchen: no caution goes because the most likely constants moved.

use super::caution::{Caution, CautionKind};
use super::facts::Severity;
use super::fresh::FreshCaution;

/// Returns the cautions of a batch with those that it would have with each constant as near to its record as the log allows: what can hurt is
/// judged by the worse of the two.
pub(super) fn worse_of(own: Vec<CautionKind>, guarded: Vec<CautionKind>) -> Vec<CautionKind> {
    let mut all = own;
    for judged in guarded {
        let caution = Caution::from(judged.clone());
        // A stage that only the guarded batch could not calculate says nothing of what hurts.
        if caution.severity == Severity::Note || matches!(judged, CautionKind::Stopped(_)) {
            continue;
        }
        match all.iter_mut().find(|own| about_the_same(own, &judged)) {
            Some(own) if is_worse(&judged, own) => *own = judged,
            Some(_) => {}
            None => all.push(judged),
        }
    }
    all
}

fn about_the_same(one: &CautionKind, other: &CautionKind) -> bool {
    match (one, other) {
        (CautionKind::Germs(one), CautionKind::Germs(other)) => one.stage == other.stage,
        (CautionKind::Fresh(_), CautionKind::Fresh(_)) => true,
        _ => Caution::from(one.clone()).key == Caution::from(other.clone()).key,
    }
}

fn is_worse(one: &CautionKind, than: &CautionKind) -> bool {
    match (one, than) {
        (CautionKind::Germs(one), CautionKind::Germs(than)) => {
            (one.facts().severity, one.log10) > (than.facts().severity, than.log10)
        }
        (CautionKind::Fresh(FreshCaution::NoAcid { .. }), CautionKind::Fresh(FreshCaution::Soured { .. })) => true,
        (CautionKind::Fresh(FreshCaution::Soured { ph, .. }), CautionKind::Fresh(FreshCaution::Soured { ph: than, .. })) => {
            ph > than
        }
        _ => Caution::from(one.clone()).severity > Caution::from(than.clone()).severity,
    }
}
