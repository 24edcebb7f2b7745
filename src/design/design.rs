//! Everything the maker chooses for one vat, and every input of it.

use super::field::{Holds, Rows};
use super::{
    DesignError, DrainingDesign, DryingDesign, Heating, KeepingDesign, KnownKitchen, MilkDesign, PicklingDesign, SaltingDesign,
    SuppliesDesign, Value, VatDesign, WeekDesign,
};

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
    /// The kitchen in which it is made, as its log tells; none where nothing but what is believed of all kitchens is known.
    pub kitchen: Option<KnownKitchen>,
}

/// Has a design hold the choices about each stage, so that their rows are rows of the design.
macro_rules! holds {
    ($($member:ident: $part:ty),+ $(,)?) => { $(
        impl Holds<$part> for Design {
            fn part(&self) -> &$part { &self.$member }
            fn part_mut(&mut self) -> &mut $part { &mut self.$member }
            fn in_bath(&self) -> bool { self.vat.heating == Heating::Bath }
        }
    )+ };
}
holds! {
    milk: MilkDesign,
    vat: VatDesign,
    draining: DrainingDesign,
    salting: SaltingDesign,
    drying: DryingDesign,
    pickling: PicklingDesign,
    keeping: KeepingDesign,
}

/// One input of a design, or of the cheese that is described for one stage alone.
pub type Field<D = Design> = super::field::Field<D>;

/// The inputs that decide what is bought, each with a name for where there is little room; the window keeps them in sight at every stage. Of the
/// second and third a design uses one.
pub const BEFORE_BUYING: [(&str, &str); 5] = [
    ("milk_l", "Milk"),
    ("fat_target_percent", "Fat target"),
    ("cream_on_hand_ml", "Cream"),
    ("cream_strength_percent", "Cream fat"),
    ("mould_count", "Moulds"),
];

/// Returns every input of every stage, in the trade's order.
///
/// # Example
/// ```
/// let keys: Vec<_> = vatsketch::design::fields().map(|field| field.key).collect();
/// assert_eq!(keys[0], "milk_l");
/// ```
pub fn fields() -> impl Iterator<Item = &'static Field> {
    [
        MilkDesign::FIELDS,
        VatDesign::FIELDS,
        DrainingDesign::FIELDS,
        SaltingDesign::FIELDS,
        DryingDesign::FIELDS,
        PicklingDesign::FIELDS,
        KeepingDesign::FIELDS,
    ]
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

    /// Returns whether another design makes the same cheese in the same kitchen: title, note, week and supplies change nothing that a stage calculates.
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
        let Self { title: _, note: _, week: _, supplies: _, milk, vat, draining, salting, drying, pickling, keeping, kitchen } =
            self;
        (milk, vat, draining) == (&other.milk, &other.vat, &other.draining)
            && (salting, drying, pickling, keeping) == (&other.salting, &other.drying, &other.pickling, &other.keeping)
            && *kitchen == other.kitchen
    }

    /// Checks that every number is finite and in its range.
    ///
    /// # Errors
    /// The first [`DesignError`], in the order of the stages.
    pub fn check(&self) -> Result<(), DesignError> {
        fields().try_for_each(|field| field.check(field.get(self)).map(drop))?;
        self.week.check()?;
        self.supplies.check()?;
        self.kitchen.as_ref().map_or(Ok(()), KnownKitchen::check)
    }
}
