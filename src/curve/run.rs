//! The picture of the run: a run as thick as the matter that flows, with what joins it and what leaves it.

use crate::batch::Batch;
use crate::design::Stage;
use crate::law::Matter;

/// The whole picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// The stations, in the trade's order.
    pub stations: Vec<Station>,
}

impl Run {
    /// Returns the greatest mass that goes on from any station, kg; the scale of the picture; 0 if none was calculated.
    #[must_use]
    pub fn heaviest_kg(&self) -> f64 {
        self.stations.iter().filter_map(|station| station.goes_on_kg).fold(0.0, f64::max)
    }
}

/// One station.
#[derive(Clone, Debug, PartialEq)]
pub struct Station {
    /// The stage.
    pub stage: Stage,
    /// What goes on from it, if it was calculated.
    pub goes_on_kg: Option<f64>,
    /// Moisture of that.
    pub moisture_percent: Option<f64>,
    /// What joins and leaves here.
    pub streams: Vec<SideStream>,
    /// Why it was not calculated.
    pub stopped_because: Option<String>,
}

/// Whether a stream joins or leaves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// It joins.
    Joins,
    /// It leaves.
    Leaves,
}

/// One stream beside the run.
#[derive(Clone, Debug, PartialEq)]
pub struct SideStream {
    /// In the trade's words.
    pub name: &'static str,
    /// How much.
    pub mass_kg: f64,
    /// Which way.
    pub side: Side,
}

/// Returns the picture of the run.
///
/// # Example
/// ```
/// use vatsketch::{batch::batch, design::Design, curve::run};
/// let run = run(&batch(&Design::default())?);
/// assert_eq!(run.stations.len(), 7);
/// # Ok::<(), vatsketch::design::DesignError>(())
/// ```
#[must_use]
pub fn run(batch: &Batch) -> Run {
    let stations = Stage::ALL.into_iter().map(|stage| {
        let balance = batch.balance.stages.iter().find(|(at, _)| *at == stage).map(|(_, balance)| balance);
        let streams = balance.map_or_else(Vec::new, |balance| {
            let side = |side, list: &[crate::process::Stream]| -> Vec<SideStream> {
                list.iter()
                    .filter(|stream| stream.matter.total_kg() > 0.0)
                    .map(|stream| SideStream { name: stream.name, mass_kg: stream.matter.total_kg(), side })
                    .collect()
            };
            let mut all = side(Side::Joins, &balance.added);
            all.extend(side(Side::Leaves, &balance.left));
            all
        });
        Station {
            stage,
            goes_on_kg: balance.map(|balance| balance.goes_on.total_kg()),
            moisture_percent: balance.map(|balance| Matter::moisture_percent(&balance.goes_on)),
            streams,
            stopped_because: batch.ending(stage).why_not(),
        }
    });
    Run { stations: stations.collect() }
}
