//! How the cheeses of one place dry, as curves over the hours.

/// One point of a drying curve, for one cheese.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct DryingPoint {
    /// Hours from the start of drying.
    pub at_h: f64,
    /// Mass of the cheese.
    pub cheese_g: f64,
    /// Loss of mass since the start.
    pub loss_percent: f64,
    /// Mean moisture.
    pub moisture_percent: f64,
    /// Moisture at the centre.
    pub centre_moisture_percent: f64,
    /// Moisture of the middle of the top face.
    pub surface_moisture_percent: f64,
    /// Water activity that the mean composition would have.
    pub water_activity: f64,
    /// Water activity at the centre.
    pub centre_water_activity: f64,
    /// Temperature of the cheese.
    pub temperature_c: f64,
    /// Diameter, shrunk.
    pub diameter_mm: f64,
    /// Thickness, shrunk.
    pub thickness_mm: f64,
    /// Moisture on a fat-free basis.
    pub fat_free_moisture_percent: f64,
}

/// How the cheeses of one place dry.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TrayRun {
    /// Which cheeses: "middle tray", "first tray", "first tray, swapped" ...
    pub name: &'static str,
    /// Their curve.
    pub points: Vec<DryingPoint>,
}

impl TrayRun {
    /// Returns the moisture at the end.
    #[must_use]
    pub fn end_moisture_percent(&self) -> f64 {
        self.points.last().map_or(0.0, |point| point.moisture_percent)
    }
}
