//! Errors of drawing and reading pictures, with their facts. The texts for people are elsewhere.

/// Why a picture could not be drawn or read.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PictureError {
    /// The text is too long for a code that can be read reliably.
    #[error("{bytes} bytes of text do not fit a QR code of version {max_version}")]
    TextTooBig {
        /// The text's length, in bytes.
        bytes: usize,
        /// The largest version that is drawn.
        max_version: u8,
    },
    /// The file is larger than the limit.
    #[error("the file has {found} bytes, at most {most} are taken")]
    FileTooBig {
        /// The file's size, in bytes.
        found: u64,
        /// The limit, in bytes.
        most: u64,
    },
    /// The picture has more pixels than the limit. Known from the header, before anything is decoded.
    #[error("the picture has {found} pixels, at most {most} are taken")]
    TooManyPixels {
        /// Width times height.
        found: u64,
        /// The most that is taken.
        most: u64,
    },
    /// One side of the picture is longer than the limit. Known from the header, before anything is decoded.
    #[error("a side of the picture has {found} pixels, at most {most} are taken")]
    TooLong {
        /// The longest side, in pixels.
        found: u32,
        /// The most that is taken.
        most: u32,
    },
    /// Neither PNG nor JPEG, or damaged.
    #[error("not a PNG or JPEG picture: {detail}")]
    NotAPicture {
        /// The decoder's text, for an error report.
        detail: String,
    },
    /// A valid picture, but no readable QR code was found in it.
    #[error("no readable QR code in the picture")]
    NoCode,
    /// Several QR codes with different contents; the program does not guess which one is meant.
    #[error("{count} different QR codes in the picture")]
    SeveralCodes {
        /// Number of different contents.
        count: usize,
    },
}
