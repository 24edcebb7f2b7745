//! A design in a known kitchen, and out of it again.

use super::{Design, DesignError, KnownKitchen, Value, field};

impl Design {
    /// Has the design use a kitchen. A choice that the kitchen knows better, such as the moisture at which the drip ends, is set to what is known.
    ///
    /// # Errors
    /// [`DesignError`] for a kitchen that says what cannot be; the design is then as it was.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::{Design, KnownKitchen};
    /// let kitchen = KnownKitchen { name: "an invented one".to_owned(), learned_from: vec![], measurements: 0, estimates: vec![] };
    /// let mut design = Design::default();
    /// design.use_kitchen(kitchen)?;
    /// assert_eq!(design.kitchen.as_ref().unwrap().name, "an invented one");
    /// design.leave_kitchen();
    /// assert_eq!(design, Design::default());
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    pub fn use_kitchen(&mut self, kitchen: KnownKitchen) -> Result<(), DesignError> {
        kitchen.check()?;
        self.leave_kitchen();
        for estimate in &kitchen.estimates {
            if let Ok(field) = field(&estimate.key) {
                field.set(self, Value::Number(estimate.now.value))?;
            }
        }
        self.kitchen = Some(kitchen);
        Ok(())
    }

    /// Has the design use what is believed of all kitchens. A choice that the kitchen had set is as it was before, unless it was changed since.
    pub fn leave_kitchen(&mut self) {
        let Some(kitchen) = self.kitchen.take() else { return };
        for estimate in &kitchen.estimates {
            let Ok(field) = field(&estimate.key) else { continue };
            if field.get(self) == Value::Number(estimate.now.value) {
                // It was a choice of this design, and so is taken.
                let _ = field.set(self, Value::Number(estimate.before.value));
            }
        }
    }
}
