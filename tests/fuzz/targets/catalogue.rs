//! Any file of an exercise, with or without files of its texts, is either read or refused with faults that name a line in it. The input is
//! pieces: the exercise, its English and its Spanish texts. The first is also read as a clinic's own exercise, which is written again as a
//! file that says the same.
#![no_main]

use exercises::catalogue::Lang;
use format::catalogue::{Fault, MAX_BYTES, TextFile, read, read_own, write};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|input: &[u8]| {
    let pieces = fuzz::pieces(input);
    let texts: Vec<_> = pieces.iter().filter_map(|piece| std::str::from_utf8(piece).ok()).collect();
    let Some((toml, texts)) = texts.split_first() else { return };
    let of = |lang, text| TextFile { lang, name: "x.ftl", text };
    let beside: Vec<TextFile> = [Lang::En, Lang::Es].into_iter().zip(texts).map(|(lang, text)| of(lang, text)).collect();
    for beside in [&beside[..], &[]] {
        read("x.toml", toml, beside).map_or_else(|faults| named(&faults, toml), drop);
    }
    match read_own("x.toml", toml) {
        Err(faults) => named(&faults, toml),
        Ok(exercise) => {
            let again = write(&exercise);
            assert!(again.len() > MAX_BYTES || read_own("x.toml", &again) == Ok(exercise), "{again}");
        }
    }
});

fn named(faults: &[Fault], toml: &str) {
    assert!(!faults.is_empty(), "refused without a fault");
    for fault in faults.iter().filter(|fault| fault.file == "x.toml") {
        assert!(fault.fault.line as usize <= toml.lines().count() + 1, "{fault:?}");
    }
}
