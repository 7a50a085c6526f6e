//! What can go wrong with a picture, as facts. The texts for people are elsewhere.

/// Why a picture could not be drawn or read.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PictureError {
    /// The text does not fit a code that is read reliably.
    #[error("{bytes} bytes of text do not fit a QR code of version {max_version}")]
    TextTooBig {
        /// The text's length, in bytes.
        bytes: usize,
        /// The largest version that is drawn.
        max_version: u8,
    },
    /// Larger than what is taken in, in bytes.
    #[error("the file has {found} bytes, at most {most} are taken")]
    FileTooBig {
        /// The file's size, in bytes.
        found: u64,
        /// The most that is taken, in bytes.
        most: u64,
    },
    /// More pixels than what is taken in. Told from the header, before anything is unpacked.
    #[error("the picture has {found} pixels, at most {most} are taken")]
    TooManyPixels {
        /// Width times height.
        found: u64,
        /// The most that is taken.
        most: u64,
    },
    /// Neither PNG nor JPEG, or broken.
    #[error("not a PNG or JPEG picture: {detail}")]
    NotAPicture {
        /// The decoder's text, for a report.
        detail: String,
    },
    /// A sound picture, but no QR code was found in it, or none that can be read.
    #[error("no readable QR code in the picture")]
    NoCode,
    /// Several QR codes with different contents: which one is meant is not ours to guess.
    #[error("{count} different QR codes in the picture")]
    SeveralCodes {
        /// How many different contents were found.
        count: usize,
    },
}
