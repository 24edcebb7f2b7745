//! The list of figures.

use std::collections::BTreeSet;
use std::fmt::Write;
use vatsketch::batch::batch;
use vatsketch::design::{Design, Stage};
use vatsketch::figure::{Reading, Weight, figures};
use vatsketch::session::EXAMPLES;
use vatsketch::units::Units;

#[test]
fn no_two_figures_of_a_batch_have_the_same_key() {
    for example in EXAMPLES {
        let all = figures(&batch(&example.design().unwrap()).unwrap());
        let keys: BTreeSet<&str> = all.iter().map(|figure| figure.key).collect();
        assert_eq!(keys.len(), all.len(), "{}", example.name);
        assert!(all.iter().map(|figure| figure.stage).is_sorted());
        for stage in Stage::ALL {
            let lead = all.iter().filter(|figure| figure.stage == stage && figure.weight == Weight::Lead).count();
            assert!((1..=8).contains(&lead), "{}: {lead} lead figures of {}", example.name, stage.key());
        }
        assert!(all.iter().all(|figure| !figure.law.is_empty() && !figure.label.is_empty()));
    }
}

/// Returns designs that are soured in every way that figures tell apart.
fn soured() -> impl Iterator<Item = Design> {
    use vatsketch::design::{CultureBy, MilkAcid, SouredBy};
    let by = |soured_by: SouredBy| {
        let mut design = Design::default();
        design.milk.soured_by = soured_by;
        design
    };
    let acid = [MilkAcid::Citric, MilkAcid::Vinegar, MilkAcid::Lactic].map(|milk_acid| {
        let mut design = by(SouredBy::Acid);
        design.milk.milk_acid = milk_acid;
        design
    });
    let mut bulk = by(SouredBy::Culture);
    bulk.milk.culture_by = CultureBy::Bulk;
    [by(SouredBy::Culture), bulk, by(SouredBy::Lactone)].into_iter().chain(acid)
}

/// The hours stand in the figure's name, and come from a record (J. Food Prot. 69:2161: pH 5.8 at 6 h for one raw-milk cheese).
#[test]
fn the_check_of_a_culture_is_that_of_its_hour() {
    let design = soured().next().unwrap();
    let made = batch(&design).unwrap();
    let check = vatsketch::batch::culture_check(&made).unwrap();
    let all = figures(&made);
    let figure = all.iter().find(|figure| figure.key == "culture_check_ph").unwrap();
    assert_eq!(figure.label, "pH when the culture is checked");
    assert!((check.after_h - 6.0).abs() < 1e-12);
    assert!((check.in_time_ph - 5.8).abs() < 1e-12 && figure.reading == Reading::Number(check.ph));
}

/// Scripts read these keys: a change here is a change of the command line.
#[test]
fn the_keys_and_units_are_those_that_scripts_know() {
    let mut all = BTreeSet::new();
    let mut list = String::new();
    let mut lean = Design::default();
    lean.milk.fat_target_percent = 2.0;
    let mut heated = Design::default();
    (heated.milk.milk_treatment, heated.milk.pasteurised_in_vat) = (vatsketch::design::MilkTreatment::Raw, true);
    let designs = [Design::default(), lean, crate::example("own-carton")];
    for design in designs.into_iter().chain(soured()).chain([heated]) {
        for figure in figures(&batch(&design).unwrap()) {
            if all.insert(figure.key) {
                let kind = match figure.reading {
                    Reading::Number(_) if figure.unit.symbol().is_empty() => "number",
                    Reading::Number(_) => figure.unit.symbol(),
                    Reading::Words(_) => "words",
                    Reading::Switch(_) => "yes or no",
                };
                writeln!(list, "{} {} [{kind}]", figure.stage.key(), figure.key).unwrap();
            }
        }
    }
    insta::assert_snapshot!("keys", list);
}

#[test]
fn a_figure_is_shown_with_its_unit_and_its_likely_range() {
    let all = figures(&batch(&Design::default()).unwrap());
    let cheese = all.iter().find(|figure| figure.key == "drained_cheese_g").unwrap();
    assert!(cheese.text().ends_with(" g") && cheese.likely_text(Units::METRIC).unwrap().contains('–'), "{}", cheese.text());
    let count = all.iter().find(|figure| figure.key == "cheese_count").unwrap();
    assert_eq!((count.text().as_str(), count.likely_text(Units::METRIC)), ("12", None));
}

/// The densities are from memory, so only their use is held here, not their truth.
#[test]
fn calcium_and_rennet_are_said_in_grams_millilitres_and_spoons() {
    let all = figures(&batch(&Design::default()).unwrap());
    let of = |key: &str| all.iter().find(|figure| figure.key == key).unwrap_or_else(|| panic!("{key} is missing"));
    let number = |key: &str| match of(key).reading {
        vatsketch::figure::Reading::Number(number) => number,
        _ => panic!("{key} is no number"),
    };
    // What is said in spoons is within a tenth of what is meant.
    assert!(of("rennet_ml").kitchen.as_deref().is_some_and(|kitchen| kitchen.contains("tsp")), "{:?}", of("rennet_ml"));
    assert!(number("calcium_g") > 0.0);
    assert!((number("rennet_g") / number("rennet_ml") - 1.08).abs() < 1e-12);
    assert!(number("calcium_as_solution_ml") > 0.0);
}

/// 1 mL/g of weak vinegar comes to rest above 4.2 by the balance of acid and buffers; the maker reads "never", and why.
#[test]
fn hours_that_never_come_are_said_in_words_with_the_reason() {
    let mut design = Design::default();
    design.pickling.acid_g_per_100ml = 4.0;
    design.pickling.vinegar_ml_per_g = 1.0;
    let all = figures(&batch(&design).unwrap());
    let of = |key: &str| all.iter().find(|figure| figure.key == key).unwrap();
    let Reading::Words(said) = &of("centre_to_4_2_h").reading else { panic!("{:?}", of("centre_to_4_2_h")) };
    assert!(said.contains("never") && said.contains(&of("equilibrium_ph").text()), "{said}");
    assert!(of("centre_to_4_2_h").likely.is_none());
    // Enough of it: hours, with a range about them.
    let all = figures(&batch(&Design::default()).unwrap());
    let sour = all.iter().find(|figure| figure.key == "centre_to_4_2_h").unwrap();
    let Reading::Number(hours) = sour.reading else { panic!("{sour:?}") };
    let (least, most) = sour.likely.unwrap();
    assert!(least < hours && hours < most);
}

/// C. Cipolat-Gotet et al., Int. Dairy J. 63:8, 2016, the abstract: fresh cheese 20.6 %, its dry matter 10.1 % of the milk of 169 sheep.
#[test]
fn the_measured_yield_that_the_explanation_names_is_that_of_its_records() {
    use vatsketch::law::measured_yields::{SHEEP_YIELD, SHEEP_YIELD_SOLIDS};
    assert_eq!((SHEEP_YIELD.value, SHEEP_YIELD_SOLIDS.value), (20.6, 10.1));
    let all = figures(&batch(&Design::default()).unwrap());
    let law = all.iter().find(|figure| figure.key == "yield_percent").unwrap().law;
    for record in [SHEEP_YIELD, SHEEP_YIELD_SOLIDS] {
        assert!(law.contains(&format!("{:.1} kg", record.value)), "{} in {law}", record.name);
    }
    // As wet as the curd of the default design when its drip stops.
    let moist_kg = SHEEP_YIELD_SOLIDS.value / (1.0 - 0.01 * Design::default().draining.drip_end_moisture_percent);
    assert!(law.contains(&format!("about {moist_kg:.0} kg")), "{moist_kg} in {law}");
}

/// What is said of a batch that was not soured: that, and no pH that nobody has.
#[test]
fn a_batch_without_vinegar_has_no_figures_of_it() {
    let mut design = Design::default();
    design.pickling.pickled = false;
    let all = figures(&batch(&design).unwrap());
    let of_the_vinegar: Vec<&str> = all.iter().filter(|figure| figure.stage == Stage::Pickling).map(|figure| figure.key).collect();
    assert_eq!(of_the_vinegar, ["soured"]);
    assert!(all.iter().all(|figure| figure.key != "pickling_zone_h" && figure.key != "cold_centre_to_4_2_h"));
    assert!(all.iter().any(|figure| figure.key == "zone_h" && figure.weight == Weight::Lead));
}
