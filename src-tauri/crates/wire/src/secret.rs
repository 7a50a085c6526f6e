//! A secret on its way between window and shell.

use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt;
use zeroize::Zeroizing;

/// A passphrase or a key as text. Masked in debug output and wiped when dropped.
///
/// It is the only secret that can be serialized, because it has to cross from the window to the shell. What the web view itself keeps of
/// an input field cannot be wiped from here.
#[derive(Clone, Default)]
pub struct Secret(Zeroizing<String>);

impl Secret {
    /// The text itself.
    pub fn expose(&self) -> &str {
        &self.0
    }
}

impl From<String> for Secret {
    fn from(text: String) -> Secret {
        Secret(Zeroizing::new(text))
    }
}

impl From<&str> for Secret {
    fn from(text: &str) -> Secret {
        Secret::from(text.to_owned())
    }
}

impl fmt::Debug for Secret {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Secret(..)")
    }
}

impl Serialize for Secret {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_str(&self.0)
    }
}

impl<'de> Deserialize<'de> for Secret {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Secret, D::Error> {
        String::deserialize(from).map(Secret::from)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::clinic::{ChangePassphraseRequest, ExportKeysRequest, Passphrase, StartClinicRequest, StrengthRequest};

    /// Every request that carries a secret, none of which may show it.
    #[test]
    fn debug_output_of_what_crosses_shows_no_secret() {
        const TYPED: &str = "seven grey herons wade";
        let secret = || Secret::from(TYPED);
        let start = StartClinicRequest {
            name: "Linden Lane Practice".into(),
            phone: None,
            passphrase: secret(),
            saved_keys: Some(secret()),
        };
        let shown = [
            format!("{:?}", secret()),
            format!("{start:?}"),
            format!("{:?}", Passphrase { passphrase: secret() }),
            format!("{:?}", StrengthRequest { passphrase: secret(), clinic: None }),
            format!("{:?}", ChangePassphraseRequest { old: secret(), new: secret() }),
            format!("{:?}", ExportKeysRequest { passphrase: secret(), new: secret() }),
        ];
        for shown in shown {
            assert!(!shown.contains("heron") && shown.contains("Secret(..)"), "{shown}");
        }
    }

    #[test]
    fn a_secret_crosses_as_its_text() {
        let sent = serde_json::to_string(&Secret::from("nine \"grey\" herons")).expect("text");
        let back: Secret = serde_json::from_str(&sent).expect("text");
        assert_eq!(back.expose(), "nine \"grey\" herons");
    }
}
