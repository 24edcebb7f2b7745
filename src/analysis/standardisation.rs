//! Bringing the milk of one batch to the fat and the casein of another's, in numbers and in words.

use crate::batch::Batch;
use crate::design::Unit;
use crate::law::Matter;
use crate::law::blending::BlendError;
use crate::law::composition::dry_milk;
use crate::law::standardisation::{Addition, SKIM_SOLIDS_LIMIT, StandardisationError, Standardised, cream_alone, standardised};
use crate::process::animal;
use crate::units::Units;

/// Per cents that differ by less are called the same.
const ALIKE_PERCENT: f64 = 0.05;

/// What would bring the milk that the first design buys to what stands in the second design's vat.
#[derive(Clone, Debug, PartialEq)]
pub struct MilkStandardisation {
    /// The milk as bought for the first design.
    pub milk: Matter,
    /// The milk of the second design's vat.
    pub wanted: Matter,
    /// What cream alone does.
    pub cream_alone: Result<Addition, BlendError>,
    /// What cream and dry milk do together.
    pub standardised: Result<Standardised, StandardisationError>,
}

/// Returns what would bring the milk that one design buys to the fat and the casein of another's vat, with the first one's cream; nothing
/// if one of them has no milk, or both buy alike.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, analysis::{from_milk, standardisation}, design::{Design, MilkKind}, units::Units};
/// let cow = Design::default();
/// let sheep = from_milk(&cow, MilkKind::Sheep);
/// let standardisation = standardisation(&batch(&cow)?, &batch(&sheep)?).unwrap();
/// assert!(standardisation.in_words(Units::default()).iter().any(|line| line.contains("dry milk")));
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn standardisation(a: &Batch, b: &Batch) -> Option<MilkStandardisation> {
    if !milks_differ(a, b) {
        return None;
    }
    let (milk, wanted) = (a.milk.done()?.bought, b.milk.done()?.vat_milk);
    let cream = animal(a.design.milk.milk_kind).cream(a.design.milk.cream_strength_percent);
    let (fat_percent, casein_percent) = (wanted.fat_percent(), casein_percent(&wanted));
    Some(MilkStandardisation {
        milk,
        wanted,
        cream_alone: cream_alone(&milk, &cream, fat_percent),
        standardised: standardised(&milk, &cream, &dry_milk(), fat_percent, casein_percent),
    })
}

/// Returns whether two designs buy different milk, so that bringing one to the other says something.
fn milks_differ(a: &Batch, b: &Batch) -> bool {
    let Some((one, other)) = a.milk.done().zip(b.milk.done()) else { return false };
    let apart = |of: fn(&Matter) -> f64| (of(&one.bought) - of(&other.bought)).abs() >= ALIKE_PERCENT;
    apart(Matter::fat_percent) || apart(casein_percent)
}

impl MilkStandardisation {
    /// Returns what is to be known, a sentence each: what differs, what cream alone can and cannot change, what dry milk adds, what stays.
    #[must_use]
    pub fn in_words(&self, units: Units) -> Vec<String> {
        let amounts = |addition: &Addition| amounts(addition, units);
        let mut lines = vec![self.apart(), self.creamed(units)];
        match &self.standardised {
            Ok(Standardised::Both(addition)) => {
                lines.push(format!("For both fat and casein: {}.", amounts(addition)));
                lines.push(self.still(&addition.blend));
            }
            Ok(Standardised::Limited { addition, beyond }) => {
                lines.push(format!(
                    "Both together would take {}, and {:.1} % of solids-not-fat; more than {} % is not advised for cheese milk.",
                    amounts(beyond),
                    beyond.blend.solids_not_fat_percent(),
                    SKIM_SOLIDS_LIMIT.value
                ));
                lines.push(format!(
                    "Nearest within that: {}, which makes {:.2} % of fat and {:.2} % of casein.",
                    amounts(addition),
                    addition.blend.fat_percent(),
                    casein_percent(&addition.blend)
                ));
                lines.push(self.still(&addition.blend));
            }
            Err(error) => lines.push(units.told(&format!("Adding cream and dry milk cannot reach both: {error}."))),
        }
        lines
    }

    fn apart(&self) -> String {
        let of = |matter: &Matter| {
            format!(
                "{:.2} % of fat, {:.2} % of casein and {:.1} % of solids",
                matter.fat_percent(),
                casein_percent(matter),
                matter.percent(matter.solids_kg())
            )
        };
        format!("A buys milk of {}; B's vat has {}.", of(&self.milk), of(&self.wanted))
    }

    fn creamed(&self, units: Units) -> String {
        match &self.cream_alone {
            Ok(addition) => format!(
                "{} of cream alone reach the fat but leave casein at {:.2} %, not {:.2} %: cream adds fat, hardly any casein.",
                grams(addition.cream_kg, units),
                casein_percent(&addition.blend),
                casein_percent(&self.wanted)
            ),
            Err(_) => {
                format!("Cream alone cannot bring {:.2} % of fat to {:.2} %.", self.milk.fat_percent(), self.wanted.fat_percent())
            }
        }
    }

    /// Returns what still differs from the wanted milk.
    fn still(&self, blend: &Matter) -> String {
        let parts = Matter::COMPONENTS.iter().zip(blend.parts_kg().into_iter().zip(self.wanted.parts_kg()));
        let apart: Vec<String> = parts
            .map(|(name, (has_kg, wanted_kg))| (name, blend.percent(has_kg), self.wanted.percent(wanted_kg)))
            .filter(|(_, has, wanted)| (has - wanted).abs() >= ALIKE_PERCENT)
            .map(|(name, has, wanted)| format!("{name} {has:.1} for {wanted:.1} %"))
            .collect();
        if apart.is_empty() { "Nothing else differs.".to_owned() } else { format!("Still different: {}.", apart.join(", ")) }
    }
}

fn casein_percent(matter: &Matter) -> f64 {
    matter.percent(matter.casein_kg)
}

fn amounts(addition: &Addition, units: Units) -> String {
    format!("{} of cream and {} of low-heat dry milk", grams(addition.cream_kg, units), grams(addition.dry_milk_kg, units))
}

/// Returns a mass as it is weighed out.
fn grams(mass_kg: f64, units: Units) -> String {
    let mass_g = 1000.0 * mass_kg;
    units.text(Unit::Gram, mass_g, 0).unwrap_or_else(|| format!("{mass_g:.0} g"))
}
