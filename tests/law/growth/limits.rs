//! The zone between cold and hot keeping.

use vatsketch::law::growth::{COLD_ENOUGH, HOT_ENOUGH, SERVICE_HOURS, SERVICE_WARM, above_service_warm, in_zone};

/// Food Code, time and temperature control: 4 and 60 °C, 4 h; hazard guide, appendix 4: 21 °C (21.1 °C there).
#[test]
fn the_limits_are_those_of_the_code() {
    assert_eq!([COLD_ENOUGH.value, HOT_ENOUGH.value, SERVICE_WARM.value, SERVICE_HOURS.value], [4.0, 60.0, 21.0, 4.0]);
}

#[test]
fn the_edges_themselves_are_kept_cold_or_hot() {
    for (temperature_c, zone, warm) in [
        (-1.0, false, false),
        (4.0, false, false),
        (4.01, true, false),
        (21.0, true, false),
        (21.01, true, true),
        (59.99, true, true),
        (60.0, false, false),
        (90.0, false, false),
    ] {
        assert_eq!((in_zone(temperature_c), above_service_warm(temperature_c)), (zone, warm), "{temperature_c} °C");
    }
}

#[test]
fn a_temperature_that_is_no_number_counts_as_in_the_zone() {
    assert!(in_zone(f64::NAN) && above_service_warm(f64::NAN));
}
