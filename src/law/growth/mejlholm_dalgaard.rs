//! A whole model of its own for chilled food: a second opinion in the jar and the refrigerator, from 2 to 25 °C, not in the vat.

use super::cardinal::{interaction, undissociated};
use super::conditions::Conditions;
use super::inhibiting::{ACETIC_PK, CITRIC_PK, LACTIC_PK};

const FORM: &str = "least temperature, water activity and pH; inhibiting undissociated lactic, acetic and citric acid, mmol/kg; rate at 25 °C, 1/h; power of citric acid";

/// The temperature at which the rates of the model are given, °C.
const REFERENCE_C: f64 = 25.0;

crate::correlations! {
    /// Listeria in chilled food.
    CHILLED_LISTERIA = { "Listeria monocytogenes in chilled food, whole model", FORM, [-2.83, 0.923, 4.97, 3.79, 10.3, 2.119, 0.419, 1.0], "1/h", (2.0, 25.0), "°C", QraLm, "Mejlholm and Dalgaard 2009, 2010; without smoke, nitrite, carbon dioxide, sorbate", Secondhand }
    /// Lactic acid bacteria in chilled food.
    CHILLED_LACTIC = { "Lactic acid bacteria in chilled food, whole model", FORM, [-5.25, 0.928, 4.24, 12.0, 10.3, 10.3, 0.583, 2.0], "1/h", (2.0, 25.0), "°C", QraLm, "Mejlholm and Dalgaard 2009, 2010; without smoke, nitrite, carbon dioxide, sorbate", Secondhand }
}

/// Of whose growth the model speaks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Chilled {
    /// Listeria monocytogenes.
    Listeria,
    /// Lactic acid bacteria.
    LacticBacteria,
}

/// Returns the rate of growth in chilled food, ln per hour, 0 beyond any limit.
///
/// μ = μref ((T − Tmin)/(25 − Tmin))² (aw − awmin)/(1 − awmin) (1 − 10^(pHmin − pH)) (1 − L/MIC) (1 − √(A/MIC)) (1 − C/MIC)ⁿ ξ
///
/// # Arguments
/// * `at`: 2 to 25 °C, acids as all forms
/// * `citric_mm`: citric acid, all forms, mmol per kg of water
///
/// # Source
/// `CHILLED_LISTERIA`, `CHILLED_LACTIC`.
///
/// # Example
/// ```
/// use vatsketch::law::growth::{Chilled, Conditions, mejlholm_dalgaard};
/// let cold = Conditions { temperature_c: 4.0, ph: 6.2, water_activity: 0.985, ..Conditions::default() };
/// assert!((mejlholm_dalgaard(Chilled::Listeria, &cold, 0.0) / 0.019_123_7 - 1.0).abs() < 1e-4);
/// ```
#[must_use]
pub fn mejlholm_dalgaard(whose: Chilled, at: &Conditions, citric_mm: f64) -> f64 {
    let [coldest, driest, sourest, most_lactic, most_acetic, most_citric, reference, power] = match whose {
        Chilled::Listeria => CHILLED_LISTERIA.coefficients,
        Chilled::LacticBacteria => CHILLED_LACTIC.coefficients,
    };
    let share = |total: f64, pk: f64, most: f64| (undissociated(total, at.ph, pk) / most).max(0.0);
    let lactic = share(at.lactic_mm, LACTIC_PK.value, most_lactic);
    let acetic = share(at.acetic_mm, ACETIC_PK.value, most_acetic);
    let citric = share(citric_mm, CITRIC_PK.value, most_citric);
    let beyond = at.temperature_c <= coldest || at.water_activity <= driest || at.ph <= sourest;
    if beyond || lactic >= 1.0 || acetic >= 1.0 || citric >= 1.0 {
        return 0.0;
    }
    // What is no number holds nothing back.
    let known = |way: f64| if way.is_nan() { 1.0 } else { way };
    let warmth = known((at.temperature_c - coldest) / (REFERENCE_C - coldest));
    let moisture = known((at.water_activity - driest) / (1.0 - driest));
    let acidity = known(1.0 - 10.0_f64.powf(sourest - at.ph));
    let far = [
        (1.0 - warmth).powi(2),
        (1.0 - moisture.sqrt()).powi(2),
        (1.0 - acidity.sqrt()).powi(2),
        (1.0 - (1.0 - lactic.sqrt()) * (1.0 - acetic.sqrt()) * (1.0 - citric)).powi(2),
    ];
    let acids = (1.0 - lactic) * (1.0 - acetic.sqrt()) * (1.0 - citric).powf(power);
    reference * warmth.powi(2) * moisture * acidity * acids * interaction(&far)
}
