//! What tells one design from every other, whatever its title.

use super::DesignError;
use std::fmt::{Display, Formatter};
use uuid::{Uuid, Version};

/// The random id of a design: a file keeps it, and the events of its calendar are named by it.
///
/// It is no part of a [`super::Design`]: two designs of the same choices are the same, whatever their ids.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct DesignId(Uuid);

impl DesignId {
    /// Returns the id with these random bits; whoever draws them stands at the edge of the house.
    ///
    /// # Source
    /// RFC 9562, 5.4: 122 of the bits are kept, the other six say that the id is random.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::DesignId;
    /// assert_eq!(DesignId::from_random_bits(0).to_string(), "00000000-0000-4000-8000-000000000000");
    /// ```
    #[must_use]
    pub const fn from_random_bits(bits: u128) -> Self {
        Self(uuid::Builder::from_random_bytes(bits.to_be_bytes()).into_uuid())
    }

    /// Reads an id as a file has it.
    ///
    /// # Errors
    /// [`DesignError::NoId`] for a text that is no random UUID.
    ///
    /// # Example
    /// ```
    /// use vatsketch::design::DesignId;
    /// let id = DesignId::read("5b0f6a4e-3c1d-4f7a-9d2e-8a61c70b94f3")?;
    /// assert_eq!(id.to_string(), "5b0f6a4e-3c1d-4f7a-9d2e-8a61c70b94f3");
    /// assert!(DesignId::read("my first vat").is_err());
    /// # Ok::<(), vatsketch::design::DesignError>(())
    /// ```
    pub fn read(text: &str) -> Result<Self, DesignError> {
        let random = |id: &Uuid| id.get_version() == Some(Version::Random);
        let refused = || DesignError::NoId { given: text.chars().take(MOST_SHOWN).collect() };
        Uuid::try_parse(text).ok().filter(random).map(Self).ok_or_else(refused)
    }

    /// Returns the id as the namespace in which names are counted.
    #[must_use]
    pub const fn as_uuid(&self) -> &Uuid {
        &self.0
    }
}

/// The most letters of a wrong id that an error repeats.
const MOST_SHOWN: usize = 60;

impl Display for DesignId {
    fn fmt(&self, f: &mut Formatter<'_>) -> std::fmt::Result {
        self.0.hyphenated().fmt(f)
    }
}
