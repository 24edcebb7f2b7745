//! Fewer turns that save a night. Vats, dates and hours are invented.

use jiff::civil::date;
use jiff::tz::TimeZone;
use vatsketch::batch::{Batch, batch};
use vatsketch::design::{Design, Reached, Value, Wish};
use vatsketch::plan::{KitchenWeek, Now, TurnsOffer, fewer_turns, kitchen_week};

fn now() -> Now {
    Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC }
}

fn turned(count: f64, gap_h: f64, hour: i8) -> Design {
    let mut design = Design::default();
    design.set("turn_count", Value::Number(count)).unwrap();
    design.set("turn_gap_h", Value::Number(gap_h)).unwrap();
    design.week.wish = Wish::StartAt(date(2031, 5, 9).at(hour, 0, 0, 0));
    design
}

fn planned(design: &Design) -> (Batch, KitchenWeek) {
    let batch = batch(design).unwrap();
    let week = kitchen_week(&batch, &now()).unwrap().unwrap();
    (batch, week)
}

fn offered(design: &Design) -> Option<TurnsOffer> {
    let (batch, week) = planned(design);
    fewer_turns(&batch, &week, &now())
}

#[test]
fn what_is_offered_is_true_when_it_is_planned_again() {
    let mut found = 0;
    for (count, gap_h) in [(10.0, 3.0), (8.0, 4.0), (6.0, 5.0), (12.0, 2.5)] {
        for hour in [7, 9, 11, 15] {
            let design = turned(count, gap_h, hour);
            let Some(offer) = offered(&design) else { continue };
            found += 1;
            assert!(planned(&design).1.wakes(), "nothing is offered where nobody is woken");
            let mut taken = design.clone();
            offer.changes().into_iter().for_each(|(key, value)| taken.set(key, value).unwrap());
            assert!(!planned(&taken).1.wakes(), "{}", offer.words);
            assert!(f64::from(offer.turn_count) < count && offer.turn_gap_h > gap_h);
            // As long in the moulds, to a quarter of an hour for each turn.
            let whole = |design: &Design| f64::from(design.draining.turn_count + 1) * design.draining.turn_gap_h;
            assert!((whole(&taken) - whole(&design)).abs() <= 0.25 * f64::from(offer.turn_count + 1), "{}", offer.words);
            let words =
                format!("Turn {} times instead of {count}, every {} h: no alarm at night", offer.turn_count, offer.turn_gap_h);
            assert_eq!(offer.words, words);
        }
    }
    assert!(found >= 4, "{found}");
}

#[test]
fn nothing_is_offered_where_nobody_is_woken_or_the_turns_have_begun() {
    let quiet = turned(5.0, 8.0, 9);
    assert!(!planned(&quiet).1.wakes() && offered(&quiet).is_none());
    let mut begun = turned(10.0, 3.0, 9);
    assert!(offered(&begun).is_some());
    let (_, week) = planned(&begun);
    let first = week.tasks.iter().find(|task| task.key == "turn_1").unwrap().start;
    begun.week.reached = Some(Reached { task: "turn_1".to_owned(), began: first });
    let later = Now { at: first, ..now() };
    let batch = batch(&begun).unwrap();
    let week = kitchen_week(&batch, &later).unwrap().unwrap();
    assert!(week.wakes() && fewer_turns(&batch, &week, &later).is_none());
}

#[test]
fn a_turn_that_is_to_be_salted_is_never_saved() {
    let mut design = turned(10.0, 3.0, 9);
    design.set("salted_turns", Value::Number(10.0)).unwrap();
    assert!(planned(&design).1.wakes() && offered(&design).is_none());
}
