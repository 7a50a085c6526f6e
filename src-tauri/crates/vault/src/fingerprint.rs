//! A clinic's fingerprint: a short code that two people compare by reading it aloud.

use crate::labels;

/// Digits and capitals that are not mistaken for each other: no 0 O, 1 I L, 2 Z, 5 S, 8 B, U (for V).
const LETTERS: &[u8; 24] = b"34679ACDEFGHJKMNPQRTVWXY";
/// Four groups of four characters: 73 bits.
const GROUPS: usize = 4;

/// The fingerprint of a clinic's two keys, in groups: `EKMT-QFG6-FCEN-9CHW`.
pub fn fingerprint(verify_key: &[u8; 32], recipient: &[u8; 32]) -> String {
    let digest = labels::fingerprint(verify_key, recipient);
    let (half, _) = digest.split_first_chunk::<16>().expect("a digest has thirty-two bytes");
    let mut rest = u128::from_be_bytes(*half);
    let mut letter = || {
        let letter = LETTERS[(rest % LETTERS.len() as u128) as usize];
        rest /= LETTERS.len() as u128;
        char::from(letter)
    };
    let groups: [String; GROUPS] = std::array::from_fn(|_| (0..4).map(|_| letter()).collect());
    groups.join("-")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_keys_have_the_same_fingerprint() {
        // Computed once; patients compare it with the fingerprint on their card.
        assert_eq!(fingerprint(&[1; 32], &[2; 32]), "EKMT-QFG6-FCEN-9CHW");
    }

    #[test]
    fn either_key_changes_it() {
        let one = fingerprint(&[1; 32], &[2; 32]);
        assert_ne!(one, fingerprint(&[2; 32], &[2; 32]));
        assert_ne!(one, fingerprint(&[1; 32], &[1; 32]));
        assert_ne!(one, fingerprint(&[2; 32], &[1; 32]), "the two keys have their places");
    }
}
