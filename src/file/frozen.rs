//! How the frozen types of a format are declared.

/// Declares one stage as it stands in a file, with the way there and back.
macro_rules! saved_stage {
    ($name:ident, $design:ident { $($member:ident: $type:ty),+ $(,)? }) => {
        #[derive(serde::Serialize, serde::Deserialize)]
        #[serde(deny_unknown_fields, default)]
        #[allow(clippy::struct_field_names, reason = "a key is unique in the whole file, so it names its stage")]
        pub(in crate::file) struct $name { $($member: $type),+ }

        impl Default for $name {
            fn default() -> Self {
                Self::from($design::default())
            }
        }

        impl From<$design> for $name {
            fn from(design: $design) -> Self {
                let $design { $($member),+ } = design;
                Self { $($member: $member.into()),+ }
            }
        }

        impl From<$name> for $design {
            fn from(saved: $name) -> Self {
                let $name { $($member),+ } = saved;
                Self { $($member: $member.into()),+ }
            }
        }
    };
}
pub(super) use saved_stage;

/// Declares the words of one choice as they stand in a file, with the way there and back.
macro_rules! saved_choices {
    ($( $name:ident { $( $variant:ident = $word:literal ),+ $(,)? } )+) => { $(
        #[derive(Clone, Copy, serde::Serialize, serde::Deserialize)]
        pub(in crate::file) enum $name { $( #[serde(rename = $word)] $variant, )+ }

        impl From<$crate::design::$name> for $name {
            fn from(choice: $crate::design::$name) -> Self {
                match choice { $( $crate::design::$name::$variant => Self::$variant, )+ }
            }
        }

        impl From<$name> for $crate::design::$name {
            fn from(saved: $name) -> Self {
                match saved { $( $name::$variant => Self::$variant, )+ }
            }
        }
    )+ };
}
pub(super) use saved_choices;
