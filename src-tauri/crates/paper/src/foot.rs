//! The foot of each page.

use crate::block::Para;
use crate::flow::{Flow, Frame};
use crate::sheet::{Content, Role};
use crate::style::{self, mm};
use chrono::NaiveDate;
use exercises::plan::Header;
use words::Words;

/// Whose paper it is.
#[derive(Debug, Clone, Copy)]
pub struct Sender<'a> {
    /// The clinic's name.
    pub clinic: &'a str,
    /// Its telephone number.
    pub phone: Option<&'a str>,
}

impl<'a> From<&'a Header> for Sender<'a> {
    fn from(header: &'a Header) -> Sender<'a> {
        Sender { clinic: &header.clinic, phone: header.phone.as_deref() }
    }
}

/// From the foot of a page to its lower edge.
const FOOT: f32 = mm(13.0);

/// Whose paper it is, whom to call, of which day it is, and which of its pages, at the foot of each.
pub fn feet(flow: &mut Flow, words: Words, (sender, patient): (Sender<'_>, Option<&str>), day: NaiveDate) {
    let date = words.date_in_full(day);
    let parts = [Some(sender.clinic), sender.phone, patient, Some(date.as_str())];
    let said = words.commas(&parts.into_iter().flatten().filter(|part| !part.trim().is_empty()).collect::<Vec<_>>());
    let Frame { left, right, .. } = flow.frame;
    let (of, y) = (flow.sheet.pages.len(), flow.sheet.size.1 - FOOT);
    for page in 0..of {
        let number = Para::new(&flow.fonts, style::CAPTION, &words.part_of(page + 1, of), right - left);
        let whose = Para::new(&flow.fonts, style::CAPTION, &said, right - left - number.width() - mm(8.0));
        // A long name needs a second line, which goes above the first.
        let top = y + style::CAPTION.line - whose.height();
        let marks = [whose.left(left, top), number.right(right, y)].concat();
        flow.sheet.pages[page].push(Content { marks, role: Role::Foot });
    }
}
