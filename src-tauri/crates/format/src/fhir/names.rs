//! Names of resources that stay the same from file to file, so that what is imported twice is one.

use super::elements::{Identifier, Reference};
use sha2::{Digest, Sha256};

/// The system of the names of our resources.
pub(super) const RECORD: &str = "urn:uuid:c3a0e3ce-8f0b-4c0a-b8a7-0f8a54ce3d92";
/// The system of the names of summaries and cards.
pub(super) const SOURCE: &str = "urn:uuid:8a3b1f55-6d1f-4a39-9d64-3c6e1b9a7e10";
/// The system of the program's versions.
pub(super) const PROGRAM: &str = "urn:uuid:5f9f4a0c-2c55-4d0e-9b0c-9e1f0d7a4b33";

/// A name that follows from a text: a UUID of version 8 (RFC 9562), whose bits are those of SHA-256.
pub(super) fn uuid(text: &str) -> String {
    let hash = Sha256::digest(text.as_bytes());
    let mut bytes: [u8; 16] = std::array::from_fn(|place| hash[place]);
    bytes[6] = bytes[6] & 0x0f | 0x80;
    bytes[8] = bytes[8] & 0x3f | 0x80;
    let hex = hex(&bytes);
    let part = |from: usize, to: usize| &hex[from..to];
    format!("{}-{}-{}-{}-{}", part(0, 8), part(8, 12), part(12, 16), part(16, 20), part(20, 32))
}

/// The hash of a summary's contents.
pub(super) fn hash(contents: &[u8]) -> String {
    hex(&Sha256::digest(contents))
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

/// The system of a clinic's codes of patients. Two clinics may both have a "K17", so each has its own.
pub(super) fn of_patients(clinic: &str) -> String {
    format!("urn:uuid:{}", uuid(&format!("patients/{clinic}")))
}

impl Identifier {
    pub fn new(system: impl Into<String>, value: impl Into<String>) -> Identifier {
        Identifier { system: system.into(), value: value.into(), assigner: None }
    }

    /// The UUID that follows from it.
    pub fn uuid(&self) -> String {
        uuid(&format!("{}|{}", self.system, self.value))
    }

    /// Where the resource with this name is in a bundle.
    pub fn full_url(&self) -> String {
        format!("urn:uuid:{}", self.uuid())
    }

    /// As a search for it.
    pub fn search(&self) -> String {
        format!("{}|{}", escaped(&self.system), escaped(&self.value))
    }
}

impl Reference {
    /// To the resource with this name.
    pub fn to(name: &Identifier) -> Reference {
        Reference { reference: name.full_url(), ..Reference::default() }
    }

    /// To something that is not in the bundle.
    pub fn outside(name: Identifier) -> Reference {
        Reference { identifier: Some(Box::new(name)), ..Reference::default() }
    }
}

/// A text as a value within a search (RFC 3986): what is neither a letter, a digit nor a plain mark is written as bytes.
fn escaped(text: &str) -> String {
    let plain = |byte: u8| byte.is_ascii_alphanumeric() || b"-._~:/".contains(&byte);
    let one = |byte: u8| if plain(byte) { char::from(byte).to_string() } else { format!("%{byte:02X}") };
    text.bytes().map(one).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_follows_from_its_text_and_is_a_uuid() {
        let one = uuid("a");
        assert_eq!(one, uuid("a"));
        assert_ne!(one, uuid("b"));
        // SHA-256 of "a" begins ca978112ca1bbdcafac231b39a23dc4d.
        assert_eq!(one, "ca978112-ca1b-8dca-bac2-31b39a23dc4d");
        assert_ne!(of_patients("linden"), of_patients("aspen"));
    }

    #[test]
    fn a_search_says_nothing_but_what_is_looked_for() {
        assert_eq!(Identifier::new("urn:uuid:1", "a/b").search(), "urn:uuid:1|a/b");
        assert_eq!(Identifier::new("s", "a&b|c é").search(), "s|a%26b%7Cc%20%C3%A9");
    }
}
