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
    /// How far an amount in spoons may be from what is meant.
    SPOON_SPREAD = { "Most that an amount in spoons may be off, as a share", 0.1, "1", (0.05, 0.15), Ourselves, "rennet or calcium that is off by a tenth changes the curd less than the milk does", Judged }
    /// What a kitchen scale of whole grams weighs well enough.
    SCALE_LEAST = { "Least that a scale of whole grams weighs within a tenth", 5.0, "g", (4.0, 10.0), Ourselves, "half a gram either way", Judged }
    /// The least that a small syringe measures well enough.
    SYRINGE_LEAST = { "Least that a syringe of 1 mL measures within a tenth", 0.1, "mL", (0.05, 0.2), Ourselves, "marks of 0.01 to 0.02 mL", Judged }
    /// How many drops are counted at most.
    MOST_DROPS = { "Most drops that are counted into a cup", 60.0, "1", (40.0, 100.0), Ourselves, "a minute at a drop a second; beyond that the count is lost", Judged }
    /// How long steel is steamed.
    STEAM = { "Steaming of pot, ladle and knife", 15.0, "min", (10.0, 20.0), CommonPractice, "no source", FromMemory }
    /// Which pieces are cut in their depth too.
    COLUMNS_FROM = { "Size from which pieces of curd are left as columns", 20.0, "mm", (15.0, 25.0), CommonPractice, "no source; smaller ones are cut at a slant as well", FromMemory }
    /// How near curd can be cut to a size.
    CUT_SPREAD = { "Nearness of a cut to the size wanted, as a share", 0.2, "1", (0.1, 0.4), Ourselves, "by eye with a long knife: 20 to 30 mm where 25 are wanted", Judged }
    /// How long cut curd is left alone.
    HEALING = { "Pause after cutting, for the cut faces to close", 5.0, "min", (3.0, 10.0), CommonPractice, "no source", FromMemory }
    /// How long jars are boiled.
    BOILED_JARS = { "Boiling of jars, at sea level", 10.0, "min", (10.0, 20.0), OilGuidance, "pages on jars: a minute more for each 1000 ft", Published }
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

/// Returns a volume in spoons that a kitchen can measure, or nothing where the nearest spoons are more than a tenth off ([`SPOON_SPREAD`]).
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
/// // Between an eighth of a teaspoon (0.63 mL) and a quarter (1.25 mL).
/// assert!(spoons(0.9).is_none());
/// ```
#[must_use]
pub fn spoons(volume_ml: f64) -> Option<String> {
    let countable = (0.5..120.0).contains(&volume_ml);
    if !countable {
        return None;
    }
    let teaspoons = volume_ml / METRIC_TEASPOON.value;
    let near = |said: f64| (said - teaspoons).abs() <= SPOON_SPREAD.value * teaspoons;
    if volume_ml < 20.0 {
        let (whole, (share, sign)) = counted(teaspoons);
        return near(whole + share).then(|| format!("{} tsp", spoken(whole, share, sign)));
    }
    if !near(teaspoons.round()) {
        return None;
    }
    let in_tablespoon = METRIC_TABLESPOON.value / METRIC_TEASPOON.value;
    let tablespoons = (teaspoons.round() / in_tablespoon).floor();
    let rest = teaspoons.round() - in_tablespoon * tablespoons;
    Some(if rest > 0.0 { format!("{tablespoons} tbsp + {rest} tsp") } else { format!("{tablespoons} tbsp") })
}

/// Returns the whole drops that make a volume, or nothing where they are more than anybody counts ([`MOST_DROPS`]) or more than a tenth off
/// ([`SPOON_SPREAD`]).
///
/// # Arguments
/// * `volume_ml`: ≥ 0
/// * `drops_in_ml`: how many drops of this bottle make a millilitre, as counted, > 0
///
/// # Example
/// ```
/// use vatsketch::law::kitchen::drops;
/// assert_eq!(drops(0.58, 24.0), Some(14));
/// // Three drops or four are both too far off three and a half.
/// assert_eq!(drops(0.175, 20.0), None);
/// ```
#[must_use]
pub fn drops(volume_ml: f64, drops_in_ml: f64) -> Option<u32> {
    let count = (volume_ml * drops_in_ml).round();
    let countable = (1.0..=MOST_DROPS.value).contains(&count);
    let near = (count / drops_in_ml - volume_ml).abs() <= SPOON_SPREAD.value * volume_ml;
    (countable && near).then_some(count as u32)
}

/// Returns a number of drops in words.
///
/// # Example
/// ```
/// use vatsketch::law::kitchen::drop_words;
/// assert_eq!((drop_words(1).as_str(), drop_words(14).as_str()), ("1 drop", "14 drops"));
/// ```
#[must_use]
pub fn drop_words(drops: u32) -> String {
    if drops == 1 { "1 drop".to_owned() } else { format!("{drops} drops") }
}

/// A small amount made measurable: so much of it in so much solution, of which so much is used.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stock {
    /// What goes into the solution, g or mL.
    pub holds: f64,
    /// What it is made up to with water, mL.
    pub made_up_to_ml: f64,
    /// What is used of it, mL.
    pub used_ml: f64,
}

/// Returns how a small amount is taken as a share of a larger one that can be measured, to the half millilitre; none where not even a litre is enough.
///
/// # Arguments
/// * `amount`: what is wanted, > 0
/// * `holds`: what can be measured, in the unit of the amount
/// * `sizes_ml`: what the solution may be made up to, ascending
///
/// # Example
/// ```
/// use vatsketch::law::kitchen::stock;
/// let calcium = stock(0.98, 10.0, &[100.0, 1000.0]).unwrap();
/// assert_eq!((calcium.made_up_to_ml, calcium.used_ml), (100.0, 10.0));
/// assert_eq!(stock(0.07, 10.0, &[100.0, 1000.0]).unwrap().used_ml, 7.0);
/// ```
#[must_use]
pub fn stock(amount: f64, holds: f64, sizes_ml: &[f64]) -> Option<Stock> {
    const LEAST_USED_ML: f64 = 5.0;
    sizes_ml.iter().find_map(|&made_up_to_ml| {
        let used_ml = (2.0 * amount / holds * made_up_to_ml).round() / 2.0;
        (used_ml >= LEAST_USED_ML && used_ml <= made_up_to_ml).then_some(Stock { holds, made_up_to_ml, used_ml })
    })
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
fn counted(count: f64) -> (f64, (f64, &'static str)) {
    let whole = count.floor();
    let rest = count - whole;
    let nearest = FRACTIONS.into_iter().min_by(|left, right| (left.0 - rest).abs().total_cmp(&(right.0 - rest).abs()));
    (whole, nearest.unwrap_or((0.0, "")))
}

/// Returns such a number in letters.
fn spoken(whole: f64, share: f64, sign: &str) -> String {
    let whole = if share >= 1.0 { whole + 1.0 } else { whole };
    match (whole > 0.0, sign) {
        (true, sign) => format!("{whole:.0}{sign}"),
        (false, "") => "0".to_owned(),
        (false, sign) => sign.to_owned(),
    }
}
