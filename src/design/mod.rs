//! What the maker chooses: plain data, one struct a stage, and beside each member one row that says its label, unit, range and help.
//!
//! Form, command line, undo, file and paper all follow from the rows that [`fields`] lists; a new input is a new row.

mod choices;
mod described;
mod described_pickling;
mod draining;
mod drying;
mod error;
mod field;
mod id;
mod keeping;
mod milk;
mod pickling;
mod salting;
mod supplies;
mod unit;
mod value;
mod vat;
mod week;
mod wording;

pub use choices::{
    BuyFor, CalciumForm, CreamBy, DryingPlace, Good, Habitual, Heating, JarLay, KeptIn, MilkKind, MilkTreatment, PhKnown, PotRest,
    RennetLabel, VinegarBy,
};
pub use described::{DESCRIBED_CHEESE_FIELDS, DescribedCheese};
pub use described_pickling::{DESCRIBED_PICKLING_FIELDS, DescribedPickling};
pub use draining::DrainingDesign;
pub use drying::DryingDesign;
pub use error::{DesignError, nearest};
pub use field::{Choice, Field, Kind};
pub use id::DesignId;
pub use keeping::KeepingDesign;
pub use milk::MilkDesign;
pub use pickling::PicklingDesign;
pub use salting::SaltingDesign;
pub(crate) use supplies::MOST_GIVEN;
pub use supplies::{Offer, SuppliesDesign, Supply};
pub use unit::Unit;
pub use value::Value;
pub use vat::VatDesign;
pub use week::{BusyOnce, Reached, TakenHours, WeekDesign, Wish, hour, moment, read_hour, read_moment};
pub use wording::{hours_in_words, lower_first};

/// The stages, in the trade's order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Stage {
    /// Milk, cream, calcium and rennet.
    Milk,
    /// Warming, setting and cutting.
    Vat,
    /// Draining in the moulds.
    Draining,
    /// Salting between the turns.
    Salting,
    /// Drying in a cabinet or in the open air.
    Drying,
    /// Souring in vinegar.
    Pickling,
    /// The jar, and how long it may stand.
    Keeping,
}

impl Stage {
    /// Every stage, in the trade's order.
    pub const ALL: [Self; 7] = [Self::Milk, Self::Vat, Self::Draining, Self::Salting, Self::Drying, Self::Pickling, Self::Keeping];

    /// Returns the word used as a key on the command line and in JSON.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Milk => "milk",
            Self::Vat => "vat",
            Self::Draining => "draining",
            Self::Salting => "salting",
            Self::Drying => "drying",
            Self::Pickling => "pickling",
            Self::Keeping => "keeping",
        }
    }

    /// Returns the heading in a word or two, where there is little room.
    #[must_use]
    pub const fn short_title(self) -> &'static str {
        match self {
            Self::Draining => "Moulds",
            Self::Salting => "Salt",
            Self::Keeping => "Jar",
            _ => self.title(),
        }
    }

    /// Returns the heading of the stage.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Milk => "Milk",
            Self::Vat => "Vat",
            Self::Draining => "Moulds and draining",
            Self::Salting => "Salt and pepper",
            Self::Drying => "Drying",
            Self::Pickling => "Vinegar",
            Self::Keeping => "Jar and keeping",
        }
    }
}

/// Everything the maker chooses for one vat.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Design {
    /// The maker's name for it.
    pub title: String,
    /// The maker's own words about it.
    pub note: String,
    /// Milk, cream, calcium and rennet.
    pub milk: MilkDesign,
    /// Warming, setting and cutting.
    pub vat: VatDesign,
    /// Moulds and draining.
    pub draining: DrainingDesign,
    /// Salting.
    pub salting: SaltingDesign,
    /// Drying.
    pub drying: DryingDesign,
    /// Souring in vinegar.
    pub pickling: PicklingDesign,
    /// The jar and its keeping.
    pub keeping: KeepingDesign,
    /// The maker's week.
    pub week: WeekDesign,
    /// Where everything comes from.
    pub supplies: SuppliesDesign,
}

/// Returns every input of every stage, in the trade's order.
///
/// # Example
/// ```
/// let keys: Vec<_> = vatsketch::design::fields().map(|field| field.key).collect();
/// assert_eq!(keys[0], "milk_l");
/// ```
pub fn fields() -> impl Iterator<Item = &'static Field> {
    [milk::FIELDS, vat::FIELDS, draining::FIELDS, salting::FIELDS, drying::FIELDS, pickling::FIELDS, keeping::FIELDS]
        .into_iter()
        .flatten()
}

/// Returns the input with this key.
///
/// # Errors
/// [`DesignError::UnknownKey`], with the nearest known key.
///
/// # Example
/// ```
/// use vatsketch::design::{field, DesignError};
/// assert_eq!(field("milk_l")?.label, "Milk");
/// assert!(field("mlik_l").unwrap_err().to_string().contains("milk_l"));
/// # Ok::<(), DesignError>(())
/// ```
pub fn field(key: &str) -> Result<&'static Field, DesignError> {
    fields().find(|field| field.key == key).ok_or_else(|| DesignError::unknown_key(key, fields().map(|field| field.key)))
}

impl Design {
    /// Returns the value of one input.
    ///
    /// # Errors
    /// [`DesignError::UnknownKey`].
    pub fn get(&self, key: &str) -> Result<Value, DesignError> {
        Ok(field(key)?.get(self))
    }

    /// Sets one input, after checking that the value is of its kind and in its range.
    ///
    /// # Errors
    /// [`DesignError`]; the design is then as it was.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::{Design, Value};
    /// let mut design = Design::default();
    /// design.set("milk_l", Value::Number(7.5))?;
    /// assert_eq!(design.milk.milk_l, 7.5);
    /// assert!(design.set("milk_l", Value::Number(f64::NAN)).is_err());
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    pub fn set(&mut self, key: &str, value: Value) -> Result<(), DesignError> {
        field(key)?.set(self, value)
    }

    /// Returns whether another design makes the same cheese: title, note, week and supplies change nothing that a stage works out.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::{Design, Value};
    /// let (one, mut other) = (Design::default(), Design { title: "Renamed".to_owned(), ..Design::default() });
    /// assert!(one != other && one.same_cheese(&other));
    /// other.set("milk_l", Value::Number(7.0))?;
    /// assert!(!one.same_cheese(&other));
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    #[must_use]
    pub fn same_cheese(&self, other: &Self) -> bool {
        // Taken apart, so that a new member must be thought of here.
        let Self { title: _, note: _, week: _, supplies: _, milk, vat, draining, salting, drying, pickling, keeping } = self;
        (milk, vat, draining) == (&other.milk, &other.vat, &other.draining)
            && (salting, drying, pickling, keeping) == (&other.salting, &other.drying, &other.pickling, &other.keeping)
    }

    /// Checks that every number is finite and in its range.
    ///
    /// # Errors
    /// The first [`DesignError`], in the order of the stages.
    pub fn check(&self) -> Result<(), DesignError> {
        fields().try_for_each(|field| field.check(field.get(self)).map(drop))?;
        self.week.check()?;
        self.supplies.check()
    }
}
