//! The drip: a first-order law, checked at its own published form.

use super::tables::near;
use proptest::prelude::*;
use vatsketch::law::density::WHEY_DENSITY;
use vatsketch::law::syneresis::{
    DRIP_STOPPED, MOULD_TEMPERATURE, PIECE_POWER, PIECE_SIZE, SYNERESIS_ENERGY, VAT_SHARE, VAT_TEMPERATURE, VAT_TIME, left_share,
    mould_time_h, vat_time_h,
};

/// Our own judgement of τ = 3 h in the first-order law of Marshall and Castillo; shares to a whole per cent.
#[test]
fn the_moulds_drip_as_the_first_order_law_says() {
    let time_h = mould_time_h(MOULD_TEMPERATURE.value);
    for (hours, share) in [(1.0, 0.28), (2.0, 0.49), (4.0, 0.74), (8.0, 0.93)] {
        near(left_share(hours, time_h), share, 0.005);
    }
}

/// The activation energy by its definition: E = R ln(τ₁/τ₂)/(1/T₁ − 1/T₂), between 25 and 35 °C; R = 8.314 462 618 J/(mol K), CODATA.
#[test]
fn warmth_quickens_the_drip_by_the_published_activation_energy() {
    let (cold, warm) = (mould_time_h(25.0), mould_time_h(35.0));
    let energy = 8.314_462_618 * (cold / warm).ln() / (1.0 / 298.15 - 1.0 / 308.15);
    near(energy, SYNERESIS_ENERGY.value, 1.0);
    near(energy, 100.0e3, 1.0);
}

/// Dejmek and Walstra: a still gel loses up to two thirds of its volume, so no more than that leaves in the vat.
#[test]
fn however_long_it_rests_the_vat_keeps_some_whey() {
    let time_h = vat_time_h(VAT_TEMPERATURE.value, PIECE_SIZE.value);
    near(time_h, VAT_TIME.value, 1e-12);
    near(VAT_SHARE.value * left_share(1e6, time_h), 0.6, 1e-12);
    let (_, most) = VAT_SHARE.range;
    assert!(most <= 2.0 / 3.0 + 0.005, "{most}");
}

/// Darcy's law, by which van Dijk, Walstra and Schenk 1984 describe whey that leaves a gel: its flow is B p/(η L), with L the way to the face. Of
/// pieces that lie free, whey and way both grow with their size, so their time grows with its square. A still vat is no slower than that.
#[test]
fn no_size_counts_more_than_darcys_law_lets_it() {
    let flow = |way_mm: f64| 1.0 / way_mm;
    let time = |piece_mm: f64| piece_mm / flow(piece_mm);
    let by_darcy = (time(50.0) / time(25.0)).log2();
    near(by_darcy, 2.0, 1e-12);
    assert!(PIECE_POWER.value <= by_darcy && PIECE_POWER.range.1 <= by_darcy);
    let power = (vat_time_h(35.0, 50.0) / vat_time_h(35.0, 25.0)).log2();
    near(power, PIECE_POWER.value, 1e-12);
}

/// Our own computation: 10 kg of milk leave 8.29 L of whey at a yield of 0.15 and 7.32 L at 0.25; whey weighs 1.025 kg/L.
#[test]
fn whey_is_the_milk_less_its_curd() {
    near(10.0 * (1.0 - 0.15) / WHEY_DENSITY.value, 8.29, 0.005);
    near(10.0 * (1.0 - 0.25) / WHEY_DENSITY.value, 7.32, 0.005);
}

#[test]
fn nothing_has_left_at_first_and_a_fiftieth_is_to_come_after_ln_50_time_constants() {
    assert_eq!(left_share(0.0, 3.0), 0.0);
    near(left_share(50.0_f64.ln() * 3.0, 3.0), 1.0 - DRIP_STOPPED.value, 1e-12);
    assert!(left_share(f64::NAN, 3.0).is_nan());
}

proptest! {
    #[test]
    fn larger_pieces_keep_their_whey_longer(t in 20.0..45.0, piece_mm in 8.0..59.0) {
        prop_assert!(vat_time_h(t, piece_mm + 1.0) > vat_time_h(t, piece_mm));
    }

    #[test]
    fn the_drip_slows_as_whey_runs_out_and_quickens_with_warmth(t in 2.0..45.0, hours in 0.1..40.0) {
        let time_h = mould_time_h(t);
        prop_assert!(mould_time_h(t + 1.0) < time_h);
        let [first, second] = [left_share(hours, time_h), left_share(2.0 * hours, time_h) - left_share(hours, time_h)];
        // First order: the second spell takes the same share of what is left.
        prop_assert!((second - first * (1.0 - first)).abs() < 1e-12);
    }
}
