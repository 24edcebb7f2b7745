//! One soak in which the water of each place decides how fast acid moves, against eggs: the comparison for which the simpler model was kept.
//!
//! A ball of shells with white and yolk apart, amounts of acetate and protons, and a stirred bath. Its equilibrium is the program's own; the
//! laws of obstruction are those that a coupled soak would have. Charges and dissolving calcium need species of their own and are not in it.

use vatsketch::law::acidity::{ACETATE_MOBILITY, CONDITIONAL_PK, FILM_TRANSFER, acid_diffusivity_m2_s, acid_mol_m3};
use vatsketch::law::buffering::{Buffer, local_equilibrium};
use vatsketch::law::food_density::WATER_DENSITY;

const SHELLS: usize = 30;
const EGG_KG_M3: f64 = 1035.0;
/// 53 g.
const EGG_RADIUS_M: f64 = 0.02305;
/// Yolk is a third of the volume and in the middle (from memory).
const YOLK_SHARE: f64 = 0.34;
/// Water, fat and protein by mass of white and of yolk (from memory).
const WHITE: [f64; 3] = [0.88, 0.0, 0.105];
const YOLK: [f64; 3] = [0.50, 0.30, 0.16];
/// Acid that an egg takes up from pH 7 to 4, mol/kg: it meets the published equilibrium pH.
const CAPACITY: f64 = 0.10;

/// How the egg stands in the way.
#[derive(Clone, Copy, PartialEq)]
enum Law {
    /// Ours, an egg of even water.
    Ours,
    /// (φ/(2 − φ))² of all the local water.
    Local,
    /// The same of the fat-free part, with the factor 0.78 that the published salt asks for.
    FatFree,
}

/// One shell.
struct Shell {
    volume_m3: f64,
    /// Water by volume.
    water: f64,
    /// Share of the diffusivity in water that a solute of its water has, by area of the body.
    lets_through: f64,
    buffer: Buffer,
    acetate: f64,
    protons: f64,
    ph: f64,
    whole: f64,
    split: f64,
    hydrogen: f64,
}

impl Shell {
    fn new(index: usize, law: Law) -> Self {
        let radius = |edge: usize| EGG_RADIUS_M * edge as f64 / SHELLS as f64;
        let middle = (index as f64 + 0.5) / SHELLS as f64;
        let [water_kg, fat_kg, protein_kg] = if law == Law::Ours {
            [0.75, 0.0, 0.1]
        } else if middle < YOLK_SHARE.cbrt() {
            YOLK
        } else {
            WHITE
        };
        let mean_protein = if law == Law::Ours { 0.1 } else { YOLK[2] * YOLK_SHARE + WHITE[2] * (1.0 - YOLK_SHARE) };
        let water = water_kg * EGG_KG_M3 / WATER_DENSITY.polynomial(20.0);
        let fat = fat_kg * EGG_KG_M3 / 917.0;
        let around = |share: f64| (share / (2.0 - share)).powi(2);
        let obstruction = match law {
            Law::Ours => 0.33 * water,
            Law::Local => around(water),
            Law::FatFree => 0.78 * around(water / (1.0 - fat)) / (1.0 + 0.5 * fat),
        };
        let unscaled = Buffer::new(0.1, 0.0, 7.0, 1.0).taken_and_slope(4.0).0;
        Self {
            volume_m3: 4.0 / 3.0 * std::f64::consts::PI * (radius(index + 1).powi(3) - radius(index).powi(3)),
            water,
            lets_through: water * obstruction,
            buffer: Buffer::new(0.1 * protein_kg / mean_protein, 0.0, 7.0, CAPACITY / unscaled),
            acetate: 0.0,
            protons: 1e-4,
            ph: 7.0,
            whole: 0.0,
            split: 0.0,
            hydrogen: 1e-4,
        }
    }

    fn settle(&mut self) {
        let place = local_equilibrium(
            self.acetate,
            self.protons,
            Some((&self.buffer, EGG_KG_M3 / self.water)),
            CONDITIONAL_PK.value,
            self.ph,
        );
        self.ph = place.ph;
        self.whole = self.acetate * (1.0 - place.split);
        self.split = self.acetate * place.split;
        self.hydrogen = place.hydrogen_mol_m3;
    }
}

/// Returns the hours until the centre has pH 4.6, 60 parts of egg to 40 of brine.
fn hours(law: Law, acid_percent: f64, temperature_c: f64) -> f64 {
    let mut shells: Vec<Shell> = (0..SHELLS).map(|index| Shell::new(index, law)).collect();
    let egg_m3: f64 = shells.iter().map(|shell| shell.volume_m3).sum();
    let bath_m3 = egg_m3 * EGG_KG_M3 * (40.0 / 60.0) / 1005.0;
    let (mut bath, mut bath_ph) = ([acid_mol_m3(acid_percent * 1.005); 2], 3.0);
    let (acid_m2_s, width_m) = (acid_diffusivity_m2_s(temperature_c), EGG_RADIUS_M / SHELLS as f64);
    let quickest = shells.iter().map(|shell| shell.lets_through / shell.water).fold(0.0, f64::max);
    let step_s = 0.3 * width_m * width_m / (quickest * acid_m2_s);
    for step in 0.. {
        shells.iter_mut().for_each(Shell::settle);
        if shells[0].ph <= 4.6 {
            return f64::from(step) * step_s / 3600.0;
        }
        let in_bath = local_equilibrium(bath[0], bath[1], None, CONDITIONAL_PK.value, bath_ph);
        bath_ph = in_bath.ph;
        let (bath_whole, bath_split) = (bath[0] * (1.0 - in_bath.split), bath[0] * in_bath.split);
        // Amounts that cross the outer edge of each shell inwards, mol/s.
        let across: Vec<[f64; 2]> = (0..SHELLS)
            .map(|index| {
                let inner = &shells[index];
                let area_m2 = 4.0 * std::f64::consts::PI * (width_m * (index + 1) as f64).powi(2);
                let (whole, split, hydrogen, conductance) = if let Some(outer) = shells.get(index + 1) {
                    let conductance = 0.5 * (inner.lets_through + outer.lets_through) * acid_m2_s / width_m;
                    (outer.whole, outer.split, outer.hydrogen, conductance)
                } else {
                    let inside_m_s = inner.lets_through * acid_m2_s / (0.5 * width_m);
                    let conductance = 1.0 / (1.0 / FILM_TRANSFER.value + 1.0 / inside_m_s);
                    (bath_whole, bath_split, in_bath.hydrogen_mol_m3, conductance)
                };
                let times = conductance * area_m2;
                let (acid, acetate) = (times * (whole - inner.whole), times * ACETATE_MOBILITY.value * (split - inner.split));
                [acid + acetate, acid + times * (hydrogen - inner.hydrogen)]
            })
            .collect();
        for index in 0..SHELLS {
            let inward = index.checked_sub(1).map_or([0.0; 2], |inner| across[inner]);
            let shell = &mut shells[index];
            let water_m3 = shell.volume_m3 * shell.water;
            shell.acetate += step_s * (across[index][0] - inward[0]) / water_m3;
            shell.protons += step_s * (across[index][1] - inward[1]) / water_m3;
        }
        bath = [0, 1].map(|amount| bath[amount] - step_s * across[SHELLS - 1][amount] / bath_m3);
        assert!(f64::from(step) * step_s < 3600.0 * 2000.0, "the egg never sours");
    }
    unreachable!("the loop has no end of its own")
}

/// Model over observed hours of four trials (`tests/reference/eggs.csv`, IAFP 2012, abstracts; the last read as at 2 °C): ours 1.03, 1.00, 2.46 and 1.16,
/// by all the local water 1.95, 2.07, 4.43 and 2.40, by that of the fat-free part 0.99, 1.02, 2.29 and 1.19 (another grid and solver gave these figures;
/// 4 % for that). In ln they miss by 0.46, 0.99 and 0.42. The second is contradicted; the third differs from ours by less than another capacity of the egg
/// would make (0.08 instead of 0.10 mol/kg gives 0.90, 0.81, 2.20 and 0.94), so that the eggs cannot tell, and the simpler is kept.
#[test]
fn acid_by_the_local_water_meets_the_eggs_no_better_than_ours() {
    let trials = [(5.0, 7.0, 120.0), (2.5, 7.0, 216.0), (7.5, 25.0, 23.5), (2.5, 2.0, 220.3)];
    let missed = |law: Law, apart: [f64; 4]| {
        let ratios = trials.map(|(acid_percent, temperature_c, observed_h)| hours(law, acid_percent, temperature_c) / observed_h);
        for (ratio, apart) in ratios.iter().zip(apart) {
            assert!((ratio / apart - 1.0_f64).abs() < 0.04, "{ratios:.2?} and not {apart:.2?}");
        }
        (ratios.iter().map(|ratio| ratio.ln().powi(2)).sum::<f64>() / 4.0).sqrt()
    };
    let ours = missed(Law::Ours, [1.03, 1.00, 2.46, 1.16]);
    let local = missed(Law::Local, [1.95, 2.07, 4.43, 2.40]);
    let fat_free = missed(Law::FatFree, [0.99, 1.02, 2.29, 1.19]);
    assert!(ours < 0.55 * local, "{ours:.2} and {local:.2}");
    assert!((ours - fat_free).abs() < 0.06, "{ours:.2} and {fat_free:.2}");
}
