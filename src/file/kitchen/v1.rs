//! Format 1 of a kitchen: what its batches told of it, in a file of its own and within a design.

use crate::design::{Believed, DesignError, KitchenBatch, KitchenEstimate, KnownKitchen};
use crate::record::{log_moment, read_log_moment};
use serde::{Deserialize, Serialize};

/// A kitchen as it is in a file.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(in crate::file) struct Kitchen {
    #[serde(default)]
    name: String,
    #[serde(default)]
    learned_from: Vec<Batch>,
    #[serde(default)]
    measurements: u32,
    estimates: Vec<Estimate>,
}

/// A batch that it was learned from.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Batch {
    number: u32,
    #[serde(default)]
    name: String,
    begun: String,
    entries: u32,
}

/// One estimate, with what was believed before it.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Estimate {
    key: String,
    unit: String,
    now: Range,
    before: Range,
}

/// A value and the ends of its range.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Range {
    value: f64,
    least: f64,
    most: f64,
}

impl From<&KnownKitchen> for Kitchen {
    fn from(kitchen: &KnownKitchen) -> Self {
        let KnownKitchen { name, learned_from, measurements, estimates } = kitchen;
        let batch = |batch: &KitchenBatch| Batch {
            number: batch.number,
            name: batch.name.clone(),
            begun: log_moment(batch.begun),
            entries: batch.entries,
        };
        let range = |of: Believed| Range { value: of.value, least: of.least, most: of.most };
        let estimate = |own: &KitchenEstimate| Estimate {
            key: own.key.clone(),
            unit: own.unit.clone(),
            now: range(own.now),
            before: range(own.before),
        };
        Self {
            name: name.clone(),
            learned_from: learned_from.iter().map(batch).collect(),
            measurements: *measurements,
            estimates: estimates.iter().map(estimate).collect(),
        }
    }
}

impl TryFrom<Kitchen> for KnownKitchen {
    type Error = DesignError;

    fn try_from(saved: Kitchen) -> Result<Self, DesignError> {
        let batch = |batch: Batch| {
            let Batch { number, name, begun, entries } = batch;
            let no_time = || DesignError::Kitchen { key: "learned_from".to_owned(), why: format!("“{begun}” is no time") };
            Ok(KitchenBatch { number, name, begun: read_log_moment(&begun).ok_or_else(no_time)?, entries })
        };
        let believed = |range: Range| Believed { value: range.value, least: range.least, most: range.most };
        let estimate =
            |own: Estimate| KitchenEstimate { key: own.key, unit: own.unit, now: believed(own.now), before: believed(own.before) };
        let kitchen = Self {
            name: saved.name,
            learned_from: saved.learned_from.into_iter().map(batch).collect::<Result<_, _>>()?,
            measurements: saved.measurements,
            estimates: saved.estimates.into_iter().map(estimate).collect(),
        };
        kitchen.check()?;
        Ok(kitchen)
    }
}
