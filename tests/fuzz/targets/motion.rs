//! Any file of motion samples is either read or refused, and what is read is analysed: figures are finite, and what is not measured
//! has a reason. The first six bytes choose the trial's marks, the rest is the file without its header.
#![no_main]

use exercises::sway::{Figures, Marks, Source, analyse, printed};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|input: &[u8]| {
    // The unchanged bytes are tried as a file too, although they are hardly ever a valid one.
    let _ = format::motion::read(input);
    let Some((head, rows)) = input.split_first_chunk::<6>() else { return };
    let Ok(samples) = format::motion::read(&[format::motion::HEADER.as_bytes(), b"\n", rows].concat()) else { return };
    let second = |place: usize| f64::from(u16::from_le_bytes([head[place], head[place + 1]])) / 1000.0;
    let (on_s, off_s, tap_s) = (second(0), second(0) + second(2), second(4));
    let taps_s = if head[4] % 2 == 0 { Vec::new() } else { vec![tap_s] };
    let got = analyse(&samples, &Marks { taps_s, ..Marks::between(on_s, off_s) }, &Source::file());
    match &got.figures {
        Figures::NotMeasured(reasons) => assert!(!reasons.is_empty(), "no figures and no reason"),
        Figures::Measured(measures) => assert!(measures.rms_planar.is_finite() && measures.path.is_finite(), "{measures:?}"),
    }
    if let Some(hold) = &got.hold {
        assert!(hold.seconds >= 0.0 && hold.seconds <= off_s - on_s, "{hold:?}");
    }
    let text = printed(&got).to_string();
    assert!(!text.contains("NaN") && !text.contains("inf"), "{text}");
});
