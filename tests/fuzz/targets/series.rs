//! Any file with a series is either read or refused, and what is read is analysed: a p-value is a probability, and a line's limits
//! enclose its slope.
#![no_main]

use exercises::statistics::{TrendContext, mann_kendall, tau_b, theil_sen, trend};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|file: &[u8]| {
    let text = [format::series::HEADER.as_bytes(), b"\n", file].concat();
    for file in [file, &text] {
        let Ok(series) = format::series::read(file) else { continue };
        // The line uses every pair of days: enough days to reach every branch, few enough to be fast.
        let series = &series[..series.len().min(200)];
        let judged = mann_kendall(series).expect("what is read is a sound series");
        assert!((0.0..=1.0).contains(&judged.p_normal), "{judged:?}");
        assert!(judged.p_exact.is_none_or(|p| (0.0..=1.0).contains(&p)), "{judged:?}");
        let tau = tau_b(series).expect("a sound series");
        assert!(tau.is_none_or(|tau| tau.abs() <= 1.0 + 1e-9), "{tau:?}");
        if let Some(line) = theil_sen(series, 0.95).expect("a sound series") {
            assert!(line.limits.low <= line.slope && line.slope <= line.limits.high, "{line:?}");
        }
        trend(series, &TrendContext { given_difference: Some(1.0), ..TrendContext::default() }).expect("a sound series");
    }
});
