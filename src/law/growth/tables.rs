//! The classes of published tables by acid and water activity, every boundary as it is written.

crate::constants! {
    /// The pH of acid and acidified food.
    ACIDIFIED_PH = { "pH at or below which food counts as acid or acidified", 4.6, "pH", (4.6, 4.6), Cfr21, "114.3", Published }
    /// The pH that moist food without heating in its package needs.
    TABLE_B_PH = { "pH below which food that is not heated in its package needs no control", 4.2, "pH", (4.2, 4.2), FoodCode, "definition of controlled food, table B", Published }
    /// The pH of rather dry food.
    RATHER_DRY_PH = { "pH at or below which food of water activity 0.88 to 0.90 needs no control", 5.0, "pH", (5.0, 5.0), FoodCode, "definition of controlled food, table B", Published }
    /// Dry enough for the shelf.
    SHELF_STABLE = { "Water activity at or below which food is counted as dried", 0.85, "1", (0.85, 0.85), Cfr21, "114.3; the hazard guide's chapter 14 has the same number, from memory", Published }
    /// Dry in table B.
    VERY_DRY = { "Water activity below which food needs no control at any pH", 0.88, "1", (0.88, 0.88), FoodCode, "definition of controlled food, table B", Published }
    /// Rather dry in table B.
    RATHER_DRY = { "Water activity up to which a pH of 5.0 will do", 0.90, "1", (0.90, 0.90), FoodCode, "definition of controlled food, table B", Published }
    /// The limit that both tables have.
    DRY = { "Water activity at or below which heated, packaged food needs no control", 0.92, "1", (0.92, 0.92), FoodCode, "definition of controlled food, tables A and B", Published }
}

/// What a table asks of a food.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Control {
    /// Neither time nor temperature has to be controlled, as far as this table goes.
    NotRequired,
    /// Somebody qualified has to show that it needs no control; until then it does.
    #[default]
    AssessmentRequired,
}

impl Control {
    /// Returns what the table says, in words that claim no more than it.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::growth::table_b;
    /// assert_eq!(table_b(0.97, 4.1).words(), "not asked for at these modelled figures; this is no proof");
    /// ```
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::NotRequired => "not asked for at these modelled figures; this is no proof",
            Self::AssessmentRequired => "needed, unless a laboratory assessment of this cheese shows otherwise",
        }
    }
}

/// One edge of a cell of a table.
#[derive(Clone, Copy, Debug)]
enum Edge {
    Any,
    Below(f64),
    AtMost(f64),
}

impl Edge {
    /// Returns whether a figure lies within the edge; one that is no number never does.
    fn holds(self, figure: f64) -> bool {
        match self {
            Self::Any => !figure.is_nan(),
            Self::Below(edge) => figure < edge,
            Self::AtMost(edge) => figure <= edge,
        }
    }
}

/// One line of a table: up to this water activity, control is not required up to this pH.
struct Line {
    water_activity: Edge,
    ph: Edge,
}

const TABLE_B: [Line; 4] = [
    Line { water_activity: Edge::Below(VERY_DRY.value), ph: Edge::Any },
    Line { water_activity: Edge::AtMost(RATHER_DRY.value), ph: Edge::AtMost(RATHER_DRY_PH.value) },
    Line { water_activity: Edge::AtMost(DRY.value), ph: Edge::AtMost(ACIDIFIED_PH.value) },
    Line { water_activity: Edge::Any, ph: Edge::Below(TABLE_B_PH.value) },
];

fn control(table: &[Line], water_activity: f64, ph: f64) -> Control {
    match table.iter().find(|line| line.water_activity.holds(water_activity)) {
        Some(line) if line.ph.holds(ph) => Control::NotRequired,
        _ => Control::AssessmentRequired,
    }
}

/// Returns what table B says of a food that is not heated, or heated but not in its package: a fresh cheese in vinegar.
///
/// Water activity < 0.88: not required at any pH; ≤ 0.90: up to pH 5.0; ≤ 0.92: up to pH 4.6; above: only below pH 4.2.
/// Figures that are no number need assessment.
///
/// # Arguments
/// * `water_activity`: 0 to 1; of two estimates the higher counts
/// * `ph`: 0 to 14; of several places the highest counts
///
/// # Source
/// [`crate::source::SourceId::FoodCode`], definition of time and temperature controlled food, as three state codes have it.
///
/// # Example
/// ```
/// use vatsketch::law::growth::{table_b, Control};
/// // At the moisture of a cheese, 4.2 itself is not enough.
/// assert_eq!(table_b(0.97, 4.2), Control::AssessmentRequired);
/// assert_eq!(table_b(0.97, 4.19), Control::NotRequired);
/// ```
#[must_use]
pub fn table_b(water_activity: f64, ph: f64) -> Control {
    control(&TABLE_B, water_activity, ph)
}

/// The classes of title 21, part 114.3; made for food kept without cold, from which refrigerated food is left out.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum AcidClass {
    /// Sour by nature.
    Acid,
    /// Too dry for these parts.
    LowWaterActivity,
    /// Made sour.
    Acidified,
    /// Neither sour nor dry.
    #[default]
    LowAcid,
}

impl AcidClass {
    /// Returns the class in the words of the rule.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Acid => "acid food",
            Self::LowWaterActivity => "water activity 0.85 or less, outside parts 113 and 114",
            Self::Acidified => "modelled as acidified food; not measured",
            Self::LowAcid => "low-acid food",
        }
    }
}

/// Returns the class of a food by its acid and its water activity.
///
/// Acid: natural pH ≤ 4.6. Outside: water activity ≤ 0.85. Acidified: equilibrium pH ≤ 4.6. Low-acid: everything else, and whatever is no number.
///
/// # Arguments
/// * `water_activity`: 0 to 1
/// * `natural_ph`: before any acid was added
/// * `equilibrium_ph`: of acid and food
///
/// # Source
/// [`crate::source::SourceId::Cfr21`], 114.3.
///
/// # Example
/// ```
/// use vatsketch::law::growth::{acid_class, AcidClass};
/// assert_eq!(acid_class(0.97, 6.5, 4.3), AcidClass::Acidified);
/// assert_eq!(acid_class(0.97, 6.5, 4.7), AcidClass::LowAcid);
/// ```
#[must_use]
pub fn acid_class(water_activity: f64, natural_ph: f64, equilibrium_ph: f64) -> AcidClass {
    if natural_ph <= ACIDIFIED_PH.value {
        AcidClass::Acid
    } else if water_activity <= SHELF_STABLE.value {
        AcidClass::LowWaterActivity
    } else if equilibrium_ph <= ACIDIFIED_PH.value && !water_activity.is_nan() {
        AcidClass::Acidified
    } else {
        AcidClass::LowAcid
    }
}
