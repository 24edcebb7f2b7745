//! The picture of the run.

use vatsketch::batch::batch;
use vatsketch::curve::{Flowing, Side, run};
use vatsketch::design::{Design, Stage};

/// What goes on from a station is what came, plus what joins, less what leaves: the picture must not show matter from nowhere.
#[test]
fn the_streams_of_each_station_add_up() {
    let batch = batch(&Design::default()).unwrap();
    let stations = run(&batch).stations;
    assert_eq!(stations.iter().map(|station| station.stage).collect::<Vec<_>>(), Stage::ALL);
    let mut came_kg = batch.balance.stages[0].1.came.total_kg();
    for station in stations {
        let sum = |side| station.streams.iter().filter(|stream| stream.side == side).map(|stream| stream.mass_kg).sum::<f64>();
        let goes_on_kg = station.goes_on_kg.unwrap();
        assert!((came_kg + sum(Side::Joins) - sum(Side::Leaves) - goes_on_kg).abs() < 1e-9, "{:?}", station.stage);
        assert!(station.streams.iter().all(|stream| stream.mass_kg > 0.0));
        assert!((0.0..100.0).contains(&station.moisture_percent.unwrap()));
        came_kg = goes_on_kg;
    }
}

/// The layers are all of what goes on, and the vinegar round the cheeses is what does not go into them.
#[test]
fn the_layers_of_each_station_are_all_of_it() {
    let batch = batch(&Design::default()).unwrap();
    for station in run(&batch).stations {
        let layers: f64 = station.layers.iter().map(|layer| layer.mass_kg).sum();
        assert!((layers - station.goes_on_kg.unwrap()).abs() < 1e-12, "{:?}", station.stage);
        assert!(station.layers.iter().all(|layer| layer.mass_kg >= 0.0));
        assert_eq!(station.around_kg > 0.0, station.stage >= Stage::Pickling, "{:?}", station.stage);
        if station.stage == Stage::Pickling {
            let joins: f64 = station.streams.iter().filter(|stream| stream.side == Side::Joins).map(|stream| stream.mass_kg).sum();
            assert!(station.around_kg < joins, "some of the vinegar goes into the cheeses");
        }
    }
}

#[test]
fn whey_and_vapour_leave_and_salt_joins() {
    let stations = run(&batch(&Design::default()).unwrap()).stations;
    let has = |stage: usize, name: &str, side| {
        stations[stage].streams.iter().any(|stream| stream.name.contains(name) && stream.side == side)
    };
    let like = |stage: usize, name: &str| stations[stage].streams.iter().find(|stream| stream.name == name).unwrap().like;
    assert_eq!(
        [like(0, "cream"), like(1, "whey"), like(2, "drip"), like(3, "salt"), like(4, "vapour"), like(5, "vinegar")],
        [Flowing::Cream, Flowing::Whey, Flowing::Whey, Flowing::Salt, Flowing::Water, Flowing::Vinegar]
    );
    assert!(
        has(1, "whey", Side::Leaves)
            && has(2, "drip", Side::Leaves)
            && has(3, "salt", Side::Joins)
            && has(4, "vapour", Side::Leaves)
    );
}
