//! Tests of `src/law/bath`.

mod cases;
mod course;
mod mode;
mod other;
mod wall;

use vatsketch::law::bath::Bath;

/// A pot of 9.4 L in eleven litres of water, both with a lid, in a kitchen of 20 °C: the numbers of the reference runs.
const fn lidded_pot() -> Bath {
    Bath {
        bath_j_k: 46419.72222562651,
        milk_j_k: 38140.838928365665,
        between_w_k: 48.548856245744965,
        bath_loss_w_k: 2.443511643963398,
        milk_loss_w_k: 0.4043701315155168,
        room_c: 20.0,
    }
}

/// Reads a reference table.
fn reference(name: &str) -> serde_json::Value {
    serde_json::from_str(&std::fs::read_to_string(format!("tests/reference/{name}.json")).unwrap()).unwrap()
}
