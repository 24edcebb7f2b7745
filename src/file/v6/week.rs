//! The maker's week in a file of format 6: times as text, days by their first letters.

use super::choices::Habitual;
use crate::file::v5 as before;
use serde::Deserialize;

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
pub(in crate::file) enum Wish {
    Open,
    StartAt(String),
    SoonAfter(String),
    FinishedBy(String),
}

#[derive(Clone, Copy, Deserialize)]
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

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(in crate::file) struct Taken {
    pub(in crate::file) by: Habitual,
    pub(in crate::file) days: Vec<Day>,
    pub(in crate::file) from: String,
    pub(in crate::file) to: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(in crate::file) struct Busy {
    pub(in crate::file) from: String,
    pub(in crate::file) to: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(in crate::file) struct Here {
    pub(in crate::file) task: String,
    pub(in crate::file) began: String,
}

/// The maker's week.
#[derive(Deserialize)]
#[serde(deny_unknown_fields, default)]
pub(in crate::file) struct Week {
    pub(in crate::file) wish: Wish,
    pub(in crate::file) zone: String,
    pub(in crate::file) taken: Vec<Taken>,
    pub(in crate::file) busy: Vec<Busy>,
    pub(in crate::file) reached: Option<Here>,
}

impl Default for Week {
    fn default() -> Self {
        let night = Taken { by: Habitual::Sleep, days: Day::ALL.to_vec(), from: "22:45".to_owned(), to: "06:45".to_owned() };
        Self { wish: Wish::Open, zone: String::new(), taken: vec![night], busy: Vec::new(), reached: None }
    }
}

impl From<before::Week> for Week {
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
        };
        Self {
            wish,
            zone,
            taken: taken.into_iter().map(taken_hours).collect(),
            busy: busy.into_iter().map(|before::Busy { from, to }| Busy { from, to }).collect(),
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
