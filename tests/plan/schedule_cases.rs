//! The reference cases of the schedule.

use super::any::points;
use serde::Deserialize;
use std::collections::BTreeMap;
use vatsketch::plan::{Gap, Habit, Handling, Hours, Schedule, Start, Taken, horizon_min, schedule};

#[derive(Deserialize)]
struct Table {
    source: String,
    cases: BTreeMap<String, Case>,
}

#[derive(Deserialize)]
struct Case {
    text: String,
    mode: String,
    #[serde(rename = "E")]
    earliest: i64,
    #[serde(rename = "R")]
    ready: Option<i64>,
    start_window: Option<i64>,
    beta: i64,
    windows: Vec<(Vec<usize>, i64, i64, i64)>,
    events: Vec<(String, i64, i64, i64, i64, i64, i64)>,
    optimum: i64,
    cpsat: i64,
    starts: Vec<i64>,
}

impl Case {
    fn run(&self) -> Vec<Handling> {
        let handling = |(name, hands, least_min, usual_from_min, usual_to_min, most_min, shift_points): &(
            String,
            i64,
            i64,
            i64,
            i64,
            i64,
            i64,
        )| {
            let gap = Gap {
                least_min: *least_min,
                usual_from_min: *usual_from_min,
                usual_to_min: *usual_to_min,
                most_min: *most_min,
                shift_points: *shift_points,
            };
            Handling::new(name.clone(), *hands, gap)
        };
        self.events.iter().map(handling).collect()
    }

    fn start(&self) -> Start {
        match self.mode.as_str() {
            "earliest" => {
                Start::Earliest { from_min: self.earliest, within_min: self.start_window.unwrap(), wait_points: self.beta }
            }
            "ready" => Start::FinishedBy { by_min: self.ready.unwrap(), from_min: self.earliest, spare_points: self.beta },
            other => panic!("unknown mode {other}"),
        }
    }

    fn hours(&self, until_min: i64) -> Hours {
        let habit = |(days, from_min, to_min, points): &(Vec<usize>, i64, i64, i64)| {
            let mut on = [false; 7];
            for day in days {
                on[*day] = true;
            }
            Habit {
                by: if *points == 10 { Taken::Sleep } else { Taken::Work },
                days: on,
                from_min: *from_min,
                to_min: *to_min,
                points: *points,
                // These weeks were solved with nothing but a price for each minute.
                alarm_points: 0,
                impossible: false,
            }
        };
        Hours::of_habits(&self.windows.iter().map(habit).collect::<Vec<_>>(), until_min)
    }

    fn solved(&self) -> (Vec<Handling>, Hours, Schedule) {
        let run = self.run();
        let hours = self.hours(horizon_min(&run, &self.start()).unwrap());
        let plan = schedule(&run, &hours, &self.start()).unwrap();
        (run, hours, plan)
    }
}

fn table() -> Table {
    let text = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/schedule.json")).unwrap();
    serde_json::from_str(&text).unwrap()
}

/// Whole numbers, so no tolerance; the constraint solver's optimum was found by another method altogether.
#[test]
fn every_reference_week_costs_what_the_independent_solvers_found() {
    let table = table();
    assert!(table.source.starts_with("Computed by an independent program"));
    assert_eq!(table.cases.len(), 8);
    for (name, case) in &table.cases {
        let (_, _, plan) = case.solved();
        assert_eq!(plan.points, case.optimum, "{name}: {}", case.text);
        assert_eq!(plan.points, case.cpsat, "{name}: {}", case.text);
    }
}

#[test]
fn every_reference_week_puts_each_step_where_the_tie_rules_want_it() {
    for (name, case) in &table().cases {
        let (_, _, plan) = case.solved();
        let starts: Vec<i64> = plan.placed.iter().map(|placed| placed.start_min).collect();
        assert_eq!(starts, case.starts, "{name}: {}", case.text);
    }
}

#[test]
fn the_reasons_of_every_reference_week_add_up_to_its_cost() {
    for (name, case) in &table().cases {
        let (run, hours, plan) = case.solved();
        let reasons = plan.reasons(&run);
        assert_eq!(reasons.iter().map(|reason| reason.points).sum::<i64>(), plan.points, "{name}");
        assert!(reasons.windows(2).all(|pair| pair[0].points >= pair[1].points), "{name}: the dearest comes first");
        let starts: Vec<i64> = plan.placed.iter().map(|placed| placed.start_min).collect();
        assert_eq!(points(&run, &hours, &case.start(), &starts), plan.points, "{name}");
    }
}

/// By hand: with rigid gaps of 7 h some turn always falls between 23:00 and 07:00; a flex of the hour that the night is longer and one turn's length cures it.
#[test]
fn turns_every_seven_hours_wake_the_maker_unless_they_give_a_little() {
    let sleep = Habit::new(Taken::Sleep, Habit::EVERY_DAY, (23, 0), (7, 0));
    let sleep_lost = |flex: i64| {
        let turn = |name: &str| Handling::new(name, 15, Gap::flexible(420, flex, flex, 1));
        let run: Vec<Handling> = ["ladle", "turn 1", "turn 2", "turn 3", "turn 4"].map(turn).into();
        let start = Start::Earliest { from_min: 0, within_min: 24 * 60, wait_points: 0 };
        let hours = Hours::of_habits(&[sleep], horizon_min(&run, &start).unwrap());
        let plan = schedule(&run, &hours, &start).unwrap();
        plan.placed.iter().flat_map(|placed| &placed.lost).map(|lost| lost.minutes).sum::<i64>()
    };
    assert!(sleep_lost(0) > 0);
    assert!(sleep_lost(60) > 0);
    assert_eq!(sleep_lost(75), 0);
}
