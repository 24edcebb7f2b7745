//! The chains behind the figures, held to what the calculation really does: each choice is moved, and whatever moves with it must name it.

use std::collections::{BTreeMap, BTreeSet};
use vatsketch::analysis::{inputs_of, link, links, why};
use vatsketch::batch::{Batch, batch, batch_after};
use vatsketch::design::{Design, Field, Kind, Value, field, fields};
use vatsketch::figure::{Reading, figures};

/// Designs in which, between them, every choice has an effect.
fn designs() -> Vec<Design> {
    let mut all = vec![crate::example("warm-cabinet")];
    let with = |changes: &[(&str, Value)]| {
        let mut design = Design::default();
        for (key, value) in changes {
            design.set(key, *value).unwrap();
        }
        design
    };
    // Milk of an own carton in a bath, a solution, rennet by the ratio, and a pH that was measured.
    all.push(with(&[
        ("milk_kind", Value::Choice("label")),
        ("calcium_form", Value::Choice("solution")),
        ("rennet_label", Value::Choice("ratio")),
        ("ph_known", Value::Choice("measured")),
        ("heat_while_setting", Value::Switch(false)),
        ("pot_depth_percent", Value::Number(70.0)),
        ("tray_count", Value::Number(2.0)),
        ("tray_clearance_mm", Value::Number(90.0)),
        ("tray_width_mm", Value::Number(200.0)),
        ("kept_in", Value::Choice("oil")),
    ]));
    // Bottles whose drops were counted, with amounts that no spoon measures.
    all.push(with(&[
        ("calcium_form", Value::Choice("solution")),
        ("calcium_drops_counted", Value::Switch(true)),
        ("rennet_strength_imcu_ml", Value::Number(260.0)),
        ("rennet_drops_counted", Value::Switch(true)),
    ]));
    // Rich milk from which skimmed milk takes fat, in the open air, not soured and kept warm.
    all.push(with(&[
        ("milk_kind", Value::Choice("sheep")),
        ("fat_target_percent", Value::Number(4.0)),
        ("drying_place", Value::Choice("open_air")),
        ("keeping_temperature_c", Value::Number(12.0)),
        ("pickled", Value::Switch(false)),
    ]));
    // Cold and short all the way, so that no germ comes to its greatest density, and then a jar that is not so cold.
    all.push(with(&[
        ("draining_temperature_c", Value::Number(4.0)),
        ("cabinet_temperature_c", Value::Number(22.0)),
        ("room_air_temperature_c", Value::Number(18.0)),
        ("drying_h", Value::Number(8.0)),
        ("pickled", Value::Switch(false)),
        ("keeping_temperature_c", Value::Number(6.0)),
        ("keeping_days", Value::Number(5.0)),
    ]));
    // Vinegar as the jar asks, a weak one.
    all.push(with(&[
        ("vinegar_by", Value::Choice("cover")),
        ("acid_g_per_100ml", Value::Number(4.5)),
        ("cream_by", Value::Choice("cream_amount")),
    ]));
    all.extend(pasteurised().iter().map(|changes| with(changes)));
    all.extend(soured().iter().map(|changes| with(changes)));
    all
}

/// Raw milk that is pasteurised in the vat, over every kind of heat and with what goes into it afterwards.
fn pasteurised() -> Vec<Vec<(&'static str, Value)>> {
    let raw = || vec![("milk_treatment", Value::Choice("raw")), ("pasteurised_in_vat", Value::Switch(true))];
    let with = |more: &[(&'static str, Value)]| raw().into_iter().chain(more.iter().copied()).collect();
    vec![
        raw(),
        with(&[("heating", Value::Choice("hob")), ("soured_by", Value::Choice("culture"))]),
        with(&[
            ("soured_by", Value::Choice("acid")),
            ("cooling_water_l", Value::Number(200.0)),
            ("cooling_water_temperature_c", Value::Number(2.0)),
        ]),
        with(&[("milk_kind", Value::Choice("sheep")), ("pasteurising_temperature_c", Value::Number(68.0))]),
    ]
}

/// Everything that sours, each in the ways that it is measured; and pHs that a meter said.
fn soured() -> Vec<Vec<(&'static str, Value)>> {
    let by = |what| ("soured_by", Value::Choice(what));
    vec![
        vec![by("culture")],
        vec![by("culture"), ("culture_by", Value::Choice("bulk")), ("culture_kind", Value::Choice("mixed"))],
        vec![
            by("culture"),
            ("culture_by", Value::Choice("cells")),
            ("ladled_ph_from", Value::Choice("measured")),
            ("unmoulded_ph_from", Value::Choice("measured")),
            ("cheese_ph_from", Value::Choice("measured")),
        ],
        vec![by("acid")],
        vec![by("acid"), ("acid_by", Value::Choice("amount")), ("milk_acid", Value::Choice("vinegar"))],
        vec![by("acid"), ("milk_acid", Value::Choice("lactic"))],
        vec![by("lactone")],
    ]
}

/// Returns the values that a choice may be moved to.
fn moves(field: &Field, design: &Design) -> Vec<Value> {
    match (field.kind, field.get(design)) {
        (Kind::Number { least, most, step, whole }, Value::Number(now)) => {
            let far = if whole { 3.0 * step } else { 0.15 * (most - least) };
            [now - if whole { step } else { far }, now + far]
                .into_iter()
                .filter(|to| (least..=most).contains(to))
                .map(Value::Number)
                .collect()
        }
        (Kind::Choice(choices), now) => choices.iter().map(|choice| Value::Choice(choice.key)).filter(|to| *to != now).collect(),
        (Kind::Switch, Value::Switch(on)) => vec![Value::Switch(!on)],
        _ => Vec::new(),
    }
}

fn said(batch: &Batch) -> BTreeMap<&'static str, Reading> {
    figures(batch).into_iter().map(|figure| (figure.key, figure.reading)).collect()
}

/// Returns whether two readings differ by more than the rounding of sums.
fn differ(one: &Reading, other: &Reading) -> bool {
    match (one, other) {
        (Reading::Number(one), Reading::Number(other)) => (one - other).abs() > 1e-9 * one.abs().max(other.abs()).max(1e-6),
        _ => one != other,
    }
}

#[test]
fn whatever_a_choice_moves_names_it_in_its_chain_and_what_a_chain_names_moves_it() {
    let (mut unnamed, mut moved) = (BTreeSet::new(), BTreeSet::new());
    for design in designs() {
        let base = batch(&design).unwrap();
        let before = said(&base);
        for field in fields() {
            for to in moves(field, &design) {
                let mut changed = design.clone();
                if changed.set(field.key, to).is_err() {
                    continue;
                }
                let after = said(&batch_after(&changed, Some(&base)).unwrap().0);
                let keys: BTreeSet<_> = before.keys().chain(after.keys()).collect();
                for key in keys {
                    let (old, new) = (before.get(key), after.get(key));
                    // A figure that comes or goes moves as well; it goes with any stage that fails, which is no part of its law.
                    if old.zip(new).is_none_or(|(old, new)| differ(old, new)) {
                        moved.insert((*key, field.key));
                        if old.is_some() && new.is_some() && !inputs_of(key).contains(field.key) {
                            unnamed.insert((*key, field.key));
                        }
                    }
                }
            }
        }
    }
    assert!(unnamed.is_empty(), "these move, and their chain does not say so: {unnamed:#?}");
    let idle: Vec<_> = links()
        .flat_map(|link| link.inputs.iter().map(move |input| (link, *input)))
        .filter(|(link, input)| !link.figures.iter().any(|figure| moved.contains(&(*figure, *input))))
        .map(|(link, input)| (link.figures[0], input))
        .collect();
    assert!(idle.is_empty(), "these are named, and move nothing: {idle:#?}");
}

#[test]
fn every_figure_has_one_link_and_every_link_names_what_there_is() {
    let mut known = BTreeSet::new();
    for design in designs() {
        known.extend(figures(&batch(&design).unwrap()).into_iter().map(|figure| figure.key));
    }
    for key in &known {
        assert_eq!(links().filter(|link| link.figures.contains(key)).count(), 1, "{key}");
    }
    for link in links() {
        assert!(link.figures.iter().chain(link.rests_on).all(|key| known.contains(key)), "{link:?}");
        assert!(link.inputs.iter().all(|key| field(key).is_ok()), "{:?}", link.inputs);
        assert!(!link.locator.is_empty());
    }
}

#[test]
fn no_chain_runs_in_a_circle() {
    fn walk(key: &'static str, path: &mut Vec<&'static str>) {
        assert!(!path.contains(&key), "{path:?} comes back to {key}");
        path.push(key);
        for next in link(key).into_iter().flat_map(|link| link.rests_on) {
            walk(next, path);
        }
        path.pop();
    }
    for figure in links().flat_map(|link| link.figures) {
        walk(figure, &mut Vec::new());
    }
}

#[test]
fn a_why_says_values_law_source_and_constants() {
    let made = batch(&Design::default()).unwrap();
    let why = why(&made, "clotting_min").unwrap();
    assert!(why.further_inputs.iter().any(|(field, value)| field.key == "calcium_dose_percent"
        && matches!(value, Value::Number(number) if (number - 0.014).abs() < 1e-12)));
    assert!(why.rests_on.iter().any(|figure| figure.key == "milk_ph"));
    assert!(why.source.unwrap().title.contains("Guelph") && !why.locator.is_empty());
    assert!(why.constants.iter().any(|record| record.name.starts_with("Clotting time")) && !why.correlations.is_empty());
    assert!(vatsketch::analysis::why(&made, "cloting_min").unwrap_err().to_string().contains("did you mean `clotting_min`"));
}
