//! Deflate (RFC 1951) with a limit on the unpacked size; anything after the end is refused.
//!
//! Small contents are packed better with a dictionary: bytes that both sides know and that are treated as already written.
//! RFC 1950 has a field to name it; here the packed bytes have no header, and the version of the contents says which
//! dictionary it is.

use miniz_oxide::deflate::core::{CompressorOxide, TDEFLFlush, TDEFLStatus, compress, create_comp_flags_from_zip_params};
use miniz_oxide::inflate::TINFLStatus;
use miniz_oxide::inflate::core::inflate_flags::TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
use miniz_oxide::inflate::core::{DecompressorOxide, decompress};

/// Inputs are small, so even the slowest of the usual levels takes no noticeable time.
const LEVEL: i32 = 9;

/// Why bytes could not be unpacked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum UnpackFault {
    /// The unpacked size would be larger than allowed.
    TooBig,
    /// The bytes are not a whole deflate stream, or something follows it.
    Broken,
}

/// Packs `plain` as if `dictionary` had been written before it.
pub(crate) fn pack(dictionary: &[u8], plain: &[u8]) -> Vec<u8> {
    let raw = create_comp_flags_from_zip_params(LEVEL, 0, 0);
    let mut state = CompressorOxide::new(raw);
    if !dictionary.is_empty() {
        // The flush ends on a whole byte, so the bytes after it can be separated.
        feed(&mut state, dictionary, TDEFLFlush::Sync);
    }
    feed(&mut state, plain, TDEFLFlush::Finish)
}

/// Passes input to the compressor and returns what it wrote.
fn feed(state: &mut CompressorOxide, input: &[u8], flush: TDEFLFlush) -> Vec<u8> {
    // Contents that cannot be compressed are stored, with five bytes for each 64 KiB; a flush adds a few.
    let mut out = vec![0; input.len() + input.len() / 1024 + 64];
    let (status, took, wrote) = compress(state, input, &mut out, flush);
    assert!(took == input.len() && status as i32 >= TDEFLStatus::Okay as i32, "there is room for everything");
    out.truncate(wrote);
    out
}

/// Unpacks at most `most` bytes. No more than about twice that memory is used, whatever `packed` contains.
pub(crate) fn unpack(dictionary: &[u8], packed: &[u8], most: usize) -> Result<Vec<u8>, UnpackFault> {
    let limit = dictionary.len() + most;
    let mut state = DecompressorOxide::new();
    let mut out = dictionary.to_vec();
    let mut at = out.len();
    let mut rest = packed;
    loop {
        // One byte more than the limit, to notice when there is more.
        out.resize((2 * out.len()).max(at + 4096).min(limit + 1), 0);
        let (status, took, wrote) = decompress(&mut state, rest, &mut out, at, TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF);
        rest = &rest[took..];
        at += wrote;
        match status {
            _ if at > limit => return Err(UnpackFault::TooBig),
            TINFLStatus::Done if rest.is_empty() => {
                out.truncate(at);
                return Ok(out.split_off(dictionary.len()));
            }
            TINFLStatus::HasMoreOutput => {}
            _ => return Err(UnpackFault::Broken),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn what_was_packed_comes_out_again(dictionary: Vec<u8>, plain: Vec<u8>) {
            let packed = pack(&dictionary, &plain);
            prop_assert_eq!(unpack(&dictionary, &packed, plain.len()), Ok(plain));
        }

        #[test]
        fn any_bytes_unpack_within_the_limit_or_fail(dictionary: Vec<u8>, packed: Vec<u8>) {
            if let Ok(plain) = unpack(&dictionary, &packed, 1000) {
                prop_assert!(plain.len() <= 1000);
            }
        }

        #[test]
        fn long_and_short_plain_texts_come_out_again(length in 0..200_000_usize, step in 1..250_usize) {
            let plain: Vec<u8> = (0..length).map(|at| (at / step) as u8 ^ at as u8).collect();
            let packed = pack(b"dictionary", &plain);
            prop_assert_eq!(unpack(b"dictionary", &packed, 200_000), Ok(plain));
        }
    }

    #[test]
    fn without_a_dictionary_it_is_plain_deflate() {
        let plain = b"three holds of ten seconds, three holds of ten seconds";
        assert_eq!(miniz_oxide::inflate::decompress_to_vec(&pack(b"", plain)).expect("deflate"), plain);
        let elsewhere = miniz_oxide::deflate::compress_to_vec(plain, 6);
        assert_eq!(unpack(b"", &elsewhere, 1000).as_deref(), Ok(plain.as_slice()));
    }

    #[test]
    fn a_dictionary_shortens_what_it_knows() {
        let plain = b"one-leg-stand firm-open";
        let (with, without) = (pack(b"one-leg-stand sit-to-stand firm-open", plain), pack(b"", plain));
        assert!(with.len() < without.len(), "{} and {} bytes", with.len(), without.len());
        assert_ne!(unpack(b"one-leg-stunt sit-to-stand firm-open", &with, 100).as_deref(), Ok(plain.as_slice()));
    }

    #[test]
    fn a_bomb_is_refused() {
        let bomb = pack(b"", &vec![0; 50_000_000]);
        assert!(bomb.len() < 100_000, "a thousandfold and more: {}", bomb.len());
        assert_eq!(unpack(b"", &bomb, 64 * 1024), Err(UnpackFault::TooBig));
        assert_eq!(unpack(b"xy", &bomb, 64 * 1024), Err(UnpackFault::TooBig));
    }

    #[test]
    fn the_limit_itself_still_passes() {
        let packed = pack(b"", &[7; 100]);
        assert_eq!(unpack(b"", &packed, 100).map(|plain| plain.len()), Ok(100));
        assert_eq!(unpack(b"", &packed, 99), Err(UnpackFault::TooBig));
    }

    #[test]
    fn a_cut_stream_and_one_with_a_tail_are_refused() {
        let packed = pack(b"", b"three holds of ten seconds, three holds of ten seconds");
        for length in 0..packed.len() {
            assert_eq!(unpack(b"", &packed[..length], 1000), Err(UnpackFault::Broken), "cut at {length}");
        }
        assert_eq!(unpack(b"", &[packed, vec![0]].concat(), 1000), Err(UnpackFault::Broken));
    }
}
