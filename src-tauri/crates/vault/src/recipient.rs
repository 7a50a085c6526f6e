//! Converts an X25519 recipient between the thirty-two bytes on a card and the type of the age library.

use age::x25519::{Identity, Recipient};
use bech32::{Bech32, Hrp};
use zeroize::Zeroizing;

/// The recipient for these bytes; `None` for a point of low order, because anyone could decrypt what is encrypted to it.
pub(crate) fn of_bytes(bytes: &[u8; 32]) -> Option<Recipient> {
    if has_low_order(bytes) {
        return None;
    }
    text("age", bytes).parse().ok()
}

/// Whether every secret gives the all-zero result with this point (RFC 7748, section 6.1).
pub(crate) fn has_low_order(point: &[u8; 32]) -> bool {
    x25519_dalek::x25519([1; 32], *point) == [0; 32]
}

/// The identity for these secret bytes.
pub(crate) fn identity(secret: &[u8; 32]) -> Identity {
    let written = Zeroizing::new(text("age-secret-key-", secret).to_uppercase());
    written.parse().expect("thirty-two bytes in Bech32 are an identity")
}

/// The public bytes for secret ones.
pub(crate) fn public(secret: &[u8; 32]) -> [u8; 32] {
    x25519_dalek::x25519(*secret, x25519_dalek::X25519_BASEPOINT_BYTES)
}

fn text(prefix: &'static str, bytes: &[u8; 32]) -> Zeroizing<String> {
    let prefix = Hrp::parse(prefix).expect("a prefix of the age format");
    Zeroizing::new(bech32::encode::<Bech32>(prefix, bytes).expect("thirty-two bytes are within Bech32's length"))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The points of low order on the curve and its twist (Bernstein, "Curve25519", cr.yp.to/ecdh.html), little-endian:
    /// 0, 1, two of order 8, p - 1, p, p + 1.
    const LOW: [&str; 7] = [
        "0000000000000000000000000000000000000000000000000000000000000000",
        "0100000000000000000000000000000000000000000000000000000000000000",
        "e0eb7a7c3b41b8ae1656e3faf19fc46ada098deb9c32b1fd866205165f49b800",
        "5f9c95bca3508c24b1d0b1559c83ef5b04445cc4581c8e86d8224eddd09f1157",
        "ecffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f",
        "edffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f",
        "eeffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f",
    ];

    fn hex(text: &str) -> [u8; 32] {
        std::array::from_fn(|at| u8::from_str_radix(&text[2 * at..2 * at + 2], 16).expect("two digits"))
    }

    #[test]
    fn points_of_low_order_are_no_recipients() {
        for point in LOW {
            assert!(of_bytes(&hex(point)).is_none(), "{point}");
        }
    }

    #[test]
    fn bytes_and_the_age_format_agree_on_the_public_key() {
        let secret = hex("7700000000000000000000000000000000000000000000000000000000000042");
        let by_age = identity(&secret).to_public();
        assert_eq!(of_bytes(&public(&secret)), Some(by_age));
    }
}
