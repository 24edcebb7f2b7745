//! The records of the cultures, and how much of them comes into the milk.

/// What each record of temperatures says.
const WARMTH: &str = "least, best and greatest °C";
/// What each record of pH says.
const SOURNESS: &str = "least, best and greatest pH";

crate::constants! {
    /// Growth of the mesophilic culture.
    MESOPHILIC_RATE = { "Growth rate of a mesophilic culture at its best", 1.15, "1/h", (0.8, 1.4), Ourselves, "set on published times of acid curd at 22 and 32 °C with assumed cells", Fitted }
    /// Growth of the mixed culture.
    MIXED_RATE = { "Growth rate of a mixed culture at its best", 1.56, "1/h", (1.2, 2.0), Fermentation2019, "three species together; the range is ours", Secondhand }
    /// Growth of the thermophilic culture.
    THERMOPHILIC_RATE = { "Growth rate of a thermophilic culture at its best", 1.9, "1/h", (1.5, 2.4), Ourselves, "set on the published pH curves of yoghurt cultures with assumed cells", Fitted }
    /// Where the first two stop.
    MESOPHILIC_STOP_PH = { "pH at which a mesophilic or mixed culture makes its last acid", 4.2, "pH", (4.0, 4.4), Textbook, "lactococci", FromMemory }
    /// Where the thermophilic culture stops.
    THERMOPHILIC_STOP_PH = { "pH at which a thermophilic culture makes its last acid", 3.8, "pH", (3.6, 4.0), Textbook, "lactobacilli", FromMemory }
    /// Acid that comes with growth.
    CULTURE_YIELD = { "Lactic acid made for each cell that grows", 5.0e-14, "mol", (3.0e-14, 9.0e-14), YoghurtCurves, "58 mmol/kg beside 7.8e8 cells/g in yoghurts is 7.4e-14 with upkeep", Fitted }
    /// Acid without growth, first two.
    MESOPHILIC_UPKEEP = { "Lactic acid that each cell of a mesophilic or mixed culture makes without growing, at its best", 2.5e-14, "mol/h", (1.5e-14, 4.0e-14), Ourselves, "set together with the rate; the range is ours", Fitted }
    /// Acid without growth, thermophilic.
    THERMOPHILIC_UPKEEP = { "Lactic acid that each cell of a thermophilic culture makes without growing, at its best", 4.0e-14, "mol/h", (2.5e-14, 6.0e-14), Ourselves, "set together with the rate; the range is ours", Fitted }
    /// The most cells, first two.
    MESOPHILIC_MOST = { "Greatest density of a mesophilic or mixed culture in milk", 1.5e9, "1/g", (4.0e8, 2.0e9), YoghurtCurves, "8.6 to 9.0 log published for cultures in milk; the range reaches a little above", Secondhand }
    /// The most cells, thermophilic.
    THERMOPHILIC_MOST = { "Greatest density of a thermophilic culture in milk", 1.2e9, "1/g", (8.0e8, 1.5e9), YoghurtCurves, "8.2e8 at pH 4.54 in yoghurts", Fitted }
    /// Work before growth.
    CULTURE_LAG_WORK = { "Work of a culture before it grows, rate × lag", 0.7, "1", (0.3, 2.0), Ourselves, "0.3 for a bulk starter, 2 for a frozen one", Judged }
    /// What a bulk starter brings.
    BULK_STARTER_CELLS = { "Cells in milk from 1 % of bulk starter", 1.0e7, "1/g", (5.0e6, 2.0e7), CommonPractice, "1e9 cells in each g of starter", FromMemory }
    /// What a packet brings.
    PACKET_CELLS = { "Cells in milk from a direct-set packet, dosed as labelled", 3.0e6, "1/g", (1.0e6, 1.0e7), CommonPractice, "middle of the range", FromMemory }
    /// What milk sugar can become.
    LACTIC_PER_LACTOSE = { "Lactic acid from one molecule of lactose", 4.0, "1", (2.0, 4.0), Textbook, "2 by a culture that leaves the galactose", FromMemory }
    /// Molar mass of lactose.
    LACTOSE_MOLAR_MASS = { "Molar mass of lactose", 0.342_3, "kg/mol", (0.3422, 0.3424), Textbook, "sum of atomic masses, without water of crystals", FromMemory }
    /// Sourer than the law holds.
    SOURING_PH_LEAST = { "pH below which the law of souring is not to be used", 4.2, "pH", (4.0, 4.6), Ourselves, "nothing that it was set on lies below", Judged }
    /// Warmer than the law holds.
    SOURING_WARMEST = { "Temperature above which the law of souring is not to be used", 45.0, "°C", (43.0, 47.0), Ourselves, "nothing that it was set on lies above", Judged }
}

crate::correlations! {
    /// Temperatures of the mesophilic culture.
    MESOPHILIC_WARMTH = { "Temperatures of a mesophilic culture", WARMTH, [5.0, 33.0, 40.5], "°C", (5.0, 40.5), "°C", CultureTables, "grows from 10 to 40 °C; the least is our judgement", Judged }
    /// Temperatures of the mixed culture.
    MIXED_WARMTH = { "Temperatures of a mixed culture", WARMTH, [4.0, 38.3, 49.6], "°C", (4.0, 49.6), "°C", Fermentation2019, "cardinal values of three species together", Secondhand }
    /// Temperatures of the thermophilic culture.
    THERMOPHILIC_WARMTH = { "Temperatures of a thermophilic culture", WARMTH, [14.0, 42.5, 52.0], "°C", (14.0, 52.0), "°C", CultureTables, "grows from 20 to 52 °C, best at 40 and 44 °C by species; the least is our judgement", Judged }
    /// pH of the first two.
    MESOPHILIC_SOURNESS = { "pH of a mesophilic or mixed culture", SOURNESS, [4.3, 6.3, 9.0], "1", (4.3, 9.0), "pH", CultureTables, "best at 6.0 to 6.5; the ends are from memory", FromMemory }
    /// pH of the thermophilic culture.
    THERMOPHILIC_SOURNESS = { "pH of a thermophilic culture", SOURNESS, [4.0, 6.3, 9.0], "1", (4.0, 9.0), "pH", CultureTables, "best at 6.5 and 5.8 by species; the ends are from memory", FromMemory }
}
