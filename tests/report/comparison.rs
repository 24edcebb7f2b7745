//! Two designs side by side as data.

use vatsketch::analysis::from_milk;
use vatsketch::batch::batch;
use vatsketch::design::{Design, Good, MilkKind, Supply, Value};
use vatsketch::report::{Comparison, comparison, cost_note};
use vatsketch::session::EXAMPLES;
use vatsketch::units::Units;

fn both(a: &Design, b: &Design) -> Comparison {
    comparison(&batch(a).unwrap(), &batch(b).unwrap(), Units::METRIC)
}

#[test]
fn a_design_beside_itself_differs_in_nothing() {
    for example in EXAMPLES {
        let design = example.design().unwrap();
        let same = both(&design, &design);
        assert!(same.choices.is_empty() && same.milk.is_empty() && same.cautions.iter().all(Vec::is_empty), "{}", example.name);
        let rows = same.stages.iter().flat_map(|(_, rows)| rows).chain(&same.costs);
        assert!(rows.into_iter().all(|row| row.change == "same" && !row.differs && row.a == row.b), "{}", example.name);
    }
}

#[test]
fn swapping_swaps_every_column_and_turns_every_sign() {
    let cow = crate::example("warm-cabinet");
    let sheep = from_milk(&cow, MilkKind::Sheep);
    let (one, other) = (both(&cow, &sheep), both(&sheep, &cow));
    let find = |of: &Comparison, label: &str| {
        of.stages.iter().flat_map(|(_, rows)| rows).chain(&of.costs).find(|row| row.label == label).cloned().unwrap()
    };
    for label in ["Drained curd", "Casein in the milk in the vat"] {
        let (forth, back) = (find(&one, label), find(&other, label));
        assert_eq!((&forth.a, &forth.b), (&back.b, &back.a), "{label}");
        let turned: String = forth
            .change
            .chars()
            .map(|c| match c {
                '+' => '−',
                '−' => '+',
                c => c,
            })
            .collect();
        assert_eq!(turned, back.change, "{label}");
    }
    assert_eq!(one.cautions[0], other.cautions[1]);
    assert!(one.milk.iter().any(|line| line.contains("cream alone") || line.contains("Cream alone")));
}

/// Six litres at 1.72 for 1250 mL and 1.15 for 750 mL, invented prices.
#[test]
fn costs_are_told_only_where_both_are_wholly_known() {
    let a = crate::example("warm-cabinet");
    let mut b = a.clone();
    b.set("milk_l", Value::Number(9.0)).unwrap();
    let dearer = both(&a, &b);
    assert!(
        dearer.costs.iter().any(|row| row.label == "What is bought" && row.change.starts_with('+') && row.a.ends_with("coins"))
    );
    b.supplies.goods.remove(&Good::Pepper);
    assert!(both(&a, &b).costs.is_empty(), "pepper of unknown price");
    b.supplies.goods.insert(Good::Pepper, Supply { at_home: 500.0, ..Supply::default() });
    assert!(!both(&a, &b).costs.is_empty());
    b.supplies.currency = "shells".to_owned();
    assert!(both(&a, &b).costs.is_empty(), "two currencies");
}

/// Where the supplies of a design are entered.
const WHERE: &str = " Enter what a package costs on the page Plan, part Shopping; for B swap A and B first.";

#[test]
fn what_is_to_be_known_of_the_costs_is_said() {
    let note = |a: &Design, b: &Design| cost_note(&batch(a).unwrap(), &batch(b).unwrap());
    let cow = crate::example("warm-cabinet");
    let mut sheep = from_milk(&cow, MilkKind::Sheep);
    assert_eq!(note(&Design::default(), &from_milk(&Design::default(), MilkKind::Sheep)), None, "nothing costs anything");
    // Skimmed milk goes into the fat milk, and nothing says where it comes from.
    // Each animal's milk has a price of its own: that of cow's is never taken for it.
    assert_eq!(
        note(&cow, &sheep).unwrap(),
        format!("No costs side by side: B has no supply entered for sheep's milk, skimmed milk.{WHERE}")
    );
    assert!(both(&cow, &sheep).costs.is_empty());
    sheep.milk.fat_target_percent = 7.0;
    assert_eq!(note(&cow, &sheep).unwrap(), format!("No costs side by side: B has no supply entered for sheep's milk.{WHERE}"));
    let mut bare = cow.clone();
    bare.supplies.goods.remove(&Good::Pepper);
    let both_lack = "No costs side by side: A has no supply entered for pepper; B has no supply entered for sheep's milk.";
    assert_eq!(note(&bare, &sheep).unwrap(), format!("{both_lack}{WHERE}"));
    sheep.supplies.goods.insert(Good::SheepMilk, cow.supplies.goods[&Good::Milk].clone());
    assert_eq!(note(&cow, &sheep), None);
    assert!(!both(&cow, &sheep).costs.is_empty());
    let mut dear = cow.clone();
    dear.milk.milk_l = 5.0;
    assert_eq!(note(&cow, &dear), None);
    dear.supplies.currency = "shells".to_owned();
    assert!(note(&cow, &dear).unwrap().contains("different currencies"));
}
