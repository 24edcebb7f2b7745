//! Salt in the vinegar.

use vatsketch::batch::batch;
use vatsketch::design::Design;
use vatsketch::process::PicklingOutcome;

fn soured(salt_g_per_100ml: f64) -> PicklingOutcome {
    let mut design = Design::default();
    design.pickling.vinegar_salt_g_per_100ml = salt_g_per_100ml;
    batch(&design).unwrap().pickling.done().unwrap().clone()
}

/// Nothing moves by diffusion where it is as concentrated on either side (Fick's law).
#[test]
fn vinegar_as_salty_as_the_cheese_leaves_it_as_it_is() {
    let plain = soured(0.0);
    assert!((0.0..0.9).contains(&plain.salt_left_share), "{}", plain.salt_left_share);
    assert!((plain.salt_left_share - plain.left_share).abs() < 1e-12);
    let even = soured(plain.even_salt_g_per_100ml);
    // Rounding alone.
    assert!((even.salt_left_share - 1.0).abs() < 1e-9, "{}", even.salt_left_share);
    let salty = soured(2.0 * plain.even_salt_g_per_100ml);
    // As far above as plain vinegar is below: the law is linear.
    assert!((salty.salt_left_share - (2.0 - plain.salt_left_share)).abs() < 1e-9, "{}", salty.salt_left_share);
}

#[test]
fn the_salt_of_cheese_and_vinegar_is_all_there_afterwards() {
    for salt in [0.0, 1.5, 8.0] {
        let out = soured(salt);
        let came = out.balance.came.salt_kg + out.balance.added[0].matter.salt_kg;
        let went = out.cheese.salt_kg + out.balance.left[0].matter.salt_kg;
        assert!((came - went).abs() < 1e-12 * came.max(1e-3), "{came} and {went}");
        assert!((out.vinegar_salt_g - 0.01 * salt * out.vinegar_ml).abs() < 1e-9);
    }
}
