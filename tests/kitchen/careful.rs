//! An invented maker who keeps a careful log: readings scatter as ours do, instruments are off for good, and some kitchens do not follow our model.

use jiff::civil::{DateTime, date};
use vatsketch::analysis::drawn_batch;
use vatsketch::batch::{Batch, culture_check};
use vatsketch::curve::{Curve, CurveKey, curve, drying_weight};
use vatsketch::design::Design;
use vatsketch::kitchen::{KitchenConstants, Unknown};
use vatsketch::numeric::Draws;
use vatsketch::process::UNCERTAIN_PARAMETERS;
use vatsketch::record::{
    CLOCK_SPREAD, EntryKind, EntryValue, Holds, Log, MARKED_CHEESE_DEVIATION, READING_DEVIATION, SHARED_DEVIATION,
    WHEY_CAUGHT_DEVIATION,
};

/// How a kitchen differs from our model.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Differs {
    /// Not at all.
    Not,
    /// The diffusivity of water falls while a cheese dries, more than ours does: its hours are the model's to a power.
    Diffusivity,
    /// The bath loses more heat, and ever more the warmer it is.
    BathLoss,
    /// Half of the whey drips sooner and half later than one time constant says.
    TwoDrips,
    /// Rennet, culture and bath change from batch to batch, always the same way.
    Drift,
}

/// A kitchen in which batches are made.
#[derive(Clone, Copy, Debug)]
pub struct Kitchen {
    /// What is so in it, in the middle of a drift.
    pub constants: KitchenConstants,
    /// How it differs from our model.
    pub differs: Differs,
    /// Of its readings.
    pub seed: u64,
    /// How far its readings scatter and its instruments are off, over what we think: 0 where everything is read as it is.
    pub scatters: f64,
}

/// A batch while it is made and written down.
struct Making<'a> {
    log: &'a mut Log,
    batch: u32,
    start: DateTime,
    made: Batch,
    chance: Draws,
    differs: Differs,
    /// How far the instruments of this kitchen are off, in their standard deviations: thermometer, meter.
    instruments: [f64; 2],
    scatters: f64,
}

/// Makes one batch for each design, a week apart.
pub fn made(designs: &[Design], kitchen: &Kitchen) -> Log {
    let mut log = Log::default();
    let mut of_kitchen = Draws::new(kitchen.seed);
    let scatters = kitchen.scatters;
    let instruments = [scatters * normal(&mut of_kitchen), scatters * normal(&mut of_kitchen)];
    let middle = 0.5 * (designs.len() as f64 - 1.0);
    for (design, number) in designs.iter().zip(0_u32..) {
        let constants = drifted(kitchen, f64::from(number) - middle);
        let made = drawn_batch(&constants.made(design), &constants.parameters).unwrap();
        let start = date(2031, 5, 5).at(9, 0, 0, 0).checked_add(jiff::Span::new().weeks(number)).unwrap();
        let batch = log.begin("invented", start, design.clone(), None);
        let chance = Draws::new(kitchen.seed + 1000 * u64::from(number + 1));
        Making { log: &mut log, batch, start, made, chance, differs: kitchen.differs, instruments, scatters }.write(&constants);
    }
    log
}

/// Returns what is so in the batch that lies so many batches after the middle one.
fn drifted(kitchen: &Kitchen, after: f64) -> KitchenConstants {
    if kitchen.differs != Differs::Drift {
        return kitchen.constants;
    }
    UNCERTAIN_PARAMETERS.iter().filter(|own| ["clotting", "culture_cells", "bath_side"].contains(&own.key)).fold(
        kitchen.constants,
        |constants, own| {
            let unknown = Unknown::Constant(own);
            constants.set(unknown, constants.of(unknown) * (1.0 + 0.03 * after))
        },
    )
}

/// The sum of twelve even draws less six has the spread 1.
fn normal(chance: &mut Draws) -> f64 {
    (0..12).map(|_| chance.share()).sum::<f64>() - 6.0
}

fn line(drawn: &Curve, name: &str) -> Vec<[f64; 2]> {
    drawn.series.iter().find(|series| series.name == name).unwrap().points.clone()
}

fn between(points: &[[f64; 2]], x: f64) -> f64 {
    let after = points.partition_point(|point| point[0] < x).clamp(1, points.len() - 1);
    let ([x0, y0], [x1, y1]) = (points[after - 1], points[after]);
    if x1 > x0 { y0 + (x - x0) / (x1 - x0) * (y1 - y0) } else { y1 }
}

impl Making<'_> {
    /// Returns how far one reading is off, in its standard deviations.
    fn scatter(&mut self) -> f64 {
        self.scatters * normal(&mut self.chance)
    }

    fn enter(&mut self, kind: EntryKind, minutes: f64, value: EntryValue) {
        let when = self.start.checked_add(jiff::Span::new().minutes(minutes.round() as i64)).unwrap();
        self.log.enter(self.batch, when, kind, value).unwrap();
    }

    fn done(&mut self, kind: EntryKind, minutes: f64) {
        self.enter(kind, minutes, EntryValue::Done);
    }

    /// Writes down what is so, off by what one reading scatters and by what the instrument is off, with the decimals of the kind.
    fn read(&mut self, kind: EntryKind, minutes: f64, is: f64) {
        let Holds::Number { decimals, reads_to, least, .. } = kind.row().holds else { panic!("{} is no number", kind.key()) };
        let instrument = match kind {
            EntryKind::MilkTemperature | EntryKind::BathTemperature => self.instruments[0],
            EntryKind::CurdPh
            | EntryKind::UnmouldedPh
            | EntryKind::UnmouldedSecondPh
            | EntryKind::CentrePh
            | EntryKind::BlendedPh => self.instruments[1],
            _ => 0.0,
        };
        let off = reads_to * (READING_DEVIATION.value * self.scatter() + SHARED_DEVIATION.value * instrument);
        let scale = 10_f64.powi(i32::try_from(decimals).unwrap());
        let read = ((scale * (is + off)).round() / scale).max(least);
        self.enter(kind, minutes, EntryValue::Number(read));
    }

    fn write(mut self, constants: &KitchenConstants) {
        let vat = self.made.vat.done().unwrap().clone();
        self.read(EntryKind::MilkPoured, 0.0, self.made.design.milk.milk_l);
        self.done(EntryKind::WarmingBegan, 0.0);
        self.warming(vat.to_rennet_min);
        self.done(EntryKind::RennetAdded, vat.to_rennet_min);
        let seen_min = CLOCK_SPREAD.value * READING_DEVIATION.value * self.scatter();
        self.done(EntryKind::CleanBreak, vat.to_rennet_min.round() + vat.clean_break_min + seen_min);
        self.done(EntryKind::Ladled, vat.to_ladle_min);
        self.moulds(vat.to_ladle_min, constants);
        let air_min = vat.to_ladle_min.round() + 60.0 * self.made.draining.done().unwrap().draining_h;
        self.drying(air_min);
        self.vinegar(air_min.round() + 60.0 * self.made.design.drying.drying_h);
    }

    /// Every five minutes while it warms, then every quarter of an hour until the rennet goes in: milk and bath.
    fn warming(&mut self, to_rennet_min: f64) {
        let drawn = curve(&self.made, CurveKey::Warming);
        let milk = line(&drawn, "milk");
        let bath = drawn.series.iter().find(|series| series.role == vatsketch::curve::Role::Companion).unwrap().points.clone();
        let loses = |c: f64, from_c: f64| {
            let rise = c - from_c;
            if self.differs == Differs::BathLoss { from_c + rise * (1.0 - 0.001 * rise) } else { c }
        };
        let readings: Vec<(f64, f64, f64)> = (1..=(to_rennet_min / 5.0) as u32)
            .filter(|five| *five <= 6 || five % 3 == 0)
            .map(|five| 5.0 * f64::from(five))
            .map(|minutes| (minutes, loses(between(&milk, minutes), milk[0][1]), loses(between(&bath, minutes), bath[0][1])))
            .collect();
        for (minutes, milk_c, bath_c) in readings {
            self.read(EntryKind::MilkTemperature, minutes, milk_c);
            self.read(EntryKind::BathTemperature, minutes, bath_c);
        }
    }

    fn moulds(&mut self, ladled_min: f64, constants: &KitchenConstants) {
        let mut whey = line(&curve(&self.made, CurveKey::WheyDrip), "whey so far");
        if self.differs == Differs::TwoDrips {
            let with = |times: f64| {
                let mut parameters = constants.parameters;
                parameters.mould_time *= times;
                line(&curve(&drawn_batch(&self.made.design, &parameters).unwrap(), CurveKey::WheyDrip), "whey so far")
            };
            let (soon, late) = (with(0.75), with(1.33));
            for point in &mut whey {
                point[1] = 0.5 * (between(&soon, point[0]) + between(&late, point[0]));
            }
        }
        let caught = 1.0 + WHEY_CAUGHT_DEVIATION.value * self.scatter();
        let mut poured = 0.0;
        for hour in self.made.draining.done().unwrap().turns_h.clone() {
            let whey_g = caught * between(&whey, hour);
            self.read(EntryKind::TurnWhey, ladled_min.round() + 60.0 * hour, whey_g - poured);
            poured = whey_g;
        }
        if let Some(check) = culture_check(&self.made) {
            let to_culture_min = self.made.vat.done().unwrap().to_culture_min;
            self.read(EntryKind::CurdPh, to_culture_min + 60.0 * check.after_h, check.ph);
        }
    }

    /// Twice a day.
    fn drying(&mut self, air_min: f64) {
        if let Some(ph) = self.made.draining.done().unwrap().souring.last().map(|point| point.ph) {
            self.read(EntryKind::UnmouldedPh, air_min - 1.0, ph);
            self.read(EntryKind::UnmouldedSecondPh, air_min - 1.0, ph);
        }
        self.done(EntryKind::AirBegan, air_min);
        let weight = drying_weight(&self.made).unwrap().series[0].points.clone();
        let drying_h = self.made.design.drying.drying_h;
        let marked = 1.0 + MARKED_CHEESE_DEVIATION.value * self.scatter();
        for half_day in 0..=(drying_h / 12.0) as u32 {
            let hour = 12.0 * f64::from(half_day);
            let power = if self.differs == Differs::Diffusivity { 0.9 } else { 1.0 };
            let of_model = drying_h * (hour / drying_h).powf(power);
            self.read(EntryKind::CheeseWeight, air_min + 60.0 * hour, marked * between(&weight, of_model));
        }
    }

    /// At six hours, then every two days.
    fn vinegar(&mut self, vinegar_min: f64) {
        let drawn = curve(&self.made, CurveKey::Souring);
        let pickling_h = self.made.design.pickling.pickling_h;
        self.read(EntryKind::VinegarPoured, vinegar_min, self.made.pickling.done().unwrap().vinegar_each_ml);
        let hours = std::iter::once(6.0).chain((1..=(pickling_h / 48.0) as u32).map(|two_days| 48.0 * f64::from(two_days)));
        for hour in hours {
            for (kind, name) in [(EntryKind::CentrePh, "centre"), (EntryKind::BlendedPh, "blended")] {
                self.read(kind, vinegar_min + 60.0 * hour, between(&line(&drawn, name), hour));
            }
        }
    }
}
