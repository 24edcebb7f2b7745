//! Yields that were measured, to set beside those that are calculated. They enter no calculation; the explanation of the figure
//! names them, and a test holds it to these records.

crate::constants! {
    /// Fresh cheese that was measured.
    SHEEP_YIELD = { "Fresh cheese measured from 100 kg of sheep's milk", 20.6, "kg", (15.0, 26.0), CipolatGotet2016, "mean of the milk of 169 sheep; the range is our own judgement, for the abstract has none", Secondhand }
    /// Solids in it.
    SHEEP_YIELD_SOLIDS = { "Solids in the fresh cheese measured from 100 kg of sheep's milk", 10.1, "kg", (7.5, 12.5), CipolatGotet2016, "mean of the milk of 169 sheep; the range is our own judgement, for the abstract has none", Secondhand }
}
