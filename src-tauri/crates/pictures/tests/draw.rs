//! Drawn codes have the right size and level, are black on white, and can be read by an independent reader.

mod support;

use pictures::PictureError;
use pictures::qr::{Code, Level, MAX_VERSION, QUIET};
use std::process::Command;
use support::{of_version, text};

/// The number of characters that fit into version 22 in alphanumeric mode, from the capacity table of ISO/IEC 18004.
const FITS: [(Level, usize); 3] = [(Level::Q, 823), (Level::M, 1134), (Level::L, 1460)];

#[test]
fn the_highest_level_that_fits_is_taken() {
    let level = |length| Code::of(&text(length)).map(|code| code.level());
    for length in [1, 100, 823, 824, 1135, 1460, 1461] {
        let version = Code::of(&text(length)).ok().map(|code| code.version());
        assert_eq!(Code::version_of(&text(length)), version, "{length} characters");
    }
    for ((taken, fits), next) in FITS.into_iter().zip([Ok(Level::M), Ok(Level::L), Err(())]) {
        assert_eq!(level(fits), Ok(taken), "{fits} characters");
        assert_eq!(level(fits + 1).map_err(drop), next, "one more");
    }
    let full = Code::of(&text(1460)).expect("just fits");
    assert_eq!((full.version(), full.side(), full.outer_side()), (22, 105, 113));
    let too_big = Code::of(&text(1461)).map(|code| code.version());
    assert_eq!(too_big, Err(PictureError::TextTooBig { bytes: 1461, max_version: MAX_VERSION }));
}

#[test]
fn a_png_is_black_modules_on_white_with_a_quiet_zone() {
    let (_, code) = of_version(7);
    for scale in [1u8, 3] {
        let picture = image::load_from_memory(&code.png(scale)).expect("a PNG").into_luma8();
        let side = code.outer_side() * usize::from(scale);
        assert_eq!((picture.width() as usize, picture.height() as usize), (side, side));
        for (x, y, pixel) in picture.enumerate_pixels() {
            let module = |at: u32| (at as usize / usize::from(scale)).checked_sub(QUIET);
            let dark = matches!((module(x), module(y)), (Some(x), Some(y)) if code.dark(x, y));
            assert_eq!(pixel.0, [if dark { 0 } else { 255 }], "pixel {x}, {y} at {scale} a module");
        }
    }
    assert_eq!(code.png(0), code.png(1), "no pixels a module makes no picture");
}

#[test]
fn an_svg_draws_the_same_modules() {
    let (_, code) = of_version(7);
    let svg = code.svg();
    let side = code.outer_side();
    assert!(svg.starts_with("<svg ") && svg.ends_with("</svg>"), "an element for a page, no document");
    assert!(svg.contains(&format!(r#"viewBox="0 0 {side} {side}""#)), "one unit a module");
    assert!(svg.contains(r#"shape-rendering="crispEdges""#), "not smoothed");
    assert!(svg.contains(&format!(r##"<rect x="0" y="0" width="{side}" height="{side}" fill="#fff"/>"##)), "on white");
    assert!(svg.contains(r##"<path fill="#000""##), "in black");

    let mut drawn = vec![vec![false; side]; side];
    let path = svg.split_once(" d=\"").and_then(|(_, rest)| rest.split_once('"')).expect("a path").0;
    for rectangle in path.split('M').skip(1) {
        let numbers: Vec<usize> = rectangle
            .split(|c: char| !c.is_ascii_digit())
            .filter(|number| !number.is_empty())
            .map(|number| number.parse().expect("digits"))
            .collect();
        let &[left, top, width, height, ..] = &numbers[..] else { panic!("a rectangle: {rectangle}") };
        drawn[top..top + height].iter_mut().for_each(|row| row[left..left + width].fill(true));
    }
    for (y, row) in drawn.iter().enumerate() {
        for (x, &dark) in row.iter().enumerate() {
            let inside = x >= QUIET && y >= QUIET && code.dark(x - QUIET, y - QUIET);
            assert_eq!(dark, inside, "module {x}, {y}");
        }
    }
}

/// ZBar shares no code with the drawing and reading here. In Debian it is in `zbar-tools`.
#[test]
fn another_reader_reads_every_version() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut codes: Vec<_> = (5..=MAX_VERSION).map(of_version).collect();
    codes.extend([1134, 1460].map(|length| (text(length), Code::of(&text(length)).expect("just fits"))));
    for (text, code) in codes {
        let file = dir.path().join("code.png");
        std::fs::write(&file, code.png(3)).expect("room");
        let output = Command::new("zbarimg")
            .args(["--raw", "--quiet", "--nodbus"])
            .arg(&file)
            .output()
            .expect("zbarimg (Debian: zbar-tools) is installed");
        let read = String::from_utf8_lossy(&output.stdout);
        assert_eq!(read.strip_suffix('\n'), Some(&text[..]), "version {} at {:?}", code.version(), code.level());
    }
}
