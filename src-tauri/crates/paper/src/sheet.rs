//! Pages with what is on them, and the structure that a screen reader follows.

use crate::mark::Mark;
use crate::style::mm;
use krilla::tagging::TagKind;

/// A size of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paper {
    /// ISO A4, 210 by 297 mm.
    A4,
    /// US Letter, 8.5 by 11 inches.
    Letter,
}

impl Paper {
    /// Both sizes.
    pub const ALL: [Paper; 2] = [Paper::A4, Paper::Letter];

    /// Width and height of an upright page, in points.
    pub(crate) fn upright(self) -> (f32, f32) {
        match self {
            Paper::A4 => (mm(210.0), mm(297.0)),
            Paper::Letter => (612.0, 792.0),
        }
    }
}

/// What a thing on the page is for a screen reader.
#[derive(Debug, Clone)]
pub enum Role {
    /// Of no meaning: it is not read.
    Decoration,
    /// The foot of the page: it is not read.
    Foot,
    /// A part of the structure; with the text that was written, if other signs are shown.
    Part(Option<String>),
}

/// Marks that belong together.
#[derive(Debug, Clone)]
pub struct Content {
    /// What is drawn.
    pub marks: Vec<Mark>,
    /// What it is.
    pub role: Role,
}

/// A part of the structure's element.
#[derive(Debug, Clone, Copy)]
pub enum Child {
    /// An element.
    Element(usize),
    /// Something on a page: the page and its place there.
    Content(usize, usize),
}

/// An element of the structure.
#[derive(Debug, Clone)]
pub struct Element {
    /// What it is.
    pub tag: TagKind,
    /// Its parts in reading order.
    pub children: Vec<Child>,
}

/// A line of the table of contents that a reader shows beside the pages.
#[derive(Debug, Clone)]
pub struct Chapter {
    /// Its heading.
    pub title: String,
    /// The index of its page.
    pub page: usize,
    /// The height at which it begins.
    pub y: f32,
}

/// All pages, ready to be written.
#[derive(Debug, Default)]
pub struct Sheet {
    /// Width and height of each page.
    pub size: (f32, f32),
    /// What is on each page, in the order of drawing.
    pub pages: Vec<Vec<Content>>,
    /// What is behind everything else on a page and means nothing.
    pub behind: Vec<(usize, Vec<Mark>)>,
    /// All elements.
    pub elements: Vec<Element>,
    /// The elements that are in no other.
    pub top: Vec<usize>,
    /// The chapters in their order.
    pub chapters: Vec<Chapter>,
    open: Vec<usize>,
}

impl Sheet {
    /// A sheet without pages.
    pub fn new(size: (f32, f32)) -> Sheet {
        Sheet { size, ..Sheet::default() }
    }

    /// Begins an element within the one that is open.
    pub fn open(&mut self, tag: impl Into<TagKind>) {
        let place = self.elements.len();
        self.elements.push(Element { tag: tag.into(), children: Vec::new() });
        match self.open.last() {
            Some(parent) => self.elements[*parent].children.push(Child::Element(place)),
            None => self.top.push(place),
        }
        self.open.push(place);
    }

    /// Ends the element that was opened last.
    pub fn close(&mut self) {
        self.open.pop();
    }

    /// Puts marks on a page, as a part of the element that is open.
    pub fn put(&mut self, page: usize, marks: Vec<Mark>, written: Option<String>) {
        if let Some(parent) = self.open.last() {
            self.elements[*parent].children.push(Child::Content(page, self.pages[page].len()));
        }
        let role = if self.open.is_empty() { Role::Decoration } else { Role::Part(written) };
        self.pages[page].push(Content { marks, role });
    }

    /// Puts marks on a page that are an element of their own.
    pub fn element(&mut self, tag: impl Into<TagKind>, page: usize, marks: Vec<Mark>, written: Option<String>) {
        self.open(tag);
        self.put(page, marks, written);
        self.close();
    }

    /// Puts marks on a page that mean nothing.
    pub fn decorate(&mut self, page: usize, marks: Vec<Mark>) {
        self.pages[page].push(Content { marks, role: Role::Decoration });
    }
}
