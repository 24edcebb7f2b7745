//! Any soured design.

use super::way;
use proptest::prelude::*;
use vatsketch::design::{AcidBy, CultureBy, CultureKind, Design, MilkAcid, SouredBy};
use vatsketch::process::{SourPoint, souring_on_the_way};

fn soured() -> impl Strategy<Value = Design> {
    let culture = (
        prop::sample::select(vec![CultureKind::Mesophilic, CultureKind::Mixed, CultureKind::Thermophilic]),
        0.05..60.0_f64,
        15.0..42.0_f64,
        0.0..4.0_f64,
    )
        .prop_map(|(kind, cells, ripening_c, ripening_h)| {
            let mut design = Design::default();
            (design.milk.soured_by, design.milk.culture_by) = (SouredBy::Culture, CultureBy::Cells);
            (design.milk.culture_kind, design.milk.culture_cells_million_g) = (kind, cells);
            (design.milk.ripening_temperature_c, design.milk.ripening_h) = (ripening_c, ripening_h);
            design
        });
    let acid = (prop::sample::select(vec![MilkAcid::Vinegar, MilkAcid::Citric, MilkAcid::Lactic]), 5.25..6.6_f64).prop_map(
        |(acid, ph)| {
            let mut design = Design::default();
            design.milk.soured_by = SouredBy::Acid;
            (design.milk.milk_acid, design.milk.acid_by, design.milk.soured_milk_ph) = (acid, AcidBy::Ph, ph);
            design
        },
    );
    let lactone = (0.5..25.0_f64).prop_map(|lactone_g_l| {
        let mut design = Design::default();
        (design.milk.soured_by, design.milk.lactone_g_l) = (SouredBy::Lactone, lactone_g_l);
        design
    });
    (prop_oneof![culture, acid, lactone], 2.0..34.0_f64, 0..8_u32, 30.0..58.0_f64).prop_map(
        |(mut design, room_c, turns, dried_c)| {
            (design.draining.draining_temperature_c, design.draining.turn_count) = (room_c, turns);
            design.salting.salted_turns = design.salting.salted_turns.min(turns);
            if turns == 0 {
                design.salting.salt_percent = 0.0;
            }
            design.drying.cabinet_temperature_c = dried_c;
            design
        },
    )
}

fn sensible(point: &SourPoint) -> bool {
    let finite =
        [point.at_h, point.temperature_c, point.ph, point.lactic_mm, point.acetic_mm, point.lactose_percent, point.cells_per_g];
    finite.iter().all(|number| number.is_finite())
        && 3.0 < point.ph
        && point.ph < 7.2
        && point.lactose_percent >= 0.0
        && (0.0..=1.0).contains(&point.crowd)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]
    #[test]
    fn every_point_is_sensible_and_a_culture_never_makes_it_less_sour(design in soured()) {
        let Ok(way) = way(&design) else { return Ok(()) };
        let points = souring_on_the_way(&way.vat, Some(&way.draining), Some(&way.drying));
        for point in &points {
            prop_assert!(sensible(point), "{:?}", point);
        }
        for stage in [&way.vat.souring, &way.draining.souring, &way.drying.souring] {
            for pair in stage.windows(2) {
                prop_assert!(pair[1].ph <= pair[0].ph + 1e-6, "{:?} then {:?}", pair[0], pair[1]);
            }
        }
        for balance in [&way.vat.balance, &way.draining.balance, &way.drying.balance] {
            let all_kg = balance.came.total_kg();
            prop_assert!(balance.residual().parts_kg().iter().all(|part| part.abs() <= 1e-9 * all_kg));
        }
    }
}
