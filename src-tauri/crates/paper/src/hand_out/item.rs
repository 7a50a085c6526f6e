//! One exercise of the plan.

use super::{Making, STRING_X};
use crate::PaperError;
use crate::block::{Block, Kind, Para, height};
use crate::figure::{self, Pictures};
use crate::font::Fonts;
use crate::mark::{filled, rectangle};
use crate::motif;
use crate::style::{self, ALARM, Style, mm};
use crate::text::told;
use exercises::catalogue::{Exercise, Texts};
use exercises::plan::{Item, Side};
use krilla::geom::Rect;
use krilla::tagging::{BBox, Placement, Tag};
use words::{Key, Words};

/// Room between two columns.
const BETWEEN: f32 = mm(7.0);
/// Room between the times of an exercise and how it is done.
const BELOW_FACTS: f32 = mm(2.0);
/// From the upper edge of an exercise to its figures.
const ABOVE_FIGURES: f32 = mm(1.0);
/// Width of the bar beside signs to stop, and the room between both: the signs differ from precautions in print without colour too.
const BAR: (f32, f32) = (2.5, mm(2.4));
/// Room above an exercise.
const ABOVE: f32 = mm(8.0);
/// Room above its lists.
const ABOVE_LISTS: f32 = mm(3.5);
/// A page that is filled to this share is left for an exercise that would be broken on it and fits on the next.
const FILLED: f32 = 0.45;

/// An exercise, measured.
struct Measured {
    title: String,
    heading: Para,
    /// Its name again, for a page on which it goes on.
    again: Para,
    /// Dose, level and times.
    facts: Vec<Para>,
    pictures: Pictures,
    captions: Vec<Para>,
    /// Set-up and steps.
    doing: Vec<Block>,
    cautions: Vec<Block>,
    stop_signs: Vec<Block>,
}

impl Making<'_> {
    /// Prints an exercise: never its heading without its figures.
    pub(super) fn item(&mut self, number: usize, item: &Item) -> Result<(), PaperError> {
        let found = self.given.catalogue.get(&item.exercise);
        let exercise = found.ok_or_else(|| PaperError::UnknownExercise(item.exercise.clone()))?;
        let unknown = || PaperError::UnknownExercise(item.exercise.clone());
        let mut texts = exercise.level(item.rung.as_ref()).texts(self.words.lang()).ok_or_else(unknown)?;
        if told(&texts.name).is_empty() {
            // A heading has to say something.
            texts.name = item.exercise.to_string();
        }
        let measured = self.measured(item, exercise, &texts);
        self.make_room(&measured);
        // A clinic's own exercise may be written in one language alone, which a screen reader has to know.
        let lang = self.words.lang();
        let other = exercise.texts.keys().next().filter(|_| !exercise.texts.contains_key(&lang));
        self.flow.sheet.open(Tag::Section.with_lang(other.map(|other| other.code().to_owned())));
        let page = self.flow.page;
        self.top_of_item(number, &measured);
        self.lists(&measured, page);
        self.flow.sheet.close();
        Ok(())
    }

    fn measured(&self, item: &Item, exercise: &Exercise, texts: &Texts) -> Measured {
        let (words, fonts, width) = (self.words, &self.flow.fonts, self.flow.frame.width());
        let figure = exercise.level(item.rung.as_ref()).figure();
        let pictures = Pictures::of(&figure, item.side == Side::Left);
        let beside = width - pictures.width() - BETWEEN;
        let caption = |key| Para::new(fonts, style::CAPTION, words.text(key), pictures.width());
        let captions =
            if pictures.shapes.len() > 1 { [Key::PaperStart, Key::PaperEnd].map(caption).to_vec() } else { Vec::new() };
        let fact = |style: Style, text: &str| Para::new(fonts, style, text, beside);
        let facts = [
            Some(fact(style::STRONG, &words.at_line_start(&words.dose_of(item)))),
            words.rung_of(item, exercise).map(|rung| fact(style::ASIDE, &rung)),
            Some(fact(style::ASIDE, &words.at_line_start(&words.due(item)))),
            words.rest_and_tempo(item.dose, figure.moves_up()).map(|said| fact(style::ASIDE, &said)),
        ];
        let half = (width - BETWEEN) / 2.0;
        let limit = item.dose.kind().rules().asks_pain().then(|| words.stop_above(item.pain_limit));
        let stop: Vec<&str> = limit.as_deref().into_iter().chain(texts.stop_signs.iter().map(String::as_str)).collect();
        let cautions: Vec<&str> = texts.cautions.iter().map(String::as_str).collect();
        Measured {
            title: texts.name.clone(),
            heading: Para::new(fonts, style::HEADING, &texts.name, beside),
            again: Para::new(fonts, style::STRONG, &texts.name, width),
            facts: facts.into_iter().flatten().collect(),
            pictures,
            captions,
            doing: doing(words, fonts, (item, exercise, texts), beside),
            cautions: lines(fonts, (style::MINOR, words.text(Key::Precautions)), &cautions, half),
            stop_signs: lines(fonts, (style::MINOR_ALARM, words.text(Key::SignsToStop)), &stop, half),
        }
    }

    /// Goes on to the next page if the exercise would be broken badly on this one.
    fn make_room(&mut self, measured: &Measured) {
        self.flow.space(ABOVE);
        let first = measured.doing.first().map_or(0.0, Block::first_height);
        let lead = measured.figures_height().max(measured.head_height() + first);
        let whole = lead.max(measured.head_height() + height(&measured.doing)) + ABOVE_LISTS + measured.lists_height();
        let room = self.flow.room();
        let mostly_filled = room < self.flow.frame.height() * (1.0 - FILLED);
        if whole > room && (lead > room || (mostly_filled && whole <= self.flow.frame.height())) {
            self.flow.need(f32::INFINITY);
        }
    }

    /// The knot with its number, the name, how much and when; beside them the figures, below them what is done.
    fn top_of_item(&mut self, number: usize, measured: &Measured) {
        let (page, left, top) = (self.flow.page, self.flow.frame.left, self.flow.y);
        let middle = top + style::HEADING.line / 2.0;
        self.flow.sheet.decorate(page, vec![motif::knot(STRING_X, middle)]);
        let sign = motif::number(&self.flow.fonts, &self.words.shown(number as i64), STRING_X, middle);
        self.flow.heading(2, &measured.title, (&[sign], &measured.heading), left);
        for fact in &measured.facts {
            self.flow.para(Tag::P, fact, left);
        }
        self.figures(top + ABOVE_FIGURES, measured);
        self.flow.y += BELOW_FACTS;
        self.flow.column(&measured.doing, left);
        if self.flow.page == page {
            self.flow.y = self.flow.y.max(top + measured.figures_height());
        }
    }

    fn figures(&mut self, top: f32, measured: &Measured) {
        let Pictures { size: (wide, high), shapes, beside } = &measured.pictures;
        let (page, left, name) = (self.flow.page, self.flow.frame.right - measured.pictures.width(), &told(&measured.title));
        let said = match shapes.len() {
            2 => vec![self.words.paper_figure_start(name), self.words.paper_figure_end(name)],
            _ => vec![self.words.paper_figure(name)],
        };
        let step =
            if *beside { (wide + figure::BETWEEN, 0.0) } else { (0.0, high + measured.caption_height() + figure::BETWEEN) };
        for (place, (shapes, said)) in shapes.iter().zip(said).enumerate() {
            let (x, y) = (left + place as f32 * step.0, top + place as f32 * step.1);
            let bbox = Rect::from_xywh(x, y, *wide, *high).map(|rect| BBox::new(page, rect));
            self.flow.sheet.open(Tag::Figure(Some(said)).with_bbox(bbox).with_placement(Some(Placement::Block)));
            self.flow.sheet.put(page, figure::marks(shapes, (x, y)), None);
            if let Some(caption) = measured.captions.get(place) {
                self.flow.sheet.element(Tag::Caption, page, caption.centred(x + wide / 2.0, y + high + mm(0.8)), None);
            }
            self.flow.sheet.close();
        }
    }

    /// Precautions and signs to stop, beside each other where they fit; on another page than `begun` below the exercise's name.
    fn lists(&mut self, measured: &Measured, begun: usize) {
        self.flow.space(ABOVE_LISTS);
        let high = measured.lists_height();
        let left = self.flow.frame.left;
        if high + measured.again.height() <= self.flow.frame.height() {
            self.flow.need(high);
        }
        if self.flow.page != begun && self.flow.is_at_top() && high > 0.0 {
            self.flow.para(Tag::P, &measured.again, left);
            self.flow.space(mm(1.5));
        }
        let (page, top) = (self.flow.page, self.flow.y);
        self.flow.column(&measured.cautions, left);
        let bottom = self.flow.y;
        if self.flow.page == page && high <= self.flow.frame.height() {
            self.flow.y = top;
            let half = (self.flow.frame.width() - BETWEEN) / 2.0;
            let x = left + half + BETWEEN;
            if !measured.stop_signs.is_empty() {
                let bar = rectangle(x - BAR.0 - BAR.1, top, BAR.0, height(&measured.stop_signs));
                self.flow.sheet.decorate(page, vec![filled(bar, ALARM)]);
            }
            self.flow.column(&measured.stop_signs, x);
            self.flow.y = self.flow.y.max(bottom);
        } else {
            self.flow.space(ABOVE_LISTS);
            self.flow.column(&measured.stop_signs, left);
        }
    }
}

impl Measured {
    fn head_height(&self) -> f32 {
        self.heading.height() + self.facts.iter().map(Para::height).sum::<f32>() + BELOW_FACTS
    }

    fn caption_height(&self) -> f32 {
        self.captions.first().map_or(0.0, |caption| caption.height() + mm(0.8))
    }

    fn figures_height(&self) -> f32 {
        let one = self.pictures.size.1 + self.caption_height();
        let both = if self.pictures.beside || self.pictures.shapes.len() < 2 { one } else { 2.0 * one + figure::BETWEEN };
        ABOVE_FIGURES + both
    }

    fn lists_height(&self) -> f32 {
        height(&self.cautions).max(height(&self.stop_signs))
    }
}

/// What is needed, the set-up, the steps, and what the clinician wrote.
fn doing(words: Words, fonts: &Fonts, (item, exercise, texts): (&Item, &Exercise, &Texts), width: f32) -> Vec<Block> {
    let needs = words.needs(exercise.level(item.rung.as_ref()).equipment());
    let change = words.change_of(item, exercise);
    let note = Some(item.note.trim()).filter(|note| !note.is_empty()).map(|note| words.paper_note(note));
    let steps: Vec<_> = texts.steps.iter().map(|step| vec![(style::TEXT, step.as_str())]).collect();
    let para = |style, text: &str| Block::paragraph(fonts, style, text, width, mm(1.5));
    let mut blocks = vec![para(style::TEXT, &texts.set_up)];
    blocks.extend(change.map(|change| para(style::STRONG, &change)));
    blocks.push(Block::list(fonts, true, &steps, width, mm(1.5)));
    blocks.extend(needs.map(|needs| para(style::ASIDE, &needs)));
    blocks.extend(note.map(|note| para(style::STRONG, &note)));
    blocks.retain(|block| block.height() > 0.0 && !matches!(&block.kind, Kind::Paragraph(para) if para.is_empty()));
    blocks
}

/// A list with its heading; nothing if the list is empty.
fn lines(fonts: &Fonts, (style, title): (Style, &str), lines: &[&str], width: f32) -> Vec<Block> {
    if lines.is_empty() {
        return Vec::new();
    }
    let lines: Vec<_> = lines.iter().map(|line| vec![(style::SMALL, *line)]).collect();
    vec![Block::heading(fonts, (3, style), title, width, 0.0), Block::list(fonts, false, &lines, width, mm(0.6))]
}
