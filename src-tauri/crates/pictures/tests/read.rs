//! Reads codes of the sizes that cards have, as in pictures from phones and scanners.

mod support;

use image::{DynamicImage, GrayImage, Luma, LumaA, imageops};
use pictures::PictureError;
use pictures::qr::{Code, MAX_VERSION, read, read_all};
use support::{PLAIN, Shot, jpeg, of_version, photo, png, text};

/// Photographs codes of these versions and reads them from PNG and from compressed JPEG.
#[track_caller]
fn reads(versions: impl IntoIterator<Item = u8>, shot: Shot) {
    for version in versions {
        let (text, code) = of_version(version);
        let picture = photo(&code, shot);
        assert_eq!(read(&png(&picture)).as_ref(), Ok(&text), "version {version}, PNG, {shot:?}");
        assert_eq!(read(&jpeg(&picture, 60)).as_ref(), Ok(&text), "version {version}, JPEG, {shot:?}");
    }
}

#[test]
fn as_drawn_at_three_and_four_pixels() {
    for version in 5..=MAX_VERSION {
        let (text, code) = of_version(version);
        for scale in [3, 4] {
            assert_eq!(read(&code.png(scale)).as_ref(), Ok(&text), "version {version} at {scale} pixels");
        }
    }
}

#[test]
fn the_fullest_codes_of_the_lower_levels() {
    for length in [1134, 1460] {
        let text = text(length);
        let code = Code::of(&text).expect("just fits");
        let picture = photo(&code, Shot { turned: 4.0, blurred: 0.7, noise: 10, ..PLAIN });
        assert_eq!(read(&jpeg(&picture, 70)), Ok(text));
    }
}

#[test]
fn turned_tilted_and_blurred() {
    let shot = Shot { turned: 7.0, tilted: 0.15, blurred: 0.8, noise: 10, ..PLAIN };
    reads(5..=MAX_VERSION, Shot { scale: 3.0, ..shot });
    reads(5..=MAX_VERSION, Shot { scale: 4.0, ..shot });
}

#[test]
fn in_any_orientation() {
    for turned in [20.0, 45.0, 90.0, 135.0, 180.0, 260.0] {
        reads([5, 14, 22], Shot { scale: 3.3, turned, tilted: 0.1, blurred: 0.6, noise: 10, ..PLAIN });
    }
}

#[test]
fn in_poor_light() {
    let dim = Shot { turned: 5.0, blurred: 0.6, ink: 60, paper: 200, ..PLAIN };
    reads([6, 12, 18, 22], Shot { scale: 3.0, noise: 20, shadow: 90.0, ..dim });
    reads([6, 12, 18, 22], Shot { scale: 4.0, noise: 40, ..dim });
}

#[test]
fn large_in_the_picture() {
    reads([5, 20], Shot { scale: 14.0, turned: 7.0, tilted: 0.1, blurred: 2.0, noise: 30, ..PLAIN });
}

#[test]
fn small_in_a_large_photo() {
    let (text, code) = of_version(18);
    let mut desk = GrayImage::from_fn(4000, 3000, |x, y| Luma([(90 + (x / 40 + y / 60) % 40) as u8]));
    let card = photo(&code, Shot { scale: 8.0, turned: -6.0, blurred: 1.5, noise: 12, ..PLAIN });
    imageops::replace(&mut desk, &card, 2500, 1500);
    assert_eq!(read(&jpeg(&desk, 75)), Ok(text));
}

#[test]
fn white_on_black() {
    let (text, code) = of_version(16);
    let mut picture = photo(&code, Shot { turned: 3.0, blurred: 0.6, ..PLAIN });
    imageops::invert(&mut picture);
    assert_eq!(read(&png(&picture)), Ok(text));
}

#[test]
fn seen_in_a_mirror() {
    let (text, code) = of_version(16);
    let picture = imageops::flip_horizontal(&photo(&code, Shot { turned: 3.0, ..PLAIN }));
    assert_eq!(read(&png(&picture)), Ok(text), "a front camera shows it so");
}

#[test]
fn in_other_kinds_of_pixels() {
    let (text, code) = of_version(10);
    let plain = DynamicImage::from(photo(&code, PLAIN));
    for picture in
        [DynamicImage::from(plain.to_rgb8()), plain.to_rgba8().into(), plain.to_luma16().into(), plain.to_rgba16().into()]
    {
        let mut bytes = std::io::Cursor::new(Vec::new());
        picture.write_to(&mut bytes, image::ImageFormat::Png).expect("memory");
        assert_eq!(read(bytes.get_ref()).as_ref(), Ok(&text), "{:?}", picture.color());
    }
}

/// The same picture as other programs write it: coarser colours, several scans, inks instead of light, few colours, interlaced rows.
#[test]
fn in_other_kinds_of_files() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/kinds");
    let files: Vec<_> = std::fs::read_dir(folder).expect("the folder").map(|file| file.expect("a file").path()).collect();
    assert_eq!(files.len(), 12);
    for file in files {
        let bytes = std::fs::read(&file).expect("readable");
        assert_eq!(read(&bytes).as_deref(), Ok("CARRYOVER KINDS OF FILES"), "{}", file.display());
    }
}

/// As many pixels as a telephone's camera makes at most in its usual settings.
#[test]
fn in_a_photo_of_fifty_megapixels() {
    let (text, code) = of_version(18);
    let (width, height) = (8160, 6144);
    let mut desk = GrayImage::from_raw(width, height, vec![110; width as usize * height as usize]).expect("as many");
    let card = photo(&code, Shot { scale: 16.0, turned: -6.0, ..PLAIN });
    imageops::replace(&mut desk, &card, 3000, 1500);
    assert_eq!(read(&png(&desk)), Ok(text));
}

#[test]
fn black_ink_on_nothing() {
    let (text, code) = of_version(10);
    let plain = photo(&code, PLAIN);
    let ink = image::ImageBuffer::from_fn(plain.width(), plain.height(), |x, y| {
        LumaA([0u8, if plain.get_pixel(x, y).0[0] < 128 { 255 } else { 0 }])
    });
    let mut bytes = std::io::Cursor::new(Vec::new());
    DynamicImage::from(ink).write_to(&mut bytes, image::ImageFormat::Png).expect("memory");
    assert_eq!(read(bytes.get_ref()), Ok(text), "what is transparent counts as white paper");
}

#[test]
fn text_of_any_language() {
    for text in ["Gleichgewicht üben, links", "姿勢 三回", "\u{1F9F5} une ficelle", "plain"] {
        let code = Code::of(text).expect("short");
        assert_eq!(read(&code.png(4)).as_deref(), Ok(text));
    }
}

/// Two pictures side by side.
fn beside(left: &GrayImage, right: &GrayImage) -> GrayImage {
    let height = left.height().max(right.height());
    let mut both = GrayImage::from_pixel(left.width() + right.width(), height, Luma([255]));
    imageops::replace(&mut both, left, 0, 0);
    imageops::replace(&mut both, right, i64::from(left.width()), 0);
    both
}

#[test]
fn several_codes_are_an_error_instead_of_a_guess() {
    let (text, one) = of_version(9);
    let (_, other) = of_version(6);
    let (one, other) = (photo(&one, PLAIN), photo(&other, PLAIN));
    assert_eq!(read(&png(&beside(&one, &other))), Err(PictureError::SeveralCodes { count: 2 }));
    assert_eq!(read(&png(&beside(&one, &one))), Ok(text), "the same twice is one");
}

/// The pictures arranged in rows of two.
fn laid_out(pictures: &[GrayImage]) -> GrayImage {
    let rows: Vec<GrayImage> = pictures
        .chunks(2)
        .map(|row| match row {
            [left, right] => beside(left, right),
            row => row[0].clone(),
        })
        .collect();
    let (width, height) = (rows.iter().map(GrayImage::width).max(), rows.iter().map(GrayImage::height).sum());
    let mut all = GrayImage::from_pixel(width.unwrap_or(0), height, Luma([255]));
    let mut top = 0;
    for row in rows {
        imageops::replace(&mut all, &row, 0, top);
        top += i64::from(row.height());
    }
    all
}

#[test]
fn all_codes_of_one_photo_are_read() {
    for count in 1..=4 {
        let codes: Vec<(String, Code)> = [22, 21, 20, 19].into_iter().take(count).map(of_version).collect();
        let shot = Shot { turned: 4.0, tilted: 0.05, blurred: 0.6, noise: 10, ..PLAIN };
        let photos: Vec<GrayImage> = codes.iter().map(|(_, code)| photo(code, shot)).collect();
        let picture = laid_out(&photos);
        let mut expected: Vec<String> = codes.into_iter().map(|(text, _)| text).collect();
        expected.sort();
        assert_eq!(read_all(&jpeg(&picture, 75)), Ok(expected), "{count} codes");
    }
}

#[test]
fn a_photo_without_a_code_differs_from_one_with_many() {
    assert_eq!(read_all(&png(&GrayImage::from_pixel(300, 200, Luma([200])))), Err(PictureError::NoCode));
    let (text, code) = of_version(9);
    assert_eq!(read_all(&png(&beside(&photo(&code, PLAIN), &photo(&code, PLAIN)))), Ok(vec![text]), "the same twice");
    assert!(matches!(read_all(b"no picture"), Err(PictureError::NotAPicture { .. })));
}
