//! The records: one number, or one set of coefficients, and where it comes from.

use serde::{Deserialize, Serialize};

/// How far a number can be trusted, from a table that we read to our own judgement.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Standing {
    /// Seen in the published source itself.
    Published,
    /// Seen as an abstract or as somebody else's quotation.
    Secondhand,
    /// From memory; the source text was not seen.
    FromMemory,
    /// Fitted to, or computed from, other numbers named in the locator.
    Fitted,
    /// Our own judgement; weak, and meant to be calibrated by the maker's own log.
    Judged,
}

impl Standing {
    /// Returns the standing in plain words, as the window and the paper print it.
    ///
    /// # Example
    /// ```
    /// use vatsketch::source::Standing;
    /// assert_eq!(Standing::Judged.words(), "our own judgement");
    /// ```
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Published => "published",
            Self::Secondhand => "published, seen second-hand",
            Self::FromMemory => "from memory",
            Self::Fitted => "fitted",
            Self::Judged => "our own judgement",
        }
    }
}

/// Names a row of the ledger `resources/sources.ron`.
///
/// Written by `serde`, it is its key: the name of the variant, in the ledger and in JSON for scripts. A variant keeps its name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub enum SourceId {
    /// USDA National Nutrient Database for Standard Reference.
    UsdaStandardReference,
    /// Dairy science and cheese notes, University of Guelph.
    GuelphNotes,
    /// Mahmood and Usman 2010, composition and acidity of milks.
    MahmoodUsman2010,
    /// Asian-Australasian Journal of Animal Sciences 29:1022.
    Ajas2016,
    /// Yield of sheep's milk in small vats.
    CipolatGotet2016,
    /// Van Slyke's rule for casein from fat, and the Van Slyke and Price yield formula.
    VanSlyke1914,
    /// Kell 1975, density of water.
    Kell1975,
    /// Codex general standard for cheese, CXS 283.
    Codex283,
    /// Code of Federal Regulations, title 21.
    Cfr21,
    /// Grade "A" Pasteurized Milk Ordinance of the United States.
    PasteurizedMilkOrdinance,
    /// CRC Handbook of Chemistry and Physics, concentrative properties.
    CrcHandbook,
    /// ISO 11815 | IDF 157, total milk-clotting activity.
    Iso11815,
    /// Fleischmann's table of rennet activity against temperature.
    Fleischmann,
    /// Journal of Dairy Science 41:61, 1958, calcium chloride and rennet.
    JDairySci1958,
    /// Castillo 2000 and Marshall 1982, first-order syneresis.
    MarshallCastillo,
    /// Dejmek and Walstra, syneresis of rennet-coagulated curd.
    DejmekWalstra,
    /// van Dijk, Walstra and Schenk 1984, whey out of a gel by Darcy's law.
    VanDijk1984,
    /// Floury et al. 2010, salt in cheese.
    Floury2010,
    /// Water and salt in brined cheese, three studies.
    BrinedCheese,
    /// Water that casein curds and gels hold.
    CaseinWater,
    /// Water in drying cheese, two studies.
    CheeseDrying,
    /// Water activity at the edge of a ripened cheese.
    CheeseSorption2011,
    /// NIST Handbook 44, units of measure.
    NistHandbook44,
    /// Weights and Measures Act 1985 of the United Kingdom, schedule 1.
    WeightsAndMeasures1985,
    /// ASHRAE Handbook, Refrigeration: thermal properties of foods (Choi and Okos 1986).
    AshraeRefrigeration,
    /// ASHRAE Handbook, Fundamentals: psychrometrics (Hyland and Wexler).
    AshraeFundamentals,
    /// Geankoplis, Earle and IASRI tables of the specific heat of milk.
    MilkHeatTables,
    /// Journal of Dairy Science 51:520, 1968, deposits on heated walls.
    JDairySci1968,
    /// Perry's Chemical Engineers' Handbook, table 11-7.
    Perry,
    /// Cengel 2008, Introduction to Thermodynamics and Heat Transfer.
    Cengel2008,
    /// Crank 1975, The Mathematics of Diffusion (and Newman 1931, 1936).
    Crank1975,
    /// Mackie and Meares 1955, obstruction to diffusion.
    MackieMeares1955,
    /// Pitzer and Mayorga 1973, osmotic coefficients of electrolytes.
    PitzerMayorga1973,
    /// United States Standard Atmosphere 1976.
    StandardAtmosphere1976,
    /// CODATA recommended values.
    Codata,
    /// General textbooks of engineering and physical chemistry.
    Textbook,
    /// FDA Risk Profile: Pathogens and Filth in Spices, 2013 and 2017.
    SpiceRiskProfile,
    /// Powers et al. 1976, Bacillus cereus in processed spices.
    Powers1976,
    /// A survey of 200 spices for Bacillus cereus and other bacilli.
    SpiceBacilli,
    /// FDA Food Code and hazard guides.
    FoodCode,
    /// FDA Bad Bug Book and USDA pathogen modelling program, growth minima.
    BadBugBook,
    /// Regulation (EU) 1169/2011, food information to consumers.
    FoodInformation,
    /// Extension pages on food in oil.
    OilGuidance,
    /// Published reports of botulism from cheese.
    BotulismReports,
    /// Reports and trials of pickled eggs.
    PickledEggs,
    /// Harned and Ehlers 1933, dissociation of acetic acid.
    HarnedEhlers1933,
    /// Lucey et al. 1993, buffering of cheese on acidification.
    Lucey1993,
    /// Fermentation 5:2, 2019, cardinal values of a mixed culture.
    Fermentation2019,
    /// Niki 2000, gelling of milk by glucono-delta-lactone.
    Niki2000,
    /// Measured pH curves of yoghurt cultures.
    YoghurtCurves,
    /// Tables of what cultures like.
    CultureTables,
    /// Metzger 2000, milk acidified before it is set.
    Metzger2000,
    /// Fox and McSweeney, dairy chemistry and biochemistry.
    FoxMcSweeney,
    /// FDA compliance policy guide 525.825, vinegar.
    VinegarGuide,
    /// Gangsei et al., growth of Listeria monocytogenes (Le Marc 2002, Augustin 2005).
    DynamicListeria,
    /// The GroPIN database of growth models.
    GroPin,
    /// The R package qraLm of WHO and FAO (Mejlholm and Dalgaard 2009, 2010).
    QraLm,
    /// Medvedova et al. 2019, growth of Staphylococcus aureus.
    Medvedova2019,
    /// Adams and Moss, Food Microbiology.
    AdamsMoss,
    /// Graham et al. 1996 and 1997, non-proteolytic botulinum in the cold.
    Graham1997,
    /// Wemmenhove et al. 2016, acids and Listeria in cheese.
    Wemmenhove2016,
    /// Ostling and Lindgren 1993, acids and enterobacteria.
    OstlingLindgren1993,
    /// Acids and Staphylococcus aureus.
    StaphylococcusAcid,
    /// Wong and Chen 1988, acids and Bacillus cereus.
    WongChen1988,
    /// Lag of Staphylococcus aureus in milk.
    StaphylococcusLag,
    /// Growth of 16 isolates of Bacillus cereus in milk.
    CereusIsolates,
    /// Listeria in whey cheese, fresh cheese and brined cheese.
    ListeriaCheeses,
    /// Staphylococci and toxin in raw-milk cheese.
    RawMilkCheese,
    /// Regulation (EC) 2073/2005, microbiological criteria.
    EuMicrobiology,
    /// A national agency on chilled food without air.
    AirlessAdvice,
    /// Common practice of home makers; no source.
    CommonPractice,
    /// Our own computation or judgement, as the locator says.
    Ourselves,
}

/// One number of the calculation, with everything a reader needs to doubt it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Constant {
    /// What it is, in words.
    pub name: &'static str,
    /// The value, in `unit`.
    pub value: f64,
    /// Unit symbol; `1` where it has none.
    pub unit: &'static str,
    /// Least and greatest plausible value, in `unit`.
    pub range: (f64, f64),
    /// The ledger row.
    pub source: SourceId,
    /// Where in the source.
    pub locator: &'static str,
    /// How far to trust it.
    pub standing: Standing,
}

/// The coefficients of one published formula, with the range in which it was fitted; how many there are is part of the type.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Correlation<const N: usize> {
    /// What it gives, in words.
    pub name: &'static str,
    /// The formula, in words or symbols, in the order of the coefficients.
    pub form: &'static str,
    /// The coefficients, in the order of `form`.
    pub coefficients: [f64; N],
    /// Unit of the result.
    pub unit: &'static str,
    /// Least and greatest argument for which it holds, in `valid_in`.
    pub valid: (f64, f64),
    /// Unit of `valid`.
    pub valid_in: &'static str,
    /// The ledger row.
    pub source: SourceId,
    /// Where in the source.
    pub locator: &'static str,
    /// How far to trust it.
    pub standing: Standing,
}

/// A formula with any number of coefficients, as the list of all of them has it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AnyCorrelation {
    /// What it gives, in words.
    pub name: &'static str,
    /// The formula, in words or symbols, in the order of the coefficients.
    pub form: &'static str,
    /// The coefficients, in the order of `form`.
    pub coefficients: &'static [f64],
    /// Unit of the result.
    pub unit: &'static str,
    /// Least and greatest argument for which it holds, in `valid_in`.
    pub valid: (f64, f64),
    /// Unit of `valid`.
    pub valid_in: &'static str,
    /// The ledger row.
    pub source: SourceId,
    /// Where in the source.
    pub locator: &'static str,
    /// How far to trust it.
    pub standing: Standing,
}

impl<const N: usize> Correlation<N> {
    /// Returns the record without the number of its coefficients in its type.
    #[must_use]
    pub const fn any(&'static self) -> AnyCorrelation {
        AnyCorrelation {
            name: self.name,
            form: self.form,
            coefficients: &self.coefficients,
            unit: self.unit,
            valid: self.valid,
            valid_in: self.valid_in,
            source: self.source,
            locator: self.locator,
            standing: self.standing,
        }
    }

    /// Returns the polynomial Σ cᵢ tⁱ of the coefficients, in [`Correlation::unit`].
    ///
    /// # Arguments
    /// * `t`: the argument, in [`Correlation::valid_in`]; the range is not checked here
    ///
    /// # Example
    /// ```
    /// use vatsketch::source::{Correlation, SourceId, Standing};
    /// let line = Correlation {
    ///     name: "a line", form: "a + b t", coefficients: [1.0, 2.0], unit: "1", valid: (0.0, 9.0),
    ///     valid_in: "1", source: SourceId::Textbook, locator: "", standing: Standing::Published,
    /// };
    /// assert_eq!(line.polynomial(3.0), 7.0);
    /// ```
    #[must_use]
    pub fn polynomial(&self, t: f64) -> f64 {
        self.coefficients.iter().rev().fold(0.0, |sum, c| sum.mul_add(t, *c))
    }
}

/// Declares constants, and a list of them all under the name `CONSTANTS`, so that none can be left out of the sources page.
#[macro_export]
macro_rules! constants {
    ($( $(#[$doc:meta])* $id:ident = { $name:expr, $value:expr, $unit:expr, $range:expr, $source:ident, $locator:expr, $standing:ident $(,)? } )*) => {
        $( $(#[$doc])* pub const $id: $crate::source::Constant = $crate::source::Constant {
            name: $name, value: $value, unit: $unit, range: $range,
            source: $crate::source::SourceId::$source, locator: $locator, standing: $crate::source::Standing::$standing,
        }; )*
        /// Every constant of this module.
        pub const CONSTANTS: &[$crate::source::Constant] = &[$($id),*];
    };
}

/// Declares correlations, and a list of them all under the name `CORRELATIONS`.
#[macro_export]
macro_rules! correlations {
    ($( $(#[$doc:meta])* $id:ident = { $name:expr, $form:expr, $coefficients:expr, $unit:expr, $valid:expr, $valid_in:expr, $source:ident, $locator:expr, $standing:ident $(,)? } )*) => {
        $( $(#[$doc])* pub const $id: $crate::source::Correlation<{ $coefficients.len() }> = $crate::source::Correlation {
            name: $name, form: $form, coefficients: $coefficients, unit: $unit, valid: $valid, valid_in: $valid_in,
            source: $crate::source::SourceId::$source, locator: $locator, standing: $crate::source::Standing::$standing,
        }; )*
        /// Every correlation of this module.
        pub const CORRELATIONS: &[$crate::source::AnyCorrelation] = &[$($id.any()),*];
    };
}
