//! The end of the hand-out: when to get help, and the plan as codes.

use super::Making;
use crate::PaperError;
use crate::block::{Block, Para, height};
use crate::code;
use crate::mark::{outlined, rectangle};
use crate::style::{self, ALARM, mm};
use exercises::alarm::Trouble;
use krilla::geom::Rect;
use krilla::tagging::{BBox, Placement, Tag};
use std::collections::BTreeSet;
use words::Key;

/// Room above a part.
const ABOVE: f32 = mm(11.0);
/// Room within the frame around the signs of danger.
const WITHIN: f32 = mm(5.0);

impl Making<'_> {
    /// The signs of danger, each with what to do, in a frame.
    pub(super) fn urgent(&mut self) {
        let (words, frame) = (self.words, self.flow.frame);
        let width = frame.width() - 2.0 * WITHIN;
        let urgent = Trouble::ALL.into_iter().filter(|trouble| trouble.is_urgent());
        let signs: Vec<(&str, Vec<&str>)> =
            urgent.map(|trouble| (words.trouble(trouble), words.what_to_do(trouble, &BTreeSet::new()))).collect();
        let advice: Vec<String> = signs.iter().map(|(_, advice)| words.sentences(advice)).collect();
        let lines: Vec<_> = signs
            .iter()
            .zip(&advice)
            .map(|((sign, _), advice)| vec![(style::SMALL_STRONG, *sign), (style::SMALL, advice.as_str())])
            .collect();
        let fonts = &self.flow.fonts;
        let para = |style, key| Block::paragraph(fonts, style, words.text(key), width, mm(2.0));
        let title = words.text(Key::PaperUrgent);
        let heading = style::Style { ink: ALARM, ..style::HEADING };
        let blocks = [
            Block::heading(fonts, (2, heading), title, width, 0.0),
            para(style::TEXT, Key::PaperUrgentWhat),
            Block::list(fonts, false, &lines, width, mm(2.0)),
            para(style::ASIDE, Key::PaperNoDiagnosis),
        ];
        self.flow.space(ABOVE);
        let high = height(&blocks) + 2.0 * WITHIN;
        self.flow.need(high);
        let (page, top) = (self.flow.page, self.flow.y);
        if high <= self.flow.room() {
            let around = outlined(rectangle(frame.left, top, frame.width(), high), ALARM, 1.4);
            self.flow.sheet.decorate(page, vec![around]);
        }
        self.flow.y += WITHIN;
        self.flow.column(&blocks, frame.left + WITHIN);
        self.flow.y += WITHIN;
    }

    /// The codes, as many beside each other as there is room for, and what they are for.
    pub(super) fn codes(&mut self) -> Result<(), PaperError> {
        let (codes, words, frame) = (self.given.codes, self.words, self.flow.frame);
        let sides = codes.iter().map(|code| code::side(code, frame.width())).collect::<Result<Vec<f32>, _>>()?;
        let Some(side) = sides.into_iter().reduce(f32::max) else { return Ok(()) };
        let fonts = &self.flow.fonts;
        let para = |style, text: &str| Block::paragraph(fonts, style, text, frame.width(), mm(1.5));
        let blocks = [
            Block::heading(fonts, (2, style::HEADING), words.text(Key::PaperCode), frame.width(), 0.0),
            para(style::TEXT, &words.paper_code_what(codes.len())),
            para(style::ASIDE, words.text(Key::WhoPhotographs)),
        ];
        let caption = |n: usize| Para::new(fonts, style::CAPTION, &words.frame_of(n + 1, codes.len()), side);
        let captions: Vec<Para> = if codes.len() > 1 { (0..codes.len()).map(caption).collect() } else { Vec::new() };
        let row = side + captions.first().map_or(0.0, Para::height) + mm(2.0);
        self.flow.space(ABOVE);
        self.flow.need(height(&blocks) + mm(2.0) + row);
        self.flow.column(&blocks, frame.left);
        self.flow.y += mm(2.0);
        // Quiet zones of neighbours may share their room.
        let step = side - code::quiet(&codes[0], side) + mm(2.0);
        let across = (((frame.width() - side) / step).floor().max(0.0) as usize) + 1;
        for (at, code) in codes.iter().enumerate() {
            if at > 0 && at % across == 0 {
                self.flow.y += row;
                self.flow.need(row);
            }
            // What is seen of it begins where the text does; its quiet zone reaches beyond.
            let x = frame.left - code::quiet(code, side) + (at % across) as f32 * step;
            self.code(at, (x, side), captions.get(at));
        }
        self.flow.y += row;
        Ok(())
    }

    fn code(&mut self, at: usize, (x, side): (f32, f32), caption: Option<&Para>) {
        let (page, y) = (self.flow.page, self.flow.y);
        let said = self.words.paper_code_drawing(at + 1, self.given.codes.len());
        let bbox = Rect::from_xywh(x, y, side, side).map(|rect| BBox::new(page, rect));
        self.flow.sheet.open(Tag::Figure(Some(said)).with_bbox(bbox).with_placement(Some(Placement::Block)));
        self.flow.sheet.put(page, code::marks(&self.given.codes[at], (x, y), side), None);
        if let Some(caption) = caption {
            self.flow.sheet.element(Tag::Caption, page, caption.centred(x + side / 2.0, y + side), None);
        }
        self.flow.sheet.close();
    }
}
