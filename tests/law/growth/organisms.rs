//! Which germs no published minimum holds back.

use proptest::prelude::*;
use vatsketch::law::growth::{CORRELATIONS, growers};

fn names(temperature_c: f64, ph: f64, water_activity: f64) -> Vec<&'static str> {
    growers(temperature_c, ph, water_activity).into_iter().map(|germ| germ.name).collect()
}

const BOTULINUM: &str = "Clostridium botulinum, proteolytic";
const COLD_BOTULINUM: &str = "Clostridium botulinum, non-proteolytic";
const STAPHYLOCOCCUS: &str = "Staphylococcus aureus";
const LISTERIA: &str = "Listeria monocytogenes";
const SALMONELLA: &str = "Salmonella";
const COLI: &str = "Escherichia coli, pathogenic";
const CEREUS: &str = "Bacillus cereus";
const PERFRINGENS: &str = "Clostridium perfringens";

/// The states that the independent computation lists, with the germs that it names.
#[test]
fn the_listed_states_name_their_germs() {
    let all = vec![BOTULINUM, COLD_BOTULINUM, STAPHYLOCOCCUS, LISTERIA, SALMONELLA, COLI, CEREUS, PERFRINGENS];
    assert_eq!(names(40.0, 6.5, 0.981), all);
    assert_eq!(names(40.0, 6.5, 0.945), [BOTULINUM, STAPHYLOCOCCUS, LISTERIA, SALMONELLA, CEREUS, PERFRINGENS]);
    assert_eq!(names(40.0, 6.5, 0.965), all);
    assert_eq!(names(21.0, 6.5, 0.975), all);
    assert_eq!(names(21.0, 4.2, 0.975), [STAPHYLOCOCCUS, SALMONELLA]);
    assert_eq!(names(21.0, 4.0, 0.975), [STAPHYLOCOCCUS, SALMONELLA]);
    assert_eq!(names(21.0, 4.9, 0.975), [BOTULINUM, STAPHYLOCOCCUS, LISTERIA, SALMONELLA, COLI, CEREUS]);
}

/// Growth factors of the Bad Bug Book and of the pathogen modelling program, as read: temperature, pH, water activity.
#[test]
fn the_minima_are_the_published_ones_and_hold_at_their_edge() {
    let table = [
        (BOTULINUM, [10.0, 4.7, 0.93]),
        (COLD_BOTULINUM, [3.3, 5.0, 0.965]),
        (STAPHYLOCOCCUS, [7.0, 4.0, 0.83]),
        (LISTERIA, [-0.4, 4.39, 0.92]),
        (SALMONELLA, [5.2, 3.8, 0.94]),
        (COLI, [7.0, 4.4, 0.95]),
        (CEREUS, [4.0, 4.9, 0.93]),
        (PERFRINGENS, [10.0, 5.5, 0.93]),
    ];
    assert_eq!(CORRELATIONS.len(), table.len());
    for (name, [temperature_c, ph, activity]) in table {
        assert!(names(temperature_c, ph, activity).contains(&name), "{name} at its minima");
        assert!(!names(temperature_c - 0.01, 7.0, 0.99).contains(&name), "{name} too cold");
        assert!(!names(20.0, ph - 0.01, 0.99).contains(&name), "{name} too sour");
        assert!(!names(20.0, 7.0, activity - 0.001).contains(&name), "{name} too dry");
    }
}

#[test]
fn a_figure_that_is_no_number_holds_no_germ_back() {
    assert_eq!(names(f64::NAN, f64::NAN, f64::NAN).len(), 8);
    assert_eq!(names(3.0, f64::NAN, 0.97), [LISTERIA]);
}

/// Cold keeping at 4 °C leaves the germ that neither salt nor cold stops, and two spore formers at their very edge.
#[test]
fn the_fridge_does_not_stop_them_all() {
    assert_eq!(names(4.0, 6.5, 0.97), [COLD_BOTULINUM, LISTERIA, CEREUS]);
    assert!(names(-2.0, 6.5, 0.97).is_empty());
}

proptest! {
    #[test]
    fn colder_sourer_or_drier_food_feeds_no_more_germs(
        temperature_c in -2.0..40.0_f64, ph in 3.0..7.0_f64, activity in 0.8..1.0_f64,
        colder in 0.0..20.0_f64, sourer in 0.0..3.0_f64, drier in 0.0..0.2_f64,
    ) {
        let before = names(temperature_c, ph, activity);
        let after = names(temperature_c - colder, ph - sourer, activity - drier);
        prop_assert!(after.iter().all(|name| before.contains(name)));
    }
}
