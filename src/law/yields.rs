//! How much curd milk gives.

crate::constants! {
    /// Fat that stays in ladled curd.
    FAT_KEPT = { "Fat kept by ladled curd", 0.88, "1", (0.80, 0.94), Ourselves, "ladled or basket curd", Fitted }
    /// Fat that stays where the milk is homogenised.
    FAT_KEPT_HOMOGENISED = { "Fat kept by ladled curd of homogenised milk", 0.95, "1", (0.90, 0.98), Ourselves, "homogenised milk loses less fat", FromMemory }
    /// Casein that stays.
    CASEIN_KEPT = { "Casein kept by the curd", 0.95, "1", (0.93, 0.97), Ourselves, "a published balance has 0.963", Fitted }
    /// Calcium phosphate that goes with casein.
    PHOSPHATE_SHARE = { "Calcium phosphate that goes with the casein", 0.04, "1", (0.03, 0.05), Ourselves, "so that curd solids add up", Fitted }
    /// Solids in the water of curd.
    SERUM_SOLIDS = { "Solids of the serum per water in curd", 0.066, "1", (0.06, 0.07), GuelphNotes, "whey solids of 6 to 6.2 % of whey", Fitted }
    /// Share of the curd's water that carries them.
    SERUM_WATER_SHARE = { "Share of the curd's water that dissolves serum solids", 0.9, "1", (0.8, 1.0), Ourselves, "the rest is bound to casein", Fitted }
    /// Fat term of the yield formula.
    VAN_SLYKE_FAT = { "Van Slyke and Price, fat kept", 0.93, "1", (0.93, 0.93), VanSlyke1914, "yield formula", Published }
    /// Casein loss of the yield formula.
    VAN_SLYKE_LOSS = { "Van Slyke and Price, casein lost", 0.1, "%", (0.1, 0.1), VanSlyke1914, "yield formula", Published }
    /// Other solids of the yield formula.
    VAN_SLYKE_SOLIDS = { "Van Slyke and Price, other solids", 1.09, "1", (1.09, 1.09), VanSlyke1914, "yield formula", Published }
    /// Spread between kitchens.
    YIELD_SPREAD = { "Spread of yield between kitchens", 0.08, "1", (0.05, 0.12), Ourselves, "arithmetic is exact, kitchens are not", Judged }
}

crate::correlations! {
    /// What souring the milk costs.
    SOUR_YIELD_LOSS = { "Loss of yield by pH of the milk at the rennet", "pairs of pH and share lost, straight between; held below", [
        5.8, 0.0445, 6.0, 0.0235, 6.4, 0.0
    ], "1", (5.8, 6.7), "pH", Metzger2000, "2.5 and 5.5 % with citric acid, 2.2 and 3.4 % with acetic acid at pH 6.0 and 5.8: their means; none at 6.4 is ours", Secondhand }
}

/// Returns the share of fat and casein that soured milk loses to its whey beside what sweet milk loses, 0 to 1.
///
/// # Arguments
/// * `ph`: of the milk at the rennet
///
/// # Example
/// ```
/// use vatsketch::law::yields::sour_loss;
/// assert_eq!(sour_loss(6.65), 0.0);
/// assert!((sour_loss(5.9) - 0.034).abs() < 1e-12);
/// ```
#[must_use]
pub fn sour_loss(ph: f64) -> f64 {
    let [sour, most, less_sour, less, sweet, none] = SOUR_YIELD_LOSS.coefficients;
    let between = |(from, low): (f64, f64), (to, high): (f64, f64)| low + (high - low) * (ph - from) / (to - from);
    if ph >= sweet {
        none
    } else if ph >= less_sour {
        between((less_sour, less), (sweet, none))
    } else if ph >= sour {
        between((sour, most), (less_sour, less))
    } else {
        most
    }
}

/// Returns the yield by Van Slyke and Price, kg per 100 kg of milk: (0.93 F + C − 0.1)·1.09/(1 − M). Low for moist cheese.
///
/// # Arguments
/// * `fat_percent`, `casein_percent`: of the milk; `moisture_percent`: of the cheese, near 37
///
/// # Example
/// ```
/// let cheese = vatsketch::law::yields::van_slyke_percent(3.6, 2.5, 37.0);
/// assert!((cheese - 9.945).abs() < 0.005);
/// ```
#[must_use]
pub fn van_slyke_percent(fat_percent: f64, casein_percent: f64, moisture_percent: f64) -> f64 {
    let solids = (VAN_SLYKE_FAT.value * fat_percent + casein_percent - VAN_SLYKE_LOSS.value) * VAN_SLYKE_SOLIDS.value;
    solids / (1.0 - 0.01 * moisture_percent)
}

/// Returns the yield of soft, unsalted curd, kg per 100 kg of milk: (R_F F + 1.04 R_C C)/(1 − M (1 + 0.9·0.066)).
///
/// # Arguments
/// * `fat_percent`, `casein_percent`: of the milk
/// * `fat_kept`, `casein_kept`: shares that stay, 0 to 1
/// * `moisture_percent`: of the curd, below 90
///
/// # Source
/// Our own balance over fat, casein, calcium phosphate and serum ([`PHOSPHATE_SHARE`], [`SERUM_SOLIDS`]).
///
/// # Example
/// ```
/// let curd = vatsketch::law::yields::soft_curd_percent(3.25, 2.43, 0.88, 0.95, 60.0);
/// assert!((curd - 14.44).abs() < 0.01);
/// ```
#[must_use]
pub fn soft_curd_percent(fat_percent: f64, casein_percent: f64, fat_kept: f64, casein_kept: f64, moisture_percent: f64) -> f64 {
    soured_curd_percent(fat_percent, casein_percent, (fat_kept, casein_kept), moisture_percent, 1.0)
}

/// Returns the same for milk that was soured before its whey left: only `phosphate_left` of the calcium phosphate goes with the casein.
///
/// # Arguments
/// * `kept`: shares of fat and casein that stay, 0 to 1
/// * `phosphate_left`: 0 to 1; the rest has dissolved
#[must_use]
pub fn soured_curd_percent(
    fat_percent: f64,
    casein_percent: f64,
    (fat_kept, casein_kept): (f64, f64),
    moisture_percent: f64,
    phosphate_left: f64,
) -> f64 {
    let solids = fat_kept * fat_percent + (1.0 + phosphate_left * PHOSPHATE_SHARE.value) * casein_kept * casein_percent;
    solids / (1.0 - 0.01 * moisture_percent * (1.0 + serum_solids_per_water()))
}

/// Returns the serum solids that each kilogram of water brings into the curd, kg.
#[must_use]
pub fn serum_solids_per_water() -> f64 {
    SERUM_WATER_SHARE.value * SERUM_SOLIDS.value
}
