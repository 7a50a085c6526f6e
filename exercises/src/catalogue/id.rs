//! Identifiers of exercises, ladders and rungs. They never change, unlike a position in a list.

use core::fmt;
use std::sync::Arc;

/// Length of the longest identifier, in bytes (all its characters are ASCII).
pub const MAX_ID: usize = 32;

/// The reason why a text is not an identifier.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum IdFault {
    /// It has no character.
    Empty,
    /// It has more than 32 characters.
    TooLong,
    /// It has other characters than small letters a to z, digits and single hyphens between them.
    NotKebabCase,
}

impl fmt::Display for IdFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            IdFault::Empty => "empty identifier",
            IdFault::TooLong => "identifier of more than 32 characters",
            IdFault::NotKebabCase => "identifier that is not small letters, digits and single hyphens",
        })
    }
}

impl core::error::Error for IdFault {}

fn check(text: &str) -> Result<(), IdFault> {
    if text.is_empty() {
        return Err(IdFault::Empty);
    }
    if text.len() > MAX_ID {
        return Err(IdFault::TooLong);
    }
    let word = |part: &str| !part.is_empty() && part.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit());
    if text.split('-').all(word) { Ok(()) } else { Err(IdFault::NotKebabCase) }
}

macro_rules! identifier {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
        #[cfg_attr(feature = "serde", serde(try_from = "String", into = "String"))]
        pub struct $name(Arc<str>);

        impl $name {
            /// Makes an identifier from kebab-case ASCII text of 1 to 32 characters.
            ///
            /// # Errors
            /// [`IdFault`] says which of these conditions is not met.
            pub fn new(text: impl Into<String>) -> Result<Self, IdFault> {
                let text = text.into();
                check(&text)?;
                Ok(Self(text.into()))
            }

            /// The identifier as text.
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(&self.0)
            }
        }

        impl TryFrom<String> for $name {
            type Error = IdFault;
            fn try_from(text: String) -> Result<Self, IdFault> {
                Self::new(text)
            }
        }

        impl core::str::FromStr for $name {
            type Err = IdFault;
            fn from_str(text: &str) -> Result<Self, IdFault> {
                Self::new(text)
            }
        }

        impl From<$name> for String {
            fn from(id: $name) -> String {
                id.0.as_ref().to_owned()
            }
        }
    };
}

identifier! {
    /// Identifies an exercise. It stays the same through all revisions of the exercise's content.
    ExerciseId
}
identifier! {
    /// Identifies a ladder within its exercise.
    LadderId
}
identifier! {
    /// Identifies a rung within its exercise. It is unique over all the exercise's ladders and does not depend on the rung's
    /// place.
    RungId
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn kebab_case_of_up_to_32_characters_is_an_identifier() {
        for good in ["a", "one-leg-stand", "wall-sit-90", &"x".repeat(32)] {
            assert_eq!(ExerciseId::new(good).map(String::from), Ok(good.to_owned()));
        }
    }

    #[test]
    fn everything_else_is_refused_with_its_reason() {
        assert_eq!(RungId::new(""), Err(IdFault::Empty));
        assert_eq!(RungId::new("x".repeat(33)), Err(IdFault::TooLong));
        for bad in ["One-leg", "one leg", "one_leg", "-one", "one-", "one--leg", "pié"] {
            assert_eq!(RungId::new(bad), Err(IdFault::NotKebabCase), "{bad}");
        }
    }

    #[cfg(feature = "serde")]
    #[test]
    fn a_bad_identifier_does_not_come_in_through_serde_either() {
        assert!(serde_json::from_str::<ExerciseId>("\"one-leg-stand\"").is_ok());
        assert!(serde_json::from_str::<ExerciseId>("\"One leg\"").is_err());
    }
}
