//! Properties that hold for any series.

use exercises::statistics::{
    DayValue, SymmetryInput, TrendContext, Verdict, mann_kendall, side_to_side, theil_sen, trend, wilson,
};
use proptest::prelude::*;

fn a_series() -> impl Strategy<Value = Vec<DayValue>> {
    let days = proptest::collection::btree_map(-400..400i32, -30..60i32, 0..70);
    days.prop_map(|days| days.into_iter().map(|(day, tenths)| DayValue { day, value: f64::from(tenths) / 4.0 }).collect())
}

fn mirrored(series: &[DayValue]) -> Vec<DayValue> {
    series.iter().map(|one| DayValue { value: -one.value, ..*one }).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn negated_values_have_the_opposite_trend(series in a_series()) {
        let (up, down) = (mann_kendall(&series).expect("sound"), mann_kendall(&mirrored(&series)).expect("sound"));
        prop_assert_eq!(up.s, -down.s);
        prop_assert_eq!(up.p(), down.p());
        let context = TrendContext { given_difference: Some(1.0), ..TrendContext::default() };
        let turned = match trend(&series, &context).expect("sound").verdict {
            Verdict::Rising => Verdict::Falling,
            Verdict::Falling => Verdict::Rising,
            other => other,
        };
        prop_assert_eq!(trend(&mirrored(&series), &context).expect("sound").verdict, turned);
    }

    #[test]
    fn the_order_of_the_rows_does_not_matter(series in a_series()) {
        let mut other = series.clone();
        other.reverse();
        prop_assert_eq!(mann_kendall(&series).expect("sound"), mann_kendall(&other).expect("sound"));
        prop_assert_eq!(theil_sen(&series, 0.95).expect("sound"), theil_sen(&other, 0.95).expect("sound"));
    }

    #[test]
    fn p_and_limits_stay_in_range(series in a_series()) {
        let test = mann_kendall(&series).expect("sound");
        prop_assert!((0.0..=1.0).contains(&test.p()));
        if let Some(line) = theil_sen(&series, 0.95).expect("sound") {
            prop_assert!(line.limits.low <= line.slope && line.slope <= line.limits.high);
        }
    }

    #[test]
    fn hostile_values_never_panic(days in proptest::collection::vec((any::<i32>(), any::<f64>()), 0..20), cap in any::<f64>()) {
        let series: Vec<DayValue> = days.into_iter().map(|(day, value)| DayValue { day, value }).collect();
        let context = TrendContext { cap: Some(cap), given_difference: Some(cap), ..TrendContext::default() };
        if let Ok(got) = trend(&series, &context) {
            prop_assert_eq!(got.days, series.len());
        }
    }

    #[test]
    fn wilson_holds_the_share_within_its_limits(planned in 1..3000u32, share in 0.0..=1.0f64, confidence in 0.5..0.999f64) {
        let done = (f64::from(planned) * share) as u32;
        let got = wilson(done, planned, confidence).expect("sound");
        let p = f64::from(done) / f64::from(planned);
        prop_assert!(0.0 <= got.low && got.low <= p && p <= got.high && got.high <= 1.0);
    }

    #[test]
    fn any_two_times_have_a_verdict(involved_s in any::<f64>(), uninvolved_s in any::<f64>(), cap in any::<f64>()) {
        let input = SymmetryInput { involved_s, uninvolved_s, cap_s: Some(cap), detectable_s: Some(cap) };
        let got = side_to_side(&input);
        prop_assert_eq!(got.difference_s.is_some(), involved_s.is_finite() && involved_s >= 0.0 && uninvolved_s.is_finite() && uninvolved_s >= 0.0);
    }
}
