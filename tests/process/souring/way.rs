//! The way from the cold milk to the dried cheese.

use super::{cultured, near, way};
use vatsketch::process::souring_on_the_way;

#[test]
fn the_hours_of_the_stages_follow_one_another() {
    let way = way(&cultured()).unwrap();
    let points = souring_on_the_way(&way.vat, Some(&way.draining), Some(&way.drying));
    assert_eq!(points.len(), way.vat.souring.len() + way.draining.souring.len() + way.drying.souring.len());
    assert!(points.windows(2).all(|pair| pair[0].at_h <= pair[1].at_h));
    let hours = way.vat.to_ladle_min / 60.0 + way.draining.draining_h + cultured().drying.drying_h;
    near(points.last().unwrap().at_h, hours, 1e-9);
    let first_in_moulds = points[way.vat.souring.len()];
    near(first_in_moulds.at_h, way.vat.to_ladle_min / 60.0, 1e-9);
    assert_eq!(first_in_moulds.ph, way.draining.souring[0].ph);
    assert_eq!(souring_on_the_way(&way.vat, None, None), way.vat.souring);
}
