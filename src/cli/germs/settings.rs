//! What may be set for germs alone: the numbers with their ranges, and reading one.

use crate::design::DesignError;

/// A number that may be set.
pub(in crate::cli) struct Setting {
    pub(in crate::cli) key: &'static str,
    pub(in crate::cli) label: &'static str,
    pub(in crate::cli) unit: &'static str,
    pub(in crate::cli) least: f64,
    pub(in crate::cli) most: f64,
    /// What holds where it is left out, in words.
    pub(in crate::cli) otherwise: &'static str,
}

const MOST_ACID: f64 = 2000.0;

pub(super) const TEMPERATURE: Setting = Setting {
    key: "temperature_c",
    label: "Temperature",
    unit: "°C",
    least: -10.0,
    most: 60.0,
    otherwise: "none; needed without a history",
};
pub(super) const PH: Setting = Setting {
    key: "ph",
    label: "pH",
    unit: "pH",
    least: 2.0,
    most: 10.0,
    otherwise: "none; needed without a history, but for a mould",
};
pub(super) const WATER: Setting = Setting {
    key: "water_activity",
    label: "Water activity",
    unit: "",
    least: 0.5,
    most: 1.0,
    otherwise: "none; needed without a history",
};
pub(super) const LACTIC: Setting = Setting {
    key: "lactic_mm",
    label: "Lactic acid, all forms",
    unit: "mmol per kg of water",
    least: 0.0,
    most: MOST_ACID,
    otherwise: "0",
};
pub(super) const ACETIC: Setting = Setting {
    key: "acetic_mm",
    label: "Acetic acid, all forms",
    unit: "mmol per kg of water",
    least: 0.0,
    most: MOST_ACID,
    otherwise: "0",
};
pub(super) const CITRIC: Setting = Setting {
    key: "citric_mm",
    label: "Citric acid, all forms, for md_listeria and md_lab",
    unit: "mmol per kg of water",
    least: 0.0,
    most: MOST_ACID,
    otherwise: "0",
};
pub(super) const LAG: Setting = Setting {
    key: "h0",
    label: "Work of the lag along a history, rate times lag",
    unit: "",
    least: 0.0,
    most: 30.0,
    otherwise: "that of the germ; 0 means germs that grow already",
};
pub(super) const START: Setting = Setting {
    key: "start_log",
    label: "Germs at the start of a history",
    unit: "log₁₀ per g",
    least: -3.0,
    most: 10.0,
    otherwise: "2 beside a starter; else no greatest density counts",
};

/// The numbers, in the order in which they are listed.
pub(in crate::cli) const SETTINGS: [&Setting; 8] = [&TEMPERATURE, &PH, &WATER, &LACTIC, &ACETIC, &CITRIC, &LAG, &START];

/// What is set as text: key, how it is written, what it is.
pub(in crate::cli) const TEXTS: [(&str, &str, &str); 3] = [
    (
        "organism",
        "a name",
        "Whose growth: listeria, staphylococcus, salmonella, coli, cereus, cold_botulinum, listeria_low, md_listeria, md_lab, yeast, mould",
    ),
    (
        "history",
        "rows joined by |",
        "Conditions over time, straight between rows of hours:temperature:pH:water activity:lactic:acetic; acids may be left out",
    ),
    (
        "starter",
        "start;rate;most",
        "A starter that grows beside the germs: log₁₀ per g at the start, rate per hour, greatest number per g, as in 6.6;0.85;1.5e9",
    ),
];

impl Setting {
    /// Reads a number, which may have a decimal comma.
    pub(super) fn read(&self, text: &str) -> Result<f64, DesignError> {
        let Self { key, label, unit, least, most, .. } = *self;
        let number = text.trim().replace(',', ".").parse::<f64>().ok().filter(|number| number.is_finite());
        let given = number.ok_or_else(|| DesignError::NotANumber { label, key, given: text.to_owned(), least, most, unit })?;
        let within = (least..=most).contains(&given);
        if within { Ok(given) } else { Err(DesignError::OutOfRange { label, key, given, least, most, unit }) }
    }
}
