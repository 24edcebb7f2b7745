//! What one stage alone is told of the cheese that comes to it, and of the hours that are asked for.

use super::ending::CliError;
use crate::design::{DescribedCheese, DesignError, Stage, fields};
use crate::law::Matter;
use crate::law::food_density::cheese_volume_ml;

/// Reads ascending hours, as in `6,12,24`.
pub(super) fn hours(text: &str) -> Result<Vec<f64>, CliError> {
    let wrong =
        || CliError::Arguments(format!("report_h must be hours from 0 to 2000, ascending, as in 6,12,24, but `{text}` was given"));
    let hours: Vec<f64> = text.split(',').map(|hour| hour.trim().parse().map_err(|_| wrong())).collect::<Result<_, _>>()?;
    let ascending = hours.windows(2).all(|pair| pair.first() < pair.last());
    let within = hours.iter().all(|hour| (0.0..=2000.0).contains(hour));
    if ascending && within { Ok(hours) } else { Err(wrong()) }
}

/// How far the parts of a described cheese may add up beside 100 %.
const PARTS_OFF_PERCENT: f64 = 10.0;

/// Returns the described cheese with its parts as shares of 1; printed parts seldom add up to 100 %, and the difference is spread evenly.
pub(super) fn described_matter(described: &DescribedCheese) -> Result<Matter, CliError> {
    let parts = Matter {
        water_kg: described.moisture_percent,
        fat_kg: described.fat_percent,
        casein_kg: described.protein_percent,
        carbohydrate_kg: described.carbohydrate_percent,
        ash_kg: described.ash_percent,
        salt_kg: described.salt_percent,
        ..Matter::default()
    };
    let sum_percent = parts.total_kg();
    let adds_up = (sum_percent - 100.0).abs() <= PARTS_OFF_PERCENT;
    if !adds_up {
        return Err(CliError::Arguments(format!(
            "water, fat, protein, carbohydrate, ash and salt of the described cheese add up to {sum_percent:.1} %; give all of them, so that they add up to about 100 %"
        )));
    }
    let shares = parts * (1.0 / parts.total_kg());
    let volume_ml = std::f64::consts::PI * (0.05 * described.diameter_mm).powi(2) * 0.1 * described.thickness_mm;
    Ok(shares * (volume_ml / cheese_volume_ml(&shares)))
}

/// Returns the error for a key that this stage alone does not read: that of another stage, or no key at all.
pub(super) fn not_here(stage: Stage, key: &str, known: impl Iterator<Item = &'static str>) -> CliError {
    match fields().find(|field| field.key == key) {
        Some(field) => CliError::Arguments(format!(
            "`{key}` belongs to the stage {} and does not enter `vatsketch stage {}`, which is told of the cheese that comes to it; `vatsketch inputs` lists what it reads",
            field.stage.key(),
            stage.key()
        )),
        None => DesignError::unknown_key(key, known).into(),
    }
}
