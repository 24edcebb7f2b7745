//! A flat cylinder cut into rings by radius and height: volumes and conductances of the finite-volume method.

use super::{dot_in_lanes, graded, graded_both};

/// Whether the whole height is cut up, or only the upper half because the lower is its mirror image.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Half {
    /// The whole height; fine at both faces.
    #[default]
    Whole,
    /// The upper half; no flux through the mid-plane.
    Upper,
}

/// The grid: nodes stand on the axis, on the rim and on the faces; each owns the ring around it.
///
/// Volumes and conductances are products of a radial and an axial factor, so only the factors are kept.
#[derive(Clone, Debug, PartialEq)]
pub struct DiscGrid {
    /// Radii of the nodes, from the axis to the rim, m.
    pub radii_m: Vec<f64>,
    /// Heights of the nodes, m.
    pub heights_m: Vec<f64>,
    /// Ring area that each radius owns, m².
    pub ring_area_m2: Vec<f64>,
    /// Height that each node owns, m.
    pub layer_m: Vec<f64>,
    /// 2πr/Δr between neighbouring radii, per metre of height; one fewer than the radii.
    pub radial: Vec<f64>,
    /// 1/Δz between neighbouring heights, 1/m; one fewer than the heights.
    pub axial: Vec<f64>,
    /// Circumference of the rim, m.
    pub rim_m: f64,
    /// What is cut up.
    pub half: Half,
}

impl DiscGrid {
    /// Returns the grid of a disc.
    ///
    /// # Arguments
    /// * `radius_m`, `height_m`: size of the whole disc, > 0
    /// * `radial_intervals`, `axial_intervals`: how many intervals; the axial ones cover the half where `half` is [`Half::Upper`]
    /// * `ratio`: widest over narrowest interval, ≥ 1
    ///
    /// # Example
    /// ```
    /// use vatsketch::numeric::{DiscGrid, Half};
    /// let grid = DiscGrid::new(0.03, 0.018, 12, 12, 8.0, Half::Whole);
    /// let volume = std::f64::consts::PI * 0.03 * 0.03 * 0.018;
    /// assert!((grid.volume_m3() / volume - 1.0).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn new(radius_m: f64, height_m: f64, radial_intervals: usize, axial_intervals: usize, ratio: f64, half: Half) -> Self {
        use std::f64::consts::PI;
        let radii_m = graded(radial_intervals, radius_m, ratio);
        let heights_m = match half {
            Half::Whole => graded_both(axial_intervals, height_m, ratio),
            Half::Upper => graded(axial_intervals, 0.5 * height_m, ratio),
        };
        let radial_faces = faces(&radii_m);
        let axial_faces = faces(&heights_m);
        let between = |faces: &[f64], of: fn(f64, f64) -> f64| -> Vec<f64> {
            faces.windows(2).filter_map(|pair| Some(of(*pair.first()?, *pair.last()?))).collect()
        };
        let inner_faces = radial_faces.iter().skip(1);
        Self {
            ring_area_m2: between(&radial_faces, |inner, outer| PI * (outer * outer - inner * inner)),
            layer_m: between(&axial_faces, |lower, upper| upper - lower),
            radial: between(&radii_m, |inner, outer| outer - inner)
                .iter()
                .zip(inner_faces)
                .map(|(gap, face)| 2.0 * PI * face / gap)
                .collect(),
            axial: between(&heights_m, |lower, upper| 1.0 / (upper - lower)),
            rim_m: 2.0 * PI * radius_m,
            radii_m,
            heights_m,
            half,
        }
    }

    /// Returns the volume that is cut up, m³ (half of the disc for [`Half::Upper`]).
    #[must_use]
    pub fn volume_m3(&self) -> f64 {
        self.ring_area_m2.iter().sum::<f64>() * self.layer_m.iter().sum::<f64>()
    }

    /// Returns the mean of a quantity over the volume.
    ///
    /// # Arguments
    /// * `values`: that at radius i and height j is at i · heights + j
    ///
    /// # Example
    /// ```
    /// use vatsketch::numeric::{DiscGrid, Half};
    /// let grid = DiscGrid::new(0.03, 0.018, 12, 12, 8.0, Half::Whole);
    /// assert!((grid.mean(&vec![1.6; 13 * 13]) - 1.6).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn mean(&self, values: &[f64]) -> f64 {
        let rings = values.chunks_exact(self.layer_m.len()).zip(&self.ring_area_m2);
        let sum: f64 = rings.map(|(chunk, area)| area * dot_in_lanes(chunk, &self.layer_m)).sum();
        sum / self.volume_m3()
    }

    /// Returns the index along the height of the node at the disc's middle.
    #[must_use]
    pub fn middle_layer(&self) -> usize {
        match self.half {
            Half::Whole => self.heights_m.len() / 2,
            Half::Upper => 0,
        }
    }
}

/// Returns the faces around the nodes: both ends and the midpoints between.
fn faces(nodes: &[f64]) -> Vec<f64> {
    let ends = |node: Option<&f64>| node.copied().into_iter();
    let midpoints = nodes.windows(2).map(|pair| 0.5 * pair.iter().sum::<f64>());
    ends(nodes.first()).chain(midpoints).chain(ends(nodes.last())).collect()
}
