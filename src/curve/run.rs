//! The picture of the run: a run as thick as the matter that flows, with what joins it and what leaves it.

use crate::batch::Batch;
use crate::design::{KeptIn, Stage};
use crate::law::Matter;

/// The whole picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// The stations, in the trade's order.
    pub stations: Vec<Station>,
}

impl Run {
    /// Returns the greatest mass that goes on from any station with the vinegar round it, kg; the scale of the picture; 0 if none was calculated.
    #[must_use]
    pub fn heaviest_kg(&self) -> f64 {
        self.stations.iter().filter_map(|station| Some(station.goes_on_kg? + station.around_kg)).fold(0.0, f64::max)
    }
}

/// One station.
#[derive(Clone, Debug, PartialEq)]
pub struct Station {
    /// The stage.
    pub stage: Stage,
    /// What goes on from it, if it was calculated.
    pub goes_on_kg: Option<f64>,
    /// What that is made of, in the order in which it is drawn.
    pub layers: [Layer; 4],
    /// Vinegar that lies round the cheeses here, kg.
    pub around_kg: f64,
    /// Moisture of what goes on.
    pub moisture_percent: Option<f64>,
    /// What joins and leaves here.
    pub streams: Vec<SideStream>,
    /// Why it was not calculated.
    pub stopped_because: Option<String>,
}

/// One part of what goes on, as a layer of the run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layer {
    /// What it is.
    pub substance: Substance,
    /// How much.
    pub mass_kg: f64,
}

/// What the layers of the run are made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Substance {
    /// Water.
    Water,
    /// Fat.
    Fat,
    /// Protein, and what is dissolved or bound beside it: milk sugar, minerals, acids.
    Curd,
    /// Common salt.
    Salt,
}

/// Returns the layers of some matter; together they are all of it.
fn layers(matter: &Matter) -> [Layer; 4] {
    let curd_kg = matter.total_kg() - matter.water_kg - matter.fat_kg - matter.salt_kg;
    [
        Layer { substance: Substance::Water, mass_kg: matter.water_kg },
        Layer { substance: Substance::Fat, mass_kg: matter.fat_kg },
        Layer { substance: Substance::Curd, mass_kg: curd_kg },
        Layer { substance: Substance::Salt, mass_kg: matter.salt_kg },
    ]
}

/// Returns the vinegar that lies round the cheeses at a station: during the soak, and in the jar where it stays in it.
fn around_kg(batch: &Batch, stage: Stage) -> f64 {
    let stays = stage == Stage::Keeping && batch.design.keeping.kept_in == KeptIn::Vinegar;
    if !stays && stage != Stage::Pickling {
        return 0.0;
    }
    let soak = batch.balance.stages.iter().find(|(at, _)| *at == Stage::Pickling);
    soak.map_or(0.0, |(_, soak)| soak.left.iter().map(|stream| stream.matter.total_kg()).sum())
}

/// Whether a stream joins or leaves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// It joins.
    Joins,
    /// It leaves.
    Leaves,
}

/// What a stream beside the run is like.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Flowing {
    /// Nothing but water.
    Water,
    /// Mostly salt.
    Salt,
    /// Sour with acetic acid.
    Vinegar,
    /// Rich in fat.
    Cream,
    /// With the casein of milk.
    Milk,
    /// Anything else that is watery: whey.
    Whey,
}

impl Flowing {
    /// Returns what some matter is like. The shares only tell such streams apart: none of a vat lies near them.
    fn of(matter: &Matter) -> Self {
        let share = |kg: f64| kg / matter.total_kg();
        if share(matter.water_kg) >= 1.0 {
            Self::Water
        } else if share(matter.salt_kg) > 0.5 {
            Self::Salt
        } else if share(matter.acid_kg) > 0.001 {
            Self::Vinegar
        } else if share(matter.fat_kg) > 0.08 {
            Self::Cream
        } else if share(matter.casein_kg) > 0.01 {
            Self::Milk
        } else {
            Self::Whey
        }
    }
}

/// One stream beside the run.
#[derive(Clone, Debug, PartialEq)]
pub struct SideStream {
    /// In the trade's words.
    pub name: &'static str,
    /// What it is like, by what it is made of.
    pub like: Flowing,
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
                    .map(|stream| SideStream {
                        name: stream.name,
                        like: Flowing::of(&stream.matter),
                        mass_kg: stream.matter.total_kg(),
                        side,
                    })
                    .collect()
            };
            let mut all = side(Side::Joins, &balance.added);
            all.extend(side(Side::Leaves, &balance.left));
            all
        });
        Station {
            stage,
            goes_on_kg: balance.map(|balance| balance.goes_on.total_kg()),
            layers: layers(&balance.map(|balance| balance.goes_on).unwrap_or_default()),
            around_kg: around_kg(batch, stage),
            moisture_percent: balance.map(|balance| Matter::moisture_percent(&balance.goes_on)),
            streams,
            stopped_because: batch.ending(stage).why_not(),
        }
    });
    Run { stations: stations.collect() }
}
