//! Draws QR codes, and reads them from pictures. Pure: bytes in, bytes out.
//!
//! * [`qr::Code`] is a drawn code: as PNG for a file, as SVG for a screen, as modules for paper.
//! * [`qr::read`] finds the only code in a photo or a picture file; [`qr::read_all`] finds all codes.

mod error;
pub mod qr;

pub use error::PictureError;
