//! QR codes drawn and read, images in. Pure: bytes in, bytes out.
//!
//! * [`qr::Code`] is a drawn code: as PNG for a file, as SVG for a screen, as modules for paper.
//! * [`qr::read`] finds the one code in a photo or a picture file; [`qr::read_all`] all of them.

mod error;
pub mod qr;

pub use error::PictureError;
