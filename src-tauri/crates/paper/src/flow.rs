//! Places blocks below each other and goes on to the next page where one is full.

use crate::block::{Block, Kind, Line, Para, item_gap};
use crate::font::Fonts;
use crate::mark::Mark;
use crate::sheet::{Chapter, Sheet};
use crate::text::told;
use krilla::tagging::{Tag, TagKind};
use std::num::NonZeroU16;

/// Where text may stand on each page, in points.
#[derive(Debug, Clone, Copy)]
pub struct Frame {
    /// The left edge of the text.
    pub left: f32,
    /// Its right edge.
    pub right: f32,
    /// Its upper edge.
    pub top: f32,
    /// Its lower edge.
    pub bottom: f32,
}

impl Frame {
    /// Its width.
    pub fn width(self) -> f32 {
        self.right - self.left
    }

    /// Its height.
    pub fn height(self) -> f32 {
        self.bottom - self.top
    }
}

/// A sheet that is filled from the top.
pub struct Flow {
    /// The fonts.
    pub fonts: Fonts,
    /// The pages.
    pub sheet: Sheet,
    /// Where text may stand.
    pub frame: Frame,
    /// The index of the page that is being filled.
    pub page: usize,
    /// Where the next block begins.
    pub y: f32,
}

impl Flow {
    /// An empty first page.
    pub fn new(fonts: Fonts, size: (f32, f32), frame: Frame) -> Flow {
        let mut sheet = Sheet::new(size);
        sheet.pages.push(Vec::new());
        Flow { fonts, sheet, frame, page: 0, y: frame.top }
    }

    /// The room that is left on the page.
    pub fn room(&self) -> f32 {
        self.frame.bottom - self.y
    }

    /// Whether nothing is on the page yet.
    pub fn is_at_top(&self) -> bool {
        self.y <= self.frame.top
    }

    /// Goes on to the next page.
    pub fn next_page(&mut self) {
        self.page += 1;
        if self.sheet.pages.len() <= self.page {
            self.sheet.pages.push(Vec::new());
        }
        self.y = self.frame.top;
    }

    /// Goes on to the next page unless so much room is left.
    pub fn need(&mut self, height: f32) {
        if height > self.room() && !self.is_at_top() {
            self.next_page();
        }
    }

    /// Leaves room, but none at the top of a page.
    pub fn space(&mut self, height: f32) {
        if !self.is_at_top() {
            self.y += height;
        }
    }

    /// Puts a paragraph as an element here, flush left at `x`.
    pub fn para(&mut self, tag: impl Into<TagKind>, para: &Para, x: f32) {
        self.need(para.height());
        self.sheet.element(tag, self.page, para.left(x, self.y), para.written.clone());
        self.y += para.height();
    }

    /// Puts blocks below each other, flush left at `x`. A heading stays with what follows it.
    pub fn column(&mut self, blocks: &[Block], x: f32) {
        for (at, block) in blocks.iter().enumerate() {
            let next = blocks.get(at + 1).filter(|_| matches!(block.kind, Kind::Heading(..)));
            if at > 0 {
                self.space(block.above);
            }
            self.need(block.first_height() + next.map_or(0.0, |next| next.above + next.first_height()));
            self.block(block, x);
        }
    }

    fn block(&mut self, block: &Block, x: f32) {
        match &block.kind {
            Kind::Heading(level, title, para) => self.heading(*level, title, (&[], para), x),
            Kind::Paragraph(para) => self.para(Tag::P, para, x),
            Kind::List(numbering, indent, lines) => {
                self.sheet.open(Tag::L(*numbering));
                for (at, line) in lines.iter().enumerate() {
                    if at > 0 {
                        self.space(item_gap(lines));
                    }
                    self.need(line.height());
                    self.line(line, *indent, x);
                }
                self.sheet.close();
            }
        }
    }

    /// Puts a heading here, with what stands before it; those of the first two levels are chapters.
    pub fn heading(&mut self, level: u16, title: &str, (before, para): (&[Mark], &Para), x: f32) {
        self.need(para.height());
        let title = told(title);
        if level <= 2 {
            self.sheet.chapters.push(Chapter { title: title.clone(), page: self.page, y: self.y });
        }
        let level = NonZeroU16::new(level).unwrap_or(NonZeroU16::MIN);
        self.sheet.open(Tag::Hn(level, Some(title)));
        if !before.is_empty() {
            self.sheet.put(self.page, before.to_vec(), None);
        }
        self.sheet.put(self.page, para.left(x, self.y), para.written.clone());
        self.sheet.close();
        self.y += para.height();
    }

    fn line(&mut self, line: &Line, indent: f32, x: f32) {
        self.sheet.open(Tag::LI);
        self.sheet.element(Tag::Lbl, self.page, line.label.left(x, self.y), None);
        self.sheet.open(Tag::LBody);
        for para in &line.body {
            self.para(Tag::P, para, x + indent);
        }
        self.sheet.close();
        self.sheet.close();
    }
}
