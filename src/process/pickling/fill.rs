//! Cheeses and vinegar in their jars.

use super::cheese::PickledCheese;
use super::error::PicklingError;
use crate::design::{JarLay, PicklingDesign, VinegarBy};
use crate::law::jar::Packing;
use crate::process::DryingOutcome;
use crate::process::jar::jar_packing;

/// How the jars are filled.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Fill {
    /// Cheeses in a jar, at most.
    pub(super) per_jar: u32,
    /// Cheeses above each other in the fullest jar, where they lie flat.
    above_each_other: u32,
    /// Jars.
    pub(super) jars: u32,
    /// Vinegar for each cheese.
    pub(super) vinegar_each_ml: f64,
    /// What would just cover the cheeses in these jars, for each gram of them.
    pub(super) cover_ml_per_g: f64,
}

impl Fill {
    /// Returns how dried cheeses and their vinegar go into jars: as many as lie in one, or as many as leave room for their vinegar.
    ///
    /// # Errors
    /// [`PicklingError::Jar`], [`PicklingError::NoRoom`].
    pub(super) fn of(design: &PicklingDesign, dried: &DryingOutcome) -> Result<Self, PicklingError> {
        let packed = jar_packing(design, dried)?;
        let count = dried.cheese_count.max(1);
        let all_g = 1000.0 * dried.cheese.total_kg();
        match design.vinegar_by {
            VinegarBy::Cover => {
                let cover_ml = packed.covering_ml(count, packed.count);
                Ok(Self {
                    per_jar: packed.count,
                    above_each_other: layers(&packed, count, packed.count),
                    jars: packed.jars(count, packed.count),
                    vinegar_each_ml: cover_ml / f64::from(count),
                    cover_ml_per_g: cover_ml / all_g,
                })
            }
            VinegarBy::PerGram => {
                let vinegar_each_ml = design.vinegar_ml_per_g * all_g / f64::from(count);
                let per_jar = packed.count_with(vinegar_each_ml);
                if per_jar == 0 {
                    let (jar_ml, cheese_ml) = (packed.jar.volume_ml(), packed.disc.volume_ml());
                    return Err(PicklingError::NoRoom { jar_ml, cheese_ml, vinegar_ml: vinegar_each_ml });
                }
                Ok(Self {
                    per_jar,
                    above_each_other: layers(&packed, count, per_jar),
                    jars: packed.jars(count, per_jar),
                    vinegar_each_ml,
                    cover_ml_per_g: packed.covering_ml(count, per_jar) / all_g,
                })
            }
        }
    }

    /// Returns how many cheeses sour as one body: those above each other where they touch, otherwise each for itself.
    pub(super) fn pile(&self, lay: JarLay, one: &PickledCheese) -> u32 {
        match lay {
            JarLay::FlatTouching => self.above_each_other.clamp(1, one.most_piled()),
            JarLay::Flat | JarLay::OnEdge => 1,
        }
    }

    /// Returns how dried cheeses go into jars without vinegar; no jars where none goes in.
    pub(super) fn without_vinegar(design: &PicklingDesign, dried: &DryingOutcome) -> Self {
        jar_packing(design, dried).map_or_else(
            |_| Self::default(),
            |packed| Self {
                per_jar: packed.count,
                above_each_other: 1,
                jars: packed.jars(dried.cheese_count, packed.count),
                vinegar_each_ml: 0.0,
                cover_ml_per_g: packed.covering_ml(dried.cheese_count, packed.count) / (1000.0 * dried.cheese.total_kg()),
            },
        )
    }
}

/// Returns the layers in the fullest of the jars over which the cheeses are spread.
fn layers(packed: &Packing, count: u32, per_jar: u32) -> u32 {
    let fullest = count.div_ceil(packed.jars(count, per_jar).max(1));
    fullest.div_ceil(packed.in_layer.max(1))
}
