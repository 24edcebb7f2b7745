//! Vinegar, pouring off, oil, rolling the jars.

use super::task::{Task, may_wait};
use crate::design::{Design, KeepingDesign, KeptIn, Stage};
use crate::law::growth::TABLE_B_PH;
use crate::plan::hands::{
    COVER_JAR, LAY_CHEESE, METER, POUR_OFF_JAR, ROLL_JAR, ROLL_LATEST, ROLL_SOONEST, VINEGAR_WAITS, visit_min, whole,
};
use crate::plan::{Gap, KeptPlan};
use crate::process::PicklingOutcome;

const DAY_MIN: f64 = 24.0 * 60.0;

/// Adds what follows the drying: into the vinegar, and after the soak a measured pH and perhaps oil.
///
/// `kept`: the keeping as far as the warnings allow it
pub(super) fn add_vinegar(all: &mut Vec<Task>, (design, kept): (&Design, &KeptPlan), pickling: &PicklingOutcome) {
    let kept_in = kept.keeping.kept_in;
    let jars = f64::from(pickling.jars.max(1));
    let oil_s = if kept_in == KeptIn::Oil { POUR_OFF_JAR.value * jars } else { 0.0 };
    if !design.pickling.pickled {
        if oil_s > 0.0 {
            let hands_min = visit_min(oil_s);
            all.push(Task::new("oil", Stage::Keeping, "Cover with oil", hands_min, Gap::fixed(hands_min)));
        }
        return;
    }
    let cover_min = visit_min(LAY_CHEESE.value * f64::from(pickling.cheese_count) + COVER_JAR.value * jars);
    let soak = may_wait(whole(60.0 * design.pickling.pickling_h).max(cover_min), whole(60.0 * VINEGAR_WAITS.value));
    all.push(
        Task::new("vinegar", Stage::Pickling, "Cover with vinegar", cover_min, soak)
            .saying("Do not shorten the soak: the centre sours last."),
    );
    let name = match kept_in {
        KeptIn::Oil => "Measure pH, pour off, cover with oil",
        KeptIn::Vinegar => "Measure pH",
        KeptIn::Bare => "Measure pH, take out",
    };
    let sour_min = visit_min(METER.value + oil_s);
    all.push(
        Task::new("sour", Stage::Keeping, name, sour_min, Gap::fixed(sour_min))
            .saying(format!("At the centre of one cheese and in a blended sample. A modelled pH is no proof.{}", about_oil(kept))),
    );
}

/// Returns when oil may be poured, as a sentence with a space before it; nothing where none was chosen.
fn about_oil(kept: &KeptPlan) -> String {
    let limit = TABLE_B_PH.value;
    match kept.keeping.kept_in {
        KeptIn::Oil => format!(" If either is pH {limit} or above, pour no oil: leave the jars in the cold vinegar."),
        KeptIn::Vinegar | KeptIn::Bare if kept.without_oil => {
            format!(" No oil unless both are below pH {limit}: this plan has none.")
        }
        KeptIn::Vinegar | KeptIn::Bare => String::new(),
    }
}

/// Returns the rest of jars under oil, and their rolling every few days for as long as they are kept.
pub(super) fn rolling(design: &KeepingDesign, jars: u32) -> Vec<Task> {
    if design.kept_in != KeptIn::Oil {
        return Vec::new();
    }
    let (soonest_d, latest_d) = (ROLL_SOONEST.value, ROLL_LATEST.value);
    let times = (design.keeping_days / (0.5 * (soonest_d + latest_d))).floor().max(0.0) as u32;
    let hands_min = visit_min(ROLL_JAR.value * f64::from(jars.max(1)));
    let rest = Task::new("rest", Stage::Keeping, "Let the jars rest in the cold", 0, every_few_days())
        .saying("There is no air under oil: keep the jars cold from the first hour to the last.");
    let rolls = (1..=times).map(|time| {
        Task::new(format!("roll_{time}"), Stage::Keeping, format!("Roll the jars, {time}"), hands_min, every_few_days())
    });
    std::iter::once(rest).chain(rolls).collect()
}

/// Returns the time between two rollings: any number of days within common practice.
fn every_few_days() -> Gap {
    let (soonest_min, latest_min) = (whole(DAY_MIN * ROLL_SOONEST.value), whole(DAY_MIN * ROLL_LATEST.value));
    Gap { least_min: soonest_min, usual_from_min: soonest_min, usual_to_min: latest_min, most_min: latest_min, shift_points: 0 }
}
