//! The maker's week in a file of format 3: times as text, days by their first letters.

use super::choices::Habitual;
use serde::Deserialize;

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
pub(in crate::file) enum Wish {
    Open,
    StartAt(String),
    SoonAfter(String),
    ReadyBy(String),
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
        let night = Taken {
            by: Habitual::Sleep,
            days: vec![Day::Mon, Day::Tue, Day::Wed, Day::Thu, Day::Fri, Day::Sat, Day::Sun],
            from: "22:45".to_owned(),
            to: "06:45".to_owned(),
        };
        Self { wish: Wish::Open, zone: String::new(), taken: vec![night], busy: Vec::new(), reached: None }
    }
}
