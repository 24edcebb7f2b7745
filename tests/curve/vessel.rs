//! A mould and a jar to scale.

use vatsketch::batch::batch;
use vatsketch::curve::{Content, Piece, Vessel, vessel};
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

/// The volumes that are drawn are those that are poured: of milk and of water.
#[test]
fn pot_and_bath_hold_what_is_poured_into_them() {
    for (bath_l, wetted) in [(4.0, 50.0), (8.0, 100.0), (25.0, 70.0)] {
        let pot = at(Stage::Vat, &[("bath_l", Value::Number(bath_l)), ("pot_depth_percent", Value::Number(wetted))]);
        let [water, milk] = pot.pieces.as_slice() else { panic!("{:?}", pot.pieces) };
        let litres = |width_mm: f64, height_mm: f64| 1e-6 * 0.25 * std::f64::consts::PI * width_mm.powi(2) * height_mm;
        let below_mm = water.height_mm - milk.bottom_mm;
        let milk_l = litres(milk.width_mm, milk.height_mm);
        let around_l = litres(water.width_mm, water.height_mm) - litres(milk.width_mm, below_mm);
        // The pot is drawn as wide as its milk: its wall, under a millimetre thick, is left out.
        assert!((around_l - bath_l).abs() < 0.01 * bath_l, "{around_l} L of water, {bath_l} L wanted");
        let vat_milk_l = batch(&Design::default()).unwrap().milk.done().unwrap().vat_milk_l;
        assert!((milk_l - vat_milk_l).abs() < 0.01 * vat_milk_l, "{milk_l} L of milk, {vat_milk_l} L wanted");
        assert!(milk.left_mm >= 0.0 && (below_mm - 0.01 * wetted * milk.height_mm).abs() < 1e-6);
    }
    let on_hob = at(Stage::Vat, &[("heating", Value::Choice("hob"))]);
    assert!(on_hob.pieces.iter().all(|piece| piece.content == Content::Milk), "no bath on a hob");
}

/// Cheeses lie inside their tray and apart from each other, as many as there are, or as it holds.
#[test]
fn cheeses_lie_apart_on_their_tray() {
    for (width, depth, count) in [(310.0, 290.0, 12.0), (200.0, 400.0, 40.0), (120.0, 120.0, 12.0)] {
        let tray = at(
            Stage::Drying,
            &[
                ("tray_width_mm", Value::Number(width)),
                ("tray_depth_mm", Value::Number(depth)),
                ("mould_count", Value::Number(count)),
            ],
        );
        let centre = |piece: &Piece| (piece.left_mm + 0.5 * piece.width_mm, piece.bottom_mm + 0.5 * piece.height_mm);
        for (place, piece) in tray.pieces.iter().enumerate() {
            assert!(piece.left_mm > -1e-6 && piece.left_mm + piece.width_mm < width + 1e-6, "{piece:?}");
            assert!(piece.bottom_mm > -1e-6 && piece.bottom_mm + piece.height_mm < depth + 1e-6, "{piece:?}");
            for other in &tray.pieces[place + 1..] {
                let ((x, y), (other_x, other_y)) = (centre(piece), centre(other));
                assert!((x - other_x).hypot(y - other_y) > piece.width_mm, "{piece:?} over {other:?}");
            }
        }
        let wanted = (count / f64::from(Design::default().drying.tray_count)).ceil();
        let more_have_no_room = tray.caption.contains("have no room");
        assert_eq!(tray.pieces.len() as f64 >= wanted, !more_have_no_room, "{}", tray.caption);
    }
}

#[test]
fn nothing_is_filled_while_the_cheeses_are_salted_or_where_none_is_dried() {
    let mut design = Design::default();
    assert_eq!(vessel(&batch(&design).unwrap(), Stage::Salting), None);
    design.set("drying_h", Value::Number(0.0)).unwrap();
    assert_eq!(vessel(&batch(&design).unwrap(), Stage::Drying), None);
}
