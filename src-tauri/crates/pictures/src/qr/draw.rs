//! Draws codes, always black on white with a quiet zone, whatever the surrounding colours, and without smoothing.

use crate::PictureError;
use image::codecs::png::PngEncoder;
use image::{ExtendedColorType, ImageEncoder};
use qrcode::bits::{Bits, encode_auto};
use qrcode::render::svg;
use qrcode::{Color, EcLevel, QrCode, Version};

/// The largest version that is drawn: 105 modules per side. Phone cameras do not read larger ones reliably; the health cards of HL7
/// (SMART Health Cards, "Health Cards as QR Codes") stop at the same version.
pub const MAX_VERSION: u8 = 22;

/// Width of the quiet zone that the standard requires, in modules.
pub const QUIET: usize = 4;

/// The level of error correction: how much of a code may be unreadable.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    /// About 7 in 100 codewords.
    L,
    /// About 15 in 100.
    M,
    /// About 25 in 100.
    Q,
}

/// The levels, from the one that repairs most.
const LEVELS: [(Level, EcLevel); 3] = [(Level::Q, EcLevel::Q), (Level::M, EcLevel::M), (Level::L, EcLevel::L)];

/// What a code of the smallest version holds that has room for `text` at this level, with that version, if it is not above
/// [`MAX_VERSION`].
fn encoded(text: &str, ec: EcLevel) -> Option<(u8, Bits)> {
    let bits = encode_auto(text.as_bytes(), ec).ok()?;
    let Version::Normal(version) = bits.version() else { return None };
    u8::try_from(version).ok().filter(|&version| version <= MAX_VERSION).map(|version| (version, bits))
}

/// A code, ready to be drawn.
#[derive(Clone)]
pub struct Code {
    code: QrCode,
    version: u8,
    level: Level,
}

impl Code {
    /// The code for `text`, at the highest of the levels Q, M and L at which it does not exceed [`MAX_VERSION`].
    pub fn of(text: &str) -> Result<Code, PictureError> {
        LEVELS
            .into_iter()
            .find_map(|(level, ec)| Code::at(text, level, ec))
            .ok_or(PictureError::TextTooBig { bytes: text.len(), max_version: MAX_VERSION })
    }

    /// The version that [`Code::of`] would have, without making it; `None` if `text` is too long.
    pub fn version_of(text: &str) -> Option<u8> {
        LEVELS.into_iter().find_map(|(_, ec)| encoded(text, ec)).map(|(version, _)| version)
    }

    fn at(text: &str, level: Level, ec: EcLevel) -> Option<Code> {
        let (version, bits) = encoded(text, ec)?;
        let code = QrCode::with_bits(bits, ec).ok()?;
        Some(Code { code, version, level })
    }

    /// The version, 1 to [`MAX_VERSION`].
    pub fn version(&self) -> u8 {
        self.version
    }

    /// The level of error correction.
    pub fn level(&self) -> Level {
        self.level
    }

    /// Number of modules per side, without the quiet zone: 17 plus four for each version.
    pub fn side(&self) -> usize {
        self.code.width()
    }

    /// Number of modules per side with the quiet zone, which is the space that the code needs.
    pub fn outer_side(&self) -> usize {
        self.side() + 2 * QUIET
    }

    /// Whether the module is dark; both coordinates are counted from 0 at the top left of the code itself. Modules outside are
    /// light.
    pub fn dark(&self, x: usize, y: usize) -> bool {
        x < self.side() && y < self.side() && self.code[(x, y)] == Color::Dark
    }

    /// A greyscale PNG with its quiet zone, `module_px` pixels per module (0 counts as 1).
    pub fn png(&self, module_px: u8) -> Vec<u8> {
        let scale = usize::from(module_px.max(1));
        let side = self.outer_side() * scale;
        // To the left of and above the code the difference wraps to a number far outside it.
        let ink = |x: usize, y: usize| self.dark((x / scale).wrapping_sub(QUIET), (y / scale).wrapping_sub(QUIET));
        let luma: Vec<u8> = (0..side * side).map(|at| if ink(at % side, at / side) { 0 } else { 255 }).collect();
        let pixels = u32::try_from(side).expect("113 modules of at most 255 pixels fit");
        let mut png = Vec::new();
        PngEncoder::new(&mut png)
            .write_image(&luma, pixels, pixels, ExtendedColorType::L8)
            .expect("a buffer of the right length is written to memory");
        png
    }

    /// An SVG element with its quiet zone, one unit per module; the page scales it. White is painted, so that the code is black on
    /// white in a dark window too.
    pub fn svg(&self) -> String {
        let drawn = self
            .code
            .render::<svg::Color<'_>>()
            .quiet_zone(true)
            .module_dimensions(1, 1)
            .dark_color(svg::Color("#000"))
            .light_color(svg::Color("#fff"))
            .build();
        // Only the element, so that it can be part of a page.
        drawn.find("<svg").map_or(String::new(), |start| drawn[start..].to_owned())
    }
}
