//! An invented batch with every stage done, made by hand so that these tests hold whatever the stages work out.

use vatsketch::batch::{Batch, MassBalance, Progress};
use vatsketch::curve::{Axis, Band, Curve, Event, Role, Series, Tone};
use vatsketch::design::{Design, Stage};
use vatsketch::law::Matter;
use vatsketch::process::{
    DrainingOutcome, DryingOutcome, DryingPoint, KeepingOutcome, MilkError, MilkOutcome, PicklePoint, PicklingOutcome,
    SaltingOutcome, StageError, TrayRun, VatOutcome,
};

/// An invented vat, every stage done.
pub fn batch() -> Batch {
    let design = Design { title: "A trial vat, invented".to_owned(), ..Design::default() };
    let matter =
        Matter { water_kg: 5.46, fat_kg: 0.26, casein_kg: 0.16, whey_protein_kg: 0.05, carbohydrate_kg: 0.3, ..Matter::default() };
    let milk = MilkOutcome {
        bought_kg: 6.19,
        cream_g: 152.0,
        cream_ml: 151.4,
        vat_milk: matter,
        calcium_g: 1.18,
        calcium_anhydrous_g: 0.89,
        rennet_ml: 1.34,
        rennet_strength_imcu_ml: 180.0,
        rennet_water_ml: 20.0,
        ..MilkOutcome::default()
    };
    let vat = VatOutcome {
        to_calcium_min: 21.0,
        to_rennet_min: 66.0,
        clotting_min: 16.2,
        clean_break_min: 48.6,
        cut_min: 55.0,
        tests: 2,
        setting_temperature_c: 35.6,
        to_ladle_min: 141.0,
        whey: matter * 0.3,
        ..VatOutcome::default()
    };
    let draining = DrainingOutcome {
        draining_h: 30.0,
        drip_stops_h: 13.0,
        drip_has_stopped: true,
        turns_h: vec![6.0, 12.0, 18.0, 24.0, 30.0],
        cheese_count: 12,
        cheese_g: 84.0,
        diameter_mm: 68.0,
        thickness_mm: 22.0,
        ladled_ml: 180.0,
        fits: true,
        ..DrainingOutcome::default()
    };
    let salting = SaltingOutcome {
        pepper_g: 11.0,
        pepper_each_g: 0.9,
        salt_g: 19.2,
        salt_each_g: 1.6,
        salt_each_turn_g: 0.8,
        cheese_count: 12,
        cheese_g: 85.4,
        ..SaltingOutcome::default()
    };
    let drying = DryingOutcome {
        middle: run(&[(0.0, 85.4), (10.0, 72.0), (30.0, 57.0), (34.0, 55.2)]),
        fastest: run(&[(0.0, 85.4), (34.0, 53.9)]),
        slowest: run(&[(0.0, 85.4), (34.0, 56.8)]),
        spread_unswapped_percent: 2.9,
        spread_swapped_percent: 0.6,
        swap_h: Some(17.0),
        end: DryingPoint { at_h: 34.0, cheese_g: 55.2, loss_percent: 35.4, thickness_mm: 17.5, ..DryingPoint::default() },
        cheese_count: 12,
        air_humidity_percent: 14.0,
        trays_wanted: 2,
        ..DryingOutcome::default()
    };
    Batch {
        given: vatsketch::process::Given::default(),
        design,
        milk: Progress::Done(milk),
        vat: Progress::Done(vat),
        draining: Progress::Done(draining),
        salting: Progress::Done(salting),
        drying: Progress::Done(drying),
        pickling: Progress::Done(pickling()),
        keeping: Progress::Done(KeepingOutcome::default()),
        guarded: None,
        germs: None,
        balance: MassBalance::default(),
    }
}

/// A batch whose milk failed.
pub fn failed() -> Batch {
    let error = MilkError::FatOutOfReach { wanted_percent: 9.0, least_percent: 0.1, most_percent: 6.5 };
    let mut batch = batch();
    batch.milk = Progress::Failed(StageError::Milk(error));
    batch.vat = Progress::NotReached { waits_for: Stage::Milk };
    batch.draining = Progress::NotReached { waits_for: Stage::Milk };
    batch.salting = Progress::NotReached { waits_for: Stage::Milk };
    batch.drying = Progress::NotReached { waits_for: Stage::Milk };
    batch.pickling = Progress::NotReached { waits_for: Stage::Milk };
    batch.keeping = Progress::NotReached { waits_for: Stage::Milk };
    batch
}

fn run(points: &[(f64, f64)]) -> TrayRun {
    let points = points.iter().map(|(at_h, cheese_g)| DryingPoint { at_h: *at_h, cheese_g: *cheese_g, ..DryingPoint::default() });
    TrayRun { name: "middle tray", points: points.collect() }
}

/// Two invented curves.
pub fn curves() -> Vec<Curve> {
    let warming = |t: f64, top: f64, rate: f64| top - (top - 5.0) * (-t / rate).exp();
    let points = |f: &dyn Fn(f64) -> f64, most: f64| (0..=200).map(|i| most * f64::from(i) / 200.0).map(|t| [t, f(t)]).collect();
    let loss = |t: f64| 35.4 * (1.0 - (-t / 14.0).exp()) / (1.0 - (-34.0_f64 / 14.0).exp());
    vec![
        Curve {
            handles: Vec::new(),
            dots: Vec::new(),
            cut: None,
            title: "Warming and setting",
            x: Axis { label: "time", unit: "min", least: 0.0, most: 150.0 },
            y: Axis { label: "temperature", unit: "°C", least: 0.0, most: 50.0 },
            series: vec![
                Series {
                    name: "bath",
                    role: Role::Companion,
                    tone: Tone::Around,
                    points: points(&|t| warming(t, 38.0, 14.0), 141.0),
                },
                Series { name: "milk", role: Role::Main, tone: Tone::Whole, points: points(&|t| warming(t, 37.0, 28.0), 141.0) },
            ],
            bands: vec![],
            events: [("calcium", 21.0), ("rennet", 66.0), ("clotted", 82.0), ("clean break", 115.0), ("cut", 121.0)]
                .map(|(name, at)| Event { name, at })
                .to_vec(),
            empty_because: None,
            in_words: "The milk reaches 16 °C after 21 min and 35 °C after 66 min.".to_owned(),
        },
        Curve {
            handles: Vec::new(),
            dots: Vec::new(),
            cut: None,
            title: "Loss of mass in drying",
            x: Axis { label: "time", unit: "h", least: 0.0, most: 34.0 },
            y: Axis { label: "loss", unit: "%", least: 0.0, most: 40.0 },
            series: vec![Series { name: "middle tray", role: Role::Main, tone: Tone::Whole, points: points(&loss, 34.0) }],
            bands: vec![Band {
                name: "between the trays",
                points: (0..=50).map(|i| 0.68 * f64::from(i)).map(|t| [t, 0.93 * loss(t), 1.06 * loss(t)]).collect(),
            }],
            events: vec![Event { name: "swap trays", at: 17.0 }],
            empty_because: None,
            in_words: "A cheese of the middle tray loses 35 % in 34 h.".to_owned(),
        },
    ]
}

/// Twelve cheeses in three jars, soured through.
fn pickling() -> PicklingOutcome {
    PicklingOutcome {
        pickled: true,
        end: PicklePoint { at_h: 500.0, centre_ph: 4.1, slurry_ph: 4.0, surface_ph: 3.9, bath_ph: 3.9, acid_percent: 1.9 },
        cheese_count: 12,
        vinegar_each_ml: 176.0,
        vinegar_ml: 2112.0,
        vinegar_ml_per_g: 3.2,
        cheeses_per_jar: 4,
        jars: 3,
        ..PicklingOutcome::default()
    }
}
