//! Wishes to take over. Dates, zones and vats are invented.

use jiff::civil::{DateTime, date};
use jiff::tz::{TimeZone, offset};
use proptest::prelude::*;
use vatsketch::batch::batch;
use vatsketch::design::{BusyOnce, Design, Habitual, WeekDesign, Wish};
use vatsketch::plan::{Counted, Now, WishKind, counted, kitchen_week, moved_start, wish_of_kind, wish_offers, wished_time};

fn now() -> Now {
    Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC }
}

fn wishing(wish: Wish) -> Design {
    let mut design = Design::default();
    design.week.wish = wish;
    design
}

#[test]
fn every_offer_makes_a_week() {
    let counted = counted(&batch(&Design::default()).unwrap());
    let offers = wish_offers(&now(), &counted);
    assert_eq!(offers.len(), 3);
    for offer in offers {
        assert!(kitchen_week(&batch(&wishing(offer.wish)).unwrap(), &now()).unwrap().is_some(), "{}", offer.words);
    }
}

#[test]
fn without_a_known_end_no_finished_by_is_offered() {
    let offers = wish_offers(&now(), &Counted::default());
    assert!(offers.iter().all(|offer| !matches!(offer.wish, Wish::FinishedBy(_))));
}

#[test]
fn a_wish_of_another_kind_keeps_the_plan_where_it_is() {
    let start = date(2031, 5, 9).at(14, 30, 0, 0);
    let made = batch(&wishing(Wish::StartAt(start))).unwrap();
    let week = kitchen_week(&made, &now()).unwrap().unwrap();
    let counted = counted(&made);
    let of = |kind| wish_of_kind(kind, Some(&week), &now(), &counted);
    assert_eq!(of(WishKind::SoonAfter), Wish::SoonAfter(start));
    assert_eq!(wished_time(of(WishKind::FinishedBy)), week.finished);
    assert_eq!(of(WishKind::Open), Wish::Open);
    for kind in WishKind::ALL {
        assert_eq!(WishKind::of(of(kind)), kind);
        assert_eq!(WishKind::of(wish_of_kind(kind, None, &now(), &Counted::default())), kind);
    }
}

#[test]
fn an_error_that_knows_a_time_offers_it_and_the_others_offer_nothing() {
    let soon = wishing(Wish::FinishedBy(date(2031, 5, 6).at(9, 0, 0, 0)));
    let offer = kitchen_week(&batch(&soon).unwrap(), &now()).unwrap_err().offer().unwrap();
    assert!(kitchen_week(&batch(&wishing(offer.wish)).unwrap(), &now()).is_ok());
    let past = wishing(Wish::FinishedBy(date(2031, 5, 4).at(9, 0, 0, 0)));
    assert_eq!(kitchen_week(&batch(&past).unwrap(), &now()).unwrap_err().offer(), None);
}

#[test]
fn the_clock_of_the_week_is_that_of_its_zone() {
    let far = Now { at: date(2031, 5, 5).at(23, 30, 0, 0), zone: TimeZone::fixed(offset(2)) };
    let named = |zone: &str| far.for_week(&WeekDesign { zone: zone.to_owned(), ..WeekDesign::default() }).at;
    assert_eq!(named("Etc/UTC"), date(2031, 5, 5).at(21, 30, 0, 0));
    assert_eq!((named(""), named("Kitchen")), (far.at, far.at), "a zone that is not known changes nothing");
}

#[test]
fn rows_are_added_and_removed_and_a_busy_time_keeps_its_length() {
    let week = WeekDesign::default().with_taken(Habitual::Work).with_busy(now().at);
    assert!(week.check().is_ok());
    assert_eq!((week.taken.len(), week.busy.len()), (2, 1));
    assert_eq!(week.without_taken(1).without_busy(0), WeekDesign::default());
    assert_eq!(week.without_taken(9).without_busy(9), week);
    let moved = week.busy[0].moved_to(date(2031, 5, 9).at(23, 0, 0, 0));
    assert_eq!(moved, BusyOnce { from: date(2031, 5, 9).at(23, 0, 0, 0), to: date(2031, 5, 10).at(1, 0, 0, 0), impossible: false });
}

#[test]
fn the_ends_of_the_calendar_move_nothing() {
    assert_eq!(moved_start(DateTime::MAX, 1440), None);
    assert_eq!(moved_start(DateTime::MIN, -1440), None);
}

proptest! {
    #[test]
    fn a_moved_start_lies_on_a_quarter_of_an_hour_and_near_where_it_was_put(minute in 0_i64..100_000, by in -20_000_i64..20_000) {
        let start = now().at.checked_add(jiff::Span::new().minutes(minute)).unwrap();
        let wanted = start.checked_add(jiff::Span::new().minutes(by)).unwrap();
        let moved = moved_start(start, by).unwrap();
        prop_assert_eq!(moved.minute() % 15, 0);
        let off = wanted.until(moved).unwrap().total(jiff::Unit::Minute).unwrap();
        prop_assert!(off.abs() <= 7.5, "{off}");
    }
}
