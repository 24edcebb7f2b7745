//! The maker's week in a file of format 7: times as text, days by their first letters.

use super::choices::Habitual;
use crate::design::{BusyOnce, DesignError, Reached, TakenHours, WeekDesign, Wish as Working};
use crate::design::{hour, moment, read_hour, read_moment};
use crate::file::v6 as before;
use serde::{Deserialize, Serialize};

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(in crate::file) enum Wish {
    Open,
    StartAt(String),
    SoonAfter(String),
    FinishedBy(String),
}

#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub(in crate::file) enum Day {
    Mon,
    Tue,
    Wed,
    Thu,
    Fri,
    Sat,
    Sun,
}

impl Day {
    const ALL: [Self; 7] = [Self::Mon, Self::Tue, Self::Wed, Self::Thu, Self::Fri, Self::Sat, Self::Sun];
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(in crate::file) struct Taken {
    by: Habitual,
    days: Vec<Day>,
    from: String,
    to: String,
    #[serde(default)]
    impossible: bool,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(in crate::file) struct Busy {
    from: String,
    to: String,
    #[serde(default)]
    impossible: bool,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(in crate::file) struct Here {
    task: String,
    began: String,
}

/// The maker's week.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(in crate::file) struct Week {
    wish: Wish,
    zone: String,
    taken: Vec<Taken>,
    busy: Vec<Busy>,
    reached: Option<Here>,
}

impl Default for Week {
    fn default() -> Self {
        let night = Taken {
            by: Habitual::Sleep,
            days: Day::ALL.to_vec(),
            from: "22:45".to_owned(),
            to: "06:45".to_owned(),
            impossible: false,
        };
        Self { wish: Wish::Open, zone: String::new(), taken: vec![night], busy: Vec::new(), reached: None }
    }
}

impl From<before::Week> for Week {
    /// Until format 6 hours were disliked, none was impossible.
    fn from(saved: before::Week) -> Self {
        let before::Week { wish, zone, taken, busy, reached } = saved;
        let wish = match wish {
            before::Wish::Open => Wish::Open,
            before::Wish::StartAt(at) => Wish::StartAt(at),
            before::Wish::SoonAfter(at) => Wish::SoonAfter(at),
            before::Wish::FinishedBy(at) => Wish::FinishedBy(at),
        };
        let taken_hours = |before::Taken { by, days, from, to }| Taken {
            by: by.into(),
            days: days.into_iter().map(Day::from).collect(),
            from,
            to,
            impossible: false,
        };
        Self {
            wish,
            zone,
            taken: taken.into_iter().map(taken_hours).collect(),
            busy: busy.into_iter().map(|before::Busy { from, to }| Busy { from, to, impossible: false }).collect(),
            reached: reached.map(|before::Here { task, began }| Here { task, began }),
        }
    }
}

impl From<before::Day> for Day {
    fn from(day: before::Day) -> Self {
        match day {
            before::Day::Mon => Self::Mon,
            before::Day::Tue => Self::Tue,
            before::Day::Wed => Self::Wed,
            before::Day::Thu => Self::Thu,
            before::Day::Fri => Self::Fri,
            before::Day::Sat => Self::Sat,
            before::Day::Sun => Self::Sun,
        }
    }
}

impl From<&WeekDesign> for Week {
    fn from(week: &WeekDesign) -> Self {
        let wish = match week.wish {
            Working::Open => Wish::Open,
            Working::StartAt(at) => Wish::StartAt(moment(at)),
            Working::SoonAfter(at) => Wish::SoonAfter(moment(at)),
            Working::FinishedBy(at) => Wish::FinishedBy(moment(at)),
        };
        let taken = |row: &TakenHours| Taken {
            by: row.by.into(),
            days: Day::ALL.into_iter().zip(row.days).filter(|(_, on)| *on).map(|(day, _)| day).collect(),
            from: hour(row.from),
            to: hour(row.to),
            impossible: row.impossible,
        };
        let busy = |row: &BusyOnce| Busy { from: moment(row.from), to: moment(row.to), impossible: row.impossible };
        Self {
            wish,
            zone: week.zone.clone(),
            taken: week.taken.iter().map(taken).collect(),
            busy: week.busy.iter().map(busy).collect(),
            reached: week.reached.as_ref().map(|here| Here { task: here.task.clone(), began: moment(here.began) }),
        }
    }
}

impl TryFrom<Week> for WeekDesign {
    type Error = DesignError;

    fn try_from(saved: Week) -> Result<Self, DesignError> {
        let wish = match &saved.wish {
            Wish::Open => Working::Open,
            Wish::StartAt(at) => Working::StartAt(read_moment(at)?),
            Wish::SoonAfter(at) => Working::SoonAfter(read_moment(at)?),
            Wish::FinishedBy(at) => Working::FinishedBy(read_moment(at)?),
        };
        let taken = |row: &Taken| {
            let days = Day::ALL.map(|day| row.days.contains(&day));
            let (from, to) = (read_hour(&row.from)?, read_hour(&row.to)?);
            Ok(TakenHours { by: row.by.into(), days, from, to, impossible: row.impossible })
        };
        let busy =
            |row: &Busy| Ok(BusyOnce { from: read_moment(&row.from)?, to: read_moment(&row.to)?, impossible: row.impossible });
        let here = |here: &Here| Ok(Reached { task: here.task.clone(), began: read_moment(&here.began)? });
        Ok(Self {
            wish,
            zone: saved.zone,
            taken: saved.taken.iter().map(taken).collect::<Result<_, DesignError>>()?,
            busy: saved.busy.iter().map(busy).collect::<Result<_, DesignError>>()?,
            reached: saved.reached.as_ref().map(here).transpose()?,
        })
    }
}
