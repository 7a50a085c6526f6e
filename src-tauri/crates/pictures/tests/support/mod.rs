//! Computed photos of codes: grey ink on grey paper, turned, tilted, blurred, noisy and compressed.
#![allow(dead_code, reason = "each test binary uses its part")]

use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::PngEncoder;
use image::{GrayImage, ImageEncoder, Luma, imageops};
use pictures::qr::{Code, QUIET};

/// A text with the letters, digits and signs of the alphanumeric mode, in an order that does not repeat soon.
pub fn text(length: usize) -> String {
    const SIGNS: &[u8; 45] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
    (0..length).map(|at| char::from(SIGNS[(at * at / 3 + 7 * at) % 45])).collect()
}

/// A code of this version and its text: the longest text that needs this version at level Q.
pub fn of_version(version: u8) -> (String, Code) {
    let code = |length: usize| Code::of(&text(length)).expect("short enough");
    // 823 characters are the limit at this level; a longer text needs a higher version.
    let lengths: Vec<usize> = (1..=823).collect();
    let longer = lengths.partition_point(|&length| code(length).version() <= version);
    let longest = lengths[longer - 1];
    (text(longest), code(longest))
}

/// How a photo was taken.
#[derive(Debug, Clone, Copy)]
pub struct Shot {
    /// Pixels per module.
    pub scale: f32,
    /// Rotation of the paper, in degrees.
    pub turned: f32,
    /// How much smaller the far edge looks than the near one, as a fraction.
    pub tilted: f32,
    /// Standard deviation of the blur, in pixels; 0 for none.
    pub blurred: f32,
    /// Largest amplitude of the noise, in brightness steps (0 to 255).
    pub noise: u8,
    /// Brightness of the ink, 0 to 255.
    pub ink: u8,
    pub paper: u8,
    /// How much darker the right edge is than the left one, in brightness steps (0 to 255).
    pub shadow: f32,
}

/// Straight from above, sharp, in good light.
pub const PLAIN: Shot =
    Shot { scale: 4.0, turned: 0.0, tilted: 0.0, blurred: 0.0, noise: 0, ink: 30, paper: 225, shadow: 0.0 };

pub fn photo(code: &Code, shot: Shot) -> GrayImage {
    let modules = code.outer_side() as f32;
    let side = (modules * shot.scale * 1.5).ceil() as u32;
    let mut picture = GrayImage::from_fn(side, side, |x, y| {
        // Four samples per pixel approximate the light that falls on it.
        let light: f32 = [(0.25, 0.25), (0.75, 0.25), (0.25, 0.75), (0.75, 0.75)]
            .into_iter()
            .map(|(dx, dy)| light(code, shot, side as f32, x as f32 + dx, y as f32 + dy))
            .sum();
        Luma([(light / 4.0).clamp(0.0, 255.0) as u8])
    });
    if shot.blurred > 0.0 {
        picture = imageops::blur(&picture, shot.blurred);
    }
    let mut seed = 1;
    for Luma([value]) in picture.pixels_mut() {
        seed = next(seed);
        let span = i32::from(shot.noise) * 2 + 1;
        let noise = (seed >> 33) as i32 % span - i32::from(shot.noise);
        *value = (i32::from(*value) + noise).clamp(0, 255) as u8;
    }
    picture
}

/// The brightness of the scene at a point of the picture.
fn light(code: &Code, shot: Shot, side: f32, x: f32, y: f32) -> f32 {
    let (fx, fy) = ((x - side / 2.0) / shot.scale, (y - side / 2.0) / shot.scale);
    // The upper edge is farther away, so a pixel covers more of the paper there.
    let far = 1.0 - shot.tilted * fy / code.outer_side() as f32;
    let (sin, cos) = shot.turned.to_radians().sin_cos();
    let (u, v) = ((fx * cos + fy * sin) * far, (fy * cos - fx * sin) * far);
    let half = code.side() as f32 / 2.0;
    let module = |at: f32| (at + half).floor();
    let (mx, my) = (module(u), module(v));
    let dark = mx >= 0.0 && my >= 0.0 && code.dark(mx as usize, my as usize);
    let rim = half + QUIET as f32;
    let desk = u.abs() > rim || v.abs() > rim;
    let lit = if dark {
        shot.ink
    } else if desk {
        shot.paper / 2
    } else {
        shot.paper
    };
    f32::from(lit) - shot.shadow * x / side
}

/// A step of a linear congruential generator (Knuth, MMIX).
pub fn next(seed: u64) -> u64 {
    seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407)
}

pub fn png(picture: &GrayImage) -> Vec<u8> {
    let mut bytes = Vec::new();
    PngEncoder::new(&mut bytes)
        .write_image(picture, picture.width(), picture.height(), image::ExtendedColorType::L8)
        .expect("memory");
    bytes
}

pub fn jpeg(picture: &GrayImage, quality: u8) -> Vec<u8> {
    let mut bytes = Vec::new();
    JpegEncoder::new_with_quality(&mut bytes, quality)
        .write_image(picture, picture.width(), picture.height(), image::ExtendedColorType::L8)
        .expect("memory");
    bytes
}
