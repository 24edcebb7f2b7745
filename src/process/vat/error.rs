//! Why the vat cannot be made.

/// Why the vat cannot be made.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum VatError {
    /// The bath never brings the milk to the wanted temperature.
    #[error(
        "the milk does not reach {wanted_c:.1} °C: this way of heating brings it to at most {most_c:.1} °C within {hours:.0} h; heat hotter or with more power, or choose a lower temperature"
    )]
    NeverWarm {
        /// The wanted temperature.
        wanted_c: f64,
        /// The most that is reached.
        most_c: f64,
        /// The longest warming that is looked at.
        hours: f64,
    },
    /// The milk never comes to the hold of its pasteurising.
    #[error(
        "the milk does not reach the {hold_c:.1} °C at which it is to be pasteurised: this way of heating brings it to at most {most_c:.1} °C within {hours:.0} h, and it stays raw; {}",
        hotter(*.hold_c, *.bath_c)
    )]
    NeverAtHold {
        /// The hold.
        hold_c: f64,
        /// The most that is reached.
        most_c: f64,
        /// The longest warming that is looked at.
        hours: f64,
        /// Where the bath is set; none where there is no bath.
        bath_c: Option<f64>,
    },
    /// The milk falls below its hold while it is held.
    #[error(
        "the milk falls to {coldest_c:.1} °C while it is to be held at {hold_c:.1} °C to be pasteurised, and it stays raw; the bath of this step is set to {bath_c:.1} °C: set it hotter, and put the lids on"
    )]
    HoldNotKept {
        /// The hold.
        hold_c: f64,
        /// The coldest milk in it.
        coldest_c: f64,
        /// Where the bath is set.
        bath_c: f64,
    },
    /// The cold water is too warm or too little.
    #[error(
        "the pasteurised milk does not cool to {wanted_c:.1} °C, at which the {goes_in} goes in: this cold water brings it to {least_c:.1} °C within {hours:.0} h; use ice, or more and colder water"
    )]
    NeverCool {
        /// The wanted temperature.
        wanted_c: f64,
        /// The least that is reached.
        least_c: f64,
        /// The longest cooling that is looked at.
        hours: f64,
        /// What goes in at the wanted temperature.
        goes_in: &'static str,
    },
    /// Rennet does not clot milk at this temperature.
    #[error(
        "the milk does not set at {temperature_c:.1} °C: rennet clots milk between {coldest_c:.0} and {hottest_c:.0} °C; choose another rennet temperature, and a bath that keeps the milk near it while it sets"
    )]
    DoesNotSet {
        /// Temperature of the milk.
        temperature_c: f64,
        /// Coldest at which milk clots.
        coldest_c: f64,
        /// Hottest that the enzyme bears.
        hottest_c: f64,
    },
    /// The milk is sour before the rennet comes.
    #[error(
        "the milk is at pH {ph:.2} when the rennet goes in; below pH {least_ph:.1} acid has clotted it before; ripen it for a shorter time, or use less culture"
    )]
    TooSour {
        /// The pH then.
        ph: f64,
        /// Least pH of a rennet curd.
        least_ph: f64,
    },
    /// The curd would hold more than the milk has.
    #[error(
        "curd of {drip_end_moisture_percent:.1} % moisture would weigh {curd_kg:.2} kg, and {milk_kg:.2} kg of this milk have not that much to give; choose a lower moisture for the end of the drip"
    )]
    TooMoist {
        /// Moisture chosen.
        drip_end_moisture_percent: f64,
        /// What the curd would weigh.
        curd_kg: f64,
        /// What the milk weighs.
        milk_kg: f64,
    },
}

/// Returns what brings the milk to where it is pasteurised: the one choice that helps, where there is one.
fn hotter(hold_c: f64, bath_c: Option<f64>) -> String {
    match bath_c {
        Some(bath_c) if bath_c <= hold_c => {
            format!("the bath of this step is set to {bath_c:.1} °C: set it hotter than {hold_c:.1} °C")
        }
        Some(_) => "set the bath of this step hotter, use more power or less water, and put the lids on".to_owned(),
        None => "use more power and put the lid on".to_owned(),
    }
}
