//! Any code, card file or pasted text is either read or refused; frames that were gathered and frames that are missing add up to all
//! frames.
#![no_main]

use format::frames::{Gathered, read};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|file: &[u8]| {
    let _ = format::card::read(file);
    let Ok(text) = std::str::from_utf8(file) else { return };
    let mut gathered: Option<Gathered> = None;
    for frame in text.lines().filter_map(|line| read(line).ok()) {
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
