//! One connection to the server: the only place of the program that makes one.

use super::address::Address;
use crate::ActionResult;
use format::fhir::answer;
use std::time::Duration;
use ureq::Agent;
use wire::handing_over::{HandOverFault, HandedOver};
use wire::{Failure, Secret};

/// The most bytes of an answer that are read; more is no answer.
pub const MAX_ANSWER: u64 = 8_388_608;
/// The most bytes of an answer's head.
const MAX_HEAD: usize = 65_536;

/// How long the server may take to answer, from the first byte sent to the last one read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Patience(pub Duration);

impl Default for Patience {
    /// A server that checks and stores some thousand resources needs its time.
    fn default() -> Patience {
        Patience(Duration::from_secs(60))
    }
}

/// A review that is ready to be sent. Nothing of the data folder is needed for that, so that it can be used meanwhile.
pub struct Parcel {
    pub(super) code: String,
    pub(super) body: Vec<u8>,
    pub(super) address: Address,
    pub(super) token: Option<Secret>,
}

impl Parcel {
    /// Sends it. Sent again it is replaced on the server, and not doubled.
    ///
    /// # Errors
    /// [`Failure::HandOver`] with what went wrong.
    pub fn send(&self, patience: Patience) -> ActionResult<HandedOver> {
        for (place, url) in self.address.places() {
            // The address was checked when it was read; a connection elsewhere is never made, whatever that says.
            if !place.ip().is_loopback() {
                return Err(Failure::HandOver(HandOverFault::AddressElsewhere));
            }
            match self.send_to(&url, patience) {
                Err(HandOverFault::Down) => {}
                Err(fault) => return Err(Failure::HandOver(fault)),
                Ok(done) => return Ok(done),
            }
        }
        Err(Failure::HandOver(HandOverFault::Down))
    }

    fn send_to(&self, url: &str, patience: Patience) -> Result<HandedOver, HandOverFault> {
        let seconds = patience.0.as_secs().try_into().unwrap_or(u16::MAX);
        let agent = agent(patience);
        let mut request = agent
            .post(url)
            .header("Content-Type", "application/fhir+json")
            .header("Accept", "application/fhir+json")
            .header("Prefer", "return=minimal");
        if let Some(token) = &self.token {
            request = request.header("Authorization", format!("Bearer {}", token.expose()));
        }
        let mut response = request.send(&self.body[..]).map_err(|error| fault(&error, seconds))?;
        let status = response.status().as_u16();
        if (300..400).contains(&status) {
            return Err(HandOverFault::SentElsewhere);
        }
        let read = response.body_mut().with_config().limit(MAX_ANSWER).read_to_vec();
        let body = match read {
            Ok(body) => body,
            // Of a refusal the status says enough.
            Err(_) if status >= 400 => Vec::new(),
            Err(error) => return Err(fault(&error, seconds)),
        };
        self.understood(status, &body)
    }

    fn understood(&self, status: u16, body: &[u8]) -> Result<HandedOver, HandOverFault> {
        match status {
            200 => {
                let taken = answer::taken_in(&self.body, body).ok_or(HandOverFault::NotUnderstood)?;
                Ok(HandedOver { code: self.code.clone(), added: taken.added, known: taken.known })
            }
            401 | 403 => Err(HandOverFault::NotLetIn { status }),
            400..500 => {
                let said = answer::complaint(body).unwrap_or_default();
                Err(HandOverFault::Refused { code: self.code.clone(), status, said })
            }
            500..600 => Err(HandOverFault::Failed { status }),
            _ => Err(HandOverFault::NotUnderstood),
        }
    }
}

/// A client that goes nowhere else: through no proxy, whatever the surroundings say, and after no redirection.
fn agent(patience: Patience) -> Agent {
    let config = Agent::config_builder()
        .proxy(None)
        .max_redirects(0)
        .max_redirects_will_error(false)
        .http_status_as_error(false)
        .timeout_global(Some(patience.0))
        .max_response_header_size(MAX_HEAD)
        .user_agent(concat!("Carryover/", env!("CARGO_PKG_VERSION")));
    config.build().new_agent()
}

fn fault(error: &ureq::Error, seconds: u16) -> HandOverFault {
    use std::io::ErrorKind::{
        AddrNotAvailable, ConnectionRefused, HostUnreachable, NetworkUnreachable, TimedOut, WouldBlock,
    };
    match error {
        ureq::Error::Timeout(_) => HandOverFault::Slow { seconds },
        ureq::Error::Io(io) if matches!(io.kind(), TimedOut | WouldBlock) => HandOverFault::Slow { seconds },
        ureq::Error::Io(io)
            if matches!(io.kind(), ConnectionRefused | AddrNotAvailable | HostUnreachable | NetworkUnreachable) =>
        {
            HandOverFault::Down
        }
        ureq::Error::ConnectionFailed | ureq::Error::HostNotFound => HandOverFault::Down,
        ureq::Error::RedirectFailed | ureq::Error::TooManyRedirects => HandOverFault::SentElsewhere,
        _ => HandOverFault::NotUnderstood,
    }
}
