//! The code that opens a locked screen. It encrypts nothing: what is stored only says whether a code is the right one, without the code
//! being readable from it.

use crate::{Cost, Passphrase};
use age::secrecy::SecretString;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use std::io::Read;
use std::iter::once;

/// What is encrypted under the code.
const CHECK: &[u8] = b"carryover/screen code/v1";
/// The cost of trying a code: 32 MiB, and little enough to be tried at every press on a small phone.
const COST: u8 = 15;

/// What is stored of a code, as text.
pub fn seal(code: &Passphrase) -> String {
    let mut recipient = age::scrypt::Recipient::new(code.for_sealing());
    recipient.set_work_factor(COST);
    STANDARD.encode(age::encrypt(&recipient, CHECK).expect("a vector takes every byte"))
}

/// Whether `stored` was made of this code. Something else than [`seal`] writes has no code at all.
pub fn fits(stored: &str, code: &Passphrase) -> bool {
    let Ok(sealed) = STANDARD.decode(stored) else { return false };
    code.for_opening().into_iter().any(|form| opened(&sealed, form).as_deref() == Some(CHECK))
}

fn opened(sealed: &[u8], form: SecretString) -> Option<Vec<u8>> {
    let mut identity = age::scrypt::Identity::new(form);
    identity.set_max_work_factor(Cost::MAX_READ.log_n());
    let decryptor = age::Decryptor::new_buffered(sealed).ok()?;
    let reader = decryptor.decrypt(once(&identity as &dyn age::Identity)).ok()?;
    let mut plain = Vec::new();
    reader.take(CHECK.len() as u64 + 1).read_to_end(&mut plain).ok()?;
    Some(plain)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn code(text: &str) -> Passphrase {
        Passphrase::new(text.to_owned())
    }

    #[test]
    fn only_the_code_itself_fits_and_it_cannot_be_read() {
        let stored = seal(&code("4711 ñ"));
        assert!(fits(&stored, &code("4711 ñ")) && fits(&stored, &code("4711 n\u{303}")));
        assert!(!fits(&stored, &code("4712 ñ")) && !fits(&stored, &code("")));
        let bytes = STANDARD.decode(&stored).expect("Base64");
        assert!(!bytes.windows(4).any(|window| window == b"4711"));
        assert_ne!(stored, seal(&code("4711 ñ")), "two devices with one code cannot be told to have it");
    }

    #[test]
    fn what_is_no_stored_code_fits_none() {
        for stored in ["", "4711", "AAAA", &STANDARD.encode(b"age-encryption.org/v1\n")] {
            assert!(!fits(stored, &code("4711")), "{stored}");
        }
    }
}
