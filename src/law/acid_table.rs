//! Acid and buffer of one cheese over pH, tabulated once, so that the pH of a place costs a few products instead of sums of powers.
#![allow(
    clippy::indexing_slicing,
    clippy::needless_range_loop,
    reason = "a kernel: every index is a lane, and a loop over lanes goes several at a time only where it runs over all of them alike"
)]

use super::acidity::split_share;
use super::buffering::{Buffer, PH_BOUNDS};
use crate::numeric::{LANES, quick_exp};
use std::f64::consts::LN_10;

/// Rows for each unit of pH. The cubics between them err by less than a millionth of a pH.
const ROWS_PER_PH: f64 = 32.0;
/// A step in pH after which no other is asked for: what is left goes with its third power and is below a hundred-thousandth.
const LAST_STEP: f64 = 0.01;

/// What one cheese does with acid, over pH.
#[derive(Clone, Debug, PartialEq)]
pub struct AcidTable {
    rows: Vec<Row>,
}

/// The functions from one pH to the next, as cubics of the way in pH.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Row {
    /// Share of the acid that is whole.
    whole: [f64; 4],
    /// Hydrogen ions, free and held by the cheese, mol/m³ of water.
    held: [f64; 4],
    /// Free hydrogen ions at the beginning, mol/m³ of water.
    hydrogen: f64,
}

impl Row {
    const NOTHING: Self = Self { whole: [0.0; 4], held: [0.0; 4], hydrogen: 0.0 };
}

/// What acid and cheese come to at one place.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct AcidPlace {
    /// The pH.
    pub ph: f64,
    /// Share of the acid that is whole, not split.
    pub whole: f64,
    /// Slope of that share with pH, negative.
    pub whole_slope: f64,
    /// Free hydrogen ions, mol/m³ of water.
    pub hydrogen_mol_m3: f64,
    /// Slope with pH of all hydrogen at this place, whole acid and held, at a fixed amount of acetate; mol/m³, negative.
    pub all_slope: f64,
}

/// The same at as many places as there are lanes.
#[derive(Clone, Copy, Debug, Default)]
pub struct AcidPlaces {
    /// The pH of each.
    pub ph: [f64; LANES],
    /// Share of the acid that is whole.
    pub whole: [f64; LANES],
    /// Slope of that share with pH.
    pub whole_slope: [f64; LANES],
    /// Free hydrogen ions, mol/m³ of water.
    pub hydrogen_mol_m3: [f64; LANES],
    /// Slope with pH of all hydrogen.
    pub all_slope: [f64; LANES],
}

impl AcidPlaces {
    /// Returns one of them.
    #[must_use]
    #[inline]
    pub const fn place(&self, lane: usize) -> AcidPlace {
        AcidPlace {
            ph: self.ph[lane],
            whole: self.whole[lane],
            whole_slope: self.whole_slope[lane],
            hydrogen_mol_m3: self.hydrogen_mol_m3[lane],
            all_slope: self.all_slope[lane],
        }
    }

    const fn set(&mut self, lane: usize, place: AcidPlace) {
        self.ph[lane] = place.ph;
        self.whole[lane] = place.whole;
        self.whole_slope[lane] = place.whole_slope;
        self.hydrogen_mol_m3[lane] = place.hydrogen_mol_m3;
        self.all_slope[lane] = place.all_slope;
    }
}

impl AcidTable {
    /// Returns the table of a cheese.
    ///
    /// # Arguments
    /// * `buffer`, `cheese_kg_per_m3_water`: what takes up hydrogen ions, and how much of it stands around each m³ of water
    /// * `pk`: of the acid
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::{acid_table::AcidTable, buffering::{local_equilibrium, Buffer}};
    /// let buffer = Buffer::new(0.26, 0.352, 6.5, 1.0);
    /// let table = AcidTable::new(&buffer, 2834.0, 4.65);
    /// let exact = local_equilibrium(480.0, 700.0, Some((&buffer, 2834.0)), 4.65, 5.0).ph;
    /// assert!((table.place(480.0, 700.0, exact).ph - exact).abs() < 1e-6);
    /// ```
    #[must_use]
    pub fn new(buffer: &Buffer, cheese_kg_per_m3_water: f64, pk: f64) -> Self {
        let count = ((PH_BOUNDS.1 - PH_BOUNDS.0) * ROWS_PER_PH).round() as usize;
        let ends = |at: usize| {
            let ph = PH_BOUNDS.0 + at as f64 / ROWS_PER_PH;
            let (taken, fall) = buffer.taken_and_slope(ph);
            let (split, hydrogen) = (split_share(ph, pk), quick_exp(LN_10 * (3.0 - ph)));
            let whole = (1.0 - split, -LN_10 * split * (1.0 - split));
            let held = (hydrogen + cheese_kg_per_m3_water * taken, -LN_10 * hydrogen - cheese_kg_per_m3_water * fall);
            (whole, held, hydrogen)
        };
        let mut from = ends(0);
        let rows = (1..=count).map(|at| {
            let to = ends(at);
            let row = Row { whole: hermite(from.0, to.0), held: hermite(from.1, to.1), hydrogen: from.2 };
            from = to;
            row
        });
        Self { rows: rows.collect() }
    }

    /// Returns the row in which a pH lies and how far; beyond the table its end.
    #[inline]
    fn row(&self, ph: f64) -> (&Row, f64) {
        let place = ((ph - PH_BOUNDS.0) * ROWS_PER_PH).max(0.0);
        let left = (place as usize).min(self.rows.len().saturating_sub(1));
        let row = self.rows.get(left).unwrap_or(&Row::NOTHING);
        (row, (place - left as f64).min(1.0) / ROWS_PER_PH)
    }

    /// Returns the pH of one place from its two conserved amounts, C (1 − a) + [H⁺] + k B(pH) = P, as [`local_equilibrium`] does: by Newton's
    /// method with the curvature (Chebyshev's), held between bounds that close in.
    ///
    /// [`local_equilibrium`]: super::buffering::local_equilibrium
    ///
    /// # Arguments
    /// * `acetate_mol_m3`, `protons_mol_m3`: C and P, mol/m³ of water
    /// * `guess_ph`: where to begin; from the place's last pH one or two rounds do
    #[must_use]
    #[inline]
    pub fn place(&self, acetate_mol_m3: f64, protons_mol_m3: f64, guess_ph: f64) -> AcidPlace {
        let (mut low, mut high) = PH_BOUNDS;
        let mut ph = if low < guess_ph && guess_ph < high { guess_ph } else { 5.0 };
        // Bisection alone would need 45; one or two of Newton's steps do.
        for _ in 0..60 {
            let (row, way) = self.row(ph);
            let (end, step) = settled(row, way, ph, acetate_mol_m3, protons_mol_m3);
            if step.abs() < LAST_STEP {
                return end;
            }
            // The slope falls, so the step goes to where too much is too little.
            if step > 0.0 {
                low = ph;
            } else {
                high = ph;
            }
            let next = ph + step;
            let inside = low < next && next < high;
            ph = if inside { next } else { 0.5 * (low + high) };
        }
        self.end(acetate_mol_m3, ph)
    }

    /// Returns the same as [`AcidTable::place`] at several places, whose steps are taken side by side; where two are not enough, one by one.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::{acid_table::AcidTable, buffering::Buffer};
    /// let table = AcidTable::new(&Buffer::new(0.26, 0.352, 6.5, 1.0), 2834.0, 4.65);
    /// let places = table.places(&[480.0; 4], &[500.0, 600.0, 700.0, 800.0], &[4.9; 4]);
    /// assert_eq!(places.place(2), table.place(480.0, 700.0, 4.9));
    /// ```
    #[must_use]
    #[inline(always)]
    #[expect(clippy::inline_always, reason = "a loop goes several at a time only where no call is left in it")]
    pub fn places(&self, acetate_mol_m3: &[f64; LANES], protons_mol_m3: &[f64; LANES], guess_ph: &[f64; LANES]) -> AcidPlaces {
        let (mut found, mut done) = (AcidPlaces::default(), [false; LANES]);
        let mut ph = *guess_ph;
        for _ in 0..2 {
            let mut rows = [Row::NOTHING; LANES];
            let mut way = [0.0; LANES];
            for l in 0..LANES {
                let (row, along) = self.row(ph[l]);
                (rows[l], way[l]) = (*row, along);
            }
            let mut next = ph;
            for l in 0..LANES {
                let (end, step) = settled(&rows[l], way[l], ph[l], acetate_mol_m3[l], protons_mol_m3[l]);
                let last = step.abs() < LAST_STEP;
                // What is done stays as it is, for it would come out the same again.
                next[l] = if last { ph[l] } else { ph[l] + step };
                done[l] = last && PH_BOUNDS.0 < ph[l] && ph[l] < PH_BOUNDS.1;
                found.set(l, end);
            }
            if done == [true; LANES] {
                return found;
            }
            ph = next;
        }
        for l in 0..LANES {
            if !done[l] {
                found.set(l, self.place(acetate_mol_m3[l], protons_mol_m3[l], guess_ph[l]));
            }
        }
        found
    }

    /// Returns the place at an end of the table, where the amounts ask for more than it holds.
    #[cold]
    fn end(&self, acetate_mol_m3: f64, ph: f64) -> AcidPlace {
        let (row, way) = self.row(ph);
        let (whole, held) = (cubic(&row.whole, way), cubic(&row.held, way));
        AcidPlace {
            ph,
            whole: whole.0,
            whole_slope: whole.1,
            hydrogen_mol_m3: row.hydrogen * (-LN_10 * way).exp(),
            all_slope: acetate_mol_m3 * whole.1 + held.1,
        }
    }
}

/// Returns the place to which the next step leads, if it is the last one, and that step.
#[inline(always)]
#[expect(clippy::inline_always, reason = "a loop goes several at a time only where no call is left in it")]
fn settled(row: &Row, way: f64, ph: f64, acetate_mol_m3: f64, protons_mol_m3: f64) -> (AcidPlace, f64) {
    let (whole, held) = (cubic(&row.whole, way), cubic(&row.held, way));
    let excess = acetate_mol_m3 * whole.0 + held.0 - protons_mol_m3;
    let (slope, curvature) = (acetate_mol_m3 * whole.1 + held.1, acetate_mol_m3 * whole.2 + held.2);
    let per_slope = 1.0 / slope;
    let straight = -excess * per_slope;
    // Where the parabola says more than half, it says nothing.
    let bend = 0.5 * straight * curvature * per_slope;
    let step = if bend.abs() < 0.5 { straight * (1.0 - bend) } else { straight };
    // What is left of the way is so short that parabolas follow it.
    let fall = -LN_10 * (way + step);
    let place = AcidPlace {
        ph: ph + step,
        whole: whole.0 + step * (whole.1 + 0.5 * step * whole.2),
        whole_slope: whole.1 + step * whole.2,
        hydrogen_mol_m3: row.hydrogen * (1.0 + fall * (1.0 + fall * (0.5 + fall * (1.0 / 6.0 + fall / 24.0)))),
        all_slope: slope + step * curvature,
    };
    (place, step)
}

/// Returns the cubic through two ends with their slopes, in pH.
fn hermite(from: (f64, f64), to: (f64, f64)) -> [f64; 4] {
    let rise = (to.0 - from.0) * ROWS_PER_PH;
    [from.0, from.1, (3.0 * rise - 2.0 * from.1 - to.1) * ROWS_PER_PH, (from.1 + to.1 - 2.0 * rise) * ROWS_PER_PH * ROWS_PER_PH]
}

/// Returns the value, the slope and the curvature of a cubic.
#[inline]
fn cubic(&[a, b, c, d]: &[f64; 4], x: f64) -> (f64, f64, f64) {
    (a + x * (b + x * (c + x * d)), b + x * (2.0 * c + x * 3.0 * d), 2.0 * c + 6.0 * d * x)
}
