//! How far germs could grow in a batch: against the law itself where all stays the same, against the chapter's own runs, and what must always hold.

use proptest::prelude::*;
use std::f64::consts::LN_10;
use vatsketch::batch::{batch, batch_after, batch_given};
use vatsketch::design::{CultureBy, Design, KeepingDesign, PicklingDesign, SouredBy, Stage, Value};
use vatsketch::law::growth::{Conditions, GrowthLaw, HeldBackBy, increase_log10};
use vatsketch::process::{
    DrainingOutcome, GermHold, GermLine, GermsOutcome, GermsWay, Given, SourPoint, UncertainParameters, VatOutcome, WarmingPoint,
    germs,
};

fn log10(germs: &GermsOutcome, line: GermLine) -> f64 {
    germs.of(line).unwrap().dose() / LN_10
}

/// Returns what germs could do in 2 h of vat and 36 h of moulds, all at one temperature and as sour.
fn steady(temperature_c: f64, ph: f64, lactic_mm: f64, crowd: f64) -> GermsOutcome {
    let soured = |at_h: f64| SourPoint { at_h, temperature_c, ph, lactic_mm, crowd, ..SourPoint::default() };
    let warm = |at_min: f64| WarmingPoint { at_min, milk_c: temperature_c, ..WarmingPoint::default() };
    let vat = VatOutcome { curve: vec![warm(0.0), warm(120.0)], souring: vec![soured(0.0), soured(2.0)], ..VatOutcome::default() };
    let drained =
        DrainingOutcome { draining_h: 36.0, souring: vec![soured(0.0), soured(18.0), soured(36.0)], ..DrainingOutcome::default() };
    let (pickling, keeping) = (PicklingDesign::default(), KeepingDesign::default());
    germs(&GermsWay {
        vat: &vat,
        drained: Some(&drained),
        salted: None,
        dried: None,
        pickled: None,
        pickling: &pickling,
        keeping: &keeping,
    })
}

/// By hand: a rate that stays, times the hours; without a law of its own in between. Exact but for rounding.
#[test]
fn where_nothing_changes_the_dose_is_the_rate_times_the_hours() {
    for (temperature_c, ph, lactic_mm, crowd) in [(21.0, 6.5, 0.0, 0.0), (8.0, 5.9, 30.0, 0.0), (30.0, 5.3, 60.0, 0.4)] {
        let found = steady(temperature_c, ph, lactic_mm, crowd);
        for line in GermLine::ALL {
            let law = GrowthLaw::of(line.germ());
            let law = if line == GermLine::StaphylococcusWithoutLactic { law.without_lactic() } else { law };
            let place = Conditions { temperature_c, ph, water_activity: 0.993, lactic_mm, acetic_mm: 0.0 };
            // The cold type wants no air, so the vat does not count for it.
            let hours = if line.wants_no_air() { 36.0 } else { 38.0 };
            let wanted = (1.0 - crowd) * law.rate_per_h(&place) * hours;
            let got = found.of(line).unwrap().dose();
            assert!((got - wanted).abs() <= 1e-9 * wanted.max(1.0), "{}: {got}, by hand {wanted}", line.key());
        }
    }
}

/// Hours by hand: 36 h in the moulds at 21 °C and pH 6.5 lie above both published limits; at 3 °C above neither; at 8 °C above the colder alone.
#[test]
fn hours_without_air_are_counted_where_all_limits_are_passed() {
    let hours = |temperature_c, ph| {
        let airless = steady(temperature_c, ph, 0.0, 0.0).airless;
        (airless.proteolytic_h, airless.cold_h)
    };
    assert_eq!(hours(21.0, 6.5), (36.0, 36.0));
    assert_eq!(hours(8.0, 6.5), (0.0, 36.0));
    assert_eq!(hours(3.0, 6.5), (0.0, 0.0));
    assert_eq!(hours(21.0, 4.8), (36.0, 0.0));
    assert_eq!(hours(21.0, 4.5), (0.0, 0.0));
}

/// Returns the whole batch that the chapter speaks of: 36 h of draining at 21 °C, 48 h of drying in air of 40 °C, no vinegar.
fn chapters_batch(cells_million_g: Option<f64>) -> GermsOutcome {
    let mut design = Design::default();
    design.draining.draining_temperature_c = 21.0;
    design.drying.cabinet_temperature_c = 40.0;
    design.drying.drying_h = 48.0;
    design.pickling.pickled = false;
    design.keeping.keeping_days = 0.0;
    if let Some(cells) = cells_million_g {
        design.milk.soured_by = SouredBy::Culture;
        design.milk.culture_by = CultureBy::Cells;
        design.milk.culture_cells_million_g = cells;
    }
    batch(&design).unwrap().germs.unwrap()
}

/// The chapter's own runs of such a batch (chapter 4, section 0.4, our calculation): free of lag, log₁₀, for Listeria, S. aureus, Salmonella,
/// E. coli, B. cereus. It took another vat, water activity and curd, and no culture beside the germs, so a half more or less, and at least half
/// a step, is all that can be asked.
#[test]
fn a_whole_batch_is_that_of_the_chapter() {
    let lines = [GermLine::Listeria, GermLine::Staphylococcus, GermLine::Salmonella, GermLine::Coli, GermLine::Cereus];
    for (cells, wanted) in
        [(None, [15.0, 40.0, 16.0, 23.0, 28.0]), (Some(10.0), [1.3, 3.1, 2.1, 2.3, 2.3]), (Some(1.0), [1.8, 3.8, 2.7, 2.9, 3.1])]
    {
        let found = chapters_batch(cells);
        for (line, wanted) in lines.into_iter().zip(wanted) {
            let got = log10(&found, line);
            let near = (got / wanted - 1.0).abs() < 0.65 || (got - wanted).abs() < 0.6;
            assert!(near, "{}, {cells:?} million cells: {got:.2}, the chapter {wanted}", line.key());
        }
    }
}

#[test]
fn souring_early_leaves_far_less_than_none_and_more_culture_less_still() {
    let (none, little, much) = (chapters_batch(None), chapters_batch(Some(1.0)), chapters_batch(Some(10.0)));
    for line in GermLine::ALL {
        assert!(log10(&none, line) > 2.0 * log10(&little, line), "{}", line.key());
        assert!(log10(&little, line) >= log10(&much, line), "{}", line.key());
    }
}

/// The prefixes of a dose: it only grows, and the stages add up to at least the worst place.
#[test]
fn a_dose_only_grows_and_stages_add_up() {
    let germs = batch(&Design::default()).unwrap().germs.unwrap();
    assert_eq!(germs.courses.len(), GermLine::ALL.len());
    for course in &germs.courses {
        assert!(course.points.windows(2).all(|pair| pair[0].worst <= pair[1].worst && pair[0].at_h <= pair[1].at_h));
        assert!(course.points.iter().all(|point| point.centre <= point.worst && point.rim <= point.worst));
        let sum: f64 = course.by_stage.iter().map(|(_, dose)| dose).sum();
        assert!(sum >= course.dose() - 1e-9, "{}", course.line.key());
        assert!(course.mean_log10 <= course.increase_log10() + 1e-9 && course.mean_log10 >= 0.0, "{}", course.line.key());
        assert_eq!(
            course.increase_with_lag_log10(),
            increase_log10(course.dose(), course.line.germ().h0()).min(course.line.germ().most_log())
        );
    }
    let spans: Vec<Stage> = germs.spans.iter().map(|span| span.stage).collect();
    assert_eq!(spans, [Stage::Vat, Stage::Draining, Stage::Drying, Stage::Pickling, Stage::Keeping]);
    assert!(germs.spans.windows(2).all(|pair| (pair[0].ends_h - pair[1].begins_h).abs() < 1e-6));
}

/// Proportional to the rate, whatever the batch: so a band may be drawn from the range of the rate alone.
#[test]
fn the_dose_is_proportional_to_the_rate() {
    let design = Design::default();
    let usual = batch(&design).unwrap().germs.unwrap();
    let parameters = UncertainParameters { listeria_rate: 1.3, staphylococcus_rate: 0.8, ..UncertainParameters::default() };
    let other = batch_given(&design, &Given { parameters, ..Given::default() }).unwrap().germs.unwrap();
    for (line, times) in [(GermLine::Listeria, 1.3), (GermLine::Staphylococcus, 0.8), (GermLine::Salmonella, 1.0)] {
        let (got, wanted) = (log10(&other, line), times * log10(&usual, line));
        assert!((got / wanted - 1.0).abs() < 1e-9, "{}: {got}, {wanted}", line.key());
    }
}

#[test]
fn nothing_is_taken_over_that_has_changed() {
    let before = batch(&Design::default()).unwrap();
    for (key, value) in
        [("keeping_temperature_c", 12.0), ("pickling_temperature_c", 15.0), ("draining_temperature_c", 24.0), ("salt_percent", 1.0)]
    {
        let mut design = before.design.clone();
        design.set(key, Value::Number(value)).unwrap();
        let (after, _) = batch_after(&design, Some(&before)).unwrap();
        assert_eq!(after.germs, batch(&design).unwrap().germs, "{key}");
        // What is sour to its centre keeps no germ growing in the jar, however warm.
        let courses = |of: &Option<GermsOutcome>| of.as_ref().unwrap().courses.clone();
        assert_eq!(courses(&after.germs) != courses(&before.germs), key != "keeping_temperature_c", "{key}");
    }
}

/// The rate at the centre, looked up afterwards, is the slope of the dose there: by the trapezium rule between two moments of a stage. Water
/// activities are kept as short numbers (24 bits), so a thousandth of the step or less is asked for.
#[test]
fn the_rate_that_is_looked_up_is_the_slope_of_the_dose() {
    for design in [Design::default(), crate::example("first-vat")] {
        let germs = batch(&design).unwrap().germs.unwrap();
        for course in &germs.courses {
            for span in &germs.spans {
                let centre = germs.met_in(span.stage).unwrap().centre;
                let inside = |at_h: f64| (span.begins_h..=span.ends_h).contains(&at_h);
                let points: Vec<_> = course.points.iter().filter(|point| inside(point.at_h)).collect();
                let mut compared = 0;
                // A stage begins at the moment at which the one before ended, so the first points are of both.
                for pair in points.windows(2).filter(|pair| pair[0].at_h > span.begins_h && pair[1].at_h > pair[0].at_h) {
                    let rate = |at_h: f64| germs.now(course.line, span.stage, at_h - span.begins_h, centre).unwrap().rate_per_h;
                    let wanted = 0.5 * (pair[1].at_h - pair[0].at_h) * (rate(pair[0].at_h) + rate(pair[1].at_h));
                    let grown = pair[1].centre - pair[0].centre;
                    assert!(
                        (grown - wanted).abs() <= 1e-3 * wanted.max(1e-6),
                        "{}, {}: {grown}, {wanted}",
                        course.line.key(),
                        span.stage.key()
                    );
                    compared += 1;
                }
                assert!(compared > 0 || span.stage == Stage::Keeping, "{}", span.stage.key());
            }
        }
    }
}

/// Chapter 4, section 2: S. aureus grows from 7.7 °C, so a jar at 4 °C stops it and says by what; Listeria grows from -1.7 °C.
#[test]
fn what_stops_a_germ_is_named() {
    let mut design = Design::default();
    design.keeping.keeping_temperature_c = 4.0;
    design.pickling.pickled = false;
    let germs = batch(&design).unwrap().germs.unwrap();
    let centre = germs.met_in(Stage::Keeping).unwrap().centre;
    let now = |line| germs.now(line, Stage::Keeping, 24.0, centre).unwrap();
    let aureus = now(GermLine::Staphylococcus);
    assert_eq!((aureus.tenfold_h(), aureus.held_back_by), (None, GermHold::Law(HeldBackBy::Temperature)));
    assert!(now(GermLine::Listeria).tenfold_h().is_some_and(|hours| hours > 24.0));
    assert_eq!(germs.now(GermLine::ColdBotulinum, Stage::Vat, 0.5, 0).unwrap().held_back_by, GermHold::Air);
}

/// A culture that has come to its greatest density leaves no room: what holds the germs back is the culture.
#[test]
fn a_crowded_culture_holds_germs_back() {
    let germs = steady(30.0, 6.5, 0.0, 0.98);
    let now = germs.now(GermLine::Staphylococcus, Stage::Draining, 6.0, 0).unwrap();
    assert_eq!(now.held_back_by, GermHold::Culture);
    let alone = steady(30.0, 6.5, 0.0, 0.0).now(GermLine::Staphylococcus, Stage::Draining, 6.0, 0).unwrap();
    assert!((now.rate_per_h / alone.rate_per_h - 0.02).abs() < 1e-9 && alone.held_back_by != GermHold::Culture);
}

#[test]
fn a_batch_that_stops_half_way_is_counted_as_far_as_it_came() {
    let mut design = Design::default();
    design.draining.mould_count = 1;
    let germs = batch(&design).unwrap().germs.unwrap();
    assert_eq!(germs.spans.iter().map(|span| span.stage).collect::<Vec<_>>(), [Stage::Vat]);
    design.vat.bath_set_temperature_c = 25.0;
    assert_eq!(batch(&design).unwrap().germs, None, "no vat, nothing to count");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    /// Warmer or longer draining never has less, whatever else.
    #[test]
    fn a_warmer_draining_has_no_less_of_a_germ_that_likes_it(cold_c in 4.0..14.0_f64, warmer_k in 2.0..8.0_f64) {
        let at = |temperature_c: f64| {
            let mut design = Design::default();
            design.draining.draining_temperature_c = temperature_c;
            design.drying.drying_h = 4.0;
            batch(&design).unwrap().germs.unwrap()
        };
        let (cold, warm) = (at(cold_c), at(cold_c + warmer_k));
        for line in GermLine::ALL {
            let in_moulds = |germs: &GermsOutcome| germs.of(line).unwrap().in_stage_log10(Stage::Draining);
            prop_assert!(in_moulds(&warm) >= in_moulds(&cold), "{}", line.key());
            prop_assert!(in_moulds(&warm).is_finite());
        }
    }
}
