//! Encrypted rows: each can be decrypted only for its own table and id.

use proptest::prelude::*;
use std::sync::LazyLock;
use vault::rows::{RowFault, open, seal};
use vault::{Cost, Keys, Passphrase, keys};

fn new_keys() -> Keys {
    keys::create_at(&Passphrase::new("x".to_owned()), Cost::new(1).expect("a cost")).0
}

static KEYS: LazyLock<Keys> = LazyLock::new(new_keys);

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_row_can_be_decrypted_for_its_table_and_id(table in ".{0,20}", row: Vec<u8>, plain: Vec<u8>) {
        let sealed = seal(&KEYS, &table, &row, &plain);
        prop_assert_eq!(open(&KEYS, &table, &row, &sealed), Ok(plain));
    }

    #[test]
    fn any_bytes_give_a_value_or_a_fault(sealed: Vec<u8>) {
        prop_assert!(open(&KEYS, "plan", b"1", &sealed).is_err());
    }
}

#[test]
fn a_row_cannot_be_decrypted_for_another_table_or_id() {
    let sealed = seal(&KEYS, "plan", b"17", b"payload");
    for (table, row) in
        [("plan", &b"18"[..]), ("patient", b"17"), ("plan1", b"7"), ("pla", b"n17"), ("plan17", b""), ("", b"plan17")]
    {
        assert_eq!(open(&KEYS, table, row, &sealed), Err(RowFault::Damaged), "{table} {row:?}");
    }
    assert_eq!(open(&new_keys(), "plan", b"17", &sealed), Err(RowFault::Damaged), "other keys");
}

#[test]
fn any_flipped_byte_and_any_truncation_is_refused() {
    let sealed = seal(&KEYS, "plan", b"17", b"payload");
    for at in 0..sealed.len() {
        let mut flipped = sealed.clone();
        flipped[at] ^= 0x80;
        let expected = if at == 0 { RowFault::NewerVersion { found: 0x81 } } else { RowFault::Damaged };
        assert_eq!(open(&KEYS, "plan", b"17", &flipped), Err(expected), "byte {at}");
        assert_eq!(open(&KEYS, "plan", b"17", &sealed[..at]), Err(RowFault::Damaged), "cut at {at}");
    }
}

#[test]
fn the_same_row_is_never_encrypted_to_the_same_bytes_twice() {
    assert_ne!(seal(&KEYS, "plan", b"17", b"payload"), seal(&KEYS, "plan", b"17", b"payload"));
}
