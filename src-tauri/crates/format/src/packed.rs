//! Deflate (RFC 1951) with a limit on what comes out and nothing allowed behind the end.

use miniz_oxide::deflate::compress_to_vec;
use miniz_oxide::inflate::stream::{InflateState, inflate};
use miniz_oxide::{DataFormat, MZFlush, MZStatus};

/// Small inputs: the slowest level costs nothing that a person would notice.
const LEVEL: u8 = 9;

/// Why bytes could not be unpacked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum UnpackFault {
    /// More would come out than allowed.
    TooBig,
    /// Not a whole deflate stream, or something behind it.
    Broken,
}

/// Packs `plain`.
pub(crate) fn pack(plain: &[u8]) -> Vec<u8> {
    compress_to_vec(plain, LEVEL)
}

/// Unpacks at most `most` bytes. Memory never grows more than one step over that, whatever `packed` claims.
pub(crate) fn unpack(packed: &[u8], most: usize) -> Result<Vec<u8>, UnpackFault> {
    let mut state = InflateState::new_boxed(DataFormat::Raw);
    let mut plain = Vec::new();
    let mut rest = packed;
    let mut step = [0; 8192];
    loop {
        let did = inflate(&mut state, rest, &mut step, MZFlush::None);
        rest = &rest[did.bytes_consumed..];
        plain.extend_from_slice(&step[..did.bytes_written]);
        if plain.len() > most {
            return Err(UnpackFault::TooBig);
        }
        match did.status {
            Ok(MZStatus::StreamEnd) if rest.is_empty() => return Ok(plain),
            Ok(MZStatus::Ok) if did.bytes_consumed + did.bytes_written > 0 => {}
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
        fn what_was_packed_comes_out_again(plain: Vec<u8>) {
            prop_assert_eq!(unpack(&pack(&plain), plain.len()), Ok(plain));
        }

        #[test]
        fn any_bytes_are_answered_within_the_limit(packed: Vec<u8>) {
            if let Ok(plain) = unpack(&packed, 1000) {
                prop_assert!(plain.len() <= 1000);
            }
        }
    }

    #[test]
    fn a_bomb_is_refused() {
        let bomb = pack(&vec![0; 50_000_000]);
        assert!(bomb.len() < 100_000, "a thousandfold and more: {}", bomb.len());
        assert_eq!(unpack(&bomb, 64 * 1024), Err(UnpackFault::TooBig));
    }

    #[test]
    fn the_limit_itself_still_passes() {
        let packed = pack(&[7; 100]);
        assert_eq!(unpack(&packed, 100).map(|plain| plain.len()), Ok(100));
        assert_eq!(unpack(&packed, 99), Err(UnpackFault::TooBig));
    }

    #[test]
    fn a_cut_stream_and_one_with_a_tail_are_refused() {
        let packed = pack(b"three holds of ten seconds, three holds of ten seconds");
        for length in 0..packed.len() {
            assert_eq!(unpack(&packed[..length], 1000), Err(UnpackFault::Broken), "cut at {length}");
        }
        assert_eq!(unpack(&[packed, vec![0]].concat(), 1000), Err(UnpackFault::Broken));
    }
}
