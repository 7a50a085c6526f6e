//! Where a card is in what a person gives: a text, a file, a picture of its code, or pictures of several codes that make it together.

use crate::{ActionResult, platform, refuse};
use format::frames::{self, Frame, FrameFault, Gathered};
use pictures::PictureError;
use wire::Failure;

/// What was found.
pub(super) enum Found {
    /// The bytes of a whole card.
    Card(Vec<u8>),
    /// Codes of a card that is shown as several.
    Parts(Vec<Frame>),
}

/// What a file has: a picture, a card's text or a card's bytes.
pub(super) fn in_file(file: &[u8]) -> ActionResult<Found> {
    if platform::is_picture(file) {
        return in_picture(file);
    }
    match std::str::from_utf8(file) {
        Ok(text) => in_text(text),
        Err(_) => Ok(Found::Card(file.to_vec())),
    }
}

/// Of several codes in a picture those that belong to a card count.
fn in_picture(picture: &[u8]) -> ActionResult<Found> {
    match pictures::qr::read(picture) {
        Ok(text) => in_text(&text),
        Err(several @ PictureError::SeveralCodes { .. }) => {
            let texts = pictures::qr::read_all(picture).map_err(refuse::picture)?;
            let parts: Vec<Frame> = texts.iter().filter_map(|text| frames::read_card(text).ok()).collect();
            if parts.is_empty() { Err(refuse::picture(several)) } else { Ok(Found::Parts(parts)) }
        }
        Err(other) => Err(refuse::picture(other)),
    }
}

/// What a text has: the whole card, or a code in each line.
pub(super) fn in_text(text: &str) -> ActionResult<Found> {
    let first = text.lines().find(|line| !line.trim().is_empty()).unwrap_or_default();
    if frames::read_card(first) == Err(FrameFault::NotAFrame) {
        return format::card::from_text(text).map(Found::Card).map_err(refuse::card);
    }
    let lines = text.lines().filter(|line| !line.trim().is_empty());
    lines.map(|line| frames::read_card(line).map_err(refused)).collect::<ActionResult<_>>().map(Found::Parts)
}

fn refused(fault: FrameFault) -> Failure {
    match fault {
        FrameFault::NewerVersion { found } => Failure::CardNewer { found, known: frames::VERSION },
        FrameFault::TooBig { .. } => Failure::CardTooBig,
        FrameFault::NotAFrame | FrameFault::Damaged => Failure::CardDamaged,
    }
}

/// The card's bytes once all its codes were read; `read` has those that were read before, and keeps these. A code of another card
/// begins anew.
///
/// # Errors
/// [`Failure::CardPart`] while codes are missing.
pub(super) fn whole(found: Found, read: &mut Option<Gathered>) -> ActionResult<Vec<u8>> {
    let parts = match found {
        Found::Card(bytes) => return Ok(bytes),
        Found::Parts(parts) => parts,
    };
    for part in parts {
        let belongs = read.as_mut().is_some_and(|known| known.take(part.clone()).is_ok());
        if !belongs {
            *read = Some(Gathered::begin(part));
        }
    }
    let gathered = read.as_ref().ok_or(Failure::CardCut)?;
    let (have, of, missing) = (gathered.have(), gathered.of(), gathered.missing());
    gathered.whole().ok_or(Failure::CardPart { have, of, missing })
}
