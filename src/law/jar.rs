//! How many discs of cheese go into a jar, and the liquid that covers them.

use std::f64::consts::FRAC_PI_4;

crate::correlations! {
    /// The densest known layers of equal discs in a round jar.
    LAYER_RATIOS = { "Discs in a layer of a round jar", "least inner width of the jar over the width of a disc, for 1, 2, 3 … 20 discs", [
        1.0, 2.0, 2.1547, 2.4142, 2.7013, 3.0, 3.0, 3.3048, 3.6131, 3.8130, 3.9238, 4.0296, 4.2361, 4.3284, 4.5214, 4.6154, 4.7920, 4.8637, 4.8637, 5.1223
    ], "1", (1.0, 20.0), "discs", Textbook, "densest known packings of equal circles in a circle, to four decimals", FromMemory }
}

/// What rounding may take from a whole number before it is rounded down.
const ROUNDING: f64 = 1e-9;

/// The inside of a round jar.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Jar {
    /// Inner width.
    pub width_mm: f64,
    /// Height to which it is filled.
    pub height_mm: f64,
}

/// A disc of cheese.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Disc {
    /// Its diameter.
    pub diameter_mm: f64,
    /// Its thickness.
    pub thickness_mm: f64,
}

/// How discs lie in a jar.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Lay {
    /// In columns, on their flat faces.
    #[default]
    Flat,
    /// Standing in one or two rows, face to face.
    OnEdge,
}

/// Why a disc does not go into a jar.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum JarError {
    /// A size is nothing or no number.
    #[error("{what} must be greater than 0 mm, but it is {given_mm} mm")]
    NoSize {
        /// Which size.
        what: &'static str,
        /// What it is.
        given_mm: f64,
    },
    /// One disc is too large for the jar.
    #[error(
        "a cheese of {diameter_mm:.1} × {thickness_mm:.1} mm does not go into a jar of {width_mm:.0} mm inner width filled {height_mm:.0} mm high; lying that way it needs {least_width_mm:.0} mm of width and {least_height_mm:.0} mm of height"
    )]
    TooLarge {
        /// Diameter of the disc.
        diameter_mm: f64,
        /// Thickness of the disc.
        thickness_mm: f64,
        /// Inner width of the jar.
        width_mm: f64,
        /// Height of the jar.
        height_mm: f64,
        /// Least inner width that takes one disc lying so, rounded up.
        least_width_mm: f64,
        /// Least height that takes one disc lying so, rounded up.
        least_height_mm: f64,
    },
}

impl Jar {
    /// Returns what the jar holds to its height, mL.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::jar::Jar;
    /// assert!((Jar { width_mm: 80.0, height_mm: 100.0 }.volume_ml() - 502.65).abs() < 0.01);
    /// ```
    #[must_use]
    pub fn volume_ml(&self) -> f64 {
        self.floor_ml_mm() * self.height_mm
    }

    /// Returns the millilitres in a millimetre of height.
    fn floor_ml_mm(&self) -> f64 {
        0.001 * FRAC_PI_4 * self.width_mm * self.width_mm
    }
}

impl Disc {
    /// Returns the volume of a disc, mL.
    #[must_use]
    pub fn volume_ml(&self) -> f64 {
        0.001 * FRAC_PI_4 * self.diameter_mm * self.diameter_mm * self.thickness_mm
    }
}

/// How many discs go into one jar, and what is left for the liquid.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Packing {
    /// The jar.
    pub jar: Jar,
    /// The discs.
    pub disc: Disc,
    /// Discs in a layer.
    pub in_layer: u32,
    /// Layers above each other.
    pub layers: u32,
    /// Height of a layer.
    pub layer_mm: f64,
    /// Discs in the jar.
    pub count: u32,
    /// Share of the jar that the discs take.
    pub filled_share: f64,
    /// Liquid that fills the jar to its height.
    pub liquid_ml: f64,
    /// The same for each disc.
    pub liquid_each_ml: f64,
}

/// Returns how many discs of one size go into a jar.
///
/// Flat: columns of n discs by the densest known packings of n circles in a circle ([`LAYER_RATIOS`]; beyond 20 discs rings of a
/// honeycomb, 1 + 3k(k+1) discs at a ratio of 2k + 1), ⌊H/t⌋ layers. On edge: one row of ⌊√(D² − d²)/t⌋ discs, or two of
/// ⌊√(D² − 4d²)/t⌋ each, whichever holds more, ⌊H/d⌋ layers. Liquid = π/4 D² H − n V.
///
/// # Arguments
/// * `jar`: inner width D and height H, mm, > 0
/// * `disc`: diameter d and thickness t, mm, > 0
/// * `lay`: flat or on edge
///
/// # Errors
/// [`JarError`] if a size is not greater than 0, or not a single disc goes in.
///
/// # Source
/// Known packings from memory; the rows on edge are plain geometry.
///
/// # Example
/// ```
/// use vatsketch::law::jar::{packing, Disc, Jar, Lay};
/// let (jar, disc) = (Jar { width_mm: 92.0, height_mm: 120.0 }, Disc { diameter_mm: 45.0, thickness_mm: 14.0 });
/// let flat = packing(&jar, &disc, Lay::Flat)?;
/// assert_eq!((flat.in_layer, flat.layers, flat.count), (2, 8, 16));
/// assert_eq!(packing(&jar, &disc, Lay::OnEdge)?.count, 10);
/// assert!(packing(&Jar { width_mm: 40.0, ..jar }, &disc, Lay::Flat).is_err());
/// # Ok::<(), vatsketch::law::jar::JarError>(())
/// ```
pub fn packing(jar: &Jar, disc: &Disc, lay: Lay) -> Result<Packing, JarError> {
    let sizes = [
        ("the inner width of the jar", jar.width_mm),
        ("the height of the jar", jar.height_mm),
        ("the diameter of the cheese", disc.diameter_mm),
        ("the thickness of the cheese", disc.thickness_mm),
    ];
    for (what, given_mm) in sizes {
        let sized = given_mm > 0.0 && given_mm.is_finite();
        if !sized {
            return Err(JarError::NoSize { what, given_mm });
        }
    }
    let Disc { diameter_mm, thickness_mm } = *disc;
    let (in_layer, layer_mm) = match lay {
        Lay::Flat => (in_layer(jar.width_mm / diameter_mm), thickness_mm),
        Lay::OnEdge => (on_edge(jar.width_mm, disc), diameter_mm),
    };
    let layers = whole(jar.height_mm / layer_mm);
    let count = in_layer * layers;
    if count == 0 {
        let least_width_mm = match lay {
            Lay::Flat => diameter_mm,
            Lay::OnEdge => diameter_mm.hypot(thickness_mm),
        };
        return Err(JarError::TooLarge {
            diameter_mm,
            thickness_mm,
            width_mm: jar.width_mm,
            height_mm: jar.height_mm,
            least_width_mm: least_width_mm.ceil(),
            least_height_mm: layer_mm.ceil(),
        });
    }
    let discs_ml = f64::from(count) * disc.volume_ml();
    let liquid_ml = jar.volume_ml() - discs_ml;
    Ok(Packing {
        jar: *jar,
        disc: *disc,
        in_layer,
        layers,
        layer_mm,
        count,
        filled_share: discs_ml / jar.volume_ml(),
        liquid_ml,
        liquid_each_ml: liquid_ml / f64::from(count),
    })
}

impl Packing {
    /// Returns the liquid that just covers some discs in one jar, mL: as high as their last layer, less the discs.
    ///
    /// Discs are denser than vinegar and lie on the floor; the last layer is covered even where it is not full.
    /// More discs than go in are counted as those that do.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::jar::{packing, Disc, Jar, Lay};
    /// let (jar, disc) = (Jar { width_mm: 92.0, height_mm: 120.0 }, Disc { diameter_mm: 45.0, thickness_mm: 14.0 });
    /// let flat = packing(&jar, &disc, Lay::Flat)?;
    /// // The third disc begins a second layer.
    /// assert!(flat.submerging_ml(3) > flat.submerging_ml(2) + 50.0);
    /// # Ok::<(), vatsketch::law::jar::JarError>(())
    /// ```
    #[must_use]
    pub fn submerging_ml(&self, count: u32) -> f64 {
        let count = count.min(self.count);
        let layers = count.div_ceil(self.in_layer.max(1));
        f64::from(layers) * self.layer_mm * self.jar.floor_ml_mm() - f64::from(count) * self.disc.volume_ml()
    }

    /// Returns the discs that go into one jar together with so much liquid for each: no more than geometry allows, none if not even one.
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::jar::{packing, Disc, Jar, Lay};
    /// let (jar, disc) = (Jar { width_mm: 92.0, height_mm: 120.0 }, Disc { diameter_mm: 45.0, thickness_mm: 14.0 });
    /// let flat = packing(&jar, &disc, Lay::Flat)?;
    /// // 797.7 mL of jar, 22.27 mL of disc: ⌊797.7/92.27⌋ = 8.
    /// assert_eq!(flat.count_with(70.0), 8);
    /// assert_eq!(flat.count_with(1.0), 16);
    /// # Ok::<(), vatsketch::law::jar::JarError>(())
    /// ```
    #[must_use]
    pub fn count_with(&self, liquid_each_ml: f64) -> u32 {
        let by_volume = self.jar.volume_ml() / (self.disc.volume_ml() + liquid_each_ml.max(0.0));
        self.count.min(whole(by_volume))
    }

    /// Returns the liquid that just covers a batch of discs, mL in all jars: spread over as few jars as hold them, as evenly as they go.
    ///
    /// # Arguments
    /// * `count`: discs in all
    /// * `per_jar`: most discs in a jar, at least 1 and no more than [`Packing::count`]
    ///
    /// # Example
    /// ```
    /// use vatsketch::law::jar::{packing, Disc, Jar, Lay};
    /// let (jar, disc) = (Jar { width_mm: 92.0, height_mm: 120.0 }, Disc { diameter_mm: 45.0, thickness_mm: 14.0 });
    /// let flat = packing(&jar, &disc, Lay::Flat)?;
    /// let (six, seven) = (flat.submerging_ml(6), flat.submerging_ml(7));
    /// assert!((flat.covering_ml(20, 8) - (six + 2.0 * seven)).abs() < 1e-9);
    /// # Ok::<(), vatsketch::law::jar::JarError>(())
    /// ```
    #[must_use]
    pub fn covering_ml(&self, count: u32, per_jar: u32) -> f64 {
        let jars = self.jars(count, per_jar);
        let (fewer, fuller) = (count.checked_div(jars).unwrap_or(0), count.checked_rem(jars).unwrap_or(0));
        f64::from(fuller) * self.submerging_ml(fewer + 1) + f64::from(jars - fuller) * self.submerging_ml(fewer)
    }

    /// Returns the jars that a batch of discs needs.
    ///
    /// # Arguments
    /// * `count`: discs in all
    /// * `per_jar`: most discs in a jar, at least 1 and no more than [`Packing::count`]
    #[must_use]
    pub fn jars(&self, count: u32, per_jar: u32) -> u32 {
        count.div_ceil(per_jar.clamp(1, self.count.max(1)))
    }
}

/// Returns the discs in a layer of a jar so many times as wide as a disc.
fn in_layer(ratio: f64) -> u32 {
    let known = LAYER_RATIOS.coefficients.iter().filter(|least| **least <= ratio * (1.0 + ROUNDING)).count() as u32;
    if ratio < 1.0 {
        return known;
    }
    let rings = whole(0.5 * (ratio - 1.0));
    known.max(1 + 3 * rings * (rings + 1))
}

/// Returns the discs in a layer on edge: the better of one row and two.
fn on_edge(width_mm: f64, disc: &Disc) -> u32 {
    let rows = |rows: u32| {
        let breadth_mm = f64::from(rows) * disc.diameter_mm;
        let length_mm = (width_mm * width_mm - breadth_mm * breadth_mm).max(0.0).sqrt();
        rows * whole(length_mm / disc.thickness_mm)
    };
    rows(1).max(rows(2))
}

/// Returns a number rounded down, but not for want of a rounding error.
fn whole(number: f64) -> u32 {
    (number * (1.0 + ROUNDING)).floor() as u32
}
