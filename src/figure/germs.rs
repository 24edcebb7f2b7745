//! The figures of germs: how far they could grow on the whole way.

use super::figure::Figure;
use crate::design::{Stage, Unit};
use crate::process::{GermCourse, GermLine, GermsOutcome};

const DOSE: &str = "potential growth at the worst place of the cheese from the cold milk, or from the end of the hold where raw milk is pasteurised in the vat, to the end of the keeping, for germs that grow at once, whatever number there is at the start; how many germs there are, new ones and toxin are not in it";
const LAG: &str = "the same for germs new to the milk, which start slowly";
const MEAN: &str = "log₁₀ of the mean increase over the cheese: what a sample of a whole one would find";
const AIRLESS: &str =
    "hours inside the cheese or in the jar with temperature, pH and water activity above all published least values";
const YEAST: &str = "a published law of dairy yeasts, 2 to 20 °C and pH 4 to 7.5; gas in a closed jar";
const MOULD: &str = "radius of a colony on the face in the air; the law is from fruit";

/// The figures that belong to no course.
pub(super) const BESIDE: [&str; 4] = ["airless_h", "cold_airless_h", "yeast_log10", "mould_mm"];

/// Returns whether a figure speaks of the growth of germs, so that what is left out of it must be said with it.
///
/// # Example
/// ```
/// use vatsketch::figure::is_of_germs;
/// assert!(is_of_germs("listeria_log10") && !is_of_germs("cream_g"));
/// ```
#[must_use]
pub fn is_of_germs(key: &str) -> bool {
    BESIDE.contains(&key) || GermLine::ALL.into_iter().flat_map(names).any(|(named, _)| named == key)
}

/// Keys and names of one line's figures: the increase, that with lag, the mean over the cheese.
type Names = [(&'static str, &'static str); 3];

const fn names(line: GermLine) -> Names {
    match line {
        GermLine::Listeria => [
            ("listeria_log10", "Listeria monocytogenes could grow by"),
            ("listeria_with_lag_log10", "Listeria monocytogenes, newly come, could grow by"),
            ("listeria_mean_log10", "Listeria monocytogenes in a whole cheese could grow by"),
        ],
        GermLine::Staphylococcus => [
            ("staphylococcus_log10", "Staphylococcus aureus could grow by"),
            ("staphylococcus_with_lag_log10", "Staphylococcus aureus, newly come, could grow by"),
            ("staphylococcus_mean_log10", "Staphylococcus aureus in a whole cheese could grow by"),
        ],
        GermLine::StaphylococcusWithoutLactic => [
            ("staphylococcus_without_lactic_log10", "Staphylococcus aureus could grow by, lactic acid not counted"),
            (
                "staphylococcus_without_lactic_with_lag_log10",
                "Staphylococcus aureus, newly come, could grow by, lactic acid not counted",
            ),
            (
                "staphylococcus_without_lactic_mean_log10",
                "Staphylococcus aureus in a whole cheese could grow by, lactic acid not counted",
            ),
        ],
        GermLine::Salmonella => [
            ("salmonella_log10", "Salmonella could grow by"),
            ("salmonella_with_lag_log10", "Salmonella, newly come, could grow by"),
            ("salmonella_mean_log10", "Salmonella in a whole cheese could grow by"),
        ],
        GermLine::Coli => [
            ("coli_log10", "Escherichia coli could grow by"),
            ("coli_with_lag_log10", "Escherichia coli, newly come, could grow by"),
            ("coli_mean_log10", "Escherichia coli in a whole cheese could grow by"),
        ],
        GermLine::Cereus => [
            ("cereus_log10", "Bacillus cereus could grow by"),
            ("cereus_with_lag_log10", "Bacillus cereus, newly come, could grow by"),
            ("cereus_mean_log10", "Bacillus cereus in a whole cheese could grow by"),
        ],
        GermLine::ColdBotulinum => [
            ("cold_botulinum_log10", "Cold-type botulinum could grow by, without air"),
            ("cold_botulinum_with_lag_log10", "Cold-type botulinum, newly come, could grow by, without air"),
            ("cold_botulinum_mean_log10", "Cold-type botulinum in a whole cheese could grow by, without air"),
        ],
    }
}

pub(super) fn figures(germs: &GermsOutcome) -> Vec<Figure> {
    let number = |key, label, value, unit, decimals, law| Figure::number(Stage::Keeping, key, label, value, unit, decimals, law);
    let mut all: Vec<Figure> = germs.courses.iter().flat_map(of_course).collect();
    all.extend([
        number(
            "airless_h",
            "Hours in which warm-type botulinum could grow without air",
            germs.airless.proteolytic_h,
            Unit::Hour,
            0,
            AIRLESS,
        ),
        number(
            "cold_airless_h",
            "Hours in which cold-type botulinum could grow without air",
            germs.airless.cold_h,
            Unit::Hour,
            0,
            AIRLESS,
        ),
    ]);
    all.extend(
        germs.yeast_log10.map(|log10| number("yeast_log10", "Yeasts in the jar could grow by", log10, Unit::Log10, 1, YEAST)),
    );
    all.push(number("mould_mm", "A spot of blue mould could grow to a radius of", germs.mould_mm, Unit::Millimetre, 0, MOULD));
    all
}

fn of_course(course: &GermCourse) -> [Figure; 3] {
    let [(key, label), (lag_key, lag_label), (mean_key, mean_label)] = names(course.line);
    let number = |key, label, value, law| Figure::number(Stage::Keeping, key, label, value, Unit::Log10, 1, law);
    let increase = number(key, label, course.increase_log10(), DOSE).between(Some(course.likely_log10()));
    // The one that cold does not stop, and the one whose toxin stays.
    let first = matches!(course.line, GermLine::Listeria | GermLine::Staphylococcus);
    [
        if first { increase.lead() } else { increase },
        number(lag_key, lag_label, course.increase_with_lag_log10(), LAG),
        number(mean_key, mean_label, course.mean_log10, MEAN),
    ]
}
