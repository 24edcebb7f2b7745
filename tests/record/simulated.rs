//! Invented batches: what a kitchen that differs from the plan would have written down, read as a kitchen reads, always the same.

use jiff::civil::DateTime;
use vatsketch::analysis::drawn_batch;
use vatsketch::batch::{Batch, culture_check};
use vatsketch::curve::{CurveKey, curve, drying_weight};
use vatsketch::design::Design;
use vatsketch::numeric::Draws;
use vatsketch::process::UncertainParameters;
use vatsketch::record::{EntryKind, EntryValue, Holds, Log};

/// A batch while it is made up.
struct Making<'a> {
    log: &'a mut Log,
    batch: u32,
    start: DateTime,
    made: Batch,
    chance: Draws,
}

impl Making<'_> {
    fn when(&self, minutes: f64) -> DateTime {
        self.start.checked_add(jiff::Span::new().minutes(minutes.round() as i64)).unwrap()
    }

    fn done(&mut self, kind: EntryKind, minutes: f64) {
        let when = self.when(minutes);
        self.log.enter(self.batch, when, kind, EntryValue::Done).unwrap();
    }

    fn words(&mut self, kind: EntryKind, minutes: f64, words: &str) {
        let when = self.when(minutes);
        self.log.enter(self.batch, when, kind, EntryValue::Words(words.to_owned())).unwrap();
    }

    /// Writes down what is so, off by as much as a kitchen reads wrong (half of that is one standard deviation), with its decimals.
    fn read(&mut self, kind: EntryKind, minutes: f64, is: f64) {
        let Holds::Number { decimals, reads_to, least, .. } = kind.row().holds else { panic!("{} is no number", kind.key()) };
        // The sum of twelve even draws less six has the spread 1.
        let noise: f64 = (0..12).map(|_| self.chance.share()).sum::<f64>() - 6.0;
        let scale = 10_f64.powi(i32::try_from(decimals).unwrap());
        let read = ((scale * (is + 0.5 * reads_to * noise)).round() / scale).max(least);
        let when = self.when(minutes);
        self.log.enter(self.batch, when, kind, EntryValue::Number(read)).unwrap();
    }

    fn at(&self, key: CurveKey, name: &str, x: f64) -> f64 {
        let drawn = curve(&self.made, key);
        between(&drawn.series.iter().find(|series| series.name == name).unwrap().points, x)
    }
}

fn between(points: &[[f64; 2]], x: f64) -> f64 {
    let after = points.partition_point(|point| point[0] < x).clamp(1, points.len() - 1);
    let ([x0, y0], [x1, y1]) = (points[after - 1], points[after]);
    if x1 > x0 { y0 + (x - x0) / (x1 - x0) * (y1 - y0) } else { y1 }
}

/// Makes up a batch and writes it down, as it is made in a kitchen with other constants than ours.
///
/// `seed`: of the readings; `words`: taste and texture
pub(crate) fn simulate(
    log: &mut Log,
    (name, start): (&str, DateTime),
    design: &Design,
    kitchen: &UncertainParameters,
    seed: u64,
    words: (&str, &str),
) {
    let made = drawn_batch(design, kitchen).unwrap();
    let batch = log.begin(name, start, design.clone(), None);
    let mut making = Making { log, batch, start, made, chance: Draws::new(seed) };
    let vat = making.made.vat.done().unwrap().clone();
    making.words(EntryKind::MilkLabel, 0.0, "plain milk, an invented label");
    making.read(EntryKind::MilkPoured, 0.0, design.milk.milk_l);
    making.done(EntryKind::WarmingBegan, 1.0);
    for minutes in [10.0, 20.0, 30.0, 45.0] {
        let milk_c = making.at(CurveKey::Warming, "milk", minutes);
        making.read(EntryKind::MilkTemperature, 1.0 + minutes, milk_c);
    }
    if vat.sourness.culture.is_some() {
        making.done(EntryKind::CultureAdded, 1.0 + vat.to_culture_min);
    }
    making.done(EntryKind::RennetAdded, 1.0 + vat.to_rennet_min);
    making.done(EntryKind::CleanBreak, 1.0 + vat.to_rennet_min + vat.clean_break_min);
    making.done(EntryKind::CurdCut, 1.0 + vat.to_rennet_min + vat.cut_min);
    let ladled_min = 1.0 + vat.to_ladle_min;
    making.done(EntryKind::Ladled, ladled_min);
    making.read(EntryKind::MouldsFilled, ladled_min, f64::from(design.draining.mould_count));
    moulds(&mut making, ladled_min);
    let air_min = ladled_min + 60.0 * making.made.draining.done().unwrap().draining_h;
    let vinegar_min = drying(&mut making, air_min);
    vinegar(&mut making, vinegar_min);
    let end_min = vinegar_min + 60.0 * design.pickling.pickling_h;
    making.words(EntryKind::Taste, end_min, words.0);
    making.words(EntryKind::Texture, end_min, words.1);
}

fn moulds(making: &mut Making<'_>, ladled_min: f64) {
    let turns = making.made.draining.done().unwrap().turns_h.clone();
    let mut poured = 0.0;
    for hour in turns {
        let whey_g = making.at(CurveKey::WheyDrip, "whey so far", hour);
        making.read(EntryKind::TurnWhey, ladled_min + 60.0 * hour, whey_g - poured);
        poured = whey_g;
    }
    if let Some(check) = culture_check(&making.made) {
        let minutes = making.made.vat.done().unwrap().to_culture_min + 60.0 * check.after_h;
        making.read(EntryKind::CurdPh, 1.0 + minutes, check.ph);
    }
}

fn drying(making: &mut Making<'_>, air_min: f64) -> f64 {
    let design = making.made.design.clone();
    if let Some(ph) = making.made.draining.done().unwrap().souring.last().map(|point| point.ph) {
        making.read(EntryKind::UnmouldedPh, air_min, ph);
        making.read(EntryKind::UnmouldedSecondPh, air_min, ph);
    }
    making.done(EntryKind::AirBegan, air_min);
    making.read(EntryKind::AirTemperature, air_min, design.drying.cabinet_temperature_c);
    making.read(EntryKind::AirHumidity, air_min, making.made.drying.done().unwrap().air_humidity_percent);
    let weight = drying_weight(&making.made).unwrap().series[0].points.clone();
    for quarter in 0..=4 {
        let hour = 0.25 * f64::from(quarter) * design.drying.drying_h;
        making.read(EntryKind::CheeseWeight, air_min + 60.0 * hour, between(&weight, hour));
    }
    air_min + 60.0 * design.drying.drying_h
}

fn vinegar(making: &mut Making<'_>, vinegar_min: f64) {
    let design = making.made.design.clone();
    let vinegar_ml =
        making.made.pickling.done().unwrap().vinegar_each_ml * f64::from(making.made.pickling.done().unwrap().cheese_count);
    making.read(EntryKind::VinegarPoured, vinegar_min, vinegar_ml);
    for share in [0.4, 1.0] {
        let hour = share * design.pickling.pickling_h;
        for (kind, name) in [(EntryKind::CentrePh, "centre"), (EntryKind::BlendedPh, "blended")] {
            let ph = making.at(CurveKey::Souring, name, hour);
            making.read(kind, vinegar_min + 60.0 * hour, ph);
        }
        making.read(EntryKind::FridgeTemperature, vinegar_min + 60.0 * hour, design.keeping.keeping_temperature_c);
    }
}
