//! `plan`: what the library plans, in words and as JSON. Dates and hours are invented.

use super::{Run, example, run, run_with};
use jiff::civil::date;
use jiff::tz::TimeZone;
use vatsketch::batch::batch;
use vatsketch::design::{Reached, Wish};
use vatsketch::plan::{KitchenWeek, Now, kitchen_week};

/// Plans the first example as of a Tuesday morning.
fn plan(more: &[&str]) -> Run {
    let file = example("warm-cabinet");
    run(&[&["plan", &file, "--zone", "Etc/UTC", "--as-of", "2031-05-06T08:00"][..], more].concat())
}

/// Returns what the library plans.
fn planned(wish: Wish, reached: Option<Reached>) -> KitchenWeek {
    let mut design = crate::example("warm-cabinet");
    design.week.wish = wish;
    design.week.reached = reached;
    let now = Now { at: date(2031, 5, 6).at(8, 0, 0, 0), zone: TimeZone::UTC };
    kitchen_week(&batch(&design).unwrap(), &now).unwrap().unwrap()
}

#[test]
fn each_wish_on_the_command_line_is_planned_as_the_library_plans_it() {
    let at = date(2031, 6, 20).at(17, 30, 0, 0);
    for (option, wish) in [("--start", Wish::StartAt(at)), ("--soon", Wish::SoonAfter(at)), ("--finished-by", Wish::FinishedBy(at))]
    {
        let run = plan(&[option, "2031-06-20T17:30", "--json"]);
        assert_eq!((run.code, run.words.as_str()), (0, ""), "{option}");
        let (json, week) = (run.json(), planned(wish, None));
        assert_eq!(json["wish"]["at"], "2031-06-20T17:30:00");
        assert_eq!(json["finished"], week.finished.unwrap().to_string());
        assert_eq!((&json["points"], &json["zone"]), (&week.points.into(), &"Etc/UTC".into()));
        let tasks = json["tasks"].as_array().unwrap();
        assert_eq!(tasks.len(), week.tasks.len());
        for (printed, task) in tasks.iter().zip(&week.tasks) {
            let times = [printed["start"].as_str().unwrap(), printed["end"].as_str().unwrap()];
            assert_eq!(times, [task.start.to_string(), task.end.to_string()], "{}", task.key);
            assert_eq!((&printed["key"], &printed["name"]), (&task.key.as_str().into(), &task.name.as_str().into()));
            assert_eq!((&printed["hands_min"], &printed["shift_min"]), (&task.hands_min.into(), &task.shift_min.into()));
            assert_eq!(printed["lost"].as_array().unwrap().len(), task.lost.len());
        }
        let reasons: i64 = json["reasons"].as_array().unwrap().iter().map(|why| why["points"].as_i64().unwrap()).sum();
        assert_eq!(reasons, week.points, "what it pays for adds up");
        assert_eq!(json["taken"].as_array().unwrap().len(), week.taken.len());
        assert_eq!(json["stretches"].as_array().unwrap().len(), week.stretches.len());
        assert!(json["cautions"].as_array().unwrap().iter().any(|caution| caution["severity"] == "stop"));
    }
}

#[test]
fn alarms_at_night_are_told_with_their_times_and_fewer_turns_that_save_them_as_they_are_set() {
    let start = ["--start", "2031-05-09T09:00"];
    let often = [&start[..], &["--set", "turn_count=10", "--set", "turn_gap_h=3"]].concat();
    let (told, json) = (plan(&often).data, plan(&[&often[..], &["--json"]].concat()).json());
    let alarms = json["alarms"].as_array().unwrap();
    let waking = json["tasks"].as_array().unwrap().iter().filter(|task| task["wakes"] == true);
    assert!(!alarms.is_empty() && waking.map(|task| &task["start"]).eq(alarms.iter()));
    let line = told.lines().find(|line| line.starts_with("Disruption: ")).unwrap();
    assert!(line.contains("alarm"), "{line}");
    for alarm in alarms {
        assert!(line.contains(&alarm.as_str().unwrap()[11..16]), "{alarm} in {line}");
    }
    let offer = &json["fewer_turns"];
    let set = format!("  --set turn_count={} --set turn_gap_h={}", offer["turn_count"], offer["turn_gap_h"].as_f64().unwrap());
    let mut after = told.lines().skip_while(|line| *line != offer["words"].as_str().unwrap()).skip(1);
    assert_eq!(after.next(), Some(set.as_str()));
    let taken: Vec<&str> = start.into_iter().chain(set.split_whitespace()).collect();
    let again = plan(&taken).data;
    assert!(again.contains("Disruption: no") && !again.contains("alarm at 0"), "{again}");
    assert_eq!(plan(&[&taken[..], &["--json"]].concat()).json()["fewer_turns"], serde_json::Value::Null);
}

#[test]
fn a_reason_names_the_task_that_it_is_about() {
    let json = plan(&["--start", "2031-05-06T23:00", "--json"]).json();
    let reasons = json["reasons"].as_array().unwrap();
    assert!(!reasons.is_empty());
    for reason in reasons {
        let task = json["tasks"].as_array().unwrap().iter().find(|task| task["key"] == reason["task"]).unwrap();
        assert!(reason["words"].as_str().unwrap().contains(task["name"].as_str().unwrap()), "{reason}");
    }
}

#[test]
fn the_words_have_a_heading_for_each_day_and_say_why_and_what_follows() {
    let run = plan(&["--soon", "2031-05-06T08:00"]);
    assert_eq!(run.code, 0, "{}", run.words);
    let week = planned(Wish::SoonAfter(date(2031, 5, 6).at(8, 0, 0, 0)), None);
    for task in &week.tasks {
        let heading = format!("\n{}\n", task.start.date().strftime("%A %-d %B %Y"));
        assert!(run.data.contains(&heading), "{heading}");
        assert!(run.data.contains(&task.name) && run.data.contains(&task.what), "{}", task.name);
    }
    for words in week.reasons.iter().map(|reason| &reason.words).chain(week.stretches.iter().map(|stretch| &stretch.words)) {
        assert!(run.data.contains(words.as_str()), "{words}");
    }
    assert!(week.stretches.iter().any(|stretch| stretch.words.contains("they lose about")), "the loss follows");
    for part in [
        "Twelve for the garden table",
        "Serious warning: ",
        "Soak ends, perhaps not sour: ",
        "Keep no longer than",
        "not a measurement",
    ] {
        assert!(run.data.contains(part), "{part}");
    }
    assert!(!run.data.to_lowercase().contains("safe"), "nothing is called safe");
}

#[test]
fn without_a_wish_times_count_from_the_start_and_the_options_are_named() {
    let words = plan(&[]);
    assert_eq!(words.code, 0, "{}", words.words);
    for part in ["No date yet", "--start", "--soon", "--finished-by", "  start        Sanitise", "  +20 min      Measure"] {
        assert!(words.data.contains(part), "{part} is not in {}", words.data);
    }
    let json = plan(&["--json"]).json();
    assert_eq!((&json["wish"]["kind"], &json["tasks"][0]["start"]), (&"open".into(), &serde_json::Value::Null));
    let with_a_wish = plan(&["--start", "2031-05-06T08:00", "--json"]).json();
    let keys = |json: &serde_json::Value| json.as_object().unwrap().keys().cloned().collect::<Vec<_>>();
    assert_eq!((keys(&json), keys(&json["tasks"][0])), (keys(&with_a_wish), keys(&with_a_wish["tasks"][0])), "the same keys");
}

#[test]
fn from_where_the_maker_stands_only_what_is_left_is_planned() {
    let began = date(2031, 5, 6).at(7, 50, 0, 0);
    let run = plan(&["--here", "cut@2031-05-06T07:50", "--json"]);
    assert_eq!(run.code, 0, "{}", run.words);
    let (json, week) = (run.json(), planned(Wish::Open, Some(Reached { task: "cut".to_owned(), began })));
    let starts: Vec<&str> = json["tasks"].as_array().unwrap().iter().map(|task| task["start"].as_str().unwrap()).collect();
    assert_eq!(starts, week.tasks.iter().map(|task| task.start.to_string()).collect::<Vec<_>>());
    assert_eq!((&json["tasks"][0]["key"], &json["tasks"][0]["begun"]), (&"cut".into(), &true.into()));
    let words = plan(&["--here", "cut@2031-05-06T07:50"]);
    assert!(words.data.contains("From here on: Tuesday 6 May 2031, 07:50") && words.data.contains("already begun"));
    // A start begins again, whatever the file says of where the maker stood.
    let stood = super::run(&["example", "warm-cabinet"])
        .data
        .replace("week: (", "week: (\n reached: Some((task: \"cut\", began: \"2031-05-06 07:50\")),");
    let anew = run_with(&["plan", "-", "--start", "2031-05-07T09:00", "--zone", "Etc/UTC", "--json"], &stood).json();
    assert_eq!((&anew["tasks"][0]["key"], &anew["start"]), (&"sanitise".into(), &"2031-05-07T09:00:00".into()));
}

#[test]
fn what_falls_into_impossible_hours_is_told_with_what_would_help() {
    let design = |mark: &str| {
        let busy = format!("week: (\n busy: [(from: \"2031-05-07 09:10\", to: \"2031-05-07 12:00\"{mark})],");
        super::run(&["example", "warm-cabinet"]).data.replace("week: (", &busy)
    };
    let arguments = ["plan", "-", "--start", "2031-05-07T09:00", "--zone", "Etc/UTC", "--as-of", "2031-05-06T08:00"];
    let run = |mark: &str, more: &[&str]| run_with(&[&arguments[..], more].concat(), &design(mark));
    let impossible = ", impossible: true";
    let (words, json) = (run(impossible, &[]).data, run(impossible, &["--json"]).json());
    let found = &json["impossible"];
    let (said, help) = (found["words"].as_str().unwrap(), found["help"].as_str().unwrap());
    assert!(words.contains(&format!("{said} {help}")) && said.starts_with("“Sanitise” on Wed 7 May, 09:00"), "{words}");
    assert!(words.contains("takes 10 min of busy time, when nobody can be there"), "{words}");
    assert_eq!((&found["tasks"][0], &json["tasks"][0]["key"]), (&"sanitise".into(), &"sanitise".into()));
    let lost =
        |of: &serde_json::Value| of.as_array().unwrap().iter().any(|lost| lost["by"] == "busy" && lost["impossible"] == true);
    assert!(lost(&json["tasks"][0]["lost"]) && lost(&json["taken"]), "{json}");
    // The time that it offers works.
    let offered = help.strip_prefix("Begin on ").unwrap().strip_suffix(": then somebody can be there for every task.").unwrap();
    let again = run_with(
        &["plan", "-", "--start", offered, "--zone", "Etc/UTC", "--as-of", "2031-05-06T08:00", "--json"],
        &design(impossible),
    );
    assert_eq!(again.json()["impossible"], serde_json::Value::Null);
    assert_eq!(run("", &["--json"]).json()["impossible"], serde_json::Value::Null, "disliked hours are none");
}

#[test]
fn times_may_be_written_as_a_maker_says_them() {
    for (said, written) in [
        (["--start", "tomorrow 9"], ["--start", "2031-05-07T09:00"]),
        (["--soon", "Fri 18:30"], ["--soon", "2031-05-09T18:30"]),
        (["--finished-by", "20 June 5:30 pm"], ["--finished-by", "2031-06-20T17:30"]),
        (["--here", "cut@7:50"], ["--here", "cut@2031-05-06T07:50"]),
    ] {
        assert_eq!(plan(&said).data, plan(&written).data, "{said:?}");
        assert_eq!(plan(&said).code, 0, "{said:?}");
    }
}

#[test]
fn a_time_that_cannot_be_kept_ends_with_one_and_offers_the_earliest() {
    let past = plan(&["--finished-by", "2031-05-06T07:00"]);
    assert_eq!((past.code, past.data.as_str()), (1, ""));
    assert!(past.words.contains("is in the past: it is Tue 6 May, 08:00 now"), "{}", past.words);
    let soon = plan(&["--finished-by", "2031-05-07T12:00"]);
    assert_eq!((soon.code, soon.data.as_str()), (1, ""));
    assert!(soon.words.contains("cannot end by"), "{}", soon.words);
    // What it offers works.
    let offered = soon.words.split_once("it ends on ").unwrap().1.split_once(" at the earliest").unwrap().0;
    assert_eq!(plan(&["--finished-by", offered]).code, 0, "{offered}");
}

#[test]
fn wrong_options_end_with_two_and_say_what_to_write() {
    for (more, said) in [
        (&["--start", "next Friday"][..], "2031-05-09 18:30"),
        (&["--start", "2031-05-09"], "2031-05-09 18:30"),
        (&["--zone", "Moon/Crater", "--start", "2031-05-09T10:00"], "Etc/UTC"),
        (&["--here", "cut"], "TASK@WHEN"),
        (&["--here", "cutt@2031-05-06T07:00"], "did you mean `cut`?"),
        (&["--start", "2031-05-09T10:00", "--soon", "2031-05-09T10:00"], "cannot be used with"),
        (&["--start", "2031-05-09T10:00", "--here", "cut@2031-05-09T10:00"], "cannot be used with"),
        (&["--as-of", "noon"], "2031-05-09 18:30"),
    ] {
        let file = example("warm-cabinet");
        let run = run(&[&["plan", &file][..], more].concat());
        assert_eq!((run.code, run.data.as_str()), (2, ""), "{more:?}: {}", run.words);
        assert!(run.words.contains(said), "{more:?}: {}", run.words);
    }
}

#[test]
fn a_stage_that_fails_ends_with_one_and_the_tasks_before_it_are_planned() {
    let run = plan(&["--start", "2031-05-06T17:30", "--set", "mould_count=1"]);
    assert_eq!(run.code, 1);
    assert!(run.words.starts_with("vatsketch: draining: the curd does not fit"), "{}", run.words);
    assert!(run.data.contains("Stir in the rennet") && run.data.contains("The plan ends before “Moulds and draining”"));
    assert!(!run.data.contains("Finished: ") && !run.data.contains("Soak ends"));
    let nothing = plan(&["--start", "2031-05-06T17:30", "--set", "fat_target_percent=9", "--set", "cream_strength_percent=10"]);
    assert_eq!((nothing.code, nothing.data.as_str()), (1, ""));
    assert!(nothing.words.contains("vatsketch: milk: ") && nothing.words.contains("nothing to plan"), "{}", nothing.words);
}

/// `CET` is a zone of the IANA list whose clock goes back on 2031-10-26 at 03:00, the last Sunday of October, from CEST to CET.
#[test]
fn the_two_passes_of_a_repeated_hour_are_told_apart() {
    let file = example("warm-cabinet");
    let asked = ["--zone", "CET", "--start", "2031-10-26T00:30", "--as-of", "2031-10-25T20:00"];
    let answer = run(&[&["plan", &file, "--json"], &asked[..]].concat()).json();
    let tasks = answer["tasks"].as_array().unwrap();
    let moments: Vec<jiff::Timestamp> =
        tasks.iter().map(|task| task["start_with_offset"].as_str().unwrap().parse().unwrap()).collect();
    for (task, moment) in tasks.iter().zip(&moments) {
        let (plain, full) = (task["start"].as_str().unwrap(), task["start_with_offset"].as_str().unwrap());
        assert!(full.starts_with(plain) && (full.ends_with("+02:00") || full.ends_with("+01:00")), "{plain}, {full}");
        let passed_min = (moment.as_second() - moments[0].as_second()) / 60;
        assert_eq!(Some(passed_min), task["after_min"].as_i64(), "{full}");
        let end: jiff::Timestamp = task["end_with_offset"].as_str().unwrap().parse().unwrap();
        assert_eq!((end.as_second() - moment.as_second()) / 60, task["hands_min"].as_i64().unwrap());
    }
    let hour = |pass: &str| {
        tasks.iter().any(|task| {
            let full = task["start_with_offset"].as_str().unwrap();
            full.starts_with("2031-10-26T02:") && full.ends_with(pass)
        })
    };
    assert!(hour("+02:00") || hour("+01:00"), "no task lies in the hour that comes twice");
    for name in ["as_of_with_offset", "start_with_offset", "finished_with_offset"] {
        assert!(answer[name].as_str().is_some_and(|at| at.parse::<jiff::Timestamp>().is_ok()), "{name}: {}", answer[name]);
    }
    assert_eq!(answer["wish"]["at_with_offset"], "2031-10-26T00:30:00+02:00");
    assert_eq!(answer["taken"][0]["from_with_offset"].as_str().map(str::len), Some(25));

    let text = run(&[&["plan", &file], &asked[..]].concat()).data;
    let paper = run(&[&["export", &file, "--to", "-", "--as", "txt"], &asked[..]].concat()).data;
    for text in [text, paper] {
        assert!(text.contains(" CET") || text.contains(" CEST"), "{text}");
        let noon = text.lines().filter(|line| line.contains("12:")).all(|line| !line.contains(" CET") && !line.contains(" CEST"));
        assert!(noon, "an hour that comes once needs no name: {text}");
    }
    let calendar = run(&[&["export", &file, "--to", "-", "--as", "ics"], &asked[..]].concat()).data;
    let mut start = "";
    for line in calendar.lines() {
        start = line.strip_prefix("DTSTART:").unwrap_or(start);
        if let Some(end) = line.strip_prefix("DTEND:") {
            assert!(end > start && end.ends_with('Z') == start.ends_with('Z'), "{start} to {end}");
        }
    }
    assert!(calendar.lines().any(|line| line.starts_with("DTSTART:20311026T0") && line.ends_with('Z')), "{calendar}");
}
