//! A card that was issued.

mod card_codes;
mod card_files;
mod card_text;
mod issued_page;
mod on_paper;

pub use issued_page::Issued;
