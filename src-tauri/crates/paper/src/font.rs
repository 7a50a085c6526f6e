//! The letters: Atkinson Hyperlegible Next in two weights, the window's own, whole, since a card can hold any name.

use crate::PaperError;
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
    signs: BTreeMap<char, (GlyphId, f32)>,
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
            Some((char::from_u32(code)?, (GlyphId::new(glyph.to_u32()), width)))
        };
        Ok(Loaded { signs: reader.charmap().mappings().filter_map(sign).collect(), embedded })
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

    /// The sign that stands for one that the font lacks.
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
        let mut glyphs = Vec::new();
        let mut width = 0.0;
        let mut upto = 0.0;
        for (at, character) in text.char_indices() {
            let Some((glyph, advance)) = signs.get(&character).copied() else { continue };
            let range = at..at + character.len_utf8();
            glyphs.push(KrillaGlyph::new(glyph, advance, 0.0, 0.0, 0.0, range, None));
            width += advance;
            upto = if character == ' ' { upto } else { width };
        }
        Run { text: text.to_owned(), glyphs, width: upto * size }
    }

    /// The width of a text at a size, without a space at its end.
    pub fn width(&self, face: Face, size: f32, text: &str) -> f32 {
        text.trim_end_matches(' ').chars().map(|character| self.advance(face, size, character)).sum()
    }

    /// From the beginning of a character to that of the next one.
    pub fn advance(&self, face: Face, size: f32, character: char) -> f32 {
        self.loaded(face).signs.get(&character).map_or(0.0, |(_, width)| width * size)
    }
}
