//! Blocks of text: measured before they are placed, so that pages break where they should.

use crate::font::{Fonts, Run};
use crate::mark::{Mark, text};
use crate::style::{self, Style};
use crate::text::{Printable, printable};
use krilla::tagging::ListNumbering;

/// Room between the sign of a list's line and its text.
const LABEL_GAP: f32 = 5.0;
/// Room between two lines of a list: of one paragraph each, and of several.
const ITEM_GAPS: (f32, f32) = (2.5, 5.0);

/// A paragraph, broken into lines.
#[derive(Debug, Clone)]
pub struct Para {
    lines: Vec<Run>,
    style: Style,
    /// What was written, if other signs are shown.
    pub written: Option<String>,
}

impl Para {
    /// A text in lines of at most `width`; a word that is longer than a line is broken.
    pub fn new(fonts: &Fonts, style: Style, text: &str, width: f32) -> Para {
        let Printable { shown, written } = printable(fonts, style.face, text);
        let lines = lines(fonts, style, &shown, width);
        Para { lines: lines.iter().map(|line| fonts.run(style.face, style.size, line)).collect(), style, written }
    }

    /// Its height.
    pub fn height(&self) -> f32 {
        self.lines.len() as f32 * self.style.line
    }

    /// Whether it says nothing.
    pub fn is_empty(&self) -> bool {
        self.lines.iter().all(|line| line.text.trim().is_empty())
    }

    /// The width of its longest line.
    pub fn width(&self) -> f32 {
        self.lines.iter().map(|line| line.width).fold(0.0, f32::max)
    }

    /// Its lines, the first one below `top`; each begins at the place that `start` gives for its width.
    pub fn marks(&self, top: f32, start: impl Fn(f32) -> f32) -> Vec<Mark> {
        let Style { size, line, .. } = self.style;
        // Letters stand a little above the middle of their line, since they reach higher than they hang.
        let first = top + (line - size) / 2.0 + size * 0.8;
        let at = |place: usize| first + place as f32 * line;
        self.lines.iter().enumerate().map(|(n, run)| text(self.style, run.clone(), (start(run.width), at(n)))).collect()
    }

    /// Its lines, flush left at `x`.
    pub fn left(&self, x: f32, top: f32) -> Vec<Mark> {
        self.marks(top, |_| x)
    }

    /// Its lines, flush right at `x`.
    pub fn right(&self, x: f32, top: f32) -> Vec<Mark> {
        self.marks(top, |width| x - width)
    }

    /// Its lines, around `x`.
    pub fn centred(&self, x: f32, top: f32) -> Vec<Mark> {
        self.marks(top, |width| x - width / 2.0)
    }

    /// The letters of its lines.
    pub fn runs(&self) -> impl Iterator<Item = &Run> {
        self.lines.iter()
    }
}

/// The text broken into lines, each with the space at its end.
fn lines(fonts: &Fonts, style: Style, shown: &str, width: f32) -> Vec<String> {
    let wide = |text: &str| fonts.width(style.face, style.size, text);
    let mut lines = vec![String::new()];
    // Of the last line, with the space at its end.
    let mut taken = 0.0;
    for word in shown.split_inclusive([' ', '-', '/']) {
        if taken > 0.0 && taken + wide(word) > width {
            lines.push(String::new());
            taken = 0.0;
        }
        for character in word.chars() {
            let before = lines.last().and_then(|line| line.chars().next_back());
            let mut advance = fonts.advance(style.face, style.size, before, character);
            if character != ' ' && taken > 0.0 && taken + advance > width {
                lines.push(String::new());
                taken = 0.0;
                advance = fonts.advance(style.face, style.size, None, character);
            }
            lines.last_mut().expect("there is always a line").push(character);
            taken += advance;
        }
    }
    lines
}

/// A line of a list: its sign and its paragraphs.
#[derive(Debug, Clone)]
pub struct Line {
    /// "1." or a bullet.
    pub label: Para,
    /// What it says.
    pub body: Vec<Para>,
}

impl Line {
    /// Its height.
    pub fn height(&self) -> f32 {
        self.body.iter().map(Para::height).sum()
    }
}

/// What a block is.
#[derive(Debug, Clone)]
pub enum Kind {
    /// A heading of a level, with its text.
    Heading(u16, String, Para),
    /// A paragraph.
    Paragraph(Para),
    /// A list, and the width of its signs.
    List(ListNumbering, f32, Vec<Line>),
}

/// Room between two lines of a list.
pub fn item_gap(lines: &[Line]) -> f32 {
    if lines.iter().any(|line| line.body.len() > 1) { ITEM_GAPS.1 } else { ITEM_GAPS.0 }
}

/// A block and the room above it.
#[derive(Debug, Clone)]
pub struct Block {
    /// What it is.
    pub kind: Kind,
    /// Room above it.
    pub above: f32,
}

impl Block {
    /// A paragraph.
    pub fn paragraph(fonts: &Fonts, style: Style, text: &str, width: f32, above: f32) -> Block {
        Block { kind: Kind::Paragraph(Para::new(fonts, style, text, width)), above }
    }

    /// A heading.
    pub fn heading(fonts: &Fonts, (level, style): (u16, Style), text: &str, width: f32, above: f32) -> Block {
        Block { kind: Kind::Heading(level, text.to_owned(), Para::new(fonts, style, text, width)), above }
    }

    /// A list, numbered or with bullets. Each of its lines has one paragraph or several, each in its style.
    pub fn list(fonts: &Fonts, numbered: bool, lines: &[Vec<(Style, &str)>], width: f32, above: f32) -> Block {
        let first = lines.iter().flatten().next().map_or(style::TEXT, |(style, _)| *style);
        let sign = |n: usize| if numbered { format!("{n}.") } else { "•".to_owned() };
        let label = |n: usize| Para::new(fonts, first, &sign(n), width);
        let indent = label(lines.len().max(1)).width() + LABEL_GAP;
        let para = |(style, text): &(Style, &str)| Para::new(fonts, *style, text, width - indent);
        let line =
            |(n, body): (usize, &Vec<(Style, &str)>)| Line { label: label(n + 1), body: body.iter().map(para).collect() };
        let numbering = if numbered { ListNumbering::Decimal } else { ListNumbering::Disc };
        Block { kind: Kind::List(numbering, indent, lines.iter().enumerate().map(line).collect()), above }
    }

    /// Its height without the room above it.
    pub fn height(&self) -> f32 {
        match &self.kind {
            Kind::Heading(_, _, para) | Kind::Paragraph(para) => para.height(),
            Kind::List(_, _, lines) => {
                let gaps = lines.len().saturating_sub(1) as f32 * item_gap(lines);
                lines.iter().map(Line::height).sum::<f32>() + gaps
            }
        }
    }

    /// The height of the part that a page may not break.
    pub fn first_height(&self) -> f32 {
        match &self.kind {
            Kind::List(_, _, lines) => lines.first().map_or(0.0, Line::height),
            _ => self.height(),
        }
    }
}

/// The height of blocks one below the other; the room above the first one does not count.
pub fn height(blocks: &[Block]) -> f32 {
    let all: f32 = blocks.iter().map(|block| block.above + block.height()).sum();
    all - blocks.first().map_or(0.0, |block| block.above)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_are_no_wider_than_asked_and_lose_nothing() {
        let fonts = Fonts::new().expect("the fonts");
        for text in
            ["Stand beside a worktop, feet hip-width apart.", "a", "", "Donaudampfschifffahrtselektrizitätenhauptwerk ab"]
        {
            for width in [10.0, 45.0, 200.0] {
                let para = Para::new(&fonts, style::TEXT, text, width);
                assert!(para.width() <= width, "{text} in {width}");
                assert_eq!(para.runs().map(|run| run.text.as_str()).collect::<String>(), text);
            }
        }
    }
}
