//! One caution as facts: what kind it is with its numbers, how grave, which choice causes it, where that is written.

use super::draining::DrainingCaution;
use super::drying::DryingCaution;
use super::facts::{Facts, Severity};
use super::fresh::FreshCaution;
use super::germs::GermCaution;
use super::hours::HoursCaution;
use super::keeping::KeepingCaution;
use super::milk::MilkCaution;
use super::pickling::PicklingCaution;
use super::salting::SaltingCaution;
use super::souring::SouringCaution;
use super::stopped::StageFailed;
use super::vat::VatCaution;
use crate::source::SourceId;

/// What a caution is about, with its numbers.
#[derive(Clone, Debug, PartialEq)]
pub enum CautionKind {
    /// A stage failed.
    Stopped(StageFailed),
    /// About a fresh cheese with no acid, or with some.
    Fresh(FreshCaution),
    /// Germs could grow in a stage.
    Germs(GermCaution),
    /// Hours that add up.
    Hours(HoursCaution),
    /// About draining and moulds.
    Draining(DrainingCaution),
    /// About milk and calcium.
    Milk(MilkCaution),
    /// About warming and setting.
    Vat(VatCaution),
    /// About salt and pepper.
    Salting(SaltingCaution),
    /// About souring milk and curd.
    Souring(SouringCaution),
    /// About drying.
    Drying(DryingCaution),
    /// About the soak in vinegar.
    Pickling(PicklingCaution),
    /// About keeping.
    Keeping(KeepingCaution),
}

/// One caution. The words for it are in [`crate::words`].
#[derive(Clone, Debug, PartialEq)]
pub struct Caution {
    /// A name that never changes, for tests and scripts.
    pub key: &'static str,
    /// How grave it is.
    pub severity: Severity,
    /// The key of the input that causes it, if one does.
    pub caused_by: Option<&'static str>,
    /// Where it is written.
    pub source: SourceId,
    /// Whether it is true of every cheese like this: no choice of the design lifts it, and it is not counted among what the design has.
    pub always: bool,
    /// What it is about, with its numbers.
    pub kind: CautionKind,
}

impl From<CautionKind> for Caution {
    fn from(kind: CautionKind) -> Self {
        let Facts { key, severity, caused_by, source, always } = match &kind {
            CautionKind::Stopped(failed) => failed.facts(),
            CautionKind::Fresh(caution) => caution.facts(),
            CautionKind::Germs(caution) => caution.facts(),
            CautionKind::Hours(caution) => caution.facts(),
            CautionKind::Draining(caution) => caution.facts(),
            CautionKind::Milk(caution) => caution.facts(),
            CautionKind::Vat(caution) => caution.facts(),
            CautionKind::Salting(caution) => caution.facts(),
            CautionKind::Souring(caution) => caution.facts(),
            CautionKind::Drying(caution) => caution.facts(),
            CautionKind::Pickling(caution) => caution.facts(),
            CautionKind::Keeping(caution) => caution.facts(),
        };
        Self { key, severity, caused_by, source, always, kind }
    }
}
