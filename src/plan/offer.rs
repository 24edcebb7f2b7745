//! Wishes that a maker can take over with one press: a beginning to start from, and the earliest time where none fits.

use super::{Counted, KitchenWeek, KitchenWeekError, Now, WishOffer, time_words};
use crate::design::Wish;
use jiff::civil::{DateTime, Weekday};
use jiff::{ToSpan, Unit};

/// The kinds of wish.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WishKind {
    /// [`Wish::Open`].
    Open,
    /// [`Wish::StartAt`].
    StartAt,
    /// [`Wish::SoonAfter`].
    SoonAfter,
    /// [`Wish::FinishedBy`].
    FinishedBy,
}

impl WishKind {
    /// Every kind.
    pub const ALL: [Self; 4] = [Self::Open, Self::StartAt, Self::SoonAfter, Self::FinishedBy];

    /// Returns the kind of a wish.
    #[must_use]
    pub const fn of(wish: Wish) -> Self {
        match wish {
            Wish::Open => Self::Open,
            Wish::StartAt(_) => Self::StartAt,
            Wish::SoonAfter(_) => Self::SoonAfter,
            Wish::FinishedBy(_) => Self::FinishedBy,
        }
    }

    /// Returns what it is called.
    #[must_use]
    pub const fn label(self) -> &'static str {
        match self {
            Self::Open => "No date yet",
            Self::StartAt => "Begin at",
            Self::SoonAfter => "Begin soon after",
            Self::FinishedBy => "Finished by",
        }
    }

    /// Returns the wish of this kind for a time; a wish that is open has none.
    #[must_use]
    pub const fn at(self, at: DateTime) -> Wish {
        match self {
            Self::Open => Wish::Open,
            Self::StartAt => Wish::StartAt(at),
            Self::SoonAfter => Wish::SoonAfter(at),
            Self::FinishedBy => Wish::FinishedBy(at),
        }
    }
}

/// Returns the time that a wish names.
#[must_use]
pub const fn wished_time(wish: Wish) -> Option<DateTime> {
    match wish {
        Wish::Open => None,
        Wish::StartAt(at) | Wish::SoonAfter(at) | Wish::FinishedBy(at) => Some(at),
    }
}

/// Hour at which a day's work is offered to begin.
const MORNING_H: i8 = 9;
/// Hour by which cheeses are offered to be finished.
const EVENING_H: i8 = 18;
/// Room that an offered finish time leaves, so that the hours of the maker can be kept.
const ROOM_DAYS: i64 = 1;

/// Returns wishes to begin from.
///
/// # Arguments
/// * `counted`: what the vat takes, for a Sunday by which it can be finished
///
/// # Example
/// ```
/// use jiff::{civil::date, tz::TimeZone};
/// use vatsketch::plan::{Counted, Now, wish_offers};
/// let now = Now { at: date(2031, 5, 5).at(8, 0, 0, 0), zone: TimeZone::UTC };
/// let offers = wish_offers(&now, &Counted { finished_min: Some(3 * 1440), ..Counted::default() });
/// assert_eq!(offers[0].words, "Begin tomorrow 09:00");
/// assert_eq!(offers[2].words, "Finished by Sun 11 May, 18:00");
/// ```
#[must_use]
pub fn wish_offers(now: &Now, counted: &Counted) -> Vec<WishOffer> {
    let mut offers = Vec::new();
    if let Some(at) = tomorrow_morning(now.at) {
        offers.push(WishOffer { words: format!("Begin tomorrow {}", crate::design::hour(at.time())), wish: Wish::StartAt(at) });
    }
    offers.push(WishOffer { words: "Begin soon, as the hours allow".to_owned(), wish: Wish::SoonAfter(now.at) });
    if let Some(by) = feasible_sunday(now.at, counted) {
        offers.push(WishOffer { words: format!("Finished by {}", time_words(by)), wish: Wish::FinishedBy(by) });
    }
    offers
}

fn tomorrow_morning(now: DateTime) -> Option<DateTime> {
    Some(now.date().tomorrow().ok()?.at(MORNING_H, 0, 0, 0))
}

/// Returns the evening of the first Sunday by which all can be finished, with room.
fn feasible_sunday(now: DateTime, counted: &Counted) -> Option<DateTime> {
    let soonest = now.checked_add(counted.finished_min?.minutes()).ok()?.checked_add(ROOM_DAYS.days()).ok()?;
    let mut day = soonest.date();
    while day.weekday() != Weekday::Sunday || day.at(EVENING_H, 0, 0, 0) < soonest {
        day = day.tomorrow().ok()?;
    }
    Some(day.at(EVENING_H, 0, 0, 0))
}

/// Returns a wish of another kind that leaves the plan as near as can be to what it is.
///
/// A plan that stands lends its beginning or its end; without one, work begins tomorrow morning, or the cheeses are finished on a Sunday.
///
/// # Arguments
/// * `week`: the plan as it is, if there is one
#[must_use]
pub fn wish_of_kind(kind: WishKind, week: Option<&KitchenWeek>, now: &Now, counted: &Counted) -> Wish {
    let time = match kind {
        WishKind::Open => None,
        WishKind::StartAt | WishKind::SoonAfter => {
            week.and_then(|week| week.tasks.first()).map(|task| task.start).or_else(|| tomorrow_morning(now.at))
        }
        WishKind::FinishedBy => week.and_then(|week| week.finished).or_else(|| feasible_sunday(now.at, counted)).or(Some(now.at)),
    };
    time.map_or(Wish::Open, |time| kind.at(time))
}

/// Returns a beginning moved by minutes, on a quarter of an hour.
///
/// # Example
/// ```
/// use jiff::civil::date;
/// use vatsketch::plan::moved_start;
/// let start = date(2031, 5, 9).at(14, 20, 0, 0);
/// assert_eq!(moved_start(start, 15), Some(date(2031, 5, 9).at(14, 30, 0, 0)));
/// assert_eq!(moved_start(start, -1440), Some(date(2031, 5, 8).at(14, 15, 0, 0)));
/// ```
#[must_use]
pub fn moved_start(start: DateTime, minutes: i64) -> Option<DateTime> {
    let moved = start.checked_add(minutes.minutes()).ok()?;
    moved.round(jiff::civil::DateTimeRound::new().smallest(Unit::Minute).increment(super::GRID_MIN)).ok()
}

impl KitchenWeekError {
    /// Returns the wish that would do, if the error knows one.
    #[must_use]
    pub fn offer(&self) -> Option<WishOffer> {
        let (Self::TooSoon { soonest, .. } | Self::TooLateNow { soonest, .. }) = self else { return None };
        Some(WishOffer { words: format!("Finish by {}", time_words(*soonest)), wish: Wish::FinishedBy(*soonest) })
    }
}
