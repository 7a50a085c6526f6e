//! Pictures that are broken, empty, huge, or made to mislead: each gives an error, never a panic, and nothing large is decoded.

mod support;

use image::{GrayImage, Luma};
use pictures::PictureError;
use pictures::qr::{MAX_BYTES, MAX_PIXELS, MAX_SIDE, read};
use proptest::prelude::*;
use std::sync::LazyLock;
use support::{PLAIN, Shot, jpeg, next, of_version, photo, png};

static CARD: LazyLock<(String, GrayImage)> = LazyLock::new(|| {
    let (text, code) = of_version(8);
    let picture = photo(&code, Shot { scale: 3.0, turned: 2.0, ..PLAIN });
    (text, picture)
});

#[track_caller]
fn not_a_picture(bytes: &[u8]) {
    let outcome = read(bytes);
    assert!(matches!(outcome, Err(PictureError::NotAPicture { .. })), "{outcome:?}");
}

#[test]
fn bytes_that_are_not_a_picture() {
    not_a_picture(b"");
    not_a_picture(b"a shopping list");
    not_a_picture(b"<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
    not_a_picture(b"GIF89a\x01\x00\x01\x00\x00\x00\x00;");
    not_a_picture(b"\x89PNG\r\n\x1a\n");
    not_a_picture(b"\xff\xd8\xff\xe0");
}

#[test]
fn a_png_cut_short_anywhere() {
    let whole = png(&CARD.1);
    for cut in (8..whole.len() - 12).step_by(97) {
        let outcome = read(&whole[..cut]);
        assert!(matches!(outcome, Err(PictureError::NotAPicture { .. })), "cut at {cut}: {outcome:?}");
    }
}

#[test]
fn a_jpeg_cut_short_anywhere() {
    let whole = jpeg(&CARD.1, 70);
    for cut in (3..whole.len()).step_by(997) {
        // Decoders show the upper part of a truncated JPEG, which may contain a complete code.
        match read(&whole[..cut]) {
            Ok(text) => assert_eq!(text, CARD.0, "cut at {cut}"),
            Err(PictureError::NotAPicture { .. } | PictureError::NoCode) => {}
            Err(other) => panic!("cut at {cut}: {other:?}"),
        }
    }
}

#[test]
fn a_large_file_is_refused_by_its_size() {
    let bytes = vec![0; usize::try_from(MAX_BYTES).expect("fits") + 1];
    assert_eq!(read(&bytes), Err(PictureError::FileTooBig { found: MAX_BYTES + 1, most: MAX_BYTES }));
    not_a_picture(&bytes[1..]);
}

/// A PNG whose header claims a size, and whose data is a few bytes.
fn claiming(width: u32, height: u32) -> Vec<u8> {
    let mut bytes = png(&GrayImage::new(1, 1));
    bytes[16..20].copy_from_slice(&width.to_be_bytes());
    bytes[20..24].copy_from_slice(&height.to_be_bytes());
    let sum = crc(&bytes[12..29]);
    bytes[29..33].copy_from_slice(&sum.to_be_bytes());
    bytes
}

/// The checksum of a PNG's chunk (ISO 3309).
fn crc(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0, |sum, &byte| {
        (0..8).fold(sum ^ u32::from(byte), |sum, _| if sum & 1 == 1 { sum >> 1 ^ 0xEDB8_8320 } else { sum >> 1 })
    })
}

/// Second byte of the marker before a JPEG's size (ITU-T T.81, table B.1).
const BASELINE: u8 = 0xC0;
const PROGRESSIVE: u8 = 0xC2;

#[test]
fn a_huge_picture_is_refused_by_its_header() {
    let too_many = |found| Err(PictureError::TooManyPixels { found, most: MAX_PIXELS });
    for (width, height) in [(60_000, 60_000), (8_001, 8_000), (1, 64_000_001)] {
        let found = u64::from(width) * u64::from(height);
        assert_eq!(read(&claiming(width, height)), too_many(found), "{width} x {height}");
    }
    for (width, height) in [(MAX_SIDE + 1, 1), (2, MAX_SIDE + 1), (60_000, 1_000)] {
        let found = width.max(height);
        assert_eq!(read(&claiming(width, height)), Err(PictureError::TooLong { found, most: MAX_SIDE }));
    }
    not_a_picture(&claiming(8_000, 8_000));
    not_a_picture(&claiming(0, 5));
    assert_eq!(read(&claiming(0x7fff_ffff, 0x7fff_ffff)), too_many(0x7fff_ffff * 0x7fff_ffff));

    let photo = jpeg(&GrayImage::new(8, 8), 70);
    let frame = photo.windows(2).position(|two| two == [0xFF, BASELINE]).expect("a frame header");
    // After the marker there are two bytes of length and one of depth, then height and width.
    let of_size = |mark, width: u16, height: u16| {
        let mut photo = photo.clone();
        photo[frame + 1] = mark;
        photo[frame + 5..frame + 7].copy_from_slice(&height.to_be_bytes());
        photo[frame + 7..frame + 9].copy_from_slice(&width.to_be_bytes());
        photo
    };
    assert_eq!(read(&of_size(BASELINE, 60_000, 60_000)), too_many(60_000 * 60_000));
    assert_eq!(read(&of_size(BASELINE, 60_000, 600)), Err(PictureError::TooLong { found: 60_000, most: MAX_SIDE }));
    let few = Err(PictureError::TooManyPixels { found: 25_000_000, most: 24_000_000 });
    assert_eq!(read(&of_size(PROGRESSIVE, 5_000, 5_000)), few, "all its coefficients would be in memory");
    for between in [&[0xFF, 0x01][..], &[0xFF, 0xD1], &[0xFF], &[7, 7]] {
        let mut hidden = of_size(PROGRESSIVE, 5_000, 5_000);
        hidden.splice(frame..frame, between.iter().copied());
        let refused = read(&hidden);
        assert!(refused == few || matches!(refused, Err(PictureError::NotAPicture { .. })), "{between:x?}: {refused:?}");
    }
}

#[test]
fn pictures_without_a_code() {
    let mut seed = 3;
    for picture in [
        GrayImage::new(1, 1),
        GrayImage::new(3, 2),
        GrayImage::from_pixel(900, 700, Luma([255])),
        GrayImage::new(MAX_SIDE, 2),
        GrayImage::new(1, MAX_SIDE),
        GrayImage::from_fn(700, 500, |x, y| Luma([(x * 255 / 700 + y / 9) as u8])),
        GrayImage::from_fn(700, 500, |_, _| {
            seed = next(seed);
            Luma([(seed >> 40) as u8])
        }),
    ] {
        assert_eq!(read(&png(&picture)), Err(PictureError::NoCode), "{} x {}", picture.width(), picture.height());
    }
}

/// Nothing but finder patterns of nine pixels each: the number of triples grows with the cube of their number.
#[test]
fn a_picture_made_to_waste_time() {
    let ring = |x: u32, y: u32| (x % 9).abs_diff(4).max((y % 9).abs_diff(4));
    for side in [1200, 2000] {
        let carpet = GrayImage::from_fn(side, side, |x, y| Luma([if [0, 1, 3].contains(&ring(x, y)) { 0 } else { 255 }]));
        assert_eq!(read(&png(&carpet)), Err(PictureError::NoCode));
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, ..ProptestConfig::default() })]

    /// A code that is partly painted over is read correctly or not at all.
    #[test]
    fn painted_over(spots in prop::collection::vec((0..200u32, 0..200u32, 1..60u32, 1..60u32, any::<u8>()), 0..12)) {
        let (text, mut picture) = CARD.clone();
        for (left, top, width, height, grey) in spots {
            for y in top..(top + height).min(picture.height()) {
                for x in left..(left + width).min(picture.width()) {
                    picture.put_pixel(x, y, Luma([grey]));
                }
            }
        }
        match read(&png(&picture)) {
            Ok(read) => prop_assert_eq!(read, text),
            Err(error) => prop_assert_eq!(error, PictureError::NoCode),
        }
    }

    /// Bytes that were changed give an error, or a picture that still shows the code.
    #[test]
    fn changed_on_the_way(changes in prop::collection::vec((any::<prop::sample::Index>(), any::<u8>()), 1..20), as_png: bool) {
        let mut bytes = if as_png { png(&CARD.1) } else { jpeg(&CARD.1, 70) };
        for (at, byte) in changes {
            *at.get_mut(&mut bytes) = byte;
        }
        match read(&bytes) {
            Ok(read) => prop_assert_eq!(&read, &CARD.0),
            Err(PictureError::SeveralCodes { count }) => prop_assert!(false, "{} codes out of one", count),
            Err(_) => {}
        }
    }

    /// Any bytes at all.
    #[test]
    fn anything(bytes in prop::collection::vec(any::<u8>(), 0..500), magic in prop::sample::select(vec![&b""[..], b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR", b"\xff\xd8\xff"])) {
        prop_assert!(read(&[magic, &bytes].concat()).is_err());
    }
}
