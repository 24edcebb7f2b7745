//! Rules about growth as numbers, and the thresholds from which we speak of it.

crate::constants! {
    /// Growth of Listeria in a test.
    LISTERIA_GREW = { "Listeria counts as grown in a challenge test above", 0.5, "log₁₀", (0.5, 0.5), EuMicrobiology, "guidance on challenge tests", FromMemory }
    /// Acid enough for Listeria.
    LISTERIA_STOPS_PH = { "pH at or below which food counts as unable to support Listeria", 4.4, "pH", (4.4, 4.4), EuMicrobiology, "note 8, as quoted; Codex CXG 61 has below 4.4", Secondhand }
    /// Dry enough for Listeria.
    LISTERIA_STOPS_WATER = { "Water activity at or below which food counts as unable to support Listeria", 0.92, "1", (0.92, 0.92), EuMicrobiology, "note 8; Codex CXG 61 has below 0.92", FromMemory }
    /// Acid of both together.
    LISTERIA_STOPS_PH_TOO = { "pH at or below which a water activity of 0.94 will do for Listeria", 5.0, "pH", (5.0, 5.0), EuMicrobiology, "note 8, as quoted", Secondhand }
    /// Dryness of both together.
    LISTERIA_STOPS_WATER_TOO = { "Water activity at or below which a pH of 5.0 will do for Listeria", 0.94, "1", (0.94, 0.94), EuMicrobiology, "note 8, as quoted", Secondhand }
    /// Listeria allowed in food on sale.
    LISTERIA_ALLOWED = { "Listeria allowed in food on sale", 100.0, "1/g", (100.0, 100.0), EuMicrobiology, "during its shelf life", Secondhand }
    /// Staphylococci of good practice.
    STAPHYLOCOCCI_GOOD = { "Staphylococci in fresh cheese of pasteurised milk, good", 10.0, "1/g", (10.0, 10.0), EuMicrobiology, "coagulase-positive, m, as quoted", Secondhand }
    /// Staphylococci at most.
    STAPHYLOCOCCI_MOST = { "Staphylococci in fresh cheese of pasteurised milk, at most", 100.0, "1/g", (100.0, 100.0), EuMicrobiology, "coagulase-positive, M, as quoted", Secondhand }
    /// Staphylococci from which toxin is looked for.
    STAPHYLOCOCCI_TEST = { "Staphylococci above which cheese is tested for toxin", 100_000.0, "1/g", (100_000.0, 100_000.0), EuMicrobiology, "2.2.3 to 2.2.5, as quoted", Secondhand }
    /// pH of a starter in time.
    SOURED_IN_TIME_PH = { "pH at or below which milk with a starter should be in time", 5.8, "pH", (5.8, 5.8), RawMilkCheese, "abstract, advised for one raw-milk cheese", Secondhand }
    /// That time.
    SOURED_IN_TIME_H = { "Hours after which that pH is measured", 6.0, "h", (6.0, 6.0), RawMilkCheese, "abstract, advised for one raw-milk cheese", Secondhand }
    /// Net gain beside a strong starter.
    STARTER_ENOUGH = { "Starter cells from which staphylococci gain little", 100_000.0, "1/mL", (100_000.0, 100_000.0), RawMilkCheese, "published rule: with pH 5.0 in time the net gain stays near one log", Secondhand }
    /// Sour before warm drying.
    SOUR_BEFORE_DRYING_PH = { "pH at or below which warm drying should begin", 4.8, "pH", (4.6, 5.0), Ourselves, "our calculation of 48 h at 40 °C; for staphylococci it rests on one judged amount of lactic acid", Fitted }
    /// Warm drying.
    WARM_DRYING = { "Drying counts as warm above", 15.0, "°C", (10.0, 21.0), Ourselves, "staphylococci gain four log in 96 h there", Judged }
    /// Growth worth a word.
    GERM_GREW = { "Potential growth of any germ that is worth a word", 1.0, "log₁₀", (0.5, 1.0), Ourselves, "tenfold", Judged }
    /// Much B. cereus.
    CEREUS_MANY = { "Bacillus cereus from which it is worth a word", 5.0, "log₁₀/g", (5.0, 5.0), Ourselves, "a density at which its toxins are feared", Judged }
    /// Acid of chilled food without air.
    AIRLESS_PH = { "pH below which chilled food without air holds back cold-type botulinum", 5.0, "pH", (5.0, 5.0), AirlessAdvice, "excerpt: held through the whole shelf life", Secondhand }
    /// Dryness of chilled food without air.
    AIRLESS_WATER = { "Water activity below which chilled food without air holds back cold-type botulinum", 0.97, "1", (0.97, 0.97), AirlessAdvice, "excerpt: held through the whole shelf life", Secondhand }
    /// Days of chilled food without air.
    AIRLESS_DAYS = { "Days that chilled food without air may be kept otherwise", 10.0, "d", (10.0, 10.0), AirlessAdvice, "excerpt", Secondhand }
}
