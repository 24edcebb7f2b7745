//! How the types of a format are declared: their members, what a missing one means, and the step from the format before.

/// Declares one stage as it is in a file.
///
/// A row is a member, its type and the value that a file means which leaves it out. A row that begins with `+` is a member that the format
/// before did not know; `before` names the value that such a file gets. `after` names the same stage of the format before; `for` the stage of
/// the working design, in the newest format only.
macro_rules! frozen_stage {
    ($(#[$doc:meta])* $name:ident ($(after $before:ty;)? $(for $design:ty;)?) $members:tt) => {
        $crate::file::frozen::frozen_stage!(@type $(#[$doc])* $name $members);
        $( $crate::file::frozen::frozen_stage!(@step $name, $before, $members); )?
        $( $crate::file::frozen::frozen_stage!(@design $name, $design, $members); )?
    };
    (@type $(#[$doc:meta])* $name:ident {
        $( $member:ident: $type:ty = $default:expr; )+ $( + $new:ident: $new_type:ty = $new_default:expr, before $step:expr; )*
    }) => {
        $(#[$doc])*
        #[derive(serde::Serialize, serde::Deserialize)]
        #[serde(deny_unknown_fields, default)]
        #[allow(clippy::struct_field_names, reason = "a key is unique in the whole file, so it names its stage")]
        pub(in crate::file) struct $name {
            $( pub(in crate::file) $member: $type, )+
            $( pub(in crate::file) $new: $new_type, )*
        }

        impl Default for $name {
            fn default() -> Self {
                Self { $( $member: $default, )+ $( $new: $new_default, )* }
            }
        }
    };
    (@step $name:ident, $before:ty, {
        $( $member:ident: $type:ty = $default:expr; )+ $( + $new:ident: $new_type:ty = $new_default:expr, before $step:expr; )*
    }) => {
        impl From<$before> for $name {
            fn from(saved: $before) -> Self {
                type Before = $before;
                // Taken apart, so that no member is forgotten on the way.
                let Before { $( $member, )+ } = saved;
                Self { $( $member: $member.into(), )+ $( $new: $step, )* }
            }
        }
    };
    (@design $name:ident, $design:ty, {
        $( $member:ident: $type:ty = $default:expr; )+ $( + $new:ident: $new_type:ty = $new_default:expr, before $step:expr; )*
    }) => {
        impl From<$design> for $name {
            fn from(design: $design) -> Self {
                type Design = $design;
                let Design { $( $member, )+ $( $new, )* } = design;
                Self { $( $member: $member.into(), )+ $( $new: $new.into(), )* }
            }
        }

        impl From<$name> for $design {
            fn from(saved: $name) -> Self {
                let $name { $( $member, )+ $( $new, )* } = saved;
                Self { $( $member: $member.into(), )+ $( $new: $new.into(), )* }
            }
        }
    };
}
pub(super) use frozen_stage;

/// Declares the words for what is one of a few, as they are in a file.
///
/// `after`, `for` and `+` are as for a stage; what the format before did not know needs no value.
macro_rules! frozen_choices {
    ($( $name:ident ($(after $before:ty;)? $(for $design:ty;)?) $words:tt )+) => { $(
        $crate::file::frozen::frozen_choices!(@type $name $words);
        $( $crate::file::frozen::frozen_choices!(@step $name, $before, $words); )?
        $( $crate::file::frozen::frozen_choices!(@design $name, $design, $words); )?
    )+ };
    (@type $name:ident { $( $variant:ident = $word:literal ),+ $(, + $new:ident = $new_word:literal )* }) => {
        #[derive(Clone, Copy, serde::Serialize, serde::Deserialize)]
        pub(in crate::file) enum $name {
            $( #[serde(rename = $word)] $variant, )+
            $( #[serde(rename = $new_word)] $new, )*
        }
    };
    (@step $name:ident, $before:ty, { $( $variant:ident = $word:literal ),+ $(, + $new:ident = $new_word:literal )* }) => {
        impl From<$before> for $name {
            fn from(saved: $before) -> Self {
                type Before = $before;
                match saved { $( Before::$variant => Self::$variant, )+ }
            }
        }
    };
    (@design $name:ident, $design:ty, { $( $variant:ident = $word:literal ),+ $(, + $new:ident = $new_word:literal )* }) => {
        impl From<$design> for $name {
            fn from(choice: $design) -> Self {
                type Design = $design;
                match choice { $( Design::$variant => Self::$variant, )+ $( Design::$new => Self::$new, )* }
            }
        }

        impl From<$name> for $design {
            fn from(saved: $name) -> Self {
                match saved { $( $name::$variant => Self::$variant, )+ $( $name::$new => Self::$new, )* }
            }
        }
    };
}
pub(super) use frozen_choices;
