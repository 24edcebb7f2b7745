//! The description of each member of a design: how it is called, shown, read and checked.

use super::{DesignError, Stage, Unit, Value, nearest};

/// One of the choices of an input.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Choice {
    /// The word on the command line and in the file.
    pub key: &'static str,
    /// The words in the window.
    pub label: &'static str,
}

/// What an input may hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Kind {
    /// A number in the field's unit.
    Number {
        /// Least allowed.
        least: f64,
        /// Greatest allowed.
        most: f64,
        /// What one press of an arrow key changes.
        step: f64,
        /// Counted, so whole.
        whole: bool,
    },
    /// One of a few.
    Choice(&'static [Choice]),
    /// On or off.
    Switch,
}

/// One input: everything that the form, the command line, the undo list, the file and the paper need to know of it.
///
/// `D` is the struct that holds the value: the whole design, or one described cheese.
#[derive(Clone, Copy)]
pub struct Field<D: 'static> {
    /// The member's name, unit included, unique in the whole design.
    pub key: &'static str,
    /// The stage it belongs to.
    pub stage: Stage,
    /// The words next to the control.
    pub label: &'static str,
    /// The unit in which it is kept.
    pub unit: Unit,
    /// What it may hold.
    pub kind: Kind,
    /// One sentence of help.
    pub help: &'static str,
    /// Whether it has any effect in this design; the form hides it where it has none.
    pub used: fn(&D) -> bool,
    /// Reads the value off new choices about the stage.
    pub(super) default: fn() -> Value,
    pub(super) read: fn(&D) -> Value,
    pub(super) write: fn(&mut D, Value),
}

impl<D> std::fmt::Debug for Field<D> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Field").field("key", &self.key).field("kind", &self.kind).finish_non_exhaustive()
    }
}

impl<D> Field<D> {
    /// Returns the value in this design.
    #[must_use]
    pub fn get(&self, design: &D) -> Value {
        (self.read)(design)
    }

    /// Returns the value that a new design has.
    #[must_use]
    pub fn default(&self) -> Value {
        (self.default)()
    }

    /// Sets the value in this design after checking it.
    ///
    /// # Errors
    /// [`DesignError`]; the design is then as it was.
    pub fn set(&self, design: &mut D, value: Value) -> Result<(), DesignError> {
        let value = self.check(value)?;
        (self.write)(design, value);
        Ok(())
    }

    /// Returns the value if it is of the right kind, finite and in range.
    ///
    /// # Errors
    /// [`DesignError`] with the range or the choices.
    pub fn check(&self, value: Value) -> Result<Value, DesignError> {
        match (self.kind, value) {
            (Kind::Number { least, most, whole, .. }, Value::Number(given)) => {
                let (label, key) = (self.label, self.key);
                if !given.is_finite() {
                    return Err(self.wrong_kind(given.to_string()));
                }
                let within = least <= given && given <= most;
                if !within {
                    return Err(DesignError::OutOfRange { label, key, given, least, most, unit: self.unit.symbol() });
                }
                if whole && given.fract() != 0.0 {
                    return Err(DesignError::NotWhole { label, key, given });
                }
                Ok(value)
            }
            (Kind::Choice(choices), Value::Choice(given)) if choices.iter().any(|choice| choice.key == given) => Ok(value),
            (Kind::Switch, Value::Switch(_)) => Ok(value),
            _ => Err(self.wrong_kind(value.to_string())),
        }
    }

    /// Reads a value as the command line writes it: a number with a dot or a comma, a choice by its key, `yes` or `no`.
    ///
    /// # Errors
    /// [`DesignError`] with what was expected.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::{field, Value};
    /// assert_eq!(field("milk_l")?.read("2,5")?, Value::Number(2.5));
    /// assert_eq!(field("milk_kind")?.read("sheep")?, Value::Choice("sheep"));
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    pub fn read(&self, text: &str) -> Result<Value, DesignError> {
        let text = text.trim();
        let wrong = || self.wrong_kind(text.to_owned());
        let value = match self.kind {
            Kind::Number { .. } => Value::Number(text.replace(',', ".").parse().map_err(|_| wrong())?),
            Kind::Choice(choices) => Value::Choice(choices.iter().find(|choice| choice.key == text).ok_or_else(wrong)?.key),
            Kind::Switch => Value::Switch(match text {
                "yes" | "true" | "on" | "1" => true,
                "no" | "false" | "off" | "0" => false,
                _ => return Err(wrong()),
            }),
        };
        self.check(value)
    }

    fn wrong_kind(&self, given: String) -> DesignError {
        let (label, key) = (self.label, self.key);
        match self.kind {
            Kind::Number { least, most, .. } => {
                DesignError::NotANumber { label, key, given, least, most, unit: self.unit.symbol() }
            }
            Kind::Choice(choices) => {
                let options = choices.iter().map(|choice| choice.key).collect::<Vec<_>>().join(", ");
                let nearest = nearest(&given, choices.iter().map(|choice| choice.key));
                DesignError::NotAChoice { label, key, given, options, nearest }
            }
            Kind::Switch => DesignError::NotASwitch { label, key, given },
        }
    }
}

/// What holds the choices about a stage: a design, or the choices themselves.
pub(super) trait Holds<Part> {
    /// Returns the choices.
    fn part(&self) -> &Part;
    /// Returns the choices, to be changed.
    fn part_mut(&mut self) -> &mut Part;
    /// Returns whether the pot is warmed in a bath of water; who holds the choices about one stage alone does not know and hides nothing.
    fn in_bath(&self) -> bool {
        true
    }
}

impl<Part> Holds<Part> for Part {
    fn part(&self) -> &Part {
        self
    }

    fn part_mut(&mut self) -> &mut Part {
        self
    }
}

/// The rows of the choices about a stage, for whatever holds them: so the choices need not know the design that they are part of.
pub(super) trait Rows<Root: 'static> {
    /// The description of each member, in the order of the form.
    const FIELDS: &'static [Field<Root>];
}

/// Declares one stage of the design: the struct, its defaults, and for each member its row.
///
/// A row reads: member, label, unit, default, range and step (for a number), help, after `when` the condition under which it has any effect, and
/// after `only` what must hold of the whole design for that.
macro_rules! stage_design {
    (
        $(#[$struct_doc:meta])*
        $name:ident in $stage:ident {
            $( $kind:ident $key:ident : $label:literal, $($spec:expr),+ ; $help:literal $(, when $used:expr)? $(, only $whole:ident)? ; )+
        }
    ) => {
        $(#[$struct_doc])*
        #[derive(Clone, Copy, Debug, PartialEq)]
        pub struct $name {
            $( #[doc = $help] pub $key: stage_design!(@type $kind $($spec),+), )+
        }
        impl Default for $name {
            fn default() -> Self {
                Self { $( $key: stage_design!(@default $kind $($spec),+), )+ }
            }
        }
        impl<Root: $crate::design::field::Holds<Self> + 'static> $crate::design::field::Rows<Root> for $name {
            const FIELDS: &'static [$crate::design::field::Field<Root>] = &[ $(
                $crate::design::field::Field {
                    key: stringify!($key),
                    stage: $crate::design::Stage::$stage,
                    label: $label,
                    unit: stage_design!(@unit $kind $($spec),+),
                    kind: stage_design!(@kind $kind $($spec),+),
                    help: $help,
                    used: |root| {
                        let used: fn(&Self) -> bool = stage_design!(@used $($used)?);
                        used($crate::design::field::Holds::<Self>::part(root))
                            $(&& $crate::design::field::Holds::<Self>::$whole(root))?
                    },
                    default: || stage_design!(@read $kind Self::default().$key),
                    read: |root| stage_design!(@read $kind root.part().$key),
                    write: |root, value| stage_design!(@write $kind root.part_mut().$key, value),
                },
            )+ ];
        }
    };
    (@type number $($spec:expr),+) => { f64 };
    (@type count $($spec:expr),+) => { u32 };
    (@type switch $($spec:expr),+) => { bool };
    (@type $choice:ident $($spec:expr),+) => { $crate::design::$choice };
    (@default number $unit:expr, $default:expr, $range:expr, $step:expr) => { $default };
    (@default count $unit:expr, $default:expr, $range:expr, $step:expr) => { $default };
    (@default switch $default:expr) => { $default };
    (@default $choice:ident $default:expr) => { $default };
    (@unit number $unit:expr, $default:expr, $range:expr, $step:expr) => { $unit };
    (@unit count $unit:expr, $default:expr, $range:expr, $step:expr) => { $unit };
    (@unit switch $default:expr) => { $crate::design::Unit::One };
    (@unit $choice:ident $default:expr) => { $crate::design::Unit::One };
    (@kind number $unit:expr, $default:expr, $range:expr, $step:expr) => {
        $crate::design::Kind::Number { least: *$range.start(), most: *$range.end(), step: $step, whole: false }
    };
    (@kind count $unit:expr, $default:expr, $range:expr, $step:expr) => {
        $crate::design::Kind::Number { least: *$range.start() as f64, most: *$range.end() as f64, step: $step as f64, whole: true }
    };
    (@kind switch $default:expr) => { $crate::design::Kind::Switch };
    (@kind $choice:ident $default:expr) => { $crate::design::Kind::Choice($crate::design::$choice::CHOICES) };
    (@used) => { |_| true };
    (@used $used:expr) => { $used };
    (@read number $place:expr) => { $crate::design::Value::Number($place) };
    (@read count $place:expr) => { $crate::design::Value::Number(f64::from($place)) };
    (@read switch $place:expr) => { $crate::design::Value::Switch($place) };
    (@read $choice:ident $place:expr) => { $crate::design::Value::Choice($place.key()) };
    (@write number $place:expr, $value:ident) => { if let $crate::design::Value::Number(number) = $value { $place = number; } };
    // Checked to be whole and in range before it gets here, so nothing is cut off.
    (@write count $place:expr, $value:ident) => { if let $crate::design::Value::Number(number) = $value { $place = number as u32; } };
    (@write switch $place:expr, $value:ident) => { if let $crate::design::Value::Switch(on) = $value { $place = on; } };
    (@write $choice:ident $place:expr, $value:ident) => {
        if let $crate::design::Value::Choice(key) = $value { if let Some(choice) = $crate::design::$choice::from_key(key) { $place = choice; } }
    };
}
pub(super) use stage_design;
