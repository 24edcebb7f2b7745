//! Tests of `src/curve/handle.rs`.

use vatsketch::batch::{Batch, batch};
use vatsketch::curve::{Along, CurveKey, Handle, Role, curve, section};
use vatsketch::design::{Value, field};
use vatsketch::units::Units;

const EXAMPLES: [&str; 4] = ["first-vat", "warm-cabinet", "open-air", "unsoured-vat"];

fn batches() -> Vec<(&'static str, Batch)> {
    EXAMPLES.map(|name| (name, batch(&crate::example(name)).unwrap())).into()
}

fn handle_of(batch: &Batch, key: CurveKey, choice: &str) -> Option<Handle> {
    curve(batch, key).handles.into_iter().find(|handle| handle.key == choice)
}

#[test]
fn every_handle_is_at_what_is_chosen_and_in_its_frame() {
    let mut seen = 0;
    for (name, batch) in batches() {
        for key in CurveKey::ALL {
            let drawn = curve(&batch, key);
            for handle in &drawn.handles {
                let Value::Number(chosen) = field(handle.key).unwrap().get(&batch.design) else { panic!("{}", handle.key) };
                let [x, y] = handle.at;
                let on_axis = if handle.along == Along::Time { x } else { y };
                assert!((on_axis - chosen).abs() < 1e-9 && (handle.chosen - chosen).abs() < 1e-9, "{name}: {handle:?}");
                assert!((drawn.x.least..=drawn.x.most).contains(&x), "{name}: {handle:?} beside {:?}", drawn.x);
                seen += 1;
            }
        }
    }
    assert!(seen >= 4 * EXAMPLES.len(), "{seen} handles");
}

#[test]
fn a_handle_that_is_moved_is_where_it_was_moved_to() {
    for (name, before) in batches() {
        for (key, choice) in
            [(CurveKey::Moisture, "drying_h"), (CurveKey::DryingLoss, "drying_h"), (CurveKey::Warming, "rennet_temperature_c")]
        {
            let handle = handle_of(&before, key, choice).unwrap_or_else(|| panic!("{name}: {choice}"));
            let mut design = before.design.clone();
            design.set(choice, Value::Number(handle.moved(-1.5))).unwrap();
            let after = handle_of(&batch(&design).unwrap(), key, choice).unwrap();
            let axis = usize::from(handle.along == Along::Height);
            assert!((after.at[axis] - handle.at[axis] + 1.5).abs() < 1e-9, "{name}: {handle:?}, then {after:?}");
        }
    }
}

#[test]
fn in_degrees_fahrenheit_a_handle_moves_the_same_choice_five_ninths_as_far() {
    let batch = batch(&crate::example("warm-cabinet")).unwrap();
    let shown = curve(&batch, CurveKey::Warming).shown_in(Units::US);
    let handle = shown.handles.iter().find(|handle| handle.key == "rennet_temperature_c").unwrap();
    let chosen_c = batch.design.vat.rennet_temperature_c;
    // The definition of the degree Fahrenheit: t/°F = 1.8 t/°C + 32.
    assert!((handle.at[1] - (1.8 * chosen_c + 32.0)).abs() < 1e-9);
    assert!((handle.moved(9.0) - (chosen_c + 5.0)).abs() < 1e-9);
}

#[test]
fn what_is_not_used_has_no_handle() {
    let mut never = crate::example("warm-cabinet");
    assert!(handle_of(&batch(&never).unwrap(), CurveKey::Souring, "pickling_h").is_some());
    never.pickling.pickled = false;
    assert!(handle_of(&batch(&never).unwrap(), CurveKey::Souring, "pickling_h").is_none());
    let mut on_hob = crate::example("warm-cabinet");
    on_hob.set("heating", Value::Choice("hob")).unwrap();
    assert!(handle_of(&batch(&on_hob).unwrap(), CurveKey::Warming, "bath_set_temperature_c").is_none());
}

#[test]
fn the_hours_of_a_cut_end_where_its_curve_ends() {
    let mut seen = 0;
    for (name, batch) in batches() {
        for key in [CurveKey::Moisture, CurveKey::Salt, CurveKey::Souring] {
            let drawn = curve(&batch, key);
            let Some(hours) = drawn.cut else { continue };
            let main = drawn.series.iter().find(|series| series.role == Role::Main);
            let [end, _] = *main.and_then(|main| main.points.last()).unwrap();
            // Both are the last moment of the same run, kept on its own grid of moments.
            assert!((hours.to - end).abs() < 1e-6, "{name} {key:?}: {hours:?}, {end}");
            let last = section(&batch, hours.key, 1.0, None).unwrap();
            assert!((hours.to - hours.from - last.last_h).abs() < 1e-9, "{name} {key:?}");
            seen += 1;
        }
    }
    assert!(seen >= 2 * EXAMPLES.len(), "{seen} cuts");
}

#[test]
fn the_cut_of_germs_begins_when_the_cheeses_leave_the_moulds() {
    let batch = batch(&crate::example("warm-cabinet")).unwrap();
    let germs = curve(&batch, CurveKey::Germs);
    let air = germs.events.iter().find(|event| event.name == "air").unwrap();
    assert!((germs.cut.unwrap().from - air.at).abs() < 1e-6, "{:?}, {air:?}", germs.cut);
}
