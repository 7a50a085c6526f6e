//! What arrives, sorted: sealed files as they are, and pictures of frames, which may lie in any order among them.

use crate::{ActionResult, platform};
use format::frames::{self, Frame, FrameFault, Gathered, Transfer};
use pictures::PictureError;
use wire::Failure;

/// One sealed summary, or what came instead of one.
pub(super) struct IncomingSummary {
    /// The file's name; of frames, the names of all pictures that show one.
    pub(super) file: String,
    /// Its bytes.
    pub(super) sealed: ActionResult<Vec<u8>>,
}

/// What was sorted so far, in the order of its first file.
enum Pile {
    File(IncomingSummary),
    Frames { transfer: Transfer, files: Vec<String>, gathered: Gathered, fault: Option<Failure> },
}

/// Joins frames of the same sealing, whichever pictures they came in and in whatever order.
pub(super) fn join_frames(files: Vec<(String, ActionResult<Vec<u8>>)>) -> Vec<IncomingSummary> {
    let mut piles: Vec<Pile> = Vec::new();
    for (file, bytes) in files {
        match bytes {
            Ok(bytes) if platform::is_picture(&bytes) => picture(&mut piles, &file, &bytes),
            sealed => piles.push(Pile::File(IncomingSummary { file, sealed })),
        }
    }
    piles.into_iter().map(Pile::arrived).collect()
}

fn picture(piles: &mut Vec<Pile>, file: &str, bytes: &[u8]) {
    let refused = |failure| Pile::File(IncomingSummary { file: file.to_owned(), sealed: Err(failure) });
    let texts = match pictures::qr::read_all(bytes) {
        Ok(texts) => texts,
        Err(PictureError::NotAPicture { .. }) => return piles.push(refused(Failure::SummaryForeign)),
        Err(_) => return piles.push(refused(Failure::NoSummaryCode)),
    };
    let read: Vec<_> = texts.iter().map(|text| frames::read(text)).collect();
    // Other codes may hang on the wall behind the screen; a picture that shows nothing else is refused.
    if read.iter().all(|frame| *frame == Err(FrameFault::NotAFrame)) {
        return piles.push(refused(Failure::NoSummaryCode));
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

/// Lays a frame to those of its sealing.
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
