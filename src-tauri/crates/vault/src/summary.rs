//! Seals a summary to the clinic, and opens it there.
//!
//! The result is a plain binary age file with one X25519 recipient, which any age tool can decrypt with the clinic's identity. It
//! contains the letter of `format::summary` with its tag.

use crate::{Keys, labels, recipient};
use age::DecryptError;
use exercises::id::PlanId;
use exercises::summary::Summary;
use format::card::PairingSecret;
use format::summary::{Letter, MAX_LETTER, MAX_SEALED, SummaryFault, read, write};
use hmac::Mac;
use std::io::Read;
use std::iter::once;

/// The first bytes of every age file of version 1.
const AGE: &[u8] = b"age-encryption.org/v1\n";

/// Why a summary cannot be sealed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum SealFault {
    /// Anyone could decrypt what is sealed to this recipient.
    #[error("the recipient is no key")]
    UnfitRecipient,
    /// The contents do not form a valid summary.
    #[error(transparent)]
    Contents(#[from] SummaryFault),
}

/// Why a file is not a summary for this clinic.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum OpenFault {
    /// It is not a sealed file.
    #[error("not a sealed summary")]
    NotSealed,
    /// It is larger than any summary, sealed or decrypted.
    #[error("larger than the {most} bytes that a summary may have")]
    TooBig {
        /// The limit, in bytes.
        most: usize,
    },
    /// It is encrypted under a passphrase, which a summary never is.
    #[error("sealed under a passphrase")]
    UnderPassphrase,
    /// It is sealed to another key, or changed in the lines that name the recipient.
    #[error("sealed to another clinic")]
    ForAnotherClinic,
    /// It was changed or truncated.
    #[error("damaged on the way")]
    Damaged,
    /// It is about a plan that is not known here.
    #[error("about the unknown plan {plan}")]
    UnknownPlan {
        /// The plan.
        plan: PlanId,
    },
    /// It was written by someone who did not have the plan's card.
    #[error("not from the holder of the card of plan {plan}")]
    NotFromTheCard {
        /// The plan that it claims to be about.
        plan: PlanId,
    },
    /// It was decrypted, but its contents cannot be read.
    #[error(transparent)]
    Contents(#[from] SummaryFault),
}

/// Seals `summary` to the recipient `to`, with the tag that only someone with the card can make.
///
/// # Errors
/// [`SealFault`].
pub fn seal(summary: &Summary, secret: &PairingSecret, to: &[u8; 32]) -> Result<Vec<u8>, SealFault> {
    let recipient = recipient::of_bytes(to).ok_or(SealFault::UnfitRecipient)?;
    let body = write(summary)?;
    let mut tag = labels::summary_tag(secret, body.plan);
    tag.update(&Letter::authenticated(&body, to));
    let letter = Letter { body, tag: tag.finalize().into_bytes().into() };
    Ok(age::encrypt(&recipient, &letter.to_bytes()).expect("a vector takes every byte"))
}

/// Opens a sealed summary: decrypts it completely, then checks the tag, and only then reads the contents. Returns the summary with
/// the place in the list of the secret under which its tag holds. A summary may be sealed to the clinic's present keys or to any former
/// ones, because devices go on with the card that they have. For many summaries, [`Opener`] prepares the keys once.
///
/// `secrets_of` returns the secrets on a plan's cards, in the order in which they are tried; none for a plan that is not known.
///
/// # Errors
/// [`OpenFault`].
pub fn open(
    sealed: &[u8],
    keys: &Keys,
    secrets_of: impl FnOnce(PlanId) -> Vec<PairingSecret>,
) -> Result<(Summary, usize), OpenFault> {
    let unsealed = Opener::of(keys).unseal(sealed)?;
    let secrets = secrets_of(unsealed.plan());
    unsealed.read(secrets)
}

/// The clinic's keys, prepared to open many summaries. Wiped when dropped, as age's identities are.
pub struct Opener(Vec<(age::x25519::Identity, [u8; 32])>);

/// A decrypted summary whose tag was not checked yet.
pub struct Unsealed {
    letter: Letter,
    /// The recipient that it is sealed to.
    recipient: [u8; 32],
}

impl Opener {
    /// The present keys and all former ones.
    pub fn of(keys: &Keys) -> Opener {
        Opener(keys.generations().map(|generation| (generation.identity(), generation.recipient())).collect())
    }

    /// Decrypts a whole sealed summary with the keys that it is sealed to.
    ///
    /// # Errors
    /// [`OpenFault`].
    pub fn unseal(&self, sealed: &[u8]) -> Result<Unsealed, OpenFault> {
        for (identity, recipient) in &self.0 {
            match decrypt(sealed, identity) {
                Err(OpenFault::ForAnotherClinic) => {}
                done => return Ok(Unsealed { letter: Letter::parse(&done?)?, recipient: *recipient }),
            }
        }
        Err(OpenFault::ForAnotherClinic)
    }
}

impl Unsealed {
    /// The plan that it claims to be about.
    pub fn plan(&self) -> PlanId {
        self.letter.body.plan
    }

    /// Checks the tag, and only then reads the contents. Returns them with the place of the secret under which the tag holds.
    ///
    /// # Errors
    /// [`OpenFault`]; [`OpenFault::UnknownPlan`] without any secret.
    pub fn read(&self, secrets: impl IntoIterator<Item = PairingSecret>) -> Result<(Summary, usize), OpenFault> {
        let plan = self.plan();
        let authenticated = Letter::authenticated(&self.letter.body, &self.recipient);
        let mut fault = OpenFault::UnknownPlan { plan };
        for (place, secret) in secrets.into_iter().enumerate() {
            let mut tag = labels::summary_tag(&secret, plan);
            tag.update(&authenticated);
            if tag.verify_slice(&self.letter.tag).is_ok() {
                return Ok((read(&self.letter.body)?, place));
            }
            fault = OpenFault::NotFromTheCard { plan };
        }
        Err(fault)
    }

    /// The packed contents, as [`Unsealed::read`] reads them.
    pub fn packed(&self) -> &[u8] {
        &self.letter.body.packed
    }
}

/// Decrypts the whole age file for `identity`.
fn decrypt(sealed: &[u8], identity: &age::x25519::Identity) -> Result<Vec<u8>, OpenFault> {
    if sealed.len() > MAX_SEALED {
        return Err(OpenFault::TooBig { most: MAX_SEALED });
    }
    if !sealed.starts_with(AGE) {
        let begun = !sealed.is_empty() && AGE.starts_with(sealed);
        return Err(if begun { OpenFault::Damaged } else { OpenFault::NotSealed });
    }
    let decryptor = age::Decryptor::new_buffered(sealed).map_err(|_| OpenFault::Damaged)?;
    if decryptor.is_scrypt() {
        return Err(OpenFault::UnderPassphrase);
    }
    let reader = decryptor.decrypt(once(identity as &dyn age::Identity)).map_err(|fault| match fault {
        DecryptError::NoMatchingKeys => OpenFault::ForAnotherClinic,
        _ => OpenFault::Damaged,
    })?;
    let mut plain = Vec::new();
    reader.take(MAX_LETTER as u64 + 1).read_to_end(&mut plain).map_err(|_| OpenFault::Damaged)?;
    if plain.len() > MAX_LETTER { Err(OpenFault::TooBig { most: MAX_LETTER }) } else { Ok(plain) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use sha2::{Digest, Sha256};

    /// Checks that a test vector of the age format gives the expected fault. Only the vector's first lines are text.
    fn check(name: &str, vector: &[u8]) {
        let blank = vector.windows(2).position(|bytes| bytes == b"\n\n").expect("a blank line");
        let (head, sealed) = (String::from_utf8_lossy(&vector[..blank]), &vector[blank + 2..]);
        let field = |name: &str| head.lines().find_map(|line| line.strip_prefix(name));
        let found = match field("identity: ") {
            Some(identity) => decrypt(sealed, &identity.parse().expect("an identity")),
            None => decrypt(sealed, &age::x25519::Identity::generate()),
        };
        let expected = match field("expect: ").expect("an expectation") {
            "success" if field("passphrase: ").is_some() => Err(OpenFault::UnderPassphrase),
            "success" => {
                let plain = found.as_deref().unwrap_or_else(|fault| panic!("{name}: {fault:?}"));
                let hash: String = Sha256::digest(plain).iter().map(|byte| format!("{byte:02x}")).collect();
                assert_eq!(Some(hash.as_str()), field("payload: "), "{name}");
                return;
            }
            "no match" => Err(OpenFault::ForAnotherClinic),
            _ if !sealed.starts_with(AGE) => Err(OpenFault::NotSealed),
            _ => Err(OpenFault::Damaged),
        };
        assert_eq!(found, expected, "{name}");
    }

    #[test]
    fn every_refusal_of_the_age_format_has_its_fault() {
        let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/vectors");
        let mut checked = 0;
        for file in std::fs::read_dir(folder).expect("the vectors") {
            let path = file.expect("a file").path();
            let name = path.display().to_string();
            if name.ends_with(".md") || name.ends_with(".gitattributes") {
                continue;
            }
            check(&name, &std::fs::read(&path).expect("a vector"));
            checked += 1;
        }
        assert_eq!(checked, 20, "all of them");
    }
}
