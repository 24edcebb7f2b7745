//! The plan as PDF, read back by another program.

use super::reader::{read, squeezed};
use crate::report::sample;
use vatsketch::curve::Curve;
use vatsketch::export::{Paper, Sheets, pdf};
use vatsketch::report::{LawRow, Plan, plan};
use vatsketch::units::Units;
use vatsketch::words::caution_words;

fn full_plan() -> Plan {
    Plan { curves: sample::curves(), ..plan(&sample::batch()) }
}

fn titled(title: &str) -> Plan {
    Plan { title: title.to_owned(), ..full_plan() }
}

/// Whether the file holds these bytes somewhere.
fn holds(bytes: &[u8], wanted: &str) -> bool {
    bytes.windows(wanted.len()).any(|window| window == wanted.as_bytes())
}

#[test]
fn the_text_can_be_searched_for_title_verbs_amounts_and_cautions() {
    let plan = full_plan();
    let read = read(&pdf(&plan, &Sheets::all(Paper::A4)).unwrap());
    let count = read.pages.len();
    // What goes on overleaf has the foot of the page in its midst.
    let letters =
        (1..=count).fold(read.letters, |letters, page| letters.replace(&squeezed(&format!("{}{page}/{count}", plan.subtitle)), ""));
    let mut wanted = vec![plan.title.clone(), plan.subtitle.to_owned()];
    wanted.extend(plan.steps.iter().flat_map(|step| [format!("{} {}", step.verb, step.what), step.if_off.clone()]));
    wanted.extend(plan.steps.iter().flat_map(|step| step.targets.iter().map(|target| target.amount.to_string())));
    wanted.extend(plan.shopping.iter().flat_map(|row| [row.what.to_owned(), row.amount.to_string()]));
    wanted.extend(plan.cautions.iter().flat_map(|caution| {
        let said = caution_words(caution, Units::METRIC);
        [said.what, said.short]
    }));
    wanted.extend(plan.sources.iter().map(|source| source.title.clone()));
    // A law names its place in a source by the number that the source has in the list.
    let numbered = |row: &LawRow| {
        let found = (1..).zip(&plan.sources).find_map(|(number, source)| Some((number, row.source.strip_prefix(&*source.title)?)));
        let source = found.map(|(number, place)| format!("{} [{number}]", place.trim_start_matches("; ")));
        format!("{} ({})", row.law, source.as_ref().map_or(row.source.as_str(), |source| source.trim()))
    };
    wanted.extend(plan.laws.iter().map(numbered));
    for curve in &plan.curves {
        wanted.extend([curve.title.to_owned(), format!("{} ({})", curve.x.label, curve.x.unit)]);
        wanted.extend(curve.series.iter().map(|series| series.name.to_owned()));
        wanted.extend(curve.events.iter().map(|event| event.name.to_owned()));
    }
    for text in wanted {
        assert!(letters.contains(&squeezed(&text)), "`{text}` cannot be found on the paper");
    }
    assert!(!letters.contains('\u{fffd}'), "a letter has no meaning for a reader");
}

#[test]
fn the_pages_are_a4_and_letter() {
    // ISO 216: A4 is 210 × 297 mm. ANSI/ASME Y14.1: Letter is 8.5 × 11 in. A point is 1/72 in.
    let point_mm = 25.4 / 72.0;
    for (paper, width_mm, height_mm) in [(Paper::A4, 210.0, 297.0), (Paper::Letter, 215.9, 279.4)] {
        let pages = read(&pdf(&full_plan(), &Sheets::all(paper)).unwrap()).pages;
        assert!(!pages.is_empty());
        for (width, height) in pages {
            // A tenth of a millimetre: sizes are rounded to a thousandth of a point in the file.
            assert!((f64::from(width) * point_mm - width_mm).abs() < 0.1, "{paper:?}: {width} wide");
            assert!((f64::from(height) * point_mm - height_mm).abs() < 0.1, "{paper:?}: {height} high");
        }
    }
}

#[test]
fn the_same_plan_gives_the_same_bytes_and_another_gives_others() {
    let once = pdf(&full_plan(), &Sheets::all(Paper::A4)).unwrap();
    assert!(once == pdf(&full_plan(), &Sheets::all(Paper::A4)).unwrap(), "two runs differ");
    assert!(once != pdf(&titled("Another vat"), &Sheets::all(Paper::A4)).unwrap());
    assert!(!holds(&once, "/CreationDate") && !holds(&once, "/ModDate"), "the file tells when it was made");
}

#[test]
fn the_file_is_tagged_has_a_language_a_title_and_its_fonts_inside() {
    let bytes = pdf(&full_plan(), &Sheets::all(Paper::A4)).unwrap();
    // ISO 32000-1, 14.7 and 14.8: a tagged file has a structure tree, and its catalogue says that it is marked.
    assert!(holds(&bytes, "/MarkInfo") && holds(&bytes, "/StructTreeRoot"));
    assert!(holds(&bytes, "/Lang(en-GB)") || holds(&bytes, "/Lang (en-GB)"));
    assert!(holds(&bytes, "NotoSans-Regular") && holds(&bytes, "NotoSans-Bold"));
    assert_eq!(read(&bytes).title, squeezed("A trial vat, invented"));
}

#[test]
fn a_title_is_printed_letter_for_letter_whatever_markup_it_looks_like() {
    let titles = [
        r#""quoted" and 'single'"#,
        r"#panic() #set page(width: 1mm) $x^2$ *bold* _it_ \ `raw` <label> @ref",
        "= heading - list + enum / term: // comment /* block */",
        "#json(\"data.json\") #read(\"/etc/hostname\") ]#[ } {",
        "Käse → ½ ✓ ⚠ Łódź",
    ];
    for title in titles {
        let read = read(&pdf(&titled(title), &Sheets::all(Paper::A4)).unwrap());
        assert!(read.letters.starts_with(&squeezed(title)), "`{title}` became {:.60}", read.letters);
        assert_eq!(read.title, squeezed(title));
    }
}

#[test]
fn letters_that_no_font_has_or_that_run_from_right_to_left_break_nothing() {
    for title in ["🧀🥛 vat", "גבינה", "جبن", "奶酪", "\u{202e}vat\u{202c}", "a\u{0}b", "line\nbreak\ttab"] {
        let bytes = pdf(&titled(title), &Sheets::all(Paper::Letter)).unwrap();
        let read = read(&bytes);
        assert!(read.letters.contains(&squeezed(vatsketch::words::FROM_A_MODEL)), "{title:?} broke the page");
    }
}

/// An empty box says nothing, and what turns the writing around could make it say something else.
#[test]
fn a_letter_that_no_font_has_is_printed_as_a_question_mark() {
    for (title, printed) in
        [("奶酪 Trial", "?? Trial"), ("Trial 🧀!", "Trial ?!"), ("ชี Trial", "?? Trial"), ("Käse ½ Сыр", "Käse ½ Сыр")]
    {
        assert!(holds(&pdf(&titled(title), &Sheets::all(Paper::A4)).unwrap(), printed), "{title}");
    }
    let turned = pdf(&titled("a\u{202e}b"), &Sheets::all(Paper::A4)).unwrap();
    assert!(!holds(&turned, "\u{202e}"), "what turns the writing around is not printed");
}

#[test]
fn words_of_the_maker_are_as_harmless_in_the_note_as_in_the_title() {
    let note = "#while true {} $ * \\ < \"";
    let plan = Plan { note: note.to_owned(), ..full_plan() };
    assert!(read(&pdf(&plan, &Sheets::all(Paper::A4)).unwrap()).letters.contains(&squeezed(note)));
}

#[test]
fn a_plan_that_stopped_is_printed_with_its_reason() {
    let plan = plan(&sample::failed());
    let letters = read(&pdf(&plan, &Sheets::all(Paper::Letter)).unwrap()).letters;
    for halt in &plan.stopped {
        assert!(letters.contains(&squeezed(&halt.why)), "{}", halt.why);
    }
    assert!(letters.contains(&squeezed("Milk: a fat target of 9.0 %")));
}

#[test]
fn a_curve_with_holes_or_without_width_is_drawn_as_far_as_it_goes() {
    let mut curves = sample::curves();
    curves[0].series[0].points[3] = [f64::NAN, f64::INFINITY];
    curves[0].x.most = curves[0].x.least;
    curves[1].y.least = f64::NAN;
    curves[1].events[0].at = -1.0;
    let hollow = Curve { series: vec![], bands: vec![], events: vec![], ..curves[1].clone() };
    let said = Curve { empty_because: Some("Waits for the milk.".to_owned()), ..hollow.clone() };
    curves.extend([hollow, said]);
    let plan = Plan { curves, ..full_plan() };
    assert!(read(&pdf(&plan, &Sheets::all(Paper::A4)).unwrap()).letters.contains("Waitsforthemilk."));
}
