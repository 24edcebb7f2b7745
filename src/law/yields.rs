//! How much curd a milk gives.

crate::correlations! {
    /// The formula of Van Slyke and Price.
    VAN_SLYKE_PRICE = { "Yield of pressed cheese, salt included", "(a F + C − b) c / (1 − M)", [0.93, 0.1, 1.09], "kg/100 kg", (35.0, 40.0), "% moisture", VanSlyke1914, "as quoted in the notes; low for moist cheese", Published }
}

crate::constants! {
    /// Fat kept by ladled curd.
    FAT_KEPT = { "Share of the fat that ladled curd keeps", 0.88, "1", (0.80, 0.94), PrinciplesOfCheeseTechnology, "the balance of figure 10.5 has 0.873", Fitted }
    /// Fat kept by the curd of homogenised milk.
    HOMOGENISED_FAT_KEPT = { "Share of the fat that curd of homogenised milk keeps", 0.95, "1", (0.90, 0.98), Textbook, "homogenised fat sits in the gel", FromMemory }
    /// Casein kept by the curd.
    CASEIN_KEPT = { "Share of the casein that curd keeps", 0.95, "1", (0.93, 0.97), PrinciplesOfCheeseTechnology, "the balance of figure 10.5 has 0.963", Fitted }
    /// Calcium phosphate that goes with casein.
    CALCIUM_PHOSPHATE = { "Calcium phosphate to casein in curd", 0.04, "1", (0.03, 0.05), Ourselves, "the 1.04 of the soft form of the yield", Fitted }
    /// Solids in whey to its water.
    SERUM_SOLIDS = { "Solids of the serum to its water", 0.066, "1", (0.060, 0.070), Ourselves, "sweet whey without its fat", Fitted }
    /// Water in the curd that holds serum solids.
    SOLVENT_SHARE = { "Share of the curd's water that holds serum solids", 0.9, "1", (0.85, 1.0), Ourselves, "some water is bound to the protein", Fitted }
    /// Spread of the yield.
    YIELD_SPREAD = { "Spread of the yield between real kitchens, either way", 8.0, "%", (4.0, 12.0), Ourselves, "as a share of the yield", Judged }
}

/// What a curd keeps of its milk.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kept {
    /// Share of the fat.
    pub fat: f64,
    /// Share of the casein.
    pub casein: f64,
}

/// Returns the yield by Van Slyke and Price, kg per 100 kg of milk: Y = (0.93 F + C − 0.1)·1.09/(1 − M), salt included.
///
/// Meant for pressed cheese of about 37 % moisture; too low for moist cheese. Here it stands beside [`soft_percent`], never in its place.
///
/// # Arguments
/// * `fat_percent`, `casein_percent`: of the milk, by mass
/// * `moisture_percent`: of the cheese, 0 to below 100 %
///
/// # Source
/// [`VAN_SLYKE_PRICE`].
///
/// # Example
/// ```
/// use vatsketch::law::yields::van_slyke_price_percent;
/// assert!((van_slyke_price_percent(3.6, 2.5, 37.0) - 9.945).abs() < 0.0005 + 0.005);
/// ```
#[must_use]
pub fn van_slyke_price_percent(fat_percent: f64, casein_percent: f64, moisture_percent: f64) -> f64 {
    let [a, b, c] = match VAN_SLYKE_PRICE.coefficients {
        [a, b, c] => [*a, *b, *c],
        _ => [f64::NAN; 3],
    };
    (a * fat_percent + casein_percent - b) * c / (1.0 - moisture_percent / 100.0)
}

/// Returns the yield of soft, unsalted curd, kg per 100 kg of milk: Y = (RF·F + 1.04·RC·C)/(1 − M (1 + 0.9·0.066)).
///
/// The curd is its fat, its casein with calcium phosphate, and its moisture with the serum solids dissolved in nine tenths of it.
///
/// # Arguments
/// * `fat_percent`, `casein_percent`: of the milk, by mass
/// * `kept`: shares that the curd keeps, 0 to 1
/// * `moisture_percent`: of the curd, 0 to 90 %
///
/// # Source
/// [`FAT_KEPT`], [`CASEIN_KEPT`], [`CALCIUM_PHOSPHATE`], [`SERUM_SOLIDS`] and [`SOLVENT_SHARE`].
///
/// # Example
/// ```
/// use vatsketch::law::yields::{soft_percent, Kept};
/// assert!((soft_percent(3.25, 2.43, Kept { fat: 0.88, casein: 0.95 }, 60.0) - 14.44).abs() < 0.01);
/// ```
#[must_use]
pub fn soft_percent(fat_percent: f64, casein_percent: f64, kept: Kept, moisture_percent: f64) -> f64 {
    let frame = kept.fat * fat_percent + (1.0 + CALCIUM_PHOSPHATE.value) * kept.casein * casein_percent;
    frame / (1.0 - moisture_percent / 100.0 * (1.0 + SOLVENT_SHARE.value * SERUM_SOLIDS.value))
}

/// Returns a yield at another moisture, the dry matter kept: Y₂ = Y₁ (1 − M₁)/(1 − M₂).
///
/// # Arguments
/// * `yield_percent`: at the first moisture
/// * `from_percent`, `to_percent`: moistures, below 100 %
///
/// # Example
/// ```
/// use vatsketch::law::yields::at_other_moisture_percent;
/// assert!((at_other_moisture_percent(11.0, 37.0, 39.0) - 11.36).abs() < 0.005);
/// ```
#[must_use]
pub fn at_other_moisture_percent(yield_percent: f64, from_percent: f64, to_percent: f64) -> f64 {
    yield_percent * (100.0 - from_percent) / (100.0 - to_percent)
}
