//! The maker's week as it stands in a file of format 3: times as text, days by their first letters.

use crate::design::{BusyOnce, DesignError, Habitual as Kind, Reached, TakenHours, WeekDesign, Wish as Working};
use crate::design::{hour, moment, read_hour, read_moment};
use crate::file::frozen::saved_choices;
use serde::{Deserialize, Serialize};

saved_choices! {
    Habitual { Sleep = "sleep", Work = "work" }
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Wish {
    Open,
    StartAt(String),
    SoonAfter(String),
    ReadyBy(String),
}

#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
enum Day {
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
struct Taken {
    by: Habitual,
    days: Vec<Day>,
    from: String,
    to: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Busy {
    from: String,
    to: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Here {
    task: String,
    began: String,
}

/// The maker's week.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(super) struct Week {
    wish: Wish,
    zone: String,
    taken: Vec<Taken>,
    busy: Vec<Busy>,
    reached: Option<Here>,
}

impl Default for Week {
    fn default() -> Self {
        Self::from(&WeekDesign::default())
    }
}

impl From<&WeekDesign> for Week {
    fn from(week: &WeekDesign) -> Self {
        let wish = match week.wish {
            Working::Open => Wish::Open,
            Working::StartAt(at) => Wish::StartAt(moment(at)),
            Working::SoonAfter(at) => Wish::SoonAfter(moment(at)),
            Working::FinishedBy(at) => Wish::ReadyBy(moment(at)),
        };
        let taken = |row: &TakenHours| Taken {
            by: row.by.into(),
            days: Day::ALL.into_iter().zip(row.days).filter(|(_, on)| *on).map(|(day, _)| day).collect(),
            from: hour(row.from),
            to: hour(row.to),
        };
        Self {
            wish,
            zone: week.zone.clone(),
            taken: week.taken.iter().map(taken).collect(),
            busy: week.busy.iter().map(|busy| Busy { from: moment(busy.from), to: moment(busy.to) }).collect(),
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
            Wish::ReadyBy(at) => Working::FinishedBy(read_moment(at)?),
        };
        let taken = |row: &Taken| {
            let days = Day::ALL.map(|day| row.days.contains(&day));
            Ok(TakenHours { by: Kind::from(row.by), days, from: read_hour(&row.from)?, to: read_hour(&row.to)? })
        };
        let busy = |row: &Busy| Ok(BusyOnce { from: read_moment(&row.from)?, to: read_moment(&row.to)? });
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
