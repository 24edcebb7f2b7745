//! Readings of one instrument: what they are off together, and how much worse than we think the model meets them.

use super::misfit::{Laid, Misfit};
use crate::record::{EntryKind, READINGS_BELIEVED};

/// Readings that are off together.
struct Group {
    of: OffTogether,
    /// Their places among all misfits.
    members: Vec<usize>,
    /// How far each moves by what they are off together.
    together: Vec<f64>,
    /// How much of what they have in common is taken away, so that what is left is as independent as single readings.
    less: f64,
}

/// What readings have in common.
#[derive(Clone, Copy, PartialEq, Eq)]
enum OffTogether {
    /// The thermometer, in all batches.
    Thermometer,
    /// The pH meter, in all batches.
    Meter,
    /// Something in one batch, as the cheese that was marked: its place among the records, and the kind.
    InBatch(usize, EntryKind),
}

impl OffTogether {
    const fn of(batch: usize, kind: EntryKind) -> Self {
        use EntryKind::{
            BathTemperature, BlendedPh, CentrePh, ColdMilkPh, CurdPh, HeatedMilk, HeldMilk, MilkTemperature, UnmouldedPh,
            UnmouldedSecondPh,
        };
        match kind {
            MilkTemperature | BathTemperature | HeatedMilk | HeldMilk => Self::Thermometer,
            ColdMilkPh | CurdPh | UnmouldedPh | UnmouldedSecondPh | CentrePh | BlendedPh => Self::Meter,
            _ => Self::InBatch(batch, kind),
        }
    }
}

/// All readings of some records.
pub(super) struct Groups {
    kinds: Vec<EntryKind>,
    groups: Vec<Group>,
}

impl Groups {
    /// Returns the groups, in which what is off together is as the model has it at the beginning.
    pub(super) fn of(laid: &[Laid]) -> Self {
        let mut groups: Vec<Group> = Vec::new();
        let mut kinds = Vec::new();
        for (batch, record) in laid.iter().enumerate() {
            for Misfit { kind, together, .. } in &record.misfits {
                let (at, of) = (kinds.len(), OffTogether::of(batch, *kind));
                kinds.push(*kind);
                if let Some(group) = groups.iter_mut().find(|group| group.of == of) {
                    group.members.push(at);
                    group.together.push(*together);
                } else {
                    groups.push(Group { of, members: vec![at], together: vec![*together], less: 0.0 });
                }
            }
        }
        for group in &mut groups {
            let squares: f64 = group.together.iter().map(|own| own * own).sum();
            // The root of (1 + t tᵀ)⁻¹ is 1 − t tᵀ (1 − 1/√(1 + |t|²))/|t|².
            group.less = if squares > 0.0 { (1.0 - (1.0 + squares).sqrt().recip()) / squares } else { 0.0 };
        }
        Self { kinds, groups }
    }

    /// Returns misfits (or how they move) in independent standard deviations.
    ///
    /// `worse`: of each, as [`Self::worse`] has it
    pub(super) fn independent(&self, of: &[f64], worse: &[f64]) -> Vec<f64> {
        let mut out = of.to_vec();
        for group in &self.groups {
            let own = |at: &usize| of.get(*at).copied().unwrap_or(0.0);
            let dot: f64 = group.together.iter().zip(&group.members).map(|(together, at)| together * own(at)).sum();
            for (at, together) in group.members.iter().zip(&group.together) {
                if let Some(own) = out.get_mut(*at) {
                    *own -= group.less * dot * together;
                }
            }
        }
        out.iter().zip(worse).map(|(own, worse)| own / worse).collect()
    }

    /// Returns, for each reading, how many times as far as it scatters the model may be from it: as it is blurred, times how much worse than that
    /// its kind is met, at least once. That is the root of χ² over what is left of the count after the unknowns have taken their share (Birge's
    /// ratio).
    ///
    /// `off`: misfits, independent and over what they are blurred; `taken`: of each the share that the unknowns explain whatever it is
    pub(super) fn worse(&self, blurred: &[f64], off: &[f64], taken: &[f64]) -> Vec<f64> {
        let ratio = |kind: &EntryKind| {
            let own = || self.kinds.iter().zip(off.iter().zip(taken)).filter(|(own, _)| *own == kind).map(|(_, pair)| pair);
            let square: f64 = own().map(|(off, _)| off * off).sum();
            let free: f64 = own().map(|(_, taken)| 1.0 - taken).sum();
            // Two readings more that are as near as we think keep a few readings from saying much.
            ((square + READINGS_BELIEVED.value) / (free.max(0.0) + READINGS_BELIEVED.value)).sqrt().max(1.0)
        };
        self.kinds.iter().zip(blurred).map(|(kind, blurred)| blurred * ratio(kind)).collect()
    }
}
