//! What a log has taught of the kitchen: a copy that a design keeps, so that it needs no other file.

use super::DesignError;
use jiff::civil::DateTime;

/// A kitchen that a design uses: its constants as its own batches tell them, in the place of those of all kitchens.
#[derive(Clone, Debug, PartialEq)]
pub struct KnownKitchen {
    /// What the maker calls it.
    pub name: String,
    /// The batches that it was learned from.
    pub learned_from: Vec<KitchenBatch>,
    /// Measurements that counted.
    pub measurements: u32,
    /// What they tell; nothing is said of all else.
    pub estimates: Vec<KitchenEstimate>,
}

/// A batch that a kitchen was learned from, as its record was then.
#[derive(Clone, Debug, PartialEq)]
pub struct KitchenBatch {
    /// Its number in the log.
    pub number: u32,
    /// What the maker called it.
    pub name: String,
    /// When it was begun.
    pub begun: DateTime,
    /// Entries in its record.
    pub entries: u32,
}

/// A range with the value within it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Believed {
    /// The most likely value.
    pub value: f64,
    /// What it is barely plausible to lie below.
    pub least: f64,
    /// What it is barely plausible to lie above.
    pub most: f64,
}

/// What is known of one quantity of a kitchen.
#[derive(Clone, Debug, PartialEq)]
pub struct KitchenEstimate {
    /// Its name in data: the key of an uncertain constant, or of the choice that says it.
    pub key: String,
    /// Its unit.
    pub unit: String,
    /// What is believed of it now.
    pub now: Believed,
    /// What was believed before, with which the estimate stands and falls: it holds for no other constant, such as the rate of another culture.
    pub before: Believed,
}

impl Believed {
    fn is_in_order(self) -> bool {
        [self.least, self.value, self.most].iter().all(|number| number.is_finite() && *number > 0.0)
            && self.least <= self.value
            && self.value <= self.most
    }
}

impl KnownKitchen {
    /// Checks that every estimate is a range in order, within what was believed before.
    ///
    /// # Errors
    /// [`DesignError::Kitchen`] with the estimate.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::{Believed, KitchenEstimate, KnownKitchen};
    /// let before = Believed { value: 1.0, least: 0.5, most: 2.0 };
    /// let own = KitchenEstimate { key: "bath_side".to_owned(), unit: "1".to_owned(), now: Believed { most: 3.0, ..before }, before };
    /// let kitchen = KnownKitchen { name: String::new(), learned_from: vec![], measurements: 4, estimates: vec![own] };
    /// assert!(kitchen.check().unwrap_err().to_string().contains("bath_side"));
    /// ```
    pub fn check(&self) -> Result<(), DesignError> {
        let refused = |key: &str, why: &str| Err(DesignError::Kitchen { key: key.to_owned(), why: why.to_owned() });
        for (at, estimate) in self.estimates.iter().enumerate() {
            let KitchenEstimate { key, now, before, .. } = estimate;
            if !(now.is_in_order() && before.is_in_order()) {
                return refused(key, "least, value and most must be positive numbers in this order");
            }
            let rounding = 1e-9 * before.most;
            if now.least < before.least - rounding || now.most > before.most + rounding {
                return refused(key, "what is believed now must lie within what was believed before");
            }
            if self.estimates.iter().take(at).any(|earlier| earlier.key == *key) {
                return refused(key, "it is there twice");
            }
        }
        Ok(())
    }

    /// Returns what is known of a quantity.
    #[must_use]
    pub fn of(&self, key: &str) -> Option<&KitchenEstimate> {
        self.estimates.iter().find(|estimate| estimate.key == key)
    }
}
