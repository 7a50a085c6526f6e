//! Sorts the files that were received: sealed files, and pictures of frames, which may come in any order.

use crate::{ActionResult, platform, refuse};
use format::card::CardFault;
use format::frames::{self, Frame, FrameFault, Gathered, Transfer};
use pictures::PictureError;
use wire::Failure;

/// One sealed summary, or the failure in its place.
pub(super) struct IncomingSummary {
    /// The file's name; for frames, the names of all pictures that show one of them.
    pub(super) file: String,
    /// The sealed bytes.
    pub(super) sealed: ActionResult<Vec<u8>>,
}

/// One group of received files; groups are in the order of their first file.
enum Pile {
    File(IncomingSummary),
    Frames { transfer: Transfer, files: Vec<String>, gathered: Gathered, fault: Option<Failure> },
}

/// Joins the frames of each sealing, whichever pictures they are in and in whatever order. One picture is decoded after the other, and
/// goes before the next file is read.
pub(super) fn join_frames(files: impl IntoIterator<Item = (String, ActionResult<Vec<u8>>)>) -> Vec<IncomingSummary> {
    let mut piles: Vec<Pile> = Vec::new();
    for (file, bytes) in files {
        match bytes {
            Ok(bytes) if platform::is_picture(&bytes) => picture(&mut piles, &file, &bytes),
            Ok(bytes) if is_card(&bytes) => {
                piles.push(Pile::File(IncomingSummary { file, sealed: Err(Failure::PlanCardNotSummary) }));
            }
            sealed => piles.push(Pile::File(IncomingSummary { file, sealed })),
        }
    }
    piles.into_iter().map(Pile::arrived).collect()
}

/// Whether the bytes are a plan card in any of its forms, complete or not.
fn is_card(bytes: &[u8]) -> bool {
    let frame = std::str::from_utf8(bytes).ok().map(frames::read_card);
    let is_frame = frame.is_some_and(|frame| frame != Err(FrameFault::NotAFrame));
    is_frame || !matches!(format::card::read(bytes), Err(CardFault::NotACard | CardFault::TooBig { .. }))
}

fn picture(piles: &mut Vec<Pile>, file: &str, bytes: &[u8]) {
    let refused = |failure| Pile::File(IncomingSummary { file: file.to_owned(), sealed: Err(failure) });
    let texts = match pictures::qr::read_all(bytes) {
        Ok(texts) => texts,
        Err(PictureError::NotAPicture { .. }) => return piles.push(refused(Failure::SummaryForeign)),
        Err(error) => {
            let failure = match refuse::picture(error) {
                too_big @ Failure::PictureTooBig { .. } => too_big,
                _ => Failure::NoSummaryCode,
            };
            return piles.push(refused(failure));
        }
    };
    let read: Vec<_> = texts.iter().map(|text| frames::read(text)).collect();
    // A picture may show other codes as well, such as a poster behind the screen. It is refused only if it shows no frame at all.
    if read.iter().all(|frame| *frame == Err(FrameFault::NotAFrame)) {
        let shows_card = texts.iter().any(|text| is_card(text.as_bytes()));
        return piles.push(refused(if shows_card { Failure::PlanCardNotSummary } else { Failure::NoSummaryCode }));
    }
    for frame in read {
        match frame {
            Ok(frame) => lay(piles, file, frame),
            Err(FrameFault::NotAFrame) => {}
            Err(FrameFault::NewerVersion { found }) => {
                piles.push(refused(Failure::SummaryNewer { found, known: frames::VERSION }));
            }
            Err(FrameFault::Damaged | FrameFault::TooBig { .. }) => piles.push(refused(Failure::FrameDamaged)),
        }
    }
}

/// Adds a frame to the group of its sealing.
fn lay(piles: &mut Vec<Pile>, file: &str, frame: Frame) {
    let same = piles.iter_mut().find_map(|pile| match pile {
        Pile::Frames { transfer, files, gathered, fault } if *transfer == frame.transfer => Some((files, gathered, fault)),
        _ => None,
    });
    let Some((files, gathered, fault)) = same else {
        let (transfer, files) = (frame.transfer, vec![file.to_owned()]);
        return piles.push(Pile::Frames { transfer, files, gathered: Gathered::begin(frame), fault: None });
    };
    if !files.iter().any(|known| known == file) {
        files.push(file.to_owned());
    }
    if gathered.take(frame).is_err() {
        *fault = Some(Failure::FrameDamaged);
    }
}

impl Pile {
    fn arrived(self) -> IncomingSummary {
        match self {
            Pile::File(arrived) => arrived,
            Pile::Frames { files, gathered, fault, .. } => {
                let (have, of, missing) = (gathered.have(), gathered.of(), gathered.missing());
                let whole = gathered.whole().ok_or(Failure::FramesMissing { have, of, missing });
                IncomingSummary { file: files.join(", "), sealed: fault.map_or(whole, Err) }
            }
        }
    }
}
