//! Any picture is either read or refused, also a PNG whose checksums are right.
#![no_main]

use libfuzzer_sys::fuzz_target;
use pictures::qr::{read, read_all};

/// Larger pictures cost time and show nothing new.
const MOST: u32 = 1 << 18;

fuzz_target!(|input: &[u8]| {
    let png = fuzz::summed(input);
    if png.starts_with(b"\x89PNG") {
        let side = |at: usize| png.get(at..at + 4).map_or(0, |side| u32::from_be_bytes(side.try_into().expect("four bytes")));
        if side(16).saturating_mul(side(20)) > MOST {
            return;
        }
    }
    let _ = read(&png);
    let _ = read_all(input);
});
