//! The pages of the plan as pixels.

use super::reader::read;
use crate::report::sample;
use vatsketch::export::{ExportError, Paper, Sheets, pages, pdf};
use vatsketch::report::{Plan, plan};

fn full_plan() -> Plan {
    Plan { curves: sample::curves(), ..plan(&sample::batch()) }
}

#[test]
fn there_are_as_many_pages_as_the_printer_gets_and_of_the_same_shape() {
    for paper in [Paper::A4, Paper::Letter] {
        let printed = read(&pdf(&full_plan(), &Sheets::all(paper)).unwrap()).pages;
        let drawn = pages(&full_plan(), &Sheets::all(paper), 1.5).unwrap();
        assert_eq!(drawn.len(), printed.len());
        for (page, (width, height)) in drawn.iter().zip(printed) {
            // Rounded to whole pixels.
            assert!((f64::from(page.width) - 1.5 * f64::from(width)).abs() <= 0.51, "{page:?}");
            assert!((f64::from(page.height) - 1.5 * f64::from(height)).abs() <= 0.51, "{page:?}");
            assert_eq!(page.rgba.len(), 4 * page.width as usize * page.height as usize);
        }
    }
}

#[test]
fn every_page_is_white_with_ink_on_it() {
    let drawn = pages(&full_plan(), &Sheets::all(Paper::A4), 1.0).unwrap();
    for (number, page) in drawn.iter().enumerate() {
        assert!(page.rgba.chunks(4).all(|pixel| pixel[3] == 255));
        assert_eq!(page.rgba[..4], [255; 4], "the corner is margin");
        // The last page may hold the end of the sources alone, whose small print is grey rather than dark at one pixel a point.
        let (ink, least) = if number + 1 == drawn.len() { (192, 0.001) } else { (64, 0.005) };
        let dark = page.rgba.chunks(4).filter(|pixel| pixel[0] < ink).count() as f64 / (page.rgba.len() / 4) as f64;
        assert!((least..0.3).contains(&dark), "{dark} of the page is dark");
    }
}

#[test]
fn a_resolution_that_no_screen_has_is_refused() {
    for pixels_per_point in [0.0, -1.0, 11.0, f64::NAN, f64::INFINITY] {
        let error = pages(&full_plan(), &Sheets::all(Paper::A4), pixels_per_point).unwrap_err();
        assert!(matches!(error, ExportError::Resolution { .. }), "{error}");
    }
}
