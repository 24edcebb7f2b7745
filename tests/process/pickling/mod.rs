//! Tests of `src/process/pickling`.

mod behaviour;
mod brined;
mod cases;
mod coupled;
mod eggs;
mod fineness;
mod inside;
mod leach;
pub(super) mod likely;
mod limits;
mod pile;
mod salted;
mod series;
mod stage;
mod swell;

pub use brined::brined_rows;
pub use eggs::egg_rows;
use vatsketch::law::Matter;
use vatsketch::process::{PickledCheese, Soak, VinegarBath};

/// Returns the dried cheese of `tests/reference/pickling.csv`: 50.5 × 15.2 mm, 1074 kg/m³, 26 % protein, 35.2 % water, pH 6.5.
fn dried() -> PickledCheese {
    cheese(50.5, 15.2, 1074.0, 0.26, 0.352)
}

/// Returns a cheese of this size, density and composition.
fn cheese(diameter_mm: f64, thickness_mm: f64, kg_m3: f64, protein: f64, water: f64) -> PickledCheese {
    let kg = kg_m3 * std::f64::consts::PI * (0.0005 * diameter_mm).powi(2) * 0.001 * thickness_mm;
    let matter =
        Matter { water_kg: water * kg, casein_kg: protein * kg, fat_kg: (1.0 - water - protein) * kg, ..Matter::default() };
    PickledCheese {
        matter,
        diameter_mm,
        thickness_mm,
        start_ph: 6.5,
        buffer_scale: 1.0,
        diffusivity_scale: 1.0,
        ..PickledCheese::default()
    }
}

/// Returns 5 g/100 mL at 21 °C.
fn vinegar(volume_ml: f64) -> VinegarBath {
    // 5 g/100 mL is common practice, no source.
    VinegarBath { acid_g_per_100ml: 5.0, volume_ml, temperature_c: 21.0 }
}

/// Returns the equations of the first case of `tests/reference/pickling.csv`.
fn soak() -> Soak {
    Soak { water_share: 0.379, acid_m2_s: 1.35e-10, ..Soak::new(&dried(), &vinegar(60.0)).unwrap() }
}
