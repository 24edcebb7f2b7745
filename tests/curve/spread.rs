//! Bands of the curves.

use vatsketch::analysis::{drawn_batch, draws};
use vatsketch::batch::batch;
use vatsketch::curve::{CurveKey, Role, Spread, Spreading, curve};
use vatsketch::design::Design;
use vatsketch::process::UncertainParameters;

fn spread(design: &Design, parameters: &[UncertainParameters]) -> Spread {
    let spreading = Spreading::of(batch(design).unwrap());
    let kept: Vec<_> = parameters.iter().map(|parameters| spreading.keep(&drawn_batch(design, parameters).unwrap())).collect();
    spreading.spread(&kept)
}

#[test]
fn every_line_but_the_limits_has_a_band_over_its_whole_length() {
    let design = Design::default();
    let shown = batch(&design).unwrap();
    let spread = spread(&design, &draws(&design, 20));
    assert_eq!((spread.draws, &spread.design), (20, &design));
    for key in CurveKey::ALL {
        let lines: Vec<_> = curve(&shown, key).series.into_iter().filter(|line| line.role != Role::Limit).collect();
        let bands: Vec<_> = spread.of_curve(key).collect();
        assert_eq!(lines.iter().map(|line| line.name).collect::<Vec<_>>(), bands.iter().map(|band| band.line).collect::<Vec<_>>());
        for (line, band) in lines.iter().zip(bands) {
            assert!(band.points.windows(2).all(|pair| pair[0][0] < pair[1][0]), "{key:?} {}", line.name);
            assert!(band.points.iter().all(|[_, least, most]| least <= most), "{key:?} {}", line.name);
            let (from, to) = (line.points[0][0], line.points[line.points.len() - 1][0]);
            assert_eq!(band.points[0][0], from, "{key:?} {}", line.name);
            // Warming ends at another minute in each draw: where half of them have ended, so has the band.
            let last = band.points[band.points.len() - 1][0];
            assert!(if key == CurveKey::Warming { last > 0.8 * to } else { (last - to).abs() < 1e-9 }, "{key:?} {}", line.name);
        }
    }
}

/// The usual parameters alone make a band without width: the curve itself, straight between its points as it is drawn.
#[test]
fn the_band_of_the_usual_beliefs_is_the_curve() {
    let design = Design::default();
    let spread = spread(&design, &[UncertainParameters::default(); 3]);
    let shown = batch(&design).unwrap();
    for band in &spread.lines {
        let line = curve(&shown, band.figure).series.into_iter().find(|line| line.name == band.line).unwrap();
        assert!(band.points.iter().all(|[_, least, most]| least == most), "{:?} {}", band.figure, band.line);
        let ([x, y], [own_x, own_y, _]) = (line.points[line.points.len() - 1], band.points[band.points.len() - 1]);
        assert!((x - own_x).abs() < 1e-9 && (y - own_y).abs() < 1e-9 * y.abs().max(1.0), "{:?} {}", band.figure, band.line);
    }
}

#[test]
fn the_end_of_a_band_is_what_the_figure_says() {
    let design = Design::default();
    let spread = spread(&design, &draws(&design, 30));
    for (key, line, of) in [
        (CurveKey::Moisture, "mean", "dried_moisture_percent"),
        (CurveKey::DryingLoss, "middle tray", "drying_loss_percent"),
        (CurveKey::Souring, "centre", "centre_ph"),
    ] {
        let band = spread.of_curve(key).find(|band| band.line == line).unwrap();
        let [_, least, most] = band.points[band.points.len() - 1];
        let likely = spread.figure(of).unwrap();
        assert!((likely.least.unwrap() - least).abs() < 1e-9 && (likely.most.unwrap() - most).abs() < 1e-9, "{of}");
    }
}

#[test]
fn a_stage_that_was_not_worked_out_has_no_band() {
    let mut design = Design::default();
    design.draining.mould_count = 1;
    let spread = spread(&design, &draws(&design, 10));
    assert_eq!(spread.of_curve(CurveKey::Moisture).count(), 0);
    assert!(spread.of_curve(CurveKey::Warming).count() > 0);
    assert!(spread.figure("drained_cheese_g").is_none() && spread.figure("clotting_min").is_some());
}
