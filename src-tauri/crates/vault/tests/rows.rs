//! Encrypted rows: each can be decrypted only for its own table, id and other plain columns.

use proptest::prelude::*;
use std::sync::LazyLock;
use vault::rows::{RowFault, RowPlace, open, seal};
use vault::{Cost, Keys, Passphrase, keys};

fn new_keys() -> Keys {
    keys::create(&Passphrase::new("x".to_owned()), Cost::new(1).expect("a cost")).0
}

static KEYS: LazyLock<Keys> = LazyLock::new(new_keys);

/// A place in the table `plan` by its id alone.
fn place(id: &[u8]) -> RowPlace {
    RowPlace::new("plan", &[id])
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_row_can_be_decrypted_for_its_place(table in ".{0,20}", id: Vec<u8>, other: Vec<u8>, plain: Vec<u8>) {
        let place = RowPlace::new(&table, &[&id, &other]);
        let sealed = seal(&KEYS, &place, &plain);
        prop_assert_eq!(open(&KEYS, &place, &sealed), Ok(plain));
    }

    #[test]
    fn any_bytes_give_a_value_or_a_fault(sealed: Vec<u8>) {
        prop_assert!(open(&KEYS, &place(b"1"), &sealed).is_err());
    }
}

#[test]
fn a_row_cannot_be_decrypted_for_another_table_id_or_column() {
    let sealed = seal(&KEYS, &RowPlace::new("plan", &[b"17", b"4"]), b"payload");
    let others: [(&str, &[&[u8]]); 9] = [
        ("plan", &[b"18", b"4"]),
        ("plan", &[b"17", b"5"]),
        ("plan", &[b"4", b"17"]),
        ("plan", &[b"174", b""]),
        ("plan", &[b"17"]),
        ("plan", &[b"17", b"4", b""]),
        ("patient", &[b"17", b"4"]),
        ("plan17", &[b"4"]),
        ("", &[b"plan", b"17", b"4"]),
    ];
    for (table, columns) in others {
        assert_eq!(open(&KEYS, &RowPlace::new(table, columns), &sealed), Err(RowFault::Damaged), "{table} {columns:?}");
    }
    assert_eq!(open(&new_keys(), &RowPlace::new("plan", &[b"17", b"4"]), &sealed), Err(RowFault::Damaged), "other keys");
}

#[test]
fn any_flipped_byte_and_any_truncation_is_refused() {
    let sealed = seal(&KEYS, &place(b"17"), b"payload");
    for at in 0..sealed.len() {
        let mut flipped = sealed.clone();
        flipped[at] ^= 0x80;
        let expected = if at == 0 { RowFault::NewerVersion { found: 0x82 } } else { RowFault::Damaged };
        assert_eq!(open(&KEYS, &place(b"17"), &flipped), Err(expected), "byte {at}");
        assert_eq!(open(&KEYS, &place(b"17"), &sealed[..at]), Err(RowFault::Damaged), "cut at {at}");
    }
}

#[test]
fn the_same_row_is_never_encrypted_to_the_same_bytes_twice() {
    assert_ne!(seal(&KEYS, &place(b"17"), b"payload"), seal(&KEYS, &place(b"17"), b"payload"));
}
