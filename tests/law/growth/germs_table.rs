//! Every row of `tests/reference/germs.csv`, against its own result and against what stands outside; each row names where that is from.

use crate::law::outside::Outside;
use crate::law::tables::rows;
use vatsketch::law::growth::{
    Chilled, Conditions, Germ, GrowthLaw, LISTERIA_LOW_ACETIC, LISTERIA_LOW_LACTIC, LogisticCrowd, Moment, Start, beside_crowd,
    dose_along, increase_log10, mejlholm_dalgaard, mould_mm_per_day, yeast_rate_per_h,
};

/// How far our rates may be from the row's result, relative: the table has six digits.
const RATE: f64 = 1e-4;
/// How far our increases along a history may be from the row's result, relative.
const INCREASE: f64 = 0.003;
/// Two laws, or a law and a measurement, agree within this factor.
const OTHER_LAW: f64 = 3.0;

#[derive(serde::Deserialize)]
struct Row {
    case: String,
    kind: String,
    organism: String,
    #[serde(rename = "T_C")]
    temperature_c: Option<f64>,
    #[serde(rename = "pH")]
    ph: Option<f64>,
    aw: Option<f64>,
    #[serde(rename = "lactic_mM")]
    lactic_mm: Option<f64>,
    #[serde(rename = "acetic_mM")]
    acetic_mm: Option<f64>,
    h0: Option<f64>,
    start_log: Option<f64>,
    starter: String,
    history: String,
    result: f64,
    result_with_lag: Option<f64>,
    outside: f64,
    outside_with_lag: Option<f64>,
    outside_kind: String,
    outside_source: String,
    tolerance: Option<f64>,
}

impl Row {
    fn law(&self) -> GrowthLaw {
        if self.organism == "listeria_low" {
            return GrowthLaw::of(Germ::Listeria).inhibited_at(LISTERIA_LOW_LACTIC.value, LISTERIA_LOW_ACETIC.value);
        }
        GrowthLaw::of(Germ::ALL.into_iter().find(|germ| germ.key() == self.organism).unwrap())
    }

    fn rate(&self) -> f64 {
        let (temperature_c, water_activity) = (self.temperature_c.unwrap(), self.aw.unwrap());
        if self.organism == "mould" {
            return mould_mm_per_day(temperature_c, water_activity);
        }
        let ph = self.ph.unwrap();
        let (lactic_mm, acetic_mm) = (self.lactic_mm.unwrap(), self.acetic_mm.unwrap());
        let at = Conditions { temperature_c, ph, water_activity, lactic_mm, acetic_mm };
        match self.organism.as_str() {
            "yeast" => yeast_rate_per_h(temperature_c, ph, water_activity).unwrap(),
            "md_listeria" => mejlholm_dalgaard(Chilled::Listeria, &at, 0.0),
            "md_lab" => mejlholm_dalgaard(Chilled::LacticBacteria, &at, 0.0),
            _ => self.law().rate_per_h(&at),
        }
    }

    fn moments(&self) -> Vec<Moment> {
        let numbers = |row: &str| row.split(':').map(|number| number.parse().unwrap()).collect::<Vec<f64>>();
        let moment = |numbers: Vec<f64>| Moment {
            at_h: numbers[0],
            conditions: Conditions {
                temperature_c: numbers[1],
                ph: numbers[2],
                water_activity: numbers[3],
                lactic_mm: numbers[4],
                acetic_mm: numbers[5],
            },
        };
        self.history.split('|').map(|row| moment(numbers(row))).collect()
    }

    /// Returns the increase with a work of the lag.
    fn increase(&self, h0: f64) -> f64 {
        let (law, moments) = (self.law(), self.moments());
        let rate = |at: &Conditions| law.rate_per_h(at);
        if self.kind == "history" {
            return increase_log10(dose_along(rate, &moments), h0);
        }
        let starter: Vec<f64> = self.starter.split(';').map(|number| number.parse().unwrap()).collect();
        let crowd = LogisticCrowd { start_log: starter[0], rate_per_h: starter[1], most_per_g: starter[2] };
        let start = Start { start_log: self.start_log.unwrap(), most_log: law.germ.most_log(), h0 };
        beside_crowd(rate, &moments, |at_h| crowd.share(at_h), &start)
    }

    /// Asserts that a value meets another; relative, or absolute where the other is 0.
    fn near(&self, got: f64, want: f64, tolerance: f64) {
        let most = if want == 0.0 { tolerance } else { tolerance * want.abs() };
        assert!((got - want).abs() <= most, "{}: got {got}, wanted {want} within {tolerance}", self.case);
    }

    /// Asserts what the row says of a value and its counterpart outside.
    fn meets(&self, got: f64, outside: f64) {
        match self.tolerance {
            Some(tolerance) => self.near(got, outside, tolerance),
            // The rows in which no growth was seen and the law has some: it errs to the cautious side.
            None if outside == 0.0 => assert!(got > 0.0, "{}: the row says that the law has some", self.case),
            None => {
                let ratio = got / outside;
                assert!((1.0 / OTHER_LAW..=OTHER_LAW).contains(&ratio), "{}: {got} against {outside}", self.case);
            }
        }
    }
}

/// Returns what stands outside of each row, free of lag.
pub fn germ_rows() -> Vec<Outside> {
    let row = |row: Row| {
        let ours = if row.kind == "rate" { row.rate() } else { row.increase(0.0) };
        let what = match row.kind.as_str() {
            "rate" if row.organism == "mould" => "mm a day",
            "rate" => "ln per hour",
            _ => "tenfold steps along a history",
        };
        let place = row.temperature_c.map_or_else(String::new, |temperature_c| {
            format!(
                " at {temperature_c} °C, pH {}, water activity {}",
                row.ph.map_or_else(|| "any".to_owned(), |ph| ph.to_string()),
                row.aw.unwrap()
            )
        });
        Outside {
            law: "growth of germs".to_owned(),
            case: format!("{}: {}{place}, {what}", row.case, row.organism),
            source: row.outside_source.clone(),
            expected: row.outside,
            ours,
            tolerance: row.tolerance.map(|tolerance| if row.outside == 0.0 { tolerance } else { tolerance * row.outside.abs() }),
            why: row.outside_kind.clone(),
        }
    };
    rows("germs").into_iter().map(row).collect()
}

#[test]
fn every_rate_meets_its_row_and_what_stands_outside() {
    let rates: Vec<Row> = rows("germs").into_iter().filter(|row: &Row| row.kind == "rate").collect();
    assert_eq!(rates.len(), 115);
    for row in &rates {
        row.near(row.rate(), row.result, RATE);
        row.meets(row.rate(), row.outside);
    }
}

#[test]
fn every_increase_along_a_history_meets_its_row_and_a_solver_outside() {
    let along: Vec<Row> = rows("germs").into_iter().filter(|row: &Row| row.kind != "rate").collect();
    assert_eq!(along.len(), 17);
    for row in &along {
        let (free, late) = (row.increase(0.0), row.increase(row.h0.unwrap()));
        row.near(free, row.result, INCREASE);
        row.near(late, row.result_with_lag.unwrap(), INCREASE);
        row.meets(free, row.outside);
        row.meets(late, row.outside_with_lag.unwrap());
    }
}

/// What the chapter says of the rows: 98 of the same law in other code, the others laws and measurements of their own.
#[test]
fn the_rows_are_those_that_the_chapter_counts() {
    let all: Vec<Row> = rows("germs");
    let same = all.iter().filter(|row| row.outside_kind == "same law, other code").count();
    let not_grown = all.iter().filter(|row| row.outside_kind != "same law, other code" && row.outside == 0.0);
    let cautious = not_grown.clone().filter(|row| row.tolerance.is_none()).count();
    assert_eq!((all.len(), same, not_grown.count(), cautious), (132, 98, 10, 4));
}

/// Section 4 of the chapter: bias factor 0.96, accuracy factor 1.25, extremes 0.56 and 1.71 of the 24 rows that are not zero.
#[test]
fn other_laws_and_measurements_are_met_as_closely_as_the_chapter_says() {
    let others: Vec<Row> =
        rows("germs").into_iter().filter(|row: &Row| row.outside_kind != "same law, other code" && row.outside > 0.0).collect();
    assert_eq!(others.len(), 24);
    let logarithms: Vec<f64> = others.iter().map(|row| (row.rate() / row.outside).ln()).collect();
    let mean = |of: &dyn Fn(&f64) -> f64| (logarithms.iter().map(of).sum::<f64>() / 24.0).exp();
    assert!((mean(&|log| *log) - 0.96).abs() < 0.005, "bias {}", mean(&|log| *log));
    assert!((mean(&|log| log.abs()) - 1.25).abs() < 0.005, "accuracy {}", mean(&|log| log.abs()));
    let extreme = logarithms.iter().fold((f64::MAX, f64::MIN), |(low, high), log| (log.min(low), log.max(high)));
    assert!((extreme.0.exp() - 0.56).abs() < 0.005 && (extreme.1.exp() - 1.71).abs() < 0.005, "{extreme:?}");
}
