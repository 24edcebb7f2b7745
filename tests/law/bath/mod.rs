//! Tests of `src/law/bath`.

mod cases;
mod course;
mod mode;
mod other;
mod wall;

use vatsketch::law::bath::Bath;

/// A pot of eight litres in nine litres of water, both with a lid, in a kitchen of 20 °C: the numbers of the reference runs.
const fn eight_litres() -> Bath {
    Bath {
        bath_j_k: 38022.2455473947,
        milk_j_k: 32478.197975632866,
        between_w_k: 43.60006049209252,
        bath_loss_w_k: 2.156007463978154,
        milk_loss_w_k: 0.363150927923604,
        room_c: 20.0,
    }
}

/// Reads a reference table.
fn reference(name: &str) -> serde_json::Value {
    serde_json::from_str(&std::fs::read_to_string(format!("tests/reference/{name}.json")).unwrap()).unwrap()
}
