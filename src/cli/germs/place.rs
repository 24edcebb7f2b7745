//! How fast an organism could grow at one place.

use super::given::Given;
use super::organism::{Law, Organism};
use crate::cli::ending::{CliError, Ending};
use crate::cli::options::FormOptions;
use crate::cli::text::{write_json, write_pairs};
use crate::law::growth::{
    Conditions, GrowthFactors, YEAST_COLDEST, YEAST_DRIEST, YEAST_MILDEST, YEAST_SOUREST, YEAST_WARMEST, YEAST_WETTEST,
    mould_mm_per_day,
};
use crate::words::POTENTIAL_GROWTH;
use serde_json::{Value, json};
use std::f64::consts::LN_10;
use std::io::Write;

pub(super) fn run(organism: &Organism, given: &Given, form: &FormOptions, data: &mut dyn Write) -> Result<Ending, CliError> {
    if given.starter.is_some() {
        return Err(only_along("starter"));
    }
    if let Some(key) = given.set_of(&["h0", "start_log"]) {
        return Err(only_along(key));
    }
    let is_mould = organism.law == Law::Mould;
    let at = given.conditions(!is_mould)?;
    let units = form.shown.units;
    let place = format!("{} at {:.1} °C, water activity {:.3}", organism.name, at.temperature_c, at.water_activity);
    if is_mould {
        let radius = mould_mm_per_day(at.temperature_c, at.water_activity);
        if form.json {
            let json =
                json!({ "organism": organism.key, "name": organism.name, "radius_mm_per_day": radius, "notice": POTENTIAL_GROWTH });
            write_json(json, data)?;
            return Ok(Ending::Done);
        }
        writeln!(data, "{}", units.told(&place))?;
        write_pairs(&[("Growth of the radius".to_owned(), format!("{radius:.2} mm a day"))], data)?;
        writeln!(data, "\n{POTENTIAL_GROWTH}")?;
        return Ok(Ending::Done);
    }
    let rate = organism.rate_per_h(&at, given.citric_mm()).ok_or_else(|| outside_law(None))?;
    let factors = match organism.law {
        Law::Germ(law) => Some(law.factors(&at)),
        Law::Chilled(_) | Law::Yeast | Law::Mould => None,
    };
    if form.json {
        write_json(as_json(organism, rate, factors), data)?;
        return Ok(Ending::Done);
    }
    writeln!(data, "{}", units.told(&format!("{place}, pH {:.2}{}", at.ph, acids(&at, given.citric_mm()))))?;
    write_pairs(&pairs(rate, factors), data)?;
    writeln!(data, "\n{POTENTIAL_GROWTH}")?;
    Ok(Ending::Done)
}

fn only_along(key: &str) -> CliError {
    CliError::Arguments(format!(
        "`{key}` counts only along a history; give one, as in --set 'history=0:21:6.5:0.988|36:21:6.5:0.988'"
    ))
}

/// Returns the error for conditions in which the law of yeasts says nothing.
pub(super) fn outside_law(row: Option<usize>) -> CliError {
    let place = row.map_or_else(String::new, |row| format!("row {row} of `history`: "));
    CliError::Arguments(format!(
        "{place}the law of dairy yeasts holds from {} to {} °C, pH {} to {} and water activity {} to {}; stay within, or choose another organism",
        YEAST_COLDEST.value, YEAST_WARMEST.value, YEAST_SOUREST.value, YEAST_MILDEST.value, YEAST_DRIEST.value, YEAST_WETTEST.value
    ))
}

/// Returns the acids in words, those that are there.
fn acids(at: &Conditions, citric_mm: f64) -> String {
    let all = [("lactic", at.lactic_mm), ("acetic", at.acetic_mm), ("citric", citric_mm)];
    let there =
        all.iter().filter(|(_, amount)| *amount > 0.0).map(|(name, amount)| format!(", {name} acid {amount} mmol per kg of water"));
    let there: String = there.collect();
    if there.is_empty() { ", no acid counted beside pH".to_owned() } else { there }
}

fn as_json(organism: &Organism, rate: f64, factors: Option<GrowthFactors>) -> Value {
    let factors = factors.map(|factors| {
        json!({
            "temperature": factors.temperature, "ph": factors.ph, "water_activity": factors.water, "acids": factors.acids,
            "interaction": factors.interaction, "held_back_by": factors.held_back_by().words(),
        })
    });
    json!({
        "organism": organism.key, "name": organism.name, "rate_per_h": rate, "hours_per_log10": hours_per_log(rate), "factors": factors,
        "notice": POTENTIAL_GROWTH,
    })
}

/// Returns the hours of tenfold growth; none where no growth is foreseen.
fn hours_per_log(rate: f64) -> Option<f64> {
    (rate > 0.0).then(|| LN_10 / rate)
}

fn pairs(rate: f64, factors: Option<GrowthFactors>) -> Vec<(String, String)> {
    let tenfold =
        hours_per_log(rate).map_or_else(|| "no growth foreseen by this model".to_owned(), |hours| format!("{hours:.1} h"));
    let mut pairs =
        vec![("Rate of growth, ln".to_owned(), format!("{rate:.4} per hour")), ("Tenfold growth takes".to_owned(), tenfold)];
    if let Some(factors) = factors {
        let all = [
            ("Factor of temperature", factors.temperature),
            ("Factor of pH", factors.ph),
            ("Factor of water activity", factors.water),
            ("Factor of undissociated acid", factors.acids),
            ("Factor of all together", factors.interaction),
        ];
        pairs.extend(all.map(|(label, factor)| (label.to_owned(), format!("{factor:.3}"))));
        pairs.push(("Held back most by".to_owned(), factors.held_back_by().words().to_owned()));
    }
    pairs
}
