//! Where the window is on the desktop and how large, kept between two starts; no part of any design.

use super::kept::Keepable;
use serde::{Deserialize, Serialize};

/// Smallest and largest side of a window that is taken for one, points.
const SIDES: std::ops::RangeInclusive<f32> = 200.0..=20_000.0;

/// Where a window is and how large, in points of the desktop.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct WindowPlace {
    /// Width and height of what is inside its frame.
    pub size: Option<[f32; 2]>,
    /// Its left top corner, where the desktop tells it.
    pub corner: Option<[f32; 2]>,
    /// Whether it has all the room that there is.
    pub maximised: bool,
}

impl Keepable for WindowPlace {
    const FILE: &'static str = "window.ron";

    /// What nobody could see or reach is left out.
    fn checked(self) -> Self {
        let is_side = |side: &f32| SIDES.contains(side);
        let size = self.size.filter(|size| size.iter().all(is_side));
        let corner = self.corner.filter(|corner| corner.iter().all(|at| at.is_finite() && at.abs() <= *SIDES.end()));
        Self { size, corner, ..self }
    }
}
