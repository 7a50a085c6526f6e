//! The clinic's former keys on a card of version 3 or 4.

use super::{CardFault, WITH_FORMER_KEYS};
use crate::cbor::Malformed;
use exercises::id::PlanId;

/// Largest number of former keys on one card. Each makes the card 96 bytes longer.
pub const MAX_FORMER: usize = 3;
/// What a former key signs begins with this, so that the signature cannot be used for anything else.
const PREFIX: &[u8] = b"carryover/renewed-keys/v1\0";
const KEY: usize = 32;
const SIGNATURE: usize = 64;
const FAULT: Malformed = Malformed("former keys");

/// A key with which the clinic signed earlier cards of a plan, and what that key says of the keys on the card that it is on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FormerKey {
    /// The former Ed25519 key.
    pub key: [u8; 32],
    /// Its signature of [`renewed_keys`].
    pub signature: [u8; 64],
}

/// The bytes that a former key signs: the plan, and the clinic's present signing key and recipient.
pub fn renewed_keys(plan: PlanId, verify_key: &[u8; 32], recipient: &[u8; 32]) -> Vec<u8> {
    [PREFIX, &plan.0, verify_key, recipient].concat()
}

/// The former keys as bytes for a card of this version: their number and each with its signature, or nothing at all for none before
/// version 4. [`read`] says what they may be.
pub(super) fn write(version: u8, former: &[FormerKey]) -> Result<Vec<u8>, CardFault> {
    if former.is_empty() && version <= WITH_FORMER_KEYS {
        return Ok(Vec::new());
    }
    let number = u8::try_from(former.len()).map_err(|_| FAULT)?;
    let mut bytes = vec![number];
    former.iter().for_each(|FormerKey { key, signature }| bytes.extend(key.iter().chain(signature)));
    Ok(bytes)
}

/// Reads former keys from the beginning of `bytes`, and returns them with the rest. On a card of version 3 there is at least one, and each list
/// has one form only: in strictly ascending order of the keys, without the present one.
pub(super) fn read<'b>(version: u8, present: &[u8; 32], bytes: &'b [u8]) -> Result<(Vec<FormerKey>, &'b [u8]), CardFault> {
    let (number, rest) = bytes.split_first().ok_or(FAULT)?;
    let number = usize::from(*number);
    let (listed, rest) = rest.split_at_checked(number * (KEY + SIGNATURE)).ok_or(FAULT)?;
    let mut former = Vec::with_capacity(number.min(MAX_FORMER));
    for one in listed.chunks_exact(KEY + SIGNATURE) {
        let (key, signature) = one.split_first_chunk::<KEY>().ok_or(FAULT)?;
        former.push(FormerKey { key: *key, signature: signature.try_into().map_err(|_| FAULT)? });
    }
    let ascending = former.is_sorted_by(|one, next| one.key < next.key);
    let least = usize::from(version <= WITH_FORMER_KEYS);
    if !(least..=MAX_FORMER).contains(&number) || !ascending || former.iter().any(|one| one.key == *present) {
        return Err(FAULT.into());
    }
    Ok((former, rest))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn former(keys: &[u8]) -> Vec<FormerKey> {
        keys.iter().map(|key| FormerKey { key: [*key; 32], signature: [key ^ 0xFF; 64] }).collect()
    }

    fn again(keys: &[u8]) -> Result<Vec<FormerKey>, CardFault> {
        let bytes = write(3, &former(keys)).expect("few enough to count");
        read(3, &[9; 32], &bytes).map(|(former, rest)| {
            assert!(rest.is_empty());
            former
        })
    }

    const MALFORMED: CardFault = CardFault::Malformed { field: "former keys" };

    #[test]
    fn one_to_three_come_back_and_what_follows_is_left() {
        for keys in [&[1][..], &[1, 2], &[1, 2, 200]] {
            assert_eq!(again(keys), Ok(former(keys)));
        }
        let bytes = [write(3, &former(&[1])).expect("one"), b"packed".to_vec()].concat();
        assert_eq!(read(3, &[9; 32], &bytes), Ok((former(&[1]), &b"packed"[..])));
    }

    #[test]
    fn a_list_has_one_form_only() {
        for keys in [&[2, 1][..], &[1, 1], &[1, 2, 2], &[3, 1, 2], &[1, 2, 3, 4], &[9], &[1, 9]] {
            assert_eq!(again(keys), Err(MALFORMED), "{keys:?}");
        }
        assert_eq!(read(3, &[9; 32], &[0]), Err(MALFORMED), "without any it is a card of version 2");
        assert_eq!(write(4, &[]), Ok(vec![0]));
        assert_eq!(read(4, &[9; 32], &[0, 7]), Ok((Vec::new(), &[7][..])));
        assert_eq!(read(4, &[9; 32], &[4; 500]), Err(MALFORMED));
    }

    #[test]
    fn a_list_that_is_cut_is_refused() {
        let bytes = write(3, &former(&[1, 2, 3])).expect("three");
        for length in 0..bytes.len() {
            assert_eq!(read(3, &[9; 32], &bytes[..length]), Err(MALFORMED), "at {length}");
        }
        assert_eq!(read(3, &[9; 32], &[255; 200]), Err(MALFORMED));
    }
}
