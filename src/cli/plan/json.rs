//! The week for another program: keys that never change, local times as ISO 8601 has them, lengths in minutes.

use crate::batch::Batch;
use crate::caution::plan_end;
use crate::design::{Stage, Wish};
use crate::export::json_cautions;
use crate::plan::{Counted, CountedTask, KitchenWeek, Lost, Now, Pass, Reason, Stretch, Taken, TakenSpan, TurnsOffer, WeekTask};
use serde_json::{Value, json};

pub(super) fn of_week(batch: &Batch, week: &KitchenWeek, turns: Option<&TurnsOffer>, now: &Now) -> Value {
    let last = week.tasks.iter().find(|task| task.is_last_day());
    json!({
        "title": batch.design.title,
        "wish": wish(batch.design.week.wish, now),
        "zone": week.zone,
        "as_of": now.at.to_string(),
        "start": week.tasks.first().map(|task| task.start.to_string()),
        // Whether a slow cheese too is sour by then.
        "end": plan_end(batch).map(|end| end.key()),
        "finished": week.finished.map(|finished| finished.to_string()),
        // The name of the same time before, for scripts.
        "ready": week.finished.map(|finished| finished.to_string()),
        // The same times once more, with their distance from UTC: an hour that the clock repeats is told from its like.
        "as_of_with_offset": now.with_offset(now.at),
        "start_with_offset": week.tasks.first().map(|task| task.start_pass.with_offset(task.start)),
        "finished_with_offset": week.finished.zip(week.finished_pass.as_ref()).map(|(at, pass)| pass.with_offset(at)),
        "last_day": last.map(|task| task.start.date().to_string()),
        "points": week.points,
        "alarms": week.tasks.iter().filter(|task| task.wakes).map(|task| task.start.to_string()).collect::<Vec<_>>(),
        "tasks": week.tasks.iter().map(task).collect::<Vec<_>>(),
        "reasons": week.reasons.iter().map(|why| reason(why, week)).collect::<Vec<_>>(),
        "impossible": week.impossible.as_ref().map(|found| json!({ "tasks": found.tasks, "words": found.words, "help": found.help })),
        "stretches": week.stretches.iter().map(stretch).collect::<Vec<_>>(),
        "taken": week.taken.iter().map(taken).collect::<Vec<_>>(),
        "fewer_turns": turns.map(|offer| {
            json!({ "turn_count": offer.turn_count, "turn_gap_h": offer.turn_gap_h, "words": offer.words })
        }),
        "ends_before": week.ends_before.map(Stage::key),
        "cautions": json_cautions(batch),
    })
}

/// Returns the same members where no time is wished; what belongs to the clock is null.
pub(super) fn of_open(batch: &Batch, counted: &Counted, now: &Now) -> Value {
    json!({
        "title": batch.design.title,
        "wish": wish(batch.design.week.wish, now),
        "zone": null, "as_of": now.at.to_string(), "start": null, "end": plan_end(batch).map(|end| end.key()), "finished": null, "ready": null,
        "as_of_with_offset": now.with_offset(now.at), "start_with_offset": null, "finished_with_offset": null, "last_day": null,
        "points": 0, "alarms": [],
        "tasks": counted.tasks.iter().map(counted_task).collect::<Vec<_>>(),
        "reasons": [], "impossible": null, "stretches": [], "taken": [], "fewer_turns": null,
        "ends_before": counted.ends_before.map(Stage::key),
        "cautions": json_cautions(batch),
    })
}

/// Returns the wish; its kinds keep the words that scripts compare them with.
fn wish(wish: Wish, now: &Now) -> Value {
    let (key, at) = match wish {
        Wish::Open => ("open", None),
        Wish::StartAt(at) => ("start_at", Some(at)),
        Wish::SoonAfter(at) => ("soon_after", Some(at)),
        Wish::FinishedBy(at) => ("ready_by", Some(at)),
    };
    json!({ "kind": key, "at": at.map(|at| at.to_string()), "at_with_offset": at.map(|at| now.with_offset(at)) })
}

fn task(task: &WeekTask) -> Value {
    json!({
        "key": task.key, "stage": task.stage.key(), "name": task.name, "what": task.what, "note": task.note,
        "start": task.start.to_string(), "end": task.end.to_string(),
        "start_with_offset": task.start_pass.with_offset(task.start), "end_with_offset": task.end_pass.with_offset(task.end),
        "after_min": task.after_min, "hands_min": task.hands_min,
        "shift_min": task.shift_min, "lost": task.lost.iter().map(lost).collect::<Vec<_>>(), "wakes": task.wakes, "begun": task.begun,
    })
}

fn counted_task(task: &CountedTask) -> Value {
    json!({
        "key": task.key, "stage": task.stage.key(), "name": task.name, "what": task.what, "note": task.note,
        "start": null, "end": null, "start_with_offset": null, "end_with_offset": null, "after_min": task.after_min, "hands_min": task.hands_min,
        "shift_min": 0, "lost": [], "wakes": false, "begun": false,
    })
}

const fn by(by: Taken) -> &'static str {
    match by {
        Taken::Sleep => "sleep",
        Taken::Work => "work",
        Taken::Busy => "busy",
    }
}

fn lost(lost: &Lost) -> Value {
    json!({ "by": by(lost.by), "minutes": lost.minutes, "points": lost.points, "impossible": lost.impossible })
}

fn reason(reason: &Reason, week: &KitchenWeek) -> Value {
    let task = reason.handling.and_then(|at| week.tasks.get(at)).filter(|task| reason.words.contains(&task.name));
    json!({ "points": reason.points, "task": task.map(|task| &task.key), "words": reason.words })
}

fn stretch(stretch: &Stretch) -> Value {
    json!({
        "stage": stretch.stage.key(), "reckoned_min": stretch.reckoned_min, "planned_min": stretch.planned_min,
        "loss_percent": stretch.loss_percent, "words": stretch.words,
    })
}

fn taken(span: &TakenSpan) -> Value {
    let with_offset = |at, offset| Pass::only(offset).with_offset(at);
    json!({
        "by": by(span.by), "from": span.from.to_string(), "to": span.to.to_string(), "impossible": span.impossible,
        "from_with_offset": with_offset(span.from, span.from_offset), "to_with_offset": with_offset(span.to, span.to_offset),
    })
}
