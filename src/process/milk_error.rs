//! Why the milk of the vat cannot be made.

/// Why the milk of the vat cannot be made.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum MilkError {
    /// No mixture of this milk with cream or skimmed milk has the wanted fat.
    #[error(
        "a fat target of {wanted_percent:.1} % cannot be reached: this milk with this cream or skimmed milk reaches from {least_percent:.1} % to {most_percent:.1} %; choose a target between them, or another cream"
    )]
    FatOutOfReach {
        /// The wanted fat.
        wanted_percent: f64,
        /// The least that can be reached.
        least_percent: f64,
        /// The most that can be reached.
        most_percent: f64,
    },
    /// No rule counts the milk as pasteurised at this temperature.
    #[error(
        "milk held at {chosen_c:.1} °C is not pasteurised: {}{least_c:.0} °C are the least that rules for dairies have for this milk; pasteurise it at {least_c:.0} °C or more",
        if *.rich { "it is rich (10 % fat or 18 % solids, or more), and " } else { "" }
    )]
    TooCoolToPasteurise {
        /// The chosen temperature.
        chosen_c: f64,
        /// The least of the rules.
        least_c: f64,
        /// Whether the milk is so rich that the least is higher.
        rich: bool,
    },
    /// The acid clots the milk before the rennet can.
    #[error(
        "this acid brings the milk of {milk_c:.0} °C to pH {ph:.2}, and it clots: stay above pH {rennet_ph:.1} for rennet curd, and above pH {least_ph:.1} in milk warmer than {cool_c:.0} °C; use less acid, or choose a higher pH"
    )]
    AcidClots {
        /// The pH that the milk would come to.
        ph: f64,
        /// Temperature of the milk.
        milk_c: f64,
        /// Least pH of milk that is not cold.
        least_ph: f64,
        /// Up to where milk is cold.
        cool_c: f64,
        /// Least pH of a rennet curd.
        rennet_ph: f64,
    },
}
