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

/// The frames of one sealing, with the pictures that show them.
struct Pile {
    transfer: Transfer,
    files: Vec<String>,
    gathered: Gathered,
    fault: Option<Failure>,
}

/// Sorts files as they are read. What is no picture is done with at once; frames wait until all files were read.
#[derive(Default)]
pub(super) struct Sorter {
    piles: Vec<Pile>,
    /// What is done with.
    pub(super) ready: Vec<IncomingSummary>,
}

impl Sorter {
    /// Sorts one more file. A picture is decoded, and goes before the next file is read. Returns whether it was one.
    pub(super) fn take(&mut self, file: String, bytes: ActionResult<Vec<u8>>) -> bool {
        match bytes {
            Ok(bytes) if platform::is_picture(&bytes) => {
                self.picture(&file, &bytes);
                return true;
            }
            Ok(bytes) if is_card(&bytes) => self.is_ready(file, Err(Failure::PlanCardNotSummary)),
            sealed => self.is_ready(file, sealed),
        }
        false
    }

    /// Joins the frames of each sealing, whichever pictures they are in and in whatever order.
    pub(super) fn finish(self) -> Vec<IncomingSummary> {
        let Sorter { piles, mut ready } = self;
        ready.extend(piles.into_iter().map(Pile::arrived));
        ready
    }

    fn is_ready(&mut self, file: String, sealed: ActionResult<Vec<u8>>) {
        self.ready.push(IncomingSummary { file, sealed });
    }

    fn picture(&mut self, file: &str, bytes: &[u8]) {
        let texts = match pictures::qr::read_all(bytes) {
            Ok(texts) => texts,
            Err(PictureError::NotAPicture { .. }) => return self.is_ready(file.to_owned(), Err(Failure::SummaryForeign)),
            Err(error) => {
                let failure = match refuse::picture(error) {
                    too_big @ Failure::PictureTooBig { .. } => too_big,
                    _ => Failure::NoSummaryCode,
                };
                return self.is_ready(file.to_owned(), Err(failure));
            }
        };
        let read: Vec<_> = texts.iter().map(|text| frames::read(text)).collect();
        // A picture may show other codes as well, such as a poster behind the screen. It is refused only if it shows no frame at all.
        if read.iter().all(|frame| *frame == Err(FrameFault::NotAFrame)) {
            let shows_card = texts.iter().any(|text| is_card(text.as_bytes()));
            let failure = if shows_card { Failure::PlanCardNotSummary } else { Failure::NoSummaryCode };
            return self.is_ready(file.to_owned(), Err(failure));
        }
        for frame in read {
            match frame {
                Ok(frame) => self.lay(file, frame),
                Err(FrameFault::NotAFrame) => {}
                Err(FrameFault::NewerVersion { found }) => {
                    self.is_ready(file.to_owned(), Err(Failure::SummaryNewer { found, known: frames::VERSION }));
                }
                Err(FrameFault::Damaged | FrameFault::TooBig { .. }) => {
                    self.is_ready(file.to_owned(), Err(Failure::FrameDamaged));
                }
            }
        }
    }

    /// Adds a frame to the group of its sealing.
    fn lay(&mut self, file: &str, frame: Frame) {
        let Some(pile) = self.piles.iter_mut().find(|pile| pile.transfer == frame.transfer) else {
            let (transfer, files) = (frame.transfer, vec![file.to_owned()]);
            return self.piles.push(Pile { transfer, files, gathered: Gathered::begin(frame), fault: None });
        };
        if !pile.files.iter().any(|known| known == file) {
            pile.files.push(file.to_owned());
        }
        if pile.gathered.take(frame).is_err() {
            pile.fault = Some(Failure::FrameDamaged);
        }
    }
}

impl Pile {
    fn arrived(self) -> IncomingSummary {
        let Pile { files, gathered, fault, .. } = self;
        let (have, of, missing) = (gathered.have(), gathered.of(), gathered.missing());
        let whole = gathered.whole().ok_or(Failure::FramesMissing { have, of, missing });
        IncomingSummary { file: files.join(", "), sealed: fault.map_or(whole, Err) }
    }
}

/// Whether the bytes are a plan card in any of its forms, complete or not.
fn is_card(bytes: &[u8]) -> bool {
    let frame = std::str::from_utf8(bytes).ok().map(frames::read_card);
    let is_frame = frame.is_some_and(|frame| frame != Err(FrameFault::NotAFrame));
    is_frame || !matches!(format::card::read(bytes), Err(CardFault::NotACard | CardFault::TooBig { .. }))
}
