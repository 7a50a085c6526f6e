//! What is printed, read by other people's programs: poppler's for text, structure, fonts and pictures, and a reader of codes.

mod amounts;
mod hostile;
mod printed;
mod read;
mod reports;
mod support;
