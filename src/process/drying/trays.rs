//! Trays: how many cheeses they hold, and what is known of the air between the first and the last.

use crate::design::DryingDesign;

crate::constants! {
    /// Gap between cheeses on a tray.
    TRAY_GAP = { "Gap between cheeses on a tray", 10.0, "mm", (5.0, 20.0), Ourselves, "so that the air reaches every side", Judged }
    /// Air over the cheeses of a tray.
    TRAY_AIR = { "Free height over the cheeses of a tray", 15.0, "mm", (10.0, 30.0), Ourselves, "so that the air passes", Judged }
    /// How much cooler the last tray is.
    TRAY_COOLING = { "Last tray cooler than the first", 3.0, "K", (1.0, 6.0), Ourselves, "the air has warmed and dried the trays before it; until your own log says better", Judged }
    /// How much slower the air is at the last tray.
    TRAY_SLOWING = { "Air speed at the last tray relative to the first", 0.7, "1", (0.5, 0.9), Ourselves, "the air spreads and turns; until your own log says better", Judged }
}

/// Returns how many cheeses of this diameter a tray holds, in straight or in staggered rows, whichever is more.
///
/// A gap stands between neighbours but not at the edge; staggered rows are √3/2 of the pitch apart and every second one is shifted by half of it.
///
/// # Arguments
/// * `width_mm`, `depth_mm`: inner size of the tray
/// * `diameter_mm`: of the fresh cheese, > 0
///
/// # Example
/// ```
/// assert_eq!(vatsketch::process::tray_holds(300.0, 300.0, 60.0), 16);
/// ```
#[must_use]
pub fn tray_holds(width_mm: f64, depth_mm: f64, diameter_mm: f64) -> u32 {
    let pitch_mm = diameter_mm + TRAY_GAP.value;
    let goes_on = diameter_mm > 0.0 && diameter_mm <= width_mm.min(depth_mm);
    if !goes_on {
        return 0;
    }
    let along = |length_mm: f64, step_mm: f64| 1.0 + ((length_mm - diameter_mm) / step_mm + 1e-9).floor();
    let straight = along(width_mm, pitch_mm) * along(depth_mm, pitch_mm);
    let staggered = |across_mm: f64, rows_mm: f64| {
        let rows = along(rows_mm, pitch_mm * 3.0_f64.sqrt() / 2.0);
        let full = along(across_mm, pitch_mm);
        let shifted = if across_mm >= diameter_mm + 0.5 * pitch_mm { along(across_mm - 0.5 * pitch_mm, pitch_mm) } else { 0.0 };
        (rows / 2.0).ceil() * full + (rows / 2.0).floor() * shifted
    };
    straight.max(staggered(width_mm, depth_mm)).max(staggered(depth_mm, width_mm)) as u32
}

/// Returns where the cheeses of this diameter lie on a tray that is full: their centres, across and along from a corner, mm, row by row.
///
/// The rows are those of [`tray_holds`], which counts them.
///
/// # Example
/// ```
/// use vatsketch::process::{tray_holds, tray_places};
/// assert_eq!(tray_places(310.0, 290.0, 70.0).len() as u32, tray_holds(310.0, 290.0, 70.0));
/// ```
#[must_use]
pub fn tray_places(width_mm: f64, depth_mm: f64, diameter_mm: f64) -> Vec<(f64, f64)> {
    if !(diameter_mm > 0.0 && diameter_mm <= width_mm.min(depth_mm)) {
        return Vec::new();
    }
    let pitch_mm = diameter_mm + TRAY_GAP.value;
    let rows = |across_mm: f64, along_mm: f64, step_mm: f64, shift_mm: f64| -> Vec<(f64, f64)> {
        let row_count = whole_steps(along_mm - diameter_mm, step_mm);
        let of_row = |row: u32| {
            let from_mm = 0.5 * diameter_mm + if row % 2 == 1 { shift_mm } else { 0.0 };
            let room_mm = across_mm - from_mm - 0.5 * diameter_mm;
            let count = if room_mm < -1e-9 { 0 } else { whole_steps(room_mm, pitch_mm) };
            (0..count).map(move |place| (from_mm + f64::from(place) * pitch_mm, 0.5 * diameter_mm + f64::from(row) * step_mm))
        };
        (0..row_count).flat_map(of_row).collect()
    };
    let (closer_mm, half_mm) = (pitch_mm * 3.0_f64.sqrt() / 2.0, 0.5 * pitch_mm);
    let turned = |places: Vec<(f64, f64)>| places.into_iter().map(|(across, along)| (along, across)).collect::<Vec<_>>();
    let ways = [
        turned(rows(depth_mm, width_mm, closer_mm, half_mm)),
        rows(width_mm, depth_mm, closer_mm, half_mm),
        rows(width_mm, depth_mm, pitch_mm, 0.0),
    ];
    // Of ways that hold as many the last, straight rows, since they are laid most easily.
    ways.into_iter().max_by_key(Vec::len).unwrap_or_default()
}

/// Returns how many places there are at steps along a length, with one at its beginning.
fn whole_steps(length_mm: f64, step_mm: f64) -> u32 {
    1 + (length_mm / step_mm + 1e-9).floor() as u32
}

/// How the cheeses stand on the trays.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TrayFit {
    /// Cheeses that one tray holds.
    pub holds: u32,
    /// Trays that all of them need; 0 if a tray holds none.
    pub wanted: u32,
    /// Whether the chosen trays hold them, in width and in height.
    pub fits: bool,
}

/// Returns how so many cheeses stand on the trays of a design.
#[must_use]
pub fn fit(design: &DryingDesign, cheese_count: u32, diameter_mm: f64, thickness_mm: f64) -> TrayFit {
    let holds = tray_holds(design.tray_width_mm, design.tray_depth_mm, diameter_mm);
    let wanted = if holds > 0 { cheese_count.div_ceil(holds) } else { 0 };
    let high_enough = thickness_mm + TRAY_AIR.value <= design.tray_clearance_mm;
    TrayFit { holds, wanted, fits: holds > 0 && wanted <= design.tray_count && high_enough }
}
