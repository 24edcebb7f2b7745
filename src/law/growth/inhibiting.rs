//! Amounts of undissociated acid from which a germ no longer grows, and how acids split and hinder.
//!
//! The greatest inhibiting amount is the cautious one: what needs more acid grows longer.

crate::constants! {
    /// pK of lactic acid.
    LACTIC_PK = { "pK of lactic acid, as the inhibiting amounts were worked out", 3.86, "1", (3.8, 3.9), QraLm, "in its code", Secondhand }
    /// pK of acetic acid.
    ACETIC_PK = { "pK of acetic acid, as the inhibiting amounts were worked out", 4.76, "1", (4.7, 4.8), QraLm, "in its code; not the pK among the salts of a cheese", Secondhand }
    /// First pK of citric acid.
    CITRIC_PK = { "First pK of citric acid, as the inhibiting amounts were worked out", 3.13, "1", (3.1, 3.2), QraLm, "in its code", Secondhand }
    /// How the factor of lactic acid falls.
    LACTIC_ALPHA = { "Power with which lactic acid hinders growth", 1.0, "1", (1.0, 1.0), QraLm, "in its code and in that of DynamicListeria", Secondhand }
    /// How the factor of acetic acid falls.
    ACETIC_ALPHA = { "Power with which acetic acid hinders growth", 0.5, "1", (0.5, 0.5), QraLm, "in its code and in that of DynamicListeria", Secondhand }
    /// Lactic acid that stops Listeria.
    LISTERIA_LACTIC = { "Listeria monocytogenes: inhibiting undissociated lactic acid", 3.79, "mmol/kg", (1.76, 9.0), QraLm, "Mejlholm and Dalgaard", Secondhand }
    /// Acetic acid that stops Listeria.
    LISTERIA_ACETIC = { "Listeria monocytogenes: inhibiting undissociated acetic acid", 10.3, "mmol/kg", (5.83, 25.5), QraLm, "Mejlholm and Dalgaard; below the average of cheese, so 19 or 25 is the cautious reading", Secondhand }
    /// The lower lactic acid.
    LISTERIA_LOW_LACTIC = { "Listeria monocytogenes: inhibiting undissociated lactic acid, low end", 1.76, "mmol/kg", (1.76, 3.79), DynamicListeria, "its table of cardinal values", Secondhand }
    /// The lower acetic acid.
    LISTERIA_LOW_ACETIC = { "Listeria monocytogenes: inhibiting undissociated acetic acid, low end", 5.83, "mmol/kg", (5.83, 10.3), DynamicListeria, "its table of cardinal values", Secondhand }
    /// Lactic acid that stops Listeria in cheese.
    LISTERIA_CHEESE_LACTIC = { "Listeria monocytogenes: inhibiting undissociated lactic acid in cheese", 5.0, "mmol/kg", (3.5, 6.5), Wemmenhove2016, "six strains, pH 5.2 to 5.6, 12 to 30 °C", Secondhand }
    /// Lactic acid that stops the hardiest strain.
    LISTERIA_HARDY_LACTIC = { "Listeria monocytogenes: inhibiting undissociated lactic acid, hardiest strain", 9.0, "mmol/kg", (9.0, 9.0), Wemmenhove2016, "one strain of six", Secondhand }
    /// Acetic acid that stops Listeria in cheese.
    LISTERIA_CHEESE_ACETIC = { "Listeria monocytogenes: inhibiting undissociated acetic acid in cheese", 19.0, "mmol/kg", (12.5, 25.5), Wemmenhove2016, "six strains, pH 5.2 to 5.6, 12 to 30 °C; a cautious reading", Secondhand }
    /// Acetic acid that stops the hardier strains.
    LISTERIA_HARDY_ACETIC = { "Listeria monocytogenes: inhibiting undissociated acetic acid, hardier strains", 25.0, "mmol/kg", (19.0, 25.5), Wemmenhove2016, "one standard deviation above the mean of six strains; the most cautious reading", Fitted }
    /// Citric acid that stops Listeria in cheese.
    LISTERIA_CHEESE_CITRIC = { "Listeria monocytogenes: inhibiting undissociated citric acid in cheese", 3.8, "mmol/kg", (2.9, 4.7), Wemmenhove2016, "six strains, pH 5.2 to 5.6, 12 to 30 °C", Secondhand }
    /// Lactic acid that stops Salmonella and E. coli.
    ENTERIC_LACTIC = { "Salmonella and Escherichia coli: inhibiting undissociated lactic acid", 11.0, "mmol/kg", (2.0, 11.0), OstlingLindgren1993, "23 enterobacteria, pH 4.2 to 5.4: the greatest", Secondhand }
    /// Acetic acid that stops Salmonella and E. coli.
    ENTERIC_ACETIC = { "Salmonella and Escherichia coli: inhibiting undissociated acetic acid", 14.0, "mmol/kg", (0.5, 14.0), OstlingLindgren1993, "23 enterobacteria, pH 4.2 to 5.4: the greatest", Secondhand }
    /// Lactic acid that stops S. aureus: the weakest number of all.
    STAPHYLOCOCCUS_LACTIC = { "Staphylococcus aureus: inhibiting undissociated lactic acid", 30.0, "mmol/kg", (5.0, 100.0), StaphylococcusAcid, "no published amount was found; its growth falls with it (Rosengren 2013) and it resists lactate (Houtsma 1993); the cautious end is no term at all, for which 100 stands", Judged }
    /// Acetic acid that stops S. aureus.
    STAPHYLOCOCCUS_ACETIC = { "Staphylococcus aureus: inhibiting undissociated acetic acid", 15.0, "mmol/kg", (8.0, 25.0), StaphylococcusAcid, "broth soured with it: growth at pH 5.2, 5.4 and 5.8, none at 5.0, 5.2 and 5.6, at 35, 25 and 15 °C (2002)", Judged }
    /// Lactic acid that stops B. cereus.
    CEREUS_LACTIC = { "Bacillus cereus: inhibiting undissociated lactic acid", 4.0, "mmol/kg", (1.8, 8.0), WongChen1988, "twice what 0.1 mol/L of lactate at pH 5.6 amounts to, which stopped cells; doubled by our judgement, spores resist more", Judged }
    /// Acetic acid that stops B. cereus.
    CEREUS_ACETIC = { "Bacillus cereus: inhibiting undissociated acetic acid", 9.0, "mmol/kg", (4.4, 18.0), WongChen1988, "twice what 0.1 mol/L of acetate at pH 6.1 amounts to, which stopped cells; doubled by our judgement", Judged }
}
