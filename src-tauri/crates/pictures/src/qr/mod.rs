//! QR codes (ISO/IEC 18004), drawn and read.

mod draw;
mod luma;
mod read;
mod smaller;

pub use draw::{Code, Level, MAX_VERSION, QUIET};
pub use luma::{MAX_BYTES, MAX_PIXELS, MAX_SIDE};
pub use read::{read, read_all};
