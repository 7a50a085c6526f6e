//! Ids of exercises that a clinic wrote itself.
//!
//! Several clinics may give the same name to different exercises, and a later version of this program may ship one of that name. So an
//! own exercise is known everywhere but in its author's file as `own-MARK-NAME`, where the mark is the clinic's.

use super::id::{ExerciseId, IdFault, MAX_ID};
use core::fmt;

/// How every id of an own exercise begins. No shipped exercise's does.
const OWN: &str = "own-";
/// Length of a clinic's mark.
const MARK: usize = 6;
/// Length of the longest name that an own exercise may have in its author's file, in bytes.
pub const MAX_OWN_NAME: usize = MAX_ID - OWN.len() - MARK - 1;

/// What tells a clinic's own exercises from those of others: six small letters and digits, the same for as long as the clinic exists.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct ClinicMark([u8; MARK]);

impl ClinicMark {
    /// The mark made of the lower thirty bits of these bytes, read as one number with its highest byte first.
    pub fn of_bytes(bytes: [u8; 4]) -> ClinicMark {
        let number = u32::from_be_bytes(bytes);
        let letter = |place: usize| b"abcdefghijklmnopqrstuvwxyz234567"[(number >> (5 * place) & 31) as usize];
        ClinicMark(std::array::from_fn(letter))
    }
}

impl fmt::Display for ClinicMark {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|letter| write!(f, "{}", char::from(*letter)))
    }
}

impl ExerciseId {
    /// The id of the exercise that a clinic with this mark calls `name`.
    ///
    /// # Errors
    /// [`IdFault::TooLong`] for a name of more than [`MAX_OWN_NAME`] characters, and what is wrong with any other text that is no id.
    pub fn own(mark: ClinicMark, name: &str) -> Result<ExerciseId, IdFault> {
        ExerciseId::new(name)?;
        ExerciseId::new(format!("{OWN}{mark}-{name}"))
    }

    /// Whether it is in the form of an own exercise's id.
    pub fn is_own(&self) -> bool {
        self.own_name().is_some()
    }

    /// What its author calls it, if it is an own exercise's id.
    pub fn own_name(&self) -> Option<&str> {
        let rest = self.as_str().strip_prefix(OWN)?;
        let (mark, name) = rest.split_at_checked(MARK)?;
        let is_mark = mark.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit());
        name.strip_prefix('-').filter(|_| is_mark)
    }

    /// Whether it begins as only an own exercise's id does.
    pub fn is_reserved(&self) -> bool {
        self.as_str().starts_with(OWN)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mark(number: u32) -> ClinicMark {
        ClinicMark::of_bytes(number.to_be_bytes())
    }

    #[test]
    fn two_clinics_and_the_program_never_have_the_same_id_for_one_name() {
        let [one, other] = [mark(1), mark(2)].map(|mark| ExerciseId::own(mark, "my-squat").expect("a name"));
        assert_ne!(one, other);
        assert!(one.is_own() && other.is_own() && !ExerciseId::new("my-squat").expect("an id").is_own());
        assert_eq!((one.own_name(), other.own_name()), (Some("my-squat"), Some("my-squat")));
        assert_eq!(one.as_str(), "own-baaaaa-my-squat");
    }

    #[test]
    fn thirty_bits_of_a_mark_count_and_each_is_an_id() {
        for bit in 0..30 {
            assert_ne!(mark(1 << bit), mark(0), "{bit}");
            assert!(ExerciseId::own(mark(1 << bit), "x").is_ok_and(|id| id.own_name() == Some("x")));
        }
        assert_eq!(mark(1 << 30), mark(0));
    }

    #[test]
    fn a_name_is_short_enough_for_the_id_and_is_an_id_itself() {
        let longest = "x".repeat(MAX_OWN_NAME);
        assert_eq!(ExerciseId::own(mark(7), &longest).expect("fits").as_str().len(), MAX_ID);
        assert_eq!(ExerciseId::own(mark(7), &format!("{longest}x")), Err(IdFault::TooLong));
        for bad in ["", "-x", "x-", "X"] {
            assert!(ExerciseId::own(mark(7), bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn other_ids_that_begin_like_it_are_reserved_and_own_to_nobody() {
        for text in ["own-squat", "own-abc-squat", "own-abcdefg", "own-abcdef"] {
            let id = ExerciseId::new(text).expect("an id");
            assert!(id.is_reserved() && !id.is_own(), "{text}");
        }
        assert!(!ExerciseId::new("owner").expect("an id").is_reserved());
    }
}
