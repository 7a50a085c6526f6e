//! Frames with right checksums, in any order and of any sealings, are gathered or refused. The input is pieces: ten bytes of a head, then
//! the part.
#![no_main]

use format::frames::{Gathered, read};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|input: &[u8]| {
    let mut gathered: Option<Gathered> = None;
    for piece in fuzz::pieces(input) {
        let Some((head, part)) = piece.split_first_chunk::<10>() else { continue };
        let Ok(frame) = read(&fuzz::frame(head, part)) else { continue };
        match &mut gathered {
            None => gathered = Some(Gathered::begin(frame)),
            Some(gathered) => {
                let before = gathered.clone();
                if gathered.take(frame).is_err() {
                    assert_eq!(*gathered, before, "a refused frame changes nothing");
                }
            }
        }
        let Some(now) = &gathered else { continue };
        assert_eq!(usize::from(now.have()) + now.missing().len(), usize::from(now.of()));
        assert_eq!(now.whole().is_some(), now.missing().is_empty());
    }
});
