//! How fast a germ could grow in a cut.

use vatsketch::batch::batch;
use vatsketch::curve::{SectionKey, growth_words, section};
use vatsketch::design::{Design, Stage};
use vatsketch::law::growth::HeldBackBy;
use vatsketch::process::{GermHold, GermLine, GermsNow};

#[test]
fn each_place_of_the_cut_has_its_growth_the_centre_and_the_rim_too() {
    let made = batch(&Design::default()).unwrap();
    for share in [0.0, 0.03, 0.5, 1.0] {
        let cut = section(&made, SectionKey::Germs, share, Some(GermLine::Listeria)).unwrap();
        let growth = cut.growth.as_ref().unwrap();
        assert_eq!(growth.line, GermLine::Listeria);
        assert_eq!(growth.places.iter().map(|(log10, _)| *log10).collect::<Vec<_>>(), cut.values);
        let heights = cut.heights_mm.len();
        let (middle, rim) = (heights / 2, (cut.radii_mm.len() - 1) * heights + heights / 2);
        assert_eq!((growth.centre, growth.rim), (growth.places[middle], growth.places[rim]));
        assert!(growth.lines().iter().all(|line| cut.in_words.contains(line)), "{}", cut.in_words);
    }
    assert_eq!(section(&made, SectionKey::Moisture, 0.5, Some(GermLine::Listeria)).unwrap().growth, None);
}

/// Drying goes from outside in: in the first day the rim is held back by its water before the centre is.
#[test]
fn the_dry_rim_is_held_back_by_water() {
    let made = batch(&Design::default()).unwrap();
    let germs = made.germs.as_ref().unwrap();
    let drying = germs.met_in(Stage::Drying).unwrap();
    let at = |place| germs.now(GermLine::Listeria, Stage::Drying, 20.0, place).unwrap();
    assert_eq!(at(drying.rim).held_back_by, GermHold::Law(HeldBackBy::Water));
    assert!(at(drying.rim).rate_per_h < at(drying.centre).rate_per_h);
}

#[test]
fn no_growth_is_said_to_be_no_proof() {
    let said = |rate_per_h| growth_words(1.0, &GermsNow { rate_per_h, held_back_by: GermHold::Culture });
    assert_eq!(
        said(0.0),
        "1.0 tenfold steps so far; no growth foreseen by this model, not a proof; held back most by the culture, grown dense"
    );
    // By hand: ln 10 / 0.01 = 230.3 h = 9.6 days.
    assert!(said(0.01).contains("tenfold in 10 days"), "{}", said(0.01));
    assert!(said(1e-9).contains("more than 999 days"), "{}", said(1e-9));
}
