//! How a cheese takes up acid: its groups, their sum, and the pH that they lead to.

use super::acidity::split_share;
use crate::numeric::{Bracket, RootError, brent, quick_exp};
use crate::source::Correlation;
use std::f64::consts::LN_10;

crate::correlations! {
    /// Carboxyl groups of the protein.
    CARBOXYL = { "Carboxyl groups of the protein", "mol per kg of protein, pK, steepness", [1.05, 4.50, 1.0], "mol/kg", (3.0, 7.0), "pH", Ourselves, "from the composition of casein; the whole buffer may be 0.7 to 1.8 times this", Judged }
    /// Histidine.
    HISTIDINE = { "Histidine", "mol per kg of protein, pK, steepness", [0.19, 6.40, 1.0], "mol/kg", (3.0, 7.0), "pH", Ourselves, "from the composition of casein", Judged }
    /// Phosphoserine.
    PHOSPHOSERINE = { "Phosphate on serine", "mol per kg of protein, pK, steepness", [0.255, 6.00, 1.0], "mol/kg", (3.0, 7.0), "pH", Ourselves, "from the composition of casein, bound to calcium", Judged }
    /// Colloidal calcium phosphate.
    CALCIUM_PHOSPHATE = { "Colloidal calcium phosphate, which dissolves", "mol per kg of protein, pK, steepness", [0.56, 5.10, 2.0], "mol/kg", (3.0, 7.0), "pH", Lucey1993, "the peak near pH 5 on acidification is published, its height here is not", Judged }
    /// Groups that answer at low pH.
    LOW_GROUPS = { "Groups that answer only at low pH", "mol per kg of protein, pK, steepness", [0.10, 3.00, 1.0], "mol/kg", (3.0, 7.0), "pH", Ourselves, "from the composition of casein", Judged }
    /// Citrate, third step.
    CITRATE_THIRD = { "Citrate, third step", "mol per kg of water, pK, steepness", [0.010, 5.70, 1.0], "mol/kg", (3.0, 7.0), "pH", Ourselves, "from the composition of whey", Judged }
    /// Citrate, second step.
    CITRATE_SECOND = { "Citrate, second step", "mol per kg of water, pK, steepness", [0.010, 4.40, 1.0], "mol/kg", (3.0, 7.0), "pH", Ourselves, "from the composition of whey", Judged }
    /// Phosphate in solution.
    SOLUBLE_PHOSPHATE = { "Phosphate in solution", "mol per kg of water, pK, steepness", [0.011, 6.60, 1.0], "mol/kg", (3.0, 7.0), "pH", Ourselves, "from the composition of whey", Judged }
}

crate::constants! {
    /// How much stronger or weaker the buffer may be.
    BUFFER_SCALE = { "Buffer of a cheese over that of its groups", 1.0, "1", (0.7, 1.8), Ourselves, "titrations of milk and of its concentrates lie on both sides", Judged }
}

/// The groups that belong to the protein; those after them belong to the water.
const OF_PROTEIN: [Correlation<3>; 5] = [CARBOXYL, HISTIDINE, PHOSPHOSERINE, CALCIUM_PHOSPHATE, LOW_GROUPS];
const OF_WATER: [Correlation<3>; 3] = [CITRATE_THIRD, CITRATE_SECOND, SOLUBLE_PHOSPHATE];

/// Bounds between which a pH is looked for.
pub(super) const PH_BOUNDS: (f64, f64) = (0.5, 9.0);

/// One kind of group in a cheese.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Group {
    mol_per_kg: f64,
    pk_power: f64,
    /// Once or twice, as the two kinds of groups here have it.
    twice: bool,
}

/// The buffer of one cheese, from a starting pH.
#[derive(Clone, Debug, PartialEq)]
pub struct Buffer {
    groups: Vec<Group>,
    /// pH at which nothing is taken up yet.
    pub start_ph: f64,
    held_at_start: f64,
}

impl Buffer {
    /// Returns the buffer of a cheese.
    ///
    /// # Arguments
    /// * `protein`, `water`: shares by mass, 0 to 1
    /// * `start_ph`: pH of the cheese
    /// * `scale`: how much stronger than [`BUFFER_SCALE`] says; 0 is a cheese without any
    #[must_use]
    pub fn new(protein: f64, water: f64, start_ph: f64, scale: f64) -> Self {
        let of = |share: f64| {
            move |record: &Correlation<3>| {
                let [mol, pk, steepness] = record.coefficients;
                Group {
                    mol_per_kg: BUFFER_SCALE.value * scale * share * mol,
                    pk_power: quick_exp(-LN_10 * pk),
                    twice: steepness > 1.5,
                }
            }
        };
        let groups = OF_PROTEIN.iter().map(of(protein)).chain(OF_WATER.iter().map(of(water))).collect();
        let mut buffer = Self { groups, start_ph, held_at_start: 0.0 };
        buffer.held_at_start = buffer.held_and_slope(start_ph).0;
        buffer
    }

    /// Returns a buffer of the same shape that takes up `factor` times as much.
    #[must_use]
    pub fn scaled(&self, factor: f64) -> Self {
        let groups = self.groups.iter().map(|group| Group { mol_per_kg: factor * group.mol_per_kg, ..*group }).collect();
        Self { groups, start_ph: self.start_ph, held_at_start: factor * self.held_at_start }
    }

    /// Returns the buffer with so much of a weak acid in it, which holds its hydrogen ions as a group does and stays where it is.
    ///
    /// # Arguments
    /// * `mol_per_kg`: ≥ 0
    /// * `pk`: of the acid
    #[must_use]
    pub fn with_acid(mut self, mol_per_kg: f64, pk: f64) -> Self {
        if mol_per_kg > 0.0 {
            self.groups.push(Group { mol_per_kg, pk_power: 10.0_f64.powf(-pk), twice: false });
            self.held_at_start = self.held_and_slope(self.start_ph).0;
        }
        self
    }

    /// Returns the hydrogen ions held by the groups, mol/kg, and the fall of that with pH.
    fn held_and_slope(&self, ph: f64) -> (f64, f64) {
        let power = quick_exp(LN_10 * ph);
        self.groups.iter().fold((0.0, 0.0), |(held, slope), group| {
            let once = power * group.pk_power;
            let (ratio, steepness) = if group.twice { (once * once, 2.0) } else { (once, 1.0) };
            let share = 1.0 / (1.0 + ratio);
            let amount = group.mol_per_kg * share;
            (held + amount, slope + amount * steepness * LN_10 * (1.0 - share))
        })
    }

    /// Returns the hydrogen ions taken up from the starting pH to this one and the slope −dB/dpH, mol per kg of cheese (and pH).
    ///
    /// B(pH) = Σ N (θ(pH) − θ(pH₀)), θ = 1/(1 + 10^(n (pH − pK))).
    ///
    /// # Example
    /// ```
    /// let buffer = vatsketch::law::buffering::Buffer::new(0.26, 0.352, 6.5, 1.0);
    /// let (taken, slope) = buffer.taken_and_slope(5.0);
    /// assert!((taken - 0.22691).abs() < 1e-5 && (slope - 0.29382).abs() < 1e-5);
    /// ```
    #[must_use]
    pub fn taken_and_slope(&self, ph: f64) -> (f64, f64) {
        let (held, slope) = self.held_and_slope(ph);
        (held - self.held_at_start, slope)
    }
}

/// Returns the equilibrium pH of cheese and bath: n a(pH) = m B(pH) + V [H⁺].
///
/// # Arguments
/// * `acid_mol`: acetic acid in all, > 0
/// * `liquid_m3`: the bath and the water of the cheese, > 0
/// * `cheese_kg`: mass of the cheese, ≥ 0
///
/// # Errors
/// [`RootError`] where no pH between 0.5 and 9 fulfils it.
///
/// # Example
/// ```
/// use vatsketch::law::buffering::{Buffer, equilibrium_ph};
/// let ph = equilibrium_ph(0.05, 7.0e-5, 0.033, &Buffer::new(0.26, 0.352, 6.5, 1.0), 4.65)?;
/// assert!((4.1..4.3).contains(&ph));
/// # Ok::<(), vatsketch::numeric::RootError>(())
/// ```
pub fn equilibrium_ph(acid_mol: f64, liquid_m3: f64, cheese_kg: f64, buffer: &Buffer, pk: f64) -> Result<f64, RootError> {
    let left_over =
        |ph: f64| acid_mol * split_share(ph, pk) - cheese_kg * buffer.taken_and_slope(ph).0 - liquid_m3 * 10.0_f64.powf(3.0 - ph);
    brent(left_over, Bracket { from: PH_BOUNDS.0, to: PH_BOUNDS.1 }, 1e-12)
}

/// The equilibrium of acid and cheese at one place.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct LocalEquilibrium {
    /// The pH.
    pub ph: f64,
    /// Share of the acid that is split.
    pub split: f64,
    /// Hydrogen ions, mol/m³ of water.
    pub hydrogen_mol_m3: f64,
    /// Fall of what the cheese holds with pH, mol/m³ of water.
    pub buffer_slope: f64,
}

/// Returns the pH of one place from its two conserved amounts: C (1 − a) + [H⁺] + k B(pH) = P.
///
/// Newton's method, held between bounds that close in: where a step would leave them, they are halved.
///
/// # Arguments
/// * `acetate_mol_m3`, `protons_mol_m3`: C and P, mol/m³ of water
/// * `buffer`, `cheese_kg_per_m3_water`: B and k; none and 0 for the bath
/// * `guess_ph`: where to begin
#[must_use]
pub fn local_equilibrium(
    acetate_mol_m3: f64,
    protons_mol_m3: f64,
    buffer: Option<(&Buffer, f64)>,
    pk: f64,
    guess_ph: f64,
) -> LocalEquilibrium {
    let (mut low, mut high) = PH_BOUNDS;
    let pk_power = quick_exp(LN_10 * pk);
    let mut found =
        LocalEquilibrium { ph: if low < guess_ph && guess_ph < high { guess_ph } else { 5.0 }, ..LocalEquilibrium::default() };
    // Bisection alone would need 45; a few of Newton's steps do.
    for _ in 0..60 {
        let hydrogen = quick_exp(-LN_10 * found.ph);
        found.split = 1.0 / (1.0 + pk_power * hydrogen);
        found.hydrogen_mol_m3 = 1000.0 * hydrogen;
        let (taken, slope) = buffer.map_or((0.0, 0.0), |(buffer, per_water)| {
            let (taken, slope) = buffer.taken_and_slope(found.ph);
            (per_water * taken, per_water * slope)
        });
        found.buffer_slope = slope;
        let whole = 1.0 - found.split;
        let excess = acetate_mol_m3 * whole + found.hydrogen_mol_m3 + taken - protons_mol_m3;
        let fall = LN_10 * (acetate_mol_m3 * found.split * whole + found.hydrogen_mol_m3) + slope;
        if excess > 0.0 {
            low = found.ph;
        } else {
            high = found.ph;
        }
        let step = excess / fall;
        if step.abs() < 1e-11 {
            break;
        }
        let next = found.ph + step;
        found.ph = if low < next && next < high { next } else { 0.5 * (low + high) };
    }
    found
}
