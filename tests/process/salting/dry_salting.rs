//! Salt sprinkled on at the turns of a batch, and the pepper.

use vatsketch::batch::{Batch, batch};
use vatsketch::caution::cautions;
use vatsketch::design::{Design, SaltingDesign};
use vatsketch::law::Matter;
use vatsketch::process::{DrainingOutcome, SaltPoint, SaltingOutcome, salting};

fn made(change: impl FnOnce(&mut Design)) -> Batch {
    let mut design = Design::default();
    change(&mut design);
    batch(&design).unwrap()
}

fn salted(change: impl FnOnce(&mut Design)) -> SaltingOutcome {
    made(change).salting.done().unwrap().clone()
}

#[test]
fn the_salt_begins_at_the_first_turn_and_is_all_there_at_unmoulding() {
    let salted = salted(|_| ());
    let design = Design::default();
    let first_h = design.draining.turn_gap_h;
    for point in &salted.profile.points {
        let none = SaltPoint { at_h: point.at_h, ..SaltPoint::default() };
        assert!(point.at_h >= first_h || *point == none, "{point:?}");
    }
    let sprinkled = salted.profile.points.iter().filter(|point| point.at_h == first_h).map(|point| point.undissolved_g);
    let kept_each_turn_g = salted.salt_kept_g / f64::from(salted.cheese_count) / f64::from(design.salting.salted_turns);
    let most = sprinkled.fold(0.0, f64::max);
    // The outermost tenth of a millimetre, half an interval of the grid, takes its brine at once.
    assert!(most > 0.7 * kept_each_turn_g && most <= kept_each_turn_g, "{most} of {kept_each_turn_g} g");
    // All that stays is in the moisture or lies on the faces.
    let water_g = 1000.0 * salted.cheese.water_kg / f64::from(salted.cheese_count);
    let found_g = 0.01 * salted.unmoulded.mean_percent * water_g + salted.unmoulded.undissolved_g;
    let kept_g = salted.salt_kept_g / f64::from(salted.cheese_count);
    assert!((found_g / kept_g - 1.0).abs() < 1e-9, "{found_g} of {kept_g} g");
    assert_eq!(salted.profile.points.last().unwrap().at_h, salted.unmoulded_h);
}

/// The faces are salted in turn: the first turn brings up what lay below, and an odd number of turns leaves the cheese the other way up.
#[test]
fn the_upturned_face_is_salted_and_the_cheese_is_handed_on_as_it_lies() {
    let end = |turn_count: u32, salted_turns: u32| {
        let salted = salted(|design| {
            design.draining.turn_count = turn_count;
            design.salting.salted_turns = salted_turns;
        });
        let salt = &salted.column.salt;
        (salt[0] / salted.column.layers[0], salt[salt.len() - 1] / salted.column.layers[0])
    };
    for (turn_count, on_top) in [(3, true), (4, false)] {
        let (below, top) = end(turn_count, 1);
        assert_eq!(top > below, on_top, "{turn_count} turns: {below} below, {top} on top");
    }
    // The second salting is the fresher one.
    let (below, top) = end(2, 2);
    assert!(top > 1.2 * below, "{below} {top}");
}

#[test]
fn early_salt_in_thin_cheese_goes_further_in() {
    let centre = |change: fn(&mut Design)| salted(change).unmoulded.centre_percent;
    let base = centre(|_| ());
    assert!(centre(|design| design.draining.turn_gap_h = 12.0) > base);
    assert!(centre(|design| design.draining.draining_temperature_c = 24.0) > base);
    assert!(centre(|design| design.draining.mould_count = 20) > base);
    let likely = salted(|_| ()).likely_centre_percent;
    assert!(likely.0 < base && base < likely.1, "{likely:?}");
}

#[test]
fn much_salt_late_lies_on_the_faces_when_the_cheeses_leave_the_moulds() {
    let late = made(|design| {
        design.salting.salt_percent = 6.0;
        design.salting.salted_turns = 1;
        design.draining.turn_count = 1;
        design.draining.turn_gap_h = 2.0;
    });
    let salted = late.salting.done().unwrap();
    assert!(salted.salt_lies_on_faces && salted.unmoulded.undissolved_g > 0.5, "{:?}", salted.unmoulded);
    assert!(cautions(&late).iter().any(|caution| caution.key == "salt_on_faces"));
    assert!(!made(|_| ()).salting.done().unwrap().salt_lies_on_faces);
}

#[test]
fn without_salt_the_profile_is_there_and_empty_of_salt() {
    let salted = salted(|design| design.salting.salt_percent = 0.0);
    assert!(salted.profile.points.len() >= 2 && !salted.salt_lies_on_faces);
    assert!(salted.profile.points.iter().all(|point| point.mean_percent == 0.0 && point.undissolved_g == 0.0));
    assert!(salted.profile.field.frames.iter().all(|frame| frame.values.iter().all(|value| *value == 0.0)));
}

/// A curd that was salted before: its salt is even through the thickness and counts.
#[test]
fn salt_that_the_curd_brings_is_even_from_the_start() {
    let curd = Matter { water_kg: 0.06, fat_kg: 0.02, casein_kg: 0.017, salt_kg: 0.0012, ..Matter::default() };
    let drained = DrainingOutcome {
        curd,
        turns_h: vec![6.0],
        draining_h: 12.0,
        cheese_count: 1,
        diameter_mm: 70.0,
        thickness_mm: 25.0,
        ..DrainingOutcome::default()
    };
    let design = SaltingDesign { salt_percent: 0.0, salted_turns: 0, ..SaltingDesign::default() };
    let salted = salting(&design, &drained, 18.0).unwrap();
    for percent in [salted.unmoulded.mean_percent, salted.unmoulded.surface_percent, salted.unmoulded.centre_percent] {
        assert!((percent - 2.0).abs() < 1e-9, "{percent}");
    }
}

#[test]
fn the_picture_has_few_moments_from_ladling_to_unmoulding() {
    let salted = salted(|_| ());
    let field = &salted.profile.field;
    assert!((12..=40).contains(&field.frames.len()), "{}", field.frames.len());
    assert_eq!((field.frames[0].at_h, field.frames.last().unwrap().at_h), (0.0, salted.unmoulded_h));
    assert!(field.frames.windows(2).all(|pair| pair[0].at_h < pair[1].at_h));
    let nodes = field.radii_mm.len() * field.heights_mm.len();
    assert!(field.frames.iter().all(|frame| frame.values.len() == nodes));
    let heights = field.heights_mm.len();
    let last = &field.frames.last().unwrap().values;
    assert!((f64::from(last[heights / 2]) - salted.unmoulded.centre_percent).abs() < 1e-5);
    assert_eq!(last[..heights], last[heights..]);
}

/// By hand: (2 π/4 · 6.8² + π · 6.8 · t) cm² · 2.2 g/dm², for the thickness calculated.
#[test]
fn the_pepper_covers_every_cheese_and_is_not_in_its_weight() {
    let with = salted(|design| design.salting.pepper_g_dm2 = 2.2);
    let thick_cm = 0.1 * with.thickness_mm;
    let area_cm2 = std::f64::consts::PI * (0.5 * 6.8 * 6.8 + 6.8 * thick_cm);
    assert!((with.pepper_each_g / (0.022 * area_cm2) - 1.0).abs() < 1e-12, "{}", with.pepper_each_g);
    assert!((with.pepper_g / with.pepper_each_g - f64::from(with.cheese_count)).abs() < 1e-9);
    let bare = salted(|design| design.salting.pepper_g_dm2 = 0.0);
    assert_eq!((bare.pepper_g, bare.coat_mm, bare.coat_s_m), (0.0, 0.0, 0.0));
    assert_eq!(bare.cheese, with.cheese);
}

#[test]
fn a_coat_slows_the_drying_a_little() {
    let left = |pepper| made(|design| design.salting.pepper_g_dm2 = pepper).drying.done().unwrap().end.moisture_percent;
    let (bare, thick) = (left(0.0), left(10.0));
    assert!(bare < thick && thick < bare + 2.0, "{bare} {thick}");
}
