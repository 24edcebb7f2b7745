//! A mould and a jar to scale.

use vatsketch::batch::batch;
use vatsketch::curve::{Content, Vessel, vessel};
use vatsketch::design::{Design, Stage, Value};

fn at(stage: Stage, choices: &[(&str, Value)]) -> Vessel {
    let mut design = Design::default();
    for (key, value) in choices {
        design.set(key, *value).unwrap();
    }
    vessel(&batch(&design).unwrap(), stage).unwrap()
}

/// What does not fit is drawn as high as it is, over the rim.
#[test]
fn curd_that_does_not_fit_stands_over_the_rim() {
    let low = at(Stage::Draining, &[("mould_count", Value::Number(9.0))]);
    let roomy = at(Stage::Draining, &[("mould_count", Value::Number(60.0))]);
    let curd = |vessel: &Vessel| vessel.pieces.iter().find(|piece| piece.content == Content::Curd).unwrap().height_mm;
    assert!(curd(&low) > low.height_mm && low.caption.contains("over the rim"), "{}", low.caption);
    assert!(curd(&roomy) < roomy.height_mm && roomy.caption.contains("has room"), "{}", roomy.caption);
}

/// However they lie, the cheeses of the fullest jar are inside it, and under the vinegar where it is enough to cover them.
#[test]
fn cheeses_lie_inside_their_jar_and_under_the_vinegar() {
    for lay in ["flat", "flat_touching", "on_edge"] {
        let jar = at(Stage::Pickling, &[("jar_lay", Value::Choice(lay))]);
        let cheeses: Vec<_> = jar.pieces.iter().filter(|piece| piece.content == Content::Cheese).collect();
        let vinegar = jar.pieces.iter().find(|piece| piece.content == Content::Vinegar).unwrap();
        assert!(!cheeses.is_empty() && vinegar.height_mm <= jar.height_mm, "{lay}");
        for piece in cheeses {
            assert!(piece.left_mm >= -1e-9 && piece.left_mm + piece.width_mm <= jar.width_mm + 1e-9, "{lay}: {piece:?}");
            assert!(piece.bottom_mm + piece.height_mm <= jar.height_mm + 1e-9, "{lay}: {piece:?}");
        }
    }
}

#[test]
fn nothing_is_filled_at_the_other_stations() {
    let batch = batch(&Design::default()).unwrap();
    for stage in [Stage::Milk, Stage::Vat, Stage::Salting, Stage::Drying] {
        assert_eq!(vessel(&batch, stage), None, "{stage:?}");
    }
}
