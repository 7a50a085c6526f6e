//! The letters: Atkinson Hyperlegible Next in two weights, the window's own, whole, since a card can hold any name.

use crate::PaperError;
use crate::kern::Kerning;
use krilla::text::{Font, GlyphId, KrillaGlyph};
use skrifa::instance::{LocationRef, Size};
use skrifa::{FontRef, MetadataProvider};
use std::collections::BTreeMap;

const REGULAR: &[u8] = include_bytes!("../fonts/atkinson-hyperlegible-next-400-normal.ttf");
const SEMI_BOLD: &[u8] = include_bytes!("../fonts/atkinson-hyperlegible-next-600-normal.ttf");

/// Signs that can stand for one that the font lacks, the best first.
const STAND_INS: [char; 4] = ['\u{fffd}', '\u{25a1}', '\u{25ca}', '?'];

/// A weight.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Face {
    /// 400.
    Regular,
    /// 600.
    SemiBold,
}

/// A line of text, measured.
#[derive(Debug, Clone)]
pub struct Run {
    /// What it says; one that goes on ends with its space.
    pub text: String,
    /// Its letters; advances are in ems.
    pub glyphs: Vec<KrillaGlyph>,
    /// Its width without a space at its end.
    pub width: f32,
}

/// One font, to be measured and to be embedded.
struct Loaded {
    /// The glyph of each character, and its width in ems.
    signs: BTreeMap<char, (skrifa::GlyphId, f32)>,
    kerning: Kerning,
    embedded: Font,
}

/// All fonts.
pub struct Fonts {
    regular: Loaded,
    semi_bold: Loaded,
    stand_in: char,
}

impl Loaded {
    fn new(bytes: &'static [u8]) -> Result<Loaded, PaperError> {
        let fault = || PaperError::Internal("a font that is no font".to_owned());
        let reader = FontRef::new(bytes).map_err(|_| fault())?;
        let embedded = Font::new(bytes.into(), 0).ok_or_else(fault)?;
        let metrics = reader.glyph_metrics(Size::new(1.0), LocationRef::default());
        let sign = |(code, glyph): (u32, skrifa::GlyphId)| {
            let width = metrics.advance_width(glyph).unwrap_or_default();
            Some((char::from_u32(code)?, (glyph, width)))
        };
        Ok(Loaded { signs: reader.charmap().mappings().filter_map(sign).collect(), kerning: Kerning::of(&reader), embedded })
    }
}

impl Fonts {
    /// Reads the fonts.
    pub fn new() -> Result<Fonts, PaperError> {
        let (regular, semi_bold) = (Loaded::new(REGULAR)?, Loaded::new(SEMI_BOLD)?);
        let in_both = |sign: &char| [&regular, &semi_bold].iter().all(|font| font.signs.contains_key(sign));
        let stand_in = STAND_INS.into_iter().find(in_both).unwrap_or('?');
        Ok(Fonts { regular, semi_bold, stand_in })
    }

    /// Printed in place of a character that the font does not have.
    pub fn stand_in(&self) -> char {
        self.stand_in
    }

    /// Whether a face has a character.
    pub fn has(&self, face: Face, character: char) -> bool {
        self.loaded(face).signs.contains_key(&character)
    }

    /// The font to be embedded.
    pub fn embedded(&self, face: Face) -> &Font {
        &self.loaded(face).embedded
    }

    fn loaded(&self, face: Face) -> &Loaded {
        match face {
            Face::Regular => &self.regular,
            Face::SemiBold => &self.semi_bold,
        }
    }

    /// A line of text at a size, of characters that the face has.
    pub fn run(&self, face: Face, size: f32, text: &str) -> Run {
        let signs = &self.loaded(face).signs;
        let mut glyphs: Vec<KrillaGlyph> = Vec::new();
        let mut before = None;
        for (at, character) in text.char_indices() {
            let Some((glyph, advance)) = signs.get(&character).copied() else { continue };
            if let Some(last) = glyphs.last_mut() {
                last.x_advance += self.kern(face, before, character);
            }
            let range = at..at + character.len_utf8();
            glyphs.push(KrillaGlyph::new(GlyphId::new(glyph.to_u32()), advance, 0.0, 0.0, 0.0, range, None));
            before = Some(character);
        }
        Run { text: text.to_owned(), glyphs, width: self.width(face, size, text) }
    }

    /// The width of a text at a size, without a space at its end.
    pub fn width(&self, face: Face, size: f32, text: &str) -> f32 {
        let mut before = None;
        let advance = |character| self.advance(face, size, before.replace(character), character);
        text.trim_end_matches(' ').chars().map(advance).sum()
    }

    /// How much longer a text becomes at a size by a character after the one `before`.
    pub fn advance(&self, face: Face, size: f32, before: Option<char>, character: char) -> f32 {
        let own = self.loaded(face).signs.get(&character).map_or(0.0, |(_, width)| *width);
        (own + self.kern(face, before, character)) * size
    }

    fn kern(&self, face: Face, before: Option<char>, character: char) -> f32 {
        let Loaded { signs, kerning, .. } = self.loaded(face);
        let pair = before.and_then(|before| signs.get(&before)).zip(signs.get(&character));
        pair.map_or(0.0, |((left, _), (right, _))| kerning.between(*left, *right))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_that_lean_away_from_each_other_stand_closer() {
        let fonts = Fonts::new().expect("the fonts");
        for face in [Face::Regular, Face::SemiBold] {
            let alone = |text: &str| text.chars().map(|one| fonts.width(face, 1.0, &one.to_string())).sum::<f32>();
            for (text, closer) in [("To", true), ("AV", true), ("Yo", true), ("nn", false)] {
                let (apart, together) = (alone(text), fonts.width(face, 1.0, text));
                assert_eq!(together < apart - 0.005, closer, "{text} {face:?}: {together} of {apart}");
                let drawn: f32 = fonts.run(face, 1.0, text).glyphs.iter().map(|glyph| glyph.x_advance).sum();
                assert!((drawn - together).abs() < 1e-4, "{text} is drawn as it is measured");
            }
        }
    }
}
