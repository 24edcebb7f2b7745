//! Cheese in brine, of which others published moisture, salt and the water that leaves: what our laws say of it, and what they miss.

use super::{cheese, vinegar};
use crate::law::outside::Outside;
use vatsketch::law::Matter;
use vatsketch::law::brine::SALT_MOLAR_MASS;
use vatsketch::law::food_density::WATER_DENSITY;
use vatsketch::law::moisture_diffusion::MoistureDiffusion;
use vatsketch::law::soaking::{SALT_HOLDS_WATER, SALT_OBSTRUCTION, SWELLING_WATER, face_water, salt_in_vinegar_m2_s};
use vatsketch::process::{Given, PickledCheese, Soak, Swelling, VinegarBath, salt_left};

/// A row of the table.
#[derive(serde::Deserialize)]
struct Row {
    id: String,
    what: String,
    salt_percent: f64,
    temperature_c: f64,
    days: f64,
    value: f64,
    seen: String,
}

fn row(id: &str) -> Row {
    crate::law::rows("brined-cheese.csv").into_iter().find(|row: &Row| row.id == id).unwrap()
}

/// Returns the salt in the water of a brine, mol/kg.
fn molality(salt_percent: f64) -> f64 {
    salt_percent / (100.0 - salt_percent) / SALT_MOLAR_MASS.value
}

/// The white cheese: 50.8 % of water. Its size, density and the protein in its solids (0.42) are assumed; the abstract breaks off before them.
fn white() -> PickledCheese {
    cheese(54.0, 36.0, 1060.0, 0.42 * 0.492, 0.508)
}

/// Returns its salt in moisture after a brining, %, from the law of salt.
///
/// * `diffusivity_m2_s`: of salt in its water by share of water and temperature
fn white_salt_percent(row: &Row, diffusivity_m2_s: impl Fn(f64) -> f64) -> f64 {
    let cheese = white();
    // As much brine as cheese, with 6 % of whey solids beside the salt (assumed).
    let salt = 0.01 * row.salt_percent;
    let brine_water_kg = cheese.matter.total_kg() * (1.0 - salt) * 0.94;
    let water_kg_m3 = WATER_DENSITY.polynomial(row.temperature_c);
    let bath = VinegarBath { temperature_c: row.temperature_c, ..vinegar(1e6 * brine_water_kg / water_kg_m3) };
    let soak = Soak::new(&cheese, &bath).unwrap();
    let left = salt_left(&soak, diffusivity_m2_s(soak.water_share), &[24.0 * row.days]).unwrap()[0];
    let for_each_water = (1.0 - left) * salt * cheese.matter.total_kg() / brine_water_kg;
    100.0 * for_each_water / (1.0 + for_each_water)
}

/// Returns its water after a brining, kg per kg of dry solids.
fn white_water(row: &Row, salt_molality: f64, given: &Given) -> [f64; 3] {
    let cheese = white();
    let swelling = Swelling {
        fresh: cheese.matter,
        fresh_diameter_mm: cheese.diameter_mm,
        fresh_thickness_mm: cheese.thickness_mm,
        moisture: None,
        water: 0.508 / 0.492,
        protein_share: 0.42,
        salt_molality,
        temperature_c: row.temperature_c,
        diffusivity_scale: 1.0,
        energy_scale: 1.0,
        open_faces: 1.0,
    };
    swelling.judged(24.0 * row.days, given).unwrap().map(|points| points.last().unwrap().water)
}

/// A slab of cheese with one face in plenty of brine.
struct Slab {
    /// Water and salt of each layer, kg for each kg of dry solids, from the face inwards.
    water: Vec<f64>,
    salt: Vec<f64>,
    came_with: f64,
    /// Dry solids by volume when it came, and their mass in a m³.
    solids_share: f64,
    solids_kg_m3: f64,
}

/// Thickness of a layer, m, and how many there are.
const LAYER_M: f64 = 0.00025;
const LAYERS: usize = 120;

impl Slab {
    /// Returns the slab after a brining, by Kirchhoff's potential of the program's own diffusivity; salt goes by its diffusivity and with the water.
    ///
    /// * `face`: water at the face, kg per kg of dry solids
    fn after(row: &Row, (water, fat, protein): (f64, f64, f64), kg_m3: f64, face: f64) -> Self {
        let matter =
            Matter { water_kg: water, fat_kg: fat, casein_kg: protein, ash_kg: 1.0 - water - fat - protein, ..Matter::default() };
        let diffusion = MoistureDiffusion::of(&matter);
        let (moves_m2_s, temperature_c) = (diffusion.at_m2_s(row.temperature_c), row.temperature_c);
        let water_kg_m3 = WATER_DENSITY.polynomial(temperature_c);
        let water_share = water * kg_m3 / water_kg_m3;
        let came_with = water / (1.0 - water);
        let mut slab = Self {
            water: vec![came_with; LAYERS],
            salt: vec![0.0; LAYERS],
            came_with,
            solids_share: 1.0 - water_share,
            solids_kg_m3: kg_m3 * (1.0 - water),
        };
        let in_brine = molality(row.salt_percent) * SALT_MOLAR_MASS.value;
        let salt_m2_s = salt_in_vinegar_m2_s(1.0, temperature_c) / SALT_OBSTRUCTION.value;
        let step_s = 60.0;
        let steps = (row.days * 86_400.0 / step_s).round() as u32;
        let mut potentials = vec![0.0; LAYERS];
        for _ in 0..steps {
            for (potential, water) in potentials.iter_mut().zip(&slab.water) {
                *potential = diffusion.potential(*water);
            }
            // What crosses the outer edge of each layer inwards, kg for each kg of dry solids in a layer and second.
            let mut inwards = [0.0; 2];
            let mut rates = vec![[0.0; 2]; LAYERS + 1];
            for layer in 0..LAYERS {
                let (outer_potential, outer_salt, distance) = match layer.checked_sub(1) {
                    Some(outer) => (potentials[outer], slab.salt[outer] / slab.water[outer], 1.0),
                    None => (diffusion.potential(face), in_brine, 0.5),
                };
                let water_in = moves_m2_s * (outer_potential - potentials[layer]) / (distance * LAYER_M * LAYER_M);
                let inner_salt = slab.salt[layer] / slab.water[layer];
                let share = slab.share(layer);
                // Salt in the water of the cheese: flux D φ grad s, over the solids of a layer.
                let spreads = SALT_OBSTRUCTION.value * share * share * salt_m2_s * water_kg_m3 / slab.solids_kg_m3;
                let carried = water_in * if water_in > 0.0 { outer_salt } else { inner_salt };
                let salt_in = spreads * (outer_salt - inner_salt) / (distance * LAYER_M * LAYER_M) + carried;
                rates[layer] = [water_in, salt_in];
            }
            for layer in (0..LAYERS).rev() {
                slab.water[layer] += step_s * (rates[layer][0] - inwards[0]);
                slab.salt[layer] += step_s * (rates[layer][1] - inwards[1]);
                inwards = rates[layer];
            }
        }
        slab
    }

    /// Returns the water of a layer by volume.
    fn share(&self, layer: usize) -> f64 {
        let water = (1.0 - self.solids_share) * self.water[layer] / self.came_with;
        water / (water + self.solids_share)
    }

    /// Returns by how much the porosity of the outer millimetre has fallen, %.
    fn porosity_fall_percent(&self) -> f64 {
        let outer = (0.001 / LAYER_M) as usize;
        let now = (0..outer).map(|layer| self.share(layer)).sum::<f64>() / outer as f64;
        100.0 * (1.0 - now / (1.0 - self.solids_share))
    }

    /// Returns the water that has left over the salt that has come, in so many mm under the face.
    fn out_over_in(&self, depth_mm: f64) -> f64 {
        let outer = (0.001 * depth_mm / LAYER_M) as usize;
        let out: f64 = self.water[..outer].iter().map(|water| self.came_with - water).sum();
        out / self.salt[..outer].iter().sum::<f64>()
    }
}

/// The brined hard cheese of the barrier layer, with the composition of another paper on the same cheese, and the other hard cheese, whose composition
/// is that of a row of the salt; its protein is assumed.
const BARRIER: ((f64, f64, f64), f64) = ((0.4535, 0.254, 0.253), 1080.0);
const OTHER_HARD: ((f64, f64, f64), f64) = ((0.465, 0.2033, 0.27), 1080.0);

/// Returns what a brining gives, where the face holds what the cheese came with but for what the salt holds back, by `holds` for each mol/kg.
fn brined(row: &Row, holds: f64) -> Slab {
    let (composition, kg_m3) = if row.id == "B4" { OTHER_HARD } else { BARRIER };
    let came_with = composition.0 / (1.0 - composition.0);
    Slab::after(row, composition, kg_m3, came_with * (1.0 - holds * molality(row.salt_percent)))
}

/// Returns the same where the face holds what our whole law says.
fn brined_by_the_whole_law(row: &Row) -> Slab {
    let (composition, kg_m3) = if row.id == "B4" { OTHER_HARD } else { BARRIER };
    let solids = 1.0 - composition.0;
    let face = face_water(SWELLING_WATER.value, composition.2 / solids, composition.0 / solids, molality(row.salt_percent));
    Slab::after(row, composition, kg_m3, face)
}

/// Returns the published rows next to what our laws say.
pub fn brined_rows() -> Vec<Outside> {
    let rows: Vec<Row> = crate::law::rows("brined-cheese.csv");
    rows.into_iter()
        .map(|row| {
            let (ours, tolerance, why) = match row.id.as_str() {
                "W1" => {
                    let water = white_water(&row, molality(row.salt_percent), &Given::default())[0];
                    (100.0 * water / (1.0 + water), None, "the law says little of swelling in brine; which brine is not said")
                }
                "B1" | "B2" => (
                    brined_by_the_whole_law(&row).porosity_fall_percent(),
                    None,
                    "fitted where the cheese holds its own water; here by the whole law",
                ),
                "B4" => {
                    (brined(&row, SALT_HOLDS_WATER.value).out_over_in(2.0), None, "not fitted; depth, brine and protein assumed")
                }
                _ => {
                    let ours = white_salt_percent(&row, |water| salt_in_vinegar_m2_s(water, row.temperature_c));
                    (ours, Some(0.1 * row.value), "mostly a mass balance; size assumed")
                }
            };
            let source = match row.id.as_str() {
                "B1" | "B2" => "J. Dairy Sci. 2006, barrier layer, abstract",
                "B4" => "J. Dairy Res. 1983, summary",
                _ => "a study of white cheese, Utah State University, abstract",
            };
            let case =
                format!("{}, {} % salt, {} °C, {} days ({})", row.what, row.salt_percent, row.temperature_c, row.days, row.seen);
            Outside::new("cheese in brine", case, source, (row.value, ours), tolerance, why)
        })
        .collect()
}

/// Salt in moisture over the level expected: ours 0.93 to 0.97, by all the local water and by the fat-free part as near. The rows test a balance and
/// have no power to choose.
#[test]
fn white_cheese_takes_up_the_salt_that_its_brine_lets_expect() {
    let around = |share: f64| (share / (2.0 - share)).powi(2);
    // Fat of 917 kg/m³, 0.45 of the solids.
    let fat = 0.45 * 0.492 * 1060.0 / 917.0;
    for id in ["W3", "W4", "W5"] {
        for temperature_c in [3.0, 22.0] {
            let row = Row { temperature_c, ..row(id) };
            let in_water_m2_s = salt_in_vinegar_m2_s(1.0, temperature_c) / SALT_OBSTRUCTION.value;
            let ours = white_salt_percent(&row, |water| salt_in_vinegar_m2_s(water, temperature_c)) / row.value;
            let local = white_salt_percent(&row, |water| around(water) * in_water_m2_s) / row.value;
            let fat_free = white_salt_percent(&row, |water| 0.78 * around(water / (1.0 - fat)) / (1.0 + 0.5 * fat) * in_water_m2_s)
                / row.value;
            assert!(
                (0.92..0.99).contains(&ours) && (0.88..0.99).contains(&local) && (0.92..0.99).contains(&fat_free),
                "{ours} {local} {fat_free}"
            );
            // No further off than the worse of the two; the better one is 0.01 nearer.
            assert!(ours > local - 1e-3 && (fat_free - ours).abs() < 0.02, "{ours}, {local}, {fat_free}");
        }
    }
}

/// Up to 58 % from 50.8 %: ours 51 %, 0.77 of the water, and no more before the face knew of protein and salt. Even the greatest amount that is likely
/// leaves 0.9 of it. The row is missed and stays; at a face that holds 1.68 kg/kg of dry solids it would be met, which is 4.0 for each kg of protein, or
/// 4.7 where the salt of the brine holds some back.
#[test]
fn white_cheese_in_cold_brine_took_up_more_water_than_the_law_says() {
    let row = row("W1");
    let published = 0.01 * row.value / (1.0 - 0.01 * row.value);
    let [ours, least, most] = white_water(&row, molality(row.salt_percent), &Given::default());
    let plain = white_water(&row, 0.0, &Given::default())[0];
    assert!(least <= ours && ours < most, "{least} {ours} {most}");
    let (ours, most, plain) = (ours / published, most / published, plain / published);
    assert!((0.74..0.80).contains(&ours) && (0.80..0.95).contains(&most) && plain > ours && plain < 1.0, "{ours} {most} {plain}");
}

/// The fall of porosity in the outer millimetre: 29.2 % in brine of 18 % and 50.8 % in saturated brine. With water that salt does not move it is nothing;
/// one constant meets both where the cheese holds its own water without salt.
#[test]
fn strong_brine_draws_water_from_the_skin_as_it_was_published() {
    for id in ["B1", "B2"] {
        let row = row(id);
        let ratio = |holds: f64| brined(&row, holds).porosity_fall_percent() / row.value;
        assert!(ratio(0.0).abs() < 1e-9);
        assert!((ratio(SALT_HOLDS_WATER.value) - 1.0).abs() < 0.06, "{id}: {}", ratio(SALT_HOLDS_WATER.value));
        let (least, most) = SALT_HOLDS_WATER.range;
        assert!(ratio(least) < 1.0 && ratio(most) > 1.0, "{id}: {} {}", ratio(least), ratio(most));
    }
}

/// A face that would hold 3.0 kg for each kg of protein in plain water is not that of these cheeses, which came with 1.8: by the whole law the skin loses
/// 0.26 of what was published in the weaker brine and 0.82 in the stronger. That is to the side of more water, and the rows stay.
#[test]
fn by_the_whole_law_the_skin_keeps_more_water_than_was_published() {
    let ratios = ["B1", "B2"].map(|id| brined_by_the_whole_law(&row(id)).porosity_fall_percent() / row(id).value);
    assert!((ratios[0] - 0.26).abs() < 0.02 && (ratios[1] - 0.82).abs() < 0.02, "{ratios:?}");
}

/// Water out over salt in at the surface, 2.42, was not fitted: ours is 1.1 to 1.6 times that by how deep one looks; without the salt in the law it was 0.
#[test]
fn water_out_over_salt_in_was_not_fitted_and_is_met_within_a_factor_of_one_and_a_half() {
    let row = row("B4");
    let slab = brined(&row, SALT_HOLDS_WATER.value);
    for depth_mm in [1.0, 2.0, 3.0, 5.0] {
        let ratio = slab.out_over_in(depth_mm) / row.value;
        assert!((1.0..1.65).contains(&ratio), "{depth_mm} mm: {ratio}");
    }
    let without = brined(&row, 0.0).out_over_in(2.0);
    assert!(without.abs() < 1e-9, "{without}");
}
