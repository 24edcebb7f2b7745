//! Kitchen measures: spoons and cups, and an amount in words that a cook can follow.

crate::constants! {
    /// The United States teaspoon.
    TEASPOON = { "Teaspoon, United States", 4.928_92, "mL", (4.928, 4.930), NistHandbook44, "appendix C", Published }
    /// The United States tablespoon.
    TABLESPOON = { "Tablespoon, United States", 14.786_76, "mL", (14.78, 14.79), NistHandbook44, "appendix C", Published }
    /// The metric teaspoon.
    METRIC_TEASPOON = { "Teaspoon, metric", 5.0, "mL", (5.0, 5.0), CommonPractice, "metric kitchens", FromMemory }
    /// The metric tablespoon.
    METRIC_TABLESPOON = { "Tablespoon, metric", 15.0, "mL", (15.0, 15.0), CommonPractice, "metric kitchens; Australia has 20 mL", FromMemory }
    /// How near a thermometer is read and a temperature held.
    THERMOMETER_SPREAD = { "Nearness of a kitchen thermometer", 0.5, "K", (0.2, 1.0), Ourselves, "reading and holding together", Judged }
    /// How near a household jug can be read.
    JUG_SPREAD = { "Nearness of a household jug, as a share", 0.01, "1", (0.005, 0.03), Ourselves, "a line of 10 mL in a litre", Judged }
    /// A teaspoon of salt.
    SALT_TEASPOON = { "Table salt in a United States teaspoon", 6.0, "g", (5.0, 6.5), UsdaStandardReference, "table salt; coarse salt weighs less", Published }
    /// A teaspoon of citric acid.
    CITRIC_TEASPOON = { "Citric acid in a United States teaspoon", 4.7, "g", (4.0, 5.0), CommonPractice, "from the spoon rule for curd that stretches, 1¼ tsp to a US gallon, which is about 1.5 g/kg", FromMemory }
    /// A teaspoon of pepper.
    PEPPER_TEASPOON = { "Ground black pepper in a United States teaspoon", 2.3, "g", (1.9, 2.7), UsdaStandardReference, "spices, pepper, black; coarse grains weigh otherwise", Published }
}

/// Fractions that a set of spoons can measure.
const FRACTIONS: [(f64, &str); 8] =
    [(0.0, ""), (0.125, "⅛"), (0.25, "¼"), (1.0 / 3.0, "⅓"), (0.5, "½"), (2.0 / 3.0, "⅔"), (0.75, "¾"), (1.0, "")];

/// Returns a volume in spoons or cups that a kitchen can measure, or nothing where it is too small for an eighth of a teaspoon.
///
/// Metric spoons: 5 and 15 mL. Below 20 mL teaspoons; below 120 mL tablespoons and teaspoons, to a whole teaspoon; above that nothing
/// smaller than a measuring jug helps.
///
/// # Arguments
/// * `volume_ml`: ≥ 0
///
/// # Example
/// ```
/// use vatsketch::law::kitchen::spoons;
/// assert_eq!(spoons(7.5).unwrap(), "1½ tsp");
/// assert_eq!(spoons(45.0).unwrap(), "3 tbsp");
/// assert_eq!(spoons(35.0).unwrap(), "2 tbsp + 1 tsp");
/// assert!(spoons(0.1).is_none());
/// ```
#[must_use]
pub fn spoons(volume_ml: f64) -> Option<String> {
    let countable = (0.6..120.0).contains(&volume_ml);
    if !countable {
        return None;
    }
    let teaspoons = volume_ml / METRIC_TEASPOON.value;
    if volume_ml < 20.0 {
        return Some(format!("{} tsp", counted(teaspoons)));
    }
    let in_tablespoon = METRIC_TABLESPOON.value / METRIC_TEASPOON.value;
    let tablespoons = (teaspoons.round() / in_tablespoon).floor();
    let rest = teaspoons.round() - in_tablespoon * tablespoons;
    Some(if rest > 0.0 { format!("{tablespoons} tbsp + {rest} tsp") } else { format!("{tablespoons} tbsp") })
}

/// Returns a mass of salt in teaspoons, or nothing where it is too small.
///
/// # Example
/// ```
/// assert_eq!(vatsketch::law::kitchen::salt_spoons(9.0).unwrap(), "1½ tsp");
/// ```
#[must_use]
pub fn salt_spoons(salt_g: f64) -> Option<String> {
    spoons(salt_g / SALT_TEASPOON.value * METRIC_TEASPOON.value)
}

/// Returns a mass of citric acid in teaspoons, or nothing where it is too small.
///
/// # Example
/// ```
/// assert_eq!(vatsketch::law::kitchen::citric_spoons(9.4).unwrap(), "2 tsp");
/// ```
#[must_use]
pub fn citric_spoons(acid_g: f64) -> Option<String> {
    spoons(acid_g / CITRIC_TEASPOON.value * METRIC_TEASPOON.value)
}

/// Returns a mass of ground pepper in teaspoons, or nothing where it is too small.
///
/// # Example
/// ```
/// assert_eq!(vatsketch::law::kitchen::pepper_spoons(4.6).unwrap(), "2 tsp");
/// ```
#[must_use]
pub fn pepper_spoons(pepper_g: f64) -> Option<String> {
    spoons(pepper_g / PEPPER_TEASPOON.value * METRIC_TEASPOON.value)
}

/// Returns a number as a cook counts it: whole spoons and the nearest fraction.
fn counted(count: f64) -> String {
    let whole = count.floor();
    let rest = count - whole;
    let nearest = FRACTIONS.into_iter().min_by(|left, right| (left.0 - rest).abs().total_cmp(&(right.0 - rest).abs()));
    let (share, sign) = nearest.unwrap_or((0.0, ""));
    let whole = if share >= 1.0 { whole + 1.0 } else { whole };
    match (whole > 0.0, sign) {
        (true, sign) => format!("{whole:.0}{sign}"),
        (false, "") => "0".to_owned(),
        (false, sign) => sign.to_owned(),
    }
}
