//! One picture of several screenshots side by side, drawn by the program's own web view with its fonts and colours.

use crate::{Desktop, Window};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use image::codecs::png::{CompressionType, FilterType, PngEncoder};
use image::{ImageFormat, ImageReader};
use serde_json::json;
use std::io::Cursor;
use std::path::Path;

/// A screenshot with its caption.
pub struct Panel {
    /// The screenshot, a PNG; all screenshots of a picture have the same size.
    pub picture: Vec<u8>,
    /// At most two short lines.
    pub caption: String,
}

/// Writes the picture of these panels, in the given order, light or dark.
///
/// # Panics
/// If there is no panel, if a screenshot is not a PNG, or if the file cannot be written.
pub fn panels(panels: &[Panel], dark: bool, file: &Path) {
    let desktop = Desktop::new();
    let opening = desktop.open("panels").size(1600, 1100);
    let window = if dark { opening.dark().start() } else { opening.start() };
    window.see("Carryover");
    let first = panels.first().expect("a picture has a panel");
    let size = image::load_from_memory_with_format(&first.picture, ImageFormat::Png).expect("a PNG");
    let shown: Vec<_> = panels.iter().map(|panel| json!([STANDARD.encode(&panel.picture), panel.caption])).collect();
    let whole = window.ask(include_str!("panels.js"), &[json!(shown), json!(size.width()), json!(size.height())]);
    let whole = [0, 1].map(|side| whole[side].as_u64().and_then(|pixels| u32::try_from(pixels).ok()).expect("a size"));
    std::fs::write(file, small(&window, whole)).expect("the folder is writable");
}

/// The upper left part of the page, as a PNG that is as small as possible without loss.
fn small(window: &Window, [width, height]: [u32; 2]) -> Vec<u8> {
    let folder = tempfile::tempdir().expect("there is room for temporary files");
    let painted = folder.path().join("page.png");
    window.picture(&painted);
    let page = ImageReader::open(&painted).expect("it was just written").decode().expect("a PNG");
    let mut bytes = Cursor::new(Vec::new());
    let encoder = PngEncoder::new_with_quality(&mut bytes, CompressionType::Best, FilterType::Adaptive);
    page.crop_imm(0, 0, width, height).to_rgb8().write_with_encoder(encoder).expect("memory takes it");
    bytes.into_inner()
}
