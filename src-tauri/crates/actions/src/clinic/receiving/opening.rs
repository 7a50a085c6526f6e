//! Reads decrypted summaries: whether they come from who has a card.

use crate::clinic::numbering;
use crate::clinic::rows::Patient;
use exercises::id::{LogId, PlanId};
use exercises::summary::Summary;
use vault::summary::{OpenFault, Unsealed};
use vault::{Keys, PairingSecret};
use wire::Failure;

/// Reads a decrypted summary of this patient. Its tag must hold under the secret of a card of the patient's plan, and it may not claim to
/// follow a later card than that: who has an old card cannot speak for a new plan.
pub(super) fn authentic(keys: &Keys, file: &str, unsealed: &Unsealed, patient: &Patient) -> Result<Summary, Failure> {
    let revisions = revisions(patient);
    let secrets = revisions.iter().map(|revision| secret(keys, patient, unsealed.plan(), *revision));
    let (summary, place) = unsealed.read(secrets).map_err(|fault| refusal(file, fault))?;
    if summary.log == LogId::PAPER || summary.former.iter().any(|part| part.log == LogId::PAPER) {
        // No program of ours made it: that name is for what the clinic itself enters from paper.
        return Err(Failure::SummaryDamaged);
    }
    let newest = revisions.get(place).copied().unwrap_or_default();
    let claimed = summary.taken.iter().map(|taken| taken.revision).chain(summary.days.iter().map(|day| day.revision)).max();
    if claimed > Some(newest) { Err(Failure::SummaryNotFromCard) } else { Ok(summary) }
}

/// The revisions with whose secrets a summary of the patient may be made: those of the cards, the newest first, then those of the cards
/// that the clinic may have issued since its store was put back to an older copy.
fn revisions(patient: &Patient) -> Vec<u16> {
    let mut all: Vec<u16> = Vec::new();
    for (revision, card) in patient.cards.iter().rev() {
        // Until each revision had its own secret, all cards of a plan had the same one; then the newest that has it counts.
        let is_known =
            |other: &u16| patient.cards.get(other).is_some_and(|other| other.pairing_secret == card.pairing_secret);
        if !all.iter().any(is_known) {
            all.push(*revision);
        }
    }
    let newest = patient.newest_revision();
    all.extend((1..=numbering::AHEAD).filter_map(|ahead| newest.checked_add(ahead)));
    all
}

/// The secret of one revision: that of the card, or the one that the clinic gives to cards of that number.
fn secret(keys: &Keys, patient: &Patient, plan: PlanId, revision: u16) -> PairingSecret {
    let card = patient.cards.get(&revision).map(|card| card.pairing_secret.clone());
    card.unwrap_or_else(|| vault::card::pairing_secret(keys, plan, revision))
}

pub(super) fn refusal(file: &str, fault: OpenFault) -> Failure {
    use format::summary::SummaryFault;
    match fault {
        OpenFault::NotSealed | OpenFault::UnderPassphrase | OpenFault::Contents(SummaryFault::NotASummary) => {
            Failure::SummaryForeign
        }
        OpenFault::TooBig { most } | OpenFault::Contents(SummaryFault::TooBig { most }) => {
            Failure::FileTooBig { file: file.to_owned(), most: most as u64 }
        }
        OpenFault::ForAnotherClinic => Failure::SummaryOtherClinic,
        OpenFault::Damaged | OpenFault::Contents(SummaryFault::Cut | SummaryFault::Malformed { .. }) => {
            Failure::SummaryDamaged
        }
        OpenFault::UnknownPlan { .. } => Failure::SummaryUnknownPlan,
        OpenFault::NotFromTheCard { .. } => Failure::SummaryNotFromCard,
        OpenFault::Contents(SummaryFault::NewerVersion { found }) => {
            Failure::SummaryNewer { found, known: format::summary::VERSION }
        }
    }
}
