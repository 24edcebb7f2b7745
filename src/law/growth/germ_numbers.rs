//! How long germs take to begin, how dense they become, and from where staphylococci make toxin.

/// The form of three limits in one record.
const LIMITS: &str = "least temperature °C, least pH, least water activity";

crate::constants! {
    /// Lag of S. aureus.
    STAPHYLOCOCCUS_LAG_WORK = { "Staphylococcus aureus: work of the lag, rate times lag", 2.3, "1", (0.0, 2.4), StaphylococcusLag, "from the published law of the lag at 18 to 37 °C, cold culture into milk: 2.2 to 2.4; cells that grow already have none", Fitted }
    /// Lag of Listeria, Salmonella and E. coli.
    USUAL_LAG_WORK = { "Listeria, Salmonella and Escherichia coli: work of the lag", 2.0, "1", (0.0, 4.0), Ourselves, "grows with the size of the change (abstracts of 2005 and 2010); cells that grow already have none", Judged }
    /// Lag of spores of B. cereus.
    CEREUS_LAG_WORK = { "Bacillus cereus: work of the lag of spores in milk", 3.0, "1", (0.0, 20.0), CereusIsolates, "means of 16 isolates 4.4 to 20; less by our judgement, to the cautious side", Judged }
    /// Lag of the cold type of C. botulinum.
    BOTULINUM_LAG_WORK = { "Clostridium botulinum, cold type: work of the lag", 0.0, "1", (0.0, 4.0), Ourselves, "no value was found; none is the cautious reading", Judged }
    /// Greatest density of Listeria.
    LISTERIA_MOST = { "Listeria monocytogenes: greatest density", 8.0, "log₁₀/g", (6.9, 8.8), ListeriaCheeses, "whey cheese 6.9 to 8.8, fresh cheese 7.8", Secondhand }
    /// Greatest density of the usual germs.
    USUAL_MOST = { "Staphylococcus aureus, Salmonella, Escherichia coli: greatest density", 8.5, "log₁₀/g", (8.0, 9.0), Ourselves, "a round number between those of many foods", Judged }
    /// Greatest density of B. cereus.
    CEREUS_MOST = { "Bacillus cereus: greatest density", 7.0, "log₁₀/g", (5.8, 7.1), CereusIsolates, "in milk", Secondhand }
    /// Greatest density of the cold type of C. botulinum.
    BOTULINUM_MOST = { "Clostridium botulinum, cold type: greatest density", 8.0, "log₁₀/g", (6.0, 8.5), Ourselves, "no value was found", Judged }
    /// What the curd holds back.
    CURD_CONCENTRATION = { "Germs held back in curd, over the milk", 0.9, "log₁₀/g", (0.8, 1.0), ListeriaCheeses, "brined cheese, Listeria, 3 % lost to the whey; added to the start, no growth", Secondhand }
    /// Density of toxin.
    TOXIN_DENSITY = { "Density from which staphylococcal toxin was found", 5.0, "log₁₀/g", (5.0, 7.5), RawMilkCheese, "5.06 to 5.55 in raw-milk cheese; 3 to 28 million in firm cheese", Secondhand }
    /// Start in clean hands.
    CLEAN_START = { "Germs at the start, milk pasteurised and hands clean", 1.0, "log₁₀/g", (0.0, 2.0), Ourselves, "an assumption", Judged }
    /// Start in careless hands.
    CARELESS_START = { "Staphylococcus aureus at the start, careless hands", 2.0, "log₁₀/g", (2.0, 3.0), Ourselves, "an assumption", Judged }
    /// Start in raw milk.
    RAW_MILK_START = { "Staphylococcus aureus in raw milk, advised to lie below", 2.0, "log₁₀/g", (1.6, 2.0), RawMilkCheese, "abstract: best below 1.6", Secondhand }
}

crate::correlations! {
    /// Limits of toxin.
    TOXIN_LIMITS = { "Staphylococcal toxin is made from", LIMITS, [10.0, 4.8, 0.86], "°C, pH, 1", (0.0, 45.0), "°C", AdamsMoss, "table 7.8; toxin A best at pH 5.3 to 6.8, made in nearly all conditions of growth (Notermans and Heuvelman 1983)", Published }
    /// Limits of the spore former of canned food, for the hours without air.
    AIRLESS_LIMITS = { "Clostridium botulinum, proteolytic: limits of growth without air", LIMITS, [10.0, 4.6, 0.935], "°C, pH, 1", (0.0, 45.0), "°C", BadBugBook, "with ICMSF; pH 4.6 is the legal limit, 10 % salt in the water from memory", FromMemory }
    /// Limits of the cold type, for the hours without air.
    COLD_AIRLESS_LIMITS = { "Clostridium botulinum, cold type: limits of growth without air", LIMITS, [3.0, 5.0, 0.97], "°C, pH, 1", (0.0, 45.0), "°C", Graham1997, "abstract: 3 °C, pH 5.0, 5 % salt in the water", Secondhand }
}
